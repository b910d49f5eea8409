package pourwright.hazard;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Classification of a mixture from its lines by the published criteria. Ranges count at their
 * cautious end, so a range's result is never milder than that of any composition within it. It is
 * checked by the maker against the supplier's sheet and her local authority.
 */
public final class Classifier {
  private static final double SAYS_UNKNOWN = 1e-6;
  private static final double SPEAKS_OF_UNKNOWN = 0.01;
  private static final int NAMED_USUALLY = 4;

  private final Mixture mixture;
  private final Composition composition;
  private final List<Finding> findings = new ArrayList<>();
  private final List<String> warnings = new ArrayList<>();
  private final Map<String, Double> unknownByRoute = new LinkedHashMap<>();

  private Classifier(Mixture mixture) {
    this.mixture = mixture;
    this.composition = Composition.of(mixture.ingredients());
    this.warnings.addAll(composition.warnings());
  }

  /** Classifies; never throws for a mixture that could be built. */
  public static Classification classify(Mixture mixture) {
    return new Classifier(mixture).classification();
  }

  private Classification classification() {
    warnAboutGaps();
    judgeAcute();
    SkinAndEyes.judge(mixture, composition, warnings).forEach(findings::add);
    findings.addAll(SingleSubstances.judge(mixture.regime(), composition));
    judgeSums();
    Finding flammable = Liquids.flammable(mixture, composition, warnings);
    if (flammable != null) {
      findings.add(flammable);
    }
    Set<HazardClass> hazards = hazards();
    List<Finding> sensitisers = Sensitisers.toBeNamed(mixture.regime(), composition);
    findings.addAll(sensitisers);
    boolean sensitising =
        hazards.stream()
            .anyMatch(h -> h.kind() == HazardKind.SKIN_SENS || h.kind() == HazardKind.RESP_SENS);
    return new Classification(
        List.copyOf(hazards),
        Elements.statements(hazards),
        supplemental(hazards, !sensitising && !sensitisers.isEmpty()),
        named(hazards, sensitisers),
        Elements.pictograms(hazards),
        Elements.signalWord(hazards),
        Elements.precautions(hazards, mixture.audience()),
        stops(),
        findings,
        List.copyOf(new LinkedHashSet<>(warnings)),
        composition.unknownAtLeast());
  }

  private void warnAboutGaps() {
    double open = composition.unknownAtLeast();
    if (open > SAYS_UNKNOWN) {
      warnings.add(
          "the lines add up to "
              + Percent.text(1 - open)
              + "; the other "
              + Percent.text(open)
              + " is unknown, so this is provisional");
    }
    if (mixture.regime() == Regime.HAZCOM) {
      return;
    }
    for (Ingredient substance : composition.substances()) {
      boolean acute = has(substance, HazardKind.AQUATIC_ACUTE) && substance.acuteM() == null;
      boolean chronic = has(substance, HazardKind.AQUATIC_CHRONIC) && substance.chronicM() == null;
      if (acute || chronic) {
        warnings.add(
            substance.name() + ": no M-factor is given and 1 was used; look for one on the sheet");
      }
    }
  }

  private static boolean has(Ingredient substance, HazardKind kind) {
    return substance.classes().contains(HazardClass.of(kind, "1"));
  }

  private void judgeAcute() {
    for (Exposure exposure : Exposure.values()) {
      AcuteToxicity.Outcome outcome = AcuteToxicity.judge(exposure, composition);
      if (outcome == null) {
        continue;
      }
      findings.add(outcome.finding());
      HazardClass result = outcome.finding().result();
      if (result != null && Limits.reached(outcome.unknown(), SPEAKS_OF_UNKNOWN)) {
        unknownByRoute.merge(result.detail(), outcome.unknown(), Math::max);
      }
    }
  }

  private void judgeSums() {
    for (List<String> ladder : Sums.LADDERS.subList(2, Sums.LADDERS.size())) {
      Finding finding = Sums.judge(mixture.regime(), ladder, composition, warnings);
      if (finding != null) {
        findings.add(finding);
      }
    }
    Finding aspiration = Liquids.aspiration(mixture, composition, warnings);
    if (aspiration != null) {
      findings.add(aspiration);
    }
  }

  /** The classes given; of several for one effect the most severe. */
  private Set<HazardClass> hazards() {
    Map<String, HazardClass> worst = new LinkedHashMap<>();
    for (Finding finding : findings) {
      HazardClass result = finding.result();
      if (result != null) {
        worst.merge(
            result.kind() + result.detail(),
            result,
            (a, b) -> a.category().compareTo(b.category()) <= 0 ? a : b);
      }
    }
    return new TreeSet<>(worst.values());
  }

  private List<String> supplemental(Collection<HazardClass> hazards, boolean sensitisersNamed) {
    List<String> all = new ArrayList<>();
    if (sensitisersNamed) {
      all.add("EUH208");
    }
    all.addAll(Elements.supplemental(hazards));
    unknownByRoute.forEach(
        (route, share) ->
            all.add(
                Percent.text(share)
                    + " of the mixture consists of ingredients of unknown acute "
                    + route
                    + " toxicity"));
    boolean sheetOnRequest =
        hazards.isEmpty()
            && mixture.regime() == Regime.CLP
            && mixture.audience() == Audience.TRADE
            && sensitisersNamed;
    if (sheetOnRequest) {
      all.add("EUH210");
    }
    return all;
  }

  /**
   * Substances to be named: sensitisers all; others that give a class to be named for, up to four
   * in all (CLP Article 18(3)(b), Annex II 2.8).
   */
  private List<String> named(Collection<HazardClass> hazards, List<Finding> sensitisers) {
    Map<String, Double> must = new LinkedHashMap<>();
    Map<String, Double> may = new LinkedHashMap<>();
    for (Finding finding : findings) {
      HazardClass result = finding.result();
      ClassFacts facts =
          result == null || !hazards.contains(result) ? null : Tables.shared().facts(result);
      if (result == null || facts == null || !facts.named()) {
        continue;
      }
      boolean sensitising =
          result.kind() == HazardKind.SKIN_SENS || result.kind() == HazardKind.RESP_SENS;
      finding
          .parts()
          .forEach(p -> (sensitising ? must : may).merge(p.name(), p.fraction(), Math::max));
    }
    sensitisers.forEach(f -> f.parts().forEach(p -> must.merge(p.name(), p.fraction(), Math::max)));
    List<String> names = byAmount(must);
    for (String name : byAmount(may)) {
      if (!names.contains(name) && names.size() < NAMED_USUALLY) {
        names.add(name);
      }
    }
    return names;
  }

  private static List<String> byAmount(Map<String, Double> amounts) {
    List<String> names = new ArrayList<>(amounts.keySet());
    names.sort(
        (a, b) -> {
          int byAmount = Double.compare(amounts.getOrDefault(b, 0.0), amounts.getOrDefault(a, 0.0));
          return byAmount != 0 ? byAmount : a.compareTo(b);
        });
    return names;
  }

  private List<String> stops() {
    List<String> stops = new ArrayList<>();
    if (mixture.audience() != Audience.PUBLIC) {
      return stops;
    }
    for (Finding finding : findings) {
      HazardClass result = finding.result();
      String entry = result == null ? null : entry(result);
      if (result == null || entry == null) {
        continue;
      }
      for (Finding.Part part : finding.parts()) {
        stops.add(
            "not to be supplied to the public: "
                + SingleSubstances.at(part)
                + " ("
                + result.code()
                + ") reaches "
                + Percent.text(part.limit())
                + "; "
                + (mixture.regime() == Regime.HAZCOM ? "house rule after " : "")
                + "Regulation (EC) 1907/2006 Annex XVII entry "
                + entry
                + " (from memory)");
      }
    }
    return stops;
  }

  private static @Nullable String entry(HazardClass result) {
    if (result.level() != 1) {
      return null;
    }
    return switch (result.kind()) {
      case CARC -> "28";
      case MUTA -> "29";
      case REPR -> "30";
      default -> null;
    };
  }
}
