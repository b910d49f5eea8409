package pourwright.card;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * How much of each material, in the unit that a person reads: g, ml or pieces.
 *
 * @param byMaterial amount by code, in the order of the codes; not rounded
 */
public record Amounts(Map<String, Double> byMaterial) {
  /** Nothing. */
  public static final Amounts NONE = new Amounts(Map.of());

  /** Sorts by code. */
  public Amounts {
    byMaterial = Collections.unmodifiableMap(new TreeMap<>(byMaterial));
  }

  /** So much of one material. */
  public static Amounts of(String material, double amount) {
    return new Amounts(Map.of(material, amount));
  }

  /** The amount of a material, 0 where there is none. */
  public double get(String material) {
    return byMaterial.getOrDefault(material, 0.0);
  }

  /** The sum. */
  public Amounts plus(Amounts other) {
    Map<String, Double> sum = new TreeMap<>(byMaterial);
    other.byMaterial.forEach((material, amount) -> sum.merge(material, amount, Double::sum));
    return new Amounts(sum);
  }

  /** Every amount times a factor. */
  public Amounts times(double factor) {
    Map<String, Double> scaled = new TreeMap<>();
    byMaterial.forEach((material, amount) -> scaled.put(material, amount * factor));
    return new Amounts(scaled);
  }
}
