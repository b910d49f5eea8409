package pourwright.page.slate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pourwright.cost.Discount;
import pourwright.cost.Slate;
import pourwright.page.Form;
import pourwright.quantity.Counted;
import pourwright.quantity.Sourced;
import pourwright.work.SlateBook;

/** Turns slates into the strings of their pages. */
final class SlateReader {
  private static final int MOVERS_SHOWN = 8;
  private static final double PERCENT = 100;

  private final SlateBook book;

  SlateReader(SlateBook book) {
    this.book = book;
  }

  /** The house's numbers as they stand. */
  Form settings() {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("wage", number(book.wage()));
    values.put("overhead", number(book.overhead()));
    values.put("margin", number(PERCENT * book.margin()));
    values.put("market_day", number(book.marketDay()));
    return Form.startingFrom(values);
  }

  private static String number(double value) {
    String text = String.format(Locale.ROOT, "%.2f", value);
    return text.replaceFirst("\\.?0+$", "");
  }

  private String money(double value) {
    return plain(value) + " " + book.currency();
  }

  private static String plain(double value) {
    return String.format(Locale.ROOT, "%.2f", value).replace('-', '\u2212');
  }

  private String range(Sourced value) {
    return value.isExact()
        ? "all inputs are known"
        : "from " + money(value.low()) + " to " + money(value.high());
  }

  private static String percent(double fraction) {
    return String.format(Locale.ROOT, "%.0f %%", PERCENT * fraction).replace('-', '\u2212');
  }

  /** Which candle pays hands best and which the mold, in a sentence. */
  private static List<String> best(List<SlateBook.Laid> all) {
    if (all.isEmpty()) {
      return List.of();
    }
    SlateBook.Laid hands =
        Collections.max(all, Comparator.comparingDouble(l -> l.atShop().earnsPerHour()));
    SlateBook.Laid mold =
        Collections.max(
            all, Comparator.comparingDouble(l -> l.atShop().earnsPerMoldDay(l.moldDays())));
    return List.of(
        hands.design().name() + " pays an hour of hands best.",
        mold.design().name()
            + " pays a day in the mold best: make more of it when molds are short.");
  }

  /** The candles' rows, and which pays best. */
  record Listed(List<SlatePage.Row> rows, List<String> best) {}

  Listed listed(List<SlateBook.Laid> all) {
    return new Listed(rows(all), best(all));
  }

  private List<SlatePage.Row> rows(List<SlateBook.Laid> laid) {
    List<SlateBook.Laid> all = new ArrayList<>(laid);
    all.sort(Comparator.comparingDouble(l -> -l.atShop().earnsPerHour()));
    return all.stream().map(this::row).toList();
  }

  private SlatePage.Row row(SlateBook.Laid laid) {
    Slate slate = laid.atShop();
    return new SlatePage.Row(
        "/slate/" + laid.design().code(),
        laid.design().name(),
        plain(slate.cost().value()),
        plain(slate.price().value()),
        percent(slate.marginOfPrice().value()),
        percent(slate.marginOfCost().value()),
        plain(slate.earnsPerHour()),
        plain(slate.earnsPerMoldDay(laid.moldDays())));
  }

  CandleSlatePage page(SlateBook.Laid laid, Form form) {
    Slate shop = laid.atShop();
    return new CandleSlatePage(
        form,
        laid.design().name(),
        "/slate/" + laid.design().code(),
        money(shop.cost().value()),
        range(shop.cost()),
        shop.lines().stream().map(this::line).toList(),
        laid.byTerms().entrySet().stream().map(e -> channel(e.getKey(), e.getValue())).toList(),
        shop.movers().stream().limit(MOVERS_SHOWN).map(this::mover).toList(),
        laid.minutes().stream().map(SlateReader::minutes).toList(),
        discount(laid, form),
        notes(laid),
        marketDay(laid));
  }

  private CandleSlatePage.Line line(Slate.Line line) {
    return new CandleSlatePage.Line(
        line.name(), money(line.money().value()), line.money().origin().words());
  }

  private CandleSlatePage.Channel channel(SlateBook.Terms terms, Slate slate) {
    return new CandleSlatePage.Channel(
        terms.name(),
        money(slate.price().value()),
        money(slate.margin().value()),
        range(slate.margin()),
        percent(slate.marginOfPrice().value()),
        percent(slate.marginOfCost().value()));
  }

  private static CandleSlatePage.Minutes minutes(SlateBook.Minutes step) {
    return new CandleSlatePage.Minutes(
        step.step(),
        String.format(Locale.ROOT, "%.1f min", step.planned()),
        step.recorded()
            .map(
                r ->
                    String.format(
                        Locale.ROOT,
                        "%.1f min (%s)",
                        r.minutes(),
                        Counted.of(r.batches(), "batch", "batches")))
            .orElse("not recorded step by step"));
  }

  /** What a discount leaves in each channel, and how much more must be sold then. */
  private List<String> discount(SlateBook.Laid laid, Form form) {
    String asked = form.value("discount");
    if (asked.isEmpty() || !form.error("discount").isEmpty()) {
      return List.of();
    }
    double fraction = Double.parseDouble(asked) / PERCENT;
    List<String> lines = new ArrayList<>();
    laid.byTerms()
        .forEach(
            (terms, slate) -> {
              Discount less = Discount.of(slate, fraction);
              lines.add(
                  terms.name()
                      + ": price "
                      + money(less.price())
                      + ", left "
                      + money(less.margin())
                      + (Double.isNaN(less.timesAsMany())
                          ? "; no number sold leaves the same"
                          : String.format(
                              Locale.ROOT,
                              "; %.1f times as many must be sold to leave the same",
                              less.timesAsMany())));
            });
    return lines;
  }

  private CandleSlatePage.Mover mover(Slate.Mover mover) {
    String sign = mover.byTenPercent() < 0 ? "\u2212" : "+";
    return new CandleSlatePage.Mover(
        mover.name(),
        sign + money(Math.abs(mover.byTenPercent())),
        mover.byItsRange() == 0 ? "known" : "\u00b1 " + money(mover.byItsRange()));
  }

  private static List<String> notes(SlateBook.Laid laid) {
    List<String> notes = new ArrayList<>();
    if (!laid.unpriced().isEmpty()) {
      notes.add(
          "No price is known for "
              + String.join(", ", laid.unpriced())
              + ": they count as nothing here. Write the price down when you receive them.");
    }
    if (laid.atShop().margin().value() < 0) {
      notes.add("At this price every piece is sold at a loss.");
    }
    return notes;
  }

  private String marketDay(SlateBook.Laid laid) {
    for (Map.Entry<SlateBook.Terms, Slate> entry : laid.byTerms().entrySet()) {
      if (entry.getKey().name().contains("stall")) {
        Long units =
            pourwright.cost.Channel.breakEvenUnits(
                book.marketDay(), entry.getValue().margin().value());
        return units == null
            ? "At the stall nothing is left of this price; no number pays for the day."
            : "A market day of "
                + money(book.marketDay())
                + " is paid by "
                + Counted.of(units, "piece.", "pieces.");
      }
    }
    return "";
  }
}
