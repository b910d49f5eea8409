package pourwright.page.casting;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpRequest;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Piece;
import pourwright.batch.TrayCard;
import pourwright.page.OpenStudio;
import pourwright.page.Visitor;
import pourwright.work.FinishCast;

/** Tray cards at the bench: split, merged, mixed up, and what the trace then says. */
class TrayCardsTest {
  private OpenStudio open;
  private Visitor visitor;

  @BeforeEach
  void openTheStudio(@TempDir Path folder) {
    open = new OpenStudio(folder).withDemoCards();
    visitor = open.visitor();
    visitor.post("/", "/hand", Map.of("hand", "MB"));
  }

  @AfterEach
  void closeTheStudio() {
    open.close();
  }

  /** Two vessels of a cast on a tray card. */
  private List<Piece> cast(String tray) {
    var makes = List.of(new BatchPlan.Makes("bollard", 1, 2, "bollard-mold"));
    var plan = new BatchPlan(BatchKind.CAST, "grey", 1, makes, List.of(), null);
    Batch batch = open.studio.startCast.run(open.act(), plan).made();
    var whole = List.of(new FinishCast.Demolded("bollard", 2));
    return open.studio
        .finishCast
        .run(open.act(), new FinishCast.Request(batch.id(), whole, tray))
        .made();
  }

  private List<TrayCard> trays() {
    return open.studio.look(b -> b.pieces().trays());
  }

  private String mark(Piece piece) {
    return open.studio.look(b -> b.batches().batch(piece.madeIn()).orElseThrow().mark().text());
  }

  /** Ticks boxes as a browser does: the form's own fields, one value for each box. */
  private void lay(String label, List<Piece> pieces) {
    Document page = visitor.page("/casting/trays");
    StringBuilder body = new StringBuilder("label=" + label);
    for (String key : List.of("token", "request_key")) {
      String value = page.select("#lay input[name=" + key + "]").attr("value");
      body.append('&').append(key).append('=').append(value);
    }
    pieces.forEach(p -> body.append("&piece=").append(p.id()));
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(visitor.base() + "/casting/trays/lay"))
            .header("Origin", visitor.base())
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
            .build();
    assertThat(visitor.send(request).statusCode()).isEqualTo(303);
  }

  @Test
  void aTrayIsSplitAndTwoAreMerged() {
    List<Piece> a = cast("A");
    List<Piece> b = cast("B");
    lay("A2", a.subList(0, 1));
    assertThat(trays()).extracting(TrayCard::label).containsExactlyInAnyOrder("A", "B", "A2");
    lay("AB", List.of(a.get(0), a.get(1), b.get(0), b.get(1)));
    assertThat(trays()).extracting(TrayCard::label).containsExactly("AB");
    assertThat(trays().get(0).pieces()).hasSize(4);
    visitor.post("/history", "/undo", Map.of());
    assertThat(trays()).extracting(TrayCard::label).containsExactlyInAnyOrder("A", "B", "A2");
    assertThat(
            visitor.post("/casting/trays", "/casting/trays/lay", Map.of("label", "X")).statusCode())
        .isEqualTo(422);
  }

  @Test
  void marksMixedUpIsAnAnswerAndTheTraceSaysAllThatItCouldBe() {
    List<Piece> a = cast("A");
    List<Piece> b = cast("B");
    lay("AB", List.of(a.get(0), b.get(0)));
    String path = "/piece/" + a.get(0).id();
    assertThat(visitor.page(path).select("#trace ~ ul").text())
        .contains(mark(a.get(0)))
        .doesNotContain(mark(b.get(0)));
    String tray = String.valueOf(trays().get(0).id());
    assertThat(trays().get(0).label()).isEqualTo("AB");
    assertThat(
            visitor
                .post("/casting/trays", "/casting/trays/mixed", Map.of("tray", tray))
                .statusCode())
        .isEqualTo(303);
    Document page = visitor.page(path);
    assertThat(page.select("#trace ~ ul").text()).contains(mark(a.get(0))).contains(mark(b.get(0)));
    assertThat(page.select("dl").text())
        .contains("marks mixed up")
        .contains("all that it could be");
    assertThat(visitor.page("/casting/trays").select("main").text())
        .contains("marks mixed up")
        .contains("each may be of cast " + mark(a.get(0)) + ", " + mark(b.get(0)));
  }
}
