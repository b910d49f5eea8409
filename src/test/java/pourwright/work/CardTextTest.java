package pourwright.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pourwright.card.CandleDesign;
import pourwright.card.Card;
import pourwright.card.CardKind;
import pourwright.card.Finish;
import pourwright.card.Instrument;
import pourwright.card.MixCard;
import pourwright.card.Mold;
import pourwright.card.OutlineForm;
import pourwright.card.Person;
import pourwright.card.PourCard;
import pourwright.card.SolidForm;
import pourwright.card.Supplier;
import pourwright.card.Vessel;
import pourwright.card.WickPlan;
import pourwright.material.Material;
import pourwright.material.MaterialBook;
import pourwright.pour.Dose;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;

/** What is written on a card can be read again, and nothing else can. */
class CardTextTest {
  static List<Card> cards() {
    return List.of(
        new Mold("bollard-mold", "Bollard mold", "bollard", 4, 1, 50, false, null),
        new Vessel(
            "bollard",
            "Bollard",
            new SolidForm(OutlineForm.circle(80), OutlineForm.circle(90), 95),
            new SolidForm(OutlineForm.circle(66), OutlineForm.circle(74), 85),
            null,
            Sourced.measured(320, 0.01),
            "the tumbler"),
        new MixCard(
            "grey",
            "Rapid grey",
            "rapid-cement",
            new MixCard.Ratio(MixCard.By.VOLUME, 3, 1),
            List.of(new MixCard.Part("iron-oxide-black", 0.02)),
            MixCard.Losses.HOUSE,
            MixCard.Times.RAPID,
            "grey",
            null),
        new Finish(
            "two-coats",
            "Two coats",
            List.of(120, 220, 400),
            6,
            List.of(new Finish.Coat("film-sealer", Finish.Where.BOTH, 2, 24.0)),
            168,
            true,
            null),
        new PourCard(
            "rain",
            "Rain on slate",
            List.of(new PourCard.Part("plant-wax", 1)),
            List.of(new PourCard.Part("fragrance-oil", 1)),
            0.08,
            Dose.LoadOf.TOTAL,
            List.of(),
            new PourCard.Temperatures(68, 75, 52, 60),
            PourCard.Losses.HOUSE,
            12,
            "rain",
            null),
        new CandleDesign(
            "bollard-rain",
            "Bollard, Rain on slate",
            "bollard",
            "grey",
            "two-coats",
            "rain",
            new WickPlan("braided-wick", 1, 110, "wick-tab", "wick-sticker", List.of()),
            CandleDesign.HEADSPACE_MM,
            null,
            1,
            List.of(),
            null),
        new Instrument("scale", "Bench scale", "mass", 0.1, "g", LocalDate.of(2026, 3, 1), null),
        new Person("MB", "Mira", Person.Role.MAKER, null),
        new Supplier("north-quay", "North Quay Supplies", 6, null));
  }

  @ParameterizedTest
  @MethodSource("cards")
  void aCardThatWasWrittenReadsTheSame(Card card) {
    assertThat(CardText.read(card.kind(), CardText.write(card))).isEqualTo(card);
  }

  @Test
  void everyTypicalMaterialReadsTheSame() {
    for (Material material : MaterialBook.typical().all()) {
      assertThat(CardText.material(CardText.write(material))).isEqualTo(material);
    }
  }

  @Test
  void aFieldThatNobodyKnowsIsRefused() {
    String text = CardText.write(cards().get(0)).replace("\"count\"", "\"cuont\"");
    assertThatThrownBy(() -> CardText.read(CardKind.MOLD, text)).isInstanceOf(OutOfRange.class);
  }

  @Test
  void aValueThatCannotBeIsRefusedInTheFormsOwnWords() {
    String text = CardText.write(cards().get(0)).replace("\"count\":4", "\"count\":-4");
    assertThatThrownBy(() -> CardText.read(CardKind.MOLD, text))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("count is -4");
  }
}
