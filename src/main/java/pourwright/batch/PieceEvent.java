package pourwright.batch;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One thing that happened to one piece.
 *
 * @param id the ledger's number, in the order of writing
 * @param piece the piece's number
 * @param step what happened
 * @param at when
 * @param batch the pour it belongs to, for {@link PieceStep#POURED} and {@link PieceStep#SEEP_TEST}
 * @param orderLine the order line, for picking and selling
 * @param grade for {@link PieceStep#GRADED}
 * @param design the candle card's code, for {@link PieceStep#POURED}
 * @param deed the deed
 */
public record PieceEvent(
    long id,
    long piece,
    PieceStep step,
    Instant at,
    @Nullable Long batch,
    @Nullable Long orderLine,
    @Nullable Grade grade,
    @Nullable String design,
    long deed) {

  /** The same fact as part of a deed. */
  public PieceEvent in(long newDeed) {
    return new PieceEvent(id, piece, step, at, batch, orderLine, grade, design, newDeed);
  }
}
