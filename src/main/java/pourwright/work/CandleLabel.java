package pourwright.work;

import java.util.List;
import pourwright.card.ResolvedCandle;
import pourwright.hazard.Blend;
import pourwright.hazard.Classification;
import pourwright.label.BurnFacts;
import pourwright.label.SaleGate;

/**
 * Everything the label of a candle stands on, read from the books in one look.
 *
 * @param cards its cards in their versions
 * @param candle the design with its cards
 * @param version of the candle's card
 * @param blend its wax mixture for any load
 * @param loadOfTotal the load of its pour card on the total
 * @param classification at that load
 * @param sheets the sheets it stands on, with their revisions
 * @param burn what was tested
 * @param testedVersion version of the candle's card that was tested
 * @param gate what stands against a sale label
 */
public record CandleLabel(
    CandleCards cards,
    ResolvedCandle candle,
    int version,
    Blend blend,
    double loadOfTotal,
    Classification classification,
    List<String> sheets,
    BurnFacts burn,
    int testedVersion,
    SaleGate gate) {
  /** Copies the list. */
  public CandleLabel {
    sheets = List.copyOf(sheets);
  }
}
