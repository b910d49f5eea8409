package pourwright.work;

import java.util.List;
import pourwright.batch.RecordedStep;

/**
 * Counts that a pour's pitcher was heated again. House: once. More often only with a reason, which
 * is kept with it; the cooling clock begins anew.
 */
public final class Reheat {
  private final Doing doing;
  private final RecordStep steps;

  Reheat(Doing doing, RecordStep steps) {
    this.doing = doing;
    this.steps = steps;
  }

  /** Counts; the act's note is the reason, asked for above the house's limit. */
  public Outcome<RecordedStep> run(Act act, long pour) {
    long before = doing.look(books -> count(books, pour));
    if (before >= PourWalk.REHEATS_MOST && act.note().isBlank()) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE,
          "this wax was heated again before (house: at most " + PourWalk.REHEATS_MOST + ")",
          "write down why it is heated once more, or let it go to waste");
    }
    return steps.run(act, new RecordStep.Request(pour, PourWalk.REHEAT, List.of(), null));
  }

  /** How often a pour's pitcher was heated again. */
  static long count(Books books, long pour) {
    return books.batches().steps(pour).stream()
        .filter(s -> s.key().equals(PourWalk.REHEAT))
        .count();
  }
}
