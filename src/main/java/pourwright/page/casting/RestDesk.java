package pourwright.page.casting;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.card.CardBook;
import pourwright.card.MixCard;
import pourwright.card.Mold;
import pourwright.cast.Leftover;
import pourwright.cast.OwnHands;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Show;
import pourwright.page.board.Lengths;
import pourwright.quantity.OutOfRange;
import pourwright.work.Drawers;
import pourwright.work.OwnCasts;
import pourwright.work.RestOfMix;

/** What to do with the rest of a mix: before it is mixed by its waste, after it by the scale. */
final class RestDesk {
  private static final String TEMPLATE = "casting/rest.jte";

  private final Desk desk;
  private final Lengths numbers;

  RestDesk(Desk desk) {
    this.desk = desk;
    this.numbers = new Lengths(desk);
  }

  void addTo(RoutesConfig routes) {
    routes.get("/casting/rest", this::show);
  }

  private void show(Context http) {
    Map<String, String> asked = new LinkedHashMap<>();
    http.queryParamMap().forEach((name, values) -> asked.put(name, values.get(0)));
    Form form = Form.startingFrom(asked);
    CardBook book = desk.studio().look(Drawers::book);
    Map<String, String> mixes = new LinkedHashMap<>();
    book.all(MixCard.class).forEach(m -> mixes.put(m.code(), m.name()));
    RestPage page =
        form.optionalText("left_g").isEmpty()
            ? RestPage.asking(form, mixes)
            : filled(form, mixes, book);
    if (form.ok()) {
      Show.page(http, TEMPLATE, page);
    } else {
      Show.again(http, TEMPLATE, page);
    }
  }

  private RestPage filled(Form form, Map<String, String> mixes, CardBook book) {
    Optional<Double> grams = numbers.readGrams(form, "left_g", "what is left");
    Optional<String> mix = form.choice("mix", "the mix", List.copyOf(mixes.keySet()));
    if (grams.isEmpty() || mix.isEmpty() || !form.ok()) {
      return RestPage.asking(form, mixes);
    }
    try {
      OwnHands hers = desk.studio().look(books -> OwnCasts.of(books, mix.get()));
      double density =
          hers.applied(book.mix(mix.get()).resolve(book.materials(), 20))
              .amounts(100, 0, 0)
              .freshGPerMl();
      double ml = grams.get() / density;
      boolean smallOnly = !form.value("which").equals("all");
      Leftover leftover = desk.studio().look(books -> RestOfMix.of(books, ml, smallOnly));
      Leftover.Filling filling = RestOfMix.fill(leftover);
      List<String> lines = filling.fill().stream().map(f -> f.count() + " × " + f.name()).toList();
      String over =
          numbers.millilitres(ml)
              + " are left; the molds take "
              + numbers.millilitres(filling.usedMl())
              + (!filling.proven()
                  ? ". A better one may exist."
                  : book.all(Mold.class).stream().anyMatch(m -> m.pieceValue() != null)
                      ? ". No filling is worth more by your molds' cards."
                      : ". No filling gives more pieces.");
      return new RestPage(form, mixes, true, lines, over);
    } catch (OutOfRange e) {
      form.complain("left_g", e.sentence() + ": " + e.hint() + ".");
      return RestPage.asking(form, mixes);
    }
  }
}
