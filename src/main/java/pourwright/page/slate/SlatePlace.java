package pourwright.page.slate;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Kept;
import pourwright.page.Place;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.quantity.MoneyText;
import pourwright.work.Act;
import pourwright.work.Books;
import pourwright.work.Outcome;
import pourwright.work.PaperPrinter;
import pourwright.work.SlateBook;
import pourwright.work.StockValues;
import pourwright.work.TablePrinter;

/** What a piece truly costs, its price and what it leaves. */
public final class SlatePlace implements Place {
  private static final double MARGIN_MOST = 80;
  private static final double PERCENT = 100;
  private static final double DISCOUNT_MOST = 95;
  private final Desk desk;
  private final StockValues values = new StockValues();
  private final Kept<SlateReader.Listed> listed = new Kept<>();

  /** The place, with the clock and zone of the studio. */
  public SlatePlace(Desk desk) {
    this.desk = desk;
  }

  @Override
  public String name() {
    return "Slate";
  }

  @Override
  public String path() {
    return "/slate";
  }

  @Override
  public String purpose() {
    return "What a piece truly costs, its price and what it leaves.";
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(path(), http -> Show.page(http, "slate/slate.jte", page(Optional.empty())));
    routes.post(path(), this::settings);
    new ChannelsDesk(desk).addTo(routes);
    new SaleDesk(desk, PaperPrinter.ofTheHouse()).addTo(routes);
    new MoneyDesk(desk).addTo(routes);
    new BooksDesk(desk, TablePrinter.ofTheHouse()).addTo(routes);
    routes.get(path() + "/{candle}", this::candle);
    routes.post(path() + "/{candle}", this::savePrice);
  }

  private <T> T look(Function<SlateBook, T> reading) {
    return desk.studio().look((Books books) -> reading.apply(new SlateBook(books, values)));
  }

  private SlateReader.Listed listed(SlateBook book, SlateReader reader) {
    return listed.get(book.edition(), () -> reader.listed(book.all()));
  }

  private SlatePage page(Optional<Form> typed) {
    return look(
        book -> {
          SlateReader reader = new SlateReader(book);
          SlateReader.Listed listed = listed(book, reader);
          return new SlatePage(
              purpose(),
              typed.orElseGet(reader::settings),
              book.currency(),
              listed.rows(),
              listed.best());
        });
  }

  private Optional<Double> amount(Form form, String field, String what) {
    String currency = look(SlateBook::currency);
    return form.read(field, what, t -> MoneyText.in(desk.locale()).read(t, currency))
        .map(m -> m.approximate());
  }

  private void settings(Context http) {
    Form form = Form.of(http);
    Map<String, String> changed = new LinkedHashMap<>();
    put(changed, "slate.wage", amount(form, "wage", "the wage of an hour"));
    put(changed, "slate.overhead", amount(form, "overhead", "the overhead of an hour"));
    put(changed, "slate.market-day", amount(form, "market_day", "what a market day costs"));
    Optional<Double> margin = form.read("margin", "a margin in per cent", Double::valueOf);
    if (margin.isPresent() && !(margin.get() >= 0 && margin.get() <= MARGIN_MOST)) {
      form.complain("margin", "Please give a margin of price from 0 to 80 per cent.");
    }
    put(changed, "slate.margin", margin.map(m -> m / PERCENT));
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty()) {
      Show.again(http, "slate/slate.jte", page(Optional.of(form)));
      return;
    }
    changed.forEach((key, value) -> save(act.get(), key, value));
    Show.done(http, Said.done("The house's numbers are saved."), path());
  }

  private static void put(Map<String, String> into, String key, Optional<Double> value) {
    value.ifPresent(v -> into.put(key, String.valueOf(v)));
  }

  private Outcome<String> save(Act act, String key, String value) {
    Act each = Act.of(act.by(), act.requestKey() + "-" + key);
    return desk.studio().saveSetting.run(each, key, value);
  }

  private CandleSlatePage candlePage(Context http, Form form, Optional<Double> price) {
    String code = http.pathParam("candle");
    return look(book -> book.of(code, price).map(laid -> new SlateReader(book).page(laid, form)))
        .orElseThrow(
            () -> new TurnedAway(404, "There is no such candle", "Choose one on the slate."));
  }

  private void candle(Context http) {
    Form form = Form.asked(http);
    Optional<Double> off = form.readIfThere("discount", "per cent", Double::valueOf);
    if (off.isPresent() && !(off.get() >= 0 && off.get() <= DISCOUNT_MOST)) {
      form.complain("discount", "Please give a discount from 0 to 95 per cent.");
    }
    Optional<Double> price =
        form.value("price").isEmpty() && http.queryParam("price") == null
            ? Optional.empty()
            : amount(form, "price", "a price");
    CandleSlatePage page = candlePage(http, form, price.filter(p -> p > 0));
    if (form.ok()) {
      Show.page(http, "slate/candle.jte", page);
    } else {
      Show.again(http, "slate/candle.jte", page);
    }
  }

  private void savePrice(Context http) {
    Form form = Form.of(http);
    Optional<Double> price = amount(form, "price", "a price");
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty() || price.isEmpty()) {
      Show.again(http, "slate/candle.jte", candlePage(http, form, Optional.empty()));
      return;
    }
    String code = http.pathParam("candle");
    Outcome<String> outcome = save(act.get(), "slate.price." + code, String.valueOf(price.get()));
    Show.done(
        http,
        outcome instanceof Outcome.Refused<String> refused
            ? Said.refused(refused)
            : Said.done("The price is written down."),
        path() + "/" + code);
  }
}
