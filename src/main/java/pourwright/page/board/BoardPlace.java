package pourwright.page.board;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import pourwright.card.CandleDesign;
import pourwright.card.Card;
import pourwright.card.CardBook;
import pourwright.card.Finish;
import pourwright.card.MixCard;
import pourwright.card.Mold;
import pourwright.card.PourCard;
import pourwright.card.Vessel;
import pourwright.page.Desk;
import pourwright.page.Place;
import pourwright.page.Show;
import pourwright.pour.Dose;
import pourwright.quantity.Counted;
import pourwright.work.Drawer;
import pourwright.work.Drawers;

/** Molds, vessels and candles, drawn to scale. */
public final class BoardPlace implements Place {
  private static final int DRAWN_MOST = 60;

  private final Desk desk;
  private final VesselView view;
  private final Lengths numbers;
  private volatile @Nullable Drawn drawn;

  private record Drawn(String edition, BoardPage page) {}

  /** The place, with the clock and zone of the studio. */
  public BoardPlace(Desk desk) {
    this.desk = desk;
    this.view = new VesselView(desk);
    this.numbers = new Lengths(desk);
  }

  @Override
  public String name() {
    return "Drawing board";
  }

  @Override
  public String path() {
    return "/board";
  }

  @Override
  public String purpose() {
    return "Molds, vessels and candles, drawn to scale.";
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(path(), this::show);
    new CardRoutes<>(desk, new VesselDesk(desk)).addTo(routes);
    new CardRoutes<>(desk, new MoldDesk(desk)).addTo(routes);
    new CardRoutes<>(desk, new MixDesk(desk)).addTo(routes);
    new CardRoutes<>(desk, new FinishDesk(desk)).addTo(routes);
    new CardRoutes<>(desk, new PourCardDesk(desk)).addTo(routes);
    new CardRoutes<>(desk, new CandleDesk(desk)).addTo(routes);
    new WeighRoutes(desk).addTo(routes);
    new SiliconeRoutes(desk).addTo(routes);
    new BesideRoutes(desk).addTo(routes);
    routes.get("/board/vessel/{code}", this::showVessel);
    routes.get("/board/candle/{code}", this::showCandle);
  }

  private CardBook book() {
    return desk.studio().look(Drawers::book);
  }

  /** The drawn board, kept until a card changes. */
  private void show(Context http) {
    Drawn last = drawn;
    String edition = desk.studio().look(books -> books.cards().edition());
    if (last == null || !last.edition().equals(edition)) {
      last = new Drawn(edition, page(book()));
      drawn = last;
    }
    Show.page(http, "board/board.jte", last.page());
  }

  private BoardPage page(CardBook book) {
    List<BoardPage.Drawn> candles =
        book.all(CandleDesign.class).stream()
            .limit(DRAWN_MOST)
            .map(c -> view.drawn(c, book))
            .toList();
    List<BoardPage.Drawn> vessels =
        book.all(Vessel.class).stream().limit(DRAWN_MOST).map(view::drawn).toList();
    return new BoardPage(purpose(), candles, vessels, shelves(book));
  }

  private List<BoardPage.Shelf> shelves(CardBook book) {
    return List.of(
        shelf(book, Drawers.MOLD, "Molds", "New mold", m -> moldLine(m)),
        shelf(book, Drawers.MIX, "Mix cards", "New mix card", m -> mixLine(m)),
        shelf(book, Drawers.FINISH, "Finishes", "New finish", f -> finishLine(f)),
        shelf(book, Drawers.POUR, "Pour cards", "New pour card", p -> pourLine(p)));
  }

  private static String moldLine(Mold mold) {
    return mold.count()
        + " of them, for "
        + mold.vessel()
        + (mold.leftoverOnly() ? ", for the rest of a mix" : "");
  }

  private String mixLine(MixCard mix) {
    Double to = mix.ratio().powderTo();
    return numbers.number(mix.ratio().powder())
        + (to == null ? "" : " to " + numbers.number(to))
        + " : "
        + numbers.number(mix.ratio().water())
        + (mix.ratio().by() == MixCard.By.MASS ? " by mass" : " by volume");
  }

  private String pourLine(PourCard card) {
    return card.load() == 0
        ? "no scent"
        : numbers.number(Math.rint(1e4 * card.load()) / 100)
            + (card.loadOf() == Dose.LoadOf.TOTAL ? " % of the total" : " % of the wax");
  }

  private static String finishLine(Finish finish) {
    int coats = finish.coats().size();
    return coats == 0 ? "bare" : Counted.of(coats, "coat", "coats");
  }

  private static <T extends Card> BoardPage.Shelf shelf(
      CardBook book, Drawer<T> drawer, String title, String words, Function<T, String> line) {
    List<BoardPage.Row> rows = new ArrayList<>();
    for (T card : book.all(drawer.type())) {
      String path = "/board/" + drawer.name() + "/" + card.code() + "/edit";
      rows.add(new BoardPage.Row(card.name(), path, line.apply(card)));
    }
    return new BoardPage.Shelf(title, "/board/" + drawer.name() + "/new", words, rows);
  }

  private void showVessel(Context http) {
    String code = http.pathParam("code");
    CardBook book = book();
    Vessel vessel =
        book.all(Vessel.class).stream()
            .filter(v -> v.code().equals(code))
            .findFirst()
            .orElseThrow(() -> new NotFoundResponse("no such vessel"));
    Show.page(http, "board/vessel.jte", view.page(vessel, book));
  }

  private void showCandle(Context http) {
    String code = http.pathParam("code");
    CardBook book = book();
    CandleDesign candle =
        book.all(CandleDesign.class).stream()
            .filter(c -> c.code().equals(code))
            .findFirst()
            .orElseThrow(() -> new NotFoundResponse("no such candle"));
    Show.page(http, "board/vessel.jte", view.page(candle, book));
  }
}
