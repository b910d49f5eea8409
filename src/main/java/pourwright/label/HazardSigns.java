package pourwright.label;

import static pourwright.label.Pen.BLACK;
import static pourwright.label.Pen.RED;
import static pourwright.label.Pen.WHITE;
import static pourwright.label.Pen.circle;
import static pourwright.label.Pen.curve;
import static pourwright.label.Pen.oval;
import static pourwright.label.Pen.point;
import static pourwright.label.Pen.polygon;
import static pourwright.label.Pen.through;

/** Our drawings of the hazard diamonds. */
final class HazardSigns {
  private HazardSigns() {}

  /** Red square on a point with a white ground; the square's side is 70.71 of 100 units. */
  private static Pen diamond() {
    return new Pen()
        .fill(RED, polygon(50, 0, 100, 50, 50, 100, 0, 50))
        .fill(WHITE, polygon(50, 9, 91, 50, 50, 91, 9, 50))
        .smaller(0.8);
  }

  static Pen exclamation() {
    return diamond()
        .fill(
            BLACK,
            "M"
                + point(50, 20)
                + curve(57, 20, 58, 26, 57, 32)
                + "L53.5 60L46.5 60L43 32"
                + curve(42, 26, 43, 20, 50, 20)
                + "Z")
        .fill(BLACK, circle(50, 71, 5.6));
  }

  static Pen flame() {
    String outer =
        "M"
            + point(50, 72)
            + curve(38, 72, 31, 64, 31, 54)
            + curve(31, 45, 37, 40, 39, 32)
            + curve(42, 36, 43, 39, 43, 43)
            + curve(48, 38, 51, 28, 49, 19)
            + curve(58, 25, 62, 35, 62, 43)
            + curve(64, 41, 64, 39, 64, 36)
            + curve(68, 42, 70, 48, 70, 54)
            + curve(70, 64, 63, 72, 50, 72)
            + "Z";
    String inner =
        "M"
            + point(50, 69)
            + curve(43, 69, 40, 64, 40, 58)
            + curve(40, 54, 43, 51, 45, 48)
            + curve(46, 51, 46, 53, 46, 55)
            + curve(50, 52, 52, 47, 52, 42)
            + curve(57, 47, 60, 53, 60, 58)
            + curve(60, 64, 57, 69, 50, 69)
            + "Z";
    return diamond()
        .fill(BLACK, outer)
        .fill(WHITE, inner)
        .fill(BLACK, polygon(32, 74.5, 68, 74.5, 68, 78, 32, 78));
  }

  static Pen corrosion() {
    return diamond()
        .fill(BLACK, polygon(30, 40, 46, 30, 49, 35, 33, 45))
        .fill(BLACK, polygon(70, 40, 54, 30, 51, 35, 67, 45))
        .fill(BLACK, oval(33.5, 50.5, 1.8, 2.8))
        .fill(BLACK, oval(33.5, 58, 1.8, 2.8))
        .fill(BLACK, oval(66.5, 50.5, 1.8, 2.8))
        .fill(BLACK, oval(66.5, 58, 1.8, 2.8))
        .fill(BLACK, "M22 65L30 65" + curve(31, 68, 36, 68, 37, 65) + "L46 65L46 70L22 70Z")
        .fill(
            BLACK,
            "M54 72"
                + curve(56, 68, 60, 66, 63, 66)
                + curve(65, 70, 69, 69, 70, 65)
                + "L80 63L80 68L72 75"
                + curve(66, 79, 58, 78, 54, 76)
                + "Z")
        .line(BLACK, 1.4, through(31, 63, 29, 60))
        .line(BLACK, 1.4, through(36, 63, 38, 60))
        .line(BLACK, 1.4, through(64, 63, 62, 60))
        .line(BLACK, 1.4, through(69, 63, 71, 60));
  }

  static Pen skull() {
    return diamond()
        .line(BLACK, 5, through(28, 56, 72, 74))
        .line(BLACK, 5, through(72, 56, 28, 74))
        .fill(BLACK, circle(27, 54, 3.4))
        .fill(BLACK, circle(26, 58.5, 3.4))
        .fill(BLACK, circle(73, 54, 3.4))
        .fill(BLACK, circle(74, 58.5, 3.4))
        .fill(BLACK, circle(27, 76, 3.4))
        .fill(BLACK, circle(26, 71.5, 3.4))
        .fill(BLACK, circle(73, 76, 3.4))
        .fill(BLACK, circle(74, 71.5, 3.4))
        .fill(WHITE, oval(50, 42, 19.5, 20))
        .fill(WHITE, polygon(39, 50, 61, 50, 59, 69, 41, 69))
        .fill(BLACK, oval(50, 38, 17, 16.5))
        .fill(BLACK, polygon(40, 48, 60, 48, 58.5, 64, 41.5, 64))
        .fill(WHITE, oval(43, 40, 4.6, 5))
        .fill(WHITE, oval(57, 40, 4.6, 5))
        .fill(WHITE, polygon(50, 46, 52.4, 51, 47.6, 51))
        .line(WHITE, 1.3, through(46, 57, 46, 64))
        .line(WHITE, 1.3, through(50, 57, 50, 64))
        .line(WHITE, 1.3, through(54, 57, 54, 64));
  }

  static Pen health() {
    String bust =
        "M"
            + point(50, 20)
            + curve(57, 20, 60, 26, 59, 32)
            + curve(58, 37, 56, 40, 56, 42)
            + curve(58, 46, 69, 47, 71, 53)
            + "L71 70L66 78L34 78L29 70L29 53"
            + curve(31, 47, 42, 46, 44, 42)
            + curve(44, 40, 42, 37, 41, 32)
            + curve(40, 26, 43, 20, 50, 20)
            + "Z";
    return diamond().fill(BLACK, bust).fill(WHITE, star(50, 60, 14, 4.6, 6));
  }

  private static String star(double x, double y, double longRay, double shortRay, int rays) {
    double[] xy = new double[rays * 4];
    for (int i = 0; i < rays * 2; i++) {
      double ray = i % 2 == 0 ? longRay : shortRay;
      double angle = Math.PI * i / rays - Math.PI / 2;
      xy[2 * i] = x + ray * Math.cos(angle);
      xy[2 * i + 1] = y + ray * Math.sin(angle);
    }
    return polygon(xy);
  }

  static Pen environment() {
    String fish =
        "M"
            + point(52, 66)
            + curve(57, 58, 68, 58, 74, 64)
            + "L81 59L80 67L81 74L74 69"
            + curve(68, 75, 57, 74, 52, 66)
            + "Z";
    return diamond()
        .fill(BLACK, "M38 67L39.5 44L36 30L39 30L42 38L45 24L48 25L45.5 42L46 67Z")
        .line(BLACK, 2.2, through(40, 46, 31, 38, 30, 31))
        .line(BLACK, 1.8, through(33, 40, 27, 40))
        .line(BLACK, 2.2, through(45, 46, 53, 38, 54, 31))
        .line(BLACK, 1.8, through(51, 40, 57, 40))
        .line(BLACK, 1.6, through(40, 55, 33, 51))
        .fill(
            BLACK,
            "M18 67L49 67" + curve(46, 70, 49, 73, 46, 76) + curve(42, 79, 32, 76, 26, 75) + "Z")
        .fill(BLACK, fish)
        .fill(WHITE, circle(58, 64, 1.4))
        .line(BLACK, 1.6, "M47 79" + curve(52, 76, 55, 82, 60, 79) + curve(63, 77, 65, 79, 66, 79));
  }
}
