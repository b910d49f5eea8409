package pourwright.page.press;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.card.PourCard;
import pourwright.material.Material;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Show;
import pourwright.pour.Dose;
import pourwright.quantity.OutOfRange;
import pourwright.work.Books;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.ScentComparison;

/** Scents side by side: what each would be in the same wax at the same load. */
final class ScentDesk {
  private final Desk desk;

  ScentDesk(Desk desk) {
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/press/scents", this::show);
  }

  private void show(Context http) {
    PressPages.ScentsPage page = desk.studio().look(books -> page(books, http));
    if (page.form().ok()) {
      Show.page(http, "press/scents.jte", page);
    } else {
      Show.again(http, "press/scents.jte", page);
    }
  }

  private static PressPages.ScentsPage page(Books books, Context http) {
    List<CardVersion<PourCard>> cards = books.cards().all(Drawers.POUR);
    Map<String, String> waxes = new LinkedHashMap<>();
    cards.forEach(c -> waxes.put(c.code(), c.body().name()));
    if (cards.isEmpty()) {
      return new PressPages.ScentsPage(Form.blank(), waxes, "", List.of(), List.of());
    }
    Form form =
        http.queryParam("pour") == null
            ? Form.startingFrom(Map.of("pour", cards.get(0).code(), "load", load(cards.get(0))))
            : Form.asked(http);
    Optional<PourCard> card =
        cards.stream()
            .filter(c -> c.code().equals(form.value("pour")))
            .map(CardVersion::body)
            .findFirst();
    if (card.isEmpty()) {
      form.complain("pour", "Please choose a pour card.");
    }
    Optional<Double> load = form.read("load", "per cent", ScentDesk::percent);
    if (card.isEmpty() || load.isEmpty()) {
      return new PressPages.ScentsPage(form, waxes, "", List.of(), List.of());
    }
    try {
      return compared(books, card.get(), load.get(), form, waxes);
    } catch (OutOfRange e) {
      form.complain("pour", e.sentence() + ": " + e.hint() + ".");
      return new PressPages.ScentsPage(form, waxes, "", List.of(), List.of());
    }
  }

  private static PressPages.ScentsPage compared(
      Books books, PourCard card, double load, Form form, Map<String, String> waxes) {
    double highest = Math.max(CandleWords.HIGHEST_LOAD, load);
    ScentComparison.Compared compared = new ScentComparison(books).of(card, load, highest);
    List<PressPages.Scent> rows = new ArrayList<>();
    for (ScentComparison.Row row : compared.rows()) {
      rows.add(
          new PressPages.Scent(
              row.scent().name(),
              CandleWords.words(row.classification()),
              String.join(", ", row.classification().namedSubstances()),
              row.classification().stops().isEmpty() ? "" : "not to be sold to the public",
              upTo(row.sameUpTo(), highest),
              upTo(row.freeUpTo(), highest)));
    }
    return new PressPages.ScentsPage(
        form,
        waxes,
        String.format(Locale.ROOT, "At %.2f %% of the total.", load * 100),
        rows,
        compared.withoutSheet().stream().map(Material::name).toList());
  }

  private static String upTo(double load, double highest) {
    return String.format(Locale.ROOT, "%.2f %%", load * 100)
        + (load >= highest - 1e-9 ? " and more" : "");
  }

  private static double percent(String text) {
    double value = Double.parseDouble(text.replace(',', '.').replace("%", "").strip());
    if (!(value > 0 && value <= 30)) {
      throw new OutOfRange("load", text + " % is not a load", "give 0.1 to 30 % of the total");
    }
    return value / 100;
  }

  private static String load(CardVersion<PourCard> card) {
    double load = Dose.loadOfTotal(card.body().load(), card.body().loadOf());
    return String.format(Locale.ROOT, "%.2f", load > 0 ? load * 100 : 8.0);
  }
}
