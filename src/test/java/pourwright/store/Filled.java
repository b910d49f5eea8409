package pourwright.store;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import pourwright.batch.Batch;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.stock.Amount;
import pourwright.work.AdvancePieces;
import pourwright.work.AttachFile;
import pourwright.work.BurnTest;
import pourwright.work.CarryRest;
import pourwright.work.Customer;
import pourwright.work.DrawForBatch;
import pourwright.work.FinishCast;
import pourwright.work.FinishPour;
import pourwright.work.Reading;
import pourwright.work.RecordStep;
import pourwright.work.RunBurnTest;
import pourwright.work.Signed;
import pourwright.work.Subject;

/** Fills a studio with a little of everything, by the use cases and nothing else. */
final class Filled {
  private Filled() {}

  static void fill(Bench bench) {
    long powder = bench.lot("grey-powder", "P-1", 5000);
    bench.lot("soft-wax", "=1+1", 5000.000001);
    var cast = bench.studio.startCast.run(Bench.act(), Bench.castPlan("bollard", 2)).made();
    step(bench, cast, 900);
    long undone = step(bench, cast, 50);
    bench.studio.undo.run(Bench.act(), undone);
    List<Piece> vessels = vessels(bench, cast);
    pour(bench, vessels);
    aside(bench, powder, cast);
  }

  private static long step(Bench bench, Batch cast, double grams) {
    return bench
        .studio
        .recordStep
        .run(
            Bench.act(),
            new RecordStep.Request(
                cast.id(),
                "powder",
                List.of(new RecordStep.Taken("grey-powder", null, Amount.ofGrams(grams))),
                20.1))
        .deed()
        .id();
  }

  private static List<Piece> vessels(Bench bench, Batch cast) {
    List<Piece> vessels =
        bench
            .studio
            .finishCast
            .run(
                Bench.act(),
                new FinishCast.Request(
                    cast.id(), List.of(new FinishCast.Demolded("bollard", 2)), "A"))
            .made();
    for (PieceStep step :
        List.of(PieceStep.HARDENED, PieceStep.DRIED, PieceStep.SEEP_TEST, PieceStep.HELD_WAX)) {
      advance(bench, vessels, step);
    }
    return vessels;
  }

  private static void advance(Bench bench, List<Piece> pieces, PieceStep step) {
    bench.studio.advancePieces.run(
        Bench.act(), AdvancePieces.Request.of(pieces.stream().map(Piece::id).toList(), step));
  }

  private static void pour(Bench bench, List<Piece> vessels) {
    Batch pour = bench.studio.startPour.run(Bench.act(), Bench.pourPlan("rain", 2)).made();
    bench.studio.drawForBatch.run(
        Bench.act(), new DrawForBatch.Request(pour.id(), "soft-wax", null, Amount.ofGrams(400)));
    List<Long> ids = vessels.stream().map(Piece::id).toList();
    bench.studio.finishPour.run(
        Bench.act(),
        new FinishPour.Request(pour.id(), List.of(new FinishPour.Filled("rain", ids)), List.of()));
    Batch next = bench.studio.startPour.run(Bench.act(), Bench.pourPlan("rain", 1)).made();
    bench
        .studio
        .carryRest
        .run(Bench.act(), new CarryRest.Request(pour.id(), next.id(), Amount.ofGrams(20)))
        .made();
    advance(bench, vessels, PieceStep.RESTING);
    advance(bench, vessels, PieceStep.RESTED);
    OrderLine line =
        new OrderLine("1001", "rain", 1, 1, LocalDate.parse("2026-05-01"), "=HYPERLINK(\"x\")");
    bench.studio.customers.put(
        Bench.act(), new Customer("c1", "Ada \"Quay\"", "1 Pier\nHarbour", "", "", ""));
    bench.studio.orders.take(
        Bench.act(), new Order("1001", "shop", "c1", OrderState.OPEN, List.of(line)));
    long lineId = bench.studio.look(b -> b.orders().lineIds("1001").get(line.key()));
    Signed.forSale(bench.studio, "rain");
    bench.studio.advancePieces.run(
        Bench.act(), new AdvancePieces.Request(ids.subList(0, 1), PieceStep.PICKED, null, lineId));
  }

  private static void aside(Bench bench, long lot, Batch cast) {
    Subject batch = Subject.of(Subject.Kind.BATCH, cast.id());
    bench.studio.timers.start(Bench.act(), "set", batch, Duration.ofMinutes(40));
    bench.studio.recordReading.run(
        Bench.act(), List.of(Reading.fresh(batch, "mix_c", 21.0 / 7, bench.studio.now())));
    bench.studio.attachFile.run(
        Bench.act(),
        new AttachFile.Request(batch, "image/png", "top.png"),
        new ByteArrayInputStream("pixels".getBytes(StandardCharsets.UTF_8)));
    bench.studio.placeHold.run(Bench.act(), Subject.of(Subject.Kind.LOT, lot), "lumps, \"grey\"");
    bench.studio.saveSetting.run(Bench.act(), "studio.name", "Undercroft – Lantern");
    var request =
        new RunBurnTest.Request(
            "rain", 1, "house", "first", List.of(new RunBurnTest.NewSample("A", null)));
    long test = bench.studio.burnTests.begin(Bench.act(), request).made().id();
    long sample = bench.studio.look(b -> b.burns().samples(test).get(0).id());
    long cycle = bench.studio.burnTests.light(Bench.act(), test, sample).made().id();
    bench.studio.burnTests.look(
        Bench.act(),
        cycle,
        new BurnTest.Look(
            30, 401.2, 27.5, null, null, null, 39.0, null, "none", null, null, null, false, true,
            null, ""));
  }
}
