package pourwright.cast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import pourwright.cast.OwnHands.Mixing;
import pourwright.quantity.Sourced;

/** Mass balance of a mixing, worked out by hand; fresh density and air as in ASTM C138. */
class OwnHandsTest {
  private static final List<Mixing> THREE =
      List.of(
          new Mixing(1100, 450, 150.0, 2.0, 0.30),
          new Mixing(1100, 450, 130.0, 2.0, 0.32),
          new Mixing(1100, 450, 140.0, 2.0, 0.34));

  /** 1100 g less 450 ml of 2.0 g/ml less what is left: 50, 70 and 60 g stay behind. */
  @Test
  void whatReachesNoMoldAndIsNotLeftStaysInTheBucket() {
    OwnHands hers = OwnHands.of(THREE);
    Sourced lost = Objects.requireNonNull(hers.lostG());
    assertThat(lost.value()).isCloseTo(60, within(1e-9));
    assertThat(lost.relativeUncertainty()).isCloseTo(10 / 60.0, within(1e-9));
    assertThat(hers.yieldFraction()).isCloseTo(900 / 1100.0, within(1e-9));
    assertThat(hers.waterToPowder()).isCloseTo(0.32, within(1e-9));
    assertThat(hers.lostG(15)).isEqualTo(lost.value());
  }

  /** Check value 5's mix: air-free 2.22337 g/ml, a cup of 2.10 is 5.55 % of air. */
  @Test
  void herOwnDensityIsTheMixWithTheAirThatMakesIt() {
    List<Mixing> cups =
        List.of(
            new Mixing(500, 200, null, 2.08, null),
            new Mixing(500, 200, null, 2.10, null),
            new Mixing(500, 200, null, 2.12, null));
    Mix mix =
        Mix.plain(Powder.of(3.15, 1.2), new Ratio(Ratio.By.MASS, 1, 0.45))
            .withAir(0.02)
            .with(
                List.of(
                    new Addition(Addition.Kind.SAND, 1.5, 2.65),
                    new Addition(Addition.Kind.PIGMENT, 0.03, 5)));
    Mix hers = OwnHands.of(cups).applied(mix);
    assertThat(hers.airFraction()).isCloseTo(0.0555, within(2e-5));
    assertThat(hers.amounts(300, 0.1, 12).freshGPerMl()).isCloseTo(2.10, within(1e-9));
  }

  @Test
  void twoCastsAreTooFew() {
    OwnHands two = OwnHands.of(THREE.subList(0, 2));
    assertThat(two.freshGPerMl()).isNull();
    assertThat(two.lostG()).isNull();
    assertThat(two.lostG(15)).isEqualTo(15);
    Mix mix = Mix.plain(Powder.of(3.15, 1.2), new Ratio(Ratio.By.MASS, 1, 0.45));
    assertThat(two.applied(mix)).isSameAs(mix);
  }
}
