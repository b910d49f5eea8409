package pourwright.shape;

import java.util.List;

/** A straight or round part of an outline, run counterclockwise about the inside. */
sealed interface Piece {

  Point start();

  Point end();

  double lengthMm();

  /** Twice the signed area between the piece and the origin. */
  double twiceAreaMm2();

  /** Distance from the origin in a direction that meets the piece. */
  double radiusMm(double angle);

  double radiusSlopeMm(double angle);

  double distanceMm(Point from);

  /** Adds the start and what is needed to keep chords within the tolerance, but not the end. */
  void addPoints(double toleranceMm, List<Point> into);

  record Line(Point start, Point end) implements Piece {
    @Override
    public double lengthMm() {
      return end.minus(start).length();
    }

    @Override
    public double twiceAreaMm2() {
      return start.cross(end);
    }

    @Override
    public double radiusMm(double angle) {
      Point run = end.minus(start);
      return start.cross(run) / Point.polar(1, angle).cross(run);
    }

    @Override
    public double radiusSlopeMm(double angle) {
      Point run = end.minus(start);
      double across = Point.polar(1, angle).cross(run);
      double turned = new Point(-Math.sin(angle), Math.cos(angle)).cross(run);
      return -start.cross(run) * turned / (across * across);
    }

    @Override
    public double distanceMm(Point from) {
      Point run = end.minus(start);
      double s = from.minus(start).dot(run) / run.dot(run);
      return from.minus(start.towards(end, Math.max(0, Math.min(1, s)))).length();
    }

    @Override
    public void addPoints(double toleranceMm, List<Point> into) {
      into.add(start);
    }
  }

  /** An arc of less than a whole turn, from one angle counterclockwise to a larger one. */
  record Arc(Point centre, double arcRadiusMm, double from, double to) implements Piece {
    @Override
    public Point start() {
      return centre.plus(Point.polar(arcRadiusMm, from));
    }

    @Override
    public Point end() {
      return centre.plus(Point.polar(arcRadiusMm, to));
    }

    @Override
    public double lengthMm() {
      return arcRadiusMm * (to - from);
    }

    @Override
    public double twiceAreaMm2() {
      return centre.cross(end().minus(start())) + arcRadiusMm * arcRadiusMm * (to - from);
    }

    @Override
    public double radiusMm(double angle) {
      Point ray = Point.polar(1, angle);
      double across = ray.cross(centre);
      return ray.dot(centre) + Math.sqrt(Math.max(0, arcRadiusMm * arcRadiusMm - across * across));
    }

    @Override
    public double radiusSlopeMm(double angle) {
      Point ray = Point.polar(1, angle);
      double along = ray.dot(centre);
      double across = ray.cross(centre);
      double root = Math.sqrt(Math.max(1e-300, arcRadiusMm * arcRadiusMm - across * across));
      return across + across * along / root;
    }

    @Override
    public double distanceMm(Point from) {
      Point out = from.minus(centre);
      double turned = Math.IEEEremainder(out.angle() - (from() + to) / 2, 2 * Math.PI);
      if (Math.abs(turned) <= (to - from()) / 2) {
        return Math.abs(out.length() - arcRadiusMm);
      }
      return Math.min(from.minus(start()).length(), from.minus(end()).length());
    }

    @Override
    public void addPoints(double toleranceMm, List<Point> into) {
      double bow = Math.min(1, toleranceMm / arcRadiusMm);
      double stepMax = Math.min(Math.PI / 8, 2 * Math.acos(1 - bow));
      int steps = (int) Math.max(1, Math.ceil((to - from) / Math.max(1e-4, stepMax)));
      for (int i = 0; i < steps; i++) {
        into.add(centre.plus(Point.polar(arcRadiusMm, from + (to - from) * i / steps)));
      }
    }
  }
}
