package pourwright.work;

import java.util.Optional;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;

/** What cast and pour ask before they close. */
final class Finishing {
  private Finishing() {}

  /** Why a batch cannot be closed, if it cannot. */
  static <T> Optional<Outcome<T>> refusal(Turn turn, long id, BatchKind kind) {
    Optional<Batch> batch = turn.books().batches().batch(id);
    if (batch.isEmpty() || batch.get().plan().kind() != kind) {
      return Optional.of(Doing.notOnFile(kind.words() + " " + id));
    }
    if (!batch.get().isRunning()) {
      return Optional.of(
          Outcome.refused(
              Reason.BATCH_IS_FINISHED,
              "batch " + batch.get().mark().text() + " is finished already",
              "look at its pieces; undo the finish if they are wrong"));
    }
    return Optional.empty();
  }
}
