package pourwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import pourwright.cost.Valuation;
import pourwright.material.UnitKind;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.Movement;
import pourwright.stock.Price;

/** What the valuation gets to see of the ledger. */
class StockEntriesTest {
  private final List<Movement> movements = new ArrayList<>();

  private Movement move(long lot, long units, Cause cause, @Nullable Long batch) {
    return add(lot, units, cause, batch, null);
  }

  private Movement add(
      long lot, long units, Cause cause, @Nullable Long batch, @Nullable Long reverses) {
    Movement movement =
        new Movement(
            movements.size() + 1,
            lot,
            new Amount(UnitKind.MASS, units),
            cause,
            batch,
            reverses,
            Instant.EPOCH,
            1);
    movements.add(movement);
    return movement;
  }

  private Movement undo(Movement movement) {
    return add(
        movement.lot(),
        -movement.change().units(),
        Cause.REVERSED,
        movement.batch(),
        movement.id());
  }

  private static final Map<Long, Price> PRICES =
      Map.of(1L, new Price(1000, "EUR"), 2L, new Price(3000, "EUR"));

  /** Source: common textbook form of FIFO and moving average, worked by hand; no single source. */
  @Test
  void twoLotsAtTwoPricesAreValuedByBothMethods() {
    move(1, 100, Cause.RECEIVED, null);
    move(2, 100, Cause.RECEIVED, null);
    move(1, -100, Cause.DRAWN, 7L);
    move(2, -50, Cause.WASTE, null);
    StockEntries entries = StockEntries.of(movements, PRICES);
    Valuation fifo = entries.valued(Valuation.Method.FIFO);
    assertThat(fifo.issued()).extracting(Valuation.Issued::minor).containsExactly(1000L, 1500L);
    Valuation average = entries.valued(Valuation.Method.MOVING_AVERAGE);
    assertThat(average.issued()).extracting(Valuation.Issued::minor).containsExactly(2000L, 1000L);
    assertThat(average.stockMinor()).isEqualTo(1000);
  }

  @Test
  void whatWasUndoneLeavesNoCostAndDoneAgainCostsAsBefore() {
    move(1, 100, Cause.RECEIVED, null);
    Movement draw = move(1, -40, Cause.DRAWN, 7L);
    List<Valuation.Entry> before = StockEntries.of(movements, PRICES).entries();
    Movement undone = undo(draw);
    assertThat(StockEntries.of(movements, PRICES).entries())
        .containsExactly(new Valuation.Entry.In(100, 1000));
    undo(undone);
    assertThat(StockEntries.of(movements, PRICES).entries()).isEqualTo(before);
  }

  @Test
  void whatABatchGaveBackIsTakenOffWhatItDrew() {
    move(1, 100, Cause.RECEIVED, null);
    move(1, -40, Cause.DRAWN, 7L);
    move(1, 15, Cause.RETURNED, 7L);
    assertThat(StockEntries.of(movements, PRICES).entries())
        .containsExactly(new Valuation.Entry.In(100, 1000), new Valuation.Entry.Out(25, "batch 7"));
  }

  /** Found at a count, used, the count taken back, and found again: it was there all the time. */
  @Test
  void whatWasUsedBeforeItsCountWasTakenBackIsFoundWhereItWasUsed() {
    move(1, 100, Cause.RECEIVED, null);
    Movement count = move(1, 50, Cause.COUNTED, null);
    move(1, -120, Cause.DRAWN, 7L);
    move(1, 60, Cause.COUNTED, null);
    undo(count);
    StockEntries entries = StockEntries.of(movements, PRICES);
    assertThat(entries.entries())
        .containsExactly(
            new Valuation.Entry.In(100, 1000),
            new Valuation.Entry.In(20, 0),
            new Valuation.Entry.Out(120, "batch 7"),
            new Valuation.Entry.In(40, 0));
    assertThat(entries.valued(Valuation.Method.FIFO).stockAmount()).isEqualTo(40);
  }

  @Test
  void aLotWithoutAPriceIsNamed() {
    move(9, 100, Cause.RECEIVED, null);
    assertThat(StockEntries.of(movements, PRICES).withoutPrice()).containsExactly(9L);
  }

  @Property(tries = 200)
  void moneyIsConservedFromPurchaseToPiecesWasteAndStock(
      @ForAll @IntRange(max = 1_000_000) int seed) {
    movements.clear();
    Random random = new Random(seed);
    Map<Long, Price> prices = new TreeMap<>();
    long onHand = 0;
    long paid = 0;
    Movement last = null;
    for (int i = 1; i <= 40; i++) {
      if (random.nextInt(3) == 0 || onHand == 0) {
        long units = 1L + random.nextInt(1_000_000);
        prices.put((long) i, new Price(random.nextInt(9999), "EUR"));
        paid += java.util.Objects.requireNonNull(prices.get((long) i)).minor();
        move(i, units, Cause.RECEIVED, null);
        onHand += units;
      } else if (random.nextInt(4) == 0 && last != null) {
        undo(last);
        onHand -= last.change().units();
        last = null;
      } else {
        long units = 1 + (long) (random.nextDouble() * (onHand - 1));
        last = move(1, -units, random.nextBoolean() ? Cause.DRAWN : Cause.WASTE, 3L);
        onHand -= units;
      }
    }
    for (Valuation.Method method : Valuation.Method.values()) {
      Valuation valued = StockEntries.of(movements, prices).valued(method);
      assertThat(valued.issuedMinor() + valued.stockMinor()).isEqualTo(paid);
      assertThat(valued.stockAmount()).isEqualTo(onHand);
      assertThat(valued.issued()).allMatch(out -> out.minor() >= 0);
    }
  }
}
