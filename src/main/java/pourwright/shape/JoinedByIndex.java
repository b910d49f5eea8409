package pourwright.shape;

import java.util.ArrayList;
import java.util.List;
import pourwright.quantity.OutOfRange;

/** Two traced outlines of equally many points, joined corner to corner, where they were drawn. */
final class JoinedByIndex implements Joined {
  private final List<Point> below;
  private final List<Point> above;
  private final Traced top;

  JoinedByIndex(Traced bottom, Traced top) {
    if (bottom.givenClockwise() != top.givenClockwise()) {
      throw new OutOfRange(
          "points_mm",
          "the bottom and the top are traced opposite ways round",
          "give both in the same direction, starting at the same corner");
    }
    Point shift = top.centroid().minus(bottom.centroid());
    this.top = top;
    below = bottom.corners();
    above = top.corners().stream().map(p -> p.plus(shift)).toList();
  }

  @Override
  public double mixedMm2() {
    double sum = 0;
    for (int i = 0; i < below.size(); i++) {
      int j = (i + 1) % below.size();
      sum += below.get(i).cross(above.get(j)) + above.get(i).cross(below.get(j));
    }
    return sum / 4;
  }

  @Override
  public double sideMm2(double heightMm, double turn, double s) {
    double sum = 0;
    for (int i = 0; i < below.size(); i++) {
      int j = (i + 1) % below.size();
      Point b = below.get(i);
      Point t = b.towards(above.get(i), s);
      Point alongB = below.get(j).minus(b);
      Point alongT = below.get(j).towards(above.get(j), s).minus(t);
      sum +=
          Quadrature.integrate(
              u ->
                  Ruled.strip(
                      b.plus(alongB.times(u)),
                      t.plus(alongT.times(u)),
                      alongB,
                      alongT,
                      s * heightMm,
                      s * turn),
              0,
              1);
    }
    return sum;
  }

  @Override
  public List<Point> section(double s, double toleranceMm) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < below.size(); i++) {
      points.add(below.get(i).towards(above.get(i), s));
    }
    return points;
  }

  @Override
  public double radiusMm(double angle, double s) {
    return Walls.through(section(s, 0)).radiusMm(angle);
  }

  @Override
  public boolean contains(double xMm, double yMm, double s) {
    return Walls.through(section(s, 0)).surrounds(new Point(xMm, yMm));
  }

  @Override
  public Outline outlineAt(double s) {
    return s == 1 ? top : Traced.through(section(s, 0));
  }
}
