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
import pourwright.pour.MeltDay.Charge;
import pourwright.pour.MeltDay.Job;
import pourwright.pour.PourGrouping.Pitcher;
import pourwright.pour.PourGrouping.Pour;
import pourwright.pour.PourGrouping.ToFill;
import pourwright.quantity.OutOfRange;

class MeltDayTest {
  private static final Pitcher JUG = new Pitcher("jug", 1500, 10);

  private static Job job(String wax, String family, double grams) {
    ToFill candle = new ToFill(family, wax + family, grams, 54, 60);
    return new Job(new Pour(JUG, List.of(candle), 54, 60), wax, family, grams);
  }

  private static List<Job> jobs(int seed, int count, int waxes, int families) {
    Random random = new Random(seed);
    List<Job> jobs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      String wax = "wax " + random.nextInt(waxes);
      jobs.add(job(wax, "family " + random.nextInt(families), 200 + random.nextInt(1200)));
    }
    return jobs;
  }

  /** Every way to put the pours into charges, one after the other. */
  private static int fewest(List<Job> left, List<List<Job>> charges, int best) {
    if (left.isEmpty() || charges.size() >= best) {
      return Math.min(best, charges.size());
    }
    Job next = left.get(0);
    List<Job> rest = left.subList(1, left.size());
    int found = best;
    for (int i = 0; i < charges.size(); i++) {
      List<Job> charge = charges.get(i);
      double grams = charge.stream().mapToDouble(Job::waxG).sum() + next.waxG();
      if (charge.get(0).wax().equals(next.wax()) && grams <= 3000) {
        charge.add(next);
        found = fewest(rest, charges, found);
        charge.remove(charge.size() - 1);
      }
    }
    charges.add(new ArrayList<>(List.of(next)));
    found = fewest(rest, charges, found);
    charges.remove(charges.size() - 1);
    return found;
  }

  @Property(tries = 60)
  void noPackingHasFewerCharges(@ForAll @IntRange(min = 1, max = 9999) int seed) {
    List<Job> jobs = jobs(seed, 8, 2, 3);
    MeltDay day = MeltDay.of(jobs, 3000);
    assertThat(day.charges()).hasSize(fewest(jobs, new ArrayList<>(), 99));
    assertThat(day.isProven()).isTrue();
    assertThat(day.charges()).allMatch(c -> c.waxG() <= 3000 + 1e-6);
    assertThat(day.charges().stream().map(Charge::jobs).flatMap(List::stream))
        .containsExactlyInAnyOrderElementsOf(jobs);
    assertThat(day.washes()).isGreaterThanOrEqualTo(day.washesAtLeast());
  }

  /** By hand: one melt holds all; rain, rain, fig is two washes, the last one included. */
  @Test
  void poursOfOneFamilyFollowEachOther() {
    List<Job> jobs = List.of(job("a", "rain", 400), job("a", "fig", 400), job("a", "rain", 400));
    MeltDay day = MeltDay.of(jobs, 3000);
    assertThat(day.charges()).hasSize(1);
    assertThat(day.washes()).isEqualTo(2);
    assertThat(day.washesAtLeast()).isEqualTo(2);
  }

  @Test
  void sixtyPoursArePackedWithABound() {
    MeltDay day = MeltDay.of(jobs(5, 60, 1, 8), 3000);
    assertThat(day.charges().size()).isBetween(day.chargesAtLeast(), day.chargesAtLeast() + 4);
  }

  @Test
  void aPourThatTheMelterDoesNotHoldIsRefused() {
    assertThatThrownBy(() -> MeltDay.of(List.of(job("a", "rain", 900)), 500))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("more than the melter holds");
  }
}
