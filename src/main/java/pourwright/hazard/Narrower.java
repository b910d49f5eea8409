package pourwright.hazard;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleFunction;
import pourwright.quantity.Check;

/**
 * What a narrower range would change. A sheet that gives a range counts at its upper end; where a
 * lower upper end would give another label, asking the supplier for it is worth the trouble.
 */
public final class Narrower {
  private static final int STEPS = 24;
  private static final double FINE = 1e-7;

  private Narrower() {}

  /**
   * One range that matters.
   *
   * @param substance as on the sheet
   * @param low lower end, fraction of the oil or of the rest, as the sheet has it
   * @param high upper end, likewise
   * @param atMost the highest upper end that gives another label, rounded down to 0.01 % of it
   * @param dropped statements, supplemental codes and names that would go
   * @param added those that would come
   * @param classes that would be left
   */
  public record Change(
      String substance,
      double low,
      double high,
      double atMost,
      List<String> dropped,
      List<String> added,
      List<String> classes) {
    /** Copies the lists. */
    public Change {
      dropped = List.copyOf(dropped);
      added = List.copyOf(added);
      classes = List.copyOf(classes);
    }
  }

  /**
   * The ranges of a blend that matter at a load, each narrowed alone, in the order of its lines.
   *
   * @param loadOfTotal fraction, 0 to 1
   */
  public static List<Change> of(Blend blend, double loadOfTotal) {
    Check.fraction("load_fraction", loadOfTotal);
    Classification now = blend.at(loadOfTotal);
    List<Change> changes = new ArrayList<>();
    for (int i = 0; i < blend.oil().size(); i++) {
      int line = i;
      add(
          changes,
          blend.oil().get(i),
          now,
          high ->
              new Blend(
                      blend.regime(),
                      blend.audience(),
                      narrowed(blend.oil(), line, high),
                      blend.rest())
                  .at(loadOfTotal));
    }
    for (int i = 0; i < blend.rest().size(); i++) {
      int line = i;
      add(
          changes,
          blend.rest().get(i),
          now,
          high ->
              new Blend(
                      blend.regime(),
                      blend.audience(),
                      blend.oil(),
                      narrowed(blend.rest(), line, high))
                  .at(loadOfTotal));
    }
    return changes;
  }

  private static List<Ingredient> narrowed(List<Ingredient> lines, int line, double high) {
    List<Ingredient> narrowed = new ArrayList<>(lines);
    Ingredient old = lines.get(line);
    narrowed.set(line, old.at(new Share(Math.min(old.share().low(), high), high)));
    return narrowed;
  }

  private static void add(
      List<Change> changes,
      Ingredient line,
      Classification now,
      DoubleFunction<Classification> at) {
    Share share = line.share();
    if (!share.isRange() || (line.classes().isEmpty() && line.specificLimits().isEmpty())) {
      return;
    }
    double same = share.high();
    for (int step = STEPS - 1; step >= 0; step--) {
      double high = share.low() + (share.high() - share.low()) * step / STEPS;
      if (!at.apply(high).print().equals(now.print())) {
        double other = edge(at, now.print(), high, same);
        double shown = Math.max(share.low(), Math.floor(other * 1e4 + FINE) / 1e4);
        Classification then = at.apply(shown);
        changes.add(
            new Change(
                line.name(),
                share.low(),
                share.high(),
                shown,
                difference(now, then),
                difference(then, now),
                then.classes()));
        return;
      }
      same = high;
    }
  }

  /** The highest share that still prints otherwise. */
  private static double edge(
      DoubleFunction<Classification> at, String print, double other, double same) {
    double low = other;
    double high = same;
    while (high - low > FINE) {
      double middle = (low + high) / 2;
      if (at.apply(middle).print().equals(print)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return low;
  }

  private static List<String> difference(Classification of, Classification without) {
    Set<String> codes = codes(of);
    codes.removeAll(codes(without));
    return List.copyOf(codes);
  }

  private static Set<String> codes(Classification found) {
    Set<String> codes = new LinkedHashSet<>(found.statements());
    codes.addAll(found.supplemental());
    found.namedSubstances().forEach(n -> codes.add("names " + n));
    return codes;
  }
}
