package pourwright.cli;

/** Headless computations: {@code dose}, {@code redose}, {@code cool}, {@code wicks}. */
final class PourComputations {
  private PourComputations() {}

  static void addTo(Computations all) {
    all.add("dose", DoseComputation::new);
    all.add("redose", RedoseComputation::new);
    all.add("cool", CoolComputation::new);
    all.add("wicks", WicksComputation::new);
  }
}
