package pourwright.page.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.FormElement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.page.OpenStudio;
import pourwright.page.Visitor;
import pourwright.work.BeginPour;
import pourwright.work.Deed;
import pourwright.work.Drawers;

/** Who works here is asked once; help opens where one is; STOP closes; the welcome path ends. */
class HandsTest {
  @TempDir Path folder;

  private static Map<String, String> fields(Document page, String action) {
    Map<String, String> fields = new LinkedHashMap<>();
    if (page.selectFirst("main form[action=" + action + "]") instanceof FormElement form) {
      form.formData().forEach(kv -> fields.put(kv.key(), kv.value()));
    }
    return fields;
  }

  private static List<Deed> deeds(OpenStudio open) {
    return open.studio.history(null, 50).items();
  }

  @Test
  void aDeviceThatKnowsNobodyIsAskedOnceAndNothingIsWrittenUntilThen() {
    try (OpenStudio open = new OpenStudio(folder)) {
      open.studio.saveSetting.run(open.act(), "studio.name", "Tidewater");
      Visitor visitor = open.visitor();
      HttpResponse<String> asked = visitor.post("/history", "/undo", Map.of());
      assertThat(asked.statusCode()).isEqualTo(422);
      assertThat(asked.body()).contains("Who works here?");
      assertThat(deeds(open)).hasSize(1);
      Document page = Jsoup.parse(asked.body(), visitor.base());
      String action = page.select("main form").attr("action");
      Map<String, String> fields = fields(page, action);
      assertThat(fields).containsEntry("back", "/history");
      fields.put("by", "mk");
      assertThat(visitor.post(action, fields).statusCode()).isEqualTo(303);
      assertThat(deeds(open)).hasSize(2);
      assertThat(deeds(open).get(0).by()).isEqualToIgnoringCase("mk");
      assertThat(visitor.page("/").select(".hand summary").text()).endsWith("MK");
      assertThat(visitor.post("/history", "/undo", Map.of()).statusCode()).isEqualTo(303);
    }
  }

  @Test
  void oneTapChangesWhoWorksHere() {
    try (OpenStudio open = new OpenStudio(folder)) {
      Visitor visitor = open.visitor();
      visitor.post("/", "/hand", Map.of("hand", "mk"));
      visitor.post("/", "/hand", Map.of("hand", "ab"));
      Document page = visitor.page("/casting");
      assertThat(page.select(".hand summary").text()).endsWith("AB");
      assertThat(page.select(".hand button[name=hand]").eachText()).containsExactly("MK");
      HttpResponse<String> back =
          visitor.post("/casting", "/hand", Map.of("hand", "MK", "back", "/casting"));
      assertThat(back.headers().firstValue("Location").orElse("")).isEqualTo("/casting");
      assertThat(visitor.page("/casting").select(".hand summary").text()).endsWith("MK");
    }
  }

  @Test
  void helpOpensAtThePlaceOneComesFromWithItsCautions() {
    try (OpenStudio open = new OpenStudio(folder)) {
      Visitor visitor = open.visitor();
      assertThat(visitor.page("/casting/new").select("[data-key=F1]").attr("href"))
          .isEqualTo("/help#casting");
      assertThat(visitor.page("/").select("[data-key=F1]").attr("href")).isEqualTo("/help#now");
      Document help = visitor.page("/help");
      assertThat(help.select("section.help")).hasSize(9);
      assertThat(help.select("#casting").text()).contains("dust mask").contains("alkaline");
      assertThat(help.select("#pouring").text()).contains("Never water");
      assertThat(help.select("section.help li")).hasSizeGreaterThan(15);
    }
  }

  @Test
  void stopClosesEveryPourAndUndoOpensItAgain() {
    try (OpenStudio open = new OpenStudio(folder).withDemoCards()) {
      String candle =
          open.studio.look(books -> books.cards().all(Drawers.CANDLE).get(0).body().code());
      long pour =
          open.studio.beginPour.run(open.act(), new BeginPour.Request(candle, 2, 0)).made().id();
      Visitor visitor = open.visitor();
      assertThat(visitor.page("/").select("a.stop")).hasSize(1);
      assertThat(visitor.post("/stop", "/stop", Map.of("by", "MK")).statusCode()).isEqualTo(303);
      assertThat(visitor.page("/stop").select(".said-done").text()).contains("1 pour is stopped");
      assertThat(running(open)).isEmpty();
      assertThat(deeds(open).get(0).verb()).isEqualTo("stopped a pour");
      assertThat(visitor.page("/").select("a.stop")).isEmpty();
      visitor.post("/history", "/undo", Map.of());
      assertThat(running(open)).extracting(Batch::id).containsExactly(pour);
    }
  }

  @Test
  void peopleAndInstrumentsAreWrittenDownChangedAndPutAway() {
    try (OpenStudio open = new OpenStudio(folder)) {
      Visitor visitor = open.visitor();
      String page = "/settings/crew";
      visitor.post("/", "/hand", Map.of("hand", "mk"));
      Map<String, String> person = Map.of("initials", "mk", "person_name", "Mara", "role", "maker");
      assertThat(visitor.post(page, "/settings/person", person).statusCode()).isEqualTo(303);
      assertThat(
              visitor
                  .post(
                      page,
                      "/settings/instrument",
                      Map.of(
                          "instrument_name",
                          "Bench scale",
                          "measures",
                          "mass",
                          "resolution",
                          "0.1"))
                  .statusCode())
          .isEqualTo(303);
      assertThat(visitor.page("/settings").select("main").text())
          .contains("MK, Mara, maker")
          .contains("Bench scale, to 0.1 g");
      person = Map.of("initials", "MK", "person_name", "Mara Keel", "role", "maker");
      visitor.post(page, "/settings/person", person);
      assertThat(visitor.page(page).select("main").text()).contains("MK, Mara Keel, maker");
      visitor.post(page, "/settings/away/person", Map.of());
      assertThat(visitor.page(page).select("main section:not([aria-labelledby=trash-head])").text())
          .doesNotContain("Mara Keel");
      assertThat(visitor.page(page).select("section[aria-labelledby=trash-head]").text())
          .contains("MK, Mara Keel, maker");
      assertThat(
              visitor
                  .post(page, "/settings/person", Map.of("initials", "m1", "person_name", "x"))
                  .statusCode())
          .isEqualTo(422);
    }
  }

  private static List<Batch> running(OpenStudio open) {
    return open.studio.look(
        books ->
            books.batches().running().stream()
                .filter(b -> b.plan().kind() == BatchKind.POUR)
                .toList());
  }

  @Test
  void theLastStepOfTheWelcomePathIsDoneWithTheFirstPlannedCandle() {
    try (OpenStudio open = new OpenStudio(folder).withDemoCards()) {
      Visitor visitor = open.visitor();
      String before = visitor.page("/welcome").select("main").text();
      String candle =
          open.studio.look(books -> books.cards().all(Drawers.CANDLE).get(0).body().code());
      OrderLine line = new OrderLine("1", candle, 1, 2, null, null);
      open.studio.orders.take(
          open.act(), new Order("1", "own", null, OrderState.OPEN, List.of(line)));
      String after = visitor.page("/welcome").select("main").text();
      assertThat(steps(after)).isEqualTo(steps(before) + 1);
    }
  }

  private static int steps(String text) {
    java.util.regex.Matcher matcher = java.util.regex.Pattern.compile("(\\d+) of 5").matcher(text);
    return matcher.find() ? Integer.parseInt(matcher.group(1)) : -1;
  }
}
