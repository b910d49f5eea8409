package pourwright.work;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * How every use case writes: in one transaction, at a moment the clock gives, and once for each
 * request however often it is sent.
 */
public final class Doing {
  private final UnitOfWork unitOfWork;
  private final Clock clock;

  /**
   * @param unitOfWork the store
   * @param clock the moment and the studio's time zone
   */
  public Doing(UnitOfWork unitOfWork, Clock clock) {
    this.unitOfWork = unitOfWork;
    this.clock = clock;
  }

  /** The moment, in whole milliseconds as the books keep it. */
  public Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MILLIS);
  }

  /** The studio's day. */
  public LocalDate today() {
    return LocalDate.ofInstant(clock.instant(), clock.getZone());
  }

  /** The studio's time zone. */
  java.time.ZoneId zone() {
    return clock.getZone();
  }

  /** Looks at one moment of the books. */
  <T> T look(Function<Books, T> reading) {
    return unitOfWork.look(reading);
  }

  /** Writes something that is no deed, see {@link UnitOfWork#aside}. */
  <T> T aside(Function<Books, T> writing) {
    return unitOfWork.aside(writing);
  }

  /**
   * Does something once.
   *
   * @param act who asks, and by which request
   * @param verb what is done
   * @param work looks, decides, writes
   * @param again finds what the same request made the first time
   */
  <T> Outcome<T> once(
      Act act, String verb, Function<Turn, Outcome<T>> work, BiFunction<Books, Deed, T> again) {
    return unitOfWork.write(
        books -> {
          Optional<Deed> before = books.deeds().ofRequest(act.requestKey());
          if (before.isEmpty()) {
            return work.apply(new Turn(books, act, verb, now(), today()));
          }
          Deed deed = before.get();
          if (!deed.verb().equals(verb)) {
            return Outcome.refused(
                Reason.REQUEST_KEY_BELONGS_TO_ANOTHER_DEED,
                "this request was already used: " + deed.verb(),
                "load the page again and repeat what you did");
          }
          return new Outcome.Done<>(deed, again.apply(books, deed), true);
        });
  }

  /** Finds a thing that a deed is known to have made. */
  static <T> T known(Optional<T> thing, Deed deed) {
    return thing.orElseThrow(
        () -> new IllegalStateException("what deed " + deed.id() + " made is not on file"));
  }

  /** What stands between two lists of a sentence. */
  static <T> Outcome<T> notOnFile(String what) {
    return Outcome.refused(
        Reason.NOT_ON_FILE, what + " is not in the books", "look it up in the list and try again");
  }
}
