package pourwright.label;

import java.util.ArrayList;
import java.util.List;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * A sheet of labels: paper, rows, columns and margins in millimetres.
 *
 * @param pageWidthMm 210 for A4, 215.9 for letter
 * @param pageHeightMm 297 for A4, 279.4 for letter
 * @param columns at least 1
 * @param rows at least 1
 * @param leftMm margin before the first column
 * @param topMm margin above the first row
 * @param labelWidthMm of one label
 * @param labelHeightMm of one label
 * @param gapMm between labels, both ways
 */
public record LabelStock(
    double pageWidthMm,
    double pageHeightMm,
    int columns,
    int rows,
    double leftMm,
    double topMm,
    double labelWidthMm,
    double labelHeightMm,
    double gapMm) {
  private static final double HAIR_MM = 0.05;

  /** Where a label lies on its page, mm from the top left. */
  public record Spot(double xMm, double yMm) {}

  /** Refuses labels that do not fit on the page. */
  public LabelStock {
    Check.positive("page_width_mm", pageWidthMm);
    Check.positive("page_height_mm", pageHeightMm);
    Check.positive("columns", columns);
    Check.positive("rows", rows);
    Check.notNegative("left_mm", leftMm);
    Check.notNegative("top_mm", topMm);
    Check.positive("label_width_mm", labelWidthMm);
    Check.positive("label_height_mm", labelHeightMm);
    Check.notNegative("gap_mm", gapMm);
    double across = leftMm + columns * labelWidthMm + (columns - 1) * gapMm;
    double down = topMm + rows * labelHeightMm + (rows - 1) * gapMm;
    if (across > pageWidthMm + HAIR_MM) {
      throw new OutOfRange(
          "columns",
          "the columns reach " + Amounts.plain(across) + " mm across and the page is narrower",
          "fewer columns, or a smaller margin");
    }
    if (down > pageHeightMm + HAIR_MM) {
      throw new OutOfRange(
          "rows",
          "the rows reach " + Amounts.plain(down) + " mm down and the page is shorter",
          "fewer rows, or a smaller margin");
    }
  }

  /** One label a page, the page as large as the label. */
  public static LabelStock single(double widthMm, double heightMm) {
    return new LabelStock(widthMm, heightMm, 1, 1, 0, 0, widthMm, heightMm, 0);
  }

  /** The spots of a page, row by row. */
  public List<Spot> spots() {
    List<Spot> spots = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        spots.add(
            new Spot(
                leftMm + column * (labelWidthMm + gapMm), topMm + row * (labelHeightMm + gapMm)));
      }
    }
    return spots;
  }
}
