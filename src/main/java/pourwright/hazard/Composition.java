package pourwright.hazard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A mixture's lines with the lines of one substance added up before any limit is looked at. Lines
 * are one substance when their CAS numbers agree, else when their names do. Where two lines of one
 * substance say different things of it, the stricter counts.
 *
 * @param substances one line each, in the order of their names
 * @param warnings what had to be read cautiously
 */
record Composition(List<Ingredient> substances, List<String> warnings) {
  private static final Pattern SPACES = Pattern.compile("\\s+");

  static Composition of(List<Ingredient> lines) {
    Map<String, String> casOfName = casOfName(lines);
    Map<String, Ingredient> merged = new LinkedHashMap<>();
    List<String> warnings = new ArrayList<>();
    for (Ingredient line : lines) {
      String key = key(line, casOfName);
      Ingredient before = merged.get(key);
      merged.put(key, before == null ? line : added(before, line));
    }
    List<Ingredient> substances =
        merged.values().stream()
            .map(Composition::withSilentClasses)
            .sorted(Comparator.comparing((Ingredient i) -> plain(i.name())))
            .toList();
    for (Ingredient substance : substances) {
      substance.classes().stream()
          .filter(HazardClass::lacksDetail)
          .filter(c -> c.kind() == HazardKind.STOT_SE || !substance.acute().estimatesGiven())
          .sorted()
          .forEach(c -> warnings.add(unsaid(substance, c)));
    }
    return new Composition(substances, List.copyOf(warnings));
  }

  private static String unsaid(Ingredient substance, HazardClass c) {
    String what = c.kind() == HazardKind.ACUTE_TOX ? "route" : "effect (H335 or H336)";
    return substance.name()
        + ": the "
        + what
        + " of "
        + c.code()
        + " is not said, so every one is assumed; write it as on the sheet";
  }

  /** CAS numbers by name, where a name has exactly one. */
  private static Map<String, String> casOfName(List<Ingredient> lines) {
    Map<String, String> found = new HashMap<>();
    Set<String> several = new HashSet<>();
    for (Ingredient line : lines) {
      CasNumber cas = line.cas();
      if (cas != null) {
        String before = found.put(plain(line.name()), cas.text());
        if (before != null && !before.equals(cas.text())) {
          several.add(plain(line.name()));
        }
      }
    }
    found.keySet().removeAll(several);
    return found;
  }

  private static String key(Ingredient line, Map<String, String> casOfName) {
    CasNumber cas = line.cas();
    if (cas != null) {
      return cas.text();
    }
    String name = plain(line.name());
    return casOfName.getOrDefault(name, name);
  }

  private static String plain(String name) {
    return SPACES.matcher(name.strip()).replaceAll(" ").toLowerCase(Locale.ROOT);
  }

  private static Ingredient added(Ingredient a, Ingredient b) {
    Set<HazardClass> classes = new HashSet<>(a.classes());
    classes.addAll(b.classes());
    Map<HazardClass, Double> limits = new HashMap<>(a.specificLimits());
    b.specificLimits().forEach((c, limit) -> limits.merge(c, limit, Math::min));
    Set<String> unknown = new HashSet<>(a.acute().unknownRoutes());
    unknown.retainAll(b.acute().unknownRoutes());
    return new Ingredient(
        a.name().compareTo(b.name()) <= 0 ? a.name() : b.name(),
        a.cas() == null ? b.cas() : a.cas(),
        a.share().plus(b.share()),
        classes,
        limits,
        larger(a.acuteM(), b.acuteM()),
        larger(a.chronicM(), b.chronicM()),
        new Ingredient.AcuteFacts(
            a.acute().estimates().stricter(b.acute().estimates()),
            unknown,
            a.acute().additive() && b.acute().additive()));
  }

  private static @Nullable Integer larger(@Nullable Integer a, @Nullable Integer b) {
    if (a == null || b == null) {
      return a == null ? b : a;
    }
    return Integer.valueOf(Math.max(a, b));
  }

  /**
   * A specific limit for a class that is not listed is taken as that class, but for skin and eye,
   * where sheets give the limits of the milder effect beside those of the stronger.
   */
  private static Ingredient withSilentClasses(Ingredient line) {
    Set<HazardClass> classes = new HashSet<>(line.classes());
    Set<HazardKind> listed = new HashSet<>();
    line.classes().forEach(c -> listed.add(c.kind()));
    for (HazardClass limited : line.specificLimits().keySet()) {
      boolean milderSkin =
          limited.kind() == HazardKind.SKIN_IRRIT && listed.contains(HazardKind.SKIN_CORR);
      boolean milderEyes =
          limited.kind() == HazardKind.EYE_IRRIT
              && (listed.contains(HazardKind.EYE_DAM) || listed.contains(HazardKind.SKIN_CORR));
      boolean skinOrEye = milderSkin || milderEyes;
      if (!listed.contains(limited.kind()) && !skinOrEye) {
        classes.add(limited);
      }
    }
    return new Ingredient(
        line.name(),
        line.cas(),
        line.share(),
        classes,
        line.specificLimits(),
        line.acuteM(),
        line.chronicM(),
        line.acute());
  }

  /** What the lines leave open at most: one less the lower ends. */
  double unknownAtMost() {
    return Math.max(0, 1 - substances.stream().mapToDouble(i -> i.share().low()).sum());
  }

  /** What the lines leave open at least: one less the upper ends. */
  double unknownAtLeast() {
    return Math.max(0, 1 - substances.stream().mapToDouble(i -> i.share().high()).sum());
  }
}
