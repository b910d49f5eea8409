package pourwright.hazard;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import pourwright.quantity.Check;

/**
 * A candle's wax mixture as oil and the rest, for any fragrance load on the total.
 *
 * @param regime the rules
 * @param audience who gets it
 * @param oil composition of the fragrance oil, as fractions of the oil
 * @param rest composition of wax, dye and additives, as fractions of that rest
 */
public record Blend(Regime regime, Audience audience, List<Ingredient> oil, List<Ingredient> rest) {
  private static final double GRID = 0.001;
  private static final double FINE = 1e-7;

  /**
   * From which load on the label is another one.
   *
   * @param fromLoad fraction of the total
   * @param added statements and supplemental codes that come
   * @param dropped those that go
   * @param classes then
   */
  public record Step(
      double fromLoad, List<String> added, List<String> dropped, List<String> classes) {}

  /** Copies the lists. */
  public Blend {
    oil = List.copyOf(oil);
    rest = List.copyOf(rest);
  }

  /** The mixture at a load. */
  public Mixture mixture(double loadOfTotal) {
    Check.fraction("load_fraction", loadOfTotal);
    List<Ingredient> lines = new ArrayList<>();
    oil.forEach(i -> lines.add(i.at(i.share().times(loadOfTotal))));
    rest.forEach(i -> lines.add(i.at(i.share().times(1 - loadOfTotal))));
    return new Mixture(regime, Form.SOLID, audience, lines, Mixture.Tested.NOTHING);
  }

  /** Its classification at a load. */
  public Classification at(double loadOfTotal) {
    return Classifier.classify(mixture(loadOfTotal));
  }

  /** Every load up to a highest one at which the label changes. */
  public List<Step> steps(double highestLoad) {
    List<Step> steps = new ArrayList<>();
    Classification before = at(0);
    int count = (int) Math.ceil(highestLoad / GRID);
    for (int i = 1; i <= count; i++) {
      double from = (i - 1) * GRID;
      double to = Math.min(highestLoad, i * GRID);
      Classification then = at(to);
      while (!then.print().equals(before.print())) {
        double change = firstChange(from, to, before.print());
        Classification changed = at(change);
        steps.add(step(change, before, changed));
        before = changed;
        from = change;
      }
    }
    return steps;
  }

  /**
   * The highest load up to {@code highestLoad} that gives the same classes as {@code load} does,
   * rounded down to 0.01 %.
   */
  public double highestLoadLike(double load, double highestLoad) {
    List<String> classes = at(load).classes();
    double good = load;
    for (int i = 1; load + i * GRID <= highestLoad + FINE; i++) {
      double next = Math.min(highestLoad, load + i * GRID);
      if (!at(next).classes().equals(classes)) {
        double low = good;
        double high = next;
        while (high - low > FINE) {
          double middle = (low + high) / 2;
          if (at(middle).classes().equals(classes)) {
            low = middle;
          } else {
            high = middle;
          }
        }
        return Math.floor(low * 10_000) / 10_000;
      }
      good = next;
    }
    return good;
  }

  private double firstChange(double from, double to, String print) {
    double low = from;
    double high = to;
    while (high - low > FINE) {
      double middle = (low + high) / 2;
      if (at(middle).print().equals(print)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  private static Step step(double load, Classification before, Classification then) {
    return new Step(load, difference(then, before), difference(before, then), then.classes());
  }

  private static List<String> difference(Classification of, Classification without) {
    Set<String> codes = new LinkedHashSet<>(of.statements());
    codes.addAll(of.supplemental());
    of.namedSubstances().forEach(n -> codes.add("names " + n));
    without.statements().forEach(codes::remove);
    without.supplemental().forEach(codes::remove);
    without.namedSubstances().forEach(n -> codes.remove("names " + n));
    return List.copyOf(codes);
  }
}
