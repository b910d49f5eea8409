package pourwright.work;

import java.util.List;
import java.util.Optional;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Mark;

/** Begins a cast or a pour: it gets its mark and its planned steps are kept as they are now. */
public final class StartBatch {
  private final Doing doing;
  private final String verb;
  private final BatchKind kind;

  StartBatch(Doing doing, BatchKind kind) {
    this.doing = doing;
    this.kind = kind;
    this.verb = "began a " + kind.words();
  }

  /** Begins, or says which hold stands in the way. */
  public Outcome<Batch> run(Act act, BatchPlan plan) {
    if (plan.kind() != kind) {
      throw new IllegalArgumentException("a plan for a " + plan.kind().words());
    }
    return doing.once(
        act,
        verb,
        turn -> start(turn, plan),
        (books, deed) -> Doing.known(books.batches().batch(deed.subject().number()), deed));
  }

  private static Outcome<Batch> start(Turn turn, BatchPlan plan) {
    Optional<Hold> hold = holdOn(turn.books(), plan);
    if (hold.isPresent()) {
      return Outcome.refused(
          Reason.IT_IS_HELD,
          hold.get().subject().id() + " is on hold: " + hold.get().reason(),
          "make something else, or have the hold lifted by name");
    }
    long id = turn.books().batches().nextId();
    Mark mark = Mark.ofNumber(turn.books().pieces().nextMark());
    Deed deed = turn.deed(Subject.of(Subject.Kind.BATCH, id));
    Batch batch = new Batch(id, mark, plan, turn.now(), null, turn.act().by(), deed.id());
    turn.books().batches().add(batch);
    return Turn.done(deed, batch);
  }

  private static Optional<Hold> holdOn(Books books, BatchPlan plan) {
    List<String> codes =
        java.util.stream.Stream.concat(
                java.util.stream.Stream.of(plan.card()),
                plan.makes().stream().map(BatchPlan.Makes::design))
            .map(code -> "/" + code)
            .toList();
    return books.holds().standing().stream()
        .filter(h -> h.subject().kind() == Subject.Kind.CARD)
        .filter(h -> codes.stream().anyMatch(h.subject().id()::endsWith))
        .findFirst();
  }
}
