package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.PlannedAmount;
import pourwright.batch.PlannedStep;
import pourwright.batch.PlannedStep.Care;
import pourwright.card.Amounts;
import pourwright.card.PourCard;
import pourwright.card.ResolvedCandle;
import pourwright.card.ResolvedPour;
import pourwright.material.UnitKind;
import pourwright.pour.Rest;
import pourwright.quantity.Check;
import pourwright.stock.Amount;

/** The walk of one pour from the dusty vessel to the trimmed wick, as planned steps. */
public final class PourWalk {
  /** Step in which the wax melts. */
  public static final String MELT = "melt";

  /** Step in which the scent goes in. */
  public static final String SCENT = "scent";

  /** Step of the first pour. */
  public static final String POUR = "pour";

  /** Step of the second pour. */
  public static final String SECOND = "second";

  /** Step in which the empty wicked vessels are weighed. */
  public static final String TARE = "tare";

  /** Step in which the vessels are warmed. */
  public static final String WARM = "warm";

  /** A reason for adding the scent above its flash point: a fact of its own. */
  public static final String REASON = "reason above the flash point";

  private PourWalk() {}

  /**
   * What is to be poured.
   *
   * @param candle code of the candle's card
   * @param version its version
   * @param count candles, 1 or more
   * @param topUpFraction share held back for a second pour, 0 for none
   */
  public record Wanted(String candle, int version, int count, double topUpFraction) {
    /** Checks the ranges. */
    public Wanted {
      Check.between("count", count, 1, 500);
      Check.between("top_up_fraction", topUpFraction, 0, 0.5);
    }
  }

  /**
   * The plan for a resolved candle; {@code pourVersion} is the pour card's.
   *
   * @param fill what goes into one candle
   */
  public static BatchPlan plan(
      ResolvedCandle candle, PourFill fill, Wanted wanted, int pourVersion) {
    PourCard card = candle.pour().card();
    return new BatchPlan(
        BatchKind.POUR,
        card.code(),
        pourVersion,
        List.of(new BatchPlan.Makes(wanted.candle(), wanted.version(), wanted.count(), null)),
        steps(candle, fill.netG().value(), wanted),
        null);
  }

  private static List<PlannedStep> steps(ResolvedCandle candle, double netG, Wanted wanted) {
    ResolvedPour.Melt melt = candle.pour().melt(netG * wanted.count());
    List<PlannedStep> steps = new ArrayList<>();
    steps.add(
        PlannedStep.hands(
            "dust", "Blow out the dust. The base is sealed, flat and clean.", wanted.count()));
    steps.add(tabs(candle, wanted.count()));
    steps.add(
        PlannedStep.hands(
            TARE, "Weigh each empty wicked vessel and write its mass down.", wanted.count()));
    steps.add(
        watch(
            WARM,
            "Warm the vessels to 30 to 40 °C (house), under the limits of sealer and binder.",
            10,
            List.of()));
    steps.add(
        watch(
            MELT,
            "Weigh the wax and melt it. Stay with it, thermometer in the wax and not on the wall.",
            30,
            amounts(candle, melt.materials(), false)));
    if (!candle.pour().fragrances().isEmpty()) {
      steps.add(
          watch(
              SCENT,
              "Heat off. Weigh the fragrance in and stir for two minutes.",
              4,
              amounts(candle, melt.materials(), true)));
    }
    pours(netG, wanted, steps);
    steps.add(
        PlannedStep.hands(
            "trim",
            "Take off the bar and trim the wick to " + number(Rest.TRIM_MM) + " mm (house).",
            wanted.count()));
    return steps;
  }

  private static PlannedStep tabs(ResolvedCandle candle, int count) {
    double cut = candle.design().wicks().cutMm();
    String length = cut > 0 ? " Cut the wick to " + number(cut) + " mm." : "";
    return PlannedStep.weigh(
        "tab",
        "Stick each tab at the template's mark, bar on, wick taut and plumb." + length,
        counted(candle.wicking().times(count)));
  }

  private static void pours(double net, Wanted wanted, List<PlannedStep> steps) {
    double first = net * (1 - wanted.topUpFraction());
    steps.add(
        watch(
            POUR,
            "Pour "
                + number(first)
                + " g into each vessel, slowly, beside the wick."
                + (wanted.topUpFraction() > 0 ? " Hold the rest back, lid on, kept warm." : ""),
            wanted.count(),
            List.of()));
    if (wanted.topUpFraction() > 0) {
      steps.add(PlannedStep.waiting("skin", "Wait for the skin, then poke relief holes.", 60));
      steps.add(
          watch(
              SECOND,
              "Second pour: "
                  + number(net - first)
                  + " g into each, about 5 K hotter, to just below the first line.",
              wanted.count(),
              List.of()));
    }
    steps.add(PlannedStep.waiting("set", "Let it set, away from draughts.", 240));
  }

  private static PlannedStep watch(
      String key, String sentence, double minutes, List<PlannedAmount> amounts) {
    return new PlannedStep(key, sentence, Care.WATCH, minutes, amounts, true);
  }

  private static List<PlannedAmount> amounts(
      ResolvedCandle candle, Amounts all, boolean fragrances) {
    List<PlannedAmount> amounts = new ArrayList<>();
    for (Map.Entry<String, Double> entry : all.byMaterial().entrySet()) {
      boolean scent =
          candle.pour().fragrances().stream()
              .anyMatch(f -> f.material().code().equals(entry.getKey()));
      if (scent == fragrances) {
        amounts.add(new PlannedAmount(entry.getKey(), Amount.ofGrams(entry.getValue())));
      }
    }
    return amounts;
  }

  private static List<PlannedAmount> counted(Amounts all) {
    List<PlannedAmount> amounts = new ArrayList<>();
    all.byMaterial()
        .forEach(
            (code, count) ->
                amounts.add(
                    new PlannedAmount(
                        code, new Amount(UnitKind.COUNT, (long) Math.ceil(count - 1e-9)))));
    return amounts;
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, value < 10 ? "%.1f" : "%.0f", value).replace(".0", "");
  }
}
