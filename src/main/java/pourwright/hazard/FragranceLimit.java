package pourwright.hazard;

import pourwright.quantity.Check;

/**
 * How much of an oil a finished candle may hold by the fragrance trade's own standards (category
 * 12), and by its flash point.
 */
public final class FragranceLimit {
  private FragranceLimit() {}

  /**
   * Highest load when a substance is limited in the finished product: limit over its share in the
   * oil, at most 1.
   *
   * @param limitFraction of the finished product, 0 to 1
   * @param shareOfOil of the oil, above 0 to 1
   */
  public static double highestLoad(double limitFraction, double shareOfOil) {
    Check.fraction("limit_fraction", limitFraction);
    Check.positive("share_fraction", Check.fraction("share_fraction", shareOfOil));
    return Math.min(1, limitFraction / shareOfOil);
  }
}
