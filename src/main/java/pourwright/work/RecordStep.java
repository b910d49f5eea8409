package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.batch.RecordedStep;
import pourwright.batch.RecordedStep.Used;
import pourwright.quantity.Check;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.FirstExpiredFirstOut.Draw;
import pourwright.stock.FirstExpiredFirstOut.Line;

/**
 * Records a step of a batch as it was done. What was weighed is drawn from the lots in the same
 * breath; what the ledger does not have is written down as missing and not lost, for the powder is
 * in the bucket whatever the ledger says.
 */
public final class RecordStep {
  private static final String VERB = "recorded a step";
  private final Doing doing;

  RecordStep(Doing doing) {
    this.doing = doing;
  }

  /**
   * An amount that was really used.
   *
   * @param lot the lot it came from; null for the one that expires first
   * @param amount above zero
   */
  public record Taken(String material, @Nullable Long lot, Amount amount) {}

  /**
   * A step.
   *
   * @param batch a running batch
   * @param key the planned step's key, or a new one
   * @param taken what went in
   * @param temperatureC what the thermometer said, if it was read
   */
  public record Request(long batch, String key, List<Taken> taken, @Nullable Double temperatureC) {

    /** Keeps its own copy. */
    public Request {
      taken = List.copyOf(taken);
    }
  }

  /** Records; the act's note goes with the step. */
  public Outcome<RecordedStep> run(Act act, Request request) {
    return doing.once(
        act,
        VERB,
        turn -> record(turn, request),
        (books, deed) -> Doing.known(books.batches().stepOf(deed.id()), deed));
  }

  private static Outcome<RecordedStep> record(Turn turn, Request request) {
    Optional<Batch> batch = turn.books().batches().batch(request.batch());
    if (batch.isEmpty()) {
      return Doing.notOnFile("batch " + request.batch());
    }
    if (!batch.get().isRunning()) {
      return Outcome.refused(
          Reason.BATCH_IS_FINISHED,
          "batch " + batch.get().mark().text() + " is finished",
          "undo the finish first if something was left out");
    }
    if (request.temperatureC() != null) {
      Check.between("temperature_c", request.temperatureC(), -60, 400);
    }
    Map<Long, Amount> asked = new TreeMap<>();
    for (Taken taken : request.taken()) {
      Optional<Outcome<RecordedStep>> refusal = refusal(turn, taken, asked);
      if (refusal.isPresent()) {
        return refusal.get();
      }
    }
    Deed deed = turn.deed(Subject.of(Subject.Kind.BATCH, request.batch()));
    List<Used> used = new ArrayList<>();
    for (Taken taken : request.taken()) {
      used.addAll(draw(turn, request.batch(), taken, deed));
    }
    RecordedStep step =
        new RecordedStep(
            0,
            request.batch(),
            request.key(),
            used,
            request.temperatureC(),
            turn.act().note(),
            turn.now(),
            turn.act().by(),
            deed.id());
    return Turn.done(deed, turn.books().batches().append(step));
  }

  private static Optional<Outcome<RecordedStep>> refusal(
      Turn turn, Taken taken, Map<Long, Amount> asked) {
    if (!taken.amount().isPositive()) {
      return Optional.of(
          Outcome.refused(
              Reason.AMOUNT_MUST_BE_POSITIVE,
              Say.amount(taken.amount()) + " of " + taken.material(),
              "give what was used, above zero, or leave it out"));
    }
    if (taken.lot() == null) {
      return Optional.empty();
    }
    Optional<Outcome<RecordedStep>> alone = Drawing.refusal(turn, taken.lot(), taken.amount());
    return alone.isPresent()
        ? alone
        : Drawing.refusal(
            turn, taken.lot(), asked.merge(taken.lot(), taken.amount(), Amount::plus));
  }

  private static List<Used> draw(Turn turn, long batch, Taken taken, Deed deed) {
    List<Used> used = new ArrayList<>();
    Draw draw = Drawing.from(turn, taken.material(), taken.lot(), taken.amount());
    for (Line line : draw.lines()) {
      turn.books().lots().append(line.lot(), line.amount().negated(), Cause.DRAWN, batch, deed);
      used.add(new Used(taken.material(), line.lot(), line.amount()));
    }
    if (draw.missing().isPositive()) {
      used.add(new Used(taken.material(), null, draw.missing()));
    }
    return used;
  }
}
