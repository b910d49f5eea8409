package pourwright.page.orders;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.work.Act;
import pourwright.work.Customer;
import pourwright.work.Outcome;
import pourwright.work.PageOf;

/**
 * Customers, who stand outside the ledger: looked at, changed, and erased at their wish. Orders and
 * traces keep the reference alone.
 */
public final class CustomerDesk {
  private static final String PATH = "/orders/customers";
  private static final String TEMPLATE = "orders/customer.jte";
  private static final int AT_ONCE = 50;

  private final Desk desk;

  CustomerDesk(Desk desk) {
    this.desk = desk;
  }

  /**
   * All of them.
   *
   * @param rows a page of them
   * @param next where the next ones begin, empty at the end
   */
  public record ListPage(List<Customer> rows, String next) {}

  /** One of them: her reference, and what is written of her. */
  public record OnePage(String ref, Form form) {}

  void addTo(RoutesConfig routes) {
    routes.get(PATH, this::list);
    routes.get(PATH + "/{ref}", this::one);
    routes.post(PATH + "/{ref}", this::change);
    routes.post(PATH + "/{ref}/erase", this::erase);
  }

  private void list(Context http) {
    String after = http.queryParam("after");
    PageOf<Customer> all = desk.studio().look(b -> b.customers().list(after, AT_ONCE));
    String next = all.next();
    Show.page(http, "orders/customers.jte", new ListPage(all.items(), next == null ? "" : next));
  }

  private Customer customer(Context http) {
    return desk.studio()
        .look(b -> b.customers().customer(http.pathParam("ref")))
        .orElseThrow(() -> new NotFoundResponse("no such customer"));
  }

  private void one(Context http) {
    Customer c = customer(http);
    Form form =
        Form.startingFrom(
            Map.of(
                "name", c.name(),
                "address", c.address(),
                "email", c.email(),
                "phone", c.phone(),
                "note", c.note()));
    Show.page(http, TEMPLATE, new OnePage(c.ref(), form));
  }

  private void change(Context http) {
    Form form = Form.of(http);
    Customer before = customer(http);
    Customer after =
        new Customer(
            before.ref(),
            form.text("name", "a name"),
            form.optionalText("address"),
            form.optionalText("email"),
            form.optionalText("phone"),
            form.optionalText("note"));
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty()) {
      Show.again(http, TEMPLATE, new OnePage(before.ref(), form));
      return;
    }
    Outcome<Customer> outcome = desk.studio().customers.put(act.get(), after);
    Show.done(
        http,
        outcome instanceof Outcome.Refused<Customer> refused
            ? Said.refused(refused)
            : Said.done("What is written of this customer is changed."),
        PATH + "/" + before.ref());
  }

  /** For good: no undo brings a person back, and the history says that it was done, not who. */
  private void erase(Context http) {
    Form form = Form.of(http);
    Customer customer = customer(http);
    Optional<Act> act = form.act(http, "");
    if (act.isEmpty()) {
      Show.who(http, form);
      return;
    }
    Outcome<String> outcome = desk.studio().customers.erase(act.get(), customer.ref());
    Show.done(
        http,
        outcome instanceof Outcome.Refused<String> refused
            ? Said.refused(refused)
            : Said.done(
                "Erased. Orders and traces keep the reference " + customer.ref() + " alone."),
        PATH);
  }
}
