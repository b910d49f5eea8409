package pourwright.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.card.CardBook;
import pourwright.card.Mold;
import pourwright.cast.Leftover;
import pourwright.cast.LeftoverPacking;

/** Which small molds the rest of a mix fills best. */
public final class RestOfMix {
  private RestOfMix() {}

  /**
   * The molds that stand free for a rest: those kept for rests, or all of them, less those of casts
   * under way. Each piece is worth what its mold's card says, one where it says nothing; of
   * fillings worth the same the one that uses most wins.
   *
   * @param volumeMl what is left, in ml
   * @param smallOnly only molds kept for the rest of a mix
   */
  public static Leftover of(Books books, double volumeMl, boolean smallOnly) {
    CardBook book = Drawers.book(books);
    Map<String, Integer> busy = new HashMap<>();
    for (Batch batch : books.batches().running()) {
      if (batch.plan().kind() == BatchKind.CAST) {
        for (BatchPlan.Makes makes : batch.plan().makes()) {
          String mold = makes.mold();
          if (mold != null) {
            busy.merge(mold, makes.count(), Integer::sum);
          }
        }
      }
    }
    List<Leftover.Mold> free = new ArrayList<>();
    for (Mold mold : book.all(Mold.class)) {
      if (mold.leftoverOnly() || !smallOnly) {
        int pieces = mold.count() * mold.piecesPerCast() - busy.getOrDefault(mold.code(), 0);
        double each = book.vessel(mold.vessel()).mixMl().value();
        if (pieces > 0) {
          Double worth = mold.pieceValue();
          free.add(new Leftover.Mold(mold.name(), each, pieces, worth == null ? 1 : worth));
        }
      }
    }
    return new Leftover(volumeMl, free, Leftover.NO_LIMIT);
  }

  /** The best filling by the packing that the house has. */
  public static Leftover.Filling fill(Leftover leftover) {
    return ServiceLoader.load(LeftoverPacking.class)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no packing of leftovers is in the house"))
        .fill(leftover);
  }
}
