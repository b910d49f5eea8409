package pourwright.burn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.heat.Stepper.Precision;
import pourwright.shape.Circle;
import pourwright.shape.Ellipse;
import pourwright.shape.Outline;
import pourwright.shape.RegularPolygon;
import pourwright.shape.Solid;

/** Heat and wax are neither made nor lost; symmetry and the two solvers agree. */
class BalanceTest {

  private static void isBalanced(BurnResult result) {
    BurnResult.Balance b = result.balance();
    double error = (b.heatInJ() - b.lostJ() - b.carriedJ() - b.storedJ()) / b.heatInJ();
    assertThat(b.heatInJ()).isPositive();
    assertThat(Math.abs(error)).isLessThan(1e-6);
    assertThat(b.energyErrorFraction()).isEqualTo(error);
    assertThat(Math.abs(b.massErrorFraction())).isLessThan(1e-9);
  }

  @ParameterizedTest
  @CsvSource({"AXISYMMETRIC, true", "AXISYMMETRIC, false", "THREE_D, true", "THREE_D, false"})
  void aFourHourBurnClosesItsBalances(Burn.Solver solver, boolean wholeRows) {
    Prototype p = new Prototype();
    p.solver = solver;
    p.wholeRows = wholeRows;
    p.grid = solver == Burn.Solver.THREE_D ? 5 : 2.5;
    BurnResult result = p.run();
    isBalanced(result);
    double wax = Math.PI * .0375 * .0375 * .065 * 850e3;
    assertThat(result.remainingWaxG()).isCloseTo(wax - 4 * 5.76, within(1e-6));
  }

  private static Burn burn(Outline bottom, Outline top, double grid, BurningWick... wicks) {
    Prototype p = new Prototype();
    p.solver = Burn.Solver.THREE_D;
    p.grid = grid;
    p.hours = 1;
    p.wholeRows = false;
    Burn round = p.burn();
    Vessel vessel =
        new Vessel(new Solid(bottom, top, 60), 45, 7.5, 10, new Vessel.Stuff(1, 2000, 1000, .9));
    return new Burn(
        vessel,
        round.wax(),
        50,
        1.5,
        List.of(wicks),
        round.flame(),
        round.room(),
        round.fineness());
  }

  @Test
  void aTaperedCavityClosesItsBalancesWhileTheWaxSinksThroughRows() {
    Circle bottom = new Circle(50);
    Circle top = new Circle(75);
    Burn burn = burn(bottom, top, 2.5, new BurningWick(0, 0, 8));
    isBalanced(Simulation.run(burn));
    Burn oval = burn(new Ellipse(60, 50), new Ellipse(90, 60), 5, new BurningWick(0, 0, 16));
    isBalanced(Simulation.run(oval));
  }

  @Test
  void twoWicksOnXAreTheSameTwoOnY() {
    Circle round = new Circle(90);
    BurnResult x =
        Simulation.run(
            burn(round, round, 5, new BurningWick(20, 0, 4), new BurningWick(-20, 0, 4)));
    BurnResult y =
        Simulation.run(
            burn(round, round, 5, new BurningWick(0, 20, 4), new BurningWick(0, -20, 4)));
    assertThat(y.wallMaxC()).isCloseTo(x.wallMaxC(), within(1e-3));
    for (int i = 0; i < x.pool().size(); i++) {
      BurnResult.Pool a = x.pool().get(i);
      BurnResult.Pool b = y.pool().get(i);
      assertThat(b.equivalentRadiusMm()).isCloseTo(a.equivalentRadiusMm(), within(1e-3));
      assertThat(b.lengthMm()).isCloseTo(a.lengthMm(), within(1e-3));
      assertThat(b.widthMm()).isCloseTo(a.widthMm(), within(1e-3));
      assertThat(b.depthMm()).isCloseTo(a.depthMm(), within(1e-3));
    }
  }

  @Test
  void aSquareVesselIsItsQuarter() {
    Outline square = new RegularPolygon(4, 70, 0);
    Burn quarter = burn(square, square, 5, new BurningWick(0, 0, 6));
    Burn whole =
        new Burn(
            quarter.vessel(),
            quarter.wax(),
            50,
            1.5,
            quarter.wicks(),
            quarter.flame(),
            quarter.room(),
            quarter.fineness().withSymmetry(false));
    BurnResult a = Simulation.run(quarter);
    BurnResult b = Simulation.run(whole);
    assertThat(a.effort().symmetry()).isEqualTo(4);
    assertThat(b.effort().symmetry()).isEqualTo(1);
    assertThat(a.wallMaxC()).isCloseTo(b.wallMaxC(), within(1e-3));
    BurnResult.Pool last = a.pool().get(a.pool().size() - 1);
    BurnResult.Pool same = b.pool().get(b.pool().size() - 1);
    assertThat(last.equivalentRadiusMm()).isCloseTo(same.equivalentRadiusMm(), within(1e-3));
    assertThat(last.liquidG()).isCloseTo(same.liquidG(), within(1e-3));
    assertThat(a.balance().heatInJ()).isCloseTo(b.balance().heatInJ(), withPercentage(1e-4));
  }

  @Test
  void theSolversForTwoAndThreeDimensionsAgreeOnARoundVessel() {
    Prototype flat = new Prototype();
    flat.hours = 2;
    Prototype solid = new Prototype();
    solid.hours = 2;
    solid.solver = Burn.Solver.THREE_D;
    BurnResult a = flat.run();
    BurnResult b = solid.run();
    assertThat(Prototype.at(b, 2).equivalentRadiusMm())
        .isCloseTo(Prototype.at(a, 2).equivalentRadiusMm(), withPercentage(4));
    assertThat(b.wallMaxC() - 21).isCloseTo(a.wallMaxC() - 21, withPercentage(4));
  }

  @Test
  void singlePrecisionTellsTheSameAsDouble() {
    Prototype p = new Prototype();
    p.solver = Burn.Solver.THREE_D;
    p.grid = 5;
    p.hours = 1;
    Burn single = p.burn();
    Burn twice =
        new Burn(
            single.vessel(),
            single.wax(),
            50,
            1.5,
            single.wicks(),
            single.flame(),
            single.room(),
            single.fineness().withPrecision(Precision.DOUBLE).withThreads(2));
    BurnResult a = Simulation.run(single);
    BurnResult b = Simulation.run(twice);
    assertThat(a.wallMaxC()).isCloseTo(b.wallMaxC(), within(1e-3));
    assertThat(Prototype.at(a, 1).equivalentRadiusMm())
        .isCloseTo(Prototype.at(b, 1).equivalentRadiusMm(), within(1e-2));
  }

  @Test
  void aWatcherMayStopARun() {
    Prototype p = new Prototype();
    BurnResult result = Simulation.run(p.burn(), (share, frame) -> share < .3);
    assertThat(result.pool()).hasSize(8);
    isBalanced(result);
  }
}
