package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.net.URI;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.card.CandleDesign;
import pourwright.card.CardKind;
import pourwright.cost.Accounts;
import pourwright.order.Order;
import pourwright.work.Bookkeeping;
import pourwright.work.CardText;
import pourwright.work.Drawers;
import pourwright.work.MarketDay;
import pourwright.work.Outcome;
import pourwright.work.Recall;
import pourwright.work.SaveCard;
import pourwright.work.Signed;
import pourwright.work.Studio;
import pourwright.work.Subject;

/** A day at a market with forty candles: packed, printed, counted back with a thumb. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MarketDayTest extends BrowserTest {
  private static final int LINES = 40;
  private Workshop workshop;
  private Studio studio;
  private Server server;
  private String base;

  @BeforeAll
  void fortyCandlesAndThreeOfEach(@TempDir Path folder) {
    workshop = new Workshop(folder);
    studio = workshop.desk.studio();
    server = TestStudio.open(workshop.desk, folder);
    base = "http://127.0.0.1:" + server.port();
    CandleDesign pattern =
        studio.look(b -> b.cards().current(Drawers.CANDLE, "bollard-rain")).orElseThrow().body();
    List<Piece> vessels = workshop.vessels("bollard", 3 * LINES);
    for (int i = 0; i < LINES; i++) {
      String code = "stall-" + (10 + i);
      String text = CardText.write(pattern).replace("\"bollard-rain\"", "\"" + code + "\"");
      CandleDesign card = (CandleDesign) CardText.read(CardKind.CANDLE, text);
      studio.saveCard.run(workshop.act(), SaveCard.Request.of(Drawers.CANDLE, code, 0, card));
      studio.saveSetting.run(workshop.act(), "slate.price." + code, "20.00");
      workshop.candles(code, "soft-a", vessels.subList(3 * i, 3 * i + 3), "", 0);
      Signed.forSale(studio, code);
    }
  }

  @AfterAll
  void close() {
    server.close();
  }

  private Map<String, Integer> all(int each) {
    Map<String, Integer> take = new TreeMap<>();
    for (int i = 0; i < LINES; i++) {
      take.put("stall-" + (10 + i), each);
    }
    return take;
  }

  private Order pack(String name, Map<String, Integer> take) {
    return studio
        .market
        .pack(workshop.act(), new MarketDay.Pack(name, LocalDate.of(2026, 3, 7), take, 5000))
        .made();
  }

  /** Goal: forty lines counted back in under two minutes of scripted taps. */
  @Test
  void fortyLinesAreCountedBackWithAThumbInUnderTwoMinutes() throws Exception {
    pack("Market 2026-03-07 Quay", all(2));
    Page page = visit(base, "/settings", Window.PHONE);
    page.locator("#hand").fill("MB");
    page.locator("form[action='/settings/hand'] button").click();
    page.navigate(base + "/stockroom/market");
    page.getByText("2026-03-07 Quay").click();
    byte[] pdf =
        URI.create(base + "/stockroom/market/Market%202026-03-07%20Quay/sheet.pdf")
            .toURL()
            .openStream()
            .readAllBytes();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(new PDFTextStripper().getText(document))
          .contains("Stall sheet", "20.00 EUR", "Burn within sight.", "Weather", "Stall fee")
          .contains("Keep away from children");
    }
    assertThat(axe(page)).isEmpty();
    long began = System.nanoTime();
    for (int i = 0; i < LINES; i++) {
      page.locator("input[name^='home-']").nth(i).click();
      page.keyboard().type(i % 3 == 0 ? "1" : "0");
    }
    page.locator("#takings").fill("1300");
    page.locator("#fee").fill("45");
    page.locator("#footfall").fill("310");
    page.locator("#weather").fill("dry, windy");
    page.locator("main button.primary").click();
    page.locator(".said").waitFor();
    double seconds = (System.nanoTime() - began) / 1e9;
    System.getLogger("market").log(System.Logger.Level.INFO, "counted back in " + seconds + " s");
    assertThat(seconds).isLessThan(120);
    assertThat(page.locator(".said").innerText()).contains("66 pieces were sold");
    assertThat(page.locator("main").innerText())
        .contains("1300.00 EUR", "45.00 EUR", "dry, windy, 310 came by");
    Bookkeeping books = studio.look(b -> Bookkeeping.of(b, ZoneOffset.UTC));
    LocalDate end = LocalDate.of(2027, 1, 1);
    assertThat(books.journal().balances(end))
        .containsEntry(Accounts.SALES + "stall", -66L * 2000)
        .containsEntry(Accounts.FEES, 4500L)
        .doesNotContainKey(Accounts.FLOAT);
    page.navigate(base + "/stockroom/market");
    assertThat(page.locator("main").innerText()).contains("take ", "by 1 day", "counted back");
    assertThat(axe(page)).isEmpty();
    assertThat(((Number) page.evaluate("document.documentElement.scrollWidth")).intValue())
        .isLessThanOrEqualTo(390);
  }

  @Test
  void whatIsNotThereIsNotPackedAndNothingIs() {
    Outcome<Order> refused =
        studio.market.pack(
            workshop.act(),
            new MarketDay.Pack(
                "Market 2026-03-08 Fair",
                LocalDate.of(2026, 3, 8),
                Map.of("stall-10", 1, "stall-11", 9),
                0));
    assertThat(refused)
        .isInstanceOfSatisfying(
            Outcome.Refused.class, r -> assertThat(r.sentence()).contains("stall-11: 9 asked, "));
    boolean there = studio.look(b -> b.orders().order("Market 2026-03-08 Fair").isPresent());
    assertThat(there).isFalse();
  }

  @Test
  void theMarksThatWereReadComeHomeAndAHeldOneThatWasSoldIsSaid() {
    List<Piece> pieces =
        workshop.candles("cog-fig", "soft-a", workshop.vessels("cog", 3), "scent-fig", 5);
    workshop.prove("cog-fig", "soft-a", "scent-fig", 5);
    Order order = pack("Market 2026-03-09 Pier", Map.of("cog-fig", 3));
    long line = studio.look(b -> b.orders().lineIds(order.number()).values().iterator().next());
    studio.placeHold.run(
        workshop.act(), Subject.of(Subject.Kind.PIECE, pieces.get(1).id()), "cracked in the sun");
    MarketDay.Evening evening =
        studio
            .market
            .countBack(
                workshop.act(),
                new MarketDay.Home(
                    order.number(),
                    Map.of(line, 1),
                    List.of(pieces.get(0).id()),
                    null,
                    0,
                    null,
                    ""))
            .made();
    assertThat(evening.sold()).containsEntry(line, 2);
    assertThat(evening.heldMarks()).containsExactly(pieces.get(1).mark().text());
    List<PieceState> states = new ArrayList<>();
    pieces.forEach(
        p -> states.add(studio.look(b -> b.pieces().piece(p.id())).orElseThrow().state()));
    assertThat(states.get(0)).isInstanceOf(PieceState.Rested.class);
    assertThat(states.get(1)).isInstanceOf(PieceState.Gone.class);
    assertThat(states.get(2)).isInstanceOf(PieceState.Gone.class);
    Recall recall = studio.look(b -> Recall.ofLot(b, workshop.lot("scent-fig"))).orElseThrow();
    assertThat(recall.out()).isEqualTo(2);
    Outcome<MarketDay.Evening> twice =
        studio.market.countBack(
            workshop.act(),
            new MarketDay.Home(order.number(), Map.of(), List.of(), null, 0, null, ""));
    assertThat(twice.isDone()).isFalse();
  }
}
