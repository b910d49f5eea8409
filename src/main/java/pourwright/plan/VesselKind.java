package pourwright.plan;

import pourwright.card.CandleDesign;

/**
 * Vessels that can stand for each other: one shape, one mix, one finish.
 *
 * @param vessel code of the vessel
 * @param mix code of the mix card
 * @param finish code of the finish
 */
public record VesselKind(String vessel, String mix, String finish)
    implements Comparable<VesselKind> {
  /** The kind that a candle is poured into. */
  public static VesselKind of(CandleDesign design) {
    return new VesselKind(design.vessel(), design.mix(), design.finish());
  }

  @Override
  public int compareTo(VesselKind other) {
    int byVessel = vessel.compareTo(other.vessel);
    int byMix = byVessel != 0 ? byVessel : mix.compareTo(other.mix);
    return byMix != 0 ? byMix : finish.compareTo(other.finish);
  }
}
