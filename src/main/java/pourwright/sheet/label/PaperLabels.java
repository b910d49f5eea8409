package pourwright.sheet.label;

import java.util.List;
import pourwright.label.LabelStock;
import pourwright.label.LabelText;
import pourwright.quantity.OutOfRange;
import pourwright.work.LabelPrinter;

/** The printer of labels: SVG for the screen, PDF for paper. */
public final class PaperLabels implements LabelPrinter {
  @Override
  public Preview preview(LabelText label, double widthMm, double heightMm) {
    try {
      return new Preview(LabelSvg.of(label, widthMm, heightMm), "");
    } catch (LabelTooSmall e) {
      return new Preview("", String.valueOf(e.getMessage()));
    }
  }

  @Override
  public byte[] sheets(List<LabelText> labels, LabelStock stock) {
    try {
      return LabelPdf.sheets(labels, stock);
    } catch (LabelTooSmall e) {
      throw new OutOfRange(
          "label_height_mm", String.valueOf(e.getMessage()), "choose another size and try again");
    }
  }
}
