package pourwright.page.pouring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.batch.RecordedStep;
import pourwright.page.OpenStudio;
import pourwright.page.Visitor;
import pourwright.work.AdvancePieces;
import pourwright.work.BurnTest;
import pourwright.work.FinishCast;
import pourwright.work.RunBurnTest;

/**
 * The pouring bench without a browser: a studio with the invented cards, and the taps of a pour.
 */
abstract class PouringBench {
  OpenStudio open;
  Visitor visitor;

  @BeforeEach
  void open(@TempDir Path folder) {
    open = new OpenStudio(folder).withDemoCards();
    visitor = open.visitor();
    visitor.post("/settings", "/settings/hand", Map.of("hand", "MB"));
  }

  @AfterEach
  void close() {
    open.close();
  }

  String begin(String candle, int count) {
    var answer =
        visitor.post(
            "/pouring",
            "/pouring",
            Map.of("candle", candle, "count", "" + count, "top_up", "0", "by", "MB"));
    assertThat(answer.statusCode()).isEqualTo(303);
    return answer.headers().firstValue("Location").orElseThrow();
  }

  void step(String pour, Map<String, String> fields) {
    Map<String, String> all = new LinkedHashMap<>(fields);
    all.putIfAbsent("by", "MB");
    assertThat(visitor.post(pour, pour + "/step", all).statusCode()).isEqualTo(303);
  }

  void toScent(String pour) {
    for (int i = 0; i < 5; i++) {
      step(pour, Map.of());
    }
  }

  List<RecordedStep> steps(String pour) {
    long id = Long.parseLong(pour.replaceAll(".*/", ""));
    return open.studio.look(books -> books.batches().steps(id));
  }

  long burnt(String candle, int cycles, double gramsPerHour) {
    RunBurnTest tests = open.studio.burnTests;
    long test =
        tests
            .begin(
                open.act(),
                new RunBurnTest.Request(
                    candle,
                    1,
                    "house",
                    "how fast it burns",
                    List.of(new RunBurnTest.NewSample("A", null))))
            .made()
            .id();
    long sample = open.studio.<List<BurnTest.Sample>>look(b -> b.burns().samples(test)).get(0).id();
    for (int i = 0; i < cycles; i++) {
      long cycle = tests.light(open.act(), test, sample).made().id();
      for (int h = 0; h <= 3; h++) {
        tests.look(open.act(), cycle, weighed(60.0 * h, 600 - gramsPerHour * h)).made();
      }
      tests.putOut(open.act(), cycle, "end of its cycle").made();
    }
    return test;
  }

  void waxTight(String vessel) {
    var studio = open.studio;
    BatchPlan plan =
        new BatchPlan(
            BatchKind.CAST,
            "grey",
            1,
            List.of(new BatchPlan.Makes(vessel, 1, 1, vessel + "-mold")),
            List.of(),
            null);
    long cast = studio.startCast.run(open.act(), plan).made().id();
    var demolded = List.of(new FinishCast.Demolded(vessel, 1));
    List<Long> ids =
        studio
            .finishCast
            .run(open.act(), new FinishCast.Request(cast, demolded, null))
            .made()
            .stream()
            .map(Piece::id)
            .toList();
    for (PieceStep step :
        List.of(PieceStep.HARDENED, PieceStep.DRIED, PieceStep.SEEP_TEST, PieceStep.HELD_WAX)) {
      studio.advancePieces.run(open.act(), AdvancePieces.Request.of(ids, step)).made();
    }
  }

  static BurnTest.Look weighed(double minute, double grams) {
    return new BurnTest.Look(
        minute, grams, null, 50.0, 48.0, null, null, null, null, null, null, null, null, null, null,
        "");
  }

  String poured(String candle) {
    String pour = begin(candle, 1);
    toScent(pour);
    step(pour, Map.of());
    step(pour, Map.of());
    return pour;
  }

  static String id(String pour) {
    return pour.replaceAll(".*/", "");
  }
}
