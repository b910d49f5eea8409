package pourwright.heat;

/**
 * One evaluation after the other of what flows in a {@link Box}, in one precision. A step is:
 * {@link #begin} and {@link #connect} on every plane, then for each stage {@link #thermal} on every
 * plane and {@link #stage} on every plane, then {@link #end} on every plane. Within each of these
 * the planes may be shared out to threads; between them the threads must meet.
 */
interface Sweep {

  /** Takes over what the caller changed in a plane: geometry, losses, sources. */
  void load(int z);

  /** Takes over losses and sources of a plane. */
  void loadExchange(int z);

  /** Starts a step from the box's enthalpy; resistances are held from here to its end. */
  void begin(int z);

  /** Conductances of a plane's faces and of those to the plane above. */
  void connect(int z);

  /** Largest rate in a plane at which a cell gives away what it holds, 1/s; after connecting. */
  void fastest(int z, Peak peak);

  /** Temperatures of a plane from its enthalpy. */
  void thermal(int z);

  /**
   * Flows of planes {@code from} to {@code to} and their new increments.
   *
   * @param thread whose scratch arrays to use
   * @param k coefficients of the stage
   * @param lostW where each plane's loss to the surroundings goes, W
   */
  void stage(int from, int to, int thread, Coefficients k, Tally[] lostW);

  /** Adds the step's increment to the box's enthalpy. */
  void end(int z);

  /**
   * Coefficients of one stage: {@code new = mu·last + nu·beforeLast + rate·L + first·L0}, where the
   * values are increments from the start of the step.
   */
  record Coefficients(double mu, double nu, double rate, double first, boolean isFirst) {}

  /** The largest of what it was given. */
  final class Peak {
    double value;

    void raise(double to) {
      value = Math.max(value, to);
    }
  }

  /** A sum in double precision whatever the arrays hold. */
  final class Tally {
    double sum;

    void add(double a, double b) {
      sum += a * b;
    }
  }
}
