package pourwright.work;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Sets timers and answers them. */
public final class RunTimers {
  private static final String SET = "set a timer";
  private static final String ANSWERED = "answered a timer";
  private static final Duration LONGEST = Duration.ofDays(400);
  private final Doing doing;

  RunTimers(Doing doing) {
    this.doing = doing;
  }

  /** Sets a timer that rings after a while from now. */
  public Outcome<Timer> start(Act act, String label, Subject subject, Duration after) {
    return doing.once(
        act,
        SET,
        turn -> {
          if (after.isNegative() || after.compareTo(LONGEST) > 0 || label.isBlank()) {
            return Outcome.refused(
                Reason.INPUT_CANNOT_BE,
                "a timer of " + after.toMinutes() + " minutes",
                "give a label and a time up to " + LONGEST.toDays() + " days");
          }
          long id = turn.books().timers().nextId();
          Deed deed = turn.deed(Subject.of(Subject.Kind.TIMER, id));
          Instant due = turn.now().plus(after);
          String by = turn.act().by();
          Timer timer = new Timer(id, label, subject, turn.now(), due, by, null, null, deed.id());
          turn.books().timers().add(timer);
          return Turn.done(deed, timer);
        },
        (books, deed) -> Doing.known(books.timers().timer(deed.subject().number()), deed));
  }

  /** Answers a timer, before or after it rings. */
  public Outcome<Timer> answer(Act act, long timer) {
    return doing.once(
        act,
        ANSWERED,
        turn -> {
          Optional<Timer> running = turn.books().timers().timer(timer);
          if (running.isEmpty()) {
            return Doing.notOnFile("timer " + timer);
          }
          if (running.get().answeredAt() != null) {
            return Outcome.refused(
                Reason.IT_IS_ALREADY_ANSWERED,
                "the timer was answered by " + running.get().answeredBy(),
                "nothing more to do");
          }
          Deed deed = turn.deed(Subject.of(Subject.Kind.TIMER, timer));
          turn.books().timers().answer(timer, deed);
          return Turn.done(deed, Doing.known(turn.books().timers().timer(timer), deed));
        },
        (books, deed) -> Doing.known(books.timers().timer(timer), deed));
  }
}
