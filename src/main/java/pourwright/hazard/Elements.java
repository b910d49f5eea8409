package pourwright.hazard;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Label elements of a set of classes: statements, pictograms, signal word, precautions. */
final class Elements {
  /** Not more than six precautions unless the hazard needs them (CLP Article 28(3)). */
  static final int PRECAUTIONS_MAX = 6;

  /** A precaution that says what another one says, and the one that says it. */
  private static final Map<String, Set<String>> COVERED_BY = coveredBy();

  private Elements() {}

  private static Map<String, Set<String>> coveredBy() {
    Map<String, Set<String>> covered = new LinkedHashMap<>();
    covered.put("P261", Set.of("P260"));
    covered.put("P301+P312", Set.of("P301+P310", "P301+P330+P331"));
    covered.put("P312", Set.of("P310", "P311", "P301+P310", "P301+P312", "P308+P311"));
    covered.put("P311", Set.of("P310", "P308+P311", "P342+P311"));
    covered.put("P330", Set.of("P301+P330+P331", "P331"));
    covered.put("P331", Set.of("P301+P330+P331"));
    covered.put("P302+P352", Set.of("P303+P361+P353"));
    covered.put("P332+P313", Set.of("P333+P313"));
    covered.put("P308+P313", Set.of("P308+P311"));
    covered.put("P403", Set.of("P403+P235"));
    return covered;
  }

  static List<String> statements(Collection<HazardClass> hazards) {
    Set<String> codes = new TreeSet<>();
    for (HazardClass hazard : hazards) {
      ClassFacts facts = Tables.shared().facts(hazard);
      if (facts != null && facts.statement().startsWith("H")) {
        codes.add(facts.statement());
      }
    }
    if (codes.contains("H410")) {
      codes.remove("H400");
    }
    if (codes.contains("H314")) {
      codes.remove("H318");
    }
    return List.copyOf(codes);
  }

  /** Supplemental codes that belong to classes of their own. */
  static List<String> supplemental(Collection<HazardClass> hazards) {
    Set<String> codes = new TreeSet<>();
    for (HazardClass hazard : hazards) {
      ClassFacts facts = Tables.shared().facts(hazard);
      if (facts != null && facts.statement().startsWith("EUH")) {
        codes.add(facts.statement());
      }
    }
    return List.copyOf(codes);
  }

  static @Nullable String signalWord(Collection<HazardClass> hazards) {
    String word = null;
    for (HazardClass hazard : hazards) {
      ClassFacts facts = Tables.shared().facts(hazard);
      if (facts == null || facts.signal().isEmpty()) {
        continue;
      }
      if (facts.signal().equals("Danger")) {
        return "Danger";
      }
      word = facts.signal();
    }
    return word;
  }

  /** Pictograms after precedence (CLP Article 26(1), the same in the other regimes). */
  static List<String> pictograms(Collection<HazardClass> hazards) {
    Set<String> codes = new TreeSet<>();
    Set<HazardClass> exclamation = new LinkedHashSet<>();
    boolean breathing = false;
    for (HazardClass hazard : hazards) {
      ClassFacts facts = Tables.shared().facts(hazard);
      if (facts == null || facts.pictogram().isEmpty()) {
        continue;
      }
      codes.add(facts.pictogram());
      breathing |= hazard.kind() == HazardKind.RESP_SENS;
      if (facts.pictogram().equals("GHS07")) {
        exclamation.add(hazard);
      }
    }
    Set<HazardKind> given = new LinkedHashSet<>();
    if (codes.contains("GHS05")) {
      given.addAll(Set.of(HazardKind.SKIN_IRRIT, HazardKind.EYE_IRRIT));
    }
    if (breathing) {
      given.addAll(Set.of(HazardKind.SKIN_SENS, HazardKind.SKIN_IRRIT, HazardKind.EYE_IRRIT));
    }
    boolean none = exclamation.stream().allMatch(h -> given.contains(h.kind()));
    if (codes.contains("GHS06") || none) {
      codes.remove("GHS07");
    }
    return List.copyOf(codes);
  }

  /**
   * The precautions that matter most to the audience, at most six, said once each; for the public
   * one of them is on disposal where a class asks for it (CLP Article 28). Which ones go first is a
   * weight in {@code precautions.csv}, house.
   */
  static List<String> precautions(Collection<HazardClass> hazards, Audience audience) {
    Map<String, Tables.Precaution> asked = new LinkedHashMap<>();
    boolean health = false;
    for (HazardClass hazard : hazards) {
      ClassFacts facts = Tables.shared().facts(hazard);
      if (facts == null) {
        continue;
      }
      health |= !facts.side().equals("environment");
      facts.precautions().forEach(code -> put(asked, code));
    }
    if (health && audience == Audience.PUBLIC) {
      put(asked, "P102");
    }
    Set<String> codes = Set.copyOf(asked.keySet());
    List<Tables.Precaution> chosen =
        asked.values().stream()
            .filter(p -> weight(p, audience) > 0)
            .filter(p -> !coveredBy(p.code(), codes))
            .sorted(
                Comparator.comparingInt((Tables.Precaution p) -> -weight(p, audience))
                    .thenComparing(Tables.Precaution::code))
            .limit(PRECAUTIONS_MAX)
            .toList();
    List<String> printed = new ArrayList<>(chosen.stream().map(Tables.Precaution::code).toList());
    printed.sort(Comparator.naturalOrder());
    return printed;
  }

  private static void put(Map<String, Tables.Precaution> asked, String code) {
    Tables.Precaution precaution = Tables.shared().precaution(code);
    if (precaution != null) {
      asked.put(code, precaution);
    }
  }

  private static int weight(Tables.Precaution precaution, Audience audience) {
    return audience == Audience.PUBLIC ? precaution.publicWeight() : precaution.tradeWeight();
  }

  private static boolean coveredBy(String code, Set<String> codes) {
    return COVERED_BY.getOrDefault(code, Set.of()).stream().anyMatch(codes::contains);
  }
}
