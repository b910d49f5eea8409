package pourwright.main;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import pourwright.cast.Defect;
import pourwright.work.OwnCasts;
import pourwright.work.Reading;
import pourwright.work.Subject;

/**
 * What was seen on the invented castings: bug holes mostly in the long Troughs, a chip now and
 * then, and a weighed cup of the mix every few casts. Told by the number of the cast, so that the
 * rest of the history stays as it is.
 */
final class DemoDefects {
  private static final double BUG_HOLES_LONG = 0.55;
  private static final double BUG_HOLES = 0.07;
  private static final double CHIP = 0.04;
  private static final double WEIGHED = 0.05;
  private static final double FRESH_G_PER_ML = 1.96;

  private DemoDefects() {}

  static void record(DemoHistory history, long batch, String vessel) {
    SplittableRandom chance = new SplittableRandom(batch);
    Subject cast = Subject.of(Subject.Kind.BATCH, batch);
    List<Reading> seen = new ArrayList<>();
    if (chance.nextDouble() < (vessel.equals("trough") ? BUG_HOLES_LONG : BUG_HOLES)) {
      seen.add(Reading.fresh(cast, Defect.BUG_HOLES.reading(), 1, history.now()));
    }
    if (chance.nextDouble() < CHIP) {
      seen.add(Reading.fresh(cast, Defect.CHIP.reading(), 1, history.now()));
    }
    if (chance.nextDouble() < WEIGHED) {
      double fresh = FRESH_G_PER_ML + 0.04 * chance.nextDouble();
      seen.add(Reading.fresh(cast, OwnCasts.CUP, fresh, history.now()));
    }
    if (!seen.isEmpty()) {
      history.studio().recordReading.run(history.act("looked at"), seen).made();
    }
  }
}
