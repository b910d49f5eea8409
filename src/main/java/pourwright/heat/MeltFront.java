package pourwright.heat;

import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * A melting front in one dimension, by the solver that the candle is computed with: a slab with its
 * face held at a temperature, or a cylinder round a line that gives off heat. The far end is
 * insulated.
 */
public final class MeltFront {
  /** Times the plain explicit step that one step spans; small against what the front needs. */
  private static final double STRIDE = 6.5;

  private static final int CELLS_MAX = 20_000;

  private final Melting wax;
  private final double initialC;
  private final Box box;
  private final double cellM;
  private final boolean held;

  /** How the conductivity of a face between two cells is taken. */
  public enum Faces {
    /** Harmonic mean of the cells', as in the candle's computation. */
    HARMONIC,
    /** Integral over temperature, which suits a sharp front between unlike phases better. */
    INTEGRAL
  }

  private MeltFront(Case of, double referenceC, boolean held) {
    this.wax = of.wax;
    this.initialC = of.initialC;
    this.held = held;
    if (wax.toC() != wax.fromC()) {
      throw new OutOfRange(
          "melt_to_c", "a front needs one melting point", "give melt_to_c equal to melt_from_c");
    }
    double length = of.lengthMm / 1000;
    int cells = (int) Math.round(of.lengthMm / of.gridMm);
    this.cellM = length / cells;
    double[] still = {1, 1};
    boolean integral = of.faces == Faces.INTEGRAL;
    box = new Box(new int[] {cells, 1, 1}, wax.from(referenceC), still, integral);
  }

  /**
   * What melts, from what temperature, over what length in what cells.
   *
   * @param wax with one melting point
   * @param initialC °C, at most the melting point
   * @param lengthMm greater than zero; the far end is insulated
   * @param gridMm from a 20 000th to a quarter of the length
   */
  public record Case(Melting wax, double initialC, double lengthMm, double gridMm, Faces faces) {

    /** Checks length and grid. */
    public Case {
      Check.positive("length_mm", lengthMm);
      Check.between("grid_mm", gridMm, lengthMm / CELLS_MAX, lengthMm / 4);
    }
  }

  /** A slab whose face is held at {@code surfaceC}, above the melting point. */
  public static MeltFront slab(Case of, double surfaceC) {
    if (surfaceC <= of.wax.toC()) {
      throw new OutOfRange("surface_c", "the surface is not above the melting point", "raise it");
    }
    MeltFront front = new MeltFront(of, surfaceC, true);
    front.lay(r -> 1);
    return front;
  }

  /** A cylinder round a line that gives off {@code wattsPerM}, greater than zero. */
  public static MeltFront line(Case of, double wattsPerM) {
    Check.positive("source_w_per_m", wattsPerM);
    MeltFront front = new MeltFront(of, of.initialC, false);
    front.lay(r -> 2 * Math.PI * r);
    front.box.source[0][front.box.at(0, 0)] = wattsPerM;
    return front;
  }

  private void lay(java.util.function.DoubleUnaryOperator areaAt) {
    if (initialC > wax.fromC()) {
      throw new OutOfRange("initial_c", "the wax would begin melted", "start at or below melt_c");
    }
    for (int x = 0; x < box.nx; x++) {
      int i = box.at(x, 0);
      box.melts[0][i] = 1;
      box.conductivity[0][i] = wax.solid();
      box.volume[0][i] = areaAt.applyAsDouble((x + 0.5) * cellM) * cellM;
      double face = areaAt.applyAsDouble((x + 1) * cellM);
      box.faceX[0][i] = x + 1 < box.nx ? 2 * face / cellM : 0;
      box.enthalpy[0][i] = box.curve.enthalpy(initialC);
    }
  }

  /** Thickness or radius of what has melted at each of the times, m: Σ f·Δx. */
  public double[] frontsM(double[] timesS) {
    double[] fronts = new double[timesS.length];
    try (Stepper stepper = new Stepper(box, Stepper.Precision.DOUBLE, 1)) {
      double now = 0;
      for (int t = 0; t < timesS.length; t++) {
        if (timesS[t] < now) {
          throw new OutOfRange("times_s", "the times are not in order", "sort them");
        }
        run(stepper, timesS[t] - now);
        now = timesS[t];
        fronts[t] = frontM();
      }
    }
    return fronts;
  }

  private void run(Stepper stepper, double seconds) {
    int steps = (int) Math.ceil(seconds / (STRIDE * stepper.explicitLimitS()));
    for (int i = 0; i < steps; i++) {
      if (held) {
        holdFace(stepper);
      }
      stepper.advance(seconds / steps);
    }
  }

  private void holdFace(Stepper stepper) {
    int i = box.at(0, 0);
    double k = wax.solid() + box.liquid(0, i) * (wax.liquid() - wax.solid());
    box.loss[0][i] = 2 * (box.integral ? 1 : k) / cellM;
    stepper.reloadExchange();
  }

  /** Thickness of what has melted now, m. */
  public double frontM() {
    double sum = 0;
    for (int x = 0; x < box.nx; x++) {
      sum += box.liquid(0, box.at(x, 0)) * cellM;
    }
    return sum;
  }

  /** Temperature at the centre of a cell, °C. */
  public double celsius(double distanceM) {
    double place = distanceM / cellM - 0.5;
    int low = Math.max(0, Math.min(box.nx - 2, (int) Math.floor(place)));
    double share = Math.max(0, Math.min(1, place - low));
    double a = box.kelvin(0, box.at(low, 0));
    double b = box.kelvin(0, box.at(low + 1, 0));
    return box.curve.referenceC() + a + share * (b - a);
  }
}
