package pourwright.burn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** How results move with the grid and between the solvers; minutes, not for every day. */
@Tag("long")
class GridLongTest {

  private static BurnResult run(double grid, Burn.Solver solver, double hours) {
    Prototype p = new Prototype();
    p.grid = grid;
    p.hours = hours;
    p.solver = solver;
    p.wholeRows = false;
    p.threads = 2;
    return p.run();
  }

  @Test
  void fromCoarseToFineRadiusAndWallRiseMoveByAboutThreePercentAtMost() {
    BurnResult coarse = run(1.25, Burn.Solver.AXISYMMETRIC, 2);
    BurnResult fine = run(0.625, Burn.Solver.AXISYMMETRIC, 2);
    for (double h : new double[] {1, 2}) {
      BurnResult.Pool a = Prototype.at(coarse, h);
      BurnResult.Pool b = Prototype.at(fine, h);
      System.err.printf(
          "%s h: radius %.2f → %.2f mm, wall rise %.2f → %.2f K, depth %.2f → %.2f mm%n",
          h,
          a.equivalentRadiusMm(),
          b.equivalentRadiusMm(),
          a.wallC() - 21,
          b.wallC() - 21,
          a.depthMm(),
          b.depthMm());
      assertThat(b.equivalentRadiusMm()).isCloseTo(a.equivalentRadiusMm(), withPercentage(3));
      // the wall moves by 3.2 % at one hour, when the pool reaches it; by 1.2 % at two
      assertThat(b.wallC() - 21).isCloseTo(a.wallC() - 21, withPercentage(h < 1.5 ? 3.5 : 3));
      assertThat(b.depthMm()).isCloseTo(a.depthMm(), withPercentage(15));
    }
  }

  @Test
  void theSolversAgreeWithinFourPercentAtTwoGrids() {
    for (double grid : new double[] {2.5, 1.25}) {
      BurnResult flat = run(grid, Burn.Solver.AXISYMMETRIC, 4);
      BurnResult solid = run(grid, Burn.Solver.THREE_D, 4);
      for (double h : new double[] {1, 2, 4}) {
        BurnResult.Pool a = Prototype.at(flat, h);
        BurnResult.Pool b = Prototype.at(solid, h);
        System.err.printf(
            "%s mm, %s h: radius %.2f and %.2f mm, wall rise %.2f and %.2f K%n",
            grid,
            h,
            a.equivalentRadiusMm(),
            b.equivalentRadiusMm(),
            a.wallC() - 21,
            b.wallC() - 21);
        assertThat(b.equivalentRadiusMm()).isCloseTo(a.equivalentRadiusMm(), withPercentage(4));
        assertThat(b.wallC() - 21).isCloseTo(a.wallC() - 21, withPercentage(4));
      }
    }
  }

  @Test
  void aLongStepTellsTheSameAsManyShortOnes() {
    Prototype p = new Prototype();
    p.wholeRows = false;
    p.hours = 2;
    Burn burn = p.burn();
    BurnResult longStep = Simulation.run(burn);
    BurnResult shortStep =
        Simulation.run(
            new Burn(
                burn.vessel(),
                burn.wax(),
                burn.across(),
                burn.upright(),
                burn.wicks(),
                burn.flame(),
                burn.room(),
                burn.fineness().withStep(0.2)));
    BurnResult.Pool a = Prototype.at(longStep, 2);
    BurnResult.Pool b = Prototype.at(shortStep, 2);
    System.err.printf(
        "30 s and 0.2 s: radius %.3f and %.3f mm, wall %.3f and %.3f °C%n",
        a.equivalentRadiusMm(), b.equivalentRadiusMm(), a.wallC(), b.wallC());
    assertThat(a.equivalentRadiusMm()).isCloseTo(b.equivalentRadiusMm(), withPercentage(0.5));
    assertThat(a.wallC() - 21).isCloseTo(b.wallC() - 21, withPercentage(0.5));
  }
}
