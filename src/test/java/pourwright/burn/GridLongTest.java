package pourwright.burn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How results move with the grid and between the solvers; minutes, not for every day. */
@Tag("long")
class GridLongTest {

  private static Prototype candle(double grid, Burn.Solver solver, double hours, boolean sharp) {
    Prototype p = new Prototype();
    p.grid = grid;
    p.hours = hours;
    p.solver = solver;
    p.sharp = sharp;
    p.wholeRows = false;
    p.threads = 2;
    return p;
  }

  @Test
  void fromCoarseToFineRadiusAndWallRiseMoveByLessThanThreePercent() {
    settles("plain", candle(1.25, Burn.Solver.AXISYMMETRIC, 2, false));
  }

  @Test
  void inTheSharpSchemeSoDoCandlesWhosePoolStopsShortOfTheWall() {
    settles("sharp", candle(1.25, Burn.Solver.AXISYMMETRIC, 2, true));
    Prototype dim = candle(1.25, Burn.Solver.AXISYMMETRIC, 2, true);
    dim.chi = .15;
    settles("sharp, chi 0.15", dim);
    Prototype slow = candle(1.25, Burn.Solver.AXISYMMETRIC, 2, true);
    slow.milligramsPerS = 1.2;
    settles("sharp, 1.2 mg/s", slow);
    Prototype wide = candle(1.25, Burn.Solver.AXISYMMETRIC, 2, true);
    wide.radius = 45;
    settles("sharp, radius 45", wide);
  }

  private static void settles(String name, Prototype candle) {
    BurnResult coarse = candle.run();
    candle.grid = 0.625;
    BurnResult fine = candle.run();
    for (double h : new double[] {1, 2}) {
      BurnResult.Pool a = Prototype.at(coarse, h);
      BurnResult.Pool b = Prototype.at(fine, h);
      System.err.printf(
          "%s, %s h: radius %.2f → %.2f mm, wall rise %.2f → %.2f K, depth %.2f → %.2f mm%n",
          name,
          h,
          a.equivalentRadiusMm(),
          b.equivalentRadiusMm(),
          a.wallC() - 21,
          b.wallC() - 21,
          a.depthMm(),
          b.depthMm());
      assertThat(b.equivalentRadiusMm()).isCloseTo(a.equivalentRadiusMm(), withPercentage(3));
      assertThat(b.wallC() - 21).isCloseTo(a.wallC() - 21, withPercentage(3));
      assertThat(b.depthMm()).isCloseTo(a.depthMm(), withPercentage(15));
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void theSolversAgreeWithinTwoPercentAtTwoGrids(boolean sharp) {
    for (double grid : new double[] {2.5, 1.25}) {
      BurnResult flat = candle(grid, Burn.Solver.AXISYMMETRIC, 4, sharp).run();
      BurnResult solid = candle(grid, Burn.Solver.THREE_D, 4, sharp).run();
      for (double h : new double[] {1, 2, 4}) {
        BurnResult.Pool a = Prototype.at(flat, h);
        BurnResult.Pool b = Prototype.at(solid, h);
        System.err.printf(
            "%s %s mm, %s h: radius %.2f and %.2f mm, wall rise %.2f and %.2f K%n",
            sharp ? "sharp" : "plain",
            grid,
            h,
            a.equivalentRadiusMm(),
            b.equivalentRadiusMm(),
            a.wallC() - 21,
            b.wallC() - 21);
        assertThat(b.equivalentRadiusMm()).isCloseTo(a.equivalentRadiusMm(), withPercentage(2));
        assertThat(b.wallC() - 21).isCloseTo(a.wallC() - 21, withPercentage(2));
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
