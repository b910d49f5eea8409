package pourwright.page.stockroom;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.quantity.Counted;
import pourwright.work.Act;
import pourwright.work.LeaveWithShop;
import pourwright.work.PriceText;

/** Goods left with shops: leave them, write down what the shop tells, fetch what it gives back. */
final class ShopDesk {
  private static final String PATH = "/stockroom/shops";
  private final Desk desk;
  private final ShopReader reader;

  ShopDesk(Desk desk) {
    this.desk = desk;
    this.reader = new ShopReader(desk);
  }

  void addTo(RoutesConfig routes) {
    routes.get(PATH, http -> Show.page(http, "stockroom/shops.jte", reader.all(begun())));
    routes.post(PATH, this::leave);
    routes.get(
        PATH + "/{name}", http -> Show.page(http, "stockroom/shop.jte", one(http, Form.blank())));
    routes.post(PATH + "/{name}", this::told);
  }

  private Form begun() {
    return Form.startingFrom(Map.of("day", desk.today().toString()));
  }

  static String encoded(String number) {
    return URLEncoder.encode(number, StandardCharsets.UTF_8).replace("+", "%20");
  }

  /** Where the goods of an order are shown. */
  static String path(String number) {
    return PATH + "/" + encoded(number);
  }

  private ShopPages.One one(Context http, Form form) {
    return reader
        .one(http.pathParam("name"), form)
        .orElseThrow(
            () -> new TurnedAway(404, "Nothing was left there", "Choose a shop of the list."));
  }

  private void leave(Context http) {
    Form form = Form.of(http);
    String shop = form.text("shop", "which shop");
    Optional<LocalDate> day = form.read("day", "a day", LocalDate::parse);
    GoodsForm goods = new GoodsForm(http, form, "stockroom/shops.jte", () -> reader.all(form));
    Map<String, Integer> take = goods.taken();
    goods.shortName("shop", shop);
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || day.isEmpty() || act.isEmpty()) {
      goods.again();
      return;
    }
    goods
        .made(
            "shop",
            desk.studio().shops.leave(act.get(), new LeaveWithShop.Leave(shop, day.get(), take)))
        .ifPresent(
            order ->
                Show.done(
                    http,
                    Said.done(
                        Counted.of(
                            order.pieces(),
                            "piece is left there; it is still yours.",
                            "pieces are left there; they are still yours.")),
                    path(order.number())));
  }

  private Map<Long, Integer> counts(Form form, ShopPages.One page, String head) {
    Map<Long, Integer> counts = new TreeMap<>();
    for (ShopPages.Line line : page.lines()) {
      String field = head + line.line();
      if (!form.value(field).isBlank()) {
        form.count(field, "how many", 0, line.still()).ifPresent(n -> counts.put(line.line(), n));
      }
    }
    return counts;
  }

  private void told(Context http) {
    Form form = Form.of(http);
    ShopPages.One page = one(http, form);
    GoodsForm goods = new GoodsForm(http, form, "stockroom/shop.jte", () -> one(http, form));
    Map<Long, Integer> sold = counts(form, page, "sold-");
    Map<Long, Integer> home = counts(form, page, "home-");
    String currency = desk.studio().look(b -> b.settings().value("currency")).orElse("EUR");
    Optional<Long> commission =
        form.readIfThere(
            "commission", "an amount", t -> PriceText.minor(t, desk.locale(), currency));
    Optional<Long> paid =
        form.readIfThere("paid", "an amount", t -> PriceText.minor(t, desk.locale(), currency));
    Optional<List<Long>> marks =
        form.readIfThere("marks", "marks", text -> GoodsForm.marks(desk, text));
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty()) {
      goods.again();
      return;
    }
    LeaveWithShop.Told told =
        new LeaveWithShop.Told(
            http.pathParam("name"),
            sold,
            home,
            marks.orElse(List.of()),
            commission.orElse(null),
            paid.orElse(0L));
    goods
        .made("sold", desk.studio().shops.told(act.get(), told))
        .ifPresent(
            now ->
                Show.done(
                    http,
                    GoodsForm.told(
                        Counted.of(now.sold(), "piece was sold there, ", "pieces were sold there, ")
                            + Counted.of(now.still(), "is still there.", "are still there."),
                        now.heldMarks()),
                    path(http.pathParam("name"))));
  }
}
