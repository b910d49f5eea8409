package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.PlannedAmount;
import pourwright.batch.PlannedStep;
import pourwright.batch.PlannedStep.Care;
import pourwright.card.Amounts;
import pourwright.card.ResolvedCandle;
import pourwright.card.ResolvedPour;
import pourwright.material.UnitKind;
import pourwright.pour.Rest;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;
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

  /** The pitcher was heated again; counted. */
  public static final String REHEAT = "heated again";

  /** House: so often a scented pitcher is heated again. */
  public static final int REHEATS_MOST = 1;

  /** A reason for adding the scent above its flash point: a fact of its own. */
  public static final String REASON = "reason above the flash point";

  private PourWalk() {}

  /**
   * So many of one candle.
   *
   * @param version version of the candle's card
   * @param fill what goes into one
   * @param count candles, 1 or more
   */
  public record Part(ResolvedCandle candle, int version, PourFill fill, int count) {
    /** Checks the range. */
    public Part {
      Check.between("count", count, 1, 500);
    }

    private double netG() {
      return fill.netG().value();
    }

    private String name() {
      return candle.design().name();
    }
  }

  /**
   * What is to be poured from one pitcher.
   *
   * @param parts its candles, at least one, all of one pour card
   * @param topUpFraction share held back for a second pour, 0 for none
   * @param residueG what stays in the pitcher, in g; null for what the pour card says
   */
  public record Wanted(List<Part> parts, double topUpFraction, @Nullable Double residueG) {
    /** Checks ranges, and that the candles can share a pitcher. */
    public Wanted {
      parts = List.copyOf(parts);
      Check.between("top_up_fraction", topUpFraction, 0, 0.5);
      if (residueG != null) {
        Check.between("residue_g", residueG, 0, 10_000);
      }
      if (parts.stream().map(p -> p.candle().design().pour()).distinct().count() != 1) {
        throw new OutOfRange(
            "candles",
            "these candles do not share a wax, a scent and a load",
            "pour only candles of one pour card from one pitcher");
      }
    }

    private int pieces() {
      return parts.stream().mapToInt(Part::count).sum();
    }
  }

  /** The plan; {@code pourVersion} is the version of the pour card. */
  public static BatchPlan plan(Wanted wanted, int pourVersion) {
    return new BatchPlan(
        BatchKind.POUR,
        wanted.parts().get(0).candle().pour().card().code(),
        pourVersion,
        wanted.parts().stream()
            .map(p -> new BatchPlan.Makes(p.candle().design().code(), p.version(), p.count(), null))
            .toList(),
        steps(wanted),
        null);
  }

  private static List<PlannedStep> steps(Wanted wanted) {
    ResolvedPour pour = wanted.parts().get(0).candle().pour();
    double netG = wanted.parts().stream().mapToDouble(p -> p.netG() * p.count()).sum();
    Double residueG = wanted.residueG();
    ResolvedPour.Melt melt =
        pour.melt(netG, residueG == null ? pour.card().losses().residueG() : residueG);
    List<PlannedStep> steps = new ArrayList<>();
    steps.add(
        PlannedStep.hands(
            "dust", "Blow out the dust. The base is sealed, flat and clean.", wanted.pieces()));
    steps.add(tabs(wanted));
    steps.add(
        PlannedStep.hands(
            TARE, "Weigh each empty wicked vessel and write its mass down.", wanted.pieces()));
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
            amounts(pour, melt.materials(), false)));
    if (!pour.fragrances().isEmpty()) {
      steps.add(
          watch(
              SCENT,
              "Heat off. Weigh the fragrance in and stir for two minutes.",
              4,
              amounts(pour, melt.materials(), true)));
    }
    pours(wanted, steps);
    steps.add(
        PlannedStep.hands(
            "trim",
            "Take off the bar and trim the wick to " + number(Rest.TRIM_MM) + " mm (house).",
            wanted.pieces()));
    return steps;
  }

  private static PlannedStep tabs(Wanted wanted) {
    StringBuilder sentence =
        new StringBuilder("Stick each tab at the template's mark, bar on, wick taut and plumb.");
    Amounts wicking = Amounts.NONE;
    for (Part part : wanted.parts()) {
      double cut = part.candle().design().wicks().cutMm();
      if (cut > 0) {
        sentence
            .append(wanted.parts().size() > 1 ? " " + part.name() + ": cut" : " Cut")
            .append(" the wick to ")
            .append(number(cut))
            .append(" mm.");
      }
      wicking = wicking.plus(part.candle().wicking().times(part.count()));
    }
    return PlannedStep.weigh("tab", sentence.toString(), counted(wicking));
  }

  private static void pours(Wanted wanted, List<PlannedStep> steps) {
    double held = wanted.topUpFraction();
    steps.add(
        watch(
            POUR,
            "Pour "
                + each(wanted, 1 - held)
                + ", slowly, beside the wick."
                + (held > 0 ? " Hold the rest back, lid on, kept warm." : ""),
            wanted.pieces(),
            List.of()));
    if (held > 0) {
      steps.add(PlannedStep.waiting("skin", "Wait for the skin, then poke relief holes.", 60));
      steps.add(
          watch(
              SECOND,
              "Second pour: "
                  + each(wanted, held)
                  + ", about 5 K hotter, to just below the first line.",
              wanted.pieces(),
              List.of()));
    }
    steps.add(PlannedStep.waiting("set", "Let it set, away from draughts.", 240));
  }

  /** As "120 g into each vessel", or by candle where a pitcher fills several. */
  private static String each(Wanted wanted, double share) {
    return wanted.parts().size() == 1
        ? number(share * wanted.parts().get(0).netG()) + " g into each vessel"
        : wanted.parts().stream()
            .map(p -> number(share * p.netG()) + " g into each of " + p.count() + " × " + p.name())
            .collect(Collectors.joining(", "));
  }

  private static PlannedStep watch(
      String key, String sentence, double minutes, List<PlannedAmount> amounts) {
    return new PlannedStep(key, sentence, Care.WATCH, minutes, amounts, true);
  }

  private static List<PlannedAmount> amounts(ResolvedPour pour, Amounts all, boolean fragrances) {
    List<PlannedAmount> amounts = new ArrayList<>();
    for (Map.Entry<String, Double> entry : all.byMaterial().entrySet()) {
      boolean scent =
          pour.fragrances().stream().anyMatch(f -> f.material().code().equals(entry.getKey()));
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
