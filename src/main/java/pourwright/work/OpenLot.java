package pourwright.work;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.stock.Shelf;

/** Notes that a pack was opened: from now on its opened shelf life runs. */
public final class OpenLot {
  private static final String VERB = "opened a lot";
  private final Doing doing;

  OpenLot(Doing doing) {
    this.doing = doing;
  }

  /** Opens; null for today. */
  public Outcome<Shelf> run(Act act, long lot, @Nullable LocalDate day) {
    return doing.once(
        act,
        VERB,
        turn -> {
          Optional<Shelf> shelf = turn.books().lots().shelf(lot);
          if (shelf.isEmpty()) {
            return Doing.notOnFile("lot " + lot);
          }
          if (shelf.get().lot().openedOn() != null) {
            return Outcome.refused(
                Reason.IT_IS_ALREADY_ANSWERED,
                "the pack was opened on " + shelf.get().lot().openedOn(),
                "nothing more to do");
          }
          Deed deed = turn.deed(Subject.of(Subject.Kind.LOT, lot));
          turn.books().lots().open(lot, day == null ? turn.today() : day, deed.id());
          return Turn.done(deed, Doing.known(turn.books().lots().shelf(lot), deed));
        },
        (books, deed) -> Doing.known(books.lots().shelf(lot), deed));
  }
}
