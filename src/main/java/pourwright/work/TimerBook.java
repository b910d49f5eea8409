package pourwright.work;

import java.util.List;
import java.util.Optional;

/** Timers. */
public interface TimerBook {

  /** The number that the next timer gets. */
  long nextId();

  /** A timer by number. */
  Optional<Timer> timer(long id);

  /** Timers nobody answered yet, the first to ring first. */
  List<Timer> running();

  /** Timers of one thing, oldest first. */
  List<Timer> of(Subject subject);

  /** Adds a timer. Only inside a write. */
  void add(Timer timer);

  /** Notes the answer. Only inside a write. */
  void answer(long timer, Deed deed);
}
