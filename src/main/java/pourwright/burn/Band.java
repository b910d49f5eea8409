package pourwright.burn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.function.ToDoubleFunction;
import pourwright.heat.Melting;
import pourwright.quantity.Check;

/**
 * The band that uncertain inputs leave round a simulated burn: the same burn with its inputs drawn
 * evenly from their usual ranges, one from each equal part of each range (a Latin hypercube; McKay,
 * Beckman and Conover, Technometrics 21 (1979) 239), from the tenth to the ninetieth of a hundred.
 * Ranges are those of docs/models/burn.md: radiative fraction 0.10 to 0.30, wick root 2 to 6 W,
 * enhancement across 20 to 50, vessel conductivity ±30 %, latent heat ±20 %, burn rate ±10 %.
 *
 * @param hours the recorded moments
 * @param radiusLowMm lower end of the pool's radius at each
 * @param radiusHighMm upper end
 * @param fullPoolLowH earliest tenth of the time to a full pool, or NaN
 * @param fullPoolHighH the latest tenth, or NaN where it may not be reached
 */
public record Band(
    double[] hours,
    double[] radiusLowMm,
    double[] radiusHighMm,
    double fullPoolLowH,
    double fullPoolHighH) {
  private static final int INPUTS = 6;

  /** Samples need no finer cells than this. */
  private static final double GRID_MM = 3.75;

  /**
   * Draws and runs.
   *
   * @param samples 4 to 200
   * @param seed the same seed gives the same band
   * @param goOn asked before each run; when it says no, the runs so far make the band
   */
  public static Band of(Burn burn, int samples, long seed, BooleanSupplier goOn) {
    Check.between("band_samples", samples, 4, 200);
    double[][] draws = draws(samples, new SplittableRandom(seed));
    List<BurnResult> results = new ArrayList<>();
    for (int s = 0; s < samples && (results.isEmpty() || goOn.getAsBoolean()); s++) {
      results.add(Simulation.run(moved(burn, draws[s])));
    }
    int moments = results.get(0).pool().size();
    double[] hours = new double[moments];
    double[] low = new double[moments];
    double[] high = new double[moments];
    for (int m = 0; m < moments; m++) {
      int moment = m;
      ToDoubleFunction<BurnResult> radius = r -> r.pool().get(moment).equivalentRadiusMm();
      hours[m] = results.get(0).pool().get(m).hours();
      low[m] = share(results, radius, 0.1);
      high[m] = share(results, radius, 0.9);
    }
    ToDoubleFunction<BurnResult> full =
        r -> Double.isNaN(r.fullPoolH()) ? Double.POSITIVE_INFINITY : r.fullPoolH();
    return new Band(
        hours, low, high, orNone(share(results, full, 0.1)), orNone(share(results, full, 0.9)));
  }

  private static double orNone(double value) {
    return Double.isInfinite(value) ? Double.NaN : value;
  }

  private static double share(
      List<BurnResult> results, ToDoubleFunction<BurnResult> of, double share) {
    double[] sorted = results.stream().mapToDouble(of).sorted().toArray();
    return sorted[(int) Math.round(share * (sorted.length - 1))];
  }

  /** One draw from each equal part of each range, the parts shuffled; −1 to 1. */
  private static double[][] draws(int samples, SplittableRandom random) {
    double[][] draws = new double[samples][INPUTS];
    for (int i = 0; i < INPUTS; i++) {
      int[] parts = new int[samples];
      Arrays.setAll(parts, s -> s);
      for (int s = samples - 1; s > 0; s--) {
        int other = random.nextInt(s + 1);
        int swap = parts[s];
        parts[s] = parts[other];
        parts[other] = swap;
      }
      for (int s = 0; s < samples; s++) {
        draws[s][i] = 2 * (parts[s] + random.nextDouble()) / samples - 1;
      }
    }
    return draws;
  }

  private static Burn moved(Burn burn, double[] draw) {
    Flame flame = burn.flame();
    Melting wax = burn.wax();
    Vessel vessel = burn.vessel();
    Vessel.Stuff stuff = vessel.stuff();
    Burn.Fineness f = burn.fineness();
    return new Burn(
        new Vessel(
            vessel.cavity(),
            vessel.fillMm(),
            vessel.wallMm(),
            vessel.baseMm(),
            new Vessel.Stuff(
                stuff.conductivity() * (1 + 0.3 * draw[3]),
                stuff.density(),
                stuff.heatCapacity(),
                stuff.emissivity())),
        new Melting(
            wax.fromC(),
            wax.toC(),
            wax.latent() * (1 + 0.2 * draw[4]),
            wax.heatSolid(),
            wax.heatLiquid(),
            wax.solid(),
            wax.liquid(),
            wax.density()),
        35 + 15 * draw[2],
        burn.upright(),
        burn.wicks().stream()
            .map(w -> new BurningWick(w.xMm(), w.yMm(), w.gramsPerHour() * (1 + 0.1 * draw[5])))
            .toList(),
        new Flame(
            flame.heatOfCombustion(),
            0.2 + 0.1 * draw[0],
            flame.absorbed(),
            flame.pointMm(),
            4 + 2 * draw[1],
            flame.rootDepthMm()),
        burn.room(),
        new Burn.Fineness(
            f.hours(),
            Math.max(GRID_MM, f.gridMm()),
            f.recordEveryS(),
            f.solver(),
            f.precision(),
            f.threads(),
            f.symmetry(),
            f.wholeRows(),
            f.stepMaxS(),
            f.sharp()),
        burn.contact());
  }
}
