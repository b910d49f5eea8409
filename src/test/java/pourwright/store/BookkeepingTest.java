package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Batch;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.cost.Accounts;
import pourwright.cost.Journal;
import pourwright.cost.MoneyKind;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.Price;
import pourwright.work.AdvancePieces;
import pourwright.work.Bookkeeping;
import pourwright.work.DrawForBatch;
import pourwright.work.FinishCast;
import pourwright.work.FinishPour;
import pourwright.work.MoneyFact;
import pourwright.work.Outcome;
import pourwright.work.ReceiveLot;
import pourwright.work.Signed;
import pourwright.work.WriteOff;

/**
 * The books of account told from the ledger, worked by hand and read by somebody else's program.
 */
class BookkeepingTest {
  private static final LocalDate BEGIN = LocalDate.parse("2026-03-01");
  private static final LocalDate END = LocalDate.parse("2026-06-01");
  private Bench bench;
  private OrderLine line;
  private List<Piece> candles;

  /**
   * By hand: 1000 g of powder for 10.00, 600 g into a cast of 3 vessels, 50 g spilt; 1000 g of wax
   * for 20.01, 400 g into a pour of the same 3. A vessel carries 2.00, a candle 8.004 / 3 = 2.668
   * more: 4.67, 4.67, 4.66. One is sold for 24.00, one given away.
   */
  @BeforeEach
  void oneSmallYear() {
    bench = Bench.onSqlite();
    receive("grey-powder", "P-1", 1000, 1000);
    receive("soft-wax", "W-1", 1000, 2001);
    Batch cast = bench.studio.startCast.run(Bench.act(), Bench.castPlan("bollard", 3)).made();
    draw(cast, "grey-powder", 600);
    List<Piece> vessels =
        bench
            .studio
            .finishCast
            .run(
                Bench.act(),
                new FinishCast.Request(
                    cast.id(), List.of(new FinishCast.Demolded("bollard", 3)), null))
            .made();
    long spilt =
        bench.studio.look(b -> b.lots().shelf("grey-powder", "P-1").orElseThrow()).lot().id();
    bench.studio.writeOff.run(
        Bench.act(), new WriteOff.Request(spilt, Amount.ofGrams(50), Cause.WASTE));
    for (PieceStep step :
        List.of(PieceStep.HARDENED, PieceStep.DRIED, PieceStep.SEEP_TEST, PieceStep.HELD_WAX)) {
      advance(vessels, step, null);
    }
    bench.clock.move(Duration.ofDays(31));
    Batch pour = bench.studio.startPour.run(Bench.act(), Bench.pourPlan("rain", 3)).made();
    draw(pour, "soft-wax", 400);
    List<Long> ids = vessels.stream().map(Piece::id).toList();
    candles =
        bench
            .studio
            .finishPour
            .run(
                Bench.act(),
                new FinishPour.Request(
                    pour.id(), List.of(new FinishPour.Filled("rain", ids)), List.of()))
            .made();
    advance(candles, PieceStep.RESTING, null);
    advance(candles, PieceStep.RESTED, null);
    bench.studio.saveSetting.run(Bench.act(), "slate.price.rain", "24.00");
    line = new OrderLine("A-1", "rain", 1, 1, null, null);
    bench.studio.orders.take(
        Bench.act(), new Order("A-1", "shop", null, OrderState.OPEN, List.of(line)));
    long lineId = bench.studio.look(b -> b.orders().lineIds("A-1").get(line.key()));
    Signed.forSale(bench.studio, "rain");
    advance(candles.subList(0, 1), PieceStep.PICKED, lineId);
    advance(candles.subList(0, 1), PieceStep.SOLD, null);
    advance(candles.subList(1, 2), PieceStep.GIVEN, null);
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private void receive(String material, String code, double grams, long cents) {
    bench
        .studio
        .receiveLot
        .run(
            Bench.act(),
            new ReceiveLot.Request(
                material, code, Amount.ofGrams(grams), null, null, null, new Price(cents, "EUR")))
        .made();
  }

  private void draw(Batch batch, String material, double grams) {
    bench.studio.drawForBatch.run(
        Bench.act(), new DrawForBatch.Request(batch.id(), material, null, Amount.ofGrams(grams)));
  }

  private void advance(
      List<Piece> pieces, PieceStep step, @org.jspecify.annotations.Nullable Long line) {
    Outcome<?> outcome =
        bench.studio.advancePieces.run(
            Bench.act(),
            new AdvancePieces.Request(pieces.stream().map(Piece::id).toList(), step, null, line));
    assertThat(outcome.isDone()).as(outcome.toString()).isTrue();
  }

  private Bookkeeping books() {
    return bench.studio.look(b -> Bookkeeping.of(b, ZoneOffset.UTC));
  }

  private void money(MoneyKind kind, long minor) {
    assertThat(
            bench
                .studio
                .recordMoney
                .run(
                    Bench.act(),
                    List.of(
                        new MoneyFact(
                            0, kind, "A-1", null, minor, "EUR", bench.studio.today(), "", 0)))
                .isDone())
        .isTrue();
  }

  @Test
  void theSmallYearIsToldAsItWasWorkedByHand() {
    Journal journal = books().journal();
    assertThat(journal.balances(END))
        .containsEntry("Assets:Stock:Materials:grey-powder", 350L)
        .containsEntry("Assets:Stock:Materials:soft-wax", 1201L)
        .containsEntry(Accounts.PIECES, 467L)
        .containsEntry(Accounts.SOLD, 467L)
        .containsEntry(Accounts.GIFTS, 466L)
        .containsEntry(Accounts.WASTE, 50L)
        .containsEntry(Accounts.CUSTOMERS, 2400L)
        .containsEntry(Accounts.SALES + "shop", -2400L)
        .containsEntry(Accounts.SUPPLIERS, -3001L);
    assertThat(books().costOfSales(BEGIN, END)).isEqualTo(467);
  }

  @Test
  void aPriceWrittenDownLaterChangesNoSaleBefore() {
    bench.studio.saveSetting.run(Bench.act(), "slate.price.rain", "99.00");
    assertThat(books().journal().balances(END)).containsEntry(Accounts.SALES + "shop", -2400L);
  }

  @Test
  void anAgreedPriceComesBeforeTheList() {
    long lineId = bench.studio.look(b -> b.orders().lineIds("A-1").get(line.key()));
    bench.studio.recordMoney.run(
        Bench.act(),
        List.of(
            new MoneyFact(
                0, MoneyKind.AGREED, "A-1", lineId, 2150, "EUR", bench.studio.today(), "", 0)));
    assertThat(books().journal().balances(END)).containsEntry(Accounts.SALES + "shop", -2150L);
  }

  @Test
  void whatComesBackIsStockAgainAndNoLongerSold() {
    advance(candles.subList(0, 1), PieceStep.CAME_BACK, null);
    assertThat(books().journal().balances(END))
        .containsEntry(Accounts.PIECES, 934L)
        .doesNotContainKey(Accounts.SOLD);
    advance(candles.subList(0, 1), PieceStep.SCRAPPED, null);
    assertThat(books().journal().balances(END)).containsEntry(Accounts.FAILED, 467L);
  }

  @Test
  void moneyIsWrittenOnBothSidesAndAnotherCurrencyRefusedWithASentence() {
    money(MoneyKind.DEPOSIT, 1000);
    money(MoneyKind.PAID, 1400);
    money(MoneyKind.FEE, 120);
    assertThat(books().journal().balances(END))
        .doesNotContainKey(Accounts.CUSTOMERS)
        .containsEntry(Accounts.MONEY, 2280L);
    Outcome<List<MoneyFact>> refused =
        bench.studio.recordMoney.run(
            Bench.act(),
            List.of(
                new MoneyFact(
                    0, MoneyKind.PAID, "A-1", null, 5, "USD", bench.studio.today(), "", 0)));
    assertThat(refused)
        .isInstanceOfSatisfying(
            Outcome.Refused.class,
            r -> assertThat(r.sentence()).contains("in USD", "books in EUR"));
  }

  /** A reader from the system's packages, which knows nothing of this program. */
  @Test
  void anIndependentReaderAcceptsTheJournalAndFindsTheSameFigures(@TempDir Path folder)
      throws Exception {
    money(MoneyKind.PAID, 2400);
    Bookkeeping books = books();
    Reckoner whole = Reckoner.reading(folder, books.journal().text());
    whole.run("check", "--strict");
    assertThat(whole.cents(Accounts.SOLD)).isEqualTo(books.costOfSales(BEGIN, END)).isEqualTo(467);
    assertThat(whole.cents(Accounts.STOCK)).isEqualTo(2018);
    assertThat(whole.cents("(Assets|Liabilities|Income|Expenses|Equity)")).isZero();
    LocalDate april = LocalDate.parse("2026-04-01");
    Reckoner later = Reckoner.reading(folder, books.journal().between(april, END).text());
    later.run("check", "--strict");
    assertThat(later.cents(Accounts.STOCK)).isEqualTo(2018);
    assertThat(later.cents(Accounts.SOLD)).isEqualTo(467);
    assertThat(later.cents(Accounts.WASTE)).isZero();
  }

  @Test
  void theReaderNoticesAJournalOutOfBalance(@TempDir Path folder) throws Exception {
    String text = books().journal().text();
    Reckoner bad = Reckoner.reading(folder, text.replaceFirst("10\\.00 EUR", "10.01 EUR"));
    org.assertj.core.api.Assertions.assertThatThrownBy(() -> bad.run("check"))
        .isInstanceOf(AssertionError.class);
  }
}
