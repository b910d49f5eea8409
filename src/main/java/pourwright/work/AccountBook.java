package pourwright.work;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import pourwright.batch.PieceEvent;

/** The years of the ledger at once, as the books of account need them; undone deeds left out. */
public interface AccountBook {

  /**
   * A piece and the batch it came out of.
   *
   * @param vesselDesign code of the vessel's card
   * @param refillOf the piece that it was before, if it came back for a refill
   */
  record Made(long piece, long mark, String vesselDesign, long madeIn, @Nullable Long refillOf) {}

  /** The order that a line belongs to. */
  record LineOf(String order, String design, String channel) {}

  /** A value that a setting had from a deed on. */
  record Had(String key, String value, long deed) {}

  /** Codes of all materials that ever had a lot. */
  List<String> materials();

  /** All pieces by number. */
  List<Made> pieces();

  /** What happened to pieces that matters to money: poured, picked, sold, given, back, scrapped. */
  List<PieceEvent> passages();

  /** Order lines by number. */
  Map<Long, LineOf> lines();

  /** When each finished batch was finished. */
  Map<Long, Instant> finished();

  /** Every value of the settings whose key begins so, oldest first. */
  List<Had> had(String prefix);
}
