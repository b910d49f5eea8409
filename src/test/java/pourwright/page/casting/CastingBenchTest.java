package pourwright.page.casting;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Piece;
import pourwright.batch.RecordedStep;
import pourwright.page.OpenStudio;
import pourwright.page.Visitor;
import pourwright.work.Reading;
import pourwright.work.Subject;
import pourwright.work.Timer;

/** A whole cast through the pages, without a browser. */
class CastingBenchTest {
  private static final String SHEET =
      "/casting/sheet?mix=grey&vessel1=bollard&count1=2&water_c=20&room_c=20&step=1";

  private OpenStudio open;
  private Visitor visitor;

  @BeforeEach
  void openTheStudio(@TempDir Path folder) {
    open = new OpenStudio(folder).withDemoCards();
    visitor = open.visitor();
  }

  @AfterEach
  void closeTheStudio() {
    open.close();
  }

  private String begin() {
    HttpResponse<String> begun = visitor.post(SHEET, "/casting/start", Map.of("by", "AB"));
    assertThat(begun.statusCode()).as(begun.body()).isEqualTo(303);
    return begun.headers().firstValue("Location").orElseThrow();
  }

  private void walk(String cast) {
    for (int i = 0; i < 20; i++) {
      Document page = visitor.page(cast);
      if (page.selectFirst("form[action=" + cast + "/step]") == null) {
        return;
      }
      HttpResponse<String> done = visitor.post(cast, cast + "/step", Map.of("by", "AB"));
      assertThat(done.statusCode()).as(done.body()).isEqualTo(303);
    }
    throw new AssertionError("the walk does not end");
  }

  @Test
  void theSheetShowsBothRatiosWithTheBulkDensityAndItsOrigin() {
    Document sheet = visitor.page(SHEET);
    assertThat(sheet.text())
        .contains("Powder to water by mass")
        .contains("Powder to water by volume")
        .contains("with a bulk density of")
        .containsAnyOf("typical", "supplier's sheet", "measured here");
    assertThat(sheet.select("td .figure")).hasSizeGreaterThanOrEqualTo(3);
  }

  @Test
  void aCastIsWalkedFromTheMoldToTheDemolding() {
    String cast = begin();
    Document first = visitor.page(cast);
    assertThat(first.text()).contains("step 1 of");
    walk(cast);
    Map<String, String> out = new LinkedHashMap<>();
    out.put("whole_bollard", "1");
    out.put("judged", "right");
    out.put("defect_chip_count", "1");
    out.put("tray", "A");
    out.put("by", "AB");
    HttpResponse<String> demolded = visitor.post(cast, cast + "/demold", out);
    assertThat(demolded.statusCode()).as(demolded.body()).isEqualTo(303);
    assertThat(visitor.page("/casting/pieces/Green").select("input[name=piece]")).hasSize(1);
    long id = Long.parseLong(cast.substring(cast.lastIndexOf('/') + 1));
    Subject subject = Subject.of(Subject.Kind.BATCH, id);
    List<String> kept =
        open.studio.look(b -> b.readings().of(subject)).stream().map(r -> r.quantity()).toList();
    assertThat(kept).contains("water_g", "set_min", "demold_h", "demold_judged_count");
    assertThat(kept).contains("defect_chip_count");
    List<Timer> timers = open.studio.look(b -> b.timers().of(subject));
    assertThat(timers).singleElement().satisfies(t -> assertThat(t.answeredAt()).isNotNull());
    assertThat(visitor.page(cast).text()).contains("This cast is finished");
  }

  @Test
  void whatWasReallyWeighedIsKeptAndADoubleTapCountsOnce() {
    String cast = begin();
    visitor.post(cast, cast + "/step", Map.of("by", "AB"));
    Document page = visitor.page(cast);
    Map<String, String> fields = new LinkedHashMap<>();
    page.forms().stream()
        .filter(f -> f.attr("action").equals(cast + "/step"))
        .flatMap(f -> f.formData().stream())
        .forEach(kv -> fields.put(kv.key(), kv.value()));
    fields.put("used_mix-water", "4 oz");
    fields.put("by", "AB");
    visitor.post(cast + "/step", fields);
    visitor.post(cast + "/step", fields);
    long id = Long.parseLong(cast.substring(cast.lastIndexOf('/') + 1));
    Subject subject = Subject.of(Subject.Kind.BATCH, id);
    List<Reading> readings = open.studio.look(b -> b.readings().of(subject));
    assertThat(readings)
        .filteredOn(r -> r.quantity().equals("water_g"))
        .singleElement()
        .satisfies(r -> assertThat(r.value()).isBetween(113.39, 113.40));
    List<RecordedStep> steps = open.studio.look(b -> b.batches().steps(id));
    assertThat(steps).hasSize(2);
  }

  @Test
  void aVesselIsHardenedDriedCoatedAndProvedInThatOrderOnly() {
    String cast = begin();
    walk(cast);
    visitor.post(cast, cast + "/demold", Map.of("by", "AB", "judged", "right"));
    stand("Green", "HARDENED", Map.of());
    HttpResponse<String> notYet =
        act("Hardened", "DRIED", Map.of("before_g", "505", "later_g", "500", "hours", "24"));
    assertThat(notYet.statusCode()).isEqualTo(422);
    assertThat(notYet.body()).contains("Not dry yet");
    HttpResponse<String> soon =
        act("Hardened", "DRIED", Map.of("before_g", "500.1", "later_g", "500", "hours", "2"));
    assertThat(soon.body()).contains("only 2.0 h apart");
    Map<String, String> constant = Map.of("before_g", "500.2", "later_g", "500.0", "hours", "24");
    stand("Hardened", "DRIED", constant);
    stand("Dry", "SEALED", Map.of());
    stand("Damp", "DRIED", constant);
    stand("Dry", "HELD_WATER", Map.of());
    stand("Damp", "DRIED", constant);
    stand("Dry", "SEEP_TEST", Map.of());
    stand("SeepTesting", "HELD_WAX", Map.of());
    assertThat(visitor.page("/casting/pieces/Dry").text()).contains("dry and wax-tight");
    stand("Dry", "WETTED", Map.of());
    assertThat(visitor.page("/casting/pieces/Damp").select("input[name=piece]")).hasSize(2);
    List<Piece> pieces =
        open.studio.look(
            b -> b.pieces().list(pourwright.work.PieceBook.Which.ALL, null, 10).items());
    assertThat(pieces).allSatisfy(p -> assertThat(p.state().code()).isEqualTo("Damp"));
  }

  private void stand(String state, String step, Map<String, String> more) {
    HttpResponse<String> done = act(state, step, more);
    assertThat(done.statusCode()).as(step + done.body()).isEqualTo(303);
  }

  /** Ticks all that stand there, as the page offers them. */
  private HttpResponse<String> act(String state, String step, Map<String, String> more) {
    String path = "/casting/pieces/" + state;
    Document page = visitor.page(path);
    StringBuilder body = new StringBuilder();
    page.select("main form[action=" + path + "] input[type=hidden]")
        .forEach(i -> add(body, i.attr("name"), i.attr("value")));
    page.select("input[name=piece]").forEach(i -> add(body, "piece", i.attr("value")));
    add(body, "step", step);
    add(body, "by", "AB");
    more.forEach((name, value) -> add(body, name, value));
    return visitor.send(
        java.net.http.HttpRequest.newBuilder(java.net.URI.create(visitor.base() + path))
            .header("Origin", visitor.base())
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(java.net.http.HttpRequest.BodyPublishers.ofString(body.toString()))
            .build());
  }

  private static void add(StringBuilder body, String name, String value) {
    body.append(body.length() == 0 ? "" : "&")
        .append(name)
        .append('=')
        .append(java.net.URLEncoder.encode(value, java.nio.charset.StandardCharsets.UTF_8));
  }

  @Test
  void aSheetThatCannotBeIsRefusedWithASentence() {
    HttpResponse<String> hot = visitor.get(SHEET.replace("water_c=20", "water_c=90"));
    assertThat(hot.statusCode()).isEqualTo(422);
    assertThat(hot.body()).contains("from 0.0 to 40.0");
    assertThat(visitor.get(SHEET.replace("vessel1=bollard", "vessel1=")).body())
        .contains("choose at least one vessel");
  }
}
