package pourwright.pour;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.pour.Dose.LoadOf;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * What to add to a pitcher that got too much or too little, so that the load is right again.
 *
 * <p>Own derivation: with the load ℓ on the total, the right pitcher has wax : fragrance = (1 − ℓ)
 * : ℓ. Too little fragrance: add W ℓ/(1 − ℓ) − F. Too much: add F (1 − ℓ)/ℓ − W of wax. Exact.
 *
 * @param addWaxG wax to add, in grams, 0 or more
 * @param addFragranceG fragrance to add, in grams, 0 or more
 * @param after the pitcher when both are in
 * @param warnings what the maker should know, in sentences
 */
public record Redose(double addWaxG, double addFragranceG, Dose after, List<String> warnings) {

  /** Copies the list. */
  public Redose {
    warnings = List.copyOf(warnings);
  }

  /**
   * Corrects a pitcher.
   *
   * @param pitcher what is in it; wax above 0
   * @param load wanted load, at least 0 and below 1 on the total
   * @param of what the load is a share of
   * @param targetTotalG wanted mass of the whole pitcher, in grams; null to add as little as can be
   */
  public static Redose of(Dose pitcher, double load, LoadOf of, @Nullable Double targetTotalG) {
    Check.positive("wax_g", pitcher.waxG());
    double onTotal = Dose.loadOfTotal(load, of);
    if (onTotal == 0 && pitcher.fragranceG() > 0) {
      throw new OutOfRange(
          "load_fraction",
          "no amount of wax takes the fragrance out again",
          "give a load above 0, or keep this pitcher for another pour");
    }
    Redose least = least(pitcher, onTotal);
    if (targetTotalG == null) {
      return least;
    }
    double total = Check.positive("target_total_g", targetTotalG);
    if (least.after.totalG() > total * (1 + 1e-12)) {
      return new Redose(
          least.addWaxG, least.addFragranceG, least.after, List.of(above(pitcher, least, total)));
    }
    Dose wanted = Dose.ofTotal(total, onTotal, LoadOf.TOTAL);
    return new Redose(
        Math.max(0, wanted.waxG() - pitcher.waxG()),
        Math.max(0, wanted.fragranceG() - pitcher.fragranceG()),
        wanted,
        List.of());
  }

  private static Redose least(Dose pitcher, double onTotal) {
    double wantedFragranceG = pitcher.waxG() * onTotal / (1 - onTotal);
    if (pitcher.fragranceG() <= wantedFragranceG) {
      double add = wantedFragranceG - pitcher.fragranceG();
      return new Redose(0, add, new Dose(pitcher.waxG(), wantedFragranceG), new ArrayList<>());
    }
    double wantedWaxG = pitcher.fragranceG() * (1 - onTotal) / onTotal;
    double add = Math.max(0, wantedWaxG - pitcher.waxG());
    return new Redose(
        add, 0, new Dose(pitcher.waxG() + add, pitcher.fragranceG()), new ArrayList<>());
  }

  private static String above(Dose pitcher, Redose least, double total) {
    if (pitcher.totalG() > total) {
      return String.format(
          java.util.Locale.ROOT,
          "The pitcher already holds %.1f g, more than the %.1f g asked for; only the load is"
              + " corrected.",
          pitcher.totalG(),
          total);
    }
    return String.format(
        java.util.Locale.ROOT,
        "The load cannot be right at %.1f g: the pitcher comes to %.1f g when it is.",
        total,
        least.after.totalG());
  }
}
