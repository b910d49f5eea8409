package pourwright.page.board;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import pourwright.shape.Hollow;
import pourwright.shape.Point;
import pourwright.shape.Solid;

/** Section and plan of a vessel, with its dimensions. */
final class VesselDrawing {
  private static final int LEVELS = 24;

  private final Hollow vessel;
  private final DoubleFunction<String> mm;

  /**
   * @param vessel what is drawn
   * @param mm writes a length as she reads it
   */
  VesselDrawing(Hollow vessel, DoubleFunction<String> mm) {
    this.vessel = vessel;
    this.mm = mm;
  }

  /** Lines that a candle adds: heights above the cavity's base, in mm; none below zero. */
  record Lines(double fillMm, double hotMm, List<Point> wicks) {
    static final Lines NONE = new Lines(-1, -1, List.of());
  }

  Drawing section(String name, Lines lines) {
    Solid outer = vessel.outer();
    Solid cavity = vessel.cavity();
    double base = vessel.baseMm();
    double height = outer.heightMm();
    double half = Math.max(reach(outer, 0), reach(outer, Math.PI));
    Drawing.Pen pen = new Drawing.Pen(Math.max(height, 2 * half));
    pen.area("d-wall", profile(outer, 0, height, 0));
    pen.area("d-hollow", profile(cavity, 0, cavity.heightMm(), base));
    if (lines.fillMm >= 0) {
      pen.area("d-wax", profile(cavity, 0, lines.fillMm, base));
      drawLine(pen, lines.fillMm, "fill " + mm.apply(lines.fillMm), false);
    }
    if (lines.hotMm >= 0) {
      drawLine(pen, lines.hotMm, "hot " + mm.apply(lines.hotMm), true);
    }
    for (Point wick : lines.wicks) {
      double top = base + Math.max(0, lines.fillMm) + 6;
      pen.line("d-fill", new Point(wick.xMm(), base), new Point(wick.xMm(), top));
    }
    double gap = 2.4 * pen.letter();
    pen.level(
        -outer.radiusMm(Math.PI, height),
        outer.radiusMm(0, height),
        height + gap,
        mm.apply(outer.radiusMm(Math.PI, height) + outer.radiusMm(0, height)));
    pen.level(
        -cavity.radiusMm(Math.PI, 0),
        cavity.radiusMm(0, 0),
        base + pen.letter(),
        mm.apply(cavity.radiusMm(Math.PI, 0) + cavity.radiusMm(0, 0)),
        beside(lines, cavity));
    pen.upright(-half - gap, 0, height, mm.apply(height), false);
    pen.upright(half + gap, base, height, mm.apply(cavity.heightMm()), true);
    pen.upright(half + gap, 0, base, mm.apply(base), true);
    return pen.drawn("Section of " + name + " along its length, to scale");
  }

  /** Where the figure of the cavity's foot stands clear of the wicks, as a share of its width. */
  private static double beside(Lines lines, Solid cavity) {
    double left = -cavity.radiusMm(Math.PI, 0);
    double width = cavity.radiusMm(0, 0) - left;
    double best = 0.5;
    double most = 0;
    for (double share : new double[] {0.5, 0.25, 0.75, 0.38}) {
      double x = left + share * width;
      double clear =
          lines.wicks.stream().mapToDouble(w -> Math.abs(w.xMm() - x)).min().orElse(width);
      if (clear > most + 1e-9) {
        most = clear;
        best = share;
      }
    }
    return best;
  }

  private void drawLine(Drawing.Pen pen, double fill, String text, boolean left) {
    Solid cavity = vessel.cavity();
    double z = Math.min(fill, cavity.heightMm());
    double y = fill + vessel.baseMm();
    pen.line(
        "d-fill", new Point(-cavity.radiusMm(Math.PI, z), y), new Point(cavity.radiusMm(0, z), y));
    double x = left ? -cavity.radiusMm(Math.PI, z) : cavity.radiusMm(0, z);
    double inset = left ? pen.letter() / 2 : -pen.letter() / 2;
    pen.word(
        new Point(x + inset, left ? y + pen.letter() * 0.4 : y - pen.letter() * 1.1),
        left ? "start" : "end",
        text);
  }

  private static double reach(Solid solid, double angle) {
    return levels(solid, 0, solid.heightMm()).stream()
        .mapToDouble(z -> solid.radiusMm(angle, z))
        .max()
        .orElse(0);
  }

  /** Evenly spaced heights, and those at which the wall bends. */
  private static SortedSet<Double> levels(Solid solid, double from, double to) {
    SortedSet<Double> levels = new TreeSet<>();
    int even = solid.isStraight() ? 1 : LEVELS;
    for (int i = 0; i <= even; i++) {
      levels.add(from + (to - from) * i / even);
    }
    solid.kneesMm().stream().filter(z -> z > from && z < to).forEach(levels::add);
    return levels;
  }

  private static List<Point> profile(Solid solid, double from, double to, double lift) {
    List<Point> rightUp = new ArrayList<>();
    List<Point> leftDown = new ArrayList<>();
    for (double z : levels(solid, from, to)) {
      rightUp.add(new Point(solid.radiusMm(0, z), z + lift));
      leftDown.add(0, new Point(-solid.radiusMm(Math.PI, z), z + lift));
    }
    rightUp.addAll(leftDown);
    return rightUp;
  }

  Drawing plan(String name, Lines lines) {
    Solid outer = vessel.outer();
    Solid cavity = vessel.cavity();
    List<Point> rim = outer.sectionAt(outer.heightMm(), 0.05);
    double half = rim.stream().mapToDouble(p -> Math.abs(p.xMm())).max().orElse(1);
    double deep = rim.stream().mapToDouble(p -> Math.abs(p.yMm())).max().orElse(1);
    Drawing.Pen pen = new Drawing.Pen(2 * Math.max(half, deep));
    pen.area("d-wall", rim);
    double level = lines.fillMm >= 0 ? lines.fillMm : cavity.heightMm();
    pen.area("d-hollow", cavity.sectionAt(cavity.heightMm(), 0.05));
    pen.area(lines.fillMm >= 0 ? "d-wax" : "d-line", cavity.sectionAt(level, 0.05));
    pen.area("d-line", cavity.sectionAt(0, 0.05));
    lines.wicks.forEach(w -> pen.dot(w, Math.max(1, half / 30)));
    double gap = 2 * pen.letter();
    pen.level(-half, half, -deep - gap, mm.apply(2 * half));
    pen.upright(half + gap, -deep, deep, mm.apply(2 * deep), true);
    return pen.drawn("Plan of " + name + " from above, to scale");
  }
}
