package pourwright.label;

import static pourwright.label.Pen.BLACK;
import static pourwright.label.Pen.BLUE;
import static pourwright.label.Pen.RED;
import static pourwright.label.Pen.WHITE;
import static pourwright.label.Pen.YELLOW;
import static pourwright.label.Pen.circle;
import static pourwright.label.Pen.curve;
import static pourwright.label.Pen.oval;
import static pourwright.label.Pen.point;
import static pourwright.label.Pen.polygon;
import static pourwright.label.Pen.through;

/** Our drawings of the safety signs for candles. */
final class SafetySigns {
  private SafetySigns() {}

  /** A candle with its foot at (x, y): body of the given size and a flame. */
  private static Pen candle(Pen pen, String colour, double x, double y, double width) {
    double high = width * 1.5;
    double top = y - high;
    return pen.fill(
            colour,
            polygon(x - width / 2, top, x + width / 2, top, x + width / 2, y, x - width / 2, y))
        .line(colour, width * 0.1, through(x, top, x, top - width * 0.25))
        .fill(
            colour,
            "M"
                + point(x, top - width * 1.15)
                + curve(
                    x + width * 0.45,
                    top - width * 0.6,
                    x + width * 0.3,
                    top - width * 0.15,
                    x,
                    top - width * 0.15)
                + curve(
                    x - width * 0.3,
                    top - width * 0.15,
                    x - width * 0.45,
                    top - width * 0.6,
                    x,
                    top - width * 1.15)
                + "Z");
  }

  /** Triangle with a black border; two thirds of it ground. */
  static Pen warning() {
    return new Pen()
        .line(BLACK, 9, polygon(50, 10, 95, 88, 5, 88))
        .fill(BLACK, polygon(50, 10, 95, 88, 5, 88))
        .fill(YELLOW, polygon(50, 20, 86.5, 83, 13.5, 83))
        .fill(
            BLACK,
            "M50 36"
                + curve(55, 36, 55.5, 40, 55, 44)
                + "L52.5 63L47.5 63L45 44"
                + curve(44.5, 40, 45, 36, 50, 36)
                + "Z")
        .fill(BLACK, circle(50, 72, 4.4));
  }

  /** Blue disc: an eye upon a burning candle. */
  static Pen withinSight() {
    Pen pen = new Pen().fill(BLUE, circle(50, 50, 48));
    String eye =
        "M" + point(17, 30) + curve(30, 12, 70, 12, 83, 30) + curve(70, 48, 30, 48, 17, 30) + "Z";
    pen.fill(WHITE, eye).fill(BLUE, circle(50, 30, 10.5)).fill(WHITE, circle(50, 30, 4));
    return candle(pen, WHITE, 50, 90, 14);
  }

  /** White ground, red ring and bar from upper left to lower right, over a black sign. */
  private static Pen prohibited(Pen sign) {
    return sign.line(RED, 9, circle(50, 50, 44)).line(RED, 8, through(19, 19, 81, 81));
  }

  private static Pen ground() {
    return new Pen().fill(WHITE, circle(50, 50, 48));
  }

  static Pen awayFromFire() {
    Pen pen = ground();
    pen.fill(
        BLACK,
        "M58 15L84 24L84 72"
            + curve(78, 66, 74, 76, 69, 68)
            + curve(65, 62, 62, 70, 58, 64)
            + curve(62, 50, 54, 42, 58, 30)
            + "Z");
    pen.fill(BLACK, polygon(16, 77, 84, 77, 80, 81, 20, 81));
    return prohibited(candle(pen, BLACK, 38, 77, 16));
  }

  static Pen awayFromChildren() {
    Pen pen = ground();
    pen.fill(BLACK, circle(34, 33, 8.5))
        .fill(BLACK, "M28 44L40 44L44 62L40 62L40 82L35 82L35 66L33 66L33 82L28 82L28 62L24 62Z")
        .line(BLACK, 5, through(39, 47, 51, 55));
    pen.fill(BLACK, oval(66, 72, 10, 5.5))
        .fill(BLACK, circle(77, 65, 4.6))
        .fill(BLACK, polygon(74, 62, 75, 57, 78, 61))
        .fill(BLACK, polygon(78, 62, 81, 58, 81, 64))
        .line(BLACK, 3, through(60, 74, 60, 83))
        .line(BLACK, 3, through(72, 74, 72, 83))
        .line(BLACK, 2.5, through(57, 70, 53, 63));
    return prohibited(candle(pen, BLACK, 62, 54, 10));
  }

  static Pen noDraught() {
    Pen pen = ground();
    pen.line(BLACK, 4, "M16 36" + curve(24, 30, 30, 42, 40, 36))
        .line(BLACK, 4, "M14 48" + curve(22, 42, 28, 54, 38, 48))
        .line(BLACK, 4, "M16 60" + curve(24, 54, 30, 66, 40, 60));
    return prohibited(candle(pen, BLACK, 63, 82, 18));
  }

  /** Blue disc: a wick between two blades. */
  static Pen trim() {
    return new Pen()
        .fill(BLUE, circle(50, 50, 48))
        .fill(WHITE, polygon(30, 62, 70, 62, 70, 88, 30, 88))
        .line(WHITE, 4, through(50, 62, 50, 36))
        .line(WHITE, 5, through(18, 34, 60, 50))
        .line(WHITE, 5, through(18, 50, 60, 34))
        .line(WHITE, 4, circle(17, 30, 6))
        .line(WHITE, 4, circle(17, 54, 6));
  }
}
