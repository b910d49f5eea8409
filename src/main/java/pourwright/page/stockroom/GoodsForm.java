package pourwright.page.stockroom;

import io.javalin.http.Context;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import pourwright.batch.Mark;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.quantity.OutOfRange;
import pourwright.work.Outcome;
import pourwright.work.Subject;

/**
 * A posted form by which goods leave the shelf or come home, from a market as from a shop.
 *
 * @param template the page that shows the form again when it is refused
 * @param page makes what that page shows; asked only then
 */
record GoodsForm(Context http, Form form, String template, Supplier<Object> page) {
  private static final int MOST = 1000;
  private static final String TAKE = "take-";

  /** How many of each candle are taken along, by the candle's code; empty fields are left out. */
  Map<String, Integer> taken() {
    Map<String, Integer> take = new LinkedHashMap<>();
    for (String field : form.fields()) {
      if (field.startsWith(TAKE) && !form.value(field).isBlank()) {
        form.count(field, "how many", 0, MOST)
            .ifPresent(n -> take.put(field.substring(TAKE.length()), n));
      }
    }
    return take;
  }

  /** A place's name becomes part of an address: complains where it does not fit there. */
  void shortName(String field, String name) {
    if (name.contains("/") || name.length() > 60) {
      form.complain(field, "Please give a short name without a slash.");
    }
  }

  /** Shows the form again with what was typed and what is wrong with it. */
  void again() {
    Show.again(http, template, page.get());
  }

  /** What the deed made; where it was refused, the form is shown again with the reason. */
  <T> Optional<T> made(String field, Outcome<T> outcome) {
    if (outcome instanceof Outcome.Refused<T> refused) {
      form.complain(field, refused.sentence() + ": " + refused.hint() + ".");
      again();
      return Optional.empty();
    }
    return Optional.of(outcome.made());
  }

  /** The pieces that carry the marks of a text, divided by commas, semicolons or space. */
  static List<Long> marks(Desk desk, String text) {
    return Arrays.stream(text.strip().split("[\\s,;]+", -1))
        .map(
            one ->
                desk.studio()
                    .find(Mark.read(one))
                    .filter(s -> s.kind() == Subject.Kind.PIECE)
                    .map(Subject::number)
                    .orElseThrow(
                        () ->
                            new OutOfRange(
                                "marks",
                                "no piece carries the mark '" + one + "'",
                                "read it again")))
        .toList();
  }

  /** What is said of goods that were sold: also that a hold stands on some of them. */
  static Said told(String said, List<String> heldMarks) {
    return heldMarks.isEmpty()
        ? Said.done(said)
        : Said.note(
            said + " A hold stands on " + String.join(", ", heldMarks) + ".",
            "Look at the hold: it says who may have them.");
  }
}
