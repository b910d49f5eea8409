package pourwright.work;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import pourwright.batch.Mistake;
import pourwright.batch.RecordedStep;
import pourwright.card.ResolvedPour;
import pourwright.material.UnitKind;

/**
 * What was really weighed into a pitcher: waxes, fragrances and extras, dose and what put it right.
 *
 * @param grams by code of the material
 */
public record PitcherContents(Map<String, Double> grams) {
  /** Copies. */
  public PitcherContents {
    grams = java.util.Collections.unmodifiableMap(new TreeMap<>(grams));
  }

  /**
   * By the steps that were recorded; wicks and whatever else is counted are left out. A bottle that
   * was forgotten or mistaken takes the place of the scent written down before.
   */
  static PitcherContents of(ResolvedPour pour, List<RecordedStep> done) {
    List<String> scents = pour.fragrances().stream().map(s -> s.material().code()).toList();
    List<String> codes =
        Stream.of(pour.waxes(), pour.fragrances(), pour.extras())
            .flatMap(Collection::stream)
            .map(s -> s.material().code())
            .toList();
    Map<String, Double> grams = new TreeMap<>();
    for (RecordedStep step : done) {
      boolean other = step.key().equals(Mistake.WRONG_BOTTLE.stepKey());
      if (other || step.key().equals(Mistake.SCENT_FORGOTTEN.stepKey())) {
        grams.keySet().removeAll(scents);
      }
      step.used().stream()
          .filter(u -> other || codes.contains(u.material()))
          .filter(u -> u.amount().kind() == UnitKind.MASS)
          .forEach(u -> grams.merge(u.material(), u.amount().inUsualUnit(), Double::sum));
    }
    return new PitcherContents(grams);
  }

  /** Everything in it, in g. */
  public double totalG() {
    return grams.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  /** So many grams of it, well stirred. */
  PitcherContents part(double partG) {
    double total = totalG();
    Map<String, Double> part = new TreeMap<>();
    grams.forEach((code, g) -> part.put(code, total == 0 ? 0 : g * partG / total));
    return new PitcherContents(part);
  }

  /** Both together. */
  PitcherContents with(PitcherContents other) {
    Map<String, Double> sum = new TreeMap<>(grams);
    other.grams.forEach((code, g) -> sum.merge(code, g, Double::sum));
    return new PitcherContents(sum);
  }
}
