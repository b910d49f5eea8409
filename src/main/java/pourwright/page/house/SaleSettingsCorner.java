package pourwright.page.house;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.cost.Valuation;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.work.Act;
import pourwright.work.Outcome;
import pourwright.work.RefillVessel;
import pourwright.work.SlateBook;
import pourwright.work.StockValue;

/** Settings of selling: what papers say of tax and terms, how stock is valued, house limits. */
public final class SaleSettingsCorner implements Corner {
  private static final String PATH = "/settings/sale";
  private static final String TAX = "books.tax";
  private static final String METHOD = "slate.method";
  private static final String SELL_WITHIN = "candle.sell-within-days";
  private static final int TEXT_MOST = 120;
  private final Desk desk;

  /** The settings of this studio. */
  public SaleSettingsCorner(Desk desk) {
    this.desk = desk;
  }

  /**
   * The page.
   *
   * @param form as they stand or as they were typed
   * @param terms fields of the channels' terms, with the channels' names
   * @param chosen whether the way of valuing stock was chosen already
   */
  public record SaleSettingsPage(Form form, Map<String, String> terms, boolean chosen) {
    /** How stock may be valued. */
    public Map<String, String> methods() {
      Map<String, String> methods = new LinkedHashMap<>();
      methods.put("fifo", "first in, first out");
      methods.put("average", "at a moving average");
      return methods;
    }
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(PATH, http -> Show.page(http, "house/sale.jte", page(standing())));
    routes.post(PATH, this::save);
  }

  private Map<String, String> terms() {
    Map<String, String> terms = new LinkedHashMap<>();
    desk.studio()
        .look(books -> new SlateBook(books).terms())
        .forEach(t -> terms.put("slate.terms." + t.key(), t.name()));
    return terms;
  }

  private Form standing() {
    Map<String, String> values = new LinkedHashMap<>();
    desk.studio()
        .look(
            books -> {
              values.putAll(books.settings().all());
              values.putIfAbsent(SELL_WITHIN, "365");
              values.put(RefillVessel.LIMIT, "" + RefillVessel.limit(books));
              values.put(
                  METHOD, StockValue.method(books) == Valuation.Method.FIFO ? "fifo" : "average");
              return true;
            });
    return Form.startingFrom(values);
  }

  private SaleSettingsPage page(Form form) {
    boolean chosen = desk.studio().look(b -> b.settings().value(METHOD)).isPresent();
    return new SaleSettingsPage(form, terms(), chosen);
  }

  private void save(Context http) {
    Form form = Form.of(http);
    Map<String, String> wanted = new LinkedHashMap<>();
    text(form, TAX, wanted);
    terms().keySet().forEach(key -> text(form, key, wanted));
    form.count(RefillVessel.LIMIT, "how often", 0, 20)
        .ifPresent(n -> wanted.put(RefillVessel.LIMIT, "" + n));
    if (!form.value(SELL_WITHIN).isBlank()) {
      form.count(SELL_WITHIN, "how many days", 30, 2000)
          .ifPresent(n -> wanted.put(SELL_WITHIN, "" + n));
    }
    form.choice(METHOD, "how stock is valued", List.of("fifo", "average"))
        .ifPresent(m -> wanted.put(METHOD, m));
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty()) {
      Show.again(http, "house/sale.jte", page(form));
      return;
    }
    Map<String, String> before = desk.studio().look(books -> books.settings().all());
    for (Map.Entry<String, String> one : wanted.entrySet()) {
      if (!one.getValue().equals(before.getOrDefault(one.getKey(), ""))) {
        Act each = Act.of(act.get().by(), act.get().requestKey() + "-" + one.getKey());
        Outcome<String> outcome = desk.studio().saveSetting.run(each, one.getKey(), one.getValue());
        if (outcome instanceof Outcome.Refused<String> refused) {
          Show.done(http, Said.refused(refused), PATH);
          return;
        }
      }
    }
    Show.done(http, Said.done("Saved."), PATH);
  }

  private static void text(Form form, String key, Map<String, String> wanted) {
    String text = form.value(key).strip();
    if (text.length() > TEXT_MOST) {
      form.complain(key, "Please say it in at most 120 letters.");
    }
    wanted.put(key, text);
  }
}
