package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.plan.OwnYield;

/** Reads off the ledger how her own latest casts fared, step by step. */
public final class YieldReader {
  /** Newest casts that are looked at: what she does now, not what she did as a beginner. */
  private static final int CASTS_MOST = 60;

  private YieldReader() {}

  /** Her yield by step. */
  public static OwnYield of(Books books) {
    List<Long> casts = new ArrayList<>();
    int cast = 0;
    for (Batch batch : books.batches().list(BatchKind.CAST, null, CASTS_MOST).items()) {
      if (!batch.isRunning()) {
        casts.add(batch.id());
        cast += batch.plan().makes().stream().mapToInt(BatchPlan.Makes::count).sum();
      }
    }
    if (casts.isEmpty()) {
      return OwnYield.NONE;
    }
    PieceBook.Fates fates = books.pieces().fates(casts);
    return new OwnYield(
        new OwnYield.Step(cast, Math.min(cast, fates.demolded())),
        new OwnYield.Step(fates.poured() + fates.spoiledBefore(), fates.poured()),
        new OwnYield.Step(fates.poured(), fates.poured() - fates.spoiledAfter()));
  }
}
