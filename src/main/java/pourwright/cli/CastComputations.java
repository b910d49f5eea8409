package pourwright.cli;

/**
 * Headless computations: {@code shape}, {@code vessel}, {@code weigh-with-water}, {@code mix},
 * {@code maturity}.
 */
final class CastComputations {
  private CastComputations() {}

  static void addTo(Computations all) {
    all.add("shape", ShapeComputation::new);
    all.add("vessel", VesselComputation::new);
    all.add("weigh-with-water", WeighWithWaterComputation::new);
    all.add("mix", MixComputation::new);
    all.add("maturity", MaturityComputation::new);
  }
}
