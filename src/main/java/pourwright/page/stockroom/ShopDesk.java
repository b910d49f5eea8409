package pourwright.page.stockroom;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pourwright.batch.Mark;
import pourwright.order.Order;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.quantity.OutOfRange;
import pourwright.work.Act;
import pourwright.work.LeaveWithShop;
import pourwright.work.Outcome;
import pourwright.work.PriceText;
import pourwright.work.Subject;

/** Goods left with shops: leave them, write down what the shop tells, fetch what it gives back. */
final class ShopDesk {
  private static final String PATH = "/stockroom/shops";
  private static final int MOST = 1000;
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
    Map<String, Integer> take = new LinkedHashMap<>();
    for (String field : form.fields()) {
      if (field.startsWith("take-") && !form.value(field).isBlank()) {
        form.count(field, "how many", 0, MOST).ifPresent(n -> take.put(field.substring(5), n));
      }
    }
    if (shop.contains("/") || shop.length() > 60) {
      form.complain("shop", "Please give a short name without a slash.");
    }
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || day.isEmpty() || act.isEmpty()) {
      Show.again(http, "stockroom/shops.jte", reader.all(form));
      return;
    }
    Outcome<Order> outcome =
        desk.studio().shops.leave(act.get(), new LeaveWithShop.Leave(shop, day.get(), take));
    if (outcome instanceof Outcome.Refused<Order> refused) {
      form.complain("shop", refused.sentence() + ": " + refused.hint() + ".");
      Show.again(http, "stockroom/shops.jte", reader.all(form));
      return;
    }
    Show.done(
        http,
        Said.done(outcome.made().pieces() + " pieces are left there; they are still yours."),
        path(outcome.made().number()));
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
    Map<Long, Integer> sold = counts(form, page, "sold-");
    Map<Long, Integer> home = counts(form, page, "home-");
    String currency = desk.studio().look(b -> b.settings().value("currency")).orElse("EUR");
    Optional<Long> commission =
        form.readIfThere(
            "commission", "an amount", t -> PriceText.minor(t, desk.locale(), currency));
    Optional<Long> paid =
        form.readIfThere("paid", "an amount", t -> PriceText.minor(t, desk.locale(), currency));
    Optional<List<Long>> marks = form.readIfThere("marks", "marks", this::marks);
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty()) {
      Show.again(http, "stockroom/shop.jte", one(http, form));
      return;
    }
    Outcome<LeaveWithShop.Standing> outcome =
        desk.studio()
            .shops
            .told(
                act.get(),
                new LeaveWithShop.Told(
                    http.pathParam("name"),
                    sold,
                    home,
                    marks.orElse(List.of()),
                    commission.orElse(null),
                    paid.orElse(0L)));
    if (outcome instanceof Outcome.Refused<LeaveWithShop.Standing> refused) {
      form.complain("sold", refused.sentence() + ": " + refused.hint() + ".");
      Show.again(http, "stockroom/shop.jte", one(http, form));
      return;
    }
    LeaveWithShop.Standing now = outcome.made();
    String said = now.sold() + " pieces were sold there, " + now.still() + " are still there.";
    Show.done(
        http,
        now.heldMarks().isEmpty()
            ? Said.done(said)
            : Said.note(
                said + " A hold stands on " + String.join(", ", now.heldMarks()) + ".",
                "Look at the hold: it says who may have them."),
        path(http.pathParam("name")));
  }

  private List<Long> marks(String text) {
    return java.util.Arrays.stream(text.strip().split("[\\s,;]+", -1))
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
}
