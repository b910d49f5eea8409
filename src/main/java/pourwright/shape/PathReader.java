package pourwright.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.OutOfRange;

/** Reads the data of an SVG path character by character into curves in millimetres. */
final class PathReader {
  private static final String COMMANDS = "MmLlHhVvCcSsQqTtAaZz";
  private static final int NUMBERS_MAX = 20_000;

  private final String d;
  private final double scale;
  private final List<Curve> curves = new ArrayList<>();
  private int at;
  private int numbers;
  private Point here = Point.ORIGIN;
  private Point start = Point.ORIGIN;
  private @Nullable Point cubicControl;
  private @Nullable Point quadraticControl;
  private boolean closed;

  PathReader(String d, double mmPerUnit) {
    this.d = d;
    this.scale = mmPerUnit;
  }

  List<Curve> read() {
    skip();
    if (at == d.length() || (d.charAt(at) != 'M' && d.charAt(at) != 'm')) {
      throw wrong(at, "a path begins with M", "write M x y first");
    }
    while (at < d.length()) {
      command(d.charAt(at));
    }
    if (curves.isEmpty()) {
      throw wrong(at, "the path draws nothing", "add lines or curves after M");
    }
    if (!closed) {
      lineTo(start);
    }
    return curves;
  }

  private void command(char letter) {
    if (COMMANDS.indexOf(letter) < 0) {
      throw wrong(at, "'" + letter + "' is no path command", "use M L H V C S Q T A Z");
    }
    if (closed) {
      throw wrong(at, "the path goes on after it was closed", "give one outline only");
    }
    if (Character.toUpperCase(letter) == 'M' && !curves.isEmpty()) {
      throw wrong(at, "a second outline begins", "give one outline only");
    }
    at++;
    char upper = Character.toUpperCase(letter);
    boolean relative = letter != upper;
    if (upper == 'Z') {
      lineTo(start);
      closed = true;
      skip();
      return;
    }
    boolean first = true;
    do {
      draw(upper, relative, first);
      first = false;
      skip();
    } while (at < d.length() && "+-.0123456789".indexOf(d.charAt(at)) >= 0);
  }

  private void draw(char upper, boolean relative, boolean first) {
    Point from = here;
    Point cubic = cubicControl;
    Point quadratic = quadraticControl;
    cubicControl = null;
    quadraticControl = null;
    switch (upper) {
      case 'M' -> {
        Point to = point(relative);
        if (first) {
          here = to;
          start = to;
        } else {
          lineTo(to);
        }
      }
      case 'L' -> lineTo(point(relative));
      case 'H' -> {
        double x = number() * scale;
        lineTo(new Point(relative ? from.xMm() + x : x, from.yMm()));
      }
      case 'V' -> {
        double y = -number() * scale;
        lineTo(new Point(from.xMm(), relative ? from.yMm() + y : y));
      }
      case 'C' -> cubicTo(point(relative), point(relative), point(relative));
      case 'S' -> cubicTo(mirrored(cubic, from), point(relative), point(relative));
      case 'Q' -> quadraticTo(point(relative), point(relative));
      case 'T' -> quadraticTo(mirrored(quadratic, from), point(relative));
      default -> arcTo(relative);
    }
  }

  private static Point mirrored(@Nullable Point control, Point about) {
    return control == null ? about : about.times(2).minus(control);
  }

  private void lineTo(Point to) {
    if (!to.equals(here)) {
      curves.add(new Curve.Straight(here, to));
    }
    here = to;
  }

  private void cubicTo(Point first, Point second, Point to) {
    curves.add(new Curve.Cubic(here, first, second, to));
    cubicControl = second;
    here = to;
  }

  private void quadraticTo(Point control, Point to) {
    curves.add(Curve.Cubic.ofQuadratic(here, control, to));
    quadraticControl = control;
    here = to;
  }

  /** Appendix B.2.4: from end points to centre, radii enlarged where they do not reach. */
  private void arcTo(boolean relative) {
    double rx = Math.abs(number()) * scale;
    double ry = Math.abs(number()) * scale;
    double tilt = -Math.toRadians(number());
    boolean large = flag();
    boolean sweep = !flag();
    Point to = point(relative);
    Point from = here;
    if (to.equals(from)) {
      return;
    }
    if (rx == 0 || ry == 0) {
      lineTo(to);
      return;
    }
    Point half = from.minus(to).times(0.5).turned(-tilt);
    double reach = Math.hypot(half.xMm() / rx, half.yMm() / ry);
    if (reach > 1) {
      rx *= reach;
      ry *= reach;
    }
    double x = half.xMm() / rx;
    double y = half.yMm() / ry;
    double root = Math.sqrt(Math.max(0, 1 / (x * x + y * y) - 1)) * (large == sweep ? -1 : 1);
    Point off = new Point(root * rx * y, -root * ry * x);
    Point centre = off.turned(tilt).plus(from.plus(to).times(0.5));
    double begin = Math.atan2((half.yMm() - off.yMm()) / ry, (half.xMm() - off.xMm()) / rx);
    double end = Math.atan2((-half.yMm() - off.yMm()) / ry, (-half.xMm() - off.xMm()) / rx);
    double swept = end - begin;
    if (sweep && swept < 0) {
      swept += 2 * Math.PI;
    } else if (!sweep && swept > 0) {
      swept -= 2 * Math.PI;
    }
    Point along = new Point(rx, 0).turned(tilt);
    Point across = new Point(0, ry).turned(tilt);
    curves.add(new Curve.Arc(centre, along, across, begin, swept));
    here = to;
  }

  private Point point(boolean relative) {
    double x = number() * scale;
    double y = -number() * scale;
    return relative ? new Point(here.xMm() + x, here.yMm() + y) : new Point(x, y);
  }

  private boolean flag() {
    skip();
    if (at < d.length() && (d.charAt(at) == '0' || d.charAt(at) == '1')) {
      return d.charAt(at++) == '1';
    }
    throw wrong(at, "an arc's flag must be 0 or 1", "write A rx ry tilt large sweep x y");
  }

  private double number() {
    skip();
    int from = at;
    if (at < d.length() && (d.charAt(at) == '-' || d.charAt(at) == '+')) {
      at++;
    }
    int digits = digits();
    if (at < d.length() && d.charAt(at) == '.') {
      at++;
      digits += digits();
    }
    if (digits == 0) {
      at = from;
      throw wrong(at, "a number is missing", "look at the command before it");
    }
    exponent();
    if (++numbers > NUMBERS_MAX) {
      throw wrong(at, "the path has more than " + NUMBERS_MAX + " numbers", "simplify it");
    }
    double value = Double.parseDouble(d.substring(from, at));
    if (!(Math.abs(value * scale) <= 1e5)) {
      throw wrong(from, "the number is larger than any vessel", "check the scale");
    }
    return value;
  }

  private int digits() {
    int from = at;
    while (at < d.length() && d.charAt(at) >= '0' && d.charAt(at) <= '9') {
      at++;
    }
    return at - from;
  }

  private void exponent() {
    int from = at;
    if (at < d.length() && (d.charAt(at) == 'e' || d.charAt(at) == 'E')) {
      at++;
      if (at < d.length() && (d.charAt(at) == '-' || d.charAt(at) == '+')) {
        at++;
      }
      if (digits() == 0) {
        at = from;
      }
    }
  }

  private void skip() {
    while (at < d.length() && (Character.isWhitespace(d.charAt(at)) || d.charAt(at) == ',')) {
      at++;
    }
  }

  private static OutOfRange wrong(int at, String what, String hint) {
    return new OutOfRange(
        "svg_path", String.format(Locale.ROOT, "at character %d: %s", at + 1, what), hint);
  }
}
