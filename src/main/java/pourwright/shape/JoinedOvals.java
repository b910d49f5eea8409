package pourwright.shape;

import java.util.ArrayList;
import java.util.List;

/** Two ovals joined by equal eccentric angle. */
record JoinedOvals(Oval bottom, Oval top) implements Joined {
  @Override
  public double mixedMm2() {
    return Eccentric.mixedMm2(bottom, top);
  }

  @Override
  public double sideMm2(double heightMm, double turn, double s) {
    if (bottom instanceof Circle below && top instanceof Circle above) {
      double lean = s * (above.diameterMm() - below.diameterMm()) / 2;
      double radii = below.diameterMm() + lean;
      return Math.PI * radii * Math.hypot(lean, s * heightMm);
    }
    return Eccentric.sideMm2(bottom, top, heightMm, turn, s);
  }

  private Point at(double eccentric, double s) {
    return bottom.at(eccentric).towards(top.at(eccentric), s);
  }

  @Override
  public double radiusMm(double angle, double s) {
    if (bottom.exponent() == top.exponent()) {
      return outlineAt(s).radiusMm(angle);
    }
    double turned = Math.abs(Math.IEEEremainder(angle, Math.PI));
    double low = 0;
    double high = Math.PI / 2;
    for (int i = 0; i < 200 && high - low > 1e-15; i++) {
      double middle = (low + high) / 2;
      if (at(middle, s).angle() < turned) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return at((low + high) / 2, s).length();
  }

  @Override
  public boolean contains(double xMm, double yMm, double s) {
    Point point = new Point(xMm, yMm);
    return point.length() < radiusMm(point.angle(), s);
  }

  @Override
  public List<Point> section(double s, double toleranceMm) {
    if (bottom.exponent() == top.exponent()) {
      return outlineAt(s).polyline(toleranceMm);
    }
    int count = 1024;
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      points.add(at(2 * Math.PI * i / count, s));
    }
    return points;
  }

  @Override
  public Outline outlineAt(double s) {
    if (s == 1) {
      return top;
    }
    if (bottom.exponent() != top.exponent()) {
      return Traced.through(section(s, 0.001));
    }
    double length = bottom.lengthMm() + s * (top.lengthMm() - bottom.lengthMm());
    double width = bottom.widthMm() + s * (top.widthMm() - bottom.widthMm());
    if (bottom.exponent() != 2) {
      return new Superellipse(length, width, bottom.exponent());
    }
    return length == width ? new Circle(length) : new Ellipse(length, width);
  }
}
