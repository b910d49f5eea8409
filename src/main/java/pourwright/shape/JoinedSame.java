package pourwright.shape;

import java.util.List;

/** Straight walls. */
record JoinedSame(Outline outline) implements Joined {
  @Override
  public double mixedMm2() {
    return outline.areaMm2();
  }

  @Override
  public double sideMm2(double heightMm, double turn, double s) {
    if (turn == 0 || outline instanceof Circle) {
      return outline.perimeterMm() * heightMm * s;
    }
    if (outline instanceof Oval oval) {
      return new JoinedOvals(oval, oval).sideMm2(heightMm, turn, s);
    }
    if (outline instanceof Traced traced) {
      return new JoinedByIndex(traced, traced).sideMm2(heightMm, turn, s);
    }
    return new JoinedByAngle(outline, outline).sideMm2(heightMm, turn, s);
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
