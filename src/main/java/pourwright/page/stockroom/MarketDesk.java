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
import pourwright.work.MarketDay;
import pourwright.work.PaperPrinter;
import pourwright.work.PriceText;

/** Market days: pack, print the stall sheet, count back in the evening. */
final class MarketDesk {
  private static final String PATH = "/stockroom/market";
  private final Desk desk;
  private final MarketReader reader;
  private final PaperPrinter paper;

  MarketDesk(Desk desk, PaperPrinter paper) {
    this.desk = desk;
    this.reader = new MarketReader(desk);
    this.paper = paper;
  }

  void addTo(RoutesConfig routes) {
    routes.get(PATH, http -> Show.page(http, "stockroom/markets.jte", reader.days(begun())));
    routes.post(PATH, this::pack);
    routes.get(PATH + "/{name}", http -> Show.page(http, "stockroom/market.jte", one(http)));
    routes.get(PATH + "/{name}/sheet.pdf", this::sheet);
    routes.post(PATH + "/{name}", this::countBack);
  }

  private Form begun() {
    return Form.startingFrom(Map.of("day", desk.today().plusDays(1).toString()));
  }

  private MarketPages.One one(Context http) {
    return one(http, Form.blank());
  }

  private MarketPages.One one(Context http, Form form) {
    return reader
        .one(http.pathParam("name"), form)
        .orElseThrow(
            () -> new TurnedAway(404, "There is no such market day", "Choose one of the list."));
  }

  /** Where a day's page is. */
  static String path(String name) {
    return PATH + "/" + URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
  }

  private Optional<Long> cents(Form form, String field) {
    String currency = desk.studio().look(books -> books.settings().value("currency")).orElse("EUR");
    return form.readIfThere(field, "an amount", t -> PriceText.minor(t, desk.locale(), currency));
  }

  private void pack(Context http) {
    Form form = Form.of(http);
    String place = form.text("place", "where the market is");
    Optional<LocalDate> day = form.read("day", "a day", LocalDate::parse);
    Optional<Long> change = cents(form, "float");
    GoodsForm goods = new GoodsForm(http, form, "stockroom/markets.jte", () -> reader.days(form));
    Map<String, Integer> take = goods.taken();
    Optional<Act> act = form.act(http, "");
    goods.shortName("place", place);
    if (!form.ok() || day.isEmpty() || act.isEmpty()) {
      goods.again();
      return;
    }
    String name = "Market " + day.get() + " " + place;
    goods
        .made(
            "place",
            desk.studio()
                .market
                .pack(act.get(), new MarketDay.Pack(name, day.get(), take, change.orElse(0L))))
        .ifPresent(
            order ->
                Show.done(
                    http,
                    Said.done(
                        Counted.of(
                            order.pieces(),
                            "piece is packed for it.",
                            "pieces are packed for it.")),
                    path(name)));
  }

  private void countBack(Context http) {
    Form form = Form.of(http);
    MarketPages.One page = one(http, form);
    GoodsForm goods = new GoodsForm(http, form, "stockroom/market.jte", () -> one(http, form));
    Map<Long, Integer> home = new TreeMap<>();
    for (MarketPages.Line line : page.lines()) {
      String field = "home-" + line.line();
      if (!form.value(field).isBlank()) {
        form.count(field, "how many came home", 0, line.taken())
            .ifPresent(n -> home.put(line.line(), n));
      }
    }
    Optional<Long> takings = cents(form, "takings");
    Optional<Long> fee = cents(form, "fee");
    Optional<Integer> footfall =
        form.value("footfall").isBlank()
            ? Optional.empty()
            : form.count("footfall", "how many came by", 0, 1_000_000);
    Optional<List<Long>> marks =
        form.readIfThere("marks", "marks", text -> GoodsForm.marks(desk, text));
    Optional<Act> act = form.act(http, form.optionalText("why"));
    if (!form.ok() || act.isEmpty()) {
      goods.again();
      return;
    }
    MarketDay.Home counted =
        new MarketDay.Home(
            http.pathParam("name"),
            home,
            marks.orElse(List.of()),
            takings.orElse(null),
            fee.orElse(0L),
            footfall.orElse(null),
            form.optionalText("weather"));
    goods
        .made("home", desk.studio().market.countBack(act.get(), counted))
        .ifPresent(
            evening -> {
              int sold = evening.sold().values().stream().mapToInt(Integer::intValue).sum();
              String said =
                  Counted.of(
                      sold,
                      "piece was sold; the rest is on the shelf again.",
                      "pieces were sold; the rest is on the shelf again.");
              Show.done(
                  http, GoodsForm.told(said, evening.heldMarks()), path(http.pathParam("name")));
            });
  }

  private void sheet(Context http) {
    String size = "letter".equals(http.queryParam("paper")) ? "letter" : "a4";
    byte[] pdf = paper.pdf(reader.sheet(one(http)), size);
    Show.inline(http, pdf, "application/pdf", "stall-sheet.pdf");
  }
}
