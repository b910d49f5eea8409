package pourwright.shape;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * A vessel: an outer solid with a cavity that is open at the top, both about one axis, rims level.
 *
 * @param outer the outside, foot to rim
 * @param cavity the inside, base to rim, less high than the outside
 */
public record Hollow(Solid outer, Solid cavity) {
  private static final int LEVELS = 24;

  /** Refuses a cavity that leaves no base. */
  public Hollow {
    if (cavity.heightMm() >= outer.heightMm()) {
      throw new OutOfRange(
          "cavity/height_mm",
          "the cavity is as deep as the vessel is high and leaves no base",
          "make the cavity shallower than " + outer.heightMm() + " mm");
    }
  }

  /**
   * A thickness and where it is.
   *
   * @param mm thickness measured level, in mm; below zero where the cavity breaks through
   * @param heightMm above the foot, in mm
   * @param angle about the axis, in radians from x
   */
  public record Thinnest(double mm, double heightMm, double angle) {}

  /**
   * Where a vessel's weight acts and how far it may lean.
   *
   * @param massG vessel and contents, in g
   * @param centreMm height of the centre of gravity above the foot, in mm
   * @param tipsAtDegrees lean at which it falls, in degrees
   */
  public record Balance(double massG, double centreMm, double tipsAtDegrees) {}

  /** Thickness of the base, in mm. */
  public double baseMm() {
    return outer.heightMm() - cavity.heightMm();
  }

  /** Volume of the vessel's own material, in ml. */
  public double wallMl() {
    return outer.volumeMl() - cavity.volumeMl();
  }

  /** Evenly spaced heights of the cavity, and those at which either wall bends. */
  private SortedSet<Double> levels() {
    SortedSet<Double> levels = new TreeSet<>();
    for (int level = 0; level <= LEVELS; level++) {
      levels.add(cavity.heightMm() * level / LEVELS);
    }
    levels.addAll(cavity.kneesMm());
    for (double knee : outer.kneesMm()) {
      double z = knee - baseMm();
      if (z >= 0 && z <= cavity.heightMm()) {
        levels.add(z);
      }
    }
    return levels;
  }

  /**
   * The thinnest place of the wall, measured level, among 25 heights, those at which a wall bends,
   * and the cavity's corners.
   */
  public Thinnest thinnestWall() {
    Thinnest thinnest = new Thinnest(Double.POSITIVE_INFINITY, 0, 0);
    for (double z : levels()) {
      List<Point> inside = cavity.sectionAt(z, 0.2);
      Walls wall = Walls.through(outer.sectionAt(Math.min(outer.heightMm(), z + baseMm()), 0.02));
      for (Point point : inside) {
        double mm = wall.clearanceMm(point, wall.surrounds(point));
        if (mm < thinnest.mm) {
          thinnest = new Thinnest(mm, z + baseMm(), point.angle());
        }
      }
    }
    return thinnest;
  }

  /**
   * Face of the cavity to a height above its base, with the base, in mm²: what is sealed inside.
   */
  public double insideMm2(double fillMm) {
    return cavity.sideAreaBelowMm2(fillMm) + cavity.bottom().areaMm2();
  }

  /** Outside with foot and rim, in mm². */
  public double outsideMm2() {
    return outer.sideAreaMm2()
        + outer.bottom().areaMm2()
        + outer.top().areaMm2()
        - cavity.top().areaMm2();
  }

  /**
   * Balance with wax up to a height. Both centres of gravity are taken on the axis.
   *
   * @param vesselGPerMl density of the hardened vessel, in g/ml
   * @param waxGPerMl density of the set wax, in g/ml
   * @param fillMm wax above the cavity's base, in mm; 0 for an empty vessel
   */
  public Balance balance(double vesselGPerMl, double waxGPerMl, double fillMm) {
    Check.positive("vessel_density_g_per_ml", vesselGPerMl);
    Check.between("fill_height_mm", fillMm, 0, cavity.heightMm());
    double outerG = vesselGPerMl * outer.volumeMl();
    double cavityG = vesselGPerMl * cavity.volumeMl();
    double waxG = waxGPerMl * cavity.volumeBelowMl(fillMm);
    double waxCentre = fillMm == 0 ? 0 : cavity.centreOfGravityMm(fillMm) + baseMm();
    double mass = outerG - cavityG + waxG;
    double centre =
        (outerG * outer.centreOfGravityMm(outer.heightMm())
                - cavityG * (cavity.centreOfGravityMm(cavity.heightMm()) + baseMm())
                + waxG * waxCentre)
            / mass;
    return new Balance(mass, centre, Math.toDegrees(Math.atan2(footMm(), centre)));
  }

  /**
   * Distance from the axis to the line between two neighbouring feet, in mm: what it tips over.
   *
   * @param feet evenly round the axis, 3 to 12
   * @param outMm from the axis to each, in mm
   */
  public static double feetMm(int feet, double outMm) {
    Check.between("feet", feet, 3, 12);
    return Check.positive("out_mm", outMm) * Math.cos(Math.PI / feet);
  }

  /**
   * Least gap between the rim of the cavity and a plug that stands in its middle, in mm; below zero
   * where the plug does not go in.
   */
  public double lidGapMm(Outline plug) {
    Walls rim = Walls.through(cavity.sectionAt(cavity.heightMm(), 0.02));
    return plug.polyline(0.02).stream()
        .mapToDouble(p -> rim.clearanceMm(p, rim.surrounds(p)))
        .min()
        .orElse(Double.NaN);
  }

  /** Least distance from the axis to the edge it tips over, in mm: that of the foot's hull. */
  public double footMm() {
    List<Point> foot = outer.bottom().polyline(0.05);
    double least = Double.POSITIVE_INFINITY;
    for (int degree = 0; degree < 360; degree++) {
      Point towards = Point.polar(1, Math.toRadians(degree));
      double reach = foot.stream().mapToDouble(p -> p.dot(towards)).max().orElse(0);
      least = Math.min(least, reach);
    }
    return least;
  }
}
