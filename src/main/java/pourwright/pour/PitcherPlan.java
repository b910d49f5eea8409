package pourwright.pour;

import java.util.ArrayList;
import java.util.List;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;

/**
 * What to weigh for a pitcher: the candles, a share more for waste, and what stays behind in
 * pitcher and melter; rounded to what the scale can show. Maths: docs/models/pour.md 2.
 */
public final class PitcherPlan {
  /** One drop of oil, in ml. Typical: about 20 drops to the millilitre, by dropper ± 25 %. */
  public static final Sourced DROP_ML = Sourced.typical(0.05, 0.25);

  private PitcherPlan() {}

  /** A pitcher's own dose in a melt that is split over several scents. */
  public record Share(String scent, Dose dose) {}

  /** Wax and fragrance as the scale can show them. */
  public record Rounded(Dose dose, double loadError, boolean withinTolerance, double leastTotalG) {}

  /**
   * Grams to melt in all.
   *
   * @param piecesG net grams of all candles together
   * @param wasteFraction multiplies: 0.03 means times 1.03
   * @param residueG what stays in pitcher and melter, added after the waste
   */
  public static double meltG(double piecesG, double wasteFraction, double residueG) {
    return Check.positive("pieces_g", piecesG)
            * (1 + Check.fraction("waste_fraction", wasteFraction))
        + Check.notNegative("residue_g", residueG);
  }

  /**
   * One melt of plain wax split over several scents: each pitcher's wax and fragrance. The sum of
   * the wax is what to melt.
   *
   * @param scents names
   * @param totalsG wanted total of each pitcher
   * @param loadsOfTotal load of each on the total
   */
  public static List<Share> split(
      List<String> scents, List<Double> totalsG, List<Double> loadsOfTotal) {
    if (scents.size() != totalsG.size() || scents.size() != loadsOfTotal.size()) {
      throw new OutOfRange("scents", "each scent needs a total and a load", "give one of each");
    }
    List<Share> shares = new ArrayList<>();
    for (int i = 0; i < scents.size(); i++) {
      shares.add(
          new Share(
              scents.get(i), Dose.ofTotal(totalsG.get(i), loadsOfTotal.get(i), Dose.LoadOf.TOTAL)));
    }
    return shares;
  }

  /**
   * Rounds a dose to the scale: wax to the nearest step, then the fragrance to the step that keeps
   * the load best for that wax.
   *
   * @param scaleG the scale's step, in grams
   * @param tolerance how far the load may be off, over the load (0.02 is 2 % of it)
   * @return the rounded dose, how far off, and from what total on this scale always does
   */
  public static Rounded toScale(Dose dose, double scaleG, double tolerance) {
    Check.positive("scale_g", scaleG);
    Check.positive("tolerance", tolerance);
    double wax = Math.max(scaleG, Math.rint(dose.waxG() / scaleG) * scaleG);
    double ideal = wax * dose.loadOfWax();
    double fragrance = Math.rint(ideal / scaleG) * scaleG;
    Dose rounded = new Dose(wax, fragrance);
    double load = dose.loadOfTotal();
    double error = load == 0 ? 0 : Math.abs(rounded.loadOfTotal() / load - 1);
    double least = load == 0 ? 0 : scaleG / 2 / tolerance / load;
    return new Rounded(rounded, error, error <= tolerance, least);
  }

  /** Millilitres of a liquid of so many grams, with the density's range. */
  public static Sourced millilitres(double grams, Sourced densityGPerMl) {
    double ml = grams / Check.positive("density_g_per_ml", densityGPerMl.value());
    return new Sourced(ml, densityGPerMl.relativeUncertainty(), densityGPerMl.origin());
  }

  /** Drops of a liquid of so many grams, with the range of density and dropper. */
  public static Sourced drops(double grams, Sourced densityGPerMl, Sourced dropMl) {
    double drops = millilitres(grams, densityGPerMl).value() / dropMl.value();
    double relative = Math.hypot(densityGPerMl.relativeUncertainty(), dropMl.relativeUncertainty());
    return new Sourced(drops, relative, dropMl.origin());
  }
}
