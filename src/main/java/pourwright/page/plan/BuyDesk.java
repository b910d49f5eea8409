package pourwright.page.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import pourwright.material.Material;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Show;
import pourwright.plan.Planner;
import pourwright.quantity.OutOfRange;
import pourwright.stock.Purchase;
import pourwright.stock.PurchaseList;
import pourwright.stock.Purchasing;
import pourwright.work.MaterialUse;
import pourwright.work.Replan;
import pourwright.work.WorkPlan;
import pourwright.work.YieldReader;

/** What is short, the cheapest way to buy it, and when each material is to be ordered again. */
public final class BuyDesk implements Corner {
  private static final String TEMPLATE = "plan/buy.jte";
  private static final int LINES_MAX = 200;

  private final Desk desk;
  private final Purchasing purchasing;

  /** Buying for this studio. */
  public BuyDesk(Desk desk, Purchasing purchasing) {
    this.desk = desk;
    this.purchasing = purchasing;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/plan/buy", this::show);
    routes.post("/plan/buy", this::work);
  }

  private void show(Context http) {
    Form form;
    List<String> losses = List.of();
    try {
      WorkPlan plan = amounts();
      losses = LossWords.of(plan, desk.studio().look(YieldReader::of));
      SortedMap<String, Double> needs = shortOf(plan);
      form =
          Form.startingFrom(
              Map.of(
                  "needs", lines(needs.entrySet(), e -> e.getKey() + "; " + number(e.getValue())),
                  "packs", lines(packs(needs), BuyDesk::line),
                  "postage", ""));
    } catch (OutOfRange e) { // a card of an open order is missing
      form = Form.blank();
      form.complain("needs", e.sentence() + ": " + e.hint() + ".");
    }
    Show.page(http, TEMPLATE, new BuyPage(form, rows(), "", List.of(), List.of(), losses));
  }

  private static <T> String lines(Iterable<T> all, Function<T, String> words) {
    StringBuilder text = new StringBuilder();
    all.forEach(one -> text.append(words.apply(one)).append('\n'));
    return text.toString();
  }

  private static String line(PurchaseList.Offer offer) {
    return offer.material()
        + "; "
        + offer.supplier()
        + "; "
        + number(offer.packG())
        + "; "
        + number(offer.goods(1));
  }

  /** What the open orders want and no lot gives, in each material's usual unit. */
  private static SortedMap<String, Double> shortOf(WorkPlan plan) {
    SortedMap<String, Double> needs = new TreeMap<>();
    plan.make()
        .shortages()
        .forEach(
            (code, units) -> {
              Material material = plan.book().materials().get(code);
              needs.put(code, material.unit().fromSmall(units));
            });
    return needs;
  }

  /** What the open orders want, worked out for its amounts alone. */
  private WorkPlan amounts() {
    Planner amountsOnly = (problem, effort) -> new Planner.NotFound(List.of());
    return desk.studio()
        .look(
            books ->
                WorkPlan.of(books, Replan.openLines(books), desk.now(), desk.zone(), amountsOnly));
  }

  private List<PurchaseList.Offer> packs(Map<String, Double> needs) {
    return desk.studio()
        .look(
            books ->
                needs.keySet().stream()
                    .flatMap(code -> MaterialUse.packs(books, code).stream())
                    .toList());
  }

  private List<BuyPage.Row> rows() {
    return desk.studio().look(books -> MaterialUse.rows(books, desk.now(), desk.zone())).stream()
        .map(this::row)
        .toList();
  }

  private BuyPage.Row row(MaterialUse.Row row) {
    String unit = " " + row.material().unit().unit();
    boolean now = !row.orderBy().isAfter(desk.today());
    return new BuyPage.Row(
        row.material().name(),
        number(row.onHand()) + unit,
        number(7 * row.use().perDayG()) + unit,
        Math.round(row.use().leadDays()) + " d",
        number(row.reorder().safetyG()) + unit,
        number(row.reorder().orderPointG()) + unit,
        now ? "now" : desk.day(row.orderBy()),
        now);
  }

  private void work(Context http) {
    Form form = Form.of(http);
    List<PurchaseList.Need> needs =
        read(form, "needs", 2, cells -> new PurchaseList.Need(cells[0], amount(cells[1])));
    List<PurchaseList.Offer> offers =
        read(
            form,
            "packs",
            4,
            cells ->
                new PurchaseList.Offer(
                    cells[0], cells[1], amount(cells[2]), amount(cells[3]), PurchaseList.NO_LIMIT));
    List<PurchaseList.Supplier> suppliers =
        read(
            form,
            "postage",
            2,
            cells ->
                new PurchaseList.Supplier(
                    cells[0],
                    amount(cells[1]),
                    cells.length > 2
                        ? OptionalDouble.of(amount(cells[2]))
                        : OptionalDouble.empty()));
    if (needs.isEmpty() && form.ok()) {
      form.complain("needs", "Nothing is needed: write one line for each material.");
    }
    if (!form.ok()) {
      Show.again(http, TEMPLATE, new BuyPage(form, rows(), "", List.of(), List.of(), List.of()));
      return;
    }
    try {
      PurchaseList list = new PurchaseList(needs, offers, suppliers);
      Show.page(http, TEMPLATE, answer(form, list, purchasing.buy(list)));
    } catch (OutOfRange e) {
      form.complain("postage", e.sentence() + ": " + e.hint() + ".");
      Show.again(http, TEMPLATE, new BuyPage(form, rows(), "", List.of(), List.of(), List.of()));
    }
  }

  private BuyPage answer(Form form, PurchaseList list, Purchase purchase) {
    if (purchase instanceof Purchase.NotToBeHad none) {
      String sentence =
          "The packs do not cover "
              + none.material()
              + ": "
              + number(none.askedG())
              + " is needed and "
              + number(none.offeredG())
              + " is offered. Add a line for a pack of it.";
      return new BuyPage(form, rows(), sentence, List.of(), List.of(), List.of());
    }
    Purchase.Bought bought = (Purchase.Bought) purchase;
    List<String> packs = new ArrayList<>();
    Map<String, Double> amounts = new HashMap<>();
    for (Purchase.Packs pack : bought.packs()) {
      PurchaseList.Offer offer = list.offers().get(pack.offer());
      packs.add(
          pack.count()
              + " \u00d7 "
              + number(offer.packG())
              + " of "
              + offer.material()
              + " from "
              + offer.supplier()
              + ": "
              + number(offer.goods(pack.count())));
      amounts.merge(offer.material(), pack.count() * offer.packG(), Double::sum);
    }
    String lead =
        "Together "
            + number(bought.cost())
            + ", of it postage "
            + number(bought.shipping())
            + (bought.proven() ? "; nothing is cheaper." : "; whether it can be cheaper is open.");
    return new BuyPage(form, rows(), lead, packs, doubts(amounts, list), List.of());
  }

  /** What would go off before it is used up, by the use of the last months. */
  private List<String> doubts(Map<String, Double> amounts, PurchaseList list) {
    List<String> doubts = new ArrayList<>();
    for (MaterialUse.Row row :
        desk.studio().look(books -> MaterialUse.rows(books, desk.now(), desk.zone()))) {
      String code = row.material().code();
      double bought = amounts.getOrDefault(code, 0.0);
      double needed =
          list.needs().stream()
              .filter(n -> n.material().equals(code))
              .mapToDouble(PurchaseList.Need::amountG)
              .sum();
      if (bought - needed > row.keeps()) {
        doubts.add(
            "Of "
                + row.material().name()
                + " some "
                + number(bought - needed - row.keeps())
                + " "
                + row.material().unit().unit()
                + " would go off before it is used up at the pace of the last three months.");
      }
    }
    return doubts;
  }

  private <T> List<T> read(Form form, String field, int least, Function<String[], T> reader) {
    List<T> all = new ArrayList<>();
    String[] lines = form.value(field).split("\\R", LINES_MAX);
    for (int i = 0; i < lines.length; i++) {
      if (lines[i].isBlank()) {
        continue;
      }
      String[] cells = lines[i].strip().split("\\s*;\\s*", -1);
      try {
        if (cells.length < least) {
          throw new OutOfRange(field, "has " + cells.length + " parts", "put ; between " + least);
        }
        all.add(reader.apply(cells));
      } catch (OutOfRange e) {
        form.complain(field, "Line " + (i + 1) + ": " + e.sentence() + ", " + e.hint() + ".");
      }
    }
    return all;
  }

  private static double amount(String text) {
    try {
      return Double.parseDouble(text.replace(" ", "").replace(',', '.'));
    } catch (NumberFormatException e) {
      throw new OutOfRange("amount", "'" + text + "' is not a number", "write it as 1250 or 12.5");
    }
  }

  private static String number(double value) {
    String text = String.format(Locale.ROOT, value < 100 ? "%.2f" : "%.0f", value);
    return text.contains(".") ? text.replaceAll("\\.?0+$", "") : text;
  }
}
