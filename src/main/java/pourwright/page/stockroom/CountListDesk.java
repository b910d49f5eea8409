package pourwright.page.stockroom;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pourwright.material.Material;
import pourwright.page.Desk;
import pourwright.page.Show;
import pourwright.quantity.Counted;
import pourwright.stock.Shelf;
import pourwright.work.Books;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.PaperPrinter;
import pourwright.work.PaperSheet;
import pourwright.work.PaperSheet.Block;
import pourwright.work.PaperSheet.Column;
import pourwright.work.PaperSheet.How;

/** The list of everything on the shelves, to be counted on paper. */
final class CountListDesk {
  private final Desk desk;
  private final PaperPrinter paper;

  CountListDesk(Desk desk, PaperPrinter paper) {
    this.desk = desk;
    this.paper = paper;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/stockroom/count.pdf", this::print);
  }

  private void print(Context http) {
    List<List<String>> rows = desk.studio().look(this::rows);
    List<Column> columns =
        List.of(
            new Column("Material", 2.4, How.TICK),
            Column.of("Lot", 1.6),
            new Column("The books say", 1.2, How.RIGHT),
            new Column("Counted", 1.2, How.WRITE));
    String studio =
        desk.studio().look(books -> books.settings().value("studio.name")).orElse("Pourwright");
    PaperSheet sheet =
        new PaperSheet(
            studio,
            desk.dayAndTime(desk.now()),
            "Count list",
            Counted.of(rows.size(), "lot", "lots"),
            List.of(
                new Block.Text(
                    "Write what really stands there beside each lot. Enter it afterwards in the"
                        + " stockroom, under the lot.",
                    false),
                new Block.Grid(columns, rows)));
    String size = "letter".equals(http.queryParam("paper")) ? "letter" : "a4";
    Show.inline(http, paper.pdf(sheet, size), "application/pdf", "count-list.pdf");
  }

  /** A row for each lot of which the books say that something is left, as the shelves go. */
  private List<List<String>> rows(Books books) {
    Map<String, String> names =
        books.cards().all(Drawers.MATERIAL).stream()
            .map(CardVersion::body)
            .collect(Collectors.toMap(Material::code, Material::name));
    return books.lots().allShelves().stream()
        .filter(shelf -> shelf.onHand().isPositive())
        .sorted(
            Comparator.comparing((Shelf shelf) -> name(names, shelf))
                .thenComparing(shelf -> shelf.lot().code()))
        .map(
            shelf ->
                List.of(
                    name(names, shelf),
                    shelf.lot().code() + (shelf.held() ? ", on hold" : ""),
                    StockWords.amount(shelf.onHand(), desk.locale()),
                    ""))
        .toList();
  }

  private static String name(Map<String, String> names, Shelf shelf) {
    return names.getOrDefault(shelf.lot().material(), shelf.lot().material());
  }
}
