package pourwright.shape;

import java.awt.geom.Path2D;
import java.util.Locale;
import java.util.SplittableRandom;

/** A random smooth outline round the origin, as path data and as the platform's own path. */
record Blob(String d, Path2D path) {

  static Blob random(SplittableRandom r) {
    int n = r.nextInt(4, 9);
    double[] radius = new double[n];
    for (int i = 0; i < n; i++) {
      radius[i] = r.nextDouble(35, 60);
    }
    StringBuilder d = new StringBuilder();
    Path2D path = new Path2D.Double();
    double step = 2 * Math.PI / n;
    double pull = step / 3;
    for (int i = 0; i <= n; i++) {
      double angle = i * step;
      double x = radius[i % n] * Math.cos(angle);
      double y = radius[i % n] * Math.sin(angle);
      if (i == 0) {
        d.append(String.format(Locale.ROOT, "M%.9f %.9f", x, y));
        path.moveTo(x, y);
        continue;
      }
      double before = radius[i - 1];
      double fromX = before * (Math.cos(angle - step) - pull * Math.sin(angle - step));
      double fromY = before * (Math.sin(angle - step) + pull * Math.cos(angle - step));
      double toX = x + pull * radius[i % n] * Math.sin(angle);
      double toY = y - pull * radius[i % n] * Math.cos(angle);
      d.append(
          String.format(
              Locale.ROOT, "C%.9f %.9f %.9f %.9f %.9f %.9f", fromX, fromY, toX, toY, x, y));
      path.curveTo(fromX, fromY, toX, toY, x, y);
    }
    path.closePath();
    return new Blob(d.append('Z').toString(), path);
  }
}
