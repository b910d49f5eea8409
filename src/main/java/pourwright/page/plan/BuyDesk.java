package pourwright.page.plan;

import static pourwright.page.plan.BuyLines.lines;
import static pourwright.page.plan.BuyLines.number;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pourwright.material.Material;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.now.WorkAhead;
import pourwright.quantity.OutOfRange;
import pourwright.stock.Deliveries;
import pourwright.stock.Purchase;
import pourwright.stock.PurchaseList;
import pourwright.stock.Purchasing;
import pourwright.work.Act;
import pourwright.work.Drawers;
import pourwright.work.MaterialUse;
import pourwright.work.Outcome;
import pourwright.work.PlaceOrder;
import pourwright.work.Reading;
import pourwright.work.ToBuy;
import pourwright.work.WorkPlan;
import pourwright.work.YieldReader;

/**
 * What is to be bought, the cheapest way to buy it and by which day, what is on order, and when
 * each material is to be ordered again.
 */
public final class BuyDesk implements Corner {
  private static final String PATH = "/plan/buy";
  private static final String TEMPLATE = "plan/buy.jte";

  private final Desk desk;
  private final WorkAhead ahead;
  private final Purchasing purchasing;

  /** Buying for this studio, with a plan of the work of its own. */
  public BuyDesk(Desk desk, Purchasing purchasing) {
    this(desk, new WorkAhead(desk), purchasing);
  }

  /** Buying for this studio; the plan of the work says when a batch begins. */
  public BuyDesk(Desk desk, WorkAhead ahead, Purchasing purchasing) {
    this.desk = desk;
    this.ahead = ahead;
    this.purchasing = purchasing;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(PATH, this::show);
    routes.post(PATH, this::work);
    routes.post(PATH + "/ordered", this::ordered);
    routes.post(PATH + "/gone", this::gone);
  }

  private List<ToBuy> toBuy() {
    WorkPlan timed = ahead.get().plan();
    return desk.studio().look(books -> ToBuy.of(books, timed, desk.now(), desk.zone()));
  }

  private void show(Context http) {
    Form form;
    List<String> losses = List.of();
    try {
      WorkPlan timed = ahead.get().plan();
      WorkPlan plan = desk.studio().look(books -> ToBuy.amounts(books, desk.now(), desk.zone()));
      losses = LossWords.of(plan, desk.studio().look(YieldReader::of));
      List<ToBuy> rows =
          desk.studio().look(books -> ToBuy.of(books, plan, timed, desk.now(), desk.zone()));
      form =
          Form.startingFrom(
              Map.of(
                  "needs", lines(rows, r -> BuyLines.line(r.need())),
                  "packs", lines(packs(rows), BuyLines::line),
                  "postage", ""));
    } catch (OutOfRange e) { // a card of an open order is missing
      form = Form.blank();
      form.complain("needs", e.sentence() + ": " + e.hint() + ".");
    }
    Show.page(http, TEMPLATE, new BuyPage(form, rows(), BuyPage.Answer.NONE, onOrder(), losses));
  }

  private BuyPage page(Form form, BuyPage.Answer answer) {
    return new BuyPage(form, rows(), answer, onOrder(), List.of());
  }

  private List<PurchaseList.Offer> packs(List<ToBuy> rows) {
    return desk.studio()
        .look(
            books ->
                rows.stream()
                    .flatMap(r -> MaterialUse.packs(books, r.material().code()).stream())
                    .toList());
  }

  private List<BuyPage.OnOrder> onOrder() {
    return desk.studio()
        .look(
            books -> {
              Map<String, Material> materials =
                  Drawers.materials(books).all().stream()
                      .collect(Collectors.toMap(Material::code, m -> m));
              return PlaceOrder.of(books, desk.zone()).open().stream()
                  .map(open -> onOrder(open, materials.get(open.order().material())))
                  .toList();
            });
  }

  private BuyPage.OnOrder onOrder(
      Deliveries.Open open, @org.jspecify.annotations.Nullable Material material) {
    Deliveries.Ordered order = open.order();
    String unit = material == null ? "" : " " + material.unit().unit();
    return new BuyPage.OnOrder(
        order.id(),
        material == null ? order.material() : material.name(),
        number(open.still()) + unit,
        order.supplier(),
        desk.day(order.day()));
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
        number(row.onOrder()) + unit,
        number(7 * row.use().perDayG()) + unit,
        lead(row.lead()),
        number(row.reorder().safetyG()) + unit,
        number(row.reorder().orderPointG()) + unit,
        now ? "now" : desk.day(row.orderBy()),
        now);
  }

  private static String lead(Deliveries.LeadTime lead) {
    return lead.deliveries() == 0
        ? Math.round(lead.meanDays()) + " d, by the card"
        : String.format(
            Locale.ROOT,
            "%.0f \u00b1 %.1f d, %d deliveries",
            lead.meanDays(),
            lead.deviationDays(),
            lead.deliveries());
  }

  private void work(Context http) {
    Form form = Form.of(http);
    List<PurchaseList.Need> needs = BuyLines.needs(form);
    List<PurchaseList.Offer> offers = BuyLines.packs(form);
    List<PurchaseList.Supplier> suppliers = BuyLines.postage(form);
    if (needs.isEmpty() && form.ok()) {
      form.complain("needs", "Nothing is needed: write one line for each material.");
    }
    if (form.ok()) {
      try {
        PurchaseList list = new PurchaseList(needs, offers, suppliers);
        Show.page(http, TEMPLATE, page(form, answer(list, purchasing.buy(list))));
        return;
      } catch (OutOfRange e) {
        form.complain("postage", e.sentence() + ": " + e.hint() + ".");
      }
    }
    Show.again(http, TEMPLATE, page(form, BuyPage.Answer.NONE));
  }

  private BuyPage.Answer answer(PurchaseList list, Purchase purchase) {
    if (purchase instanceof Purchase.NotToBeHad none) {
      String sentence =
          "The packs do not cover "
              + none.material()
              + ": "
              + number(none.askedG())
              + " is needed and "
              + number(none.offeredG())
              + " is offered. Add a line for a pack of it.";
      return new BuyPage.Answer(sentence, List.of(), List.of(), List.of(), "");
    }
    Purchase.Bought bought = (Purchase.Bought) purchase;
    List<String> packs = new ArrayList<>();
    List<PlaceOrder.Line> ordered = new ArrayList<>();
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
      double amount = pack.count() * offer.packG();
      amounts.merge(offer.material(), amount, Double::sum);
      ordered.add(new PlaceOrder.Line(offer.material(), offer.supplier(), amount));
    }
    String lead =
        "Together "
            + number(bought.cost())
            + ", of it postage "
            + number(bought.shipping())
            + (bought.proven() ? "; nothing is cheaper." : "; whether it can be cheaper is open.");
    return new BuyPage.Answer(
        lead, packs, days(ordered), doubts(amounts, list), lines(ordered, BuyLines::line));
  }

  /** By which day to order, supplier by supplier: the earliest day of what is bought there. */
  private List<String> days(List<PlaceOrder.Line> ordered) {
    Map<String, LocalDate> by = new HashMap<>();
    desk.studio()
        .look(books -> MaterialUse.rows(books, desk.now(), desk.zone()))
        .forEach(r -> by.put(r.material().code(), r.orderBy()));
    try {
      toBuy().forEach(r -> by.put(r.material().code(), r.orderBy()));
    } catch (OutOfRange e) {
      return List.of(); // a card of an open order is missing: no day can be said of them
    }
    Map<String, LocalDate> days = new TreeMap<>();
    for (PlaceOrder.Line line : ordered) {
      LocalDate day = by.get(line.material());
      if (day != null) {
        days.merge(line.supplier(), day, (a, b) -> a.isBefore(b) ? a : b);
      }
    }
    List<String> words = new ArrayList<>();
    days.forEach(
        (supplier, day) ->
            words.add(
                day.isAfter(desk.today())
                    ? "Order from " + supplier + " by " + desk.day(day) + "."
                    : "Order from " + supplier + " today."));
    return words;
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

  private void ordered(Context http) {
    Form form = Form.of(http);
    List<PlaceOrder.Line> lines = BuyLines.ordered(form);
    Optional<Act> act = form.ok() ? form.act(http, "") : Optional.empty();
    if (act.isPresent()) {
      tell(http, form, desk.studio().placeOrder.run(act.get(), lines), "Written down as ordered.");
    } else {
      Show.again(http, TEMPLATE, page(form, BuyPage.Answer.NONE));
    }
  }

  private void gone(Context http) {
    Form form = Form.of(http);
    Optional<Integer> order = form.count("order", "an order", 1, Integer.MAX_VALUE);
    Optional<Act> act = order.isPresent() ? form.act(http, "") : Optional.empty();
    if (order.isPresent() && act.isPresent()) {
      tell(
          http,
          form,
          desk.studio().placeOrder.giveUp(act.get(), order.get()),
          "It no longer counts as on order.");
    } else {
      Show.again(http, TEMPLATE, page(form, BuyPage.Answer.NONE));
    }
  }

  private void tell(Context http, Form form, Outcome<List<Reading>> outcome, String done) {
    if (outcome instanceof Outcome.Refused<List<Reading>> refused) {
      form.complain("needs", refused.sentence() + ": " + refused.hint() + ".");
      Show.again(http, TEMPLATE, page(form, BuyPage.Answer.NONE));
      return;
    }
    Show.done(http, Said.done(done), PATH);
  }
}
