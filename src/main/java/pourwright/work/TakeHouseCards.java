package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import pourwright.card.Card;
import pourwright.card.HouseCards;

/** Takes the house's mix card and finish where the studio has none of the kind: one deed. */
public final class TakeHouseCards {
  private static final String VERB = "took house cards";
  private final Doing doing;

  TakeHouseCards(Doing doing) {
    this.doing = doing;
  }

  /** Whether a kind of card is still without any. */
  public static boolean wanted(Books books) {
    return books.cards().all(Drawers.MIX).isEmpty() || books.cards().all(Drawers.FINISH).isEmpty();
  }

  /** Takes them; gives the names of what was taken. */
  public Outcome<List<String>> run(Act act) {
    return doing.once(act, VERB, TakeHouseCards::take, (books, deed) -> List.of());
  }

  private static Outcome<List<String>> take(Turn turn) {
    if (!wanted(turn.books())) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE,
          "there is a mix card and a finish already",
          "change them on the drawing board as you like");
    }
    Deed deed = turn.deed(new Subject(Subject.Kind.STUDIO, "house cards"));
    List<String> taken = new ArrayList<>();
    lay(turn, Drawers.MIX, HouseCards.MIX, deed, taken);
    lay(turn, Drawers.FINISH, HouseCards.FINISH, deed, taken);
    return Turn.done(deed, taken);
  }

  private static <T extends Card> void lay(
      Turn turn, Drawer<T> drawer, T card, Deed deed, List<String> taken) {
    DrawerBook cards = turn.books().cards();
    if (!cards.all(drawer).isEmpty()) {
      return;
    }
    int version = cards.lastVersion(drawer, card.code()) + 1;
    cards.append(
        new CardVersion<>(
            drawer, card.code(), version, card, false, turn.now(), turn.act().by(), deed.id()));
    taken.add(card.name());
  }
}
