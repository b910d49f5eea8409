package pourwright.label;

import java.util.List;

/**
 * The words and signs of one label, ready to be set.
 *
 * @param title name of the candle
 * @param subtitle scent, or empty
 * @param netContents declaration
 * @param signalWord in each language, empty when none
 * @param pictograms GHS codes
 * @param symbols names of the safety symbols for candles
 * @param paragraphs everything to be read, in order
 * @param maker lines
 * @param mark line
 * @param link what the QR code says
 * @param banner {@code TEST, NOT FOR SALE}, or empty for a sale label
 * @param minimum least sizes
 * @param netHeightMm least height of the declaration's letters
 */
public record LabelText(
    String title,
    String subtitle,
    String netContents,
    String signalWord,
    List<String> pictograms,
    List<String> symbols,
    List<String> paragraphs,
    List<String> maker,
    String mark,
    String link,
    String banner,
    LabelMinimum minimum,
    double netHeightMm) {
  /** Copies the lists. */
  public LabelText {
    pictograms = List.copyOf(pictograms);
    symbols = List.copyOf(symbols);
    paragraphs = List.copyOf(paragraphs);
    maker = List.copyOf(maker);
  }

  /** True for a label that may be sold with. */
  public boolean isForSale() {
    return banner.isEmpty();
  }
}
