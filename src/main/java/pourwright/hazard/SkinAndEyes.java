package pourwright.hazard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Skin corrosion and irritation, eye damage and irritation: the sums of CLP Annex I 3.2.3.3 and
 * 3.3.3.3, the limits where corrosion does not add up (Tables 3.2.4 and 3.3.4), the pH rule, and
 * the rule that what corrodes skin damages eyes.
 */
final class SkinAndEyes {
  private static final double CORROSIVE_ALONE = 0.01;
  private static final double IRRITANT_ALONE = 0.03;
  private static final double ACID = 2;
  private static final double ALKALI = 11.5;
  private static final Finding.Rule NOT_ADDITIVE =
      new Finding.Rule(
          "Annex I Tables 3.2.4 and 3.3.4", "Regulation (EC) 1272/2008", "from memory");
  private static final Finding.Rule PH =
      new Finding.Rule("Annex I 3.2.3.1.2", "Regulation (EC) 1272/2008", "read");
  private static final Finding.Rule SKIN_MEANS_EYES =
      new Finding.Rule("Annex I 3.3.2", "Regulation (EC) 1272/2008", "from memory");

  /** Subcategories by severity; plain 1 may be any of them and stands where 1A could be meant. */
  private static final List<String> ORDER = List.of("1A", "1", "1B", "1C", "2");

  private SkinAndEyes() {}

  static List<Finding> judge(Mixture mixture, Composition composition, List<String> warnings) {
    Regime regime = mixture.regime();
    Finding skin = Sums.judge(regime, Sums.LADDERS.get(0), composition, warnings);
    Finding eyes = Sums.judge(regime, Sums.LADDERS.get(1), composition, warnings);
    skin = skin == null ? null : withSubcategory(skin, composition);
    skin = worse(skin, alone(composition, HazardKind.SKIN_CORR, HazardKind.SKIN_IRRIT));
    eyes = worse(eyes, alone(composition, HazardKind.EYE_DAM, HazardKind.EYE_IRRIT));
    skin = worse(skin, byPh(mixture));
    if (skin != null && isKind(skin, HazardKind.SKIN_CORR)) {
      eyes = eyes == null || !isKind(eyes, HazardKind.EYE_DAM) ? eyesToo(skin) : eyes;
    }
    List<Finding> findings = new ArrayList<>();
    for (Finding finding : new Finding[] {skin, eyes}) {
      if (finding != null) {
        findings.add(finding);
      }
    }
    return findings;
  }

  private static boolean isKind(Finding finding, HazardKind kind) {
    HazardClass result = finding.result();
    return result != null && result.kind() == kind;
  }

  private static @Nullable Finding worse(@Nullable Finding a, @Nullable Finding b) {
    if (a == null || b == null) {
      return a == null ? b : a;
    }
    return rank(b) < rank(a) ? b : a;
  }

  private static int rank(Finding finding) {
    HazardClass result = finding.result();
    return result == null
        ? Integer.MAX_VALUE
        : result.kind().ordinal() * 10 + ORDER.indexOf(result.category());
  }

  /** The strongest substance whose corrosion does not add up with others. */
  private static @Nullable Finding alone(
      Composition composition, HazardKind strong, HazardKind mild) {
    Finding found = null;
    for (Ingredient substance : composition.substances()) {
      if (substance.acute().additive()) {
        continue;
      }
      boolean corrodes =
          substance.classes().stream()
              .anyMatch(c -> c.kind() == strong || c.kind() == HazardKind.SKIN_CORR);
      boolean irritates = substance.classes().stream().anyMatch(c -> c.kind() == mild);
      double share = substance.share().high();
      if (corrodes && Limits.reached(share, CORROSIVE_ALONE)) {
        HazardClass result = HazardClass.of(strong, subcategoryOf(substance, strong));
        found = worse(found, aloneFinding(result, substance, CORROSIVE_ALONE));
      } else if (irritates && Limits.reached(share, IRRITANT_ALONE)) {
        found = worse(found, aloneFinding(HazardClass.of(mild, "2"), substance, IRRITANT_ALONE));
      }
    }
    return found;
  }

  private static String subcategoryOf(Ingredient substance, HazardKind strong) {
    return substance.classes().stream()
        .filter(c -> c.kind() == strong)
        .map(HazardClass::category)
        .min(Comparator.comparingInt(ORDER::indexOf))
        .orElse("1");
  }

  private static Finding aloneFinding(HazardClass result, Ingredient substance, double limit) {
    Finding.Part part = new Finding.Part(substance.name(), substance.share().high(), limit);
    return new Finding(
        "not additive",
        result,
        List.of(part),
        part.fraction(),
        limit,
        "",
        NOT_ADDITIVE,
        result.code()
            + ": "
            + SingleSubstances.at(part)
            + " does not add up with others and reaches "
            + Percent.text(limit));
  }

  private static @Nullable Finding byPh(Mixture mixture) {
    Double ph = mixture.tested().ph();
    if (ph == null || (ph > ACID && ph < ALKALI)) {
      return null;
    }
    return new Finding(
        "pH",
        HazardClass.of(HazardKind.SKIN_CORR, "1"),
        List.of(),
        ph,
        ph <= ACID ? ACID : ALKALI,
        "",
        PH,
        "Skin Corr. 1: the pH of the mixture is "
            + Percent.plain(ph)
            + "; at or below 2 and from 11.5 it counts as corrosive unless tests show otherwise");
  }

  private static Finding eyesToo(Finding skin) {
    return new Finding(
        "eye-damage",
        HazardClass.of(HazardKind.EYE_DAM, "1"),
        skin.parts(),
        skin.sum(),
        skin.limit(),
        "",
        SKIN_MEANS_EYES,
        "Eye Dam. 1: what corrodes skin damages eyes");
  }

  /**
   * The subcategory that is certain whichever of 1A, 1B or 1C the substances without one are; plain
   * 1 where it is not.
   */
  private static Finding withSubcategory(Finding skin, Composition composition) {
    if (!isKind(skin, HazardKind.SKIN_CORR)) {
      return skin;
    }
    String worst = subcategory(composition, "1A");
    String best = subcategory(composition, "1C");
    String category = worst.equals(best) ? worst : "1";
    HazardClass result = HazardClass.of(HazardKind.SKIN_CORR, category);
    return new Finding(
        skin.endpoint(),
        result,
        skin.parts(),
        skin.sum(),
        skin.limit(),
        skin.distance(),
        skin.rule(),
        skin.sentence().replaceFirst("Skin Corr\\. 1", result.code()));
  }

  private static String subcategory(Composition composition, String openMeans) {
    double counted = 0;
    for (String category : List.of("1A", "1B", "1C")) {
      for (Ingredient substance : composition.substances()) {
        for (HazardClass c : substance.classes()) {
          String own = c.category().equals("1") ? openMeans : c.category();
          if (c.kind() == HazardKind.SKIN_CORR && own.equals(category)) {
            counted += ratio(substance);
          }
        }
      }
      if (Limits.reached(counted, 1)) {
        return category;
      }
    }
    return "1C";
  }

  private static double ratio(Ingredient substance) {
    HazardClass corrosive = HazardClass.of(HazardKind.SKIN_CORR, "1");
    double limit = Limits.specific(substance, corrosive).orElse(0.05);
    double share = substance.share().high();
    return Limits.reached(share, Math.min(0.01, limit)) ? share / limit : 0;
  }
}
