package pourwright.page.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pourwright.shape.Point;

/**
 * A drawing to scale: one millimetre of the thing is one unit of the picture.
 *
 * @param viewBox the part of the plane that is shown
 * @param title what is drawn, for those who do not see it
 * @param strokes areas and lines, from back to front
 * @param dots wicks and other round marks
 * @param words figures beside dimension lines
 */
public record Drawing(
    String viewBox, String title, List<Stroke> strokes, List<Dot> dots, List<Word> words) {

  /**
   * An area or a line.
   *
   * @param style class of the style sheet
   * @param path in the language of SVG
   */
  public record Stroke(String style, String path) {}

  /**
   * A round mark.
   *
   * @param x to the right
   * @param y downwards
   * @param r radius
   */
  public record Dot(String x, String y, String r) {}

  /**
   * A figure or a word.
   *
   * @param x to the right
   * @param y downwards
   * @param anchor start, middle or end
   * @param size of the letters
   * @param text what it says
   */
  public record Word(String x, String y, String anchor, String size, String text) {}

  /** Collects a drawing; y grows upwards here, as on paper with a ruler. */
  static final class Pen {
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Dot> dots = new ArrayList<>();
    private final List<Word> words = new ArrayList<>();
    private final double letter;
    private double left = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;
    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;

    /** A pen for a thing of about this size, in mm. */
    Pen(double sizeMm) {
      this.letter = Math.max(2, sizeMm / 20);
    }

    double letter() {
      return letter;
    }

    private void reach(double x, double y) {
      left = Math.min(left, x);
      right = Math.max(right, x);
      low = Math.min(low, y);
      high = Math.max(high, y);
    }

    Pen area(String style, List<Point> points) {
      strokes.add(new Stroke(style, path(points) + "Z"));
      return this;
    }

    Pen line(String style, Point from, Point to) {
      strokes.add(new Stroke(style, path(List.of(from, to))));
      return this;
    }

    private String path(List<Point> points) {
      StringBuilder path = new StringBuilder();
      for (Point p : points) {
        reach(p.xMm(), p.yMm());
        path.append(path.length() == 0 ? 'M' : 'L').append(at(p.xMm())).append(' ');
        path.append(at(-p.yMm()));
      }
      return path.toString();
    }

    Pen dot(Point at, double radius) {
      reach(at.xMm(), at.yMm());
      dots.add(new Dot(at(at.xMm()), at(-at.yMm()), at(radius)));
      return this;
    }

    Pen word(Point at, String anchor, String text) {
      double width = text.length() * letter * 0.62;
      double from = anchor.equals("start") ? 0 : anchor.equals("end") ? -width : -width / 2;
      reach(at.xMm() + from, at.yMm() + letter);
      reach(at.xMm() + from + width, at.yMm() - letter * 0.3);
      words.add(new Word(at(at.xMm()), at(-at.yMm()), anchor, at(letter), text));
      return this;
    }

    /** A level dimension line with a figure above it. */
    Pen level(double fromX, double toX, double y, String text) {
      return level(fromX, toX, y, text, 0.5);
    }

    /** The same with the figure at a share of the line, where something crosses its middle. */
    Pen level(double fromX, double toX, double y, String text, double share) {
      double tick = letter / 2;
      line("d-dim", new Point(fromX, y), new Point(toX, y));
      line("d-dim", new Point(fromX, y - tick), new Point(fromX, y + tick));
      line("d-dim", new Point(toX, y - tick), new Point(toX, y + tick));
      return word(new Point(fromX + share * (toX - fromX), y + tick), "middle", text);
    }

    /** An upright dimension line with a figure beside it. */
    Pen upright(double x, double fromY, double toY, String text, boolean rightHand) {
      double tick = letter / 2;
      line("d-dim", new Point(x, fromY), new Point(x, toY));
      line("d-dim", new Point(x - tick, fromY), new Point(x + tick, fromY));
      line("d-dim", new Point(x - tick, toY), new Point(x + tick, toY));
      double beside = rightHand ? x + tick * 1.5 : x - tick * 1.5;
      Point at = new Point(beside, (fromY + toY) / 2 - letter / 3);
      return word(at, rightHand ? "start" : "end", text);
    }

    Drawing drawn(String title) {
      double margin = letter;
      String viewBox =
          at(left - margin)
              + " "
              + at(-high - margin)
              + " "
              + at(right - left + 2 * margin)
              + " "
              + at(high - low + 2 * margin);
      return new Drawing(viewBox, title, strokes, dots, words);
    }

    private static String at(double mm) {
      return String.format(Locale.ROOT, "%.2f", mm);
    }
  }
}
