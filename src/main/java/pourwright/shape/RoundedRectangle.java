package pourwright.shape;

import java.util.List;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/** A rectangle whose four corners are rounded alike. */
public final class RoundedRectangle extends Walled {
  private final double lengthMm;
  private final double widthMm;
  private final double cornerMm;

  /**
   * @param lengthMm along x, in mm, greater than zero
   * @param widthMm along y, in mm, greater than zero
   * @param cornerMm radius of the corners, in mm, from 0 to half the shorter side
   */
  public RoundedRectangle(double lengthMm, double widthMm, double cornerMm) {
    super(walls(lengthMm, widthMm, cornerMm), List.of(lengthMm, widthMm, cornerMm));
    this.lengthMm = lengthMm;
    this.widthMm = widthMm;
    this.cornerMm = cornerMm;
  }

  private static Walls walls(double lengthMm, double widthMm, double cornerMm) {
    Check.positive("length_mm", lengthMm);
    Check.positive("width_mm", widthMm);
    Check.notNegative("corner_mm", cornerMm);
    double half = Math.min(lengthMm, widthMm) / 2;
    if (cornerMm > half) {
      throw new OutOfRange(
          "corner_mm",
          "a corner radius of " + cornerMm + " mm does not fit sides of " + 2 * half + " mm",
          "the radius is at most half the shorter side");
    }
    double r = cornerMm;
    double x = lengthMm / 2 - r;
    double y = widthMm / 2 - r;
    if (r == 0) {
      return Walls.through(
          List.of(new Point(x, -y), new Point(x, y), new Point(-x, y), new Point(-x, -y)));
    }
    double q = Math.PI / 2;
    return Walls.of(
        List.of(
            new Piece.Line(new Point(x + r, -y), new Point(x + r, y)),
            new Piece.Arc(new Point(x, y), r, 0, q),
            new Piece.Line(new Point(x, y + r), new Point(-x, y + r)),
            new Piece.Arc(new Point(-x, y), r, q, 2 * q),
            new Piece.Line(new Point(-x - r, y), new Point(-x - r, -y)),
            new Piece.Arc(new Point(-x, -y), r, 2 * q, 3 * q),
            new Piece.Line(new Point(-x, -y - r), new Point(x, -y - r)),
            new Piece.Arc(new Point(x, -y), r, 3 * q, 4 * q)));
  }

  /** Radius of the corners, in mm. */
  public double cornerMm() {
    return cornerMm;
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
  public RoundedRectangle scaled(double factor) {
    return new RoundedRectangle(lengthMm * factor, widthMm * factor, cornerMm * factor);
  }
}
