package pourwright.page.slate;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.work.Act;
import pourwright.work.BookTables;
import pourwright.work.Bookkeeping;
import pourwright.work.CloseBooks;
import pourwright.work.Outcome;
import pourwright.work.SheetTable;
import pourwright.work.TablePrinter;

/** The books of account of a period, to look at and to hand on. */
final class BooksDesk {
  private static final String PATH = "/slate/books";
  private final Desk desk;
  private final TablePrinter printer;

  BooksDesk(Desk desk, TablePrinter printer) {
    this.desk = desk;
    this.printer = printer;
  }

  void addTo(RoutesConfig routes) {
    routes.get(PATH, this::show);
    routes.post(PATH + "/close", this::close);
    routes.get(PATH + "/journal", this::journal);
    routes.get(PATH + "/workbook", this::workbook);
    routes.get(PATH + "/csv/{table}", this::csv);
  }

  /** The days asked for: the first, and the day after the last. */
  private record Period(LocalDate from, LocalDate to) {
    String query() {
      return "from=" + from + "&until=" + to.minusDays(1);
    }
  }

  private Form proposed() {
    LocalDate today = desk.today();
    return Form.startingFrom(
        Map.of("from", today.withDayOfYear(1).toString(), "until", today.toString()));
  }

  private static Optional<Period> period(Form form) {
    Optional<LocalDate> from = form.read("from", "a day", LocalDate::parse);
    Optional<LocalDate> until = form.read("until", "a day", LocalDate::parse);
    if (from.isEmpty() || until.isEmpty()) {
      return Optional.empty();
    }
    long days = ChronoUnit.DAYS.between(from.get(), until.get());
    if (days < 0 || days > 40_000) {
      form.complain("until", "The last day must not lie before the first.");
      return Optional.empty();
    }
    return Optional.of(new Period(from.get(), until.get().plusDays(1)));
  }

  private Bookkeeping books() {
    return desk.studio().look(books -> Bookkeeping.of(books, desk.zone()));
  }

  private void show(Context http) {
    if (http.queryParam("from") == null) {
      Show.page(http, "slate/books.jte", empty(proposed()));
      return;
    }
    Form form = Form.asked(http);
    Optional<Period> period = period(form);
    if (period.isEmpty()) {
      Show.again(http, "slate/books.jte", empty(form));
      return;
    }
    Bookkeeping books = books();
    BookTables tables = new BookTables(books, period.get().from(), period.get().to());
    String unit = " " + books.journal().currency();
    List<BooksPage.Line> lines =
        tables.sums().entrySet().stream()
            .map(e -> new BooksPage.Line(e.getKey(), books.journal().amount(e.getValue()) + unit))
            .toList();
    List<BooksPage.Month> months =
        table(tables, "months").rows().stream()
            .map(
                r ->
                    new BooksPage.Month(
                        r.get(0).toString(), r.get(1).toString(), r.get(2) + unit, r.get(3) + unit))
            .toList();
    Show.page(
        http,
        "slate/books.jte",
        new BooksPage(
            form,
            periods(),
            true,
            period.get().query(),
            lines,
            months,
            books.journal().notes(),
            closed(),
            proposedClosing()));
  }

  private List<String[]> periods() {
    LocalDate year = desk.today().withDayOfYear(1);
    return List.of(
        new String[] {"This year", PATH + "?" + new Period(year, desk.today().plusDays(1)).query()},
        new String[] {"Last year", PATH + "?" + new Period(year.minusYears(1), year).query()});
  }

  private BooksPage empty(Form form) {
    return new BooksPage(
        form, periods(), false, "", List.of(), List.of(), List.of(), closed(), proposedClosing());
  }

  private String closed() {
    return desk.studio()
        .look(CloseBooks::closed)
        .map(day -> "The books are closed up to " + desk.day(day) + ".")
        .orElse("");
  }

  private String proposedClosing() {
    return desk.today().withDayOfYear(1).minusDays(1).toString();
  }

  private void close(Context http) {
    Form form = Form.of(http);
    Optional<LocalDate> last = form.read("last", "a day", LocalDate::parse);
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || last.isEmpty() || act.isEmpty()) {
      Show.again(http, "slate/books.jte", empty(form));
      return;
    }
    Outcome<LocalDate> outcome = desk.studio().closeBooks.run(act.get(), last.get());
    Show.done(
        http,
        outcome instanceof Outcome.Refused<LocalDate> refused
            ? Said.refused(refused)
            : Said.done("Closed. Whatever is corrected later counts after that day."),
        PATH);
  }

  private static SheetTable table(BookTables tables, String name) {
    return tables.all().stream()
        .filter(t -> t.name().equals(name))
        .findFirst()
        .orElseThrow(
            () -> new TurnedAway(404, "There is no such table", "Choose one of the page."));
  }

  private static Period asked(Context http) {
    return period(Form.asked(http))
        .orElseThrow(
            () -> new TurnedAway(404, "Say for which days", "Choose them on the books' page."));
  }

  private void journal(Context http) {
    Period period = asked(http);
    byte[] text =
        books()
            .journal()
            .between(period.from(), period.to())
            .text()
            .getBytes(StandardCharsets.UTF_8);
    Show.file(http, text, "text/plain; charset=utf-8", name(period) + ".journal");
  }

  private void workbook(Context http) {
    Period period = asked(http);
    byte[] book = printer.workbook(new BookTables(books(), period.from(), period.to()).all());
    Show.file(
        http,
        book,
        "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
        name(period) + ".xlsx");
  }

  private void csv(Context http) {
    Period period = asked(http);
    BookTables tables = new BookTables(books(), period.from(), period.to());
    SheetTable table = table(tables, http.pathParam("table"));
    String name = name(period) + "-" + table.name() + ".csv";
    Show.file(http, printer.csv(table), "text/csv; charset=utf-8", name);
  }

  private static String name(Period period) {
    return "books-" + period.from() + "-" + period.to().minusDays(1);
  }
}
