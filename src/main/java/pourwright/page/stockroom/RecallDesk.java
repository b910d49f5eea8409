package pourwright.page.stockroom;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pourwright.page.Desk;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.quantity.Counted;
import pourwright.work.PaperPrinter;
import pourwright.work.PaperSheet;
import pourwright.work.PaperSheet.Block;
import pourwright.work.PaperSheet.Column;
import pourwright.work.PaperSheet.How;
import pourwright.work.Recall;
import pourwright.work.SheetTable;
import pourwright.work.TablePrinter;

/** Who has what a lot is in: to look at, as a table, as a sheet. */
public final class RecallDesk {
  private final Desk desk;
  private final PaperPrinter paper;
  private final TablePrinter tables;

  RecallDesk(Desk desk, PaperPrinter paper, TablePrinter tables) {
    this.desk = desk;
    this.paper = paper;
    this.tables = tables;
  }

  /**
   * The page: finished strings.
   *
   * @param path the lot's page
   * @param what the lot
   * @param lead how many pieces, how many of them left
   * @param rows each piece
   */
  public record RecallPage(String path, String what, String lead, List<RecallRow> rows) {}

  /** A piece. */
  public record RecallRow(
      String link, String mark, String design, String stands, String order, String buyer) {}

  void addTo(RoutesConfig routes) {
    routes.get("/stockroom/lot/{id}/recall", this::show);
    routes.get("/stockroom/lot/{id}/recall.csv", this::csv);
    routes.get("/stockroom/lot/{id}/recall.pdf", this::pdf);
  }

  private static long id(Context http) {
    String id = http.pathParam("id");
    return id.matches("[0-9]{1,18}") ? Long.parseLong(id) : 0;
  }

  private Recall recall(Context http) {
    Optional<Recall> recall = desk.studio().look(books -> Recall.ofLot(books, id(http)));
    return recall.orElseThrow(
        () -> new TurnedAway(404, "There is no such lot in the books", "Look it up in its list."));
  }

  private LocalDate day(Recall.Row row) {
    return LocalDate.ofInstant(row.since(), desk.zone());
  }

  private static String buyer(Recall.Row row) {
    return (row.customer() + (row.customerRef().isEmpty() ? "" : " (" + row.customerRef() + ")"))
        .strip();
  }

  private static String lead(Recall recall) {
    return Counted.of(recall.rows().size(), "piece", "pieces")
        + " from "
        + Counted.of(recall.batches(), "batch", "batches")
        + "; "
        + recall.out()
        + " of them left the studio.";
  }

  private void show(Context http) {
    Recall recall = recall(http);
    List<RecallRow> rows =
        recall.rows().stream()
            .map(
                r ->
                    new RecallRow(
                        "/piece/" + r.piece(),
                        r.mark(),
                        r.design(),
                        r.stands() + ", " + desk.day(day(r)),
                        (r.order() + " " + r.channel()).strip(),
                        buyer(r)))
            .toList();
    Show.page(
        http,
        "stockroom/recall.jte",
        new RecallPage("/stockroom/lot/" + id(http), recall.what(), lead(recall), rows));
  }

  private void csv(Context http) {
    Recall recall = recall(http);
    List<List<Object>> rows = new ArrayList<>();
    recall
        .rows()
        .forEach(
            r ->
                rows.add(
                    List.of(
                        r.mark(),
                        r.design(),
                        r.stands(),
                        day(r),
                        r.order(),
                        r.channel(),
                        r.customerRef(),
                        r.customer(),
                        "",
                        "")));
    SheetTable table =
        new SheetTable(
            "recall",
            List.of(
                "mark",
                "design",
                "stands",
                "since",
                "order",
                "channel",
                "customer reference",
                "customer",
                "told on",
                "came back"),
            rows);
    Show.file(
        http, tables.csv(table), "text/csv; charset=utf-8", "recall-lot-" + id(http) + ".csv");
  }

  private void pdf(Context http) {
    Recall recall = recall(http);
    List<List<String>> rows = new ArrayList<>();
    recall
        .rows()
        .forEach(
            r ->
                rows.add(
                    List.of(
                        r.mark(),
                        r.design(),
                        r.stands() + " " + day(r),
                        (r.order() + " " + r.channel()).strip(),
                        buyer(r),
                        "",
                        "")));
    List<Column> columns =
        List.of(
            new Column("Mark", 1.2, How.TICK),
            Column.of("Design", 1.7),
            Column.of("Stands", 1.9),
            Column.of("Order", 1.3),
            new Column("Customer, her reference", 2.2, How.WRITE),
            new Column("Told on", 1.1, How.WRITE),
            new Column("Back", 0.8, How.WRITE));
    String studio =
        desk.studio().look(books -> books.settings().value("studio.name")).orElse("Pourwright");
    PaperSheet sheet =
        new PaperSheet(
            studio,
            desk.dayAndTime(desk.now()),
            "Recall sheet",
            recall.what(),
            List.of(
                new Block.Text(lead(recall), true),
                new Block.Text(
                    "Tell every buyer not to burn it and how to send it back. Tick each piece when"
                        + " it is found. Names stand here only where the shop gave them.",
                    false),
                new Block.Grid(columns, rows)));
    String size = Optional.ofNullable(http.queryParam("paper")).orElse("a4");
    byte[] file = paper.pdf(sheet, size.equals("letter") ? "letter" : "a4");
    Show.inline(http, file, "application/pdf", "recall-lot-" + id(http) + ".pdf");
  }
}
