package pourwright.cli;

/** Headless computations: {@code price}, {@code trace-mark}. */
final class StudioComputations {
  private StudioComputations() {}

  static void addTo(Computations all) {
    all.add("price", PriceComputation::new);
    all.add("trace-mark", TraceMarkComputation::new);
  }
}
