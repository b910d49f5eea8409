package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pourwright.batch.Batch;
import pourwright.batch.Grade;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.batch.RecordedStep;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.stock.Amount;
import pourwright.stock.Trace;
import pourwright.work.AdvancePieces;
import pourwright.work.DrawForBatch;
import pourwright.work.FinishCast;
import pourwright.work.FinishPour;
import pourwright.work.Outcome;
import pourwright.work.PageOf;
import pourwright.work.PieceBook;
import pourwright.work.Reason;
import pourwright.work.Signed;
import pourwright.work.Subject;

/** Pieces, their lives, holds and traces. */
abstract class PieceBooksContract extends LotBooksContract {

  @Test
  void aVesselBecomesACandleStepByStepAndIsFoundByItsMark() {
    long powder = bench.lot("grey-powder", "P-1", 5000);
    long wax = bench.lot("soft-wax", "W-1", 5000);
    List<Piece> vessels = dryVessels(3);
    Batch pour = studio.startPour.run(act(), Bench.pourPlan("rain-bollard", 2)).made();
    FinishPour.Request fill =
        new FinishPour.Request(
            pour.id(),
            List.of(new FinishPour.Filled("rain-bollard", ids(vessels.subList(0, 2)))),
            List.of());
    assertThat(reason(studio.finishPour.run(act(), fill)))
        .isEqualTo(Reason.VESSEL_IS_NOT_PROVED_TIGHT);
    long tester = vessels.get(2).id();
    advance(List.of(tester), PieceStep.SEEP_TEST);
    advance(List.of(tester), PieceStep.HELD_WAX);
    studio.drawForBatch.run(
        act(), new DrawForBatch.Request(pour.id(), "soft-wax", null, Amount.ofGrams(400)));
    List<Piece> candles = studio.finishPour.run(act(), fill).made();
    assertThat(candles).extracting(p -> p.state().code()).containsExactly("Poured", "Poured");
    assertThat(reason(studio.finishPour.run(act(), fill))).isEqualTo(Reason.BATCH_IS_FINISHED);
    advance(ids(candles), PieceStep.RESTING);
    Order order =
        new Order(
            "1001",
            "shop",
            null,
            OrderState.OPEN,
            List.of(new OrderLine("1001", "rain-bollard", 1, 2, null, null)));
    studio.orders.take(act(), order);
    long line = studio.look(b -> b.orders().lineIds("1001").values().iterator().next());
    AdvancePieces.Request pick =
        new AdvancePieces.Request(ids(candles), PieceStep.PICKED, null, line);
    assertThat(reason(studio.advancePieces.run(act(), pick)))
        .isEqualTo(Reason.PIECE_IS_NOT_THERE_YET);
    advance(ids(candles), PieceStep.RESTED);
    assertThat(reason(studio.advancePieces.run(act(), pick))).isEqualTo(Reason.NOT_PROVED_FOR_SALE);
    Signed.forSale(studio, "rain-bollard");
    studio.advancePieces.run(act(), pick);
    assertThat(see(b -> b.orders().filled(List.of(line))).it()).isEqualTo(Map.of(line, 2));

    assertThat(studio.find(candles.get(0).mark()))
        .contains(Subject.of(Subject.Kind.PIECE, candles.get(0).id()));
    Trace.Reached back = studio.traceBack(new Trace.Node(Trace.Kind.PIECE, candles.get(0).id()));
    assertThat(back.of(Trace.Kind.LOT)).containsExactlyInAnyOrder(powder, wax);
    Trace.Reached onward = studio.traceOnward(new Trace.Node(Trace.Kind.LOT, wax));
    assertThat(onward.of(Trace.Kind.PIECE)).containsExactlyElementsOf(ids(candles));
    assertThat(onward.of(Trace.Kind.ORDER_LINE)).containsExactly(line);
    assertThat(studio.traceOnward(new Trace.Node(Trace.Kind.LOT, powder)).of(Trace.Kind.PIECE))
        .hasSize(3);

    List<Long> lots = List.of(wax, powder);
    assertThat(see(b -> b.burns().weighedIntoPassed(lots)).it()).as("nothing burnt").isEmpty();
    advance(ids(candles).subList(1, 2), PieceStep.UNPICKED);
    Signed.forSale(studio, "rain-bollard", candles.get(1).id());
    assertThat(see(b -> b.burns().weighedIntoPassed(lots)).it())
        .containsExactlyInAnyOrderElementsOf(lots);
    assertThat(see(b -> b.burns().weighedIntoPassed(List.of())).it()).isEmpty();
    assertThat(see(b -> b.burns().extremes("rain-bollard", 1)).it().hours()).isNull();
  }

  @Test
  void aPieceSortedAsPlanterTakesNoWickAndAWetVesselIsNotPoured() {
    bench.lot("grey-powder", "P-1", 5000);
    List<Piece> vessels = dryVessels(2);
    List<Long> first = List.of(vessels.get(0).id());
    studio.advancePieces.run(
        act(), new AdvancePieces.Request(first, PieceStep.GRADED, Grade.PLANTER, null));
    advance(List.of(vessels.get(1).id()), PieceStep.WETTED);
    Batch pour = studio.startPour.run(act(), Bench.pourPlan("rain-bollard", 1)).made();
    for (Piece vessel : vessels) {
      FinishPour.Request fill =
          new FinishPour.Request(
              pour.id(),
              List.of(new FinishPour.Filled("rain-bollard", List.of(vessel.id()))),
              List.of());
      assertThat(reason(studio.finishPour.run(act(), fill)))
          .isEqualTo(Reason.PIECE_IS_NOT_THERE_YET);
    }
  }

  @Test
  void aHeldLotIsNotDrawnAndItsCandlesAreNotPickedUntilANamedPersonLiftsTheHold() {
    long lot = bench.lot("grey-powder", "P-1", 5000);
    List<Piece> vessels = dryVessels(1);
    long hold = studio.placeHold.run(act(), Subject.of(Subject.Kind.LOT, lot), "lumps").made().id();
    assertThat(studio.stopping(vessels.get(0).id())).hasSize(1);
    Batch next = studio.startCast.run(act(), Bench.castPlan("bollard", 1)).made();
    RecordedStep step = studio.recordStep.run(act(), powder(next.id(), 10)).made();
    assertThat(step.used().get(0).lot()).isNull();
    assertThat(reason(studio.liftHold.run(act(), hold, " ", "fine again")))
        .isEqualTo(Reason.A_NAME_IS_NEEDED);
    Outcome<?> given =
        studio.advancePieces.run(act(), AdvancePieces.Request.of(ids(vessels), PieceStep.GIVEN));
    assertThat(reason(given)).isEqualTo(Reason.IT_IS_HELD);
    studio.liftHold.run(act(), hold, "Mara Kell", "sieved, fine again");
    assertThat(studio.stopping(vessels.get(0).id())).isEmpty();
    assertThat(see(b -> b.holds().hold(hold).orElseThrow().liftedBy()).it()).isEqualTo("Mara Kell");
  }

  @Test
  void aMixedUpTrayTracesEachPieceThroughEveryCastOnIt() {
    long one = bench.lot("grey-powder", "P-1", 100);
    List<Piece> first = dryVessels(1);
    long two = bench.lot("grey-powder", "P-2", 100);
    List<Piece> second = dryVessels(1);
    List<Long> both = List.of(first.get(0).id(), second.get(0).id());
    long tray = studio.arrangeTrays.lay(act(), "B", both).made().id();
    Trace.Node piece = new Trace.Node(Trace.Kind.PIECE, both.get(0));
    assertThat(studio.traceBack(piece).of(Trace.Kind.LOT)).containsExactly(one);
    studio.arrangeTrays.mixUp(act(), tray);
    assertThat(studio.traceBack(piece).of(Trace.Kind.LOT)).containsExactly(one, two);
    assertThat(see(b -> b.pieces().tray(tray).orElseThrow().mixedUp()).it()).isTrue();
  }

  @Test
  void piecesAreListedByDesignAndStateAndCounted() {
    bench.lot("grey-powder", "P-1", 5000);
    dryVessels(3);
    assertThat(see(b -> b.pieces().counts()).it())
        .isEqualTo(Map.of(new PieceBook.DesignState("bollard", "Dry"), 3L));
    PageOf<Piece> page =
        studio.look(b -> b.pieces().list(new PieceBook.Which("bollard", "Dry"), null, 2));
    assertThat(page.items()).hasSize(2);
    assertThat(page.next()).isNotNull();
    assertThat(see(b -> b.pieces().trays()).it()).hasSize(1);
  }

  @Test
  void undoingTheEndOfACastTakesItsVesselsBack() {
    bench.lot("grey-powder", "P-1", 5000);
    Batch batch = studio.startCast.run(act(), Bench.castPlan("bollard", 2)).made();
    FinishCast.Request end =
        new FinishCast.Request(batch.id(), List.of(new FinishCast.Demolded("bollard", 2)), null);
    Outcome<List<Piece>> done = studio.finishCast.run(act(), end);
    Outcome<?> undo = studio.undo.run(act(), done.deed().id());
    assertThat(see(b -> b.pieces().counts()).it()).isEmpty();
    assertThat(studio.find(done.made().get(0).mark())).isEmpty();
    studio.finishCast.run(act(), end);
    assertThat(reason(studio.undo.run(act(), undo.deed().id())))
        .isEqualTo(Reason.LATER_DEEDS_STAND_ON_IT);
  }

  @Test
  void whatBecameOfTheVesselsOfACastIsCountedAndAnUndoTakesItBack() {
    bench.lot("grey-powder", "P-1", 5000);
    List<Piece> vessels = dryVessels(4);
    long cast = vessels.get(0).madeIn();
    assertThat(see(b -> b.pieces().fates(List.of(cast))).it())
        .isEqualTo(new PieceBook.Fates(4, 0, 0, 0));
    studio.advancePieces.run(
        act(), AdvancePieces.Request.of(ids(vessels.subList(0, 1)), PieceStep.SCRAPPED));
    studio.advancePieces.run(
        act(),
        new AdvancePieces.Request(
            ids(vessels.subList(1, 2)), PieceStep.GRADED, Grade.PLANTER, null));
    assertThat(see(b -> b.pieces().fates(List.of(cast))).it())
        .isEqualTo(new PieceBook.Fates(4, 0, 2, 0));
    studio.undo.run(act(), studio.history(null, 1).items().get(0).id());
    assertThat(see(b -> b.pieces().fates(List.of(cast))).it())
        .isEqualTo(new PieceBook.Fates(4, 0, 1, 0));
  }
}
