package pourwright.wick;

import java.util.ArrayList;
import java.util.List;

/**
 * How well wicks cover a field: the farthest point from its nearest wick, measured inside the
 * field, and every other place where the distance to the nearest wick is locally greatest, with the
 * rate at which it changes when the wicks move.
 *
 * <p>Such a place is a corner of the field, a point of its edge between two wicks, or a point
 * between three. By the envelope theorem its distance changes as a mean of its wicks' distances,
 * weighted so that the pulls on the place itself balance.
 */
final class Cover {
  private static final double BALANCE = 1e-7;

  private final Field field;
  private final double[][] edge;
  private final boolean[][] edgeSees;
  private double[] at = {};
  private int wicks;
  private double[][] toReflex = {};
  private int[][] hopToReflex = {};
  private final Way way = new Way();

  /** A place of locally greatest distance; slopes by wick coordinate. */
  record Far(double x, double y, double distance, double[] slopes) {}

  /** A shortest way from a wick to a place: length, last turn, first turn. */
  private static final class Way {
    double length;
    double lastX;
    double lastY;
    double hopX;
    double hopY;
  }

  Cover(Field field, double step) {
    this.field = field;
    this.edge = field.along(step);
    int m = field.reflex.length;
    this.edgeSees = new boolean[m == 0 ? 0 : edge.length][];
    for (int p = 0; p < edgeSees.length; p++) {
      edgeSees[p] = seesReflex(edge[p][0], edge[p][1]);
    }
  }

  private boolean[] seesReflex(double x, double y) {
    boolean[] sees = new boolean[field.reflex.length];
    for (int v = 0; v < sees.length; v++) {
      sees[v] = field.sees(x, y, field.xs[field.reflex[v]], field.ys[field.reflex[v]]);
    }
    return sees;
  }

  /** Sets the wicks, x and y by turns. */
  void place(double[] centres) {
    at = centres;
    wicks = centres.length / 2;
    int m = field.reflex.length;
    toReflex = new double[wicks][m];
    hopToReflex = new int[wicks][m];
    for (int i = 0; i < wicks && m > 0; i++) {
      boolean[] sees = seesReflex(at[2 * i], at[2 * i + 1]);
      for (int v = 0; v < m; v++) {
        toReflex[i][v] = Double.POSITIVE_INFINITY;
        for (int u = 0; u < m; u++) {
          if (sees[u]) {
            int corner = field.reflex[u];
            double d =
                Field.way(at[2 * i] - field.xs[corner], at[2 * i + 1] - field.ys[corner])
                    + field.betweenReflex[u][v];
            if (d < toReflex[i][v]) {
              toReflex[i][v] = d;
              hopToReflex[i][v] = u;
            }
          }
        }
      }
    }
  }

  private double distance(int wick, double x, double y, boolean[] pointSees) {
    double wx = at[2 * wick];
    double wy = at[2 * wick + 1];
    way.lastX = wx;
    way.lastY = wy;
    way.hopX = x;
    way.hopY = y;
    way.length = Field.way(x - wx, y - wy);
    if (field.isConvex() || field.sees(wx, wy, x, y)) {
      return way.length;
    }
    double best = Double.POSITIVE_INFINITY;
    for (int v = 0; v < pointSees.length; v++) {
      if (pointSees[v]) {
        double vx = field.xs[field.reflex[v]];
        double vy = field.ys[field.reflex[v]];
        double d = toReflex[wick][v] + Field.way(x - vx, y - vy);
        if (d < best) {
          best = d;
          way.lastX = vx;
          way.lastY = vy;
          int hop = field.reflex[hopToReflex[wick][v]];
          way.hopX = field.xs[hop];
          way.hopY = field.ys[hop];
        }
      }
    }
    way.length = Double.isInfinite(best) ? way.length : best;
    return way.length;
  }

  /** Distance from a place to its nearest wick. */
  double nearest(double x, double y) {
    boolean[] sees = field.isConvex() ? new boolean[0] : seesReflex(x, y);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < wicks; i++) {
      least = Math.min(least, distance(i, x, y, sees));
    }
    return least;
  }

  private int nearestAtEdge(int p, double[] into) {
    boolean[] sees = field.isConvex() ? new boolean[0] : edgeSees[p];
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < wicks; i++) {
      double d = distance(i, edge[p][0], edge[p][1], sees);
      if (d < least) {
        least = d;
        best = i;
      }
    }
    into[p] = least;
    return best;
  }

  /** All places of locally greatest distance; never empty. */
  List<Far> farPlaces() {
    List<Far> places = new ArrayList<>();
    edgePlaces(places);
    innerPlaces(places);
    return places;
  }

  /** The covering radius: the greatest distance of any place from its nearest wick. */
  double radius() {
    return farPlaces().stream().mapToDouble(Far::distance).max().orElse(0);
  }

  private void edgePlaces(List<Far> places) {
    int m = edge.length;
    double[] distance = new double[m];
    int[] nearest = new int[m];
    for (int p = 0; p < m; p++) {
      nearest[p] = nearestAtEdge(p, distance);
    }
    for (int p = 0; p < m; p++) {
      int q = (p + 1) % m;
      int o = (p + m - 1) % m;
      if (distance[p] >= distance[o] && distance[p] >= distance[q]) {
        places.add(single(nearest[p], edge[p]));
      }
      if (nearest[p] != nearest[q]) {
        between(nearest[p], nearest[q], edge[p], edge[q], places);
      }
    }
  }

  private Far single(int wick, double[] p) {
    double d = distance(wick, p[0], p[1], seesAt(p));
    double[] slopes = new double[at.length];
    slope(slopes, wick, 1);
    return new Far(p[0], p[1], d, slopes);
  }

  private boolean[] seesAt(double[] p) {
    return field.isConvex() ? new boolean[0] : seesReflex(p[0], p[1]);
  }

  /** Adds the slope of the last measured way of a wick. */
  private void slope(double[] slopes, int wick, double weight) {
    double dx = at[2 * wick] - way.hopX;
    double dy = at[2 * wick + 1] - way.hopY;
    double d = Math.max(1e-12, Field.way(dx, dy));
    slopes[2 * wick] += weight * dx / d;
    slopes[2 * wick + 1] += weight * dy / d;
  }

  /** The point of an edge step that two wicks reach alike, when it is a top of their distance. */
  private void between(int a, int b, double[] p, double[] q, List<Far> places) {
    double[] m = field.isConvex() ? alikeStraight(a, b, p, q) : alike(a, b, p, q);
    double tx = q[0] - p[0];
    double ty = q[1] - p[1];
    boolean[] sees = seesAt(m);
    double d = distance(a, m[0], m[1], sees);
    double pullA = ((m[0] - way.lastX) * tx + (m[1] - way.lastY) * ty);
    double[] slopes = new double[at.length];
    double[] slopesB = new double[at.length];
    slope(slopes, a, 1);
    distance(b, m[0], m[1], sees);
    double pullB = ((m[0] - way.lastX) * tx + (m[1] - way.lastY) * ty);
    slope(slopesB, b, 1);
    if (pullA * pullB > 0) {
      return;
    }
    double share = pullA == pullB ? 0.5 : pullB / (pullB - pullA);
    for (int i = 0; i < slopes.length; i++) {
      slopes[i] = share * slopes[i] + (1 - share) * slopesB[i];
    }
    places.add(new Far(m[0], m[1], d, slopes));
  }

  /** Where straight ways from both are equally long: their squares differ by a line. */
  private double[] alikeStraight(int a, int b, double[] p, double[] q) {
    double atP = squareGap(a, b, p);
    double atQ = squareGap(a, b, q);
    double t = atP == atQ ? 0.5 : Math.max(0, Math.min(1, atP / (atP - atQ)));
    return new double[] {p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])};
  }

  private double squareGap(int a, int b, double[] p) {
    double ax = p[0] - at[2 * a];
    double ay = p[1] - at[2 * a + 1];
    double bx = p[0] - at[2 * b];
    double by = p[1] - at[2 * b + 1];
    return ax * ax + ay * ay - bx * bx - by * by;
  }

  /** The same where ways bend, by halving 26 times: a step of the edge to a billionth. */
  private double[] alike(int a, int b, double[] p, double[] q) {
    double low = 0;
    double high = 1;
    double[] m = {p[0], p[1]};
    for (int k = 0; k < 26; k++) {
      double t = (low + high) / 2;
      m[0] = p[0] + t * (q[0] - p[0]);
      m[1] = p[1] + t * (q[1] - p[1]);
      boolean[] sees = seesAt(m);
      double da = distance(a, m[0], m[1], sees);
      if (da <= distance(b, m[0], m[1], sees)) {
        low = t;
      } else {
        high = t;
      }
    }
    return m;
  }

  private void innerPlaces(List<Far> places) {
    Sources sources = Sources.of(field, at, toReflex);
    int n = sources.count();
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        for (int k = j + 1; k < n; k++) {
          double[] p = sources.between(i, j, k);
          if (p.length == 2 && field.inside(p[0], p[1])) {
            inner(sources.wick(i), sources.wick(j), sources.wick(k), p, places);
          }
        }
      }
    }
  }

  private void inner(int a, int b, int c, double[] p, List<Far> places) {
    boolean[] sees = seesAt(p);
    int[] three = {a, b, c};
    double[] px = new double[3];
    double[] py = new double[3];
    double[][] slopes = new double[3][at.length];
    double d = 0;
    for (int i = 0; i < 3; i++) {
      double di = distance(three[i], p[0], p[1], sees);
      if (i > 0 && Math.abs(di - d) > 1e-6) {
        return;
      }
      d = di;
      px[i] = (p[0] - way.lastX) / di;
      py[i] = (p[1] - way.lastY) / di;
      slope(slopes[i], three[i], 1);
    }
    for (int i = 0; i < wicks; i++) {
      if (distance(i, p[0], p[1], sees) < d - BALANCE) {
        return;
      }
    }
    double w0 = px[1] * py[2] - px[2] * py[1];
    double w1 = px[2] * py[0] - px[0] * py[2];
    double w2 = px[0] * py[1] - px[1] * py[0];
    double sum = w0 + w1 + w2;
    if (Math.abs(sum) < 1e-12
        || w0 / sum < -BALANCE
        || w1 / sum < -BALANCE
        || w2 / sum < -BALANCE) {
      return;
    }
    double[] mean = new double[at.length];
    for (int i = 0; i < mean.length; i++) {
      mean[i] = (w0 * slopes[0][i] + w1 * slopes[1][i] + w2 * slopes[2][i]) / sum;
    }
    places.add(new Far(p[0], p[1], d, mean));
  }
}
