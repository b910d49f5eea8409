package pourwright.page.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.order.Order;
import pourwright.order.OrderState;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.plan.SeatClass;
import pourwright.work.Act;
import pourwright.work.Classes;
import pourwright.work.Drawers;
import pourwright.work.Outcome;
import pourwright.work.PaperPrinter;
import pourwright.work.WorkPlan;

/** Classes: an order of seats at a fixed hour, its kit list, what sets in it and what is posted. */
final class ClassDesk implements Corner {
  private static final String PATH = ClassReader.PATH;
  private static final String ALL = "plan/classes.jte";
  private static final String ONE = "plan/class.jte";

  private final Desk desk;
  private final ClassReader reader;
  private final PaperPrinter paper;

  ClassDesk(Desk desk, PaperPrinter paper) {
    this.desk = desk;
    this.reader = new ClassReader(desk);
    this.paper = paper;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(PATH, http -> Show.page(http, ALL, all(begun())));
    routes.post(PATH, this::take);
    routes.get(PATH + "/{name}", http -> Show.page(http, ONE, one(http, Form.blank())));
    routes.get(PATH + "/{name}/kits.pdf", this::kits);
    routes.post(PATH + "/{name}", this::move);
  }

  private Form begun() {
    return Form.startingFrom(
        Map.of("day", "" + desk.today().plusDays(7), "from", "10:00", "to", "13:00"));
  }

  private ClassPages.All all(Form form) {
    return new ClassPages.All(form, reader.rows(), candles(), ClassReader.does(), teachers());
  }

  private Map<String, String> candles() {
    Map<String, String> candles = new LinkedHashMap<>();
    desk.studio()
        .look(books -> books.cards().all(Drawers.CANDLE))
        .forEach(c -> candles.put(c.code(), c.body().name()));
    return candles;
  }

  private Map<String, String> teachers() {
    Map<String, String> teachers = new LinkedHashMap<>();
    desk.studio()
        .look(books -> WorkPlan.hands(books))
        .forEach(initials -> teachers.put(initials, initials));
    return teachers;
  }

  private ClassPages.One one(Context http, Form form) {
    return reader
        .one(Classes.number(http.pathParam("name")), form)
        .orElseThrow(
            () -> new TurnedAway(404, "There is no such class", "Look it up in their list."));
  }

  private void take(Context http) {
    Form form = Form.of(http);
    Optional<String> candle =
        form.choice("candle", "which candle", List.copyOf(candles().keySet()));
    Optional<String> does = form.choice("does", "what a seat does", List.of("cast", "pour"));
    Optional<Integer> seats = form.count("seats", "how many seats", 1, SeatClass.SEATS_MAX);
    Optional<LocalDate> day = form.read("day", "a day", ClassDesk::day);
    Optional<LocalTime> from = form.read("from", "a time", ClassDesk::time);
    Optional<LocalTime> to = form.read("to", "a time", ClassDesk::time);
    Optional<String> teacher =
        form.choice("teacher", "who teaches", List.copyOf(teachers().keySet()));
    if (from.isPresent() && to.isPresent() && !from.get().isBefore(to.get())) {
      form.complain("to", "The class ends before it begins: give a later time.");
    }
    Optional<Act> act = form.act(http, "");
    if (!form.ok()
        || candle.isEmpty()
        || does.isEmpty()
        || seats.isEmpty()
        || day.isEmpty()
        || from.isEmpty()
        || to.isEmpty()
        || teacher.isEmpty()
        || act.isEmpty()) {
      Show.again(http, ALL, all(form));
      return;
    }
    SeatClass taught =
        new SeatClass(
            Classes.name(day.get(), from.get()),
            candle.get(),
            SeatClass.Does.valueOf(does.get().toUpperCase(Locale.ROOT)),
            seats.get(),
            day.get(),
            from.get(),
            to.get(),
            teacher.get());
    Outcome<Order> outcome = desk.studio().orders.takeClass(act.get(), taught);
    if (outcome instanceof Outcome.Refused<Order> refused) {
      form.complain("day", Said.refused(refused).headline() + " " + Said.refused(refused).detail());
      Show.again(http, ALL, all(form));
      return;
    }
    Show.done(
        http, Said.done("The class is in the book."), PATH + "/" + Classes.slug(taught.order()));
  }

  private static LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw new IllegalArgumentException(e);
    }
  }

  private static LocalTime time(String text) {
    try {
      return LocalTime.parse(text).truncatedTo(java.time.temporal.ChronoUnit.MINUTES);
    } catch (DateTimeException e) {
      throw new IllegalArgumentException(e);
    }
  }

  private void kits(Context http) {
    String size = "letter".equals(http.queryParam("paper")) ? "letter" : "a4";
    byte[] pdf = paper.pdf(reader.sheet(one(http, Form.blank())), size);
    Show.inline(http, pdf, "application/pdf", "kit-list.pdf");
  }

  /** All posted and done, or called off. */
  private void move(Context http) {
    Form form = Form.of(http);
    ClassPages.One page = one(http, form);
    Optional<String> state = form.choice("state", "what came of it", List.of("done", "off"));
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || state.isEmpty() || act.isEmpty()) {
      Show.again(http, ONE, page);
      return;
    }
    OrderState to = state.get().equals("done") ? OrderState.SENT : OrderState.CANCELLED;
    Outcome<Order> outcome = desk.studio().orders.move(act.get(), page.name(), to);
    Show.done(
        http,
        outcome instanceof Outcome.Refused<Order> refused
            ? Said.refused(refused)
            : Said.done(
                to == OrderState.SENT ? "The class is closed." : "The class is called off."),
        page.path());
  }
}
