package pourwright.label;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The signs of labels, drawn by us: hazard diamonds after the criteria of Regulation (EC) 1272/2008
 * Annex V (black sign, white ground, red frame on a point), and the safety signs of candles after
 * the shapes of ISO 3864-1 (from memory): red ring with a bar from upper left to lower right for
 * what must not be, blue disc for what must be, triangle for a warning.
 */
public final class Symbols {
  private static final Map<String, Symbol> ALL = all();

  private Symbols() {}

  private static Map<String, Symbol> all() {
    Map<String, Supplier<Pen>> drawn = new LinkedHashMap<>();
    drawn.put("GHS02", HazardSigns::flame);
    drawn.put("GHS05", HazardSigns::corrosion);
    drawn.put("GHS06", HazardSigns::skull);
    drawn.put("GHS07", HazardSigns::exclamation);
    drawn.put("GHS08", HazardSigns::health);
    drawn.put("GHS09", HazardSigns::environment);
    drawn.put("warning", SafetySigns::warning);
    drawn.put("never-unattended", SafetySigns::withinSight);
    drawn.put("away-from-fire", SafetySigns::awayFromFire);
    drawn.put("away-from-children", SafetySigns::awayFromChildren);
    drawn.put("draught", SafetySigns::noDraught);
    drawn.put("trim", SafetySigns::trim);
    Map<String, Symbol> all = new LinkedHashMap<>();
    drawn.forEach((name, pen) -> all.put(name, pen.get().named(name)));
    return all;
  }

  /** The sign of that name, or null. */
  public static @Nullable Symbol of(String name) {
    return ALL.get(name);
  }

  /** All names. */
  public static Set<String> names() {
    return Collections.unmodifiableSet(ALL.keySet());
  }
}
