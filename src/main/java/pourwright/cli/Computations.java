package pourwright.cli;

import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The headless computations by name. Each is made when it is asked for, so that a command loads no
 * class that it does not use.
 */
public final class Computations {
  private final Map<String, Supplier<Computation>> byName = new TreeMap<>();

  /** The computations that need nothing but the craft. */
  public static Computations ofTheCraft() {
    Computations all = new Computations();
    CastComputations.addTo(all);
    PourComputations.addTo(all);
    BurnComputations.addTo(all);
    HazardComputations.addTo(all);
    StudioComputations.addTo(all);
    return all;
  }

  /** Adds one; the name must be new. */
  public Computations add(String name, Supplier<Computation> maker) {
    if (byName.putIfAbsent(name, maker) != null) {
      throw new IllegalStateException("two computations are named " + name);
    }
    return this;
  }

  /** All names, in order. */
  public Collection<String> names() {
    return byName.keySet();
  }

  /** The computation of that name, or null. */
  public @Nullable Computation named(String name) {
    Supplier<Computation> maker = byName.get(name);
    return maker == null ? null : maker.get();
  }
}
