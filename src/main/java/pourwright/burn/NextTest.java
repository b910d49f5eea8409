package pourwright.burn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import pourwright.quantity.Check;

/**
 * Which wick to test next. Each candidate's chance to pass one test is a beta distribution: a prior
 * from wick memory and simulation, then the tests so far. A candidate is proved by a row of passes
 * and given up at its first failure. Candidates are tried in the order of chance to be proved over
 * expected cost, which makes the expected cost to the first proof least.
 *
 * <p>Source: L. G. Mitten, An analytic solution to the least cost testing sequence problem, J.
 * Industrial Engineering 11 (1960) 17, for independent candidates; beta-binomial predictions from
 * any textbook of Bayesian statistics. The prior's weights are house.
 */
public final class NextTest {
  private NextTest() {}

  /** House: a simulation weighs as much as one test, whichever way it points. */
  public static final double SIMULATION_WEIGHT = 1;

  /** What a simulation said of a candidate. */
  public enum Foresight {
    /** None was run. */
    NONE(Double.NaN),
    /** The whole surface melts, in time and not too deep. */
    GOOD(1),
    /** It tunnels, or leaves the range. */
    BAD(0);

    private final double share;

    Foresight(double share) {
      this.share = share;
    }
  }

  /**
   * A wick that could be tested.
   *
   * @param name in the maker's words
   * @param likeIt passed and failed tests of like candles in wick memory, counted half
   * @param foreseen share of the simulations over the burn rates that wick memory holds likely in
   *     which the whole surface melts in time and not too deep, 0 to 1; NaN where none was run
   * @param passed tests of this very design that passed
   * @param failed tests of it that failed
   * @param costOfTest in any currency, greater than zero
   */
  public record Candidate(
      String name, int[] likeIt, double foreseen, int passed, int failed, double costOfTest) {

    /** With one simulation that went well or did not. */
    public Candidate(
        String name, int[] likeIt, Foresight foresight, int passed, int failed, double costOfTest) {
      this(name, likeIt, foresight.share, passed, failed, costOfTest);
    }

    /** Checks the counts. */
    public Candidate {
      likeIt = likeIt.clone();
      Check.between("liked", likeIt.length, 2, 2);
      Check.notNegative("passed", passed);
      Check.notNegative("failed", failed);
      Check.positive("cost_of_test", costOfTest);
      if (!Double.isNaN(foreseen)) {
        Check.fraction("foreseen", foreseen);
      }
    }

    /** The same with another share of simulations that went well. */
    public Candidate seeing(double share) {
      return new Candidate(name, likeIt, share, passed, failed, costOfTest);
    }

    private double good() {
      double seen = Double.isNaN(foreseen) ? 0 : SIMULATION_WEIGHT * foreseen;
      return 1 + 0.5 * likeIt[0] + seen + passed;
    }

    private double bad() {
      double seen = Double.isNaN(foreseen) ? 0 : SIMULATION_WEIGHT * (1 - foreseen);
      return 1 + 0.5 * likeIt[1] + seen + failed;
    }

    /** Chance that the next test passes. */
    public double chanceToPass() {
      return good() / (good() + bad());
    }

    /** Chance that so many further tests all pass. */
    public double chanceToProve(int more) {
      double chance = 1;
      for (int k = 0; k < more; k++) {
        chance *= (good() + k) / (good() + bad() + k);
      }
      return chance;
    }

    /** Expected number of tests until it is proved or fails, when so many passes are missing. */
    public double expectedTests(int more) {
      double tests = 0;
      for (int k = 0; k < more; k++) {
        tests += chanceToProve(k);
      }
      return tests;
    }
  }

  /**
   * The advice.
   *
   * @param candidate which to test next
   * @param expectedTests until a first design is proved, following the order; candidates that fail
   *     cost too
   * @param expectedCost of these tests
   * @param chance that one of them is proved at all
   * @param why in a sentence
   */
  public record Advice(
      Candidate candidate, double expectedTests, double expectedCost, double chance, String why) {}

  /**
   * What to test next.
   *
   * @param candidates at least one; failed ones are left out unless nothing else is there
   * @param passesNeeded of the maker's rule to prove a design, 1 or more
   */
  public static Advice among(List<Candidate> candidates, int passesNeeded) {
    Check.between("candidates", candidates.size(), 1, 1000);
    Check.between("passes_needed", passesNeeded, 1, 100);
    List<Candidate> order = new ArrayList<>(candidates);
    order.removeIf(c -> c.failed > 0 && candidates.stream().anyMatch(d -> d.failed == 0));
    order.sort(Comparator.comparingDouble((Candidate c) -> worth(c, passesNeeded)).reversed());
    double tests = 0;
    double cost = 0;
    double open = 1;
    for (Candidate c : order) {
      double more = open * c.expectedTests(missing(c, passesNeeded));
      tests += more;
      cost += more * c.costOfTest;
      open *= 1 - c.chanceToProve(missing(c, passesNeeded));
    }
    Candidate first = order.get(0);
    String why =
        String.format(
            Locale.ROOT,
            "%s: a chance of %.0f %% to pass the next test and of %.0f %% to be proved with %d more;"
                + " no other candidate promises more for its cost. A chance is no proof.",
            first.name,
            100 * first.chanceToPass(),
            100 * first.chanceToProve(missing(first, passesNeeded)),
            missing(first, passesNeeded));
    return new Advice(first, tests, cost, 1 - open, why);
  }

  private static int missing(Candidate c, int needed) {
    return Math.max(1, needed - c.passed);
  }

  private static double worth(Candidate c, int needed) {
    int more = missing(c, needed);
    return c.chanceToProve(more) / (c.expectedTests(more) * c.costOfTest);
  }
}
