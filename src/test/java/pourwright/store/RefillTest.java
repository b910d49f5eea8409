package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import pourwright.batch.Batch;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.batch.PieceStep;
import pourwright.cost.Accounts;
import pourwright.stock.Trace;
import pourwright.work.AdvancePieces;
import pourwright.work.Bookkeeping;
import pourwright.work.FinishCast;
import pourwright.work.FinishPour;
import pourwright.work.Outcome;
import pourwright.work.RecordStep;
import pourwright.work.RefillVessel;
import pourwright.work.Signed;

/** A vessel that comes back empty: cleared, a new mark, filled again, three times at most. */
class RefillTest {
  private final Bench bench = Bench.onSqlite();

  @AfterEach
  void close() {
    bench.close();
  }

  private void move(long piece, PieceStep... steps) {
    for (PieceStep step : steps) {
      Outcome<?> outcome =
          bench.studio.advancePieces.run(
              Bench.act(), AdvancePieces.Request.of(List.of(piece), step));
      assertThat(outcome.isDone()).as(step + " " + outcome).isTrue();
    }
  }

  private long vessel() {
    bench.studio.receiveLot.run(
        Bench.act(),
        new pourwright.work.ReceiveLot.Request(
            "grey-powder",
            "P-1",
            pourwright.stock.Amount.ofGrams(900),
            null,
            null,
            null,
            new pourwright.stock.Price(900, "EUR")));
    Batch cast = bench.studio.startCast.run(Bench.act(), Bench.castPlan("bollard", 1)).made();
    bench.studio.recordStep.run(
        Bench.act(),
        new RecordStep.Request(
            cast.id(),
            "powder",
            List.of(
                new RecordStep.Taken("grey-powder", null, pourwright.stock.Amount.ofGrams(900))),
            20.0));
    long id =
        bench
            .studio
            .finishCast
            .run(
                Bench.act(),
                new FinishCast.Request(
                    cast.id(), List.of(new FinishCast.Demolded("bollard", 1)), null))
            .made()
            .get(0)
            .id();
    move(id, PieceStep.HARDENED, PieceStep.DRIED, PieceStep.SEEP_TEST, PieceStep.HELD_WAX);
    return id;
  }

  private void sellFilled(long vessel) {
    Batch pour = bench.studio.startPour.run(Bench.act(), Bench.pourPlan("rain", 1)).made();
    Outcome<List<Piece>> filled =
        bench.studio.finishPour.run(
            Bench.act(),
            new FinishPour.Request(
                pour.id(), List.of(new FinishPour.Filled("rain", List.of(vessel))), List.of()));
    assertThat(filled.isDone()).as(filled.toString()).isTrue();
    Signed.forSale(bench.studio, "rain");
    move(vessel, PieceStep.RESTING, PieceStep.RESTED, PieceStep.SOLD, PieceStep.CAME_BACK);
  }

  private Outcome<Piece> clear(long piece, boolean dried) {
    return bench.studio.refillVessel.run(
        Bench.act(), new RefillVessel.Request(piece, true, true, dried, true));
  }

  @Test
  void itGetsANewMarkAndIsTracedToTheOldAndItsLots() {
    long old = vessel();
    sellFilled(old);
    assertThat(clear(old, false))
        .isInstanceOfSatisfying(
            Outcome.Refused.class,
            r -> assertThat(r.sentence()).isEqualTo("it was not dried to constant mass"));
    Piece fresh = clear(old, true).made();
    assertThat(fresh.refillOf()).isEqualTo(old);
    assertThat(fresh.state()).isInstanceOf(PieceState.Dry.class);
    assertThat(fresh.state().tightness()).isEqualTo(pourwright.batch.Tightness.NONE);
    Trace.Reached back = bench.studio.traceBack(new Trace.Node(Trace.Kind.PIECE, fresh.id()));
    assertThat(back.of(Trace.Kind.PIECE)).containsExactly(old);
    assertThat(back.of(Trace.Kind.LOT)).hasSize(1);
    assertThat(clear(old, true).isDone()).isFalse();
    // 9.00 of powder: sold with the first filling, and an empty vessel is worth nothing
    assertThat(
            bench
                .studio
                .look(b -> Bookkeeping.of(b, ZoneOffset.UTC))
                .journal()
                .balances(LocalDate.of(2027, 1, 1)))
        .containsEntry(Accounts.SOLD, 900L)
        .doesNotContainKey(Accounts.PIECES);
  }

  @Test
  void aFourthTimeIsOneTooMany() {
    long id = vessel();
    for (int i = 0; i < 3; i++) {
      sellFilled(id);
      id = clear(id, true).made().id();
    }
    sellFilled(id);
    assertThat(clear(id, true))
        .isInstanceOfSatisfying(
            Outcome.Refused.class,
            r -> assertThat(r.sentence()).contains("filled again 3 times already"));
  }

  @Test
  void undoingTheClearingBringsTheOldPieceBack() {
    long old = vessel();
    sellFilled(old);
    Outcome<Piece> cleared = clear(old, true);
    bench.studio.undo.run(Bench.act(), cleared.deed().id()).made();
    PieceState state = bench.studio.look(b -> b.pieces().piece(old)).orElseThrow().state();
    assertThat(state).isInstanceOf(PieceState.CameBack.class);
    boolean there = bench.studio.look(b -> b.pieces().piece(cleared.made().id()).isPresent());
    assertThat(there).isFalse();
    assertThat(bench.store.unsound()).isEmpty();
    assertThat(bench.store.keptRowsWrong()).isZero();
  }
}
