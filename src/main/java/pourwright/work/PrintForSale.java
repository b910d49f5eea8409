package pourwright.work;

import java.time.Duration;
import java.time.Instant;

/**
 * Prints labels for sale: a maker, by name and with a reason, as a deed. What left the printer is
 * not taken back by an Undo.
 */
public final class PrintForSale {
  /** What the history shows. */
  public static final String VERB = "printed for sale";

  /** For so long a file that was signed for may be fetched again. House. */
  private static final Duration GOOD_FOR = Duration.ofHours(1);

  private final Doing doing;

  PrintForSale(Doing doing) {
    this.doing = doing;
  }

  /** Writes down who prints labels of a candle for sale, and why; gives the deed. */
  public Outcome<Deed> run(Act act, String candle, String name, String why) {
    Act said = new Act(act.by(), act.requestKey(), name.strip() + ": " + why.strip());
    return doing.once(
        said,
        VERB,
        turn -> {
          if (name.strip().length() < 3 || why.isBlank()) {
            return Outcome.refused(
                Reason.A_NAME_IS_NEEDED,
                "labels for sale are printed only by a named person who says what for",
                "give your name in full and the reason");
          }
          return Learner.<Deed>bar(turn, "print for sale")
              .orElseGet(
                  () -> {
                    Deed deed = turn.deed(subject(candle));
                    return Turn.done(deed, deed);
                  });
        },
        (books, deed) -> deed);
  }

  private static Subject subject(String candle) {
    return new Subject(Subject.Kind.CARD, Drawers.CANDLE.name() + "/" + candle);
  }

  /** Whether a deed was signing for labels of this candle, not long ago. */
  public static boolean signed(Books books, long deed, String candle, Instant now) {
    return books
        .deeds()
        .deed(deed)
        .filter(d -> d.verb().equals(VERB) && d.subject().equals(subject(candle)))
        .filter(d -> Duration.between(d.at(), now).compareTo(GOOD_FOR) <= 0)
        .isPresent();
  }
}
