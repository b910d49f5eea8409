package pourwright.batch;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a batch sets out to make, kept with the batch as it was planned.
 *
 * @param kind cast or pour
 * @param card the mix card's or pour card's code
 * @param cardVersion the version that was followed
 * @param makes what comes out, design by design
 * @param steps the walk at the bench
 * @param note anything else worth keeping
 */
public record BatchPlan(
    BatchKind kind,
    String card,
    int cardVersion,
    List<Makes> makes,
    List<PlannedStep> steps,
    @Nullable String note) {

  /**
   * So many pieces of a design.
   *
   * @param design code of the vessel card (cast) or candle card (pour)
   * @param version the card's version
   * @param count pieces, above zero
   * @param mold the mold filled, for casts
   */
  public record Makes(String design, int version, int count, @Nullable String mold) {}

  /** Keeps its own copies and checks that step keys are unique. */
  public BatchPlan {
    makes = List.copyOf(makes);
    steps = List.copyOf(steps);
    if (steps.stream().map(PlannedStep::key).distinct().count() != steps.size()) {
      throw new IllegalArgumentException("two steps of a batch have the same key");
    }
  }

  /** How many pieces in all. */
  public int pieces() {
    return makes.stream().mapToInt(Makes::count).sum();
  }
}
