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
import pourwright.page.plan.PlanCorner;
import pourwright.plan.ForwardRule;
import pourwright.plan.Placed;
import pourwright.plan.Rearrange;
import pourwright.solve.CpSatPlanner;
import pourwright.work.Act;
import pourwright.work.AdvancePieces;
import pourwright.work.Drawer;
import pourwright.work.Drawers;
import pourwright.work.FinishCast;
import pourwright.work.PlanText;
import pourwright.work.Replan;
import pourwright.work.SaveCard;
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

  private static void take(Page page) {
    page.fill("input[name=by]", "MB");
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
    page.fill("input[name=by]", "MB");
    page.locator("form[action='/plan/move'] button[type=submit]").click();
    assertThat(page.content()).contains("The step is moved.");
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
}
