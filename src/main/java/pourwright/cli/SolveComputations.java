package pourwright.cli;

import java.util.function.Supplier;
import pourwright.cast.LeftoverPacking;
import pourwright.stock.Purchasing;

/**
 * Headless computations that need the solver: {@code leftover}, {@code buy}. The solver is handed
 * in by {@code main} and made when it is asked for, so that no other computation loads it.
 */
public final class SolveComputations {
  private SolveComputations() {}

  /** Adds both to all; gives all back. */
  public static Computations addTo(
      Computations all, Supplier<LeftoverPacking> packing, Supplier<Purchasing> purchasing) {
    return all.add("leftover", () -> new LeftoverComputation(packing.get()))
        .add("buy", () -> new BuyComputation(purchasing.get()));
  }
}
