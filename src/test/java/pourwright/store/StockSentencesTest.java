package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import pourwright.batch.Batch;
import pourwright.batch.Piece;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.Price;
import pourwright.stock.Trace;
import pourwright.work.Bookkeeping;
import pourwright.work.CountLot;
import pourwright.work.DrawForBatch;
import pourwright.work.Outcome;
import pourwright.work.PieceBook;
import pourwright.work.ReceiveLot;
import pourwright.work.WriteOff;

/** What cannot be is said in a sentence, and nothing is lost by it. */
class StockSentencesTest {
  private final Bench bench = Bench.onSqlite();

  @AfterEach
  void close() {
    bench.close();
  }

  private static Outcome.Refused<?> refused(Outcome<?> outcome) {
    assertThat(outcome).isInstanceOf(Outcome.Refused.class);
    return (Outcome.Refused<?>) outcome;
  }

  @Test
  void twoPeopleCountTheSameLotAndTheSecondIsToldWhatTheFirstFound() {
    long lot = bench.lot("grey-powder", "P-1", 1000);
    Amount seen = Amount.ofGrams(1000);
    bench.studio.countLot.run(Bench.act(), new CountLot.Request(lot, Amount.ofGrams(950), seen));
    Outcome.Refused<?> second =
        refused(
            bench.studio.countLot.run(
                Bench.act(), new CountLot.Request(lot, Amount.ofGrams(940), seen)));
    assertThat(second.sentence()).contains("from 1000 g to 950 g");
    assertThat(bench.onHand(lot)).isEqualTo(950);
  }

  @Test
  void aDrawLargerThanTheLotSaysWhatIsThereAndTakesNothing() {
    long lot = bench.lot("grey-powder", "P-1", 1000);
    Batch cast = bench.studio.startCast.run(Bench.act(), Bench.castPlan("bollard", 1)).made();
    Outcome.Refused<?> draw =
        refused(
            bench.studio.drawForBatch.run(
                Bench.act(),
                new DrawForBatch.Request(cast.id(), "grey-powder", lot, Amount.ofGrams(1001))));
    assertThat(draw.sentence()).contains("has 1000 g", "1001 g asked");
    assertThat(draw.hint()).contains("take a second lot");
    assertThat(bench.onHand(lot)).isEqualTo(1000);
  }

  @Test
  void aCorrectionBelowNothingIsRefusedBothWays() {
    long lot = bench.lot("grey-powder", "P-1", 1000);
    Amount less = Amount.ofGrams(1).negated();
    assertThat(
            refused(bench.studio.countLot.run(Bench.act(), new CountLot.Request(lot, less, null)))
                .hint())
        .contains("zero or more");
    assertThat(
            refused(
                    bench.studio.writeOff.run(
                        Bench.act(), new WriteOff.Request(lot, less, Cause.WASTE)))
                .hint())
        .contains("above zero");
    assertThat(bench.onHand(lot)).isEqualTo(1000);
  }

  @Test
  void aPriceInAnotherCurrencyIsAskedForInTheStudios() {
    bench.studio.saveSetting.run(Bench.act(), "currency", "EUR");
    Outcome.Refused<?> refused =
        refused(
            bench.studio.receiveLot.run(
                Bench.act(),
                new ReceiveLot.Request(
                    "grey-powder",
                    "P-2",
                    Amount.ofGrams(5),
                    null,
                    null,
                    null,
                    new Price(500, "USD"))));
    assertThat(refused.sentence()).contains("in USD", "books in EUR");
    assertThat(refused.hint()).contains("convert it at the rate you paid");
  }

  /** What a customer bought stays traced and booked when the customer is gone. */
  @Test
  void erasingACustomerLeavesEveryTraceAndBookEqual() {
    Filled.fill(bench);
    List<Piece> pieces =
        bench.studio.look(b -> b.pieces().list(PieceBook.Which.ALL, null, 100)).items();
    String books = bench.studio.look(b -> Bookkeeping.of(b, ZoneOffset.UTC)).journal().text();
    List<Trace.Reached> traces =
        pieces.stream()
            .map(p -> bench.studio.traceBack(new Trace.Node(Trace.Kind.PIECE, p.id())))
            .toList();
    assertThat(bench.studio.customers.erase(Bench.act(), "c1").isDone()).isTrue();
    boolean gone = bench.studio.look(b -> b.customers().customer("c1").isEmpty());
    assertThat(gone).isTrue();
    assertThat(bench.studio.look(b -> Bookkeeping.of(b, ZoneOffset.UTC)).journal().text())
        .isEqualTo(books);
    for (int i = 0; i < pieces.size(); i++) {
      assertThat(bench.studio.traceBack(new Trace.Node(Trace.Kind.PIECE, pieces.get(i).id())))
          .isEqualTo(traces.get(i));
    }
    assertThat(bench.store.unsound()).isEmpty();
  }
}
