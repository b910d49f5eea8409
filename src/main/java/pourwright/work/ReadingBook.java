package pourwright.work;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Readings on anything. */
public interface ReadingBook {

  /** Readings of one thing in the order they were taken, undone deeds left out. */
  List<Reading> of(Subject subject);

  /** The newest reading of one quantity on one thing. */
  Optional<Reading> newest(Subject subject, String quantity);

  /** All readings of one quantity, newest first. */
  PageOf<Reading> list(String quantity, @Nullable String after, int limit);

  /** The readings that a deed wrote. */
  List<Reading> ofDeed(long deed);

  /** Adds a reading and gives it back with its number. Only inside a write. */
  Reading append(Reading reading, Deed deed);
}
