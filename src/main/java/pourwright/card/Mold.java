package pourwright.card;

import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;

/**
 * A kind of mold that is there once or several times.
 *
 * @param vessel code of the vessel it makes
 * @param count how many of them there are, 0 when all are retired
 * @param piecesPerCast how many pieces one of them gives at a time
 * @param lifeCasts casts a mold of this kind is expected to last; house: 50, no standard number
 *     exists
 * @param leftoverOnly true for a small mold that is only filled with the rest of a mix
 * @param note anything worth reading
 * @param pieceValue what a piece of it is worth when the rest of a mix could fill it, in the
 *     studio's money; null where she said nothing
 */
public record Mold(
    String code,
    String name,
    String vessel,
    int count,
    int piecesPerCast,
    int lifeCasts,
    boolean leftoverOnly,
    @Nullable String note,
    @Nullable Double pieceValue)
    implements Card {
  /** House estimate where no mold of the kind has failed yet. */
  public static final int LIFE_CASTS = 50;

  /** Without a value of its piece. */
  public Mold(
      String code,
      String name,
      String vessel,
      int count,
      int piecesPerCast,
      int lifeCasts,
      boolean leftoverOnly,
      @Nullable String note) {
    this(code, name, vessel, count, piecesPerCast, lifeCasts, leftoverOnly, note, null);
  }

  /** Checks the counts. */
  public Mold {
    Written.head("mold", code, name);
    pourwright.material.Material.checkCode("vessel", vessel);
    Check.between("count", count, 0, 1000);
    Check.between("pieces_per_cast", piecesPerCast, 1, 1000);
    Check.between("life_casts", lifeCasts, 1, 100_000);
    if (pieceValue != null) {
      Check.between("piece_value", pieceValue, 0, 100_000);
    }
  }

  /** The same kind with another number of them. */
  public Mold withCount(int molds) {
    return new Mold(
        code, name, vessel, molds, piecesPerCast, lifeCasts, leftoverOnly, note, pieceValue);
  }

  @Override
  public CardKind kind() {
    return CardKind.MOLD;
  }
}
