package pourwright.page.shelf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Readings over time as lines, with the numbers behind them.
 *
 * @param title what is drawn and in which unit
 * @param lines one for each cycle
 * @param ticks marks on both axes
 * @param limitY where the limit's line lies, or a negative number
 * @param limit the limit in words, or an empty string
 * @param rows the numbers: whose, minute, value
 */
public record Plot(
    String title,
    List<Line> lines,
    List<Tick> ticks,
    double limitY,
    String limit,
    List<List<String>> rows) {
  /** Size of the drawing. */
  public static final double WIDE = 600;

  /** Height of the drawing. */
  public static final double HIGH = 260;

  private static final double LEFT = 56;
  private static final double RIGHT = 90;
  private static final double TOP = 14;
  private static final double BOTTOM = 34;
  private static final double NAME_HIGH = 13;
  private static final String[] DASHES = {"none", "8 4", "2 4", "12 4 2 4", "4 2"};

  /** A polyline with its name at its end. */
  public record Line(String name, String points, String dash, double endX, double endY) {}

  /** A mark with its text. */
  public record Tick(double x, double y, String text, boolean onX) {}

  /** A limit to draw, or NaN. */
  record Limit(double value, String words) {
    static final Limit NONE = new Limit(Double.NaN, "");
  }

  /** A drawing of series of minute and value; empty series are left out. */
  static Plot of(String title, Map<String, List<double[]>> series, Limit limit) {
    double longest = 1;
    double high = Double.isNaN(limit.value) ? 0 : limit.value;
    double low = Double.POSITIVE_INFINITY;
    for (List<double[]> points : series.values()) {
      for (double[] p : points) {
        longest = Math.max(longest, p[0]);
        high = Math.max(high, p[1]);
        low = Math.min(low, p[1]);
      }
    }
    low = low > 0.7 * high && Double.isNaN(limit.value) ? low - 0.1 * (high - low + 1) : 0;
    double top = high + 0.05 * (high - low + 1e-9);
    Frame frame = new Frame(longest, low, top);
    List<Line> lines = new ArrayList<>();
    List<List<String>> rows = new ArrayList<>();
    int drawn = 0;
    for (Map.Entry<String, List<double[]>> one : series.entrySet()) {
      if (!one.getValue().isEmpty()) {
        lines.add(frame.line(one.getKey(), one.getValue(), DASHES[drawn++ % DASHES.length]));
        one.getValue().forEach(p -> rows.add(List.of(one.getKey(), plain(p[0]), plain(p[1]))));
      }
    }
    apart(lines);
    double limitY = Double.isNaN(limit.value) ? -1 : frame.y(limit.value);
    return new Plot(title, lines, frame.ticks(), limitY, limit.words, rows);
  }

  /** Names at the ends of lines are moved apart, so that each can be read. */
  private static void apart(List<Line> lines) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingDouble((Integer i) -> lines.get(i).endY));
    double step = Math.min(NAME_HIGH, (HIGH - TOP) / Math.max(1, lines.size()));
    double least = TOP + NAME_HIGH / 2;
    double last = HIGH - 4 - step * (lines.size() - 1);
    for (int i : order) {
      Line line = lines.get(i);
      double y = Math.min(Math.max(line.endY, least), last);
      lines.set(i, new Line(line.name, line.points, line.dash, line.endX, y));
      least = y + step;
      last += step;
    }
  }

  private record Frame(double longest, double low, double top) {
    double x(double minute) {
      return LEFT + (WIDE - LEFT - RIGHT) * minute / longest;
    }

    double y(double value) {
      return HIGH - BOTTOM - (HIGH - TOP - BOTTOM) * (value - low) / (top - low);
    }

    Line line(String name, List<double[]> points, String dash) {
      StringBuilder text = new StringBuilder();
      for (double[] p : points) {
        text.append(String.format(Locale.ROOT, "%.1f,%.1f ", x(p[0]), y(p[1])));
      }
      double[] last = points.get(points.size() - 1);
      return new Line(name, text.toString().strip(), dash, x(last[0]) + 4, y(last[1]) + 4);
    }

    List<Tick> ticks() {
      List<Tick> ticks = new ArrayList<>();
      double every = longest > 300 ? 120 : longest > 90 ? 60 : 15;
      for (double m = 0; m <= longest; m += every) {
        ticks.add(new Tick(x(m), HIGH - BOTTOM, plain(m), true));
      }
      double step = Math.pow(10, Math.floor(Math.log10(top - low)));
      step = (top - low) / step < 2.5 ? step / 2 : step;
      for (double v = Math.ceil(low / step) * step; v <= top; v += step) {
        ticks.add(new Tick(LEFT, y(v), plain(v), false));
      }
      return ticks;
    }
  }

  static String plain(double value) {
    return Math.abs(value - Math.rint(value)) < 0.05
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, "%.1f", value);
  }
}
