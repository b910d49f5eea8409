package pourwright.burn;

import java.util.Optional;

/** What a reading says while the candle burns: go on, watch, or stop at once. */
public enum LiveLimit {
  /** Nothing to say. */
  CALM,
  /** Nearer to a limit than is usual; keep watching. */
  WATCH,
  /** Put it out now. */
  STOP;

  /** House: a flame from 50 mm is worth watching. */
  public static final double WATCH_FLAME_MM = 50;

  /** At this height the flame is put out; the limit of EN 15493 (from memory) and of the house. */
  public static final double STOP_FLAME_MM = 75;

  /** What came of a reading, with the reason. */
  public record Call(LiveLimit limit, String sentence) {}

  /** Judges one reading. */
  public static Call of(Reading reading) {
    if (seen(reading, "secondary_ignition_s")) {
      return stop("something other than the wick burns");
    }
    if (seen(reading, "crack")) {
      return stop("the vessel has cracked");
    }
    if (seen(reading, "seep")) {
      return stop("wax seeps through the vessel");
    }
    double flame = value(reading, "flame_height_mm").orElse(0.0);
    if (flame >= STOP_FLAME_MM) {
      return stop("the flame stands at " + Math.round(flame) + " mm, the limit is 75 mm");
    }
    if (flame >= WATCH_FLAME_MM) {
      return new Call(WATCH, "a flame of " + Math.round(flame) + " mm is high (house: from 50 mm)");
    }
    return new Call(CALM, "");
  }

  private static Call stop(String why) {
    return new Call(STOP, why);
  }

  private static boolean seen(Reading reading, String name) {
    return value(reading, name).orElse(0.0) > 0;
  }

  private static Optional<Double> value(Reading reading, String name) {
    return Optional.ofNullable(reading.values().get(name));
  }
}
