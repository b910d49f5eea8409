package pourwright.work;

import java.util.Locale;
import java.util.Optional;
import pourwright.card.Person;

/**
 * What a learner may not do. She records whatever she does at the bench; proving a design for sale,
 * lifting a hold and printing for sale are a maker's. Who is on no card is taken for a maker: in a
 * studio of one nobody has to write herself down first.
 */
public final class Learner {
  private Learner() {}

  /** Whether these initials are a learner's. */
  public static boolean is(Books books, String initials) {
    return books
        .cards()
        .current(Drawers.PERSON, initials.strip().toLowerCase(Locale.ROOT))
        .filter(version -> !version.retired())
        .map(CardVersion::body)
        .filter(person -> person.role() == Person.Role.LEARNER)
        .isPresent();
  }

  /** The refusal for a learner, if it is one. */
  static <T> Optional<Outcome<T>> bar(Turn turn, String what) {
    return is(turn.books(), turn.act().by())
        ? Optional.of(
            Outcome.refused(
                Reason.A_MAKER_IS_NEEDED,
                turn.act().by() + " is a learner, who does not " + what,
                "a maker does it, under her own initials"))
        : Optional.empty();
  }
}
