package pourwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;

/** What is free is what a count of every minute finds free. */
class OccupancyProperties {
  private static final int LIMIT = 5 * 24 * 60;

  @Property(tries = 200, shrinking = ShrinkingMode.OFF)
  void theFirstFreeMinuteIsThatOfACountOfEveryMinute(@ForAll int seed) {
    Random random = new Random(seed);
    int capacity = 1 + random.nextInt(3);
    int wash = random.nextBoolean() ? 0 : 1 + random.nextInt(90);
    Occupancy occupancy = new Occupancy(capacity, List.of(), wash);
    List<Occupancy.Taken> taken = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      Occupancy.Taken wish = wish(random, capacity);
      int free = occupancy.firstFree(wish, LIMIT);
      assertThat(free).as("seed " + seed).isEqualTo(counted(taken, wish, capacity, wash));
      if (free < LIMIT) {
        int minutes = wish.toMin() - wish.fromMin();
        Occupancy.Taken more =
            new Occupancy.Taken(free, free + minutes, wish.amount(), wish.family());
        occupancy.take(more);
        taken.add(more);
      }
      if (random.nextInt(5) == 0) {
        int size = random.nextInt(taken.size() + 1);
        occupancy.backTo(size);
        taken.subList(size, taken.size()).clear();
        assertThat(occupancy.size()).isEqualTo(size);
      }
    }
  }

  private static Occupancy.Taken wish(Random random, int capacity) {
    int from = random.nextInt(3 * 24 * 60);
    int minutes = 1 + random.nextInt(random.nextBoolean() ? 60 : 2_000);
    String family = random.nextBoolean() ? "rain" : "fig";
    return new Occupancy.Taken(from, from + minutes, 1 + random.nextInt(capacity), family);
  }

  private static int counted(
      List<Occupancy.Taken> taken, Occupancy.Taken wish, int capacity, int wash) {
    int minutes = wish.toMin() - wish.fromMin();
    for (int at = wish.fromMin(); at < LIMIT; at++) {
      if (isFree(taken, wish, capacity, wash, at, at + minutes)) {
        return at;
      }
    }
    return LIMIT;
  }

  private static boolean isFree(
      List<Occupancy.Taken> taken, Occupancy.Taken wish, int capacity, int wash, int from, int to) {
    int[] used = new int[to - from];
    for (Occupancy.Taken t : taken) {
      boolean washed = wash > 0 && !t.family().equals(wish.family());
      int gap = washed ? wash : 0;
      if (washed && t.fromMin() - gap < to && from < t.toMin() + gap) {
        return false;
      }
      for (int m = Math.max(from, t.fromMin()); m < Math.min(to, t.toMin()); m++) {
        used[m - from] += t.amount();
        if (used[m - from] + wish.amount() > capacity) {
          return false;
        }
      }
    }
    return true;
  }
}
