package pourwright.page.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pourwright.burn.Repeats;

/**
 * One measure of several wicks: a row a wick, a dot a candle, a bar over the 95 % interval of the
 * mean.
 *
 * @param title what is drawn and in which unit
 * @param high height of the drawing; it is {@value #WIDE} wide
 * @param rows one a wick
 * @param ticks marks on the axis
 * @param told differences that the repeats tell, and those that they do not, in sentences
 * @param numbers wick, candles, mean, interval, each value
 */
public record Dots(
    String title,
    double high,
    List<Row> rows,
    List<Plot.Tick> ticks,
    List<String> told,
    List<List<String>> numbers) {
  /** Width of the drawing. */
  public static final int WIDE = 420;

  private static final double LEFT = 122;
  private static final double RIGHT = 20;
  private static final double ROW = 34;
  private static final double TOP = 10;

  /**
   * A wick's row.
   *
   * @param dots where the candles lie
   * @param lowX from where the interval reaches; equal to highX where there is none
   */
  public record Row(
      String name, double y, List<Double> dots, double meanX, double lowX, double highX) {}

  /** A drawing; wicks without a value are left out. */
  static Dots of(String title, String unit, Map<String, Repeats> wicks) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Repeats r : wicks.values()) {
      for (double v : r.values()) {
        low = Math.min(low, v);
        high = Math.max(high, v);
      }
      low = Double.isNaN(r.low()) ? low : Math.min(low, Math.max(0, r.low()));
      high = Double.isNaN(r.high()) ? high : Math.max(high, r.high());
    }
    double room = Math.max(0.08 * (high - low), 0.05 * Math.abs(high) + 1e-9);
    Axis axis = new Axis(low - room, high + room);
    List<Row> rows = new ArrayList<>();
    List<List<String>> numbers = new ArrayList<>();
    for (Map.Entry<String, Repeats> wick : wicks.entrySet()) {
      Repeats r = wick.getValue();
      double y = TOP + ROW * (rows.size() + 0.5);
      boolean one = Double.isNaN(r.low());
      rows.add(
          new Row(
              wick.getKey(),
              y,
              r.values().stream().map(axis::x).toList(),
              axis.x(r.mean()),
              axis.x(one ? r.mean() : Math.max(r.low(), axis.low)),
              axis.x(one ? r.mean() : r.high())));
      numbers.add(
          List.of(
              wick.getKey(),
              String.valueOf(r.values().size()),
              two(r.mean()),
              one ? "one candle only" : two(r.low()) + " to " + two(r.high()),
              String.join(", ", r.values().stream().map(Dots::two).toList())));
    }
    double bottom = TOP + ROW * rows.size();
    return new Dots(
        title + ", " + unit, bottom + 30, rows, axis.ticks(bottom), told(wicks, unit), numbers);
  }

  private static List<String> told(Map<String, Repeats> wicks, String unit) {
    List<String> told = new ArrayList<>();
    List<String> names = new ArrayList<>(wicks.keySet());
    for (int i = 0; i < names.size(); i++) {
      for (int j = i + 1; j < names.size(); j++) {
        String a = names.get(i);
        String b = names.get(j);
        Repeats one = wicks.get(a);
        Repeats other = wicks.get(b);
        if (one != null && other != null) {
          one.over(other).ifPresent(d -> told.add(sentence(a, b, d, unit)));
        }
      }
    }
    return told;
  }

  private static String sentence(String a, String b, Repeats.Difference d, String unit) {
    return String.format(
        Locale.ROOT,
        "%s less %s: %+.2f %s (%+.2f to %+.2f)%s",
        a,
        b,
        d.by(),
        unit,
        d.low(),
        d.high(),
        d.cannotBeToldApart() ? ", not told apart yet" : "");
  }

  private static String two(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  private record Axis(double low, double high) {
    double x(double value) {
      return LEFT + (WIDE - LEFT - RIGHT) * (value - low) / (high - low);
    }

    List<Plot.Tick> ticks(double bottom) {
      double step = Math.pow(10, Math.floor(Math.log10(high - low)));
      step = (high - low) / step < 2 ? step / 5 : (high - low) / step < 5 ? step / 2 : step;
      List<Plot.Tick> ticks = new ArrayList<>();
      for (double v = Math.ceil(low / step) * step; v <= high; v += step) {
        String text =
            String.format(Locale.ROOT, step < 0.1 ? "%.2f" : step < 1 ? "%.1f" : "%.0f", v);
        ticks.add(new Plot.Tick(x(v), bottom, text, true));
      }
      return ticks;
    }
  }
}
