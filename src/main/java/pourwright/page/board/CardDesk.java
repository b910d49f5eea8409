package pourwright.page.board;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.card.Card;
import pourwright.card.CardBook;
import pourwright.page.Form;
import pourwright.work.Drawer;

/**
 * How cards of one kind are written and read as a form.
 *
 * @param <T> the card
 */
interface CardDesk<T extends Card> {

  /** Where they are kept. */
  Drawer<T> drawer();

  /** One of them, as in "a vessel". */
  String singular();

  /** The fields, with choices from the other cards. */
  List<EntryGroup> entries(CardBook book);

  /** What a form begins with: a card's own values, or the house's for a new one. */
  Map<String, String> written(T card);

  /** What the form of a new card begins with. */
  Map<String, String> fresh(CardBook book);

  /** The card, or nothing when the form has complaints. */
  Optional<T> read(Form form, String code, Optional<T> before);
}
