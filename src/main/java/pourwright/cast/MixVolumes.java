package pourwright.cast;

import java.util.ArrayList;
import java.util.List;
import pourwright.shape.Water;

/**
 * What each part of a mixing fills, in ml: its mass over the density of its grains, and the air.
 * Together they are the fresh volume. Source: ACI 211.1-91, absolute volumes.
 *
 * @param powderMl powder
 * @param additionsMl additions in the order of the mix
 * @param waterMl water that is added
 * @param liquidMl liquid colour, its water too
 * @param airMl air
 */
public record MixVolumes(
    double powderMl, List<Double> additionsMl, double waterMl, double liquidMl, double airMl) {

  /** Copies. */
  public MixVolumes {
    additionsMl = List.copyOf(additionsMl);
  }

  /** The volumes of amounts that were worked out for a mix. */
  public static MixVolumes of(Mix mix, MixAmounts amounts) {
    List<Double> additions = new ArrayList<>();
    for (int i = 0; i < amounts.additionsG().size(); i++) {
      additions.add(amounts.additionsG().get(i) / mix.additions().get(i).particleGPerMl());
    }
    LiquidColour liquid = mix.liquid();
    return new MixVolumes(
        mix.powder().grainsMl(amounts.powderG()),
        additions,
        amounts.waterG() / Water.gramsPerMl(mix.waterC()),
        liquid == null ? 0 : amounts.liquidG() / liquid.gPerMl(),
        mix.airFraction() * amounts.volumeMl());
  }

  /** All additions together, in ml. */
  public double allAdditionsMl() {
    return additionsMl.stream().mapToDouble(Double::doubleValue).sum();
  }

  /** Everything, in ml. */
  public double totalMl() {
    return powderMl + allAdditionsMl() + waterMl + liquidMl + airMl;
  }
}
