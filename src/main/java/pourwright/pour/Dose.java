package pourwright.pour;

import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * Wax and fragrance of one pour by mass.
 *
 * @param waxG wax, in grams
 * @param fragranceG fragrance, in grams
 */
public record Dose(double waxG, double fragranceG) {

  /** What a fragrance load is a share of. */
  public enum LoadOf {
    /** Grams of fragrance in 100 g of wax and fragrance together. */
    TOTAL,
    /** Grams of fragrance to 100 g of wax. */
    WAX
  }

  /** Checks that neither mass is negative. */
  public Dose {
    Check.notNegative("wax_g", waxG);
    Check.notNegative("fragrance_g", fragranceG);
  }

  /** Wax and fragrance together, in grams. */
  public double totalG() {
    return waxG + fragranceG;
  }

  /** Load on the total, 0 for an empty pitcher. */
  public double loadOfTotal() {
    return totalG() == 0 ? 0 : fragranceG / totalG();
  }

  /** Load on the wax, 0 where there is no wax. */
  public double loadOfWax() {
    return waxG == 0 ? 0 : fragranceG / waxG;
  }

  /** The load on the total that is the same dose as a load on {@code of}. */
  public static double loadOfTotal(double load, LoadOf of) {
    Check.notNegative("load_fraction", load);
    if (of == LoadOf.WAX) {
      return load / (1 + load);
    }
    if (load >= 1) {
      throw new OutOfRange(
          "load_fraction",
          "a load of " + load + " on the total leaves no wax",
          "8 % is written 0.08");
    }
    return load;
  }

  /** The dose whose wax and fragrance together weigh {@code totalG}. */
  public static Dose ofTotal(double totalG, double load, LoadOf of) {
    double fragranceG = Check.positive("total_g", totalG) * loadOfTotal(load, of);
    return new Dose(totalG - fragranceG, fragranceG);
  }

  /** The dose for a given mass of wax. */
  public static Dose ofWax(double waxG, double load, LoadOf of) {
    double onTotal = loadOfTotal(load, of);
    return new Dose(waxG, Check.positive("wax_g", waxG) * onTotal / (1 - onTotal));
  }

  /** The dose for a given mass of fragrance; the load must be above zero. */
  public static Dose ofFragrance(double fragranceG, double load, LoadOf of) {
    double onTotal = Check.positive("load_fraction", loadOfTotal(load, of));
    return new Dose(
        Check.positive("fragrance_g", fragranceG) * (1 - onTotal) / onTotal, fragranceG);
  }
}
