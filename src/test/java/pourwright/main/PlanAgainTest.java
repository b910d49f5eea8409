package pourwright.main;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.card.CandleDesign;
import pourwright.card.Card;
import pourwright.material.Material;
import pourwright.order.DesignNames;
import pourwright.order.ImportChoices;
import pourwright.order.OrderFile;
import pourwright.order.OrderImport;
import pourwright.page.BrowserTest;
import pourwright.page.Desk;
import pourwright.page.Server;
import pourwright.page.TestStudio;
import pourwright.page.plan.BuyDesk;
import pourwright.page.plan.PlanCorner;
import pourwright.page.plan.PromiseDesk;
import pourwright.page.plan.SeasonDesk;
import pourwright.plan.ForwardRule;
import pourwright.plan.Placed;
import pourwright.plan.Rearrange;
import pourwright.solve.CpSatPlanner;
import pourwright.solve.CpSatPromising;
import pourwright.solve.CpSatPurchasing;
import pourwright.work.Act;
import pourwright.work.AdvancePieces;
import pourwright.work.Drawer;
import pourwright.work.Drawers;
import pourwright.work.FinishCast;
import pourwright.work.PlanText;
import pourwright.work.Replan;
import pourwright.work.SaveCard;
import pourwright.work.Signed;
import pourwright.work.Studio;

/**
 * Orders come in, a plan is made and taken, a cast fails, and one sees what moves before it does.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PlanAgainTest extends BrowserTest {
  private static final Instant MONDAY = Instant.parse("2026-03-02T08:00:00Z");
  private static final String FILE =
      """
      Order,Item,Qty,Due
      1042,bollard-rain,6,2026-05-20
      1043,ferry-fig,2,2026-05-27
      1044,bollard-hearth,3,2026-06-03
      """;
  private static final Page.WaitForSelectorOptions TWO_MINUTES =
      new Page.WaitForSelectorOptions().setTimeout(120_000);
  private int acts;
  private @Nullable Server server;

  @AfterAll
  void closeTheStudio() {
    if (server != null) {
      server.close();
    }
  }

  private Act act() {
    return Act.of("MB", "act " + acts++);
  }

  private <T> void save(Studio studio, Drawer<T> drawer, String code, Object body) {
    studio.saveCard.run(act(), SaveCard.Request.of(drawer, code, 0, drawer.type().cast(body)));
  }

  private void cards(Studio studio) {
    for (Material material : DemoCards.materials()) {
      save(studio, Drawers.MATERIAL, material.code(), material);
    }
    for (Card card : DemoCards.cards()) {
      for (Drawer<? extends Card> drawer : Drawers.ofCards()) {
        if (drawer.type().isInstance(card)) {
          save(studio, drawer, card.code(), card);
        }
      }
    }
  }

  private void orders(Studio studio) {
    DesignNames names = DesignNames.of(DemoCards.book().all(CandleDesign.class), Map.of());
    OrderImport read =
        OrderFile.read(
            FILE.getBytes(StandardCharsets.UTF_8),
            names,
            ImportChoices.detect(LocalDate.of(2026, 3, 2), ZoneOffset.UTC));
    assertThat(read).isInstanceOf(OrderImport.Ready.class);
    assertThat(studio.acceptOrders.run(act(), "orders.csv", (OrderImport.Ready) read).isDone())
        .isTrue();
  }

  /** A cast of bollards that is out of the molds. */
  private List<Piece> cast(Studio studio) {
    BatchPlan plan =
        new BatchPlan(
            BatchKind.CAST,
            "grey",
            1,
            List.of(new BatchPlan.Makes("bollard", 1, 8, "bollard-mold")),
            List.of(),
            null);
    long batch = studio.startCast.run(act(), plan).made().id();
    return studio
        .finishCast
        .run(
            act(),
            new FinishCast.Request(batch, List.of(new FinishCast.Demolded("bollard", 8)), null))
        .made();
  }

  private static void planAndWait(Page page) {
    page.navigate(page.url().replaceAll("/plan.*|/$", "") + "/plan");
    page.locator("form[action='/plan/again'] button").first().click();
    page.waitForSelector(
        "form[action='/plan/take']", new Page.WaitForSelectorOptions().setTimeout(60_000));
  }

  private static int runs(Desk desk) {
    return desk.studio().look(books -> books.planRuns().list(null, 10).items().size());
  }

  /** Says who it is, where the device does not know yet. */
  private static void sign(Page page) {
    if (page.locator("input[name=by]").count() > 0) {
      page.fill("input[name=by]", "MB");
    }
  }

  private static void take(Page page) {
    sign(page);
    page.locator("form[action='/plan/take'] button[type=submit]").first().click();
    page.waitForURL("**/plan");
  }

  /** A step in the night breaks hours and is named so; the last box may as well wait. */
  private static void moveByHand(Page page, Desk desk) {
    PlanText.Kept kept = new Replan(desk.studio()).standing().orElseThrow();
    List<Placed> placed = kept.plan().placed();
    Placed last = placed.get(placed.size() - 1);
    page.navigate(page.url().replaceAll("/plan.*", "") + "/plan?why=" + last.step());
    page.fill("#time", "03:00");
    page.locator("form[action='/plan'] button").click();
    assertThat(page.locator("#breaks").textContent()).contains("would break");
    assertThat(page.locator("form[action='/plan/move']").count()).isZero();
    assertThat(axe(page)).isEmpty();
    int start = last.startMin();
    do {
      start += 1440;
    } while (!Rearrange.move(kept.problem(), kept.plan(), last.step(), start).breaks().isEmpty());
    page.fill("#day", kept.problem().clock(start).toLocalDate().toString());
    page.fill("#time", kept.problem().clock(start).toLocalTime().toString());
    page.locator("form[action='/plan'] button").click();
    assertThat(page.locator("#breaks").textContent()).contains("breaks nothing");
    sign(page);
    page.locator("form[action='/plan/move'] button[type=submit]").click();
    assertThat(page.content()).contains("The step is moved.");
  }

  /** A refused form is a 422, which the browser notes; it belongs to the test that was refused. */
  @BeforeEach
  void listenAnew() {
    complaints.clear();
  }

  @Test
  void aFailedCastMovesThePlanAndOneSeesWhatMovesFirst(@TempDir Path folder) {
    Desk desk = TestStudio.desk(folder, Clock.fixed(MONDAY, ZoneOffset.UTC));
    cards(desk.studio());
    orders(desk.studio());
    List<Piece> vessels = cast(desk.studio());
    PlanCorner corner =
        new PlanCorner(desk, new CpSatPlanner(new ForwardRule()), Duration.ofSeconds(2));
    server =
        TestStudio.open(
            TestStudio.site(desk).and(corner),
            pourwright.page.ServerSettings.onAnyPort("Undercroft Lantern Works"),
            folder);
    Page page = visit("http://127.0.0.1:" + server.port(), "/plan", Window.LAPTOP);
    assertThat(page.content()).contains("No plan stands yet");
    planAndWait(page);
    assertThat(page.locator("#sentence").textContent()).contains("There was no plan before");
    take(page);
    assertThat(page.locator("svg.time-line").count()).isEqualTo(2);
    assertThat(axe(page)).isEmpty();
    desk.studio()
        .advancePieces
        .run(
            act(),
            AdvancePieces.Request.of(vessels.stream().map(Piece::id).toList(), PieceStep.SCRAPPED));
    planAndWait(page);
    assertThat(page.locator("#moved").textContent()).contains("Mix").contains("not planned before");
    assertThat(axe(page)).isEmpty();
    assertThat(runs(desk)).isEqualTo(1);
    take(page);
    assertThat(runs(desk)).isEqualTo(2);
    assertThat(page.request().get(page.url() + ".ics").text()).startsWith("BEGIN:VCALENDAR");
    moveByHand(page, desk);
    assertThat(runs(desk)).isEqualTo(3);
    assertThat(outside).isEmpty();
    assertThat(complaints).isEmpty();
  }

  @Test
  void theEarliestDayIsSaidWithTheWholeWayAndWhatHoldsIt(@TempDir Path folder) {
    Desk desk = TestStudio.desk(folder, Clock.fixed(MONDAY, ZoneOffset.UTC));
    cards(desk.studio());
    orders(desk.studio());
    PromiseDesk promises = new PromiseDesk(desk, new CpSatPromising(), Duration.ofSeconds(30));
    try (Server open =
        TestStudio.open(
            TestStudio.site(desk).and(promises),
            pourwright.page.ServerSettings.onAnyPort("Undercroft Lantern Works"),
            folder)) {
      Page page =
          visit(
              "http://127.0.0.1:" + open.port(),
              "/plan/promise?candle=cog-fig&count=7&day=2026-05-20",
              Window.PHONE);
      assertThat(page.locator("#answer").textContent())
          .isEqualTo("No date can be promised before it is proved for sale.");
      assertThat(page.locator("#missing").textContent())
          .contains("the vessel is not proved wax-tight yet")
          .contains("0 of 3 passed full lives");
      assertThat(page.locator("#making").textContent())
          .as("of the making a day may be said, apart from the promise")
          .contains("By the quick order of work");
      // the waits of the cards: set 24 h, harden 72 h, dry 120 h, full-dry 168 h, water 24 h, dry
      // again 48 h, set 12 h, rest 240 h = 708 h, and some hours of hands
      assertThat(page.locator("#way").textContent()).contains("29 d");
      assertThat(page.locator("#facts").textContent()).contains("Last day to cast");
      assertThat(axe(page)).isEmpty();
      Signed.waxTight(desk.studio(), "cog", "grey");
      Signed.forSale(desk.studio(), "cog-fig");
      page.reload();
      assertThat(page.locator("#answer").textContent()).contains("By the quick order of work");
      assertThat(page.locator("#missing").count()).isZero();
      page.locator("form[action='/plan/promise'][method=post] button").click();
      page.waitForSelector("#answer:has-text('Earliest')", TWO_MINUTES);
      assertThat(page.locator("#facts").textContent()).contains("What holds it");
      assertThat(page.locator("#facts").textContent()).contains("Proven");
      assertThat(axe(page)).isEmpty();
      assertThat(page.request().get(page.url().replaceAll("count=7", "count=x")).status())
          .isEqualTo(422);
    }
  }

  @Test
  void whatIsShortIsBoughtAtTheLeastCostAndASeasonWithoutSalesSaysSo(@TempDir Path folder) {
    Desk desk = TestStudio.desk(folder, Clock.fixed(MONDAY, ZoneOffset.UTC));
    cards(desk.studio());
    orders(desk.studio());
    try (Server open =
        TestStudio.open(
            TestStudio.site(desk)
                .and(new BuyDesk(desk, new CpSatPurchasing()))
                .and(new SeasonDesk(desk)),
            pourwright.page.ServerSettings.onAnyPort("Undercroft Lantern Works"),
            folder)) {
      Page page = visit("http://127.0.0.1:" + open.port(), "/plan/buy", Window.PHONE);
      assertThat(page.inputValue("#needs")).contains("rapid-grey; ").contains("tab-20; ");
      page.fill("#needs", "rapid-grey; 9000");
      page.fill("#packs", "rapid-grey; north-quay; 5000; 12\nrapid-grey; harbour; 10000; 20");
      page.fill("#postage", "north-quay; 4; 20\nharbour; 6");
      page.locator("form[action='/plan/buy'] button[type=submit]").click();
      // two packs of 12 travel free from 20: 24; one of 20 and 6 postage: 26
      assertThat(page.locator("#answer").textContent())
          .contains("Together 24")
          .contains("nothing is cheaper");
      assertThat(page.locator("#bought").textContent()).contains("2 \u00d7 5000 of rapid-grey");
      assertThat(axe(page)).isEmpty();
      page.fill("#packs", "rapid-grey; north-quay; five; 12");
      page.locator("form[action='/plan/buy'] button[type=submit]").click();
      assertThat(page.content()).contains("Line 1: 'five' is not a number");
      assertThat(page.inputValue("#needs")).contains("rapid-grey; 9000");
      page.navigate("http://127.0.0.1:" + open.port() + "/plan/season?candle=cog-fig");
      assertThat(page.locator("#rule").textContent()).contains("periods of sales");
      page.fill("#mean", "100");
      page.fill("#deviation", "20");
      page.fill("#margin", "8");
      page.fill("#loss", "2");
      page.locator("form[action='/plan/season'] button[type=submit]").click();
      // newsvendor: 8 / (8 + 2) = 0.8, z = 0.8416 (normal table), 100 + 20 z = 116.8: 117
      assertThat(page.locator("#stall").textContent()).contains("Take 117.");
      assertThat(axe(page)).isEmpty();
    }
  }
}
