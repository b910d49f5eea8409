package pourwright.sheet;

import java.util.ArrayList;
import java.util.List;
import pourwright.card.Vessel;
import pourwright.shape.Solid;
import pourwright.sheet.Ink.Pen;

/** A vessel cut along its length, to a scale that is said, with the fill line where wax is. */
final class SectionDrawing {
  private static final double[] SCALES = {1, 2, 2.5, 3, 4, 5, 6, 8, 10, 15, 20};

  private SectionDrawing() {}

  /** Greatest length of a vessel, in mm. */
  static double widestMm(Vessel vessel) {
    Solid outer = vessel.outer().solid();
    double widest = 0;
    for (double z : outer.kneesMm()) {
      widest = Math.max(widest, outer.radiusMm(0, z) + outer.radiusMm(Math.PI, z));
    }
    return widest;
  }

  /** The largest scale at which vessels fit side by side. */
  static double scale(List<Vessel> vessels, double widthMm, double heightMm) {
    double wide = vessels.stream().mapToDouble(SectionDrawing::widestMm).sum();
    double high = vessels.stream().mapToDouble(v -> v.outer().heightMm()).max().orElse(0);
    for (double s : SCALES) {
      if (wide / s <= widthMm && high / s <= heightMm) {
        return s;
      }
    }
    return SCALES[SCALES.length - 1];
  }

  /** The scale as it is written. */
  static String said(double scale) {
    return scale == Math.rint(scale) ? Figures.number(scale, 0) : Figures.number(scale, 1);
  }

  /**
   * Draws into a box, standing on its lower edge.
   *
   * @param box x, y, width and height in mm
   * @param fillMm height of the set wax above the cavity's base, 0 for an empty vessel
   * @param wicks how many wicks are shown
   */
  static void draw(Ink ink, double[] box, Vessel vessel, double scale, double fillMm, int wicks) {
    Solid outer = vessel.outer().solid();
    Solid cavity = vessel.cavity().solid();
    double widest = widestMm(vessel);
    double middle = box[0] + box[2] / 2;
    double floor = box[1] + box[3] - 6;
    profile(ink, outer, middle, floor, scale, outer.heightMm(), Ink.DUST);
    double base = vessel.baseMm() / scale;
    profile(ink, cavity, middle, floor - base, scale, cavity.heightMm(), java.awt.Color.WHITE);
    if (fillMm > 0) {
      profile(ink, cavity, middle, floor - base, scale, fillMm, Ink.WAX);
      double line = floor - base - fillMm / scale;
      for (int i = 0; i < wicks; i++) {
        double x = middle + wickAt(i, wicks) * cavity.bottom().lengthMm() / scale;
        ink.line(x, floor - base, x, line - 3, 0.5, Ink.SLATE);
      }
    }
    double half = widest / scale / 2;
    ink.line(middle - half, floor + 1.2, middle + half, floor + 1.2, 0.2, Ink.DUST);
  }

  /** Writes size and scale under a drawing, from the left edge of its box. */
  static void caption(Ink ink, double[] box, Vessel vessel, double scale) {
    String text =
        Figures.number(widestMm(vessel), 0)
            + " \u00d7 "
            + Figures.number(vessel.outer().heightMm(), 0)
            + " mm, 1 : "
            + said(scale);
    ink.text(box[0], box[1] + box[3] - 1, text, Pen.SMALL);
  }

  private static double wickAt(int i, int wicks) {
    return wicks == 1 ? 0 : (i + 0.5) / wicks - 0.5;
  }

  private static void profile(
      Ink ink,
      Solid solid,
      double middle,
      double floor,
      double scale,
      double heightMm,
      java.awt.Color color) {
    List<double[]> right = new ArrayList<>();
    List<double[]> left = new ArrayList<>();
    for (double knee : solid.kneesMm()) {
      double z = Math.min(knee, heightMm);
      right.add(new double[] {middle + solid.radiusMm(0, z) / scale, floor - z / scale});
      left.add(0, new double[] {middle - solid.radiusMm(Math.PI, z) / scale, floor - z / scale});
      if (knee >= heightMm) {
        break;
      }
    }
    right.addAll(left);
    ink.polygon(right.toArray(new double[0][]), color, Ink.SLATE, 0.25);
  }
}
