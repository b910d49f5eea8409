package pourwright.page.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.quantity.Counted;

/** What is counted is one or many in every language, also where its words bend. */
class CountedInLanguagesTest {
  private static String in(String language, String phrase) {
    Language other =
        Language.offered().stream().filter(l -> l.tag().equals(language)).findFirst().orElseThrow();
    return Phrasebook.of(other).find(phrase).orElse("nothing");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "de|1|1 Stück ist dafür gepackt.",
        "de|3|3 Stücke sind dafür gepackt.",
        "fr|1|1 pièce est emballée pour cela.",
        "fr|3|3 pièces sont emballées pour cela.",
        "es|1|1 pieza está preparada para ello.",
        "es|3|3 piezas están preparadas para ello."
      })
  void aSentenceOfOneIsNotThatOfMany(String language, int count, String said) {
    String english = Counted.of(count, "piece is packed for it.", "pieces are packed for it.");
    assertThat(in(language, english)).isEqualTo(said);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "de|mindestens 1 volles Leben über 1 Guss und 2 Wachsgüsse, eins bis ganz zum Ende, dann eine"
            + " Kerze aus jedem 2. Wachsguss",
        "fr|au moins 1 vie entière sur 1 coulée et 2 coulages, une jusqu'au bout, puis une bougie à"
            + " chaque 2e coulage",
        "es|al menos 1 vida entera en 1 vaciado y 2 vertidos, una hasta el final, luego una vela de"
            + " cada 2.º vertido"
      })
  void partsOfASentenceAreCountedEachByItself(String language, String said) {
    String english =
        "Your rule: at least "
            + Counted.of(1, "full life", "full lives")
            + " over "
            + Counted.of(1, "cast", "casts")
            + " and "
            + Counted.of(2, "pour", "pours")
            + ", one to the very end, then one candle of every "
            + Counted.nth(2)
            + " pour.";
    assertThat(in(language, english)).contains(said);
  }
}
