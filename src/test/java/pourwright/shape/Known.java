package pourwright.shape;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * An outline in the words of the contract, with its own test of what is inside, told from the
 * definition and not from the code under test.
 */
interface Known {

  Outline outline();

  boolean holds(double x, double y);

  double reach();

  /** Where it has sharp corners, as angles about the centroid, rising; none that matter else. */
  default double[] corners() {
    return new double[] {0};
  }

  /** Distance to the edge along a ray, by halving. */
  default double ray(double angle) {
    double low = 0;
    double high = reach();
    for (int i = 0; i < 28; i++) {
      double middle = (low + high) / 2;
      if (holds(middle * Math.cos(angle), middle * Math.sin(angle))) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  record Oval(Outline outline, double a, double b, double n) implements Known {
    @Override
    public boolean holds(double x, double y) {
      return Math.pow(Math.abs(x / a), n) + Math.pow(Math.abs(y / b), n) <= 1;
    }

    @Override
    public double reach() {
      return a + b;
    }

    @Override
    public double ray(double angle) {
      double x = Math.abs(Math.cos(angle) / a);
      double y = Math.abs(Math.sin(angle) / b);
      return n == 2 ? 1 / Math.hypot(x, y) : Math.pow(Math.pow(x, n) + Math.pow(y, n), -1 / n);
    }
  }

  /** A rectangle or nothing but a line, grown by a radius. */
  record GrownBox(Outline outline, double x, double y, double grownBy) implements Known {
    @Override
    public boolean holds(double px, double py) {
      double dx = Math.max(0, Math.abs(px) - x);
      double dy = Math.max(0, Math.abs(py) - y);
      return Math.hypot(dx, dy) <= grownBy;
    }

    @Override
    public double reach() {
      return 2 * (x + y + grownBy);
    }
  }

  /** A regular polygon grown by a radius, looked at in the sector of one side. */
  record GrownPolygon(Outline outline, int sides, double apothem, double grownBy) implements Known {
    @Override
    public boolean holds(double px, double py) {
      double sector = 2 * Math.PI / sides;
      double turned = Math.IEEEremainder(Math.atan2(py, px) - sector / 2, sector);
      double along = Math.hypot(px, py) * Math.cos(turned);
      double across = Math.abs(Math.hypot(px, py) * Math.sin(turned));
      double dx = Math.max(0, along - apothem);
      double dy = Math.max(0, across - apothem * Math.tan(sector / 2));
      return Math.hypot(dx, dy) <= grownBy;
    }

    @Override
    public double reach() {
      return 3 * (apothem + grownBy);
    }
  }

  /** Crests on an outline that is known, flutes between them. */
  record Ribs(Outline outline, Known smooth, int ribs, double depth) implements Known {
    @Override
    public boolean holds(double px, double py) {
      double angle = Math.atan2(py, px);
      return Math.hypot(px, py) <= ray(angle);
    }

    @Override
    public double reach() {
      return smooth.reach();
    }

    @Override
    public double ray(double angle) {
      return smooth.ray(angle) - depth / 2 * (1 - Math.cos(ribs * angle));
    }
  }

  /** A smooth outline drawn as a path; inside by the platform's own path. */
  record Drawn(Outline outline, Path2D path, Point centroid) implements Known {
    @Override
    public boolean holds(double px, double py) {
      return path.contains(px + centroid.xMm(), -(py + centroid.yMm()));
    }

    @Override
    public double reach() {
      return 200;
    }
  }

  static Known ribbed(SplittableRandom r) {
    double length = r.nextDouble(60, 140);
    double width = r.nextDouble(45, length);
    double depth = r.nextDouble(0.5, 8);
    int ribs = 2 * r.nextInt(2, 20);
    if (r.nextBoolean()) {
      Known round = new Oval(new Circle(length), length / 2, length / 2, 2);
      int any = r.nextInt(3, 40);
      return new Ribs(new Ribbed(round.outline(), any, depth), round, any, depth);
    }
    Known oval = new Oval(new Ellipse(length, width), length / 2, width / 2, 2);
    return new Ribs(new Ribbed(oval.outline(), ribs, depth), oval, ribs, depth);
  }

  static Known drawn(SplittableRandom r) {
    Blob blob = Blob.random(r);
    Traced outline = DrawnPath.read(blob.d(), 1).outline();
    return new Drawn(outline, blob.path(), outline.centroid());
  }

  /** Traced by points, which were drawn about an origin beside the centroid. */
  record Points(Traced outline, List<Point> drawn, Path2D path) implements Known {
    /** Corners in their own sectors, so that a ray from the origin meets the outline once. */
    static Points random(SplittableRandom r) {
      while (true) {
        Points points = of(r, r.nextInt(5, 12));
        if (points.outline.isStar()) {
          return points;
        }
      }
    }

    static Points of(SplittableRandom r, int n) {
      List<Point> drawn = new ArrayList<>();
      Path2D path = new Path2D.Double();
      for (int i = 0; i < n; i++) {
        double angle = 2 * Math.PI / n * (i + r.nextDouble(-0.3, 0.3));
        Point p = Point.polar(r.nextDouble(25, 60), angle);
        drawn.add(p);
        if (i == 0) {
          path.moveTo(p.xMm(), p.yMm());
        } else {
          path.lineTo(p.xMm(), p.yMm());
        }
      }
      path.closePath();
      return new Points(Traced.through(drawn), drawn, path);
    }

    @Override
    public boolean holds(double x, double y) {
      Point c = outline.centroid();
      return path.contains(x + c.xMm(), y + c.yMm());
    }

    @Override
    public double reach() {
      return 130;
    }

    @Override
    public double ray(double angle) {
      Point ray = Point.polar(1, angle);
      int n = drawn.size();
      for (int i = 0; i < n; i++) {
        Point a = drawn.get(i).minus(outline.centroid());
        Point b = drawn.get((i + 1) % n).minus(outline.centroid());
        if (a.cross(ray) >= 0 && ray.cross(b) >= 0 && ray.dot(a.plus(b)) > 0) {
          return a.cross(b) / ray.cross(b.minus(a));
        }
      }
      return Known.super.ray(angle);
    }

    @Override
    public double[] corners() {
      return drawn.stream()
          .mapToDouble(p -> p.minus(outline.centroid()).angle())
          .sorted()
          .toArray();
    }

    /** Distance from the drawn origin to the wall between these corners and those of a rim. */
    static double radius(Points below, Points above, double angle, double s) {
      int n = below.drawn.size();
      for (int i = 0; i < n; i++) {
        Point a = below.drawn.get(i).towards(above.drawn.get(i), s);
        Point b = below.drawn.get((i + 1) % n).towards(above.drawn.get((i + 1) % n), s);
        Point ray = Point.polar(1, angle);
        if (a.cross(ray) >= 0 && ray.cross(b) >= 0 && ray.dot(a.plus(b)) > 0) {
          return a.cross(b) / ray.cross(b.minus(a));
        }
      }
      throw new IllegalStateException("no wall at " + angle);
    }
  }

  static Known random(SplittableRandom r) {
    double length = r.nextDouble(40, 140);
    double width = r.nextDouble(30, length);
    int kind = r.nextInt(9);
    if (kind == 6) {
      return ribbed(r);
    }
    if (kind == 7) {
      return drawn(r);
    }
    if (kind == 8) {
      return Points.random(r);
    }
    if (kind == 0) {
      return new Oval(new Circle(length), length / 2, length / 2, 2);
    }
    if (kind == 1) {
      return new Oval(new Ellipse(length, width), length / 2, width / 2, 2);
    }
    if (kind == 2) {
      double n = r.nextDouble(1.2, 8);
      return new Oval(new Superellipse(length, width, n), length / 2, width / 2, n);
    }
    if (kind == 3) {
      double corner = r.nextDouble(0.5, width / 2 - 0.5);
      Outline outline = new RoundedRectangle(length, width, corner);
      return new GrownBox(outline, length / 2 - corner, width / 2 - corner, corner);
    }
    if (kind == 4) {
      double reach = Math.max(0.5, (length - width) / 2);
      return new GrownBox(new Stadium(2 * reach + width, width), reach, 0, width / 2);
    }
    int sides = r.nextInt(3, 13);
    double corner = r.nextDouble(0, width / 4);
    Outline outline = new RegularPolygon(sides, width, corner);
    return new GrownPolygon(outline, sides, width / 2 - corner, corner);
  }

  /** Section radius of the ruled body by its definition. */
  static double radius(Known bottom, Known top, double angle, double s) {
    if (bottom instanceof Oval b && top instanceof Oval t) {
      double turned = Math.abs(Math.IEEEremainder(angle, Math.PI));
      double low = 0;
      double high = Math.PI / 2;
      for (int i = 0; i < 40; i++) {
        double middle = (low + high) / 2;
        double[] at = eccentric(b, t, middle, s);
        if (Math.atan2(at[1], at[0]) < turned) {
          low = middle;
        } else {
          high = middle;
        }
      }
      double[] at = eccentric(b, t, low, s);
      return Math.hypot(at[0], at[1]);
    }
    return (1 - s) * bottom.ray(angle) + s * top.ray(angle);
  }

  static double[] eccentric(Oval b, Oval t, double angle, double s) {
    double x1 = b.a * Math.pow(Math.cos(angle), 2 / b.n);
    double y1 = b.b * Math.pow(Math.sin(angle), 2 / b.n);
    double x2 = t.a * Math.pow(Math.cos(angle), 2 / t.n);
    double y2 = t.b * Math.pow(Math.sin(angle), 2 / t.n);
    return new double[] {(1 - s) * x1 + s * x2, (1 - s) * y1 + s * y2};
  }
}
