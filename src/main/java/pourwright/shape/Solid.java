package pourwright.shape;

import java.util.ArrayList;
import java.util.List;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * What lies between a bottom outline, a top outline and the ruled surface that joins them: a
 * cavity, a casting, the block around a vessel. Straight lines of the surface join points of equal
 * parameter: ovals by eccentric angle among themselves, traced outlines by index where they have
 * equally many points, every other pair by polar angle about the centroid. A body may be a stack of
 * such tiers, and it may be twisted: turned evenly about its axis on the way up.
 *
 * <p>At the share {@code s} of a tier's height the section has the area {@code (1−s)²·A + 2s(1−s)·M
 * + s²·B} with the mixed area M, so its volume is {@code h(A + M + B)/3}: exact for ovals, traced
 * outlines and similar shapes, else by quadrature to {@link Quadrature#RELATIVE_TOLERANCE}. A twist
 * changes no section's area and no volume, but the wall's area.
 *
 * <p>Maths and sources: docs/models/shape.md.
 */
public final class Solid {
  /** More than a whole turn to a height is no vessel. */
  public static final double TWIST_MAX_DEGREES = 720;

  /** More levels than a profile needs. */
  public static final int LEVELS_MAX = 400;

  private final Outline bottom;
  private final Outline rim;
  private final List<Tier> tiers;
  private final double twist;
  private final double wholeMm;
  private final double heightMm;

  /**
   * @param bottom the lower outline
   * @param top the upper outline, equal to the lower one for straight walls
   * @param heightMm in mm, greater than zero
   * @throws OutOfRange when the height is not positive or when the two outlines cannot be joined
   */
  public Solid(Outline bottom, Outline top, double heightMm) {
    this(
        bottom,
        top,
        List.of(Tier.between(0, Check.positive("height_mm", heightMm), bottom, top)),
        0,
        heightMm,
        heightMm);
  }

  private Solid(
      Outline bottom,
      Outline rim,
      List<Tier> tiers,
      double twist,
      double wholeMm,
      double heightMm) {
    this.bottom = bottom;
    this.rim = rim;
    this.tiers = List.copyOf(tiers);
    this.twist = twist;
    this.wholeMm = wholeMm;
    this.heightMm = heightMm;
  }

  /** Straight walls over one outline. */
  public static Solid straight(Outline outline, double heightMm) {
    return new Solid(outline, outline, heightMm);
  }

  /**
   * A level of a free profile.
   *
   * @param heightMm above the bottom, in mm
   * @param scale size of the section there, 1 for the outline as it is
   */
  public record Level(double heightMm, double scale) {
    /** Checks both. */
    public Level {
      Check.notNegative("profile/height_mm", heightMm);
      Check.between("profile/scale", scale, 1e-3, 1e3);
    }
  }

  /**
   * A body of a free profile: one outline, larger or smaller from level to level, straight between
   * them. Over a circle it is a body of revolution.
   *
   * @param levels from 2 to {@value #LEVELS_MAX}, from height 0 upwards
   * @throws OutOfRange naming the level that is out of order
   */
  public static Solid ofProfile(Outline outline, List<Level> levels) {
    Check.between("profile", levels.size(), 2, LEVELS_MAX);
    if (levels.get(0).heightMm() != 0) {
      throw new OutOfRange(
          "profile", "the profile begins above the bottom", "give a first level at height 0");
    }
    List<Tier> tiers = new ArrayList<>();
    double area = outline.areaMm2();
    for (int i = 1; i < levels.size(); i++) {
      Level low = levels.get(i - 1);
      Level high = levels.get(i);
      double high0 = high.heightMm() - low.heightMm();
      if (!(high0 > 0)) {
        throw new OutOfRange(
            "profile",
            "level " + (i + 1) + " of the profile is not above the one before",
            "give the levels from the bottom up, no height twice");
      }
      Joined joined = Joined.of(outline.scaled(low.scale()), outline.scaled(high.scale()));
      tiers.add(
          new Tier(
              low.heightMm(),
              high0,
              joined,
              area * low.scale() * low.scale(),
              area * low.scale() * high.scale(),
              area * high.scale() * high.scale()));
    }
    double height = levels.get(levels.size() - 1).heightMm();
    Outline top = outline.scaled(levels.get(levels.size() - 1).scale());
    return new Solid(outline.scaled(levels.get(0).scale()), top, tiers, 0, height, height);
  }

  /**
   * A level of a stack.
   *
   * @param heightMm above the bottom, in mm
   * @param outline the section there
   */
  public record Section(double heightMm, Outline outline) {
    /** Checks the height. */
    public Section {
      Check.notNegative("stack/height_mm", heightMm);
    }
  }

  /**
   * A stack of unlike outlines, ruled from each to the next, such as a square foot under a round
   * rim.
   *
   * @param sections from 2 to {@value #LEVELS_MAX}, from height 0 upwards
   * @throws OutOfRange naming the section that is out of order or cannot be joined to the next
   */
  public static Solid ofStack(List<Section> sections) {
    Check.between("stack", sections.size(), 2, LEVELS_MAX);
    if (sections.get(0).heightMm() != 0) {
      throw new OutOfRange(
          "stack", "the stack begins above the bottom", "give a first section at height 0");
    }
    List<Tier> tiers = new ArrayList<>();
    for (int i = 1; i < sections.size(); i++) {
      Section low = sections.get(i - 1);
      Section high = sections.get(i);
      double rise = high.heightMm() - low.heightMm();
      if (!(rise > 0)) {
        throw new OutOfRange(
            "stack",
            "section " + (i + 1) + " of the stack is not above the one before",
            "give the sections from the bottom up, no height twice");
      }
      tiers.add(Tier.between(low.heightMm(), rise, low.outline(), high.outline()));
    }
    Section last = sections.get(sections.size() - 1);
    return new Solid(
        sections.get(0).outline(), last.outline(), tiers, 0, last.heightMm(), last.heightMm());
  }

  /** The same body turned evenly about its axis on the way up, counterclockwise from above. */
  public Solid twisted(double degrees) {
    Check.between("twist_degrees", degrees, -TWIST_MAX_DEGREES, TWIST_MAX_DEGREES);
    return new Solid(bottom, rim, tiers, Math.toRadians(degrees), wholeMm, heightMm);
  }

  /** The lower outline. */
  public Outline bottom() {
    return bottom;
  }

  /** The upper outline; where the solid was cut off, of the same kind if there is one. */
  public Outline top() {
    Tier tier = tierAt(heightMm);
    double s = tier.share(heightMm);
    return Turned.of(heightMm == wholeMm ? rim : tier.joined().outlineAt(s), turn(heightMm));
  }

  /** Height, in mm. */
  public double heightMm() {
    return heightMm;
  }

  /** Heights at which the wall bends, bottom and top included, in mm. */
  public List<Double> kneesMm() {
    List<Double> knees = new ArrayList<>();
    tiers.stream().map(Tier::fromMm).filter(z -> z < heightMm).forEach(knees::add);
    knees.add(heightMm);
    return knees;
  }

  /** True when the walls are straight. */
  public boolean isStraight() {
    return twist == 0 && tiers.size() == 1 && tiers.get(0).joined() instanceof JoinedSame;
  }

  /** By how much it turns from bottom to top, in radians. */
  public double twistRadians() {
    return turn(heightMm);
  }

  /** Volume, in ml. */
  public double volumeMl() {
    return volumeBelowMl(heightMm);
  }

  /** Area of the wall without bottom and top, in mm². */
  public double sideAreaMm2() {
    return sideAreaBelowMm2(heightMm);
  }

  /** Area of the wall from the bottom up to a height, in mm². */
  public double sideAreaBelowMm2(double zMm) {
    double z = within(zMm);
    double sum = 0;
    for (Tier tier : tiers) {
      double s = tier.share(z);
      sum += s == 0 ? 0 : tier.joined().sideMm2(tier.highMm(), twist * tier.highMm() / wholeMm, s);
    }
    return sum;
  }

  /** Area of the section at a height above the bottom, in mm². */
  public double areaAtMm2(double zMm) {
    double z = within(zMm);
    Tier tier = tierAt(z);
    return tier.areaMm2(tier.share(z));
  }

  /** Volume below a height above the bottom, in ml. */
  public double volumeBelowMl(double zMm) {
    double z = within(zMm);
    double sum = 0;
    for (Tier tier : tiers) {
      sum += tier.volumeMm3(tier.share(z));
    }
    return sum / 1000;
  }

  /** Height to which a volume fills the solid, in mm. */
  public double heightOfMl(double volumeMl) {
    Check.between("volume_ml", volumeMl, 0, volumeMl() * (1 + 1e-12));
    double low = 0;
    double high = heightMm;
    for (int i = 0; i < 100 && high - low > 1e-12 * heightMm; i++) {
      double middle = (low + high) / 2;
      if (volumeBelowMl(middle) < volumeMl) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** Height of the centre of gravity of a filling up to {@code zMm}, above the bottom, in mm. */
  public double centreOfGravityMm(double zMm) {
    double z = within(Check.positive("fill_height_mm", zMm));
    double moment = 0;
    double volume = 0;
    for (Tier tier : tiers) {
      double s = tier.share(z);
      moment += tier.momentMm4(s);
      volume += tier.volumeMm3(s);
    }
    return moment / volume;
  }

  /**
   * Distance from the axis to the wall at a height, in mm.
   *
   * @param angle about the axis, in radians from x
   */
  public double radiusMm(double angle, double zMm) {
    double z = within(zMm);
    Tier tier = tierAt(z);
    return tier.joined().radiusMm(angle - turn(z), tier.share(z));
  }

  /** True for points inside, x and y about the axis, z above the bottom. */
  public boolean contains(double xMm, double yMm, double zMm) {
    if (!(zMm >= 0 && zMm <= heightMm)) {
      return false;
    }
    Tier tier = tierAt(zMm);
    if (twist == 0) {
      return tier.joined().contains(xMm, yMm, tier.share(zMm));
    }
    Point back = new Point(xMm, yMm).turned(-turn(zMm));
    return tier.joined().contains(back.xMm(), back.yMm(), tier.share(zMm));
  }

  /** The section at a height as points, about the axis, counterclockwise. */
  public List<Point> sectionAt(double zMm, double toleranceMm) {
    double z = within(zMm);
    Tier tier = tierAt(z);
    List<Point> section = tier.joined().section(tier.share(z), toleranceMm);
    double turn = turn(z);
    return turn == 0 ? section : section.stream().map(p -> p.turned(turn)).toList();
  }

  /** The part below a height, a solid of its own with the same walls. */
  public Solid below(double zMm) {
    double z = within(Check.positive("height_mm", zMm));
    return new Solid(bottom, rim, tiers, twist, wholeMm, z);
  }

  private double turn(double zMm) {
    return twist * zMm / wholeMm;
  }

  private Tier tierAt(double zMm) {
    for (int i = tiers.size() - 1; i > 0; i--) {
      if (zMm > tiers.get(i).fromMm()) {
        return tiers.get(i);
      }
    }
    return tiers.get(0);
  }

  private double within(double zMm) {
    return Math.min(heightMm, Check.between("z_mm", zMm, 0, heightMm * (1 + 1e-12)));
  }

  @Override
  public String toString() {
    return "Solid[" + bottom + ", " + top() + ", " + heightMm + " mm, " + tiers.size() + " tiers]";
  }
}
