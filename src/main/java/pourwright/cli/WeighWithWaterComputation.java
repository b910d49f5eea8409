package pourwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import pourwright.quantity.Sourced;
import pourwright.shape.Water;

/** {@code weigh-with-water}: what a vessel or a mold holds, by weighing it full of water. */
final class WeighWithWaterComputation implements Computation {
  @Override
  public void compute(JsonIn in, ObjectNode out) {
    double empty = in.number("empty_g", Range.NOT_NEGATIVE);
    double full = in.number("full_g", Range.POSITIVE);
    double celsius = in.number("water_c", Range.CELSIUS);
    double resolution = in.numberOr("scale_resolution_g", 1, Range.POSITIVE);
    Sourced volume = Water.volumeMl(empty, full, celsius, resolution);
    out.put("volume_ml", volume.value());
    out.put("uncertainty_fraction", volume.relativeUncertainty());
    out.put("water_density_g_per_ml", Water.gramsPerMl(celsius));
    out.put("ml_per_g", Water.mlPerGram(celsius));
  }
}
