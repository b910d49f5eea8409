package pourwright.wick;

import java.util.List;

/**
 * Moves wicks so that the farthest place comes nearer while clearances are kept: a sequence of
 * small linear programs in a box (a trust region) that shrinks when a step does not help.
 *
 * <p>Source of the method: sequential linear programming for minimax problems, Madsen and Schjær-
 * Jacobsen, Mathematical Programming 14 (1978) 208-223.
 */
final class Descent {
  /** What a unit of broken clearance weighs against a unit of radius. */
  private static final double PENALTY = 20;

  private final Field field;
  private final Cover cover;
  private final double wall;
  private final double spacing;

  /** Where a search stands: freedoms, radius, and how far the worst clearance is broken. */
  record Stand(
      Moves moves, double[] z, List<Cover.Far> places, double radius, double broken, double box) {
    double merit() {
      return radius + PENALTY * broken;
    }

    double[] centres() {
      return moves.centres(z);
    }
  }

  Descent(Field field, Cover cover, double wall, double spacing) {
    this.field = field;
    this.cover = cover;
    this.wall = wall;
    this.spacing = spacing;
  }

  Stand stand(Moves moves, double[] z, double box) {
    double[] centres = moves.centres(z);
    cover.place(centres);
    List<Cover.Far> places = cover.farPlaces();
    double radius = places.stream().mapToDouble(Cover.Far::distance).max().orElse(0);
    return new Stand(moves, z, places, radius, broken(centres), box);
  }

  /** How far the worst clearance is broken, 0 when all are kept. */
  double broken(double[] centres) {
    double worst = 0;
    for (int i = 0; i < centres.length; i += 2) {
      worst = Math.max(worst, field.shortOf(wall, centres[i], centres[i + 1]));
      for (int j = 0; j < i; j += 2) {
        double apart = Field.way(centres[i] - centres[j], centres[i + 1] - centres[j + 1]);
        worst = Math.max(worst, spacing - apart);
      }
    }
    return worst;
  }

  /** Up to so many steps from a stand. */
  Stand descend(Stand from, int steps) {
    Stand now = from;
    for (int k = 0; k < steps && now.box() > 2e-5; k++) {
      double[] step = step(now);
      if (step.length == 0) {
        return now;
      }
      double[] z = now.z().clone();
      double length = 0;
      for (int j = 0; j < z.length; j++) {
        z[j] += step[j];
        length = Math.max(length, Math.abs(step[j]));
      }
      Stand next = stand(now.moves(), z, now.box());
      boolean better = next.merit() < now.merit() - 1e-10;
      double box = better ? Math.min(0.3, 1.5 * now.box()) : Math.min(now.box(), length) / 3;
      Stand base = better ? next : now;
      now = new Stand(base.moves(), base.z(), base.places(), base.radius(), base.broken(), box);
    }
    return now;
  }

  private double[] step(Stand now) {
    double[] centres = now.centres();
    Minimax program = new Minimax(now.moves().freedoms(), PENALTY);
    for (Cover.Far far : now.places()) {
      if (far.distance() > now.radius() - 3 * now.box()) {
        program.place(far.distance(), now.moves().pulled(far.slopes()));
      }
    }
    addWalls(now, centres, program);
    addSpacings(now, centres, program);
    return program.best(now.box());
  }

  private void addWalls(Stand now, double[] centres, Minimax program) {
    for (int i = 0; i < centres.length; i += 2) {
      for (Field.Wall w : field.walls(centres[i], centres[i + 1], wall + 2 * now.box())) {
        double[] slopes = new double[centres.length];
        slopes[i] = -w.awayX();
        slopes[i + 1] = -w.awayY();
        program.clearance(wall - w.distance(), now.moves().pulled(slopes));
      }
    }
  }

  private void addSpacings(Stand now, double[] centres, Minimax program) {
    for (int i = 0; i < centres.length && spacing > 0; i += 2) {
      for (int j = 0; j < i; j += 2) {
        double dx = centres[i] - centres[j];
        double dy = centres[i + 1] - centres[j + 1];
        double d = Field.way(dx, dy);
        if (d < spacing + 4 * now.box()) {
          double ux = d < 1e-9 ? 1 : dx / d;
          double uy = d < 1e-9 ? 0 : dy / d;
          double[] slopes = new double[centres.length];
          slopes[i] = -ux;
          slopes[i + 1] = -uy;
          slopes[j] = ux;
          slopes[j + 1] = uy;
          program.clearance(spacing - d, now.moves().pulled(slopes));
        }
      }
    }
  }
}
