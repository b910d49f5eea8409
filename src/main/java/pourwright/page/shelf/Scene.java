package pourwright.page.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pourwright.burn.Frame;

/**
 * Plan and section of a burning candle, drawn true to scale from cells: runs of equal cells as one
 * bar. Hard wax is pale, melted wax ember, the vessel slate; nothing is ever green.
 *
 * @param words what is seen, for those who do not see it
 * @param plan bars of the plan
 * @param planWide its size in mm
 * @param planHigh its size in mm
 * @param section bars of the section
 * @param sectionWide its size in mm
 * @param sectionHigh its size in mm
 */
public record Scene(
    String words,
    List<Bar> plan,
    double planWide,
    double planHigh,
    List<Bar> section,
    double sectionWide,
    double sectionHigh) {
  private static final String VESSEL = "#b9b5ab";
  private static final String[] WAX = {"#f2dfc0", "#efc98f", "#e3a257", "#cf6a2a"};

  /** A bar of equal cells, in mm. */
  public record Bar(String x, String y, String wide, String high, String fill) {}

  /** Nothing to show yet. */
  static Scene empty() {
    return new Scene("", List.of(), 1, 1, List.of(), 1, 1);
  }

  static Scene of(Frame frame, String words) {
    double cell = frame.cellMm();
    List<Bar> plan = new ArrayList<>();
    int rows = frame.plan().length;
    for (int y = 0; y < rows; y++) {
      bars(plan, frame.plan()[rows - 1 - y], new double[] {cell, y * cell, cell});
    }
    List<Bar> section = new ArrayList<>();
    double high = 0;
    for (double tall : frame.tallMm()) {
      high += tall;
    }
    double top = high;
    for (int z = 0; z < frame.tallMm().length; z++) {
      top -= frame.tallMm()[z];
      bars(section, frame.section()[z], new double[] {cell, top, frame.tallMm()[z]});
    }
    double wide = cell * frame.section()[0].length;
    return new Scene(words, plan, cell * frame.plan()[0].length, cell * rows, section, wide, high);
  }

  /** Adds a row's bars; {@code box} is the cell's width, the row's top and its height. */
  private static void bars(List<Bar> into, float[] row, double[] box) {
    int from = 0;
    for (int x = 1; x <= row.length; x++) {
      if (x < row.length && colour(row[x]).equals(colour(row[from]))) {
        continue;
      }
      if (!colour(row[from]).isEmpty()) {
        into.add(
            new Bar(
                text(from * box[0]),
                text(box[1]),
                text((x - from) * box[0] + 0.05),
                text(box[2] + 0.05),
                colour(row[from])));
      }
      from = x;
    }
  }

  private static String colour(float value) {
    if (Float.isNaN(value)) {
      return "";
    }
    if (value < 0) {
      return VESSEL;
    }
    return value < 0.01 ? WAX[0] : value < 0.5 ? WAX[1] : value < 0.99 ? WAX[2] : WAX[3];
  }

  private static String text(double mm) {
    return String.format(Locale.ROOT, "%.2f", mm);
  }
}
