package pourwright.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A random body and, told anew from the definition, how far its wall is from the origin that its
 * outlines were drawn about.
 *
 * @param sort which it is, for the count
 * @param solid the code under test
 * @param axis where its own axis stands
 * @param wall the definition
 */
record RandomBody(String sort, Solid solid, Point axis, Wall wall) {

  /** All that have to be among a thousand. */
  static final List<String> SORTS =
      List.of(
          "Oval",
          "GrownBox",
          "GrownPolygon",
          "Ribs",
          "Drawn",
          "Points",
          "twisted, Oval",
          "profile, twisted",
          "stack",
          "stack, twisted",
          "corner to corner");

  /** Distance to the wall by direction and height. */
  interface Wall {
    double radius(double angle, double z);
  }

  double radius(double angle, double z) {
    return wall.radius(angle, z);
  }

  static RandomBody random(SplittableRandom r) {
    int kind = r.nextInt(10);
    return kind < 4
        ? ends(r, false)
        : kind < 5 ? ends(r, true) : kind < 7 ? formed(r) : more(r, kind);
  }

  private static RandomBody more(SplittableRandom r, int kind) {
    return kind < 9 ? stack(r) : cornerToCorner(r);
  }

  private static double twist(SplittableRandom r, boolean twisted) {
    return twisted ? r.nextDouble(-360, 360) : 0;
  }

  private static double turn(double degrees, double z, double height) {
    return Math.toRadians(degrees) * z / height;
  }

  private static RandomBody ends(SplittableRandom r, boolean twisted) {
    Known bottom = Known.random(r);
    Known top = above(bottom, r);
    double height = r.nextDouble(20, 150);
    double twist = twist(r, twisted);
    return new RandomBody(
        (twisted ? "twisted, " : "") + name(bottom),
        new Solid(bottom.outline(), top.outline(), height).twisted(twist),
        Point.ORIGIN,
        (a, z) -> Known.radius(bottom, top, a - turn(twist, z, height), z / height));
  }

  private static String name(Known known) {
    return known.getClass().getSimpleName();
  }

  /** One that is not joined corner to corner with the one below, which has its own kind. */
  static Known above(Known below, SplittableRandom r) {
    while (true) {
      Known above = Known.random(r);
      boolean byCorners =
          below.outline() instanceof Traced b
              && above.outline() instanceof Traced a
              && a.corners().size() == b.corners().size();
      if (!byCorners) {
        return above;
      }
    }
  }

  private static RandomBody formed(SplittableRandom r) {
    Formed formed = Formed.random(r);
    return new RandomBody("profile, twisted", formed.solid(), Point.ORIGIN, formed::radius);
  }

  private static RandomBody stack(SplittableRandom r) {
    int sections = r.nextInt(3, 6);
    List<Known> known = new ArrayList<>(List.of(Known.random(r)));
    List<Solid.Section> at = new ArrayList<>();
    at.add(new Solid.Section(0, known.get(0).outline()));
    for (int i = 1; i < sections; i++) {
      known.add(above(known.get(i - 1), r));
      double height = at.get(i - 1).heightMm() + r.nextDouble(8, 50);
      at.add(new Solid.Section(height, known.get(i).outline()));
    }
    double height = at.get(sections - 1).heightMm();
    double twist = twist(r, r.nextBoolean());
    return new RandomBody(
        twist == 0 ? "stack" : "stack, twisted",
        Solid.ofStack(at).twisted(twist),
        Point.ORIGIN,
        (angle, z) -> {
          int i = 1;
          while (i < sections - 1 && z > at.get(i).heightMm()) {
            i++;
          }
          double low = at.get(i - 1).heightMm();
          double s = (z - low) / (at.get(i).heightMm() - low);
          return Known.radius(known.get(i - 1), known.get(i), angle - turn(twist, z, height), s);
        });
  }

  /** Two traced outlines of equally many points keep where they were drawn. */
  private static RandomBody cornerToCorner(SplittableRandom r) {
    int corners = r.nextInt(5, 12);
    Known.Points below = Known.Points.of(r, corners);
    Known.Points above = Known.Points.of(r, corners);
    double height = r.nextDouble(20, 150);
    return new RandomBody(
        "corner to corner",
        new Solid(below.outline(), above.outline(), height),
        below.outline().centroid(),
        (a, z) -> Known.Points.radius(below, above, a, z / height));
  }

  /** A body twisted and of a free profile: size and turn of the section by height. */
  record Formed(Known section, double[] at, double[] scale, double twist) {
    static Formed random(SplittableRandom r) {
      int levels = r.nextInt(2, 7);
      double[] at = new double[levels];
      double[] scale = new double[levels];
      for (int i = 0; i < levels; i++) {
        at[i] = i == 0 ? 0 : at[i - 1] + r.nextDouble(5, 40);
        scale[i] = r.nextDouble(0.4, 1.6);
      }
      return new Formed(Known.random(r), at, scale, r.nextDouble(-360, 360));
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

    double radius(double angle, double z) {
      return section.ray(angle - turn(twist, z, height())) * scaleAt(z);
    }

    /** The wall at a direction of the untwisted section. */
    double[] point(double sectionRadius, double angle, double z) {
      double radius = sectionRadius * scaleAt(z);
      double at = angle + turn(twist, z, height());
      return new double[] {radius * Math.cos(at), radius * Math.sin(at), z};
    }

    Solid solid() {
      List<Solid.Level> levels = new ArrayList<>();
      for (int i = 0; i < at.length; i++) {
        levels.add(new Solid.Level(at[i], scale[i]));
      }
      return Solid.ofProfile(section.outline(), levels).twisted(twist);
    }
  }
}
