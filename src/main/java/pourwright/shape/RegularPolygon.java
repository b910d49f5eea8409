package pourwright.shape;

import java.util.ArrayList;
import java.util.List;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * A regular polygon with corners rounded alike. A corner points along x, which is the longest axis
 * of polygons with an even number of sides.
 */
public final class RegularPolygon extends Walled {
  private final int sides;
  private final double acrossFlatsMm;
  private final double cornerMm;

  /**
   * @param sides from 3 to 360
   * @param acrossFlatsMm twice the apothem, in mm, for odd numbers of sides too
   * @param cornerMm radius of the corners, in mm, from 0 to the apothem
   */
  public RegularPolygon(int sides, double acrossFlatsMm, double cornerMm) {
    super(walls(sides, acrossFlatsMm, cornerMm), List.of(sides, acrossFlatsMm, cornerMm));
    this.sides = sides;
    this.acrossFlatsMm = acrossFlatsMm;
    this.cornerMm = cornerMm;
  }

  private static Walls walls(int sides, double acrossFlatsMm, double cornerMm) {
    Check.between("sides", sides, 3, 360);
    Check.positive("across_flats_mm", acrossFlatsMm);
    Check.notNegative("corner_mm", cornerMm);
    if (cornerMm > acrossFlatsMm / 2) {
      throw new OutOfRange(
          "corner_mm",
          "a corner radius of " + cornerMm + " mm does not fit " + acrossFlatsMm + " mm across",
          "the radius is at most half of across_flats_mm");
    }
    double reach = (acrossFlatsMm / 2 - cornerMm) / Math.cos(Math.PI / sides);
    List<Point> corners = new ArrayList<>();
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      corners.add(Point.polar(reach, 2 * Math.PI * i / sides));
    }
    if (cornerMm == 0) {
      return Walls.through(corners);
    }
    for (int i = 0; i < sides; i++) {
      double from = (2 * i - 1) * Math.PI / sides;
      double to = (2 * i + 1) * Math.PI / sides;
      pieces.add(new Piece.Arc(corners.get(i), cornerMm, from, to));
      Point out = Point.polar(cornerMm, to);
      pieces.add(new Piece.Line(corners.get(i).plus(out), corners.get((i + 1) % sides).plus(out)));
    }
    return Walls.of(pieces);
  }

  /** Number of sides. */
  public int sides() {
    return sides;
  }

  /** Twice the apothem, in mm. */
  public double acrossFlatsMm() {
    return acrossFlatsMm;
  }

  /** Radius of the corners, in mm. */
  public double cornerMm() {
    return cornerMm;
  }

  /** By the sum of a smaller polygon and a disc: {@code n·a²·tan − r²(n·tan − π)}. */
  @Override
  public double areaMm2() {
    double a = acrossFlatsMm / 2;
    double flat = sides * Math.tan(Math.PI / sides);
    return flat * a * a - cornerMm * cornerMm * (flat - Math.PI);
  }

  @Override
  public double perimeterMm() {
    double flat = sides * Math.tan(Math.PI / sides);
    return 2 * flat * (acrossFlatsMm / 2 - cornerMm) + 2 * Math.PI * cornerMm;
  }

  @Override
  public double lengthMm() {
    return extent(0);
  }

  @Override
  public double widthMm() {
    return extent(Math.PI / 2);
  }

  private double extent(double direction) {
    double reach = (acrossFlatsMm / 2 - cornerMm) / Math.cos(Math.PI / sides);
    double low = 0;
    double high = 0;
    for (int i = 0; i < sides; i++) {
      double at = reach * Math.cos(2 * Math.PI * i / sides - direction);
      low = Math.min(low, at);
      high = Math.max(high, at);
    }
    return high - low + 2 * cornerMm;
  }

  @Override
  public RegularPolygon scaled(double factor) {
    return new RegularPolygon(sides, acrossFlatsMm * factor, cornerMm * factor);
  }
}
