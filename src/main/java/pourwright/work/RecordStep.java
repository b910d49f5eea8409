package pourwright.work;

import java.time.Duration;
import java.time.Instant;
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
  private static final String SHEET = "entered a sheet";
  private static final Duration OLDEST = Duration.ofDays(60);
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
   * @param at when it was done, where it is entered later; null for now
   */
  public record Request(
      long batch,
      String key,
      List<Taken> taken,
      @Nullable Double temperatureC,
      @Nullable Instant at) {

    /** Keeps its own copy. */
    public Request {
      taken = List.copyOf(taken);
    }

    /** A step that is recorded as it is done. */
    public Request(long batch, String key, List<Taken> taken, @Nullable Double temperatureC) {
      this(batch, key, taken, temperatureC, null);
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

  /**
   * Enters a sheet that was written by hand: all its steps in their order, by one deed that one
   * undo takes back.
   *
   * @param steps of one batch, at least one
   */
  public Outcome<List<RecordedStep>> runAll(Act act, List<Request> steps) {
    return doing.once(
        act,
        SHEET,
        turn -> sheet(turn, steps),
        (books, deed) ->
            books.batches().steps(deed.subject().number()).stream()
                .filter(s -> s.deed() == deed.id())
                .toList());
  }

  private static Outcome<List<RecordedStep>> sheet(Turn turn, List<Request> steps) {
    if (steps.isEmpty() || steps.stream().anyMatch(s -> s.batch() != steps.get(0).batch())) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE, "a sheet without a step", "tick at least one line of the sheet");
    }
    Map<Long, Amount> asked = new TreeMap<>();
    for (Request step : steps) {
      Optional<Outcome<RecordedStep>> refusal = refusal(turn, step, asked);
      if (refusal.isPresent() && refusal.get() instanceof Outcome.Refused<?> refused) {
        return Outcome.refused(
            refused.reason(), step.key() + ": " + refused.sentence(), refused.hint());
      }
    }
    Deed deed = turn.deed(Subject.of(Subject.Kind.BATCH, steps.get(0).batch()));
    List<RecordedStep> recorded = new ArrayList<>();
    for (Request step : steps) {
      recorded.add(append(turn, step, deed));
    }
    return Turn.done(deed, recorded);
  }

  private static Outcome<RecordedStep> record(Turn turn, Request request) {
    Optional<Outcome<RecordedStep>> refusal = refusal(turn, request, new TreeMap<>());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    Deed deed = turn.deed(Subject.of(Subject.Kind.BATCH, request.batch()));
    return Turn.done(deed, append(turn, request, deed));
  }

  private static Optional<Outcome<RecordedStep>> refusal(
      Turn turn, Request request, Map<Long, Amount> asked) {
    Optional<Batch> batch = turn.books().batches().batch(request.batch());
    if (batch.isEmpty()) {
      return Optional.of(Doing.notOnFile("batch " + request.batch()));
    }
    if (!batch.get().isRunning()) {
      return Optional.of(
          Outcome.refused(
              Reason.BATCH_IS_FINISHED,
              "batch " + batch.get().mark().text() + " is finished",
              "undo the finish first if something was left out"));
    }
    Instant at = request.at();
    if (at != null && (at.isAfter(turn.now()) || at.isBefore(turn.now().minus(OLDEST)))) {
      return Optional.of(
          Outcome.refused(
              Reason.INPUT_CANNOT_BE,
              at.isAfter(turn.now()) ? "that moment is still to come" : "that is too long ago",
              "look at the day and the time; up to " + OLDEST.toDays() + " days back"));
    }
    if (request.temperatureC() != null) {
      Check.between("temperature_c", request.temperatureC(), -60, 400);
    }
    for (Taken taken : request.taken()) {
      Optional<Outcome<RecordedStep>> refusal = refusal(turn, taken, asked);
      if (refusal.isPresent()) {
        return refusal;
      }
    }
    return Optional.empty();
  }

  private static RecordedStep append(Turn turn, Request request, Deed deed) {
    List<Used> used = new ArrayList<>();
    for (Taken taken : request.taken()) {
      used.addAll(draw(turn, request.batch(), taken, deed));
    }
    Instant at = request.at();
    return turn.books()
        .batches()
        .append(
            new RecordedStep(
                0,
                request.batch(),
                request.key(),
                used,
                request.temperatureC(),
                turn.act().note(),
                at == null ? turn.now() : at,
                turn.act().by(),
                deed.id()));
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
