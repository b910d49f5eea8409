package pourwright.page.slate;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.cost.MoneyKind;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.quantity.Money;
import pourwright.work.Act;
import pourwright.work.MoneyFact;
import pourwright.work.Outcome;
import pourwright.work.PriceText;

/** Money that belongs to no order: rent, a supplier, a voucher over the counter. */
public final class MoneyDesk {
  private static final String PATH = "/slate/money";
  private static final int LATEST = 40;

  /** What may come or go without an order. */
  private static final List<MoneyKind> KINDS =
      List.of(
          MoneyKind.FIXED,
          MoneyKind.SUPPLIER,
          MoneyKind.FEE,
          MoneyKind.POSTAGE,
          MoneyKind.VOUCHER_SOLD,
          MoneyKind.FLOAT_OUT,
          MoneyKind.FLOAT_HOME);

  private final Desk desk;

  MoneyDesk(Desk desk) {
    this.desk = desk;
  }

  /**
   * The page.
   *
   * @param form what was typed
   * @param kinds what for
   * @param vouchers what is paid on vouchers and not used yet
   * @param latest what came and went lately, newest first
   */
  public record MoneyPage(
      Form form, Map<String, String> kinds, String vouchers, List<String> latest) {}

  void addTo(RoutesConfig routes) {
    routes.get(
        PATH,
        http ->
            Show.page(
                http,
                "slate/money.jte",
                page(Form.startingFrom(Map.of("day", desk.today().toString())))));
    routes.post(PATH, this::write);
  }

  private MoneyPage page(Form form) {
    Map<String, String> kinds = new LinkedHashMap<>();
    KINDS.forEach(k -> kinds.put(k.code(), k.words()));
    return desk.studio()
        .look(
            books -> {
              List<MoneyFact> all = books.money().all();
              String currency = books.settings().value("currency").orElse("EUR");
              long vouchers = 0;
              List<String> latest = new ArrayList<>();
              for (MoneyFact fact : all) {
                vouchers += fact.kind() == MoneyKind.VOUCHER_SOLD ? fact.minor() : 0;
                vouchers -= fact.kind() == MoneyKind.VOUCHER_USED ? fact.minor() : 0;
                if (fact.kind() != MoneyKind.AGREED) {
                  latest.add(0, line(fact));
                }
              }
              return new MoneyPage(
                  form,
                  kinds,
                  new Money(vouchers, currency).amount() + " " + currency,
                  latest.subList(0, Math.min(LATEST, latest.size())));
            });
  }

  private String line(MoneyFact fact) {
    return desk.day(fact.day())
        + ": "
        + fact.kind().words()
        + " "
        + new Money(fact.minor(), fact.currency()).amount()
        + " "
        + fact.currency()
        + (fact.order() == null ? "" : ", order " + fact.order())
        + (fact.words().isEmpty() ? "" : " (" + fact.words() + ")");
  }

  private void write(Context http) {
    Form form = Form.of(http);
    String currency = desk.studio().look(b -> b.settings().value("currency")).orElse("EUR");
    Optional<MoneyKind> kind = form.read("kind", "what for", MoneyKind::of).filter(KINDS::contains);
    Optional<Long> minor =
        form.read("amount", "an amount", t -> PriceText.minor(t, desk.locale(), currency));
    Optional<LocalDate> day = form.read("day", "a day", LocalDate::parse);
    if (form.ok() && kind.isEmpty()) {
      form.complain("kind", "This belongs to an order: write it down there.");
    }
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || kind.isEmpty() || minor.isEmpty() || day.isEmpty() || act.isEmpty()) {
      Show.again(http, "slate/money.jte", page(form));
      return;
    }
    MoneyFact fact =
        new MoneyFact(
            0,
            kind.get(),
            null,
            null,
            minor.get(),
            currency,
            day.get(),
            form.optionalText("words-said"),
            0);
    Outcome<List<MoneyFact>> outcome = desk.studio().recordMoney.run(act.get(), List.of(fact));
    if (outcome instanceof Outcome.Refused<List<MoneyFact>> refused) {
      form.complain("day", refused.sentence() + ": " + refused.hint() + ".");
      Show.again(http, "slate/money.jte", page(form));
      return;
    }
    Show.done(http, Said.done("It is written down."), PATH);
  }
}
