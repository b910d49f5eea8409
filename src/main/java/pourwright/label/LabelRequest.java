package pourwright.label;

import java.util.List;
import pourwright.hazard.Classification;
import pourwright.quantity.Check;

/**
 * Everything a candle's label is made from.
 *
 * @param name of the candle
 * @param scent of the candle, empty for none
 * @param classification of its wax mixture
 * @param netG net mass, g
 * @param panel principal display panel
 * @param capacityMl of the package, ml
 * @param maker who sells it
 * @param mark of the batch or the piece
 * @param link what the QR code says, a plain address
 * @param burn what was tested
 * @param languages at least one
 * @param destination {@code eu} or {@code us}
 * @param ufi formula identifier, or empty
 */
public record LabelRequest(
    String name,
    String scent,
    Classification classification,
    double netG,
    Panel panel,
    double capacityMl,
    Maker maker,
    String mark,
    String link,
    BurnFacts burn,
    List<Language> languages,
    String destination,
    String ufi) {
  /** Checks the numbers and copies the list. */
  public LabelRequest {
    Check.positive("net_g", netG);
    Check.positive("capacity_ml", capacityMl);
    languages = List.copyOf(languages);
  }

  /** True for a label after the European rules. */
  public boolean isEuropean() {
    return destination.equals("eu");
  }
}
