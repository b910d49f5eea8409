package pourwright.work;

import java.util.ServiceLoader;

/** Prints sheets as PDF. */
public interface PaperPrinter {
  /**
   * The sheet as a PDF.
   *
   * @param paper a4 or letter
   * @throws pourwright.quantity.OutOfRange for another paper
   */
  byte[] pdf(PaperSheet sheet, String paper);

  /** The printer that the house has. */
  static PaperPrinter ofTheHouse() {
    return ServiceLoader.load(PaperPrinter.class)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no printer of sheets is in the house"));
  }
}
