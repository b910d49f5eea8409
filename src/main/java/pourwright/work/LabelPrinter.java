package pourwright.work;

import java.util.List;
import java.util.ServiceLoader;
import pourwright.label.LabelStock;
import pourwright.label.LabelText;

/** Sets and prints labels; paper knows how. */
public interface LabelPrinter {
  /**
   * A label as it will be printed.
   *
   * @param svg true to size, or an empty string when it does not fit
   * @param trouble why not, or an empty string
   * @param sizes what was set and what is asked for, one sentence each
   * @param smaller what had to be set smaller than is asked for where possible, or an empty string
   */
  record Preview(String svg, String trouble, List<String> sizes, String smaller) {
    /** Copies the list. */
    public Preview {
      sizes = List.copyOf(sizes);
    }
  }

  /** One label for the screen. */
  Preview preview(LabelText label, double widthMm, double heightMm);

  /**
   * Labels as PDF, as many pages as they need.
   *
   * @throws pourwright.quantity.OutOfRange when a text does not fit its label
   */
  byte[] sheets(List<LabelText> labels, LabelStock stock);

  /**
   * One label as a picture.
   *
   * @param dotsPerInch 72 to 1200
   * @throws pourwright.quantity.OutOfRange when a text does not fit its label
   */
  byte[] png(LabelText label, double widthMm, double heightMm, int dotsPerInch);

  /** The printer that the house has. */
  static LabelPrinter ofTheHouse() {
    return ServiceLoader.load(LabelPrinter.class)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no printer of labels is in the house"));
  }
}
