package pourwright.hazard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Acute toxicity of a mixture for one way of exposure by the additivity formula: 100/ATEmix = Σ
 * C/ATE, and where more than 10 % is unknown, (100 − unknown)/ATEmix = Σ C/ATE (CLP Annex I
 * 3.1.3.6.1 and 3.1.3.6.2.3). Substances of categories 1 to 3 count from 0.1 %, others from 1 %.
 */
final class AcuteToxicity {
  private static final Finding.Rule RULE =
      new Finding.Rule(
          "Annex I 3.1.3.6.1, 3.1.3.6.2.3, Tables 3.1.1 and 3.1.2",
          "Regulation (EC) 1272/2008",
          "formulas and bounds read; converted point estimates from memory");
  private static final double SPEAKS_OF_UNKNOWN = 0.01;
  private static final double CORRECTS_FOR_UNKNOWN = 0.10;

  private AcuteToxicity() {}

  private record Known(Finding.Part part, double low, double estimate) {}

  /** What was found for one way, and how much of the mixture is unknown on it. */
  record Outcome(Finding finding, double unknown) {}

  static @Nullable Outcome judge(Exposure exposure, Composition composition) {
    List<Known> known = new ArrayList<>();
    double unknownLines = 0;
    for (Ingredient substance : composition.substances()) {
      Double estimate = estimate(substance, exposure);
      double share = substance.share().high();
      if (estimate != null && !exposure.isWithoutEffect(estimate)) {
        if (Limits.reached(share, cutoff(exposure, estimate))) {
          Finding.Part part = new Finding.Part(substance.name(), share, estimate);
          known.add(new Known(part, substance.share().low(), estimate));
        }
      } else if (estimate == null && isUnknown(substance, exposure)) {
        unknownLines += Limits.reached(share, SPEAKS_OF_UNKNOWN) ? substance.share().low() : 0;
      }
    }
    if (known.isEmpty()) {
      return null;
    }
    double unknown = unknownLines + composition.unknownAtMost();
    double mixture = estimateOfMixture(known, unknown);
    return new Outcome(finding(exposure, known, mixture, unknown), Math.min(1, unknown));
  }

  /** The worst estimate that any composition within the ranges can have. */
  private static double estimateOfMixture(List<Known> known, double unknown) {
    List<Known> byStrength =
        known.stream().sorted(Comparator.comparingDouble(Known::estimate)).toList();
    double sum = byStrength.stream().mapToDouble(k -> k.part.fraction() / k.estimate).sum();
    double worst = 1 / sum;
    if (unknown > CORRECTS_FOR_UNKNOWN * (1 + Limits.HAIR)) {
      double mass = Math.max(0, 1 - unknown);
      double counts = byStrength.stream().mapToDouble(k -> k.low / k.estimate).sum();
      worst = Math.min(worst, counts > 0 ? mass / counts : Double.POSITIVE_INFINITY);
      for (Known each : byStrength) {
        mass += each.part.fraction() - each.low;
        counts += (each.part.fraction() - each.low) / each.estimate;
        worst = Math.min(worst, mass / counts);
      }
    }
    return worst;
  }

  private static Finding finding(
      Exposure exposure, List<Known> known, double mixture, double unknown) {
    Tables.AcuteBand band = null;
    Tables.AcuteBand stricter = null;
    for (Tables.AcuteBand each : Tables.shared().acuteBands(exposure)) {
      if (band == null && mixture <= each.bound() * (1 + Limits.HAIR)) {
        band = each;
      } else if (band == null) {
        stricter = each;
      }
    }
    HazardClass result =
        band == null
            ? null
            : new HazardClass(HazardKind.ACUTE_TOX, band.category(), exposure.route());
    double bound = band == null ? bound(stricter) : band.bound();
    String value = Percent.plain(mixture) + " " + exposure.unit();
    String sentence =
        (result == null ? "no acute toxicity (" + exposure.route() + ")" : result.fullCode())
            + ": the estimate of the mixture is "
            + value
            + (result == null ? ", above " : ", at most ")
            + Percent.plain(bound)
            + (unknown >= SPEAKS_OF_UNKNOWN ? "; " + Percent.text(unknown) + " unknown" : "");
    String distance =
        stricter == null
            ? ""
            : "Acute Tox. "
                + stricter.category()
                + " begins at "
                + Percent.plain(stricter.bound())
                + " "
                + exposure.unit()
                + "; there is "
                + value;
    List<Finding.Part> parts = known.stream().map(Known::part).toList();
    return new Finding(
        "acute toxicity, " + exposure.code().replace('_', ' '),
        result,
        parts,
        mixture,
        bound,
        distance,
        RULE,
        sentence);
  }

  private static double bound(Tables.@Nullable AcuteBand band) {
    return band == null ? Double.NaN : band.bound();
  }

  private static double cutoff(Exposure exposure, double estimate) {
    for (Tables.AcuteBand band : Tables.shared().acuteBands(exposure)) {
      if (estimate <= band.bound()) {
        return band.category().equals("4") ? 0.01 : 0.001;
      }
    }
    return 0.01;
  }

  /** The substance's estimate: its own, else the point estimate of its category, else null. */
  private static @Nullable Double estimate(Ingredient substance, Exposure exposure) {
    AcuteEstimates own = substance.acute().estimates();
    Double value = own.of(exposure);
    if (value != null || own.knows(exposure.route())) {
      return value;
    }
    Double worst = null;
    for (HazardClass c : substance.classes()) {
      boolean here =
          c.kind() == HazardKind.ACUTE_TOX
              && (c.detail().equals(exposure.route())
                  || (c.detail().isEmpty() && !substance.acute().estimatesGiven()));
      Double point = here ? pointEstimate(exposure, c.category()) : null;
      worst = point != null && (worst == null || point < worst) ? point : worst;
    }
    return worst;
  }

  private static @Nullable Double pointEstimate(Exposure exposure, String category) {
    for (Tables.AcuteBand band : Tables.shared().acuteBands(exposure)) {
      if (band.category().equals(category)) {
        return band.pointEstimate();
      }
    }
    return null;
  }

  private static boolean isUnknown(Ingredient substance, Exposure exposure) {
    return substance.acute().unknownRoutes().contains(exposure.route())
        && !substance.acute().estimates().knows(exposure.route());
  }
}
