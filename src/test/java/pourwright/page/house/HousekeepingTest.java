package pourwright.page.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Mark;
import pourwright.page.Desk;
import pourwright.page.Server;
import pourwright.page.TestStudio;
import pourwright.page.Visitor;
import pourwright.work.Hold;
import pourwright.work.Timer;

/** Settings, history with its way back, holds, marks, STOP: what every place shares. */
class HousekeepingTest {
  private Desk desk;
  private Server server;
  private Visitor visitor;

  @BeforeEach
  void openTheStudio(@TempDir Path folder) {
    desk = TestStudio.desk(folder);
    server = TestStudio.open(desk, folder);
    visitor = new Visitor(server.port());
  }

  @AfterEach
  void closeTheStudio() {
    server.close();
  }

  private String setting(String key) {
    return desk.studio().look(books -> books.settings().value(key)).orElse("");
  }

  private List<Timer> timers() {
    return desk.studio().look(books -> books.timers().running());
  }

  private List<Hold> holds() {
    return desk.studio().look(books -> books.holds().standing());
  }

  @Test
  void whatWasSavedCanBeTakenBackAndDoneAgainFromTheHistory() {
    visitor.post("/settings", "/settings/hand", Map.of("hand", "mk"));
    visitor.post(
        "/settings", "/settings", Map.of("studio.name", "Cellar works", "currency", "EUR"));
    assertThat(setting("studio.name")).isEqualTo("Cellar works");
    Document history = visitor.page("/history");
    assertThat(history.select("tbody tr").get(0).text()).contains("MK");

    String newest = history.select("tbody form").attr("action");
    while (!setting("studio.name").isEmpty()) {
      visitor.post("/history", "/undo", Map.of());
    }
    assertThat(setting("studio.name")).isEmpty();
    assertThat(newest).matches("/history/\\d+/undo");

    String redo = visitor.page("/history").select("form:contains(Redo)").attr("action");
    visitor.post("/history", redo, Map.of());
    assertThat(setting("studio.name")).isEqualTo("Cellar works");
  }

  @Test
  void aDoubleTapOnAFormCountsOnce() {
    Document page = visitor.page("/timers");
    Map<String, String> fields = new java.util.LinkedHashMap<>();
    ((org.jsoup.nodes.FormElement) page.select("form[action=/timers]").get(0))
        .formData()
        .forEach(kv -> fields.put(kv.key(), kv.value()));
    fields.putAll(Map.of("label", "Once", "minutes", "5", "by", "MK"));
    for (int tap = 0; tap < 5; tap++) {
      assertThat(visitor.post("/timers", fields).statusCode()).isEqualTo(303);
    }
    assertThat(visitor.page("/").select(".bell")).hasSize(1);
  }

  @Test
  void theBooksRefuseARepeatEvenAfterARestart() {
    Document page = visitor.page("/timers");
    Map<String, String> fields = new java.util.LinkedHashMap<>();
    ((org.jsoup.nodes.FormElement) page.select("form[action=/timers]").get(0))
        .formData()
        .forEach(kv -> fields.put(kv.key(), kv.value()));
    fields.putAll(Map.of("label", "Once", "minutes", "5", "by", "MK"));
    visitor.post("/timers", fields);
    fields.put("label", "Twice");
    assertThat(timers()).hasSize(1);
    visitor.post("/timers?again", fields);
    assertThat(timers()).singleElement().satisfies(t -> assertThat(t.label()).isEqualTo("Once"));
  }

  @Test
  void aWrongCharacterInAMarkIsNoticed() {
    String mark = Mark.ofNumber(1042).text();
    String wrong = mark.replace('4', '5');
    assertThat(visitor.get("/find?mark=" + wrong).statusCode()).isEqualTo(422);
    assertThat(visitor.get("/find?mark=" + wrong).body()).contains("is not a mark");
    assertThat(visitor.get("/find?mark=" + mark).body()).contains("Nothing in the books carries");
  }

  @Test
  void aHoldOnSomethingUnknownIsRefusedInASentence() {
    var answer =
        visitor.post("/hold", "/hold", Map.of("what", "LOT-9", "reason", "smells", "by", "MK"));
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("is no mark, no lot and no design");
  }

  @Test
  void aDesignOnHoldIsLiftedOnlyUnderANameWithAReason() {
    visitor.post(
        "/hold", "/hold", Map.of("what", "candle/bollard-rain", "reason", "seeps", "by", "MK"));
    String lift = visitor.page("/hold").select("form[action$=lift]").attr("action");
    visitor.post("/hold", lift, Map.of("name", "", "why", ""));
    assertThat(holds()).hasSize(1);
    visitor.post("/hold", lift, Map.of("name", "Mara Keel", "why", "sealed again and tested"));
    assertThat(holds()).isEmpty();
  }

  @Test
  void stopSaysWhatToDoEvenWhenNothingIsHotInTheBooks() {
    Document page = visitor.page("/stop");
    assertThat(page.text()).contains("Never water on burning or smoking wax");
    assertThat(visitor.post("/stop", "/stop", Map.of("by", "MK")).statusCode()).isEqualTo(303);
  }
}
