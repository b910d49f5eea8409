package pourwright.plan;

import java.util.List;
import pourwright.quantity.OutOfRange;

/**
 * Something that steps compete for.
 *
 * @param key unique, e.g. {@code hands:MB}, {@code mold:bollard}, {@code melter}
 * @param words as it is shown, e.g. {@code Bollard mold}
 * @param kind what it is
 * @param capacity how many there are; 1 for a person
 * @param windows when it can be used, merged and in order; for a person the hours at work. Empty
 *     for a thing: always
 */
public record Resource(String key, String words, Kind kind, int capacity, List<Window> windows) {
  /** What a resource is. */
  public enum Kind {
    /** A person: hands for steps of kind HANDS, presence for steps of kind WATCH. */
    PERSON,
    /** Molds of one kind. */
    MOLD,
    /** Melter, pitcher, mixer, burner. */
    EQUIPMENT,
    /** Shelf, drying rack, test place. */
    PLACE
  }

  /** Checks the capacity and keeps the windows merged. */
  public Resource {
    if (capacity < 1) {
      throw new OutOfRange(
          "capacity", words + " has a capacity of " + capacity, "leave it out or give 1 or more");
    }
    windows = List.copyOf(Window.merged(windows));
  }

  /** A thing that is there day and night. */
  public static Resource always(String key, String words, Kind kind, int capacity) {
    return new Resource(key, words, kind, capacity, List.of());
  }

  /** A person with hours at work. */
  public static Resource person(String key, String words, List<Window> hours) {
    return new Resource(key, words, Kind.PERSON, 1, hours);
  }
}
