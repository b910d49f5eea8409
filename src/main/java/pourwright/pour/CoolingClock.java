package pourwright.pour;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hipparchus.distribution.continuous.TDistribution;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;

/**
 * When a pitcher of melted wax will reach a temperature, from thermometer readings.
 *
 * <p>Newton's law T = room + A·exp(−t/τ), fitted by least squares; the room is free when it is not
 * known. Intervals are 95 % and by likelihood, so that they stay right where the curve is far from
 * straight: a target's interval holds every time at which one more reading at the target would fit
 * (Student t, reading noise the larger of the residual and 0.3 K); a constant's interval is the
 * usual profile with the residual alone. Holds only above the melting range. Maths and departures:
 * docs/models/pour.md.
 */
public final class CoolingClock {
  /** Noise of one thermometer reading that is never undercut, in kelvin. House. */
  public static final double LEAST_NOISE_K = 0.3;

  /** A reading this much above the lowest before it means that heat came in. House: 3 × noise. */
  public static final double RISE_K = 0.9;

  /** Below the melting range's top by less than this, Newton's law fails. Handbook burning 6. */
  public static final double PLATEAU_K = 4;

  private static final double Z_95 = 1.959963984540054;

  private final List<Reading> used;
  private final double knownRoomC;
  private final List<String> warnings;
  private final NewtonFit fit;
  private final NewtonFit.@Nullable Curve curve;
  private final double residualK;
  private final int freedom;

  /** One look at the thermometer: seconds on any clock, degrees Celsius. */
  public record Reading(double s, double c) {}

  /** When a target is reached; a bound is null when it never comes. */
  public record Crossing(
      double c, @Nullable Double atS, @Nullable Double lowS, @Nullable Double highS) {}

  /** A 95 % interval; an end is null when the readings do not bound it. */
  public record Interval(@Nullable Double low, @Nullable Double high) {}

  private CoolingClock(List<Reading> used, double knownRoomC, List<String> warnings) {
    this.used = used;
    this.knownRoomC = knownRoomC;
    this.warnings = warnings;
    double start = used.get(0).s();
    this.fit =
        new NewtonFit(
            used.stream().mapToDouble(r -> r.s() - start).toArray(),
            used.stream().mapToDouble(Reading::c).toArray(),
            knownRoomC);
    int constants = Double.isNaN(knownRoomC) ? 3 : 2;
    this.freedom = used.size() - constants;
    this.curve = freedom < 0 ? null : cooling(fit.best());
    this.residualK =
        curve == null || freedom < 1 ? LEAST_NOISE_K : Math.sqrt(curve.sse() / freedom);
  }

  /**
   * A clock from readings in the order of time.
   *
   * @param readings at least two with a known room, three without; after a rise the readings before
   *     it are left out and the clock may have to wait for more
   * @param roomC the room, null when not known
   */
  public static CoolingClock of(List<Reading> readings, @Nullable Double roomC) {
    inOrder(readings);
    int needed = roomC == null ? 3 : 2;
    if (readings.size() < needed) {
      throw new OutOfRange(
          "readings",
          Counted.of(readings.size(), "reading is too few", "readings are too few")
              + (roomC == null ? " without room_c" : ""),
          roomC == null ? "give room_c, or three readings" : "give at least two readings");
    }
    List<String> warnings = new ArrayList<>();
    int from = lastRise(readings, warnings);
    List<Reading> used = List.copyOf(readings.subList(from, readings.size()));
    CoolingClock clock = new CoolingClock(used, roomC == null ? Double.NaN : roomC, warnings);
    clock.warnOfNoForecast(from > 0);
    return clock;
  }

  private static void inOrder(List<Reading> readings) {
    for (int i = 0; i < readings.size(); i++) {
      Check.finite("readings", readings.get(i).s());
      Check.finite("readings", readings.get(i).c());
      if (i > 0 && readings.get(i).s() <= readings.get(i - 1).s()) {
        throw new OutOfRange(
            "readings",
            "reading " + (i + 1) + " is not later than the one before it",
            "give the readings in the order of time, seconds counted from one start");
      }
    }
  }

  /** Index of the reading from which the wax only cools; says every rise. */
  private static int lastRise(List<Reading> readings, List<String> warnings) {
    int from = 0;
    double lowest = readings.get(0).c();
    for (int i = 1; i < readings.size(); i++) {
      double c = readings.get(i).c();
      double above = c - lowest;
      if (above > RISE_K) {
        boolean onward = from == i - 1 && i > 1;
        if (!onward || warnings.isEmpty()) {
          warnings.add(rise(readings.get(i), above));
        }
        from = i;
        lowest = c;
      } else if (from == i - 1 && i > 1 && c > readings.get(from).c()) {
        from = i;
        lowest = c;
      } else {
        lowest = Math.min(lowest, c);
      }
    }
    return from;
  }

  private static String rise(Reading at, double above) {
    return String.format(
        Locale.ROOT,
        "The reading at %.0f s is %.1f K warmer than one before it: is the heat on? The clock counts"
            + " only from there.",
        at.s(),
        above);
  }

  private NewtonFit.@Nullable Curve cooling(NewtonFit.Curve best) {
    boolean falls = best.riseK() > 0 && best.tauS() < fit.tauHigh() * 0.999;
    boolean straight = Double.isNaN(knownRoomC) && best.riseK() > 0;
    return falls || straight ? best : null;
  }

  private void warnOfNoForecast(boolean afterRise) {
    if (curve == null) {
      warnings.add(
          afterRise && freedom < 0
              ? "Too few readings since the wax last warmed: take another."
              : "The readings do not fall: no time can be given. Is the heat off?");
    } else if (isStraight()) {
      warnings.add(
          "The readings fall along a straight line and do not tell the room: give room_c, or wait"
              + " for another reading.");
    }
  }

  private boolean isStraight() {
    return curve != null && curve.tauS() >= fit.tauHigh() * 0.999;
  }

  /** The room, known or fitted, in °C; null when the readings do not tell it. */
  public @Nullable Double roomC() {
    if (!Double.isNaN(knownRoomC)) {
      return knownRoomC;
    }
    return curve == null || isStraight() ? null : Double.valueOf(curve.roomC());
  }

  /** Time constant τ in seconds; null when the readings do not tell it. */
  public @Nullable Double timeConstantS() {
    return curve == null || isStraight() ? null : Double.valueOf(curve.tauS());
  }

  /** How many readings the clock stands on. */
  public int readingsUsed() {
    return used.size();
  }

  /** Reading noise that the forecast reckons with, in kelvin. */
  public double noiseK() {
    return Math.max(LEAST_NOISE_K, residualK);
  }

  /** What the maker should know. */
  public List<String> warnings() {
    return List.copyOf(warnings);
  }

  private double quantile() {
    return freedom < 1 ? Z_95 : new TDistribution(freedom).inverseCumulativeProbability(0.975);
  }

  /** The temperature on the fitted curve, or null without one. */
  public @Nullable Double temperatureAt(double s) {
    return curve == null ? null : Double.valueOf(curve.at(s - used.get(0).s()));
  }

  /** When the wax reaches a target, with the 95 % interval for a reading there. */
  public Crossing crossing(double targetC) {
    Check.finite("targets_c", targetC);
    Crossing never = new Crossing(targetC, null, null, null);
    NewtonFit.Curve c = curve;
    if (c == null || targetC <= c.roomC()) {
      return never;
    }
    double start = Math.max(c.at(0), used.get(0).c());
    if (targetC > start) {
      warnings.add(text("The wax was already below %s °C at the first reading.", targetC));
      return never;
    }
    double at = Math.max(0, c.tauS() * Math.log(c.riseK() / (targetC - c.roomC())));
    double origin = used.get(0).s();
    Double high = bound(targetC, at, +1);
    return new Crossing(
        targetC,
        origin + at,
        origin + orZero(bound(targetC, at, -1)),
        high == null ? null : origin + high);
  }

  private static double orZero(@Nullable Double value) {
    return value == null ? 0 : value;
  }

  /** Adds the warnings that belong to the melting range. */
  public void warnOfPlateau(double meltToC, List<Double> targets) {
    double stop = meltToC + PLATEAU_K;
    for (double target : targets) {
      if (target < stop) {
        warnings.add(
            text("Below about %s °C the wax begins to set and cools more slowly:", stop)
                + text(" the time for %s °C is too early.", target));
      }
    }
    if (used.stream().anyMatch(r -> r.c() < stop)) {
      warnings.add(
          text(
              "A reading below %s °C is inside the setting plateau and misleads the clock.", stop));
    }
  }

  private static String text(String format, double c) {
    return format.replace("%s", String.format(Locale.ROOT, "%.1f", c));
  }

  /** The last time on one side at which one more reading at the target would still fit. */
  private @Nullable Double bound(double targetC, double at, int way) {
    double least = curve == null ? 0 : curve.sse();
    double allowed = Math.pow(noiseK() * quantile(), 2);
    double step = Math.max(1, fit.tauLow());
    double inside = at;
    double outside = at + way * step;
    while (fits(outside, targetC, least, allowed)) {
      inside = outside;
      step *= 2;
      outside = at + way * step;
      if (way < 0 && outside < 0 && fits(0, targetC, least, allowed)) {
        return 0.0;
      }
      if (step > 1e7) {
        return null;
      }
    }
    for (int i = 0; i < 60 && Math.abs(outside - inside) > 1e-4; i++) {
      double middle = (inside + outside) / 2;
      if (fits(middle, targetC, least, allowed)) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return Math.max(0, inside);
  }

  private boolean fits(double at, double targetC, double least, double allowed) {
    return fit.with(at, targetC).best().sse() - least <= allowed;
  }

  /** 95 % interval of the time constant, in seconds. */
  public Interval timeConstantInterval() {
    NewtonFit.Curve c = curve;
    if (c == null) {
      return new Interval(null, null);
    }
    double limit = limit(c);
    Double low =
        edge(Math.log(c.tauS()), Math.log(fit.tauLow()), x -> fit.at(Math.exp(x)).sse(), limit);
    Double high =
        edge(Math.log(c.tauS()), Math.log(fit.tauHigh()), x -> fit.at(Math.exp(x)).sse(), limit);
    return new Interval(
        low == null ? null : Double.valueOf(Math.exp(low)),
        high == null ? null : Double.valueOf(Math.exp(high)));
  }

  /** 95 % interval of a fitted room, in °C; both ends the room itself where it is known. */
  public Interval roomInterval() {
    NewtonFit.Curve c = curve;
    if (!Double.isNaN(knownRoomC)) {
      return new Interval(knownRoomC, knownRoomC);
    }
    if (c == null || isStraight()) {
      return new Interval(null, null);
    }
    double limit = limit(c);
    double coolest = used.stream().mapToDouble(Reading::c).min().orElse(0);
    return new Interval(
        edge(c.roomC(), -273.15, x -> fit.withRoom(x).best().sse(), limit),
        edge(c.roomC(), coolest, x -> fit.withRoom(x).best().sse(), limit));
  }

  private double limit(NewtonFit.Curve c) {
    double noise = Math.max(residualK, 1e-9);
    return c.sse() + Math.pow(noise * quantile(), 2);
  }

  private static @Nullable Double edge(
      double from, double to, java.util.function.DoubleUnaryOperator sse, double limit) {
    if (sse.applyAsDouble(to) <= limit) {
      return null;
    }
    double inside = from;
    double outside = to;
    for (int i = 0; i < 60; i++) {
      double middle = (inside + outside) / 2;
      if (sse.applyAsDouble(middle) <= limit) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return (inside + outside) / 2;
  }
}
