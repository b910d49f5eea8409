package pourwright.cli;

/**
 * Headless computations: {@code shape}, {@code weigh-with-water}, {@code mix}, {@code maturity}.
 */
final class CastComputations {
  private CastComputations() {}

  static void addTo(Computations all) {
    // one line for each: all.add("name", NameComputation::new);
  }
}
