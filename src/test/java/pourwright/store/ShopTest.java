package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Batch;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.batch.PieceStep;
import pourwright.cost.Accounts;
import pourwright.cost.Journal;
import pourwright.cost.MoneyKind;
import pourwright.order.OrderState;
import pourwright.stock.Amount;
import pourwright.stock.Price;
import pourwright.stock.Trace;
import pourwright.work.AdvancePieces;
import pourwright.work.Bookkeeping;
import pourwright.work.CarryRest;
import pourwright.work.DrawForBatch;
import pourwright.work.FinishCast;
import pourwright.work.FinishPour;
import pourwright.work.LeaveWithShop;
import pourwright.work.MoneyFact;
import pourwright.work.Outcome;
import pourwright.work.Reason;
import pourwright.work.Recall;
import pourwright.work.ReceiveLot;
import pourwright.work.SaleSums;
import pourwright.work.Signed;
import pourwright.work.Subject;

/** Goods left with a shop, a rest that goes into another pour, and years that are closed. */
class ShopTest {
  private static final LocalDate END = LocalDate.of(2100, 1, 1);
  private Bench bench;
  private long wax;
  private List<Long> candles;

  /** 600 of powder (6.00) in three vessels, 300 g of wax (3.00) in three candles: 3.00 each. */
  @BeforeEach
  void threeCandles() {
    bench = Bench.onSqlite();
    Signed.forSale(bench.studio, "rain");
    bench.studio.saveSetting.run(Bench.act(), "slate.price.rain", "20.00");
    receive("grey-powder", "P-1", 1000, 1000);
    wax = receive("soft-wax", "W-1", 1000, 1000);
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
    candles = vessels.stream().map(Piece::id).toList();
    move(PieceStep.HARDENED, PieceStep.DRIED, PieceStep.SEEP_TEST, PieceStep.HELD_WAX);
    pour(candles, 300);
    move(PieceStep.RESTING, PieceStep.RESTED);
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private long receive(String material, String code, double grams, long cents) {
    return bench
        .studio
        .receiveLot
        .run(
            Bench.act(),
            new ReceiveLot.Request(
                material, code, Amount.ofGrams(grams), null, null, null, new Price(cents, "EUR")))
        .made()
        .lot()
        .id();
  }

  private void draw(Batch batch, String material, double grams) {
    bench.studio.drawForBatch.run(
        Bench.act(), new DrawForBatch.Request(batch.id(), material, null, Amount.ofGrams(grams)));
  }

  private Batch pour(List<Long> vessels, double grams) {
    Batch pour = bench.studio.startPour.run(Bench.act(), Bench.pourPlan("rain", 3)).made();
    draw(pour, "soft-wax", grams);
    bench.studio.finishPour.run(
        Bench.act(),
        new FinishPour.Request(
            pour.id(), List.of(new FinishPour.Filled("rain", vessels)), List.of()));
    return pour;
  }

  private void move(PieceStep... steps) {
    for (PieceStep step : steps) {
      bench.studio.advancePieces.run(Bench.act(), AdvancePieces.Request.of(candles, step)).made();
    }
  }

  private Journal journal() {
    return bench.studio.look(b -> Bookkeeping.of(b, ZoneOffset.UTC)).journal();
  }

  private String leave(int pieces) {
    return bench
        .studio
        .shops
        .leave(
            Bench.act(),
            new LeaveWithShop.Leave("Quay Shop", bench.studio.today(), Map.of("rain", pieces)))
        .made()
        .number();
  }

  private Outcome<LeaveWithShop.Standing> told(String order, int sold, int home, long paid) {
    long line = bench.studio.look(b -> b.orders().lineIds(order).values().iterator().next());
    return bench.studio.shops.told(
        Bench.act(),
        new LeaveWithShop.Told(
            order, Map.of(line, sold), Map.of(line, home), List.of(), null, paid));
  }

  private static String sentence(Outcome<?> outcome) {
    assertThat(outcome).isInstanceOf(Outcome.Refused.class);
    return ((Outcome.Refused<?>) outcome).sentence();
  }

  @Test
  void whatIsLeftWithAShopIsStillHersUntilItTellsOfTheSale(@TempDir Path folder) throws Exception {
    String order = leave(2);
    assertThat(journal().balances(END))
        .containsEntry(Accounts.WITH_SHOPS, 600L)
        .containsEntry(Accounts.PIECES, 300L)
        .doesNotContainKey(Accounts.SOLD);
    Recall recall = bench.studio.look(b -> Recall.ofLot(b, wax)).orElseThrow();
    assertThat(recall.out()).isEqualTo(2);
    assertThat(recall.rows().get(0).stands()).isEqualTo("left with a shop");
    assertThat(recall.rows().get(0).customer()).isEqualTo("Quay Shop");
    // a price written down later does not change what was agreed when they were left
    bench.studio.saveSetting.run(Bench.act(), "slate.price.rain", "99.00");
    assertThat(told(order, 1, 0, 0).made()).isEqualTo(new LeaveWithShop.Standing(1, 1, List.of()));
    assertThat(journal().balances(END))
        .containsEntry(Accounts.WITH_SHOPS, 300L)
        .containsEntry(Accounts.SOLD, 300L)
        .containsEntry(Accounts.SALES + "consignment", -2000L)
        .containsEntry(Accounts.FEES, 800L)
        .containsEntry(Accounts.CUSTOMERS, 1200L);
    SaleSums sums = bench.studio.look(b -> SaleSums.of(b, order)).orElseThrow();
    assertThat(sums.totalMinor() - sums.paidMinor()).isEqualTo(1200);
    assertThat(told(order, 0, 1, 1200).isDone()).isTrue();
    assertThat(journal().balances(END))
        .doesNotContainKeys(Accounts.WITH_SHOPS, Accounts.CUSTOMERS)
        .containsEntry(Accounts.PIECES, 600L)
        .containsEntry(Accounts.MONEY, 1200L);
    assertThat(bench.studio.look(b -> b.orders().order(order)).orElseThrow().state())
        .isEqualTo(OrderState.SENT);
    Reckoner reader = Reckoner.reading(folder, journal().text());
    reader.run("check", "--strict");
    assertThat(reader.cents(Accounts.SOLD)).isEqualTo(300);
    assertThat(bench.store.keptRowsWrong()).isZero();
  }

  @Test
  void moreThanIsThereIsRefusedAndAHeldPieceIsNamed() {
    String order = leave(2);
    assertThat(sentence(told(order, 2, 1, 0)))
        .isEqualTo("2 of rain sold and 1 home, 2 are with the shop");
    assertThat(sentence(told(order, 0, 0, 0))).isEqualTo("nothing was sold, fetched or paid");
    bench.studio.placeHold.run(Bench.act(), Subject.of(Subject.Kind.LOT, wax), "smells sharp");
    LeaveWithShop.Standing now = told(order, 1, 0, 0).made();
    assertThat(now.heldMarks()).hasSize(1);
    Outcome<?> more =
        bench.studio.shops.leave(
            Bench.act(), new LeaveWithShop.Leave("Pier", bench.studio.today(), Map.of("rain", 1)));
    assertThat(sentence(more)).isEqualTo("rain: 1 asked, 0 there");
  }

  @Test
  void aToldSaleIsTakenBackAndThePieceIsWithTheShopAgain() {
    String order = leave(1);
    Map<String, Long> before = journal().balances(END);
    Outcome<LeaveWithShop.Standing> sale = told(order, 1, 0, 1200);
    bench.studio.undo.run(Bench.act(), sale.deed().id()).made();
    assertThat(journal().balances(END)).isEqualTo(before);
    assertThat(bench.studio.look(b -> b.pieces().piece(candles.get(0))).orElseThrow().state())
        .isInstanceOf(PieceState.Picked.class);
  }

  /** 400 g of 4.00 drawn, 100 g of it left: 1.00 goes along into the second pour. */
  @Test
  void aRestTakesItsTraceAndItsCostAlong() {
    receive("soft-wax", "W-2", 1000, 4000);
    Batch first = pour(List.of(), 400);
    Batch second = bench.studio.startPour.run(Bench.act(), Bench.pourPlan("rain", 1)).made();
    CarryRest.Request rest = new CarryRest.Request(first.id(), second.id(), Amount.ofGrams(100));
    assertThat(
            sentence(
                bench.studio.carryRest.run(
                    Bench.act(),
                    new CarryRest.Request(first.id(), second.id(), Amount.ofGrams(401)))))
        .isEqualTo("401 g left of a pour that had 400 g");
    Outcome<?> carried = bench.studio.carryRest.run(Bench.act(), rest);
    assertThat(carried.isDone()).as(carried.toString()).isTrue();
    assertThat(
            bench
                .studio
                .traceBack(new Trace.Node(Trace.Kind.BATCH, second.id()))
                .of(Trace.Kind.LOT))
        .containsExactly(wax);
    bench.studio.finishPour.run(
        Bench.act(), new FinishPour.Request(second.id(), List.of(), List.of()));
    Bookkeeping books = bench.studio.look(b -> Bookkeeping.of(b, ZoneOffset.UTC));
    assertThat(books.costs().withoutPieces())
        .containsEntry(first.id(), 300L)
        .containsEntry(second.id(), 100L);
    bench.studio.placeHold.run(Bench.act(), Subject.of(Subject.Kind.LOT, wax), "lumps");
    Batch third = bench.studio.startPour.run(Bench.act(), Bench.pourPlan("rain", 1)).made();
    assertThat(
            sentence(
                bench.studio.carryRest.run(
                    Bench.act(),
                    new CarryRest.Request(second.id(), third.id(), Amount.ofGrams(10)))))
        .isEqualTo("soft-wax lot W-1 is in it and is on hold");
  }

  private MoneyFact fee(LocalDate day) {
    return new MoneyFact(0, MoneyKind.FEE, null, null, 500, "EUR", day, "", 0);
  }

  @Test
  void aClosedYearStandsAndWhatIsCorrectedLaterCountsInTheOpenOne() {
    bench.clock.move(Duration.ofDays(400));
    LocalDate last = LocalDate.of(2026, 12, 31);
    LocalDate open = LocalDate.of(2027, 1, 1);
    Map<String, Long> stood = journal().balances(open);
    bench.studio.closeBooks.run(Bench.act(), last).made();
    assertThat(sentence(bench.studio.recordMoney.run(Bench.act(), List.of(fee(last)))))
        .isEqualTo("the books are closed up to 2026-12-31");
    assertThat(bench.studio.recordMoney.run(Bench.act(), List.of(fee(open))).isDone()).isTrue();
    Outcome<?> gone =
        bench.studio.advancePieces.run(
            Bench.act(), AdvancePieces.Request.of(candles, PieceStep.GIVEN));
    assertThat(gone.isDone()).isTrue();
    assertThat(journal().balances(open)).isEqualTo(stood);
    assertThat(journal().balances(END)).containsEntry(Accounts.GIFTS, 900L);
    assertThat(sentence(bench.studio.closeBooks.run(Bench.act(), last)))
        .isEqualTo("the books are closed up to 2026-12-31");
    assertThat(sentence(bench.studio.closeBooks.run(Bench.act(), bench.studio.today())))
        .contains("is not over");
  }

  @Test
  void anUndoneSaleOfAClosedYearIsToldInTheOpenOneAndTheClosingStays() {
    Outcome<?> sold =
        bench.studio.advancePieces.run(
            Bench.act(), AdvancePieces.Request.of(candles.subList(0, 1), PieceStep.SOLD));
    bench.clock.move(Duration.ofDays(400));
    LocalDate open = LocalDate.of(2027, 1, 1);
    Outcome<LocalDate> closing = bench.studio.closeBooks.run(Bench.act(), open.minusDays(1));
    Map<String, Long> stood = journal().balances(open);
    assertThat(stood).containsEntry(Accounts.SOLD, 300L);
    bench.studio.undo.run(Bench.act(), sold.deed().id()).made();
    assertThat(journal().balances(open)).isEqualTo(stood);
    assertThat(journal().balances(END)).doesNotContainKey(Accounts.SOLD);
    assertThat(journal().sum(Accounts.SOLD, open, END)).isEqualTo(-300);
    Outcome<?> again = bench.studio.undo.run(Bench.act(), closing.deed().id());
    assertThat(again)
        .isInstanceOfSatisfying(
            Outcome.Refused.class, r -> assertThat(r.reason()).isEqualTo(Reason.DAY_IS_CLOSED));
  }
}
