package pourwright.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import pourwright.cost.Valuation.Entry;
import pourwright.cost.Valuation.Entry.In;
import pourwright.cost.Valuation.Entry.Out;
import pourwright.cost.Valuation.Method;
import pourwright.quantity.OutOfRange;

class ValuationTest {

  /**
   * The usual encyclopedia example of first in, first out (from memory): 100 at 50, 125 at 55, 75
   * at 59; 210 sold cost 100·50 + 110·55 = 11 050.
   */
  @Test
  void theEncyclopediasExampleOfFirstInFirstOut() {
    Valuation v =
        Valuation.of(
            Method.FIFO,
            List.of(
                new In(100, 500_000),
                new In(125, 687_500),
                new In(75, 442_500),
                new Out(210, "sold")));
    assertThat(v.issuedMinor()).isEqualTo(1_105_000);
    assertThat(v.stockMinor()).isEqualTo(525_000);
  }

  private static final List<Entry> PLAYERS =
      List.of(
          new In(140, 140 * 2900),
          new Out(110, "10 Nov."),
          new In(150, 150 * 3000),
          new Out(120, "20 Nov."),
          new Out(35, "24 Nov."),
          new In(140, 140 * 3400));

  /**
   * A widely set textbook exercise on perpetual inventory (players: 140 at 29, 110 sold, 150 at 30,
   * 120 and 35 sold, 140 at 34), solved by hand: 3 190, 3 570, 1 050, stock 5 510.
   */
  @Test
  void aTextbookExerciseOnPerpetualFirstInFirstOut() {
    Valuation v = Valuation.of(Method.FIFO, PLAYERS);
    assertThat(v.issued().stream().map(Valuation.Issued::minor))
        .containsExactly(319_000L, 357_000L, 105_000L);
    assertThat(v.stockMinor()).isEqualTo(551_000);
  }

  /** The same exercise by moving average, by hand: 30·29 + 150·30 over 180 is 29.8333. */
  @Test
  void theSameExerciseByMovingAverage() {
    Valuation v = Valuation.of(Method.MOVING_AVERAGE, PLAYERS);
    assertThat(v.issued().stream().map(Valuation.Issued::minor))
        .containsExactly(319_000L, 358_000L, 104_417L);
    assertThat(v.stockMinor()).isEqualTo(87_000 + 450_000 - 358_000 - 104_417 + 476_000);
  }

  /** 150 at 21, 120 sold, 225 at 27, 180 sold, 210 at 33; in cents. */
  private static final List<Entry> SPY =
      List.of(
          new In(150, 150 * 2100),
          new Out(120, "July"),
          new In(225, 225 * 2700),
          new Out(180, "August"),
          new In(210, 210 * 3300));

  /**
   * OpenStax, Principles of Accounting, Volume 1: Financial Accounting (2019), 10.3, perpetual
   * method, figures from memory: first in first out, sold 7 200 and left 8 955; moving average,
   * sold 7 253 and left 8 902, shown there in whole dollars.
   */
  @Test
  void thePublishedPerpetualExampleByBothMethods() {
    Valuation fifo = Valuation.of(Method.FIFO, SPY);
    assertThat(fifo.issuedMinor()).isEqualTo(720_000);
    assertThat(fifo.stockMinor()).isEqualTo(895_500);
    Valuation average = Valuation.of(Method.MOVING_AVERAGE, SPY);
    assertThat(Math.round(average.issuedMinor() / 100.0)).isEqualTo(7253);
    assertThat(Math.round(average.stockMinor() / 100.0)).isEqualTo(8902);
    assertThat(average.issuedMinor() + average.stockMinor()).isEqualTo(720_000 + 895_500);
  }

  private static List<Entry> history(int seed) {
    Random random = new Random(seed);
    List<Entry> entries = new ArrayList<>();
    long there = 0;
    for (int i = 0; i < 40; i++) {
      if (there == 0 || random.nextInt(3) == 0) {
        long amount = 1L + random.nextInt(1_000_000_000);
        entries.add(new In(amount, random.nextInt(4) == 0 ? 0 : random.nextInt(100_000)));
        there += amount;
      } else {
        long amount = 1 + (long) (random.nextDouble() * there * 0.9);
        entries.add(new Out(Math.min(amount, there), "batch " + i));
        there -= Math.min(amount, there);
      }
    }
    return entries;
  }

  @Property(tries = 300)
  void costIsConservedToTheCentAndNeverNegative(
      @ForAll @IntRange(min = 1, max = 99_999) int seed, @ForAll Method method) {
    List<Entry> entries = history(seed);
    Valuation v = Valuation.of(method, entries);
    long paid = entries.stream().mapToLong(e -> e instanceof In in ? in.minor() : 0).sum();
    assertThat(v.issuedMinor() + v.stockMinor()).isEqualTo(paid);
    assertThat(v.issued()).allMatch(i -> i.minor() >= 0);
    assertThat(v.stockMinor()).isNotNegative();
  }

  /**
   * Recomputed in decimals from the definition: pool value over pool amount, cents at each issue.
   */
  @Property(tries = 300)
  void theMovingAverageEqualsAnIndependentRecomputation(
      @ForAll @IntRange(min = 1, max = 99_999) int seed) {
    List<Entry> entries = history(seed);
    BigDecimal amount = BigDecimal.ZERO;
    BigDecimal value = BigDecimal.ZERO;
    List<Long> costs = new ArrayList<>();
    for (Entry entry : entries) {
      BigDecimal moved = BigDecimal.valueOf(entry.amount());
      if (entry instanceof In in) {
        amount = amount.add(moved);
        value = value.add(BigDecimal.valueOf(in.minor()));
      } else {
        BigDecimal cost =
            value
                .multiply(moved)
                .divide(amount, new MathContext(60))
                .setScale(0, java.math.RoundingMode.HALF_UP);
        costs.add(cost.longValueExact());
        amount = amount.subtract(moved);
        value = value.subtract(cost);
      }
    }
    assertThat(
            Valuation.of(Method.MOVING_AVERAGE, entries).issued().stream()
                .map(Valuation.Issued::minor))
        .containsExactlyElementsOf(costs);
  }

  @Test
  void moreThanIsThereCannotGoOut() {
    assertThatThrownBy(
            () -> Valuation.of(Method.FIFO, List.of(new In(5, 100), new Out(6, "batch"))))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("more goes out");
  }

  @Property(tries = 200)
  void goodPiecesCarryTheFailedOnesToTheCent(
      @ForAll @IntRange(min = 1, max = 60) int good,
      @ForAll @IntRange(min = 0, max = 99_999) int m) {
    List<Long> shares = Valuation.carriedBy(good, m);
    assertThat(shares.stream().mapToLong(Long::longValue).sum()).isEqualTo(m);
    assertThat(shares.get(0) - shares.get(good - 1)).isBetween(0L, 1L);
  }
}
