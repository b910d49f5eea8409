package pourwright.work;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One turn at the books: what a use case has in hand while it looks, decides and writes.
 *
 * @param books the books inside the transaction
 * @param act who asks
 * @param verb what is being done
 * @param now the moment
 * @param today the studio's day
 */
record Turn(Books books, Act act, String verb, Instant now, LocalDate today) {

  /** Writes the deed. */
  Deed deed(Subject subject) {
    return books.deeds().append(act, now, verb, subject, null);
  }

  /** Writes a deed that takes another back. */
  Deed undoing(Subject subject, @Nullable Long undoes) {
    return books.deeds().append(act, now, verb, subject, undoes);
  }

  /** Done, for the first time. */
  static <T> Outcome<T> done(Deed deed, T made) {
    return new Outcome.Done<>(deed, made, false);
  }
}
