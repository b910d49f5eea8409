package pourwright.work;

import java.util.Optional;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.Mark;

/**
 * Closes a pour that was stopped for safety: nothing was filled, what was drawn stays drawn. To
 * take it back opens the pour again where it was.
 */
public final class StopPour {
  private static final String VERB = "stopped a pour";
  private final Doing doing;

  StopPour(Doing doing) {
    this.doing = doing;
  }

  /** Stops a running pour; gives its mark. */
  public Outcome<Mark> run(Act act, long pour) {
    return doing.once(
        act, VERB, turn -> stop(turn, pour), (books, deed) -> mark(books, deed, pour));
  }

  private static Outcome<Mark> stop(Turn turn, long pour) {
    Optional<Outcome<Mark>> refusal = Finishing.refusal(turn, pour, BatchKind.POUR);
    if (refusal.isPresent()) {
      return refusal.get();
    }
    Deed deed = turn.deed(Subject.of(Subject.Kind.BATCH, pour));
    turn.books().batches().finish(pour, deed);
    return Turn.done(deed, mark(turn.books(), deed, pour));
  }

  private static Mark mark(Books books, Deed deed, long pour) {
    return Doing.known(books.batches().batch(pour).map(Batch::mark), deed);
  }
}
