package pourwright.cli;

/** Headless computations: {@code burn}, {@code melt-front}, {@code verdict}. */
final class BurnComputations {
  private BurnComputations() {}

  static void addTo(Computations all) {
    all.add("burn", BurnComputation::new);
    all.add("melt-front", MeltFrontComputation::new);
    all.add("verdict", VerdictComputation::new);
  }
}
