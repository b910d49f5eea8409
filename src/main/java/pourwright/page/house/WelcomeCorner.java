package pourwright.page.house;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import pourwright.material.MaterialKind;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Show;
import pourwright.work.Books;
import pourwright.work.Drawers;

/** The short path from an empty studio to its first planned candle. */
public final class WelcomeCorner implements Corner {
  private static final int ORDERS_READ = 50;
  private final Desk desk;

  /** The path at this desk. */
  public WelcomeCorner(Desk desk) {
    this.desk = desk;
  }

  /**
   * The page.
   *
   * @param steps in their order
   */
  public record WelcomePage(List<Step> steps) {
    /** How many are done. */
    public long done() {
      return steps.stream().filter(Step::done).count();
    }
  }

  /** One step: what, why, where, and whether it is done. */
  public record Step(String what, String why, String path, boolean done) {}

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/welcome", this::show);
  }

  private void show(Context http) {
    Show.page(http, "house/welcome.jte", desk.studio().look(WelcomeCorner::page));
  }

  private static WelcomePage page(Books books) {
    List<Step> steps = new ArrayList<>();
    steps.add(
        new Step(
            "Name and units",
            "So that every amount is shown as your scale shows it.",
            "/settings",
            books.settings().value("studio.name").isPresent()));
    steps.add(
        new Step(
            "One vessel, weighed with water",
            "Empty, then full to the line: the most exact volume there is.",
            "/board",
            !books.cards().all(Drawers.VESSEL).isEmpty()));
    steps.add(
        new Step(
            "One wax and one scent in stock",
            "With the lot code on the pack, so that every candle can be traced.",
            "/stockroom",
            hasLotOf(books, MaterialKind.WAX) && hasLotOf(books, MaterialKind.FRAGRANCE)));
    steps.add(
        new Step(
            "One candle",
            "A vessel, a wax, a scent and its load, a wick.",
            "/board",
            !books.cards().all(Drawers.CANDLE).isEmpty()));
    steps.add(
        new Step(
            "One order, even your own",
            "Then the first page says what to do and when.",
            "/orders",
            candleIsPlanned(books)));
    return new WelcomePage(steps);
  }

  /** An order wants a candle whose card is there, so that the plan on the first page has it. */
  private static boolean candleIsPlanned(Books books) {
    List<String> candles =
        books.cards().all(Drawers.CANDLE).stream().map(card -> card.body().code()).toList();
    return books.orders().list(null, null, ORDERS_READ).items().stream()
        .flatMap(order -> order.lines().stream())
        .anyMatch(line -> candles.contains(line.design()));
  }

  private static boolean hasLotOf(Books books, MaterialKind kind) {
    var materials = Drawers.materials(books);
    return books.lots().allShelves().stream()
        .anyMatch(s -> materials.find(s.lot().material()).map(m -> m.kind() == kind).orElse(false));
  }
}
