package pourwright.cast;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;
import pourwright.quantity.Sourced;

/**
 * What a maker's own casts of a mix say: its fresh density by a weighed cup (ASTM C138's form),
 * what bucket and tools keep, and the water she really used where she mixes to consistency.
 *
 * @param casts how many were looked at
 * @param freshGPerMl fresh density; null while fewer than {@link #CASTS_MIN} were weighed
 * @param lostG what reaches no mold and is not left to pour, in g a mixing; null likewise
 * @param yieldFraction share of what is mixed that comes into the molds; null likewise
 * @param waterToPowder water she really used to a mass of one of powder, mean; null where none was
 *     recorded
 */
public record OwnHands(
    int casts,
    @Nullable Sourced freshGPerMl,
    @Nullable Sourced lostG,
    @Nullable Double yieldFraction,
    @Nullable Double waterToPowder) {

  /** House: casts from which her own figures take the place of the card's. */
  public static final int CASTS_MIN = 3;

  /** Air beyond this is a mistake in a weighing. */
  private static final double AIR_MOST = 0.4;

  /** Nothing known. */
  public static final OwnHands NONE = new OwnHands(0, null, null, null, null);

  /**
   * A finished mixing as it was weighed.
   *
   * @param mixedG everything that went into the bucket, in g, above zero
   * @param filledMl what the molds took, in ml, above zero
   * @param leftG what could still be poured when they were full, in g; null where not weighed
   * @param cupGPerMl fresh density by a cup; null where not weighed
   * @param waterToPowder water to a mass of one of powder as used; null where not known
   */
  public record Mixing(
      double mixedG,
      double filledMl,
      @Nullable Double leftG,
      @Nullable Double cupGPerMl,
      @Nullable Double waterToPowder) {
    /** Checks the ranges. */
    public Mixing {
      Check.positive("mixed_g", mixedG);
      Check.positive("filled_ml", filledMl);
    }
  }

  /** Learns from mixings. */
  public static OwnHands of(List<Mixing> all) {
    double[] cups = known(all.stream().map(Mixing::cupGPerMl).toList());
    double[] water = known(all.stream().map(Mixing::waterToPowder).toList());
    Sourced density = cups.length < CASTS_MIN ? null : mean(cups);
    double[] lost = new double[0];
    double[] cast = new double[0];
    if (density != null) {
      List<Mixing> whole = all.stream().filter(m -> m.leftG() != null).toList();
      lost = whole.stream().mapToDouble(m -> lost(m, density.value())).toArray();
      cast = whole.stream().mapToDouble(m -> inMolds(m, density.value()) / m.mixedG()).toArray();
    }
    return new OwnHands(
        all.size(),
        density,
        lost.length < CASTS_MIN ? null : mean(lost),
        cast.length < CASTS_MIN ? null : (Double) mean(cast).value(),
        water.length == 0 ? null : (Double) mean(water).value());
  }

  private static double[] known(List<@Nullable Double> values) {
    return values.stream().filter(Objects::nonNull).mapToDouble(Double::doubleValue).toArray();
  }

  private static double inMolds(Mixing mixing, double mean) {
    Double own = mixing.cupGPerMl();
    return (own == null ? mean : own) * mixing.filledMl();
  }

  private static double lost(Mixing mixing, double mean) {
    Double left = mixing.leftG();
    return Math.max(0, mixing.mixedG() - (left == null ? 0 : left) - inMolds(mixing, mean));
  }

  /** Mean with the scatter of a single cast, which the next one has too. */
  private static Sourced mean(double[] values) {
    double sum = 0;
    for (double v : values) {
      sum += v;
    }
    double mean = sum / values.length;
    double squares = 0;
    for (double v : values) {
      squares += (v - mean) * (v - mean);
    }
    double scatter = values.length < 2 ? 0 : Math.sqrt(squares / (values.length - 1));
    return Sourced.measured(mean, mean == 0 ? 0 : Math.min(2, scatter / Math.abs(mean)));
  }

  /** The mix with as much air as makes her own density; as it is where none is known. */
  public Mix applied(Mix mix) {
    if (freshGPerMl == null) {
      return mix;
    }
    double airFree = mix.withAir(0).amounts(1000, 0, 0).freshGPerMl();
    double air = FreshDensity.airFraction(freshGPerMl.value(), airFree);
    return mix.withAir(Math.max(0, Math.min(AIR_MOST, air)));
  }

  /** What bucket and tools keep: hers, or the card's. */
  public double lostG(double byCard) {
    return lostG == null ? byCard : lostG.value();
  }
}
