package pourwright.shape;

import java.util.List;

/** Two outlines joined by straight lines between points of equal parameter. */
interface Joined {

  /** The mixed area of the two: the middle section is (A + 2M + B)/4. */
  double mixedMm2();

  /**
   * Area of the ruled surface up to a share {@code s} of the whole height, in mm².
   *
   * @param turn by how much the section turns from bottom to top, in radians
   */
  double sideMm2(double heightMm, double turn, double s);

  /** Distance from the axis to the wall at a share of the height. */
  double radiusMm(double angle, double s);

  boolean contains(double xMm, double yMm, double s);

  List<Point> section(double s, double toleranceMm);

  /** The section as an outline: of the same kind where it is, traced where it is not. */
  Outline outlineAt(double s);

  static Joined of(Outline bottom, Outline top) {
    if (bottom.equals(top)) {
      return new JoinedSame(bottom);
    }
    if (bottom instanceof Oval below && top instanceof Oval above) {
      return new JoinedOvals(below, above);
    }
    if (bottom instanceof Traced below
        && top instanceof Traced above
        && below.corners().size() == above.corners().size()) {
      return new JoinedByIndex(below, above);
    }
    return new JoinedByAngle(bottom, top);
  }
}
