package pourwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Path2D;
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

    /** Distance to the edge along a ray, by halving. */
    default double ray(double angle) {
      double low = 0;
      double high = reach();
      for (int i = 0; i < 40; i++) {
        double middle = (low + high) / 2;
        if (holds(middle * Math.cos(angle), middle * Math.sin(angle))) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return low;
    }
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

  /** Crests on an outline that is known, flutes between them. */
  private record Ribs(Outline outline, Known smooth, int ribs, double depth) implements Known {
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
  private record Drawn(Outline outline, Path2D path, Point centroid) implements Known {
    @Override
    public boolean holds(double px, double py) {
      return path.contains(px + centroid.xMm(), -(py + centroid.yMm()));
    }

    @Override
    public double reach() {
      return 200;
    }
  }

  private static Known ribbed(SplittableRandom r) {
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

  private static Known drawn(SplittableRandom r) {
    Blob blob = Blob.random(r);
    Traced outline = DrawnPath.read(blob.d(), 1).outline();
    return new Drawn(outline, blob.path(), outline.centroid());
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
    int kind = r.nextInt(8);
    if (kind == 6) {
      return ribbed(r);
    }
    if (kind == 7) {
      return drawn(r);
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
    if (known instanceof Drawn) {
      return;
    }
    assertThat(traced.getCentroid().getX()).isCloseTo(0, within(0.05));
    assertThat(traced.getCentroid().getY()).isCloseTo(0, within(0.05));
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
    return (1 - s) * bottom.ray(angle) + s * top.ray(angle);
  }

  private static double[] eccentric(Oval b, Oval t, double angle, double s) {
    double x1 = b.a * Math.pow(Math.cos(angle), 2 / b.n);
    double y1 = b.b * Math.pow(Math.sin(angle), 2 / b.n);
    double x2 = t.a * Math.pow(Math.cos(angle), 2 / t.n);
    double y2 = t.b * Math.pow(Math.sin(angle), 2 / t.n);
    return new double[] {(1 - s) * x1 + s * x2, (1 - s) * y1 + s * y2};
  }

  /**
   * A body twisted and of a free profile: size and turn of the section at a share of the height,
   * told anew here.
   */
  private record Formed(Known section, double[] at, double[] scale, double twist) {
    static Formed random(SplittableRandom r) {
      int levels = r.nextInt(2, 7);
      double[] at = new double[levels];
      double[] scale = new double[levels];
      for (int i = 0; i < levels; i++) {
        at[i] = i == 0 ? 0 : at[i - 1] + r.nextDouble(5, 40);
        scale[i] = r.nextDouble(0.4, 1.6);
      }
      return new Formed(RandomShapesTest.random(r), at, scale, r.nextDouble(-360, 360));
    }

    double height() {
      return at[at.length - 1];
    }

    double scaleAt(double z) {
      int i = 1;
      while (i < at.length - 1 && z > at[i]) {
        i++;
      }
      double s = (z - at[i - 1]) / (at[i] - at[i - 1]);
      return scale[i - 1] + s * (scale[i] - scale[i - 1]);
    }

    boolean holds(double x, double y, double z) {
      double turn = -Math.toRadians(twist) * z / height();
      double k = scaleAt(z);
      double u = (x * Math.cos(turn) - y * Math.sin(turn)) / k;
      double v = (x * Math.sin(turn) + y * Math.cos(turn)) / k;
      return section.holds(u, v);
    }

    Solid solid() {
      List<Solid.Level> levels = new ArrayList<>();
      for (int i = 0; i < at.length; i++) {
        levels.add(new Solid.Level(at[i], scale[i]));
      }
      return Solid.ofProfile(section.outline(), levels).twisted(twist);
    }
  }

  /** Points thrown into a box round the body: volume and inside, five standard errors. */
  @Test
  void theVolumesOfRandomTwistedProfilesAgreeWithThrownPoints() {
    int thrown = 4000;
    List<String> wrong = new ArrayList<>();
    for (int seed = 0; seed < 120; seed++) {
      SplittableRandom r = new SplittableRandom(7_000 + seed);
      Formed formed = Formed.random(r);
      Solid solid = formed.solid();
      double half = 130;
      int hits = 0;
      int unlike = 0;
      for (int i = 0; i < thrown; i++) {
        double x = r.nextDouble(-half, half);
        double y = r.nextDouble(-half, half);
        double z = r.nextDouble(formed.height());
        boolean in = formed.holds(x, y, z);
        hits += in ? 1 : 0;
        unlike += i < 400 && in != solid.contains(x, y, z) ? 1 : 0;
      }
      double share = (double) hits / thrown;
      double box = 4 * half * half * formed.height() / 1000;
      double error = Math.sqrt(share * (1 - share) / thrown) * box;
      if (Math.abs(solid.volumeMl() - share * box) > 5 * error || unlike > 1) {
        wrong.add(seed + ": " + solid + ", " + share * box + " ± " + error + ", " + unlike);
      }
    }
    assertThat(wrong).isEmpty();
  }

  /** The wall of a twisted profile as a fine mesh of triangles. */
  @Property(tries = 6)
  void theWallOfATwistedProfileAgreesWithAMeshOfTriangles(@ForAll @LongRange(min = 0) long seed) {
    Formed formed = Formed.random(new SplittableRandom(seed));
    // The mesh stands upright and does not turn with the body: triangles sheared by the twist
    // overstate a curved wall however small they are (Schwarz 1890, the lantern).
    int around = 1440;
    double area = 0;
    for (int tier = 1; tier < formed.at().length; tier++) {
      double low = formed.at()[tier - 1];
      double high = formed.at()[tier] - low;
      // a row turns by half a degree at most, so that it meets every flute
      int up = 60 + (int) Math.abs(2 * formed.twist() * high / formed.height());
      double[][] below = ring(formed, around, low);
      for (int j = 0; j < up; j++) {
        double[][] above = ring(formed, around, low + high * (j + 1) / up);
        for (int i = 0; i < around; i++) {
          area += triangle(below[i], below[i + 1], above[i]);
          area += triangle(below[i + 1], above[i + 1], above[i]);
        }
        below = above;
      }
    }
    assertThat(formed.solid().sideAreaMm2())
        .as(formed.solid().toString())
        .isCloseTo(area, within(0.005 * area));
  }

  /** The wall at a height, point by point round the axis; the last point is the first again. */
  private static double[][] ring(Formed formed, int around, double z) {
    double turn = Math.toRadians(formed.twist()) * z / formed.height();
    double[][] points = new double[around + 1][];
    for (int i = 0; i <= around; i++) {
      double angle = 2 * Math.PI * i / around;
      double radius = formed.section().ray(angle - turn) * formed.scaleAt(z);
      points[i] = new double[] {radius * Math.cos(angle), radius * Math.sin(angle), z};
    }
    return points;
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
    int around = bottom instanceof Ribs || top instanceof Ribs ? 1440 : 480;
    int up = 8;
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
