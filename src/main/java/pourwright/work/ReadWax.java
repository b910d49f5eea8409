package pourwright.work;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.quantity.Check;

/**
 * Takes the wax's temperature during a pour. In the same breath the cooling clock is set anew: the
 * old timer is answered and one for the corrected moment is started.
 */
public final class ReadWax {
  private static final String VERB = "read the wax";
  private final Doing doing;

  ReadWax(Doing doing) {
    this.doing = doing;
  }

  /**
   * A reading.
   *
   * @param batch a running pour
   * @param waxC what the thermometer in the wax says
   * @param roomC what the one in the room says, null when nobody looked
   */
  public record Request(long batch, double waxC, @Nullable Double roomC) {}

  /** Writes it down and gives the pour as it stands then. */
  public Outcome<PourWatch> run(Act act, Request request) {
    return doing.once(
        act,
        VERB,
        turn -> read(turn, request),
        (books, deed) -> Doing.known(PourWatch.of(books, request.batch()), deed));
  }

  private static Outcome<PourWatch> read(Turn turn, Request request) {
    Books books = turn.books();
    Optional<Batch> batch = books.batches().batch(request.batch());
    if (batch.isEmpty()) {
      return Doing.notOnFile("pour " + request.batch());
    }
    if (!batch.get().isRunning()) {
      return Outcome.refused(
          Reason.BATCH_IS_FINISHED,
          "pour " + batch.get().mark().text() + " is finished",
          "undo the finish first if it is not");
    }
    Check.between("wax_c", request.waxC(), 0, 200);
    Subject subject = Subject.of(Subject.Kind.BATCH, request.batch());
    Deed deed = turn.deed(subject);
    if (request.roomC() != null) {
      Check.between("room_c", request.roomC(), -20, 60);
      write(turn, subject, PourWatch.ROOM_C, request.roomC(), deed);
    }
    write(turn, subject, PourWatch.WAX_C, request.waxC(), deed);
    PourWatch watch = Doing.known(PourWatch.of(books, request.batch()), deed);
    setTimer(turn, subject, watch, deed);
    return Turn.done(deed, watch);
  }

  private static void write(Turn turn, Subject subject, String quantity, double c, Deed deed) {
    turn.books().readings().append(Reading.fresh(subject, quantity, c, turn.now()), deed);
  }

  private static void setTimer(Turn turn, Subject subject, PourWatch watch, Deed deed) {
    TimerBook timers = turn.books().timers();
    List<Timer> old =
        timers.of(subject).stream()
            .filter(t -> t.answeredAt() == null && t.label().startsWith(PourWatch.LABEL))
            .toList();
    old.forEach(t -> timers.answer(t.id(), deed));
    Instant at = watch.reachedAt();
    PourWatch.Target target = watch.target();
    if (at == null || target == null) {
      return;
    }
    Instant due = at.isBefore(turn.now()) ? turn.now() : at;
    if (Duration.between(turn.now(), due).toHours() < 48) {
      timers.add(
          new Timer(
              timers.nextId(),
              label(watch, target),
              subject,
              turn.now(),
              due,
              turn.act().by(),
              null,
              null,
              deed.id()));
    }
  }

  private static String label(PourWatch watch, PourWatch.Target target) {
    return String.format(
        Locale.ROOT,
        "%s%.0f °C: %s (%s)",
        PourWatch.LABEL,
        target.c(),
        target.what(),
        watch.batch().mark().text());
  }
}
