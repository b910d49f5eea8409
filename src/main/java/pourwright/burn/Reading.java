package pourwright.burn;

import java.util.Map;
import java.util.Set;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * What was read at one minute of a cycle. Only the minute must be there.
 *
 * @param minute since lighting, 0 or more
 * @param values by name of {@link #NAMES}; events are 1 when seen and 0 when looked for and not
 */
public record Reading(double minute, Map<String, Double> values) {
  /** Names with their unit: what a test can read. */
  public static final Set<String> NAMES =
      Set.of(
          "mass_g",
          "flame_height_mm",
          "pool_length_mm",
          "pool_width_mm",
          "pool_depth_mm",
          "wall_c",
          "base_c",
          "soot",
          "mushroom",
          "secondary_ignition_s",
          "after_smoke_s",
          "crack",
          "seep",
          "smoke");

  /** Checks minute and names. */
  public Reading {
    Check.between("minute", minute, 0, 100_000);
    values = Map.copyOf(values);
    for (Map.Entry<String, Double> value : values.entrySet()) {
      if (!NAMES.contains(value.getKey())) {
        throw new OutOfRange(
            value.getKey(), "'" + value.getKey() + "' is not read in a test", "known: " + NAMES);
      }
      boolean degrees = value.getKey().endsWith("_c");
      Check.between(value.getKey(), value.getValue(), degrees ? -50 : 0, 100_000);
    }
  }
}
