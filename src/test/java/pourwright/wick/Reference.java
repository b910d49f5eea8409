package pourwright.wick;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import pourwright.shape.Outline;
import pourwright.shape.Point;

/**
 * An independent and slow way to cover an outline: sample points, wicks moved by chance, kept when
 * the farthest sample comes nearer. Ways round the one inner corner of an L are by closed form. The
 * wicks move freely, or under the product's own rule: as mirror images about an axis, some on it.
 */
final class Reference {
  private final Outline outline;
  private final double wall;
  private final double spacing;
  private final boolean bent;

  Reference(Outline outline, double wall, double spacing) {
    this.outline = outline;
    this.wall = wall;
    this.spacing = spacing;
    this.bent = outline == WickLayoutTest.ELL;
  }

  static double[] flat(List<Point> points) {
    double[] flat = new double[2 * points.size()];
    for (int i = 0; i < points.size(); i++) {
      flat[2 * i] = points.get(i).xMm();
      flat[2 * i + 1] = points.get(i).yMm();
    }
    return flat;
  }

  private List<double[]> samples(int fineness) {
    double size = Math.max(outline.lengthMm(), outline.widthMm());
    List<double[]> samples = new ArrayList<>();
    for (int i = -fineness; i <= fineness; i++) {
      for (int j = -fineness; j <= fineness; j++) {
        double x = size * i / fineness;
        double y = size * j / fineness;
        if (outline.contains(x, y)) {
          samples.add(new double[] {x, y});
        }
      }
    }
    List<Point> edge = outline.polyline(size * 1e-5);
    for (int i = 0; i < edge.size(); i++) {
      Point a = edge.get(i);
      Point b = edge.get((i + 1) % edge.size());
      int parts = Math.max(1, (int) Math.ceil(b.minus(a).length() / (0.4 * size / fineness)));
      for (int k = 0; k < parts; k++) {
        Point p = a.towards(b, (double) k / parts);
        samples.add(new double[] {p.xMm(), p.yMm()});
      }
    }
    return samples;
  }

  double radius(double[] centres, int fineness) {
    return radius(centres, samples(fineness));
  }

  private double radius(double[] centres, List<double[]> samples) {
    double farthest = 0;
    for (double[] s : samples) {
      double nearest = Double.POSITIVE_INFINITY;
      for (int i = 0; i < centres.length; i += 2) {
        nearest = Math.min(nearest, way(s[0], s[1], centres[i], centres[i + 1]));
      }
      farthest = Math.max(farthest, nearest);
    }
    return farthest;
  }

  /** The inner corner of the L lies at (30, 30) of its drawing, 33 mm from the centroid's. */
  private double way(double ax, double ay, double bx, double by) {
    double straight = Math.hypot(ax - bx, ay - by);
    if (!bent) {
      return straight;
    }
    double c = 30 - outline.centroid().xMm();
    boolean apart = (ax > c && by > c) || (bx > c && ay > c);
    double side = (bx - ax) * (c - ay) - (by - ay) * (c - ax);
    boolean aRight = ax > bx;
    boolean outside = aRight ? side > 0 : side < 0;
    return apart && outside ? Math.hypot(ax - c, ay - c) + Math.hypot(bx - c, by - c) : straight;
  }

  private boolean keeps(double[] z) {
    for (int i = 0; i < z.length; i += 2) {
      if (!outline.contains(z[i], z[i + 1]) || outline.clearanceMm(z[i], z[i + 1]) < wall) {
        return false;
      }
      for (int j = 0; j < i; j += 2) {
        if (Math.hypot(z[i] - z[j], z[i + 1] - z[j + 1]) < spacing) {
          return false;
        }
      }
    }
    return true;
  }

  /** The smallest radius of so many walks of so many tries, on samples that get finer. */
  double best(int count, int starts, int tries) {
    return best(count, starts, tries, z -> z, new Random(100L * count));
  }

  /**
   * The same with a mirror axis through the centroid kept: every split of the wicks into pairs
   * across it and wicks on it, for each of the axes.
   *
   * @param axesDeg directions of the outline's mirror axes that are not alike
   */
  double bestEven(int count, List<Double> axesDeg, int starts, int tries) {
    double best = Double.POSITIVE_INFINITY;
    for (double deg : axesDeg) {
      for (int pairs = count / 2; pairs >= 0; pairs--) {
        int across = pairs;
        Random random = new Random(1000L * count + pairs);
        UnaryOperator<double[]> even = z -> mirrored(z, Math.toRadians(deg), across);
        best = Math.min(best, best(count, starts, tries, even, random));
      }
    }
    return best;
  }

  private double best(
      int count, int starts, int tries, UnaryOperator<double[]> rule, Random random) {
    double best = Double.POSITIVE_INFINITY;
    for (int start = 0; start < starts; start++) {
      double[] z = begun(count, rule, random);
      if (z.length > 0) {
        z = walk(z, samples(24), tries, 0.15, rule, random);
        z = walk(z, samples(60), tries / 3, 0.01, rule, random);
        best = Math.min(best, radius(z, samples(90)));
      }
    }
    return best;
  }

  /** The first wicks of the pairs as they are, their images, and all others dropped on the axis. */
  private static double[] mirrored(double[] z, double axis, int pairs) {
    double c = Math.cos(axis);
    double s = Math.sin(axis);
    double[] even = z.clone();
    for (int i = 0; i < z.length / 2; i++) {
      int of = i < 2 * pairs ? i - i % 2 : i;
      double along = c * z[2 * of] + s * z[2 * of + 1];
      double aside = i < 2 * pairs ? c * z[2 * of + 1] - s * z[2 * of] : 0;
      double side = i % 2 == 0 ? aside : -aside;
      even[2 * i] = c * along - s * side;
      even[2 * i + 1] = s * along + c * side;
    }
    return even;
  }

  private double size() {
    return Math.max(outline.lengthMm(), outline.widthMm());
  }

  /** Wicks by chance that keep rule and clearances; none where many throws find none. */
  private double[] begun(int count, UnaryOperator<double[]> rule, Random random) {
    double[] z = {};
    for (int tries = 0; tries < 4000 && z.length < 2 * count; tries++) {
      double[] more = Arrays.copyOf(z, z.length + 2);
      more[z.length] = (random.nextDouble() - 0.5) * size() * 1.2;
      more[z.length + 1] = (random.nextDouble() - 0.5) * size() * 1.2;
      more = rule.apply(more);
      if (keeps(more)) {
        z = more;
      } else if (tries % 100 == 99) {
        z = new double[] {};
      }
    }
    return z.length == 2 * count ? z : new double[] {};
  }

  private double[] walk(
      double[] from,
      List<double[]> samples,
      int tries,
      double firstStep,
      UnaryOperator<double[]> rule,
      Random random) {
    double[] z = from;
    double radius = radius(z, samples);
    double step = firstStep * size();
    for (int k = 0; k < tries; k++) {
      double[] moved = z.clone();
      int which = random.nextInt(z.length / 2);
      for (int i = 0; i < z.length; i++) {
        if (k % 2 == 0 || i / 2 == which) {
          moved[i] += step * random.nextGaussian();
        }
      }
      moved = rule.apply(moved);
      double r = keeps(moved) ? radius(moved, samples) : Double.POSITIVE_INFINITY;
      if (r < radius) {
        radius = r;
        z = moved;
      } else {
        step = Math.max(2e-4 * size(), step * 0.98);
      }
    }
    return z;
  }
}
