package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.cost.Valuation;
import pourwright.stock.Amount;
import pourwright.stock.Price;
import pourwright.work.AdvancePieces;
import pourwright.work.CountLot;
import pourwright.work.ReceiveLot;
import pourwright.work.SlateBook;
import pourwright.work.StockValue;
import pourwright.work.StockValues;
import pourwright.work.Studio;
import pourwright.work.WriteOff;

/** The slate of the demo's candles, every lot bought for 40 EUR. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SlatePlaceTest extends BrowserTest {
  private Workshop workshop;
  private Server server;
  private String base;

  @BeforeAll
  void open(@TempDir Path folder) {
    workshop = new Workshop(folder);
    server = TestStudio.open(workshop.desk, folder);
    base = "http://127.0.0.1:" + server.port();
  }

  @AfterAll
  void close() {
    server.close();
  }

  /** By hand: 4 wicks of 100 that cost 40 EUR are 1.60 EUR. */
  @Test
  void theLinesOfACandleAddUpToItsCostAtLotPrices() {
    SlateBook.Laid laid =
        workshop
            .desk
            .studio()
            .look(books -> new SlateBook(books).of("trough-rain", Optional.empty()))
            .orElseThrow();
    var lines = laid.atShop().lines();
    double sum = lines.stream().mapToDouble(l -> l.money().value()).sum();
    assertThat(sum).isCloseTo(laid.atShop().cost().value(), within(1e-9));
    assertThat(lines)
        .filteredOn(l -> l.name().startsWith("Flat braid"))
        .singleElement()
        .satisfies(l -> assertThat(l.money().value()).isCloseTo(1.60, within(1e-9)));
    assertThat(laid.unpriced()).isEmpty();
    assertThat(laid.atShop().marginOfPrice().value()).isCloseTo(0.35, within(1e-9));
  }

  @Test
  void theLedgersLotsAreValuedFirstInFirstOutAndToTheCent() {
    var studio = workshop.desk.studio();
    var lot =
        new ReceiveLot.Request(
            "paper-400", "dear", Amount.ofPieces(50), null, null, null, new Price(5000, "EUR"));
    studio.receiveLot.run(workshop.act(), lot).made();
    long first =
        studio.look(b -> b.lots().shelf("paper-400", "LOT-paper-400")).orElseThrow().lot().id();
    var before = studio.look(b -> StockValue.of(b, "paper-400", Valuation.Method.FIFO)).valuation();
    var spoilt =
        studio.writeOff.run(
            workshop.act(),
            new WriteOff.Request(first, Amount.ofPieces(30), pourwright.stock.Cause.WASTE));
    var after = studio.look(b -> StockValue.of(b, "paper-400", Valuation.Method.FIFO)).valuation();
    assertThat(after.issuedMinor()).isEqualTo(1200);
    assertThat(after.stockMinor() + after.issuedMinor()).isEqualTo(before.stockMinor());
    studio.undo.run(workshop.act(), spoilt.deed().id());
    var undone = studio.look(b -> StockValue.of(b, "paper-400", Valuation.Method.FIFO)).valuation();
    assertThat(undone.stockMinor()).isEqualTo(before.stockMinor());
  }

  @Test
  void marginsAlwaysSayOfPriceOrOfCost() {
    Visitor visitor = new Visitor(server.port());
    Document all = visitor.page("/slate");
    assertThat(all.select("th").eachText()).contains("Margin of price", "Margin of cost");
    assertThat(all.select("tbody tr")).hasSizeGreaterThanOrEqualTo(12);
    // one name of the currency for the whole table; on a phone each figure says what it is
    assertThat(all.select("caption").text()).startsWith("In EUR at the shop price");
    assertThat(all.select("tbody td").eachText()).noneMatch(t -> t.contains("EUR"));
    assertThat(all.select("tbody td").eachAttr("data-label")).hasSize(12 * 6);
    Document one = visitor.page("/slate/bollard-rain?price=40");
    assertThat(one.select("main").text())
        .contains("40.00 EUR", "of price", "of cost", "A market day of 120.00 EUR is paid by")
        .contains("failed pieces, carried by the good ones");
    assertThat(one.select("#movers + div tbody th").eachText().get(0)).isEqualTo("price");
    assertThat(visitor.get("/slate/bollard-rain?price=cheap").statusCode()).isEqualTo(422);
    assertThat(visitor.get("/slate/nothing").statusCode()).isEqualTo(404);
  }

  @Test
  void aPriceIsWrittenDownAndTheHousesNumbersChanged() {
    Page page = visit(base, "/slate/bollard-rain", Window.PHONE);
    assertThat(axe(page)).isEmpty();
    page.fill("#price-keep", "31.50");
    page.fill("#by", "MB");
    page.locator("form[method=post] button.primary").first().click();
    page.waitForLoadState();
    assertThat(page.locator("main").innerText()).contains("31.50 EUR");
    page.navigate(base + "/slate");
    assertThat(axe(page)).isEmpty();
    page.fill("#wage", "25");
    page.locator("form[action='/slate'] button.primary").click();
    page.waitForLoadState();
    assertThat(page.inputValue("#wage")).isEqualTo("25");
    assertThat(complaints).isEmpty();
    assertThat(List.copyOf(outside)).isEmpty();
  }

  /** Three casts, each 8 minutes of mixing and 12 of filling for 4 bollards: 5 minutes a piece. */
  @Test
  void recordedMinutesTakeThePlaceOfTheHousesFromThreeBatchesOn() {
    var studio = workshop.desk.studio();
    for (int i = 0; i < 3; i++) {
      var plan =
          new pourwright.batch.BatchPlan(
              pourwright.batch.BatchKind.CAST,
              "grey",
              1,
              List.of(new pourwright.batch.BatchPlan.Makes("cog", 1, 4, null)),
              List.of(
                  pourwright.batch.PlannedStep.hands("mix", "Mix", 15),
                  pourwright.batch.PlannedStep.hands("fill", "Fill", 8)),
              null);
      long batch = studio.startCast.run(workshop.act(), plan).made().id();
      for (String step : List.of("mix", "fill")) {
        workshop.clock.move(java.time.Duration.ofMinutes(step.equals("mix") ? 8 : 12));
        var request = new pourwright.work.RecordStep.Request(batch, step, List.of(), null);
        studio.recordStep.run(workshop.act(), request).made();
      }
      var demolded = List.of(new pourwright.work.FinishCast.Demolded("cog", 4));
      var finish = new pourwright.work.FinishCast.Request(batch, demolded, null);
      studio.finishCast.run(workshop.act(), finish).made();
    }
    SlateBook.Laid laid =
        studio.look(b -> new SlateBook(b).of("cog-rain", Optional.empty())).orElseThrow();
    SlateBook.Minutes cast = laid.minutes().get(0);
    assertThat(cast.recorded().orElseThrow().minutes()).isCloseTo(5.0, within(1e-9));
    assertThat(cast.recorded().orElseThrow().batches()).isEqualTo(3);
    assertThat(new Visitor(server.port()).page("/slate/cog-rain").select("main").text())
        .contains("5.0 min (3 batches)", "not recorded step by step");
  }

  @Test
  void aDiscountSaysHowManyMoreMustBeSold() {
    Visitor visitor = new Visitor(server.port());
    assertThat(visitor.page("/slate/bollard-rain?price=40&discount=10").select("main").text())
        .contains("price 36.00 EUR", "times as many must be sold");
    assertThat(visitor.get("/slate/bollard-rain?discount=99").statusCode()).isEqualTo(422);
    assertThat(visitor.page("/slate").select("main").text())
        .contains("pays an hour of hands best", "pays a day in the mold best");
  }

  /** What is kept between looks is checked against all of it read anew after every kind of deed. */
  @Test
  void whatIsKeptSaysTheSameAsAllReadAnew(@TempDir Path folder) {
    Workshop its = new Workshop(folder);
    var studio = its.desk.studio();
    StockValues kept = new StockValues();
    sameAsAnew(studio, kept);
    var counted =
        studio.countLot.run(
            its.act(), new CountLot.Request(its.lot("soft-wax-a"), Amount.ofGrams(4321), null));
    sameAsAnew(studio, kept);
    List<Long> ids = its.vessels("ferry", 12).stream().map(Piece::id).toList();
    List<SlateBook.Laid> whole = sameAsAnew(studio, kept);
    var scrapped =
        studio.advancePieces.run(
            its.act(), AdvancePieces.Request.of(ids.subList(0, 3), PieceStep.SCRAPPED));
    assertThat(sameAsAnew(studio, kept)).isNotEqualTo(whole);
    studio.undo.run(its.act(), scrapped.deed().id());
    assertThat(sameAsAnew(studio, kept)).isEqualTo(whole);
    studio.undo.run(its.act(), counted.deed().id());
    var dear =
        new ReceiveLot.Request(
            "soft-wax-a", "dear", Amount.ofGrams(500), null, null, null, new Price(90_000, "EUR"));
    studio.receiveLot.run(its.act(), dear).made();
    assertThat(sameAsAnew(studio, kept)).isNotEqualTo(whole);
    studio.saveSetting.run(its.act(), "slate.wage", "31");
    sameAsAnew(studio, kept);
  }

  private static List<SlateBook.Laid> sameAsAnew(Studio studio, StockValues kept) {
    return studio.look(
        books -> {
          List<SlateBook.Laid> laid = new SlateBook(books, kept).all();
          assertThat(laid).hasSizeGreaterThan(10).isEqualTo(new SlateBook(books).all());
          for (SlateBook.Laid each : laid) {
            assertThat(new SlateBook(books, kept).of(each.design().code(), Optional.empty()))
                .contains(each);
          }
          return laid;
        });
  }
}
