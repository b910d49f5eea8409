package pourwright.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import pourwright.hazard.Classification;
import pourwright.hazard.HazardClass;

/**
 * What may be left off a package of at most 125 ml (Regulation (EC) 1272/2008 Annex I 1.5.2.1): H
 * and P statements of some classes, P statements of others. Skin sensitisation is not among them.
 *
 * @param statements H statements that stay
 * @param precautions true when the P statements stay
 * @param note what was left off, or empty
 */
public record SmallPackage(List<String> statements, boolean precautions, String note) {
  private static final double SMALL_ML = 125;
  private static final Set<String> BOTH =
      Set.of("H315", "H319", "H400", "H410", "H411", "H225", "H226");
  private static final Set<String> PRECAUTIONS_ONLY = Set.of("H362", "H412", "H413");

  /** Copies the list. */
  public SmallPackage {
    statements = List.copyOf(statements);
  }

  /** Everything stays; larger packages, or the choice not to use the relief. */
  public static SmallPackage full(Classification found) {
    return new SmallPackage(found.statements(), true, "");
  }

  /** What has to stay on a package of that capacity. */
  public static SmallPackage of(double capacityMl, Classification found) {
    if (capacityMl > SMALL_ML || found.hazards().isEmpty()) {
      return full(found);
    }
    List<String> stay = new ArrayList<>();
    boolean precautions = false;
    for (String statement : found.statements()) {
      boolean both = BOTH.contains(statement);
      if (!both) {
        stay.add(statement);
      }
      precautions |= !both && !PRECAUTIONS_ONLY.contains(statement);
    }
    boolean dropped = stay.size() < found.statements().size() || !precautions;
    return new SmallPackage(
        stay,
        precautions,
        dropped
            ? "up to 125 ml statements may be left off for "
                + String.join(", ", found.hazards().stream().map(HazardClass::code).toList())
                + " (Annex I 1.5.2.1)"
            : "");
  }
}
