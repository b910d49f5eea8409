package pourwright.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Draws symbols: circles, polygons and lines as path data. */
final class Pen {
  static final String BLACK = "#000000";
  static final String WHITE = "#ffffff";
  static final String RED = "#c1121c";
  static final String BLUE = "#005387";
  static final String YELLOW = "#f9a800";

  /** How far the handles of a quarter circle lie from its ends, in radii. */
  private static final double ROUND = 0.5523;

  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(?:\\.[0-9]+)?");

  private final List<Symbol.Layer> layers = new ArrayList<>();
  private double scale = 1;

  /** From here on everything is drawn smaller, about the middle of the square. */
  Pen smaller(double factor) {
    scale = factor;
    return this;
  }

  Pen fill(String colour, String path) {
    layers.add(new Symbol.Layer(scaled(path), colour, 0));
    return this;
  }

  Pen line(String colour, double width, String path) {
    layers.add(new Symbol.Layer(scaled(path), colour, width * scale));
    return this;
  }

  private String scaled(String path) {
    return scale == 1
        ? path
        : NUMBER
            .matcher(path)
            .replaceAll(m -> number(50 + (Double.parseDouble(m.group()) - 50) * scale));
  }

  Symbol named(String name) {
    return new Symbol(name, layers);
  }

  /** A closed polygon through x, y pairs. */
  static String polygon(double... xy) {
    StringBuilder path = new StringBuilder();
    for (int i = 0; i < xy.length; i += 2) {
      path.append(i == 0 ? "M" : "L").append(number(xy[i])).append(' ').append(number(xy[i + 1]));
    }
    return path.append('Z').toString();
  }

  /** An open line through x, y pairs. */
  static String through(double... xy) {
    String closed = polygon(xy);
    return closed.substring(0, closed.length() - 1);
  }

  static String circle(double x, double y, double r) {
    return oval(x, y, r, r);
  }

  static String oval(double x, double y, double rx, double ry) {
    double hx = rx * ROUND;
    double hy = ry * ROUND;
    return "M"
        + point(x + rx, y)
        + curve(x + rx, y + hy, x + hx, y + ry, x, y + ry)
        + curve(x - hx, y + ry, x - rx, y + hy, x - rx, y)
        + curve(x - rx, y - hy, x - hx, y - ry, x, y - ry)
        + curve(x + hx, y - ry, x + rx, y - hy, x + rx, y)
        + "Z";
  }

  static String curve(double x1, double y1, double x2, double y2, double x, double y) {
    return "C" + point(x1, y1) + " " + point(x2, y2) + " " + point(x, y);
  }

  static String point(double x, double y) {
    return number(x) + " " + number(y);
  }

  private static String number(double value) {
    String text = String.format(Locale.ROOT, "%.2f", value);
    return text.endsWith(".00") ? text.substring(0, text.length() - 3) : text;
  }
}
