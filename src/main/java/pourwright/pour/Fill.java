package pourwright.pour;

import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Solid;

/**
 * How much wax goes into a cavity and how high it stands: hot, and once it has set. Wax shrinks as
 * it sets, so the hot line is above the set line, and it must fit under the rim. Maths:
 * docs/models/pour.md 3.
 *
 * @param netG wax and fragrance in one vessel, in grams: the net weight for the label
 * @param firstPourG what is poured first
 * @param topUpG what is held back for the second pour
 * @param setLineMm height of the set wax above the cavity's base
 * @param hotLineMm height of all of it while hot
 * @param firstHotLineMm height of the first pour while hot
 */
public record Fill(
    double netG,
    double firstPourG,
    double topUpG,
    double setLineMm,
    double hotLineMm,
    double firstHotLineMm) {

  /**
   * Densities of the scented wax.
   *
   * @param hotGPerMl at pouring heat, in g/ml
   * @param setGPerMl once set, in g/ml; at least the hot one
   */
  public record Densities(double hotGPerMl, double setGPerMl) {
    /** Checks the ranges. */
    public Densities {
      Check.between("hot_density_g_per_ml", hotGPerMl, 0.5, 1.3);
      Check.between("set_density_g_per_ml", setGPerMl, 0.6, 1.3);
      if (setGPerMl < hotGPerMl) {
        throw new OutOfRange(
            "set_density_g_per_ml",
            "wax that gets lighter as it sets",
            "the set density is the larger one: check both");
      }
    }
  }

  /**
   * The fill of one cavity.
   *
   * @param headspaceMm from the set wax to the rim (house: 12)
   * @param wickMl volume of wicks and tabs under the wax
   * @param topUpShare share of the wax held back for a second pour, from 0 to below 1
   * @throws OutOfRange when the hot wax would stand above the rim
   */
  public static Fill of(
      Solid cavity, double headspaceMm, Densities wax, double wickMl, double topUpShare) {
    Check.between("headspace_mm", headspaceMm, 0, cavity.heightMm());
    Check.notNegative("wick_ml", wickMl);
    Check.between("top_up_fraction", topUpShare, 0, 0.9);
    double setLine = cavity.heightMm() - headspaceMm;
    double setMl = cavity.volumeBelowMl(setLine) - wickMl;
    if (setMl <= 0) {
      throw new OutOfRange(
          "headspace_mm", "no room is left for wax", "lower the headspace or check the cavity");
    }
    double netG = setMl * wax.setGPerMl;
    double firstG = netG * (1 - topUpShare);
    double hotMl = netG / wax.hotGPerMl + wickMl;
    if (hotMl > cavity.volumeMl()) {
      throw new OutOfRange(
          "headspace_mm",
          "the hot wax would stand above the rim",
          "leave more headspace, or hold some back for a second pour and fill lower");
    }
    return new Fill(
        netG,
        firstG,
        netG - firstG,
        setLine,
        cavity.heightOfMl(hotMl),
        cavity.heightOfMl(firstG / wax.hotGPerMl + wickMl));
  }

  /** Wax left when a candle is put out for good, in mm. House; common practice is 10 to 13. */
  public static final double LEFT_MM = 10;

  /** What a second pour is hotter by than the first, in kelvin. Common practice, no source. */
  public static final double SECOND_HOTTER_K = 5;

  /**
   * Volume of wick and tab under the wax, in ml.
   *
   * @param wicks how many
   * @param wickDiameterMm thickness of a wick
   * @param underWaxMm how much of it stands in wax
   * @param tabMl volume of one tab
   */
  public static double wickMl(int wicks, double wickDiameterMm, double underWaxMm, double tabMl) {
    double area = Math.PI * wickDiameterMm * wickDiameterMm / 4;
    return wicks * (area * underWaxMm / 1000 + tabMl);
  }

  /**
   * Net weight as pieces really held it: the mean of weighed fills with its standard error, instead
   * of the drawing.
   *
   * @param netG weighed fills of real pieces, in grams, at least one
   * @return mean and standard error (infinite for one piece)
   */
  public static double[] measured(java.util.List<Double> netG) {
    if (netG.isEmpty()) {
      throw new OutOfRange("net_g", "no fill was weighed", "weigh a piece before and after");
    }
    double mean = netG.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    double square = netG.stream().mapToDouble(g -> (g - mean) * (g - mean)).sum();
    int n = netG.size();
    double error = n == 1 ? Double.POSITIVE_INFINITY : Math.sqrt(square / (n - 1) / n);
    return new double[] {mean, error};
  }
}
