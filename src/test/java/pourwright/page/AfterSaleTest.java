package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.batch.PieceStep;
import pourwright.cost.Accounts;
import pourwright.label.FederalHolidays;
import pourwright.label.ReportingClock;
import pourwright.order.OrderState;
import pourwright.work.AdvancePieces;
import pourwright.work.AfterSale;
import pourwright.work.Bookkeeping;
import pourwright.work.Drawers;
import pourwright.work.Hold;
import pourwright.work.LabelReader;
import pourwright.work.Outcome;
import pourwright.work.Reason;
import pourwright.work.RecordAfterSale;
import pourwright.work.Studio;
import pourwright.work.WorkPlan;

/** What comes after a sale, and the hold that stops more of it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AfterSaleTest extends BrowserTest {
  private Workshop workshop;
  private Studio studio;
  private Server server;
  private String base;

  @BeforeAll
  void open(@TempDir Path folder) {
    workshop = new Workshop(folder);
    studio = workshop.desk.studio();
    server = TestStudio.open(workshop.desk, folder);
    base = "http://127.0.0.1:" + server.port();
  }

  @AfterAll
  void close() {
    server.close();
  }

  private List<Piece> candles(String candle, int count, String scent) {
    List<Piece> made =
        workshop.candles(
            candle, "soft-a", workshop.vessels(candle.split("-", 2)[0], count), scent, 10);
    workshop.prove(candle, "soft-a", scent, 10);
    return made;
  }

  private Outcome<List<Piece>> move(long piece, PieceStep step, @Nullable Long line) {
    return studio.advancePieces.run(
        workshop.act(), new AdvancePieces.Request(List.of(piece), step, null, line));
  }

  /** One client picks, one after the other; another taps Hold in between. */
  @Test
  void fromTheMomentOfAHoldNoClientPicksLabelsOrPromises() throws Exception {
    List<Piece> pieces = candles("bollard-hearth", 12, "scent-hearth");
    long line = workshop.order("H-1", "bollard-hearth", 12, "shop");
    assertThat(promised("bollard-hearth")).isEqualTo(12);
    long lot = workshop.lot("scent-hearth");
    Visitor phone = new Visitor(server.port());
    CompletableFuture<Void> begun = new CompletableFuture<>();
    CompletableFuture<List<Outcome<List<Piece>>>> picking =
        CompletableFuture.supplyAsync(
            () -> {
              List<Outcome<List<Piece>>> outcomes = new ArrayList<>();
              for (Piece piece : pieces.subList(0, 11)) {
                outcomes.add(move(piece.id(), PieceStep.PICKED, line));
                begun.complete(null);
                if (outcomes.size() == 6) {
                  phone.post(
                      "/stockroom/lot/" + lot,
                      "/stockroom/lot/" + lot + "/hold",
                      Map.of("by", "CD", "reason", "smells sharp"));
                }
              }
              return outcomes;
            });
    begun.get();
    List<Outcome<List<Piece>>> outcomes = picking.get();
    Hold hold =
        studio.look(
            b ->
                b.holds().standing().stream()
                    .filter(h -> h.reason().equals("smells sharp"))
                    .findFirst()
                    .orElseThrow());
    assertThat(outcomes.subList(0, 6))
        .allSatisfy(o -> assertThat(o.deed().id()).isLessThan(hold.deed()));
    assertThat(outcomes.subList(6, 11))
        .allSatisfy(
            o ->
                assertThat(((Outcome.Refused<List<Piece>>) o).reason())
                    .isEqualTo(Reason.IT_IS_HELD));
    assertThat(promised("bollard-hearth")).isZero();
    List<String> gate =
        studio.look(
            b ->
                new LabelReader(b)
                    .candle("bollard-hearth", pieces.get(11).mark())
                    .orElseThrow()
                    .gate()
                    .holds());
    assertThat(gate).anySatisfy(h -> assertThat(h).contains("smells sharp"));
    assertThat(move(pieces.get(0).id(), PieceStep.SOLD, null).isDone()).isFalse();
    assertThat(studio.orders.move(workshop.act(), "H-1", OrderState.SENT))
        .isInstanceOfSatisfying(
            Outcome.Refused.class, r -> assertThat(r.reason()).isEqualTo(Reason.IT_IS_HELD));
    assertThat(studio.undo.run(workshop.act(), hold.deed()))
        .isInstanceOfSatisfying(
            Outcome.Refused.class, r -> assertThat(r.hint()).contains("with your name"));
    assertThat(phone.post("/hold", "/hold/" + hold.id() + "/lift", Map.of("name", "", "why", "x")))
        .satisfies(answer -> assertThat(studio.stopping(pieces.get(11).id())).isNotEmpty());
    phone.post(
        "/hold", "/hold/" + hold.id() + "/lift", Map.of("name", "Mara Kell", "why", "aired"));
    assertThat(studio.stopping(pieces.get(11).id())).isEmpty();
    assertThat(move(pieces.get(0).id(), PieceStep.SOLD, null).isDone()).isTrue();
  }

  private int promised(String candle) {
    return studio.look(
        b -> WorkPlan.inHand(b, Drawers.book(b), studio.today()).candles().getOrDefault(candle, 0));
  }

  /** 2 March 2026 is a Monday without a holiday near: five and ten working days on. */
  @Test
  void anIncidentIsWrittenDownHeldWithOneTapAndItsClockRuns() {
    List<Piece> pieces = candles("bollard-fig", 2, "scent-fig");
    long line = workshop.order("I-1", "bollard-fig", 1, "shop");
    move(pieces.get(0).id(), PieceStep.PICKED, line).made();
    move(pieces.get(0).id(), PieceStep.SOLD, null).made();
    Page page = visit(base, "/settings", Window.PHONE);
    page.locator("#hand").fill("MB");
    page.locator("form[action='/settings/hand'] button").click();
    page.navigate(base + "/after");
    assertThat(axe(page)).isEmpty();
    page.locator("#kind").selectOption("incident");
    page.locator("#mark").fill(pieces.get(0).mark().text());
    page.locator("#seen").selectOption("flare");
    page.locator("#said").fill("a flame as long as a hand after two hours");
    page.locator("main button.primary").click();
    page.waitForLoadState();
    assertThat(page.locator("h1").innerText()).contains("incident: a flare");
    page.locator("#file")
        .setInputFiles(
            new com.microsoft.playwright.options.FilePayload(
                "flare.txt",
                "text/plain",
                "seen".getBytes(java.nio.charset.StandardCharsets.UTF_8)));
    page.getByText("Keep it").click();
    page.waitForLoadState();
    assertThat(page.locator("section:has(#files)").innerText()).contains("flare.txt");
    assertThat(axe(page)).isEmpty();
    page.getByText("Hold design bollard-fig").click();
    page.waitForLoadState();
    String held = page.locator("main").innerText();
    assertThat(held)
        .contains("9 Mar 2026", "16 Mar 2026", "within 24 hours")
        .contains("3 pieces are of it, 1 of them left the studio.")
        .contains("I-1 shop");
    assertThat(page.locator("textarea").inputValue())
        .contains("Please do not burn it", "incident: a flare", pieces.get(0).mark().text())
        .contains("never with water");
    assertThat(axe(page)).isEmpty();
    assertThat(((Number) page.evaluate("document.documentElement.scrollWidth")).intValue())
        .isLessThanOrEqualTo(390);
    assertThat(move(pieces.get(1).id(), PieceStep.SOLD, null).isDone()).isFalse();
  }

  @Test
  void aReturnARefundAndAReplacementAreOneDeedEachAndTheBooksFollow() {
    List<Piece> pieces = candles("cog-rain", 1, "scent-rain");
    long line = workshop.order("R-1", "cog-rain", 1, "shop");
    move(pieces.get(0).id(), PieceStep.PICKED, line).made();
    move(pieces.get(0).id(), PieceStep.SOLD, null).made();
    long id = pieces.get(0).id();
    LocalDate end = LocalDate.of(2027, 1, 1);
    long sold = balance(Accounts.SOLD, end);
    AfterSale back =
        studio
            .afterSale
            .run(
                workshop.act(),
                new RecordAfterSale.Request(AfterSale.Kind.RETURN, id, null, "", null, 2900))
            .made();
    assertThat(back.order()).isEqualTo("R-1");
    assertThat(studio.look(b -> b.pieces().piece(id)).orElseThrow().state())
        .isInstanceOf(PieceState.CameBack.class);
    assertThat(balance(Accounts.REFUNDS, end)).isEqualTo(2900);
    assertThat(balance(Accounts.SOLD, end)).isLessThan(sold);
    Outcome<AfterSale> twice =
        studio.afterSale.run(
            workshop.act(),
            new RecordAfterSale.Request(AfterSale.Kind.RETURN, id, null, "", null, 0));
    assertThat(twice)
        .isInstanceOfSatisfying(
            Outcome.Refused.class,
            r -> assertThat(r.hint()).isEqualTo("only a piece that was sold comes back"));
    studio.undo.run(workshop.act(), back.deed()).made();
    assertThat(balance(Accounts.SOLD, end)).isEqualTo(sold);
    assertThat(balance(Accounts.REFUNDS, end)).isZero();
    studio
        .afterSale
        .run(
            workshop.act(),
            new RecordAfterSale.Request(AfterSale.Kind.REPLACEMENT, id, null, "", null, 0))
        .made();
    var again = studio.look(b -> b.orders().order("R-1-R1")).orElseThrow();
    assertThat(again.lines())
        .singleElement()
        .satisfies(
            l -> {
              assertThat(l.design()).isEqualTo("cog-rain");
              assertThat(l.quantity()).isEqualTo(1);
            });
    assertThat(studio.look(b -> b.money().agreed(b.orders().lineIds("R-1-R1").values())).values())
        .containsExactly(0L);
    assertThat(new Visitor(server.port()).page("/after").select("tbody tr").eachText())
        .anySatisfy(r -> assertThat(r).contains("another one is sent", "order R-1"));
  }

  private long balance(String account, LocalDate end) {
    return studio
        .look(b -> Bookkeeping.of(b, ZoneOffset.UTC))
        .journal()
        .balances(end)
        .getOrDefault(account, 0L);
  }

  /**
   * 16 CFR 1115.14 counts no federal holiday; the days of 2026 by 5 U.S.C. 6103(a), from memory.
   */
  @Test
  void holidaysStopTheClock() {
    assertThat(FederalHolidays.between(2026, 2026))
        .contains(
            LocalDate.of(2026, 1, 19),
            LocalDate.of(2026, 5, 25),
            LocalDate.of(2026, 7, 3),
            LocalDate.of(2026, 11, 26),
            LocalDate.of(2026, 12, 25))
        .hasSize(11);
    assertThat(
            ReportingClock.reachBy(LocalDate.of(2026, 11, 23), FederalHolidays.between(2026, 2026)))
        .isEqualTo(LocalDate.of(2026, 12, 1));
  }
}
