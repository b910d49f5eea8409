package pourwright.shape;

import java.util.Arrays;
import java.util.List;

/**
 * An outline turned about its centroid: the rim of a twisted body.
 *
 * @param outline before it is turned
 * @param turn counterclockwise, in radians
 */
record Turned(Outline outline, double turn) implements Outline {

  /** The outline itself where turning it changes nothing. */
  static Outline of(Outline outline, double turn) {
    return turn == 0 || outline instanceof Circle ? outline : new Turned(outline, turn);
  }

  @Override
  public double areaMm2() {
    return outline.areaMm2();
  }

  @Override
  public double perimeterMm() {
    return outline.perimeterMm();
  }

  @Override
  public double lengthMm() {
    return Extent.of(polyline(0.001), Point::xMm);
  }

  @Override
  public double widthMm() {
    return Extent.of(polyline(0.001), Point::yMm);
  }

  @Override
  public boolean isStar() {
    return outline.isStar();
  }

  @Override
  public double radiusMm(double angle) {
    return outline.radiusMm(angle - turn);
  }

  @Override
  public double radiusSlopeMm(double angle) {
    return outline.radiusSlopeMm(angle - turn);
  }

  @Override
  public boolean contains(double xMm, double yMm) {
    Point back = new Point(xMm, yMm).turned(-turn);
    return outline.contains(back.xMm(), back.yMm());
  }

  @Override
  public double clearanceMm(double xMm, double yMm) {
    Point back = new Point(xMm, yMm).turned(-turn);
    return outline.clearanceMm(back.xMm(), back.yMm());
  }

  @Override
  public List<Point> polyline(double toleranceMm) {
    return outline.polyline(toleranceMm).stream().map(p -> p.turned(turn)).toList();
  }

  @Override
  public Outline scaled(double factor) {
    return new Turned(outline.scaled(factor), turn);
  }

  @Override
  public double[] smoothBetween() {
    double[] turned =
        Arrays.stream(outline.smoothBetween())
            .map(a -> Math.IEEEremainder(a + turn, 2 * Math.PI))
            .toArray();
    double[] all = Arrays.copyOf(turned, turned.length + 2);
    all[turned.length] = -Math.PI;
    all[turned.length + 1] = Math.PI;
    Arrays.sort(all);
    return all;
  }
}
