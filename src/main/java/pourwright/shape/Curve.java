package pourwright.shape;

import java.util.List;

/** A part of a drawn outline, from t = 0 to 1. */
sealed interface Curve {

  Point at(double t);

  /** Derivative by t. */
  Point speed(double t);

  /** Twice the signed area between the curve and the origin. */
  double twiceAreaMm2();

  default double lengthMm() {
    return Quadrature.over(t -> speed(t).length(), new double[] {0, 0.25, 0.5, 0.75, 1});
  }

  /** Adds points after the start, the end included, with chords within the tolerance. */
  default void addPoints(double toleranceMm, List<Point> into) {
    addBetween(0, 1, toleranceMm, 0, into);
  }

  private void addBetween(double from, double to, double toleranceMm, int depth, List<Point> into) {
    double middle = (from + to) / 2;
    Point a = at(from);
    Point b = at(to);
    if (depth > 12 || (depth > 1 && isFlat(a, b, from, to, toleranceMm))) {
      into.add(b);
      return;
    }
    addBetween(from, middle, toleranceMm, depth + 1, into);
    addBetween(middle, to, toleranceMm, depth + 1, into);
  }

  private boolean isFlat(Point a, Point b, double from, double to, double toleranceMm) {
    Piece.Line chord = new Piece.Line(a, b);
    for (int i = 1; i < 4; i++) {
      Point p = at(from + (to - from) * i / 4);
      double off = a.equals(b) ? p.minus(a).length() : chord.distanceMm(p);
      if (off > toleranceMm) {
        return false;
      }
    }
    return true;
  }

  /** A straight part. */
  record Straight(Point start, Point end) implements Curve {
    @Override
    public Point at(double t) {
      return t == 1 ? end : start.towards(end, t);
    }

    @Override
    public Point speed(double t) {
      return end.minus(start);
    }

    @Override
    public double twiceAreaMm2() {
      return start.cross(end);
    }

    @Override
    public void addPoints(double toleranceMm, List<Point> into) {
      into.add(end);
    }
  }

  /** A cubic curve of Bézier; a quadratic one is raised to it, which changes nothing. */
  record Cubic(Point start, Point first, Point second, Point end) implements Curve {
    static Cubic ofQuadratic(Point start, Point control, Point end) {
      return new Cubic(start, start.towards(control, 2 / 3.0), end.towards(control, 2 / 3.0), end);
    }

    @Override
    public Point at(double t) {
      if (t == 1) {
        return end;
      }
      Point a = start.towards(first, t);
      Point b = first.towards(second, t);
      Point c = second.towards(end, t);
      return a.towards(b, t).towards(b.towards(c, t), t);
    }

    @Override
    public Point speed(double t) {
      Point a = first.minus(start);
      Point b = second.minus(first);
      Point c = end.minus(second);
      return a.towards(b, t).towards(b.towards(c, t), t).times(3);
    }

    /** ∫ p×p′ of two cubics, by Green's theorem, term by term. */
    @Override
    public double twiceAreaMm2() {
      return 0.6 * start.cross(first)
          + 0.3 * start.cross(second)
          + 0.1 * start.cross(end)
          + 0.3 * first.cross(second)
          + 0.3 * first.cross(end)
          + 0.6 * second.cross(end);
    }
  }

  /**
   * An arc of an ellipse.
   *
   * @param centre of the ellipse
   * @param along half axis as an arrow
   * @param across the other half axis as an arrow
   * @param from eccentric angle of the start
   * @param swept eccentric angle to the end, signed
   */
  record Arc(Point centre, Point along, Point across, double from, double swept) implements Curve {
    @Override
    public Point at(double t) {
      double angle = from + t * swept;
      return centre.plus(along.times(Math.cos(angle))).plus(across.times(Math.sin(angle)));
    }

    @Override
    public Point speed(double t) {
      double angle = from + t * swept;
      return along.times(-swept * Math.sin(angle)).plus(across.times(swept * Math.cos(angle)));
    }

    @Override
    public double twiceAreaMm2() {
      return centre.cross(at(1).minus(at(0))) + along.cross(across) * swept;
    }
  }
}
