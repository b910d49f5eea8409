package pourwright.label;

import org.jspecify.annotations.Nullable;

/**
 * What burn tests of this design showed; null where nothing was tested, and then the label says
 * nothing of it.
 *
 * @param hoursAtATime longest cycle tested, h
 * @param trimMm trimmed to this before each cycle, mm
 * @param firstPoolHours cycle in which the melt pool first reached the rim, h
 * @param stopDepthMm wax left at the end of the last cycle, mm
 * @param burnHoursLow burn time at the low end of what the tests showed, h
 * @param wallC highest wall temperature seen, °C
 */
public record BurnFacts(
    @Nullable Double hoursAtATime,
    @Nullable Double trimMm,
    @Nullable Double firstPoolHours,
    @Nullable Double stopDepthMm,
    @Nullable Double burnHoursLow,
    @Nullable Double wallC) {
  /** Nothing tested. */
  public static final BurnFacts UNTESTED = new BurnFacts(null, null, null, null, null, null);
}
