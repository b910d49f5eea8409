package pourwright.page.orders;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.work.Act;
import pourwright.work.Books;
import pourwright.work.Drawers;
import pourwright.work.Outcome;

/** An order written down by hand: a candle, how many, and the day it is wanted. */
public final class OrderDesk {
  private static final String PAGE = "/orders/new";
  private static final String TEMPLATE = "orders/new.jte";

  /** Where it came from, when nobody's shop sent it. */
  private static final String CHANNEL = "own";

  private final Desk desk;

  OrderDesk(Desk desk) {
    this.desk = desk;
  }

  /**
   * The page.
   *
   * @param form what was typed
   * @param candles names by code
   */
  public record NewOrderPage(Form form, Map<String, String> candles) {}

  void addTo(RoutesConfig routes) {
    routes.get(
        PAGE, http -> Show.page(http, TEMPLATE, page(Form.startingFrom(Map.of("quantity", "1")))));
    routes.post(PAGE, this::take);
  }

  private NewOrderPage page(Form form) {
    Map<String, String> candles = new LinkedHashMap<>();
    desk.studio().look(b -> b.cards().all(Drawers.CANDLE)).stream()
        .forEach(c -> candles.put(c.code(), c.body().name()));
    return new NewOrderPage(form, candles);
  }

  private void take(Context http) {
    Form form = Form.of(http);
    String candle = form.text("design", "a candle; draw one first");
    Optional<Integer> quantity = form.count("quantity", "how many", 1, OrderLine.QUANTITY_MAX);
    Optional<LocalDate> due =
        form.readIfThere(
            "due",
            "a day",
            text -> {
              try {
                return LocalDate.parse(text);
              } catch (java.time.format.DateTimeParseException e) {
                throw new IllegalArgumentException(e);
              }
            });
    String named = form.optionalText("number");
    if (!named.isEmpty() && known(named)) {
      form.complain("number", "There is an order of that name already; give it another.");
    }
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || quantity.isEmpty() || act.isEmpty()) {
      Show.again(http, TEMPLATE, page(form));
      return;
    }
    String number = named.isEmpty() ? free() : named;
    OrderLine line = new OrderLine(number, candle, 1, quantity.get(), due.orElse(null), null);
    Outcome<Order> outcome =
        desk.studio()
            .orders
            .take(act.get(), new Order(number, CHANNEL, null, OrderState.OPEN, List.of(line)));
    if (outcome instanceof Outcome.Refused<Order> refused) {
      form.complain("design", refused.sentence() + ": " + refused.hint() + ".");
      Show.again(http, TEMPLATE, page(form));
      return;
    }
    Show.done(http, Said.done("Order " + outcome.made().number() + " is in the book."), "/orders");
  }

  private boolean known(String number) {
    return desk.studio().look(b -> b.orders().order(number)).isPresent();
  }

  /** The day, and which of its orders it is. */
  private String free() {
    return desk.studio().look(this::free);
  }

  private String free(Books books) {
    int nth = 1;
    while (books.orders().order(desk.today() + " " + nth).isPresent()) {
      nth++;
    }
    return desk.today() + " " + nth;
  }
}
