package pourwright.hazard;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What a mixture is by the published criteria, with everything a label needs and why.
 *
 * @param hazards the classes with route or effect, in the order of the tables
 * @param statements codes of the hazard statements to print, duplicates by meaning left out
 * @param supplemental codes of supplemental statements, and sentences that have no code
 * @param namedSubstances substances that the label has to name
 * @param pictograms GHS codes, after precedence
 * @param signalWord {@code Danger}, {@code Warning} or null
 * @param precautionary codes, at most six
 * @param stops reasons why it must not be supplied to this audience
 * @param reasons one finding for each effect that was judged
 * @param warnings what was read cautiously or is missing
 * @param unknown fraction of the mixture that the lines leave open, at least
 */
public record Classification(
    List<HazardClass> hazards,
    List<String> statements,
    List<String> supplemental,
    List<String> namedSubstances,
    List<String> pictograms,
    @Nullable String signalWord,
    List<String> precautionary,
    List<String> stops,
    List<Finding> reasons,
    List<String> warnings,
    double unknown) {

  /** Copies the lists. */
  public Classification {
    hazards = List.copyOf(hazards);
    statements = List.copyOf(statements);
    supplemental = List.copyOf(supplemental);
    namedSubstances = List.copyOf(namedSubstances);
    pictograms = List.copyOf(pictograms);
    precautionary = List.copyOf(precautionary);
    stops = List.copyOf(stops);
    reasons = List.copyOf(reasons);
    warnings = List.copyOf(warnings);
  }

  /** The classes without route or effect, each once. */
  public List<String> classes() {
    return hazards.stream().map(HazardClass::code).distinct().toList();
  }

  /** True when no class is given; supplemental statements may still be due. */
  public boolean isUnclassified() {
    return hazards.isEmpty();
  }

  /** True when a health or a physical hazard is among the classes. */
  public boolean hasHealthOrPhysicalHazard() {
    return hazards.stream()
        .map(Tables.shared()::facts)
        .anyMatch(f -> f != null && !f.side().equals("environment"));
  }

  /**
   * What is printed, as one text: two mixtures with the same print need the same label. The order
   * of findings and the amounts do not enter.
   */
  public String print() {
    Set<String> words = new TreeSet<>(classes());
    words.addAll(statements);
    words.addAll(supplemental);
    words.addAll(namedSubstances);
    words.addAll(pictograms);
    words.addAll(precautionary);
    words.addAll(stops.isEmpty() ? List.of() : List.of("stop"));
    return words + "|" + signalWord;
  }
}
