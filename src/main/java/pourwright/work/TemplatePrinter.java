package pourwright.work;

import java.util.ServiceLoader;
import pourwright.wick.WickTemplate;

/** Prints wick templates at their true size; paper knows how. */
public interface TemplatePrinter {

  /**
   * A template as PDF.
   *
   * @param name the candle's name
   * @param paper {@code a4} or {@code letter}
   * @throws pourwright.quantity.OutOfRange when the template is larger than the paper
   */
  byte[] print(String name, WickTemplate template, String paper);

  /** The printer that the house has. */
  static TemplatePrinter ofTheHouse() {
    return ServiceLoader.load(TemplatePrinter.class)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no printer of templates is in the house"));
  }
}
