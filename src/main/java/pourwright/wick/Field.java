package pourwright.wick;

import java.util.ArrayList;
import java.util.List;
import pourwright.shape.Outline;
import pourwright.shape.Point;
import pourwright.shape.RegularPolygon;

/**
 * The wax surface as a polygon about its centroid, x along its longer side, in units of its reach
 * (the farthest corner), so that the search below works with numbers near 1.
 */
final class Field {
  private static final double GRAZE = 1e-9;

  final double reachMm;
  final int turnedDeg;
  final double[] xs;
  final double[] ys;
  final int[] reflex;
  final double[][] betweenReflex;
  final int[][] hopFromReflex;
  private final Outline outline;

  /** A wall near a point: how far, and the direction away from it. */
  record Wall(double distance, double awayX, double awayY) {}

  /**
   * @param outline any outline
   * @param toleranceOfReach how far the polygon may be from the curve, over the reach
   */
  Field(Outline outline, double toleranceOfReach) {
    this.outline = outline;
    boolean turned =
        !(outline instanceof RegularPolygon) && outline.widthMm() > outline.lengthMm() * (1 + 1e-9);
    this.turnedDeg = turned ? -90 : 0;
    double size = Math.max(outline.lengthMm(), outline.widthMm());
    List<Point> points = outline.polyline(size * 0.5 * toleranceOfReach);
    double reach = points.stream().mapToDouble(Point::length).max().orElse(1);
    this.reachMm = reach;
    this.xs = points.stream().mapToDouble(p -> (turned ? p.yMm() : p.xMm()) / reach).toArray();
    this.ys = points.stream().mapToDouble(p -> (turned ? -p.xMm() : p.yMm()) / reach).toArray();
    this.reflex = findReflex();
    int m = reflex.length;
    this.betweenReflex = new double[m][m];
    this.hopFromReflex = new int[m][m];
    joinReflex();
  }

  /**
   * Length of a straight way; fast, for numbers near 1 whose squares neither vanish nor overflow.
   */
  static double way(double dx, double dy) {
    return Math.sqrt(dx * dx + dy * dy);
  }

  int corners() {
    return xs.length;
  }

  boolean isConvex() {
    return reflex.length == 0;
  }

  private int[] findReflex() {
    List<Integer> found = new ArrayList<>();
    int n = xs.length;
    for (int i = 0; i < n; i++) {
      int p = (i + n - 1) % n;
      int q = (i + 1) % n;
      double turn = (xs[i] - xs[p]) * (ys[q] - ys[i]) - (ys[i] - ys[p]) * (xs[q] - xs[i]);
      if (turn < -1e-7) {
        found.add(i);
      }
    }
    return found.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Shortest ways between the inner corners, by Floyd and Warshall over those that see. */
  private void joinReflex() {
    int m = reflex.length;
    for (int i = 0; i < m; i++) {
      for (int j = 0; j < m; j++) {
        boolean seen = i == j || sees(xs[reflex[i]], ys[reflex[i]], xs[reflex[j]], ys[reflex[j]]);
        betweenReflex[i][j] =
            seen
                ? way(xs[reflex[i]] - xs[reflex[j]], ys[reflex[i]] - ys[reflex[j]])
                : Double.POSITIVE_INFINITY;
        hopFromReflex[i][j] = j;
      }
    }
    for (int k = 0; k < m; k++) {
      for (int i = 0; i < m; i++) {
        for (int j = 0; j < m; j++) {
          double by = betweenReflex[i][k] + betweenReflex[k][j];
          if (by < betweenReflex[i][j] - 1e-15) {
            betweenReflex[i][j] = by;
            hopFromReflex[i][j] = hopFromReflex[i][k];
          }
        }
      }
    }
  }

  /** Signed distance to the true curve, positive inside. */
  double clearance(double x, double y) {
    double xMm = x * reachMm;
    double yMm = y * reachMm;
    double mm = turnedDeg == 0 ? outline.clearanceMm(xMm, yMm) : outline.clearanceMm(-yMm, xMm);
    return mm / reachMm;
  }

  /** How far a point is from keeping a distance to the true curve; 0 when it keeps it. */
  double shortOf(double distance, double x, double y) {
    if (isConvex() && toPolygon(x, y) >= distance && inside(x, y)) {
      return 0;
    }
    return Math.max(0, distance - clearance(x, y));
  }

  private double toPolygon(double x, double y) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0, j = xs.length - 1; i < xs.length; j = i++) {
      double ex = xs[i] - xs[j];
      double ey = ys[i] - ys[j];
      double t = ((x - xs[j]) * ex + (y - ys[j]) * ey) / (ex * ex + ey * ey);
      t = Math.max(0, Math.min(1, t));
      double dx = x - xs[j] - t * ex;
      double dy = y - ys[j] - t * ey;
      least = Math.min(least, dx * dx + dy * dy);
    }
    return Math.sqrt(least);
  }

  boolean inside(double x, double y) {
    boolean in = false;
    int n = xs.length;
    for (int i = 0, j = n - 1; i < n; j = i++) {
      if ((ys[i] > y) != (ys[j] > y)
          && x < (xs[j] - xs[i]) * (y - ys[i]) / (ys[j] - ys[i]) + xs[i]) {
        in = !in;
      }
    }
    return in;
  }

  /** True when the straight line between two points of the field stays in the field. */
  boolean sees(double ax, double ay, double bx, double by) {
    int n = xs.length;
    for (int i = 0, j = n - 1; i < n; j = i++) {
      double a = side(xs[j], ys[j], xs[i], ys[i], ax, ay);
      double b = side(xs[j], ys[j], xs[i], ys[i], bx, by);
      double c = side(ax, ay, bx, by, xs[j], ys[j]);
      double d = side(ax, ay, bx, by, xs[i], ys[i]);
      if (apart(a, b) && apart(c, d)) {
        return false;
      }
    }
    double mx = (ax + bx) / 2;
    double my = (ay + by) / 2;
    return inside(mx, my) || near(mx, my);
  }

  private static boolean apart(double a, double b) {
    return (a > GRAZE && b < -GRAZE) || (a < -GRAZE && b > GRAZE);
  }

  private static double side(double ax, double ay, double bx, double by, double px, double py) {
    return (bx - ax) * (py - ay) - (by - ay) * (px - ax);
  }

  private boolean near(double x, double y) {
    for (int i = 0; i < xs.length; i++) {
      if (toEdge(i, x, y)[2] < 1e-7) {
        return true;
      }
    }
    return false;
  }

  /** Nearest point of the edge that ends in corner i, and its distance. */
  private double[] toEdge(int i, double x, double y) {
    int j = i == 0 ? xs.length - 1 : i - 1;
    double ex = xs[i] - xs[j];
    double ey = ys[i] - ys[j];
    double t = ((x - xs[j]) * ex + (y - ys[j]) * ey) / (ex * ex + ey * ey);
    t = Math.max(0, Math.min(1, t));
    double qx = xs[j] + t * ex;
    double qy = ys[j] + t * ey;
    return new double[] {qx, qy, way(x - qx, y - qy)};
  }

  /**
   * The walls round a point that are locally nearest and nearer than a limit, nearest ones first.
   */
  List<Wall> walls(double x, double y, double limit) {
    int n = xs.length;
    double[][] to = new double[n][];
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      to[i] = toEdge(i, x, y);
      nearest = Math.min(nearest, to[i][2]);
    }
    if (nearest > limit && inside(x, y)) {
      return List.of();
    }
    double exact = clearance(x, y);
    double sign = exact < 0 ? -1 : 1;
    double shift = Math.abs(exact) - nearest;
    List<Wall> walls = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double d = to[i][2];
      boolean lowest = d <= to[(i + n - 1) % n][2] && d < to[(i + 1) % n][2];
      if ((lowest && d + shift < limit) || d == nearest) {
        walls.add(wall(i, to[i], x, y, sign, d + shift));
      }
    }
    walls.sort((a, b) -> Double.compare(a.distance(), b.distance()));
    return walls.subList(0, Math.min(4, walls.size()));
  }

  private Wall wall(int i, double[] to, double x, double y, double sign, double distance) {
    if (to[2] > 1e-9) {
      return new Wall(sign * distance, sign * (x - to[0]) / to[2], sign * (y - to[1]) / to[2]);
    }
    int j = i == 0 ? xs.length - 1 : i - 1;
    double ex = xs[i] - xs[j];
    double ey = ys[i] - ys[j];
    double e = way(ex, ey);
    return new Wall(sign * distance, -ey / e, ex / e);
  }

  /** Points along the edge, corners included, none farther from the next than a step. */
  double[][] along(double step) {
    List<double[]> points = new ArrayList<>();
    int n = xs.length;
    for (int i = 0; i < n; i++) {
      int q = (i + 1) % n;
      double length = way(xs[q] - xs[i], ys[q] - ys[i]);
      int parts = Math.max(1, (int) Math.ceil(length / step));
      for (int k = 0; k < parts; k++) {
        double t = (double) k / parts;
        points.add(new double[] {xs[i] + t * (xs[q] - xs[i]), ys[i] + t * (ys[q] - ys[i])});
      }
    }
    return points.toArray(new double[0][]);
  }

  /** Directions of mirror axes through the centroid, in radians from 0 to π; at most four. */
  List<Double> mirrorAxes() {
    List<Double> tried = new ArrayList<>(List.of(0.0, Math.PI / 2));
    for (int k = 1; k < 12; k++) {
      tried.add(k * Math.PI / 12);
    }
    if (xs.length <= 64) {
      for (int i = 0; i < xs.length; i++) {
        int q = (i + 1) % xs.length;
        tried.add(Math.atan2(ys[i], xs[i]));
        tried.add(Math.atan2(ys[i] + ys[q], xs[i] + xs[q]));
      }
    }
    List<Double> axes = new ArrayList<>();
    for (double angle : tried) {
      double axis = angle - Math.PI * Math.floor(angle / Math.PI);
      boolean known = axes.stream().anyMatch(a -> Math.abs(Math.sin(a - axis)) < 1e-6);
      if (axes.size() < 4 && !known && isMirror(axis)) {
        axes.add(axis);
      }
    }
    return axes;
  }

  /** Those axes of which none is another one turned with the whole outline. */
  List<Double> unlikeAxes(List<Double> axes) {
    List<Double> unlike = new ArrayList<>();
    for (double axis : axes) {
      if (unlike.stream().noneMatch(a -> turnsIntoItself(axis - a))) {
        unlike.add(axis);
      }
    }
    return unlike;
  }

  private boolean turnsIntoItself(double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    for (int i = 0; i < xs.length; i++) {
      if (Math.abs(clearance(c * xs[i] - s * ys[i], s * xs[i] + c * ys[i])) > 1e-6) {
        return false;
      }
    }
    return true;
  }

  private boolean isMirror(double axis) {
    double c = Math.cos(2 * axis);
    double s = Math.sin(2 * axis);
    for (int i = 0; i < xs.length; i++) {
      if (Math.abs(clearance(c * xs[i] + s * ys[i], s * xs[i] - c * ys[i])) > 1e-6) {
        return false;
      }
    }
    return true;
  }
}
