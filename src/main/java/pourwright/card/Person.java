package pourwright.card;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.OutOfRange;

/**
 * Somebody who works here, by initials.
 *
 * @param initials one to four letters, as they are written on a tray card
 * @param name what she is called
 * @param role what she may do
 * @param note anything worth reading
 */
public record Person(String initials, String name, Role role, @Nullable String note)
    implements Card {

  /** What a person may do. */
  public enum Role {
    /** Everything, lifting a hold too. */
    MAKER,
    /** Records steps, lifts nothing. */
    LEARNER
  }

  /** Checks initials and name. */
  public Person {
    if (!initials.matches("[\\p{Lu}]{1,4}")) {
      throw new OutOfRange(
          "initials", "'" + initials + "' are not initials", "one to four capital letters");
    }
    if (name.isBlank()) {
      throw new OutOfRange("name", initials + " has no name", "give a name");
    }
  }

  @Override
  public String code() {
    return initials.toLowerCase(Locale.ROOT);
  }

  @Override
  public CardKind kind() {
    return CardKind.PERSON;
  }
}
