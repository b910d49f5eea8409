package pourwright.store;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.IntRange;
import pourwright.cost.Accounts;
import pourwright.cost.Journal;
import pourwright.cost.Valuation;
import pourwright.stock.Amount;
import pourwright.stock.Movement;
import pourwright.stock.OnHand;
import pourwright.stock.Shelf;
import pourwright.work.BookTables;
import pourwright.work.Bookkeeping;
import pourwright.work.Outcome;
import pourwright.work.StockEntries;

/** Laws of money and stock over histories of everything that can happen. */
class BookLawProperties {
  private static final int STEPS = 110;
  private static final LocalDate END = LocalDate.of(2100, 1, 1);

  private static Bookkeeping books(RandomYear year) {
    return year.bench.studio.look(b -> Bookkeeping.of(b, ZoneOffset.UTC));
  }

  /** Amounts: what is left is the sum of the movements and never less than nothing. */
  private static void amounts(RandomYear year) {
    List<Movement> movements =
        year.bench.studio.look(b -> b.lots().movements(null, 100_000).items());
    Map<Long, Amount> sums = OnHand.derivedFrom(movements).byLot();
    for (Shelf shelf : year.bench.studio.look(b -> b.lots().allShelves())) {
      assertThat(shelf.onHand()).isEqualTo(sums.get(shelf.lot().id()));
      assertThat(shelf.onHand().isNegative()).isFalse();
    }
    assertThat(year.bench.store.keptRowsWrong()).isZero();
  }

  /**
   * Money: what was paid for materials is in stock, in pieces, or on an account of what is gone.
   */
  private static void money(RandomYear year) {
    Bookkeeping books = books(year);
    Journal journal = books.journal();
    Map<String, Long> balances = journal.balances(END);
    long paid = books.purchases().stream().mapToLong(p -> p.minor() == null ? 0 : p.minor()).sum();
    long there = journal.sum(Accounts.STOCK, LocalDate.MIN, END);
    long gone = 0;
    for (String account :
        List.of(
            Accounts.SOLD,
            Accounts.WASTE,
            Accounts.TESTS,
            Accounts.GIFTS,
            Accounts.MISSING,
            Accounts.FAILED)) {
      gone += journal.sum(account, LocalDate.MIN, END);
    }
    assertThat(there + gone).as("in stock and gone against paid").isEqualTo(paid);
    balances.forEach(
        (account, minor) -> {
          if (account.startsWith(Accounts.STOCK)) {
            assertThat(minor).as(account).isNotNegative();
          }
        });
    long pieces = books.costs().byPiece().values().stream().mapToLong(Long::longValue).sum();
    long nothing = books.costs().withoutPieces().values().stream().mapToLong(Long::longValue).sum();
    assertThat(books.costs().byPiece().values()).allMatch(m -> m >= 0);
    long drawn = 0;
    for (String material : year.bench.studio.look(b -> b.accounts().materials())) {
      StockEntries entries = year.bench.studio.look(b -> StockEntries.of(b, material));
      for (Valuation.Method method : Valuation.Method.values()) {
        Valuation valued = entries.valued(method);
        assertThat(valued.stockMinor()).isNotNegative();
        assertThat(valued.issued()).allMatch(i -> i.minor() >= 0);
        assertThat(valued.stockAmount()).isEqualTo(onHand(year, material));
      }
      drawn +=
          entries.valued(Valuation.Method.FIFO).issued().stream()
              .filter(i -> i.into().startsWith("batch"))
              .mapToLong(Valuation.Issued::minor)
              .sum();
    }
    assertThat(pieces + nothing).as("what batches drew is in their pieces").isEqualTo(drawn);
    long cost =
        requireNonNull(
            new BookTables(books, LocalDate.EPOCH, END).sums().get("Cost of goods sold"));
    assertThat(cost).isEqualTo(balances.getOrDefault(Accounts.SOLD, 0L));
  }

  private static long onHand(RandomYear year, String material) {
    return year.bench.studio.look(b -> b.lots().allShelves()).stream()
        .filter(s -> s.lot().material().equals(material))
        .mapToLong(s -> s.onHand().units())
        .sum();
  }

  /** Moving average from its definition: the pool's value over its amount, cents at each issue. */
  private static void average(RandomYear year) {
    for (String material : year.bench.studio.look(b -> b.accounts().materials())) {
      List<Valuation.Entry> entries =
          year.bench.studio.look(b -> StockEntries.of(b, material)).entries();
      BigDecimal amount = BigDecimal.ZERO;
      BigDecimal value = BigDecimal.ZERO;
      List<Long> costs = new ArrayList<>();
      for (Valuation.Entry entry : entries) {
        BigDecimal moved = BigDecimal.valueOf(entry.amount());
        if (entry instanceof Valuation.Entry.In in) {
          amount = amount.add(moved);
          value = value.add(BigDecimal.valueOf(in.minor()));
        } else {
          BigDecimal cost =
              value
                  .multiply(moved)
                  .divide(amount, new MathContext(60))
                  .setScale(0, RoundingMode.HALF_UP);
          costs.add(cost.longValueExact());
          amount = amount.subtract(moved);
          value = value.subtract(cost);
        }
      }
      assertThat(
              Valuation.of(Valuation.Method.MOVING_AVERAGE, entries).issued().stream()
                  .map(Valuation.Issued::minor))
          .containsExactlyElementsOf(costs);
    }
  }

  private static void laws(int seed) {
    try (RandomYear year = new RandomYear(seed)) {
      year.go(STEPS);
      amounts(year);
      money(year);
      average(year);
    }
  }

  @Property(tries = 8, shrinking = ShrinkingMode.OFF)
  void stockAndMoneyAreConserved(@ForAll @IntRange(max = 10_000_000) int seed) {
    laws(seed);
  }

  @Property(tries = 300, shrinking = ShrinkingMode.OFF)
  @Tag("long")
  void soTheyAreInHundredsOfHistories(@ForAll @IntRange(max = 10_000_000) int seed) {
    laws(seed);
  }

  /** All that a person can see, the history itself left out. */
  private static Map<String, Object> seen(RandomYear year) {
    Map<String, Object> seen = new TreeMap<>();
    Bookkeeping books = books(year);
    seen.put("accounts", books.journal().balances(END));
    seen.put("costs", new TreeMap<>(books.costs().byPiece()));
    seen.put("sales", books.sales());
    seen.put("shelves", year.bench.studio.look(b -> b.lots().allShelves()));
    seen.put("pieces", year.pieces());
    seen.put("trays", year.bench.studio.look(b -> b.pieces().trays()));
    seen.put("carried", year.bench.studio.look(b -> b.batches().carried()));
    seen.put("running", year.bench.studio.look(b -> b.batches().running()));
    return seen;
  }

  @Property(tries = 6, shrinking = ShrinkingMode.OFF)
  void aCorrectionRestoresExactlyWhatWasAndItsOwnCorrectionWhatCame(
      @ForAll @IntRange(max = 10_000_000) int seed) {
    restores(seed, 12);
  }

  @Property(tries = 100, shrinking = ShrinkingMode.OFF)
  @Tag("long")
  void soItDoesInManyHistories(@ForAll @IntRange(max = 10_000_000) int seed) {
    restores(seed, 25);
  }

  /** A lot received, taken back, brought back, taken back: the fourth turn of one chain. */
  @Example
  void aReceiptTakenBackAndBroughtBackTwiceCanBeBroughtBackAgain() {
    restores(6235, 25);
  }

  private static void restores(int seed, int times) {
    try (RandomYear year = new RandomYear(seed)) {
      year.go(70);
      for (int i = 0; i < times; i++) {
        Map<String, Object> earlier = seen(year);
        int before = year.deeds.size();
        year.go(1);
        if (year.deeds.size() != before + 1) {
          continue;
        }
        Map<String, Object> later = seen(year);
        Outcome<?> undone = year.bench.studio.undo.run(Bench.act(), year.deeds.get(before));
        assertThat(undone.isDone()).as(undone.toString()).isTrue();
        assertThat(seen(year)).as("history %d", seed).isEqualTo(earlier);
        Outcome<?> again = year.bench.studio.undo.run(Bench.act(), undone.deed().id());
        assertThat(again.isDone()).as(again.toString()).isTrue();
        assertThat(seen(year)).as("history %d", seed).isEqualTo(later);
      }
    }
  }
}
