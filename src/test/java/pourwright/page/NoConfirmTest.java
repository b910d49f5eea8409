package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.card.Person;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.SaveCard;

/** Goal G9: no question whether one is sure; what is put away stays, and comes back as it was. */
@DisplayName("G9 no confirm dialogs, trash that keeps")
class NoConfirmTest {
  private static final Pattern ASKS =
      Pattern.compile(
          "hx-confirm|data-confirm|<dialog|\\bconfirm\\s*\\(|\\balert\\s*\\(|are you sure|really (delete|remove)",
          Pattern.CASE_INSENSITIVE);

  /** What takes something for good, and may ask: none of it is on a page. */
  private static final Pattern FOR_GOOD =
      Pattern.compile("action=\"[^\"]*(purge|restore|delete-bytes)", Pattern.CASE_INSENSITIVE);

  private static Map<String, String> sources() throws IOException {
    Map<String, String> sources = new TreeMap<>();
    for (Path root : List.of(Path.of("src/main/jte"), Path.of("src/main/resources/static"))) {
      try (Stream<Path> files = Files.walk(root)) {
        for (Path file :
            files
                .filter(f -> f.toString().matches(".*\\.(jte|js)"))
                .filter(f -> !f.toString().contains("htmx.min"))
                .toList()) {
          sources.put(file.toString(), Files.readString(file, StandardCharsets.UTF_8));
        }
      }
    }
    return sources;
  }

  @Test
  @DisplayName("G9 no template and no script asks for a confirmation")
  void nothingAsks() throws IOException {
    Map<String, String> sources = sources();
    assertThat(sources).hasSizeGreaterThan(70);
    assertThat(sources)
        .allSatisfy((file, text) -> assertThat(ASKS.matcher(text).find()).as(file).isFalse())
        .allSatisfy((file, text) -> assertThat(FOR_GOOD.matcher(text).find()).as(file).isFalse());
    assertThat(ASKS.matcher("<button hx-confirm=\"Sure?\">").find()).isTrue();
    assertThat(ASKS.matcher("if (confirm('x')) {").find()).isTrue();
  }

  @Test
  @DisplayName("G9 what was put away is there after 90 days, and adding it again brings it back")
  void whatWasPutAwayComesBack(@TempDir Path folder) {
    Workshop workshop = new Workshop(folder);
    var studio = workshop.desk.studio();
    Person tove = new Person("TO", "Tove", Person.Role.LEARNER, "left-handed");
    studio.saveCard.run(workshop.act(), SaveCard.Request.of(Drawers.PERSON, "to", 0, tove));
    try (Server server = TestStudio.open(workshop.desk, folder)) {
      Visitor visitor = new Visitor(server.port());
      visitor.post("/settings", "/settings/hand", Map.of("hand", "MB"));
      visitor.post("/settings/crew", "/settings/away/person", Map.of("code", "to"));
      assertThat(visitor.page("/settings/crew").select("section:has(#people)").text())
          .doesNotContain("Tove");
      workshop.clock.move(Duration.ofDays(91));
      assertThat(visitor.page("/settings/crew").select("#trash").text()).contains("Tove");
      visitor.post(
          "/settings/crew",
          "/settings/person",
          Map.of("initials", "TO", "person_name", "Tove", "role", "learner"));
      assertThat(visitor.page("/settings/crew").select(".said").text())
          .contains("was put away before");
    }
    List<CardVersion<Person>> history = studio.look(b -> b.cards().history(Drawers.PERSON, "to"));
    assertThat(history).hasSize(3);
    assertThat(history)
        .extracting(CardVersion::retired)
        .containsExactlyInAnyOrder(false, true, false);
  }
}
