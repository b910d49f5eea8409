package pourwright.page.shelf;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.burn.CycleKind;
import pourwright.burn.Reading;
import pourwright.burn.TestSample;
import pourwright.burn.TestSample.End;
import pourwright.work.Books;
import pourwright.work.BurnLife;
import pourwright.work.BurnTest;

/** Reads a burn test from the books in the form that the judge takes. */
final class TestReader {
  /** House: a candle rests this long before it is lit again. */
  static final Duration REST = BurnLife.REST;

  /** A reading this many minutes off its bell still answers it. */
  static final int LATE_MIN = 10;

  private TestReader() {}

  /** One cycle with what was seen in it. */
  record Burnt(BurnTest.Cycle cycle, List<BurnTest.Seen> seen, boolean early) {

    /** What the cycle is for. */
    CycleKind kind() {
      for (BurnTest.Seen one : seen) {
        CycleKind kind = CycleKind.ofNote(one.look().note());
        if (kind != null) {
          return kind;
        }
      }
      return CycleKind.USUAL;
    }

    /** Bells after which nothing was read for ten minutes, of those that rang while it burnt. */
    List<Integer> missedBells(Instant now) {
      Instant to = cycle.endedAt() == null ? now : cycle.endedAt();
      long burnt = Duration.between(cycle.litAt(), to).toMinutes();
      List<Integer> missed = new ArrayList<>();
      for (int bell : kind().bellsMin()) {
        boolean over = burnt >= bell + LATE_MIN;
        if (over && seen.stream().noneMatch(s -> Math.abs(s.look().minute() - bell) <= LATE_MIN)) {
          missed.add(bell);
        }
      }
      return missed;
    }

    TestSample.Cycle judged() {
      return new TestSample.Cycle(
          seen.stream().map(s -> reading(s.look())).toList(), cycle.number());
    }
  }

  /** A sample with its cycles. */
  record Sample(BurnTest.Sample sample, List<Burnt> cycles) {

    /** How its life ended, by the last cycle's words. */
    End end() {
      return BurnLife.end(cycles.stream().map(Burnt::cycle).toList());
    }

    Optional<Burnt> burning() {
      return cycles.stream().filter(c -> c.cycle.endedAt() == null).findFirst();
    }

    /** What the judge sees: cycles that were lit before their rest was over count for nothing. */
    TestSample judged() {
      return new TestSample(
          cycles.stream().filter(c -> !c.early).map(Burnt::judged).toList(), end(), sample.label());
    }
  }

  static List<Sample> samples(Books books, long test) {
    List<Sample> samples = new ArrayList<>();
    for (BurnTest.Sample sample : books.burns().samples(test)) {
      List<Burnt> burnt = new ArrayList<>();
      List<BurnTest.Cycle> cycles = books.burns().cycles(sample.id());
      Set<Long> early = BurnLife.litEarly(cycles);
      boolean unrested = BurnLife.wentOnTestUnrested(books, sample);
      for (BurnTest.Cycle cycle : cycles) {
        boolean nothing = unrested || early.contains(cycle.id());
        burnt.add(new Burnt(cycle, books.burns().seen(cycle.id()), nothing));
      }
      samples.add(new Sample(sample, burnt));
    }
    return samples;
  }

  static Reading reading(BurnTest.Look look) {
    Map<String, Double> values = new LinkedHashMap<>();
    put(values, "mass_g", look.massG());
    put(values, "flame_height_mm", look.flameHeightMm());
    put(values, "pool_length_mm", look.poolLengthMm());
    put(values, "pool_width_mm", look.poolWidthMm());
    put(values, "pool_depth_mm", look.poolDepthMm());
    put(values, "wall_c", look.wallC());
    put(values, "base_c", look.baseC());
    put(values, "soot", grade(look.soot()));
    put(values, "mushroom", grade(look.mushroom()));
    put(values, "secondary_ignition_s", look.secondaryIgnitionS());
    put(values, "after_smoke_s", look.afterSmokeS());
    put(values, "crack", flag(look.crack()));
    put(values, "seep", flag(look.seep()));
    put(values, "smoke", flag(look.smoke()));
    return new Reading(look.minute(), values);
  }

  private static void put(Map<String, Double> values, String name, @Nullable Double value) {
    if (value != null) {
      values.put(name, value);
    }
  }

  private static @Nullable Double flag(@Nullable Boolean seen) {
    return seen == null ? null : Double.valueOf(seen ? 1 : 0);
  }

  private static @Nullable Double grade(@Nullable String text) {
    if (text == null || text.isBlank()) {
      return null;
    }
    try {
      return Double.valueOf(text.strip());
    } catch (NumberFormatException e) {
      return null;
    }
  }
}
