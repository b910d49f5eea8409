package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import pourwright.batch.Batch;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.stock.Amount;
import pourwright.work.Act;
import pourwright.work.AdvancePieces;
import pourwright.work.FinishCast;
import pourwright.work.Outcome;
import pourwright.work.Reason;
import pourwright.work.RecordStep;
import pourwright.work.Studio;

/**
 * What the books must do, whichever database they are kept in. The contracts of the single books
 * stand on each other, so that one class of each database takes them all on.
 */
abstract class BooksContract {
  Bench bench;
  Studio studio;

  abstract Bench open() throws Exception;

  @BeforeEach
  void openTheStudio() throws Exception {
    bench = open();
    studio = bench.studio;
  }

  @AfterEach
  void closeTheStudio() {
    assertThat(bench.store.keptRowsWrong()).as("kept tables agree with the ledger").isZero();
    bench.close();
  }

  /** What one sees in the books; keeps the compiler from guessing at overloads. */
  record Seen<T>(T it) {}

  <T> Seen<T> see(java.util.function.Function<pourwright.work.Books, T> reading) {
    return new Seen<>(studio.look(reading));
  }

  static Act act() {
    return Bench.act();
  }

  static Reason reason(Outcome<?> outcome) {
    assertThat(outcome).isInstanceOf(Outcome.Refused.class);
    Outcome.Refused<?> refused = (Outcome.Refused<?>) outcome;
    assertThat(refused.sentence()).isNotBlank();
    assertThat(refused.hint()).isNotBlank();
    return refused.reason();
  }

  RecordStep.Request powder(long batch, double grams) {
    return new RecordStep.Request(
        batch,
        "powder",
        List.of(new RecordStep.Taken("grey-powder", null, Amount.ofGrams(grams))),
        21.5);
  }

  /** Casts vessels and brings them to dry. */
  List<Piece> dryVessels(int count) {
    Batch batch = studio.startCast.run(act(), Bench.castPlan("bollard", count)).made();
    studio.recordStep.run(act(), powder(batch.id(), 100.0 * count));
    List<Piece> pieces =
        studio
            .finishCast
            .run(
                act(),
                new FinishCast.Request(
                    batch.id(), List.of(new FinishCast.Demolded("bollard", count)), "A"))
            .made();
    List<Long> ids = pieces.stream().map(Piece::id).toList();
    advance(ids, PieceStep.HARDENED);
    return advance(ids, PieceStep.DRIED);
  }

  List<Piece> advance(List<Long> ids, PieceStep step) {
    return studio.advancePieces.run(act(), AdvancePieces.Request.of(ids, step)).made();
  }

  static List<Long> ids(List<Piece> pieces) {
    return pieces.stream().map(Piece::id).toList();
  }
}
