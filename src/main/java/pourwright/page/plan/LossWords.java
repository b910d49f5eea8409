package pourwright.page.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pourwright.plan.MakePlan;
import pourwright.plan.OwnYield;
import pourwright.work.WorkPlan;

/** Losses in plain words: how many to begin so that so many are good, and by whose yield. */
public final class LossWords {
  private LossWords() {}

  /** As in "12 good: cast 14, your yield is 88 % (demolding 95 %, sanding to proving 93 %)". */
  public static String cast(OwnYield yield, int good) {
    return good
        + " good: cast "
        + yield.toCast(good)
        + (yield.demolded().own() || yield.finished().own()
            ? ", your yield is "
            : ", the house's yield is ")
        + percent(yield.vesselShare())
        + " (demolding "
        + percent(yield.demoldedShare())
        + ", sanding to proving "
        + percent(yield.finishedShare())
        + ")";
  }

  /** As in "12 good: pour 13, your yield is 96 %". */
  public static String pour(OwnYield yield, int good) {
    return good
        + " good: pour "
        + yield.toPour(good)
        + (yield.poured().own() ? ", your yield is " : ", the house's yield is ")
        + percent(yield.pouredShare());
  }

  private static String percent(double share) {
    return Math.round(100 * share) + " %";
  }

  /** What a plan casts and pours for how many good ones, vessel by vessel and candle by candle. */
  static List<String> of(WorkPlan work, OwnYield yield) {
    MakePlan make = work.make();
    Map<String, Integer> cast = new LinkedHashMap<>();
    make.casts()
        .forEach(job -> job.fills().forEach(f -> cast.merge(f.vessel(), f.pieces(), Integer::sum)));
    Map<String, Integer> poured = new LinkedHashMap<>();
    make.pours()
        .forEach(
            job -> job.fills().forEach(f -> poured.merge(f.design(), f.candles(), Integer::sum)));
    List<String> lines = new ArrayList<>();
    cast.forEach(
        (vessel, all) ->
            lines.add(
                work.book().vessel(vessel).name() + ": " + cast(yield, good(all, yield::toCast))));
    poured.forEach(
        (candle, all) ->
            lines.add(
                work.book().candle(candle).name() + ": " + pour(yield, good(all, yield::toPour))));
    return lines;
  }

  /** How many good ones so many are begun for: losses only ever add. */
  private static int good(int begun, java.util.function.IntUnaryOperator toBegin) {
    int good = begun;
    while (good > 0 && toBegin.applyAsInt(good) > begun) {
      good--;
    }
    return good;
  }
}
