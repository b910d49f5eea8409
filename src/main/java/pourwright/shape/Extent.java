package pourwright.shape;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** How far points reach along one axis. */
final class Extent {
  private Extent() {}

  static double of(List<Point> points, ToDoubleFunction<Point> along) {
    double low = points.stream().mapToDouble(along).min().orElse(0);
    double high = points.stream().mapToDouble(along).max().orElse(0);
    return high - low;
  }
}
