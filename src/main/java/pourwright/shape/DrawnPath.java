package pourwright.shape;

import java.util.ArrayList;
import java.util.List;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * A closed outline drawn as an SVG path: M L H V C S Q T A Z, absolute and relative, one outline
 * only. Area in closed form by Green's theorem, length by quadrature to {@link
 * Quadrature#RELATIVE_TOLERANCE}. Paths have y downwards; here it points up, so that the plan looks
 * as it was drawn.
 *
 * <p>Source of the grammar and of the arcs: W3C, Scalable Vector Graphics (SVG) 2, chapter 9 and
 * appendix B.2.4.
 */
public final class DrawnPath {
  /** Chords of {@link #outline()} are no farther than this from the curve, in mm. */
  public static final double CHORD_MM = 0.002;

  private final List<Curve> curves;

  private DrawnPath(List<Curve> curves) {
    this.curves = List.copyOf(curves);
  }

  /**
   * Reads a path.
   *
   * @param d the path's data
   * @param mmPerUnit millimetres of a unit of the drawing, above zero
   * @throws OutOfRange saying at which character the path goes wrong
   */
  public static DrawnPath read(String d, double mmPerUnit) {
    Check.between("mm_per_unit", mmPerUnit, 1e-6, 1e4);
    List<Curve> curves = new PathReader(d, mmPerUnit).read();
    return new DrawnPath(curves);
  }

  /** Enclosed area, in mm², in closed form. */
  public double areaMm2() {
    return Math.abs(curves.stream().mapToDouble(Curve::twiceAreaMm2).sum()) / 2;
  }

  /** Length of the curve, in mm. */
  public double perimeterMm() {
    return curves.stream().mapToDouble(Curve::lengthMm).sum();
  }

  /**
   * The outline as straight chords, of exactly the curve's own area: chords within {@link
   * #CHORD_MM} of the curve, then grown about the centroid by what chords cut off.
   *
   * @throws OutOfRange when the path crosses itself or encloses nothing
   */
  public Traced outline() {
    List<Point> points = new ArrayList<>();
    curves.forEach(c -> c.addPoints(CHORD_MM, points));
    List<Point> clean = new ArrayList<>();
    for (Point point : points) {
      if (clean.isEmpty() || point.minus(clean.get(clean.size() - 1)).length() > 1e-9) {
        clean.add(point);
      }
    }
    if (clean.size() > 1 && clean.get(0).minus(clean.get(clean.size() - 1)).length() <= 1e-9) {
      clean.remove(clean.size() - 1);
    }
    if (clean.size() > Traced.POINTS_MAX) {
      throw new OutOfRange(
          "svg_path",
          "the path needs " + clean.size() + " chords, more than " + Traced.POINTS_MAX,
          "draw it with fewer curves");
    }
    Traced chords = Traced.through(clean);
    return chords.scaled(Math.sqrt(areaMm2() / chords.areaMm2()));
  }
}
