package pourwright.cli;

/** Headless computations: {@code burn}, {@code melt-front}, {@code verdict}. */
final class BurnComputations {
  private BurnComputations() {}

  static void addTo(Computations all) {
    // one line for each: all.add("name", NameComputation::new);
  }
}
