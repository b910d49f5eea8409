package pourwright.wick;

import java.util.ArrayList;
import java.util.List;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Outline;
import pourwright.shape.Point;

/**
 * A paper to lay in a vessel: the base's outline a little smaller so that it slips in, a cross at
 * each wick, a circle for each tab, and a ruler of 100 mm to check the printer. All lines in mm
 * about the outline's centroid, y upward; whoever prints it adds nothing but the page.
 *
 * @param lines each a list of points; the outline first, closed by its first point
 * @param ruler the ruler and its ticks
 * @param widthMm extent along x, ruler included
 * @param heightMm extent along y, ruler included
 */
public record WickTemplate(
    List<List<Point>> lines, List<List<Point>> ruler, double widthMm, double heightMm) {
  /** Length of the ruler, in mm. */
  public static final double RULER_MM = 100;

  private static final double CROSS_MM = 4;

  /** Copies the lists. */
  public WickTemplate {
    lines = lines.stream().map(List::copyOf).toList();
    ruler = ruler.stream().map(List::copyOf).toList();
  }

  /**
   * A template.
   *
   * @param base outline of the cavity at its base
   * @param layout wick positions in the same coordinates
   * @param playMm how much smaller all round the paper is (house: 1)
   * @param tabDiameterMm diameter of a tab
   */
  public static WickTemplate of(
      Outline base, WickLayout layout, double playMm, double tabDiameterMm) {
    Check.notNegative("play_mm", playMm);
    Check.positive("tab_mm", tabDiameterMm);
    double small = Math.min(base.lengthMm(), base.widthMm());
    if (2 * playMm >= small) {
      throw new OutOfRange("play_mm", "nothing is left of the paper", "house: 1 mm");
    }
    Outline paper = base.scaled(1 - 2 * playMm / small);
    boolean turned = layout.turnedDeg() != 0;
    List<List<Point>> lines = new ArrayList<>();
    List<Point> edge = new ArrayList<>();
    paper.polyline(0.02).forEach(p -> edge.add(turned ? new Point(p.yMm(), -p.xMm()) : p));
    edge.add(edge.get(0));
    lines.add(edge);
    for (Point at : layout.positions()) {
      lines.add(List.of(at.plus(new Point(-CROSS_MM, 0)), at.plus(new Point(CROSS_MM, 0))));
      lines.add(List.of(at.plus(new Point(0, -CROSS_MM)), at.plus(new Point(0, CROSS_MM))));
      lines.add(circle(at, tabDiameterMm / 2));
    }
    double half = (turned ? base.lengthMm() : base.widthMm()) / 2;
    double length = turned ? base.widthMm() : base.lengthMm();
    double y = -half - 10;
    return new WickTemplate(lines, ruler(y), Math.max(RULER_MM, length), 2 * half + 16);
  }

  private static List<Point> circle(Point centre, double radius) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= 72; i++) {
      points.add(centre.plus(Point.polar(radius, Math.toRadians(5.0 * i))));
    }
    return points;
  }

  private static List<List<Point>> ruler(double y) {
    List<List<Point>> lines = new ArrayList<>();
    double from = -RULER_MM / 2;
    lines.add(List.of(new Point(from, y), new Point(from + RULER_MM, y)));
    for (int mm = 0; mm <= RULER_MM; mm += 10) {
      double high = mm % 50 == 0 ? 4 : 2.5;
      lines.add(List.of(new Point(from + mm, y), new Point(from + mm, y + high)));
    }
    return lines;
  }
}
