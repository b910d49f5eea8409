package pourwright.hazard;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Compositions in one line of text for tables of tests: {@code linalool 1.2 Skin Sens. 1B + Skin
 * Irrit. 2; wax 98.8}. Amounts are per cent; {@code M10} sets both M-factors, {@code scl=Skin Sens.
 * 1A:0.01} a specific limit in per cent, {@code oral=500} an estimate.
 */
final class Compositions {
  private Compositions() {}

  static List<Ingredient> read(String written) {
    List<Ingredient> lines = new ArrayList<>();
    for (String line : written.split(";", -1)) {
      lines.add(line(line.strip()));
    }
    return lines;
  }

  private static Ingredient line(String line) {
    String[] words = line.split(" ", 3);
    double fraction = Double.parseDouble(words[1]) / 100;
    Set<HazardClass> classes = new LinkedHashSet<>();
    Map<HazardClass, Double> limits = new HashMap<>();
    Integer m = null;
    Double oral = null;
    Double vapour = null;
    boolean unknownInhalation = false;
    boolean additive = true;
    for (String part : words.length < 3 ? new String[0] : words[2].split("\\+", -1)) {
      String item = part.strip();
      if (item.matches("M[0-9]+")) {
        m = Integer.valueOf(item.substring(1));
      } else if (item.startsWith("scl=")) {
        String[] limit = item.substring(4).split(":", -1);
        limits.put(HazardClass.parse(limit[0]), Double.parseDouble(limit[1]) / 100);
      } else if (item.startsWith("oral=")) {
        oral = Double.valueOf(item.substring(5));
      } else if (item.startsWith("vapour=")) {
        vapour = Double.valueOf(item.substring(7));
      } else if (item.equals("no-inhalation-data")) {
        unknownInhalation = true;
      } else if (item.equals("not-additive")) {
        additive = false;
      } else {
        classes.add(HazardClass.parse(item));
      }
    }
    return new Ingredient(
        words[0],
        null,
        Share.of(fraction),
        classes,
        limits,
        m,
        m,
        new Ingredient.AcuteFacts(
            new AcuteEstimates(oral, null, vapour, null),
            unknownInhalation ? Set.of("inhalation") : Set.of(),
            additive));
  }

  /** A solid for the public by the European rules, unless another regime is named. */
  static Classification classify(@Nullable Regime regime, String written) {
    return classify(regime == null ? Regime.CLP : regime, Form.SOLID, written);
  }

  static Classification classify(Regime regime, Form form, String written) {
    return Classifier.classify(
        new Mixture(regime, form, Audience.PUBLIC, read(written), Mixture.Tested.NOTHING));
  }
}
