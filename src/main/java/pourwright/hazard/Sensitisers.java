package pourwright.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Sensitisers below their class limit that the label still has to name (CLP Annex II 2.8, Annex I
 * Table 3.4.6 with its note 1: a specific limit below 0.1 % means one tenth of it).
 */
final class Sensitisers {
  private static final double TENTH_BELOW = 0.001;

  private Sensitisers() {}

  static List<Finding> toBeNamed(Regime regime, Composition composition) {
    List<Finding> findings = new ArrayList<>();
    if (regime != Regime.CLP) {
      return findings;
    }
    for (Ingredient substance : composition.substances()) {
      for (HazardClass has : substance.classes().stream().sorted().toList()) {
        Tables.Elicitation table = Tables.shared().elicitation(has);
        if (table == null) {
          continue;
        }
        OptionalDouble own = Limits.specific(substance, has);
        double limit =
            own.isPresent() && own.getAsDouble() < TENTH_BELOW
                ? own.getAsDouble() / 10
                : table.limit();
        if (Limits.reached(substance.share().high(), limit)) {
          Finding.Part part = new Finding.Part(substance.name(), substance.share().high(), limit);
          findings.add(finding(has, part, table.rule()));
        }
      }
    }
    return findings;
  }

  private static Finding finding(HazardClass has, Finding.Part part, Finding.Rule rule) {
    return new Finding(
        "naming of sensitisers",
        null,
        List.of(part),
        part.fraction(),
        part.limit(),
        "",
        rule,
        SingleSubstances.at(part)
            + " ("
            + has.code()
            + ") reaches the naming limit of "
            + Percent.text(part.limit()));
  }
}
