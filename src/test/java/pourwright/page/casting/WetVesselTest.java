package pourwright.page.casting;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.batch.PlannedStep;
import pourwright.page.OpenStudio;
import pourwright.page.Visitor;
import pourwright.work.AdvancePieces;
import pourwright.work.BeginPour;
import pourwright.work.FinishCast;
import pourwright.work.RecordStep;

/** A vessel that was proved wax-tight and got wet again, at the pouring bench. */
class WetVesselTest {
  @Test
  void theBenchRefusesItByItsMarkUntilItIsDryAgain(@TempDir Path folder) {
    try (OpenStudio open = new OpenStudio(folder).withDemoCards()) {
      Piece vessel = waxTight(open);
      Batch pour =
          open.studio.beginPour.run(open.act(), new BeginPour.Request("bollard-rain", 1, 0)).made();
      for (PlannedStep step : pour.plan().steps()) {
        open.studio.recordStep.run(
            open.act(), new RecordStep.Request(pour.id(), step.key(), List.of(), null));
      }
      Visitor visitor = open.visitor();
      String bench = "/pouring/" + pour.id();
      Map<String, String> filled = finishForm(visitor.page(bench), vessel);
      advance(open, vessel, PieceStep.WETTED);
      HttpResponse<String> posted = visitor.post(bench + "/finish", filled);
      assertThat(posted.statusCode()).isEqualTo(303);
      Document after = visitor.page(bench);
      assertThat(after.select(".said").text())
          .contains("Vessel " + vessel.mark().text())
          .contains("damp again cannot be poured")
          .contains("Pour only into vessels that are dry");
      assertThat(now(open, vessel).state().code()).isEqualTo("Damp");
      assertThat(after.select("input[name=piece]")).isEmpty();
      advance(open, vessel, PieceStep.DRIED);
      visitor.post(bench + "/finish", finishForm(visitor.page(bench), vessel));
      assertThat(now(open, vessel).state().code()).isEqualTo("Resting");
    }
  }

  /** The form as it stood on the screen while the vessel was dry. */
  private static Map<String, String> finishForm(Document page, Piece vessel) {
    Map<String, String> fields = new LinkedHashMap<>();
    page.select("form[action$=/finish] input[type=hidden]")
        .forEach(i -> fields.put(i.attr("name"), i.attr("value")));
    assertThat(page.select("input[name=piece]").eachAttr("value"))
        .containsExactly(String.valueOf(vessel.id()));
    fields.put("piece", String.valueOf(vessel.id()));
    fields.put("by", "AB");
    return fields;
  }

  private static Piece now(OpenStudio open, Piece vessel) {
    return open.studio.look(b -> b.pieces().piece(vessel.id())).orElseThrow();
  }

  private static Piece waxTight(OpenStudio open) {
    BatchPlan plan =
        new BatchPlan(
            BatchKind.CAST,
            "grey",
            1,
            List.of(new BatchPlan.Makes("bollard", 1, 1, "bollard-mold")),
            List.of(),
            null);
    long cast = open.studio.startCast.run(open.act(), plan).made().id();
    FinishCast.Request out =
        new FinishCast.Request(cast, List.of(new FinishCast.Demolded("bollard", 1)), null);
    Piece vessel = open.studio.finishCast.run(open.act(), out).made().get(0);
    for (PieceStep step :
        List.of(PieceStep.HARDENED, PieceStep.DRIED, PieceStep.SEEP_TEST, PieceStep.HELD_WAX)) {
      advance(open, vessel, step);
    }
    return vessel;
  }

  private static void advance(OpenStudio open, Piece vessel, PieceStep step) {
    open.studio
        .advancePieces
        .run(open.act(), AdvancePieces.Request.of(List.of(vessel.id()), step))
        .made();
  }
}
