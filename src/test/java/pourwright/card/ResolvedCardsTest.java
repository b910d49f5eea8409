package pourwright.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import pourwright.cast.Mix;
import pourwright.cast.MixAmounts;
import pourwright.material.MaterialBook;
import pourwright.quantity.Origin;
import pourwright.quantity.Sourced;

class ResolvedCardsTest {
  private static final Vessel CUP =
      new Vessel(
          "cup",
          "Cup",
          SolidForm.straight(OutlineForm.circle(90), 100),
          SolidForm.straight(OutlineForm.circle(74), 90),
          null,
          null,
          null);

  @Test
  void aMeasuredVolumeBeatsADrawnOne() {
    assertThat(CUP.mixMl().value()).isCloseTo(249.097, within(5e-4));
    assertThat(CUP.mixMl().origin()).isEqualTo(Origin.WORKED_OUT);
    Vessel weighed =
        new Vessel(
            "cup", "Cup", CUP.outer(), CUP.cavity(), Sourced.measured(255, 0.006), null, null);
    assertThat(weighed.mixMl().value()).isEqualTo(255);
    assertThat(weighed.mixMl().relativeUncertainty()).isLessThan(CUP.mixMl().relativeUncertainty());
  }

  /** The water in a craft paint counts as mix water. */
  @Test
  void aMixCardKnowsItsMaterialsAndTheWaterThatComesWithAPaint() {
    MixCard card =
        new MixCard(
            "grey",
            "Grey",
            "portland-cement",
            new MixCard.Ratio(MixCard.By.MASS, 1, 0.4),
            List.of(new MixCard.Part("silica-sand", 1.5), new MixCard.Part("craft-paint", 0.05)),
            new MixCard.Losses(0, 0, 0.03),
            MixCard.Times.PORTLAND,
            "grey",
            null);
    Mix mix = card.resolve(MaterialBook.typical(), 20);
    MixAmounts amounts = mix.amounts(250, 0, 0);
    double paintWater = amounts.additionsG().get(1) * mix.additions().get(1).waterFraction();
    assertThat(paintWater).isPositive();
    assertThat((amounts.waterG() + paintWater) / amounts.powderG()).isCloseTo(0.4, within(1e-9));
    assertThat(amounts.additionsG().get(0)).isCloseTo(1.5 * amounts.powderG(), within(1e-9));
  }
}
