package pourwright.page.pouring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import pourwright.batch.PlannedStep;
import pourwright.card.PourCard;
import pourwright.card.ResolvedCandle;
import pourwright.material.Property;
import pourwright.pour.Dose;
import pourwright.pour.Fill;
import pourwright.pour.PitcherPlan;
import pourwright.pour.VesselWarming;
import pourwright.quantity.Sourced;
import pourwright.work.PourWalk;
import pourwright.work.PourWatch;

/** What else is worth knowing at a step: stone and wax together, tab and sticker, second pour. */
final class HintView {
  private static final double STONE_G_PER_ML = 2.0;
  private static final double STONE_J_PER_KG_K = 880;
  private static final double WAX_J_PER_KG_K = 2200;
  private static final double ROOM_C = 20;

  private HintView() {}

  static List<String> of(PourWatch watch, PlannedStep step, double scaleG) {
    return switch (step.key()) {
      case "tab" -> each(watch, HintView::tab);
      case PourWalk.WARM -> each(watch, candle -> List.of(warming(candle)));
      case PourWalk.SCENT -> onTheScale(watch, step, scaleG);
      case PourWalk.POUR -> each(watch, candle -> mixed(watch, candle));
      case PourWalk.SECOND ->
          List.of(
              "From the same melt, after the skin, into the relief holes; stop just below the first"
                  + " line. Warm the held-back wax gently once (house: at most one reheat).");
      case "set" -> List.of("Mend tops with gentle heat only once set, and never on damp stone.");
      default -> List.of();
    };
  }

  /** Says when the scale is too coarse for the load. */
  private static List<String> onTheScale(PourWatch watch, PlannedStep step, double scaleG) {
    double scentG = step.amounts().stream().mapToDouble(a -> a.amount().inUsualUnit()).sum();
    PourCard card = watch.candle().pour().card();
    if (scaleG <= 0 || scentG <= 0) {
      return List.of();
    }
    Dose dose = Dose.ofFragrance(scentG, card.load(), card.loadOf());
    PitcherPlan.Rounded rounded = PitcherPlan.toScale(dose, scaleG, StepView.LOAD_TOLERANCE);
    return rounded.withinTolerance()
        ? List.of()
        : List.of(
            String.format(
                Locale.ROOT,
                "Your finest scale shows steps of %s g: the load is off by %.1f %% of itself, more"
                    + " than 2 %% (house). From %.0f g in all it is not.",
                BlendDesk.plain(scaleG),
                100 * rounded.loadError(),
                rounded.leastTotalG()));
  }

  private interface Told {
    List<String> of(ResolvedCandle candle);
  }

  /** For each candle of the pitcher, with its name where it does not hold for all of them. */
  private static List<String> each(PourWatch watch, Told told) {
    Map<String, List<String>> names = new LinkedHashMap<>();
    for (PourWatch.Part part : watch.parts()) {
      told.of(part.candle())
          .forEach(
              line ->
                  names
                      .computeIfAbsent(line, l -> new ArrayList<>())
                      .add(part.candle().design().name()));
    }
    List<String> all = new ArrayList<>();
    names.forEach(
        (line, of) ->
            all.add(
                of.size() == watch.parts().size() ? line : String.join(", ", of) + ": " + line));
    return all;
  }

  /** How the tab's neck lets the candle end, and whether the sticker bears the pour. */
  private static List<String> tab(ResolvedCandle candle) {
    List<String> hints = new ArrayList<>();
    Double neck = property(candle, candle.design().wicks().tab(), Property.NECK_HEIGHT_MM);
    if (neck != null) {
      hints.add(neck(candle, neck));
    }
    Double softens = property(candle, candle.design().wicks().sticker(), Property.SOFTENS_C);
    if (softens != null) {
      hints.add(sticker(softens, candle.pour().card().temperatures().pourToC()));
    }
    return hints;
  }

  private static String neck(ResolvedCandle candle, double neckMm) {
    double under = Math.min(neckMm, candle.vessel().cavity().heightMm());
    double leftG =
        candle.vessel().cavity().solid().volumeBelowMl(under)
            * candle.pour().densities().setGPerMl();
    return String.format(
        Locale.ROOT,
        neckMm < Fill.LEFT_MM
            ? "The tab's neck is %.0f mm high: left alone the flame would end with about %.0f g of"
                + " wax, less than the %.0f mm to stop at (house). The label must say when to stop."
            : "The tab's neck is %.0f mm high: the flame ends with about %.0f g of wax left, at or"
                + " above the %.0f mm to stop at (house).",
        neckMm,
        leftG,
        Fill.LEFT_MM);
  }

  private static String sticker(double softensC, double pourToC) {
    return String.format(
        Locale.ROOT,
        pourToC < softensC
            ? "The sticker softens at %.0f \u00b0C by its sheet; the pour is at most %.0f \u00b0C."
            : "The sticker softens at %.0f \u00b0C by its sheet and the pour may be %.0f \u00b0C: the tab"
                + " can come loose. Take another sticker or pour cooler.",
        softensC,
        pourToC);
  }

  private static @Nullable Double property(
      ResolvedCandle candle, @Nullable String material, Property property) {
    return material == null
        ? null
        : candle.materials().get(material).property(property).map(Sourced::value).orElse(null);
  }

  private static VesselWarming stone(ResolvedCandle candle) {
    return new VesselWarming(
        candle.netG().value(), WAX_J_PER_KG_K, stoneG(candle), STONE_J_PER_KG_K);
  }

  private static double stoneG(ResolvedCandle candle) {
    return candle.vessel().mixMl().value() * STONE_G_PER_ML;
  }

  private static double pourC(ResolvedCandle candle) {
    PourCard.Temperatures window = candle.pour().card().temperatures();
    return (window.pourFromC() + window.pourToC()) / 2;
  }

  private static String warming(ResolvedCandle candle) {
    VesselWarming warming = stone(candle);
    double waxC = pourC(candle);
    return String.format(
        Locale.ROOT,
        "The stone counts (typical %.0f g): wax poured at %.0f \u00b0C comes to %.0f \u00b0C in a vessel"
            + " at 20 \u00b0C and to %.0f \u00b0C in one at 35 \u00b0C.",
        stoneG(candle),
        waxC,
        warming.afterC(waxC, 20),
        warming.afterC(waxC, 35));
  }

  /** Wax and wall together, by the newest readings. */
  private static List<String> mixed(PourWatch watch, ResolvedCandle candle) {
    List<String> hints = new ArrayList<>();
    VesselWarming warming = stone(candle);
    Double readC = watch.waxC();
    Double stone = watch.stoneC();
    double stoneC = stone == null ? ROOM_C : stone;
    double waxC = readC == null ? pourC(candle) : readC;
    if (waxC < stoneC) {
      return List.of("The stone was read warmer than the wax: check both.");
    }
    hints.add(
        String.format(
            Locale.ROOT,
            "Wax at %.0f \u00b0C and stone at %.0f \u00b0C (%s) come to %.0f \u00b0C.",
            waxC,
            stoneC,
            stone == null ? "assumed, nobody read it" : "read",
            warming.afterC(waxC, stoneC)));
    Double meltFrom = watch.meltFromC();
    String warning = meltFrom == null ? null : warming.warning(waxC, stoneC, meltFrom);
    if (warning != null) {
      hints.add(warning);
    }
    return hints;
  }
}
