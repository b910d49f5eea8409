package pourwright.pour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import pourwright.pour.PourGrouping.Grouping;
import pourwright.pour.PourGrouping.Pitcher;
import pourwright.pour.PourGrouping.Pour;
import pourwright.pour.PourGrouping.ToFill;
import pourwright.quantity.OutOfRange;

class GroupingTest {
  private static final List<Pitcher> PITCHERS =
      List.of(new Pitcher("jug", 800, 6), new Pitcher("big jug", 1500, 14));

  private static List<ToFill> candles(int seed, int count, int scents) {
    Random random = new Random(seed);
    List<ToFill> candles = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double from = random.nextInt(4) == 0 ? 66 : 55;
      candles.add(
          new ToFill("c" + i, "scent " + i % scents, 120 + random.nextInt(500), from, from + 8));
    }
    return candles;
  }

  /** Every way to put the candles into pours, one after the other. */
  private static int fewest(List<ToFill> left, List<List<ToFill>> pours, int best) {
    if (pours.size() >= best) {
      return best;
    }
    if (left.isEmpty()) {
      return pours.size();
    }
    ToFill next = left.get(0);
    List<ToFill> rest = left.subList(1, left.size());
    int found = best;
    for (int i = 0; i < pours.size(); i++) {
      pours.get(i).add(next);
      if (fits(pours.get(i))) {
        found = fewest(rest, pours, found);
      }
      pours.get(i).remove(next);
    }
    pours.add(new ArrayList<>(List.of(next)));
    found = fewest(rest, pours, found);
    pours.remove(pours.size() - 1);
    return found;
  }

  private static boolean fits(List<ToFill> pour) {
    double from = pour.stream().mapToDouble(ToFill::pourFromC).max().orElse(0);
    double to = pour.stream().mapToDouble(ToFill::pourToC).min().orElse(0);
    double grams = pour.stream().mapToDouble(ToFill::grams).sum();
    boolean one = pour.stream().map(ToFill::melt).distinct().count() == 1;
    return one && from <= to && grams <= 1486;
  }

  @Property(tries = 60)
  void aGroupingEqualsBruteForceOnSmallCases(@ForAll @IntRange(min = 1, max = 9999) int seed) {
    List<ToFill> candles = candles(seed, 9, 2);
    Grouping grouping = new SubsetGrouping().group(candles, PITCHERS);
    assertThat(grouping.pours()).hasSize(fewest(candles, new ArrayList<>(), 99));
    assertThat(grouping.isProven()).isTrue();
    check(grouping, candles);
  }

  private static void check(Grouping grouping, List<ToFill> candles) {
    List<ToFill> all = new ArrayList<>();
    for (Pour pour : grouping.pours()) {
      assertThat(fits(pour.candles())).isTrue();
      assertThat(pour.meltG()).isLessThanOrEqualTo(pour.pitcher().holdsG() + 1e-9);
      all.addAll(pour.candles());
    }
    assertThat(all).containsExactlyInAnyOrderElementsOf(candles);
  }

  @Test
  void sixtyCandlesInEightScentsAreGroupedWithinTwoSeconds() {
    List<ToFill> candles = candles(7, 60, 8);
    long start = System.nanoTime();
    Grouping grouping = new SubsetGrouping().group(candles, PITCHERS);
    assertThat(System.nanoTime() - start).isLessThan(2_000_000_000L);
    assertThat(grouping.isProven()).isTrue();
    check(grouping, candles);
  }

  @Test
  void manyCandlesOfOneScentAreGroupedWithABound() {
    List<ToFill> candles = candles(11, 60, 1);
    Grouping grouping = new SubsetGrouping().group(candles, PITCHERS);
    check(grouping, candles);
    assertThat(grouping.pours().size()).isBetween(grouping.atLeast(), grouping.atLeast() + 3);
  }

  @Test
  void aCandleThatNoPitcherHoldsIsSaid() {
    List<ToFill> one = List.of(new ToFill("Trough", "plain", 2000, 55, 60));
    assertThatThrownBy(() -> new SubsetGrouping().group(one, PITCHERS))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("Trough");
  }
}
