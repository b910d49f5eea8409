package pourwright.wick;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import pourwright.quantity.Check;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;

/**
 * What the studio's own tests say of a wick: burn rate or melt radius for a wick in a wax with a
 * scent, a load and a vessel, learnt from tests that are more or less alike. A small hierarchical
 * model on logarithms: what two tests share (same wick; also same wax; also same scent and load;
 * also same vessel) makes them alike by fixed variances, and the proposal is the best linear
 * prediction with its 95 % interval.
 *
 * <p>Source of the predictor: Henderson, Biometrics 31 (1975) 423-447 (best linear unbiased
 * prediction), with known variances. The variances are house: about ± 35 % between wicks (handbook:
 * a burn rate is not predictable to better than 30-50 % from the wick's make), 12 % between waxes,
 * 8 % between scents, 8 % between vessels, 6 % between tests of one kind. Maths:
 * docs/models/wick.md.
 */
public final class WickMemory {
  private static final double WICK = 0.35;
  private static final double WAX = 0.12;
  private static final double SCENT = 0.08;
  private static final double VESSEL = 0.08;
  private static final double TEST = 0.06;
  private static final double Z_95 = 1.959963984540054;

  private final double usual;
  private final List<Test> tests;

  /**
   * What was burnt.
   *
   * @param wick code of the wick
   * @param wax code of the wax or blend
   * @param scent code of the scent, empty for none
   * @param load load on the total
   * @param vessel code of the vessel
   */
  public record Burnt(String wick, String wax, String scent, double load, String vessel) {
    /** Checks the load. */
    public Burnt {
      Check.fraction("load_fraction", load);
    }

    private boolean sameScent(Burnt other) {
      return scent.equals(other.scent) && Math.abs(load - other.load) < 0.01;
    }
  }

  /** One result: what was burnt and the value measured, above 0. */
  public record Test(Burnt burnt, double value) {
    /** Checks the value. */
    public Test {
      Check.positive("value", value);
    }
  }

  /**
   * A proposal.
   *
   * @param value the likeliest value
   * @param low lower end of the 95 % interval for the next test
   * @param high upper end
   * @param tests tests of this wick it stands on
   * @param alike tests of this wick in this wax, scent, load and vessel
   */
  public record Proposal(double value, double low, double high, int tests, int alike) {
    /** What it stands on, in a sentence. */
    public String standsOn() {
      if (tests == 0) {
        return "Stands on no test of this wick: only on what is usual.";
      }
      return String.format(
          Locale.ROOT,
          "Stands on %s of this wick, %d just like this.",
          Counted.of(tests, "test", "tests"),
          alike);
    }
  }

  /**
   * A memory.
   *
   * @param usual what is usual for any wick (burn rate typical 5 g/h), above 0
   */
  public WickMemory(double usual, List<Test> tests) {
    this.usual = Check.positive("usual", usual);
    if (tests.size() > 2000) {
      throw new OutOfRange("tests", "more than 2000 tests", "use the latest ones");
    }
    this.tests = List.copyOf(tests);
  }

  private static double alike(Burnt a, Burnt b) {
    if (!a.wick.equals(b.wick)) {
      return 0;
    }
    double shared = WICK * WICK;
    if (a.wax.equals(b.wax)) {
      shared += WAX * WAX;
      if (a.sameScent(b)) {
        shared += SCENT * SCENT;
      }
    }
    return a.vessel.equals(b.vessel) ? shared + VESSEL * VESSEL : shared;
  }

  /** What the next test of such a candle will likely show. */
  public Proposal propose(Burnt next) {
    List<Test> of =
        new ArrayList<>(tests.stream().filter(t -> t.burnt.wick.equals(next.wick)).toList());
    double whole = alike(next, next) + TEST * TEST;
    double mean = Math.log(usual);
    double variance = whole;
    if (!of.isEmpty()) {
      int n = of.size();
      RealMatrix k = MatrixUtils.createRealMatrix(n, n);
      RealVector to = new ArrayRealVector(n);
      RealVector off = new ArrayRealVector(n);
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          double own = i == j ? TEST * TEST : 0;
          k.setEntry(i, j, alike(of.get(i).burnt, of.get(j).burnt) + own);
        }
        to.setEntry(i, alike(next, of.get(i).burnt));
        off.setEntry(i, Math.log(of.get(i).value) - Math.log(usual));
      }
      RealVector weights = new CholeskyDecomposition(k).getSolver().solve(to);
      mean += weights.dotProduct(off);
      variance = whole - weights.dotProduct(to);
    }
    double spread = Z_95 * Math.sqrt(Math.max(0, variance));
    int alike = (int) of.stream().filter(t -> same(t.burnt, next)).count();
    return new Proposal(
        Math.exp(mean), Math.exp(mean - spread), Math.exp(mean + spread), of.size(), alike);
  }

  private static boolean same(Burnt a, Burnt b) {
    return a.wax.equals(b.wax) && a.sameScent(b) && a.vessel.equals(b.vessel);
  }
}
