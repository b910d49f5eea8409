package pourwright.sheet;

import java.util.List;
import pourwright.sheet.Ink.Pen;

/** The frame of every page: margins, a head, a foot with page numbers. */
final class Leaf {
  static final double LEFT = 16;
  static final double TOP = 14;
  private static final double FOOT = 12;

  private final Ink ink;
  private final String studio;
  private final String printed;
  private String head = "";
  private String note = "";
  private double y;

  Leaf(Ink ink, String studio, String printed) {
    this.ink = ink;
    this.studio = studio;
    this.printed = printed;
  }

  Ink ink() {
    return ink;
  }

  double right() {
    return ink.paper().widthMm() - LEFT;
  }

  double width() {
    return right() - LEFT;
  }

  double bottom() {
    return ink.paper().heightMm() - FOOT - 6;
  }

  double y() {
    return y;
  }

  void down(double mm) {
    y += mm;
  }

  void to(double newY) {
    y = newY;
  }

  /** Begins a chapter on a new page. */
  void chapter(String newHead, String newNote) {
    head = newHead;
    note = newNote;
    next();
  }

  /** A new page of the same chapter. */
  void next() {
    ink.page();
    ink.fill(LEFT, TOP - 3, 2.2, 9.5, Ink.EMBER);
    ink.text(LEFT + 5, TOP + 4, head, Pen.HEAD);
    ink.right(right(), TOP + 4, note, Pen.SMALL);
    ink.line(LEFT, TOP + 9.5, right(), TOP + 9.5, 0.35, Ink.SLATE);
    y = TOP + 17;
  }

  /** A new page when less than so much is left. */
  void need(double mm) {
    if (y + mm > bottom()) {
      next();
    }
  }

  /** A line of small heads over columns. */
  void columns(List<String> names, double[] at) {
    for (int i = 0; i < names.size(); i++) {
      ink.text(at[i], y, names.get(i), Pen.SMALL);
    }
    ink.line(LEFT, y + 1.6, right(), y + 1.6, 0.2, Ink.DUST);
    y += 6.2;
  }

  /** Feet, once all pages are there. */
  void feet() {
    int pages = ink.pages();
    double footY = ink.paper().heightMm() - FOOT + 2;
    for (int i = 0; i < pages; i++) {
      ink.onPage(i);
      ink.line(LEFT, footY - 4.2, right(), footY - 4.2, 0.2, Ink.DUST);
      ink.text(LEFT, footY, studio, Pen.SMALL);
      String middle = "printed " + printed;
      double x = (ink.paper().widthMm() - ink.width(middle, Pen.SMALL)) / 2;
      ink.text(x, footY, middle, Pen.SMALL);
      ink.right(right(), footY, "page " + (i + 1) + " of " + pages, Pen.SMALL);
    }
  }
}
