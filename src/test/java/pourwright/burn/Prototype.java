package pourwright.burn;

import java.util.List;
import pourwright.heat.Melting;
import pourwright.shape.Circle;
import pourwright.shape.Solid;

/**
 * The candle of the regression set in the handbook of burning, section 7.6: an implementation check
 * against another program's figures, not a validation. Fields are changed case by case.
 */
final class Prototype {
  double radius = 37.5;
  double wall = 7.5;
  double base = 10;
  double k = 1;
  double rho = 2000;
  double c = 1000;
  Melting wax = new Melting(50, 58, 190e3, 2200, 2300, .24, .15, 850);
  double milligramsPerS = 1.6;
  double chi = 0.2;
  double root = 4;
  double room = 21;
  double grid = 2.5;
  double hours = 4;
  boolean wholeRows = true;
  boolean sharp;
  int threads = 1;
  Burn.Solver solver = Burn.Solver.AXISYMMETRIC;

  Burn burn() {
    Vessel vessel =
        new Vessel(
            Solid.straight(new Circle(2 * radius), 90),
            65,
            wall,
            base,
            new Vessel.Stuff(k, rho, c, 0.9));
    Burn.Fineness fineness =
        Burn.Fineness.of(hours, grid, 600, solver)
            .withWholeRows(wholeRows)
            .withThreads(threads)
            .withSharp(sharp);
    return new Burn(
        vessel,
        wax,
        50,
        1.5,
        List.of(new BurningWick(0, 0, milligramsPerS * 3.6)),
        new Flame(43.8e6, chi, 0.95, 25, root, 7.5),
        new Room(room, 0.9, Room.Convection.usual()),
        fineness);
  }

  BurnResult run() {
    return Simulation.run(burn());
  }

  static BurnResult.Pool at(BurnResult result, double hours) {
    return result.pool().stream()
        .filter(p -> Math.abs(p.hours() - hours) < 1e-6)
        .findFirst()
        .orElseThrow();
  }
}
