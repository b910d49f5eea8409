package pourwright.sheet;

import java.io.OutputStream;
import java.util.List;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Point;
import pourwright.sheet.Ink.Pen;
import pourwright.wick.WickTemplate;

/** A wick template on paper, to scale: lay it in the vessel and stick the tabs at the crosses. */
public final class WickSheet {
  private static final double MARGIN = 14;
  private static final double HEAD = 22;
  private static final double EDGE = 6;
  private static final double COLUMN_LEAST = 30;

  private WickSheet() {}

  /**
   * Prints a template.
   *
   * @param name the vessel's or candle's name
   * @throws OutOfRange when the template is larger than the paper; it is never made smaller
   */
  public static void print(String name, WickTemplate template, Paper paper, OutputStream to) {
    boolean upright = template.widthMm() <= paper.widthMm() - 2 * MARGIN;
    double across = upright ? template.widthMm() : template.heightMm();
    double down = upright ? template.heightMm() : template.widthMm();
    double column =
        upright ? paper.widthMm() - 2 * MARGIN : (paper.widthMm() - across) / 2 - 2 * EDGE;
    double room = paper.heightMm() - (upright ? 2 * MARGIN + HEAD : 2 * EDGE);
    if (across > paper.widthMm() - 2 * MARGIN || down > room || column < COLUMN_LEAST) {
      throw new OutOfRange(
          "paper",
          "a template of " + Math.round(across) + " × " + Math.round(down) + " mm is too large",
          "take a larger paper: a template is only printed at its true size");
    }
    try (Ink ink = new Ink(paper)) {
      ink.title("Wick template " + name);
      ink.page();
      double left = upright ? MARGIN : EDGE;
      double y = ink.wrapped(left, MARGIN, column, "Wick template: " + name, Pen.STRONG);
      ink.wrapped(
          left,
          y + 2,
          column,
          "Print at 100 %. The ruler must measure 100 mm, or the template is wrong.",
          Pen.BODY);
      double centreY = upright ? MARGIN + HEAD + down / 2 : paper.heightMm() / 2;
      Sheet sheet = new Sheet(ink, upright, middle(template), centreY);
      for (List<Point> line : template.lines()) {
        sheet.draw(line, 0.3);
      }
      for (List<Point> line : template.ruler()) {
        sheet.draw(line, 0.25);
      }
      ink.save(to);
    }
  }

  /** The middle of all that is drawn, in the template's own millimetres. */
  private static Point middle(WickTemplate template) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (List<List<Point>> part : List.of(template.lines(), template.ruler())) {
      for (List<Point> line : part) {
        for (Point p : line) {
          low = Math.min(low, p.yMm());
          high = Math.max(high, p.yMm());
        }
      }
    }
    return new Point(0, (low + high) / 2);
  }

  private record Sheet(Ink ink, boolean upright, Point middle, double centreY) {
    private void draw(List<Point> line, double widthMm) {
      for (int i = 1; i < line.size(); i++) {
        double[] a = place(line.get(i - 1));
        double[] b = place(line.get(i));
        ink.line(a[0], a[1], b[0], b[1], widthMm, Ink.SLATE);
      }
    }

    /** Millimetres from the top left corner of the paper; a long template lies along it. */
    private double[] place(Point p) {
      double x = p.xMm() - middle.xMm();
      double y = p.yMm() - middle.yMm();
      double centreX = ink.paper().widthMm() / 2;
      return upright
          ? new double[] {centreX + x, centreY - y}
          : new double[] {centreX + y, centreY + x};
    }
  }
}
