package pourwright.shape;

import java.util.List;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * What lies between a bottom outline, a top outline and the ruled surface that joins them: a
 * cavity, a casting, the block around a vessel. Straight lines of the surface join points of equal
 * parameter: ovals by eccentric angle among themselves, traced outlines by index where they have
 * equally many points, every other pair by polar angle about the centroid.
 *
 * <p>At the share {@code s} of the height the section has the area {@code (1−s)²·A + 2s(1−s)·M +
 * s²·B} with the mixed area M, so the volume is {@code h(A + M + B)/3}: exact for ovals, traced
 * outlines and similar shapes, else by quadrature to {@link Quadrature#RELATIVE_TOLERANCE}.
 *
 * <p>Maths and sources: docs/models/shape.md.
 */
public final class Solid {
  private final Outline bottom;
  private final double heightMm;
  private final Joined joined;
  private final double wholeMm;
  private final double bottomMm2;
  private final double mixedMm2;
  private final double topMm2;

  /**
   * @param bottom the lower outline
   * @param top the upper outline, equal to the lower one for straight walls
   * @param heightMm in mm, greater than zero
   * @throws OutOfRange when the height is not positive or when the two outlines cannot be joined
   */
  public Solid(Outline bottom, Outline top, double heightMm) {
    this(bottom, top.areaMm2(), Joined.of(bottom, top), heightMm, heightMm);
  }

  private Solid(Outline bottom, double topMm2, Joined joined, double wholeMm, double heightMm) {
    this.bottom = bottom;
    this.heightMm = Check.positive("height_mm", heightMm);
    this.joined = joined;
    this.wholeMm = wholeMm;
    this.bottomMm2 = bottom.areaMm2();
    this.mixedMm2 = joined.mixedMm2();
    this.topMm2 = topMm2;
  }

  /** Straight walls over one outline. */
  public static Solid straight(Outline outline, double heightMm) {
    return new Solid(outline, outline, heightMm);
  }

  /** The lower outline. */
  public Outline bottom() {
    return bottom;
  }

  /** The upper outline; where the solid was cut off, of the same kind if there is one. */
  public Outline top() {
    return joined.outlineAt(heightMm / wholeMm);
  }

  /** Height, in mm. */
  public double heightMm() {
    return heightMm;
  }

  /** True when the walls are straight. */
  public boolean isStraight() {
    return joined instanceof JoinedSame;
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
    double s = share(zMm);
    return s == 0 ? 0 : joined.sideMm2(wholeMm, s);
  }

  /** Area of the section at a height above the bottom, in mm². */
  public double areaAtMm2(double zMm) {
    double s = share(zMm);
    return (1 - s) * (1 - s) * bottomMm2 + 2 * s * (1 - s) * mixedMm2 + s * s * topMm2;
  }

  /** Volume below a height above the bottom, in ml. */
  public double volumeBelowMl(double zMm) {
    double s = share(zMm);
    double linear = 2 * (mixedMm2 - bottomMm2);
    double square = bottomMm2 - 2 * mixedMm2 + topMm2;
    return wholeMm * s * (bottomMm2 + s * (linear / 2 + s * square / 3)) / 1000;
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
    double s = share(Check.positive("fill_height_mm", zMm));
    double linear = 2 * (mixedMm2 - bottomMm2);
    double square = bottomMm2 - 2 * mixedMm2 + topMm2;
    double moment = s * s * (bottomMm2 / 2 + s * (linear / 3 + s * square / 4));
    double volume = s * (bottomMm2 + s * (linear / 2 + s * square / 3));
    return wholeMm * moment / volume;
  }

  /**
   * Distance from the axis to the wall at a height, in mm.
   *
   * @param angle about the axis, in radians from x
   */
  public double radiusMm(double angle, double zMm) {
    return joined.radiusMm(angle, share(zMm));
  }

  /** True for points inside, x and y about the axis, z above the bottom. */
  public boolean contains(double xMm, double yMm, double zMm) {
    return zMm >= 0 && zMm <= heightMm && joined.contains(xMm, yMm, zMm / wholeMm);
  }

  /** The section at a height as points, about the axis, counterclockwise. */
  public List<Point> sectionAt(double zMm, double toleranceMm) {
    return joined.section(share(zMm), toleranceMm);
  }

  /** The part below a height, a solid of its own with the same walls. */
  public Solid below(double zMm) {
    share(Check.positive("height_mm", zMm));
    return new Solid(bottom, topMm2, joined, wholeMm, zMm);
  }

  /** Share of the whole height, which is more than this solid's where it was cut off. */
  private double share(double zMm) {
    return Math.min(1, Check.between("z_mm", zMm, 0, heightMm * (1 + 1e-12)) / wholeMm);
  }

  @Override
  public String toString() {
    return "Solid[" + bottom + ", " + top() + ", " + heightMm + " mm]";
  }
}
