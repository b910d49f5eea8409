package pourwright.shape;

import java.util.List;

/** Straight walls. */
record JoinedSame(Outline outline) implements Joined {
  @Override
  public double mixedMm2() {
    return outline.areaMm2();
  }

  @Override
  public double sideMm2(double heightMm, double s) {
    return outline.perimeterMm() * heightMm * s;
  }

  @Override
  public double radiusMm(double angle, double s) {
    return outline.radiusMm(angle);
  }

  @Override
  public boolean contains(double xMm, double yMm, double s) {
    return outline.contains(xMm, yMm);
  }

  @Override
  public List<Point> section(double s, double toleranceMm) {
    return outline.polyline(toleranceMm);
  }

  @Override
  public Outline outlineAt(double s) {
    return outline;
  }
}
