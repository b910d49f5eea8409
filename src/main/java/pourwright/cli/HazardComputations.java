package pourwright.cli;

/** Headless computations: {@code hazard}, {@code net-contents}, {@code declare}. */
final class HazardComputations {
  private HazardComputations() {}

  static void addTo(Computations all) {
    all.add("hazard", HazardComputation::new);
    all.add("net-contents", NetContentsComputation::new);
    all.add("declare", DeclareComputation::new);
  }
}
