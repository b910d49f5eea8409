package pourwright.shape;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Outlines of straight lines and round corners: stadium, rounded rectangle, regular polygon and
 * traced points. Areas and perimeters are exact; radii are found piece by piece. Two are equal when
 * they are of one kind and their measures are equal.
 */
public abstract sealed class Walled implements Outline
    permits RegularPolygon, RoundedRectangle, Stadium, Traced {
  private final Walls walls;
  private final List<?> measures;

  Walled(Walls walls, List<?> measures) {
    this.walls = walls;
    this.measures = List.copyOf(measures);
  }

  /** The lines and arcs about the centroid. */
  final Walls walls() {
    return walls;
  }

  @Override
  public double areaMm2() {
    return walls.areaMm2();
  }

  @Override
  public double perimeterMm() {
    return walls.perimeterMm();
  }

  @Override
  public final boolean isStar() {
    return walls.isStar();
  }

  @Override
  public final double radiusMm(double angle) {
    return walls.radiusMm(angle);
  }

  @Override
  public final double radiusSlopeMm(double angle) {
    return walls.radiusSlopeMm(angle);
  }

  @Override
  public final double clearanceMm(double xMm, double yMm) {
    return walls.clearanceMm(new Point(xMm, yMm), contains(xMm, yMm));
  }

  @Override
  public final List<Point> polyline(double toleranceMm) {
    return walls.polyline(toleranceMm);
  }

  @Override
  public final double[] smoothBetween() {
    return walls.smoothBetween();
  }

  @Override
  public final boolean equals(@Nullable Object other) {
    return other instanceof Walled that
        && getClass() == that.getClass()
        && measures.equals(that.measures);
  }

  @Override
  public final int hashCode() {
    return measures.hashCode();
  }

  @Override
  public final String toString() {
    return getClass().getSimpleName() + measures;
  }
}
