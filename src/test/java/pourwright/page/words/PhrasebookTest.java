package pourwright.page.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Three languages are complete: the same phrases in each, and all that the templates say. */
class PhrasebookTest {
  private static final Pattern HELD = Pattern.compile("\\{\\d}|</?\\d/?>");
  private static final List<Language> OTHERS =
      Language.offered().stream().filter(l -> l != Language.ENGLISH).toList();

  @Test
  void threeLanguagesAreOffered() {
    assertThat(OTHERS).extracting(Language::tag).containsExactly("de", "fr", "es");
  }

  @Test
  void everyLanguageHasTheSamePhrases() {
    Set<String> german = Phrasebook.phrases(Language.GERMAN).keySet();
    assertThat(german).hasSizeGreaterThan(1_000);
    for (Language language : OTHERS) {
      Set<String> own = Phrasebook.phrases(language).keySet();
      assertThat(minus(german, own)).as("missing in " + language).isEmpty();
      assertThat(minus(own, german)).as("only in " + language).isEmpty();
    }
  }

  private static Set<String> minus(Set<String> all, Set<String> some) {
    Set<String> rest = new TreeSet<>(all);
    rest.removeAll(some);
    return rest;
  }

  @Test
  void everyTranslationSaysSomethingAndKeepsHolesAndMarkup() {
    for (Language language : OTHERS) {
      for (Map.Entry<String, String> phrase : Phrasebook.phrases(language).entrySet()) {
        assertThat(phrase.getValue()).as(phrase.getKey()).isNotBlank();
        assertThat(held(phrase.getValue()))
            .as(language + ": " + phrase.getKey())
            .isEqualTo(held(phrase.getKey()));
      }
    }
  }

  private static List<String> held(String text) {
    Matcher held = HELD.matcher(text);
    return held.results().map(r -> r.group()).sorted().toList();
  }

  @Test
  void everyPhraseOfATemplateIsInTheBooks() {
    Phrasebook book = Phrasebook.of(Language.PSEUDO);
    Set<String> missing = new TreeSet<>();
    for (String phrase : TemplatePhrases.in(Path.of("src/main/jte"))) {
      String asShown = phrase.replace("&", "&amp;").replaceAll("\\{\\d}", "7");
      if (book.find(phrase).isEmpty() && book.find(asShown).isEmpty()) {
        missing.add(phrase);
      }
    }
    assertThat(missing).isEmpty();
  }

  @Test
  void theTemplatesAreReadForWhatTheySay() {
    String template =
        "@import a.b.C\n@param C page\n@template.layout(title = \"Cast sheet\", content = @`"
            + "@if(page.x(\"not shown\"))<p>Wax ${page.y(\"}\")} now</p>@endif"
            + "<input placeholder=\"80 mm or so\"><b translate=\"no\">Oak</b> ${ok ? \"Well done\" : \"\"}`)";
    assertThat(TemplatePhrases.of(template))
        .containsExactlyInAnyOrder("Cast sheet", "Wax {0} now", "80 mm or so", "Well done");
  }
}
