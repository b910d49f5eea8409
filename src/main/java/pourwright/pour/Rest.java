package pourwright.pour;

import java.time.Duration;
import java.time.Instant;
import pourwright.quantity.OutOfRange;

/** How long a candle rests before it is tested or sold. Typical values; the wax's sheet decides. */
public enum Rest {
  /** Paraffin: 3 to 5 days. */
  PARAFFIN("paraffin", 3, 5),
  /** Plant wax: 10 to 14 days. */
  PLANT("plant wax", 10, 14),
  /** Blends with coconut: 7 to 14 days. */
  COCONUT_BLEND("blend with coconut", 7, 14);

  /** Length a wick is trimmed to, in mm: a quarter inch. House. */
  public static final double TRIM_MM = 6;

  /** What a wick needs beyond the cavity's depth for the bar, in mm. House: 30 to 40. */
  public static final double FOR_THE_BAR_MM = 35;

  private final String words;
  private final int fromDays;
  private final int toDays;

  Rest(String words, int fromDays, int toDays) {
    this.words = words;
    this.fromDays = fromDays;
    this.toDays = toDays;
  }

  /** The wax and its typical rest, in words. */
  public String words() {
    return words + ", " + fromDays + " to " + toDays + " days";
  }

  /** Fewest days. */
  public int fromDays() {
    return fromDays;
  }

  /** Most days. */
  public int toDays() {
    return toDays;
  }

  /** When a candle poured at a moment is rested, by the longer of the two. */
  public Instant restedAt(Instant poured) {
    return poured.plus(Duration.ofDays(toDays));
  }

  /** Length to cut a wick to, in mm, tab at the base: to be trimmed after the wax has set. */
  public static double cutMm(double cavityDepthMm, double forTheBarMm) {
    if (!(cavityDepthMm > 0) || !(forTheBarMm >= 0)) {
      throw new OutOfRange("cut_mm", "a wick of no length", "give depth and bar above 0");
    }
    return cavityDepthMm + forTheBarMm;
  }
}
