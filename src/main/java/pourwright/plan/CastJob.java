package pourwright.plan;

import java.util.List;
import pourwright.card.Amounts;

/**
 * One mixing to be cast.
 *
 * @param key short name in the plan, e.g. {@code C3}
 * @param mix code of the mix card
 * @param finish code of the finish
 * @param fills which molds it fills
 * @param needs what is drawn for it, sealers included
 * @param waterG mix water
 * @param totalG everything in the bucket
 * @param freshMl what goes into molds
 * @param warnings what the trade would say about the mix
 */
public record CastJob(
    String key,
    String mix,
    String finish,
    List<Fill> fills,
    Amounts needs,
    double waterG,
    double totalG,
    double freshMl,
    List<String> warnings) {
  /**
   * Molds of one kind that are filled.
   *
   * @param vessel code of the vessel
   * @param mold code of the mold
   * @param pieces pieces cast
   */
  public record Fill(String vessel, String mold, int pieces) {}

  /** Copies. */
  public CastJob {
    fills = List.copyOf(fills);
    warnings = List.copyOf(warnings);
  }

  /** Pieces in all molds. */
  public int pieces() {
    return fills.stream().mapToInt(Fill::pieces).sum();
  }
}
