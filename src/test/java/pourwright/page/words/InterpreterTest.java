package pourwright.page.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A page is put into another language phrase by phrase; what a person wrote stays as it is. */
class InterpreterTest {
  private static final Map<String, String> GERMAN =
      Map.of(
          "Done", "Fertig",
          "{0} waits, due {1}", "bis {1} wartet {0}",
          "{0}, really weighed", "{0}, wirklich gewogen",
          "Grey powder", "Graues Pulver",
          "Print <1>the template</1> and check it", "Prüfe es und drucke <1>die Schablone</1>",
          "Wax & oil", "Wachs & Öl",
          "say \"yes\"", "sag „ja“");

  private final List<String> unknown = new ArrayList<>();

  private String german(String html) {
    return Interpreter.page(Language.GERMAN, Phrasebook.with(GERMAN), html, unknown::add);
  }

  @Test
  void aPhraseIsFoundWhateverSpaceStandsAroundIt() {
    assertThat(german("<p>\n  Done\n</p>")).isEqualTo("<p> Fertig </p>");
    assertThat(unknown).isEmpty();
  }

  @Test
  void whatFillsAHoleMayChangeItsPlaceAndMayBeAPhraseItself() {
    assertThat(german("<p>Cog waits, due 3 March</p>")).isEqualTo("<p>bis 3 March wartet Cog</p>");
    assertThat(german("<li>Grey powder, really weighed</li>"))
        .isEqualTo("<li>Graues Pulver, wirklich gewogen</li>");
  }

  @Test
  void markupInsideAPhraseMovesWithItsWords() {
    assertThat(german("<p>Print <a href=\"/t\">the template</a> and check it</p>"))
        .isEqualTo("<p>Prüfe es und drucke <a href=\"/t\">die Schablone</a></p>");
  }

  @Test
  void signsThatThePageWritesInItsOwnWayAreRead() {
    assertThat(german("<p>Wax &amp; oil</p>")).isEqualTo("<p>Wachs &amp; Öl</p>");
    assertThat(german("<a aria-label=\"say &#34;yes&#34;\">1</a>"))
        .isEqualTo("<a aria-label=\"sag „ja“\">1</a>");
  }

  @Test
  void whatAPersonWroteOrAFieldHoldsIsLeftAlone() {
    String page =
        "<p translate=\"no\">Done</p><textarea>Done</textarea><input value=\"Done\">"
            + "<b><span translate=\"no\">Done</span></b><script>Done</script>";
    assertThat(german(page)).isEqualTo(page);
    assertThat(unknown).isEmpty();
  }

  @Test
  void aButtonMadeAsAnInputIsTranslated() {
    assertThat(german("<input type=\"submit\" value=\"Done\">"))
        .isEqualTo("<input type=\"submit\" value=\"Fertig\">");
  }

  @Test
  void numbersUnitsAndSymbolsNeedNoWords() {
    String page = "<td>412.5 g</td><td>−3 °C</td><td>12,50 EUR</td>";
    assertThat(german(page)).isEqualTo(page);
    assertThat(unknown).isEmpty();
  }

  @Test
  void whatTheBookDoesNotHaveStaysAndIsTold() {
    assertThat(german("<p>Never said</p>")).isEqualTo("<p>Never said</p>");
    assertThat(unknown).containsExactly("Never said");
  }

  @Test
  void thePageSaysWhichLanguageItIsIn() {
    assertThat(german("<html lang=\"en\" data-x=\"a\">"))
        .isEqualTo("<html lang=\"de\" dir=\"ltr\" data-x=\"a\">");
    assertThat(Interpreter.page(Language.PSEUDO_RIGHT_TO_LEFT, "<html lang=\"en\">"))
        .contains("dir=\"rtl\"");
  }

  @Test
  void englishPassesUntouched() {
    assertThat(Interpreter.page(Language.ENGLISH, "<p>Done</p>")).isEqualTo("<p>Done</p>");
  }
}
