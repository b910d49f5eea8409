package pourwright.hazard;

import java.util.Set;
import java.util.TreeSet;

/** Every code that a classification can put on a label; each needs a text. */
public final class Statements {
  private Statements() {}

  /** Hazard statements, supplemental statements and precautions, in order. */
  public static Set<String> codes() {
    Set<String> codes = new TreeSet<>(Set.of("EUH208", "EUH210", "P102", "Danger", "Warning"));
    for (ClassFacts facts : Tables.shared().facts()) {
      codes.add(facts.statement());
      codes.addAll(facts.precautions());
    }
    return codes;
  }
}
