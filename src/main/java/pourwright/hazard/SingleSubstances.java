package pourwright.hazard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The classes that one substance gives by itself at a limit, without adding different substances:
 * sensitisation, mutagenicity, carcinogenicity, reproduction, organ damage (CLP Annex I 3.4 to 3.7,
 * 3.8.3, 3.9.4).
 */
final class SingleSubstances {
  private SingleSubstances() {}

  /** One substance against one limit. */
  private record Meeting(Tables.SingleLimit limit, Finding.Part part) {
    boolean reached() {
      return Limits.reached(part.fraction(), part.limit());
    }

    double ratio() {
      return part.fraction() / part.limit();
    }
  }

  static List<Finding> judge(Regime regime, Composition composition) {
    Map<HazardKind, List<Meeting>> byKind = new LinkedHashMap<>();
    for (Ingredient substance : composition.substances()) {
      for (HazardClass has : substance.classes().stream().sorted().toList()) {
        for (Tables.SingleLimit limit : Tables.shared().singleLimits(regime)) {
          if (limit.ingredient().equals(has)) {
            byKind
                .computeIfAbsent(has.kind(), k -> new ArrayList<>())
                .add(meeting(substance, limit));
          }
        }
      }
    }
    List<Finding> findings = new ArrayList<>();
    byKind.forEach((kind, meetings) -> findings.addAll(findings(kind, meetings)));
    return findings;
  }

  private static Meeting meeting(Ingredient substance, Tables.SingleLimit limit) {
    double own = Limits.specific(substance, limit.result()).orElse(limit.limit());
    return new Meeting(limit, new Finding.Part(substance.name(), substance.share().high(), own));
  }

  /** One finding for each class reached, or one for the nearest when none is. */
  private static List<Finding> findings(HazardKind kind, List<Meeting> meetings) {
    Map<HazardClass, List<Meeting>> reached = new LinkedHashMap<>();
    Meeting nearest = null;
    for (Meeting meeting : meetings) {
      if (meeting.reached()) {
        reached.computeIfAbsent(meeting.limit.result(), c -> new ArrayList<>()).add(meeting);
      } else if (nearest == null || meeting.ratio() > nearest.ratio()) {
        nearest = meeting;
      }
    }
    HazardClass worst = worst(reached.keySet());
    if (worst == null) {
      return nearest == null ? List.of() : List.of(notReached(kind, nearest));
    }
    List<Meeting> giving = reached.getOrDefault(worst, List.of());
    return List.of(given(worst, giving, nearest));
  }

  /** The most severe of several categories of one class: 1A before 1 before 1B before 2. */
  private static @Nullable HazardClass worst(Iterable<HazardClass> classes) {
    List<String> order = List.of("", "1A", "1", "1B", "2");
    HazardClass worst = null;
    for (HazardClass c : classes) {
      if (worst == null || order.indexOf(c.category()) < order.indexOf(worst.category())) {
        worst = c;
      }
    }
    return worst;
  }

  private static Finding given(HazardClass worst, List<Meeting> giving, @Nullable Meeting nearest) {
    Meeting strongest = giving.get(0);
    StringBuilder who = new StringBuilder();
    for (Meeting meeting : giving) {
      strongest = meeting.ratio() > strongest.ratio() ? meeting : strongest;
      who.append(who.isEmpty() ? "" : ", ").append(at(meeting.part));
    }
    String sentence =
        worst.code()
            + ": "
            + who
            + " reaches the limit of "
            + Percent.text(strongest.part.limit())
            + " for one substance";
    return new Finding(
        worst.kind().label(),
        worst,
        giving.stream().map(Meeting::part).toList(),
        strongest.part.fraction(),
        strongest.part.limit(),
        nearest == null ? "" : next(nearest),
        strongest.limit.rule(),
        sentence);
  }

  private static Finding notReached(HazardKind kind, Meeting nearest) {
    return new Finding(
        kind.label(),
        null,
        List.of(nearest.part),
        nearest.part.fraction(),
        nearest.part.limit(),
        next(nearest),
        nearest.limit.rule(),
        "no "
            + nearest.limit.result().code()
            + ": "
            + at(nearest.part)
            + " is below the limit of "
            + Percent.text(nearest.part.limit()));
  }

  private static String next(Meeting nearest) {
    return nearest.limit.result().code()
        + " begins at "
        + Percent.text(nearest.part.limit())
        + " of "
        + nearest.part.name()
        + "; there is "
        + Percent.text(nearest.part.fraction());
  }

  static String at(Finding.Part part) {
    return part.name() + " " + Percent.text(part.fraction());
  }
}
