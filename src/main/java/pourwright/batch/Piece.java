package pourwright.batch;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One vessel or candle with its mark.
 *
 * @param id the ledger's number, from 1
 * @param mark the mark on it
 * @param vesselDesign code of the vessel card
 * @param madeIn the batch it came out of: its cast, or its pour when the vessel was bought
 * @param vesselLot the lot a bought vessel came from, if it was bought
 * @param tray the tray card it lies on, if it does
 * @param refillOf the piece that it was before it came back for a refill, if it did
 * @param grade how good it is, null while not sorted
 * @param state where it stands
 */
public record Piece(
    long id,
    Mark mark,
    String vesselDesign,
    long madeIn,
    @Nullable Long vesselLot,
    @Nullable Long tray,
    @Nullable Long refillOf,
    @Nullable Grade grade,
    PieceState state) {

  /** Code of the candle's card once it was poured, also when it is picked. */
  public Optional<String> candle() {
    return PieceState.candleOf(state);
  }

  /** When it came to where it stands. */
  public Instant since() {
    return state.since();
  }
}
