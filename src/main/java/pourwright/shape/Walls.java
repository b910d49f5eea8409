package pourwright.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A closed chain of lines and arcs, counterclockwise about the origin, which is its centroid. */
final class Walls {
  private final List<Piece> pieces;
  private final boolean star;
  private final double[] startAngles;

  private Walls(List<Piece> pieces) {
    this.pieces = pieces.stream().filter(p -> p.lengthMm() > 0).toList();
    this.star = this.pieces.stream().allMatch(Walls::turnsLeft);
    this.startAngles = star ? startAngles() : new double[0];
  }

  static Walls of(List<Piece> pieces) {
    return new Walls(pieces);
  }

  /** Straight sides between corners, without rounding. */
  static Walls through(List<Point> corners) {
    List<Piece> lines = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      lines.add(new Piece.Line(corners.get(i), corners.get((i + 1) % corners.size())));
    }
    return new Walls(lines);
  }

  private static boolean turnsLeft(Piece piece) {
    return piece.start().cross(piece.end()) > 0;
  }

  /** Rises by one turn from the first piece's angle. */
  private double[] startAngles() {
    double[] angles = new double[pieces.size()];
    double angle = pieces.get(0).start().angle();
    for (int i = 0; i < angles.length; i++) {
      angles[i] = angle;
      Point start = pieces.get(i).start();
      Point end = pieces.get(i).end();
      angle += Math.atan2(start.cross(end), start.dot(end));
    }
    return angles;
  }

  boolean isStar() {
    return star;
  }

  double areaMm2() {
    return pieces.stream().mapToDouble(Piece::twiceAreaMm2).sum() / 2;
  }

  double perimeterMm() {
    return pieces.stream().mapToDouble(Piece::lengthMm).sum();
  }

  double radiusMm(double angle) {
    if (star) {
      return pieceAt(angle).radiusMm(angle);
    }
    double farthest = 0;
    Point ray = Point.polar(1, angle);
    for (Piece piece : pieces) {
      if (ray.cross(piece.start()) * ray.cross(piece.end()) <= 0) {
        double radius = piece.radiusMm(angle);
        farthest = Double.isFinite(radius) ? Math.max(farthest, radius) : farthest;
      }
    }
    return farthest;
  }

  double radiusSlopeMm(double angle) {
    return pieceAt(angle).radiusSlopeMm(angle);
  }

  private Piece pieceAt(double angle) {
    double first = startAngles[0];
    double turned = (angle - first) % (2 * Math.PI);
    double target = first + (turned < 0 ? turned + 2 * Math.PI : turned);
    int found = Arrays.binarySearch(startAngles, target);
    return pieces.get(found >= 0 ? found : Math.max(0, -found - 2));
  }

  double clearanceMm(Point from, boolean inside) {
    double distance = pieces.stream().mapToDouble(p -> p.distanceMm(from)).min().orElse(Double.NaN);
    return inside ? distance : -distance;
  }

  /** By counting crossings to the right; for chains of lines. */
  boolean surrounds(Point point) {
    boolean inside = false;
    for (Piece piece : pieces) {
      Point a = piece.start().minus(point);
      Point b = piece.end().minus(point);
      if ((a.yMm() > 0) != (b.yMm() > 0)
          && a.xMm() - a.yMm() * (b.xMm() - a.xMm()) / (b.yMm() - a.yMm()) > 0) {
        inside = !inside;
      }
    }
    return inside;
  }

  List<Point> polyline(double toleranceMm) {
    List<Point> points = new ArrayList<>();
    pieces.forEach(p -> p.addPoints(toleranceMm, points));
    return points;
  }

  double[] smoothBetween() {
    double[] ends =
        Arrays.stream(startAngles).map(a -> Math.IEEEremainder(a, 2 * Math.PI)).toArray();
    double[] all = Arrays.copyOf(ends, ends.length + 2);
    all[ends.length] = -Math.PI;
    all[ends.length + 1] = Math.PI;
    Arrays.sort(all);
    return all;
  }
}
