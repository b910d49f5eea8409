package pourwright.burn;

import java.util.List;

/**
 * What a simulated burn came to. A prediction: it never replaces a burn test.
 *
 * @param pool the melt pool over time
 * @param fullPoolH hours to the first time that the whole surface was melted, or NaN
 * @param wallMaxC largest mean round the outer wall over height and time, °C
 * @param baseMaxC largest over the lowest row, °C
 * @param remainingWaxG wax left at the end
 * @param returnedShare share of the heat release that reached wax, wick root and inner wall
 * @param balance the joules and grams to check the run by
 * @param warnings sentences about what to doubt
 */
public record BurnResult(
    List<Pool> pool,
    double fullPoolH,
    double wallMaxC,
    double baseMaxC,
    double remainingWaxG,
    double returnedShare,
    Balance balance,
    Effort effort,
    List<String> warnings) {

  /**
   * The melt pool at one time.
   *
   * @param hours since lighting
   * @param equivalentRadiusMm of a circle as large as what is melted of the surface
   * @param lengthMm extent of the melted surface along the longest direction through the wicks
   * @param widthMm extent across that direction
   * @param depthMm melted depth below the wick where it is deepest
   * @param meltedSurface share of the surface that is melted
   * @param liquidG melted wax
   * @param meanC mean temperature of the melted wax, NaN without any
   * @param wallC warmest mean round the outer wall so far
   * @param baseC warmest of the lowest row so far
   */
  public record Pool(
      double hours,
      double equivalentRadiusMm,
      double lengthMm,
      double widthMm,
      double depthMm,
      double meltedSurface,
      double liquidG,
      double meanC,
      double wallC,
      double baseC) {}

  /**
   * Heat and mass of the run; heat counts from the room's temperature.
   *
   * @param heatInJ given to wax, wick root and wall
   * @param lostJ to the room
   * @param carriedJ with the wax that burnt
   * @param storedJ in wax and vessel at the end
   * @param massErrorFraction (first − burnt − cells)/first
   */
  public record Balance(
      double heatInJ, double lostJ, double carriedJ, double storedJ, double massErrorFraction) {

    /** (in − lost − carried − stored)/in; 0 when nothing was given. */
    public double energyErrorFraction() {
      return heatInJ == 0 ? 0 : (heatInJ - lostJ - carriedJ - storedJ) / heatInJ;
    }
  }

  /** What the run cost: cells computed, sweeps over them, and which part of the whole they are. */
  public record Effort(long cells, long sweeps, int symmetry, boolean axisymmetric) {}

  /** True when some of the surface was still hard at the end. */
  public boolean isTunnelling() {
    return !pool.isEmpty() && pool.get(pool.size() - 1).meltedSurface() < 0.99;
  }
}
