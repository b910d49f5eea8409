package pourwright.plan;

import java.util.List;
import pourwright.card.Amounts;

/**
 * One pitcher to be poured.
 *
 * @param key short name in the plan, e.g. {@code P2}
 * @param pour code of the pour card
 * @param fills which candles it makes
 * @param needs what is drawn for it, wicks and boxes included
 * @param waxG all waxes
 * @param fragranceG all fragrances
 * @param totalG wax and fragrance in the pitcher
 * @param after keys of the casts that its vessels come from
 */
public record PourJob(
    String key,
    String pour,
    List<Fill> fills,
    Amounts needs,
    double waxG,
    double fragranceG,
    double totalG,
    List<String> after) {
  /**
   * Candles of one design.
   *
   * @param design code of the candle
   * @param candles how many
   * @param netG wax and fragrance in each
   */
  public record Fill(String design, int candles, double netG) {}

  /** Copies. */
  public PourJob {
    fills = List.copyOf(fills);
    after = List.copyOf(after);
  }

  /** Candles in all. */
  public int candles() {
    return fills.stream().mapToInt(Fill::candles).sum();
  }
}
