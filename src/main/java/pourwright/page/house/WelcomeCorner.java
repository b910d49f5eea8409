package pourwright.page.house;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pourwright.material.MaterialKind;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.work.Act;
import pourwright.work.Books;
import pourwright.work.Drawers;
import pourwright.work.Outcome;
import pourwright.work.TakeHouseCards;

/** The short path from an empty studio to its first planned candle. */
public final class WelcomeCorner implements Corner {
  private static final String PAGE = "/welcome";
  private static final String TEMPLATE = "house/welcome.jte";
  private static final int ORDERS_READ = 50;
  private final Desk desk;

  /** The path at this desk. */
  public WelcomeCorner(Desk desk) {
    this.desk = desk;
  }

  /**
   * The page.
   *
   * @param form what was typed
   * @param steps in their order
   * @param cards whether the house's cards can still be taken
   */
  public record WelcomePage(Form form, List<Step> steps, boolean cards) {
    /** How many are done. */
    public long done() {
      return steps.stream().filter(Step::done).count();
    }
  }

  /** One step: what, why, where, and whether it is done. */
  public record Step(String what, String why, String path, boolean done) {}

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(PAGE, http -> Show.page(http, TEMPLATE, page(Form.blank())));
    routes.post("/welcome/cards", this::houseCards);
  }

  private WelcomePage page(Form form) {
    return desk.studio().look(books -> page(books, form));
  }

  private void houseCards(Context http) {
    Form form = Form.of(http);
    Optional<Act> act = form.act(http, "");
    if (act.isEmpty()) {
      Show.again(http, TEMPLATE, page(form));
      return;
    }
    Outcome<List<String>> outcome = desk.studio().houseCards.run(act.get());
    Show.done(
        http,
        outcome instanceof Outcome.Refused<List<String>> refused
            ? Said.refused(refused)
            : Said.done("The house cards are yours now; change them as you like."),
        PAGE);
  }

  private static WelcomePage page(Books books, Form form) {
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
            "Drawn by its measures, then weighed empty and full: the most exact volume there is.",
            "/board/vessel/new",
            !books.cards().all(Drawers.VESSEL).isEmpty()));
    steps.add(
        new Step(
            "One wax and one scent in stock",
            "With the lot code on the pack, so that every candle can be traced.",
            "/stockroom/receive",
            hasLotOf(books, MaterialKind.WAX) && hasLotOf(books, MaterialKind.FRAGRANCE)));
    steps.add(
        new Step(
            "One candle",
            "A vessel, a wax, a scent and its load, a wick. The pour card comes first.",
            books.cards().all(Drawers.POUR).isEmpty() ? "/board/pour/new" : "/board/candle/new",
            !books.cards().all(Drawers.CANDLE).isEmpty()));
    steps.add(
        new Step(
            "One order, even your own",
            "Then the first page says what to do and when.",
            "/orders/new",
            candleIsPlanned(books)));
    return new WelcomePage(form, steps, TakeHouseCards.wanted(books));
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
