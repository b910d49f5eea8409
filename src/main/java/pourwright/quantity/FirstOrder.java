package pourwright.quantity;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * First-order propagation of uncertainty: independent inputs, each moved by one of its standard
 * uncertainties either way, half the difference of the results taken as its share, shares added in
 * quadrature. Exact for functions that are linear in each input; a first-order estimate elsewhere.
 *
 * <p>Source: JCGM 100:2008 (GUM), 5.1.2 with the numerical sensitivities of 5.1.3 note 2.
 */
public final class FirstOrder {
  private FirstOrder() {}

  /** A worked-out value, the range that goes with it, and which input carries most of it. */
  public record Result(Sourced value, int widestInput) {}

  /**
   * Evaluates {@code function} at the inputs' values with the range that their uncertainties give.
   *
   * @param inputs the values the function takes, in its order
   * @param function pure; called 1 + 2·(number of inexact inputs) times
   */
  public static Result of(List<Sourced> inputs, ToDoubleFunction<double[]> function) {
    double[] at = inputs.stream().mapToDouble(Sourced::value).toArray();
    double value = function.applyAsDouble(at);
    double variance = 0;
    double widest = 0;
    int widestInput = -1;
    for (int i = 0; i < at.length; i++) {
      Sourced input = inputs.get(i);
      if (input.isExact()) {
        continue;
      }
      double[] up = at.clone();
      double[] down = at.clone();
      up[i] = input.high();
      down[i] = input.low();
      double share = (function.applyAsDouble(up) - function.applyAsDouble(down)) / 2;
      variance += share * share;
      if (Math.abs(share) > widest) {
        widest = Math.abs(share);
        widestInput = i;
      }
    }
    double relative = value == 0 ? 0 : Math.sqrt(variance) / Math.abs(value);
    return new Result(new Sourced(value, Math.min(2, relative), Origin.WORKED_OUT), widestInput);
  }
}
