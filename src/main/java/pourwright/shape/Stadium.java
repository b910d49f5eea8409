package pourwright.shape;

import java.util.List;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/** A rectangle with a half circle at either end; the length includes both. */
public final class Stadium extends Walled {
  private final double lengthMm;
  private final double widthMm;

  /**
   * @param lengthMm over both round ends, in mm, at least the width
   * @param widthMm in mm, greater than zero
   */
  public Stadium(double lengthMm, double widthMm) {
    super(walls(lengthMm, widthMm), List.of(lengthMm, widthMm));
    this.lengthMm = lengthMm;
    this.widthMm = widthMm;
  }

  private static Walls walls(double lengthMm, double widthMm) {
    Check.positive("width_mm", widthMm);
    Check.positive("length_mm", lengthMm);
    if (lengthMm < widthMm) {
      throw new OutOfRange(
          "length_mm",
          "a stadium " + lengthMm + " mm long cannot be " + widthMm + " mm wide",
          "the length runs over both round ends; exchange the two");
    }
    double r = widthMm / 2;
    double reach = lengthMm / 2 - r;
    Point right = new Point(reach, 0);
    Point left = new Point(-reach, 0);
    double quarter = Math.PI / 2;
    return Walls.of(
        List.of(
            new Piece.Arc(right, r, -quarter, 0),
            new Piece.Arc(right, r, 0, quarter),
            new Piece.Line(new Point(reach, r), new Point(-reach, r)),
            new Piece.Arc(left, r, quarter, 2 * quarter),
            new Piece.Arc(left, r, 2 * quarter, 3 * quarter),
            new Piece.Line(new Point(-reach, -r), new Point(reach, -r))));
  }

  @Override
  public double lengthMm() {
    return lengthMm;
  }

  @Override
  public double widthMm() {
    return widthMm;
  }

  @Override
  public Stadium scaled(double factor) {
    return new Stadium(lengthMm * factor, widthMm * factor);
  }
}
