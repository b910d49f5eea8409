package pourwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * Areas, perimeters and volumes against an independent reference: polygons of a general-purpose
 * geometry library for outlines, and a Monte Carlo integral of the ruled body, whose sections are
 * told anew here from the definition and not from the code under test.
 */
class RandomShapesTest {
  private static final GeometryFactory JTS = new GeometryFactory();
  private static final int SAMPLES = 300;

  /** An outline in the words of the contract, with its own test of what is inside. */
  private interface Known {
    Outline outline();

    boolean holds(double x, double y);

    double reach();
  }

  private record Oval(Outline outline, double a, double b, double n) implements Known {
    @Override
    public boolean holds(double x, double y) {
      return Math.pow(Math.abs(x / a), n) + Math.pow(Math.abs(y / b), n) <= 1;
    }

    @Override
    public double reach() {
      return a + b;
    }
  }

  /** A rectangle or nothing but a line, grown by a radius. */
  private record GrownBox(Outline outline, double x, double y, double grownBy) implements Known {
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
  private record GrownPolygon(Outline outline, int sides, double apothem, double grownBy)
      implements Known {
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

  private static Polygon ring(List<Coordinate> corners) {
    List<Coordinate> closed = new ArrayList<>(corners);
    closed.add(corners.get(0));
    return JTS.createPolygon(closed.toArray(new Coordinate[0]));
  }

  private static Polygon grown(Polygon core, double radius) {
    if (radius <= 0) {
      return core;
    }
    BufferParameters fine = new BufferParameters(256);
    return (Polygon) new BufferOp(core, fine).getResultGeometry(radius);
  }

  private static Polygon box(double x, double y) {
    return ring(
        List.of(
            new Coordinate(-x, -y),
            new Coordinate(x, -y),
            new Coordinate(x, y),
            new Coordinate(-x, y)));
  }

  private static Known random(SplittableRandom r) {
    double length = r.nextDouble(40, 140);
    double width = r.nextDouble(30, length);
    int kind = r.nextInt(6);
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

  @Property(tries = 100)
  void areaAndPerimeterAgreeWithTheGeometryLibrary(@ForAll @LongRange(min = 0) long seed) {
    Known known = random(new SplittableRandom(seed));
    Outline outline = known.outline();
    List<Coordinate> points = new ArrayList<>();
    outline.polyline(0.0005).forEach(p -> points.add(new Coordinate(p.xMm(), p.yMm())));
    Polygon traced = ring(points);
    assertThat(traced.isValid()).isTrue();
    assertThat(outline.areaMm2()).isCloseTo(traced.getArea(), within(2e-4 * outline.areaMm2()));
    assertThat(outline.perimeterMm())
        .isCloseTo(traced.getLength(), within(2e-4 * outline.perimeterMm()));
    if (known instanceof GrownBox box && box.y() > 0) {
      Polygon grown = grown(box(box.x(), box.y()), box.grownBy());
      assertThat(outline.areaMm2()).isCloseTo(grown.getArea(), within(1e-4 * outline.areaMm2()));
      assertThat(outline.perimeterMm())
          .isCloseTo(grown.getLength(), within(1e-4 * outline.perimeterMm()));
    }
    assertThat(traced.getCentroid().getX()).isCloseTo(0, within(0.05));
    assertThat(traced.getCentroid().getY()).isCloseTo(0, within(0.05));
  }

  /** Distance to the edge along a ray, by halving. */
  private static double ray(Known known, double angle) {
    double low = 0;
    double high = known.reach();
    for (int i = 0; i < 40; i++) {
      double middle = (low + high) / 2;
      if (known.holds(middle * Math.cos(angle), middle * Math.sin(angle))) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Section radius of the ruled body by its definition. */
  private static double radius(Known bottom, Known top, double angle, double s) {
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
    return (1 - s) * ray(bottom, angle) + s * ray(top, angle);
  }

  private static double[] eccentric(Oval b, Oval t, double angle, double s) {
    double x1 = b.a * Math.pow(Math.cos(angle), 2 / b.n);
    double y1 = b.b * Math.pow(Math.sin(angle), 2 / b.n);
    double x2 = t.a * Math.pow(Math.cos(angle), 2 / t.n);
    double y2 = t.b * Math.pow(Math.sin(angle), 2 / t.n);
    return new double[] {(1 - s) * x1 + s * x2, (1 - s) * y1 + s * y2};
  }

  /** V = h·E[π·r²] over level and direction; five standard errors, a thousand bodies. */
  @Test
  void theVolumesOfAThousandRandomBodiesAgreeWithAMonteCarloIntegral() {
    List<String> wrong = new ArrayList<>();
    for (int seed = 0; seed < 1000; seed++) {
      SplittableRandom r = new SplittableRandom(seed);
      Known bottom = random(r);
      Known top = random(r);
      double height = r.nextDouble(20, 150);
      double sum = 0;
      double squares = 0;
      for (int i = 0; i < SAMPLES; i++) {
        double s = r.nextDouble();
        double angle = r.nextDouble(2 * Math.PI);
        double radius = radius(bottom, top, angle, s);
        double ml = Math.PI * radius * radius * height / 1000;
        sum += ml;
        squares += ml * ml;
      }
      int n = SAMPLES;
      double mean = sum / n;
      double error = Math.sqrt(Math.max(0, squares / n - mean * mean) / (n - 1));
      Solid solid = new Solid(bottom.outline(), top.outline(), height);
      if (Math.abs(solid.volumeMl() - mean) > 5 * error + 1e-6 * mean) {
        wrong.add(
            seed + ": " + solid + " is " + solid.volumeMl() + ", not " + mean + " ± " + error);
      }
    }
    assertThat(wrong).isEmpty();
  }

  /** The wall as a fine mesh of triangles, told from the section points. */
  @Property(tries = 12)
  void theWallAgreesWithAMeshOfTriangles(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @DoubleRange(min = 20, max = 150) double height) {
    SplittableRandom r = new SplittableRandom(seed);
    Known bottom = random(r);
    Known top = random(r);
    int around = 480;
    int up = 12;
    double area = 0;
    boolean ovals = bottom instanceof Oval && top instanceof Oval;
    double[][][] at = new double[up + 1][around][];
    for (int i = 0; i < around; i++) {
      double angle = 2 * Math.PI * i / around;
      for (int j = 0; j <= up; j++) {
        double s = (double) j / up;
        double radius = radius(bottom, top, angle, s);
        at[j][i] = new double[] {radius * Math.cos(angle), radius * Math.sin(angle), s * height};
      }
    }
    for (int j = 0; j < up; j++) {
      for (int i = 0; i < around; i++) {
        int k = (i + 1) % around;
        area += triangle(at[j][i], at[j][k], at[j + 1][i]);
        area += triangle(at[j][k], at[j + 1][k], at[j + 1][i]);
      }
    }
    Solid solid = new Solid(bottom.outline(), top.outline(), height);
    assertThat(solid.sideAreaMm2())
        .as(solid + (ovals ? " ovals" : ""))
        .isCloseTo(area, within(0.004 * area));
  }

  private static double triangle(double[] a, double[] b, double[] c) {
    double[] u = {b[0] - a[0], b[1] - a[1], b[2] - a[2]};
    double[] v = {c[0] - a[0], c[1] - a[1], c[2] - a[2]};
    double x = u[1] * v[2] - u[2] * v[1];
    double y = u[2] * v[0] - u[0] * v[2];
    double z = u[0] * v[1] - u[1] * v[0];
    return Math.sqrt(x * x + y * y + z * z) / 2;
  }
}
