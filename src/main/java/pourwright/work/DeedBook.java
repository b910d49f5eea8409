package pourwright.work;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The history: every deed, in order. */
public interface DeedBook {

  /** A deed by number. */
  Optional<Deed> deed(long id);

  /** The deed that a request asked for. */
  Optional<Deed> ofRequest(String requestKey);

  /** Deeds newest first. */
  PageOf<Deed> history(@Nullable String after, int limit);

  /** Deeds on one thing, newest first. */
  List<Deed> on(Subject subject);

  /** Writes a deed. Only inside a write. */
  Deed append(Act act, Instant at, String verb, Subject subject, @Nullable Long undoes);

  /** Sentences about later deeds that stand on this one and would hang in the air without it. */
  List<String> standingOn(Deed deed);

  /** Lots that a deed brought and that other deeds drew from, put into or counted since. */
  List<Long> lotsUsed(long deed);

  /**
   * What a deed would stand on if it counted again and that does not count itself; in sentences.
   */
  List<String> missingUnder(long deed);

  /**
   * Makes the facts of a deed count or not count. Only inside a write, together with the deed that
   * says so.
   */
  void setCounting(long deed, boolean counts);
}
