package pourwright.work;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.PlannedStep;

/**
 * Minutes of hands on one piece, from when the steps of the latest batches were recorded: a step
 * took from the one recorded before it until its own. Not believed are gaps with a planned wait in
 * them, gaps under half a minute (written down afterwards) and gaps over two hours (lunch); for
 * such a step its planned minutes stand in. A batch counts when at least half of its steps of hands
 * are believed.
 */
public final class RecordedMinutes {
  private static final int LATEST = 80;
  private static final double LEAST = 0.5;
  private static final double MOST = 120;

  /** Batches below which the house's minutes are taken. House. */
  static final int ENOUGH = 3;

  private static final double LEAST_UNCERTAINTY = 0.05;

  /**
   * What was recorded for a design.
   *
   * @param minutes of hands on one piece: the middle batch
   * @param relativeUncertainty half the span of the middle half of the batches, over the minutes
   * @param batches how many counted
   */
  public record Recorded(double minutes, double relativeUncertainty, int batches) {}

  private final Map<String, List<Double>> perPiece = new HashMap<>();

  private RecordedMinutes() {}

  /** Reads the latest casts and pours. */
  public static RecordedMinutes of(Books books) {
    RecordedMinutes all = new RecordedMinutes();
    for (BatchKind kind : BatchKind.values()) {
      List<Batch> batches = books.batches().list(kind, null, LATEST).items();
      Map<Long, List<BatchBook.StepTime>> times =
          books.batches().stepTimes(batches.stream().map(Batch::id).toList());
      batches.forEach(b -> all.add(b, times.getOrDefault(b.id(), List.of())));
    }
    return all;
  }

  private void add(Batch batch, List<BatchBook.StepTime> steps) {
    Optional<Double> minutes = minutes(batch.plan(), batch.startedAt(), steps);
    if (minutes.isPresent() && batch.finishedAt() != null && batch.plan().pieces() > 0) {
      for (BatchPlan.Makes makes : batch.plan().makes()) {
        perPiece
            .computeIfAbsent(makes.design(), d -> new ArrayList<>())
            .add(minutes.get() / batch.plan().pieces());
      }
    }
  }

  /** Minutes of hands in a batch; empty where too little of it is believed. */
  static Optional<Double> minutes(
      BatchPlan plan, Instant begun, List<BatchBook.StepTime> recorded) {
    Map<String, Integer> place = new HashMap<>();
    for (int i = 0; i < plan.steps().size(); i++) {
      place.put(plan.steps().get(i).key(), i);
    }
    double sum = 0;
    int hands = 0;
    int believed = 0;
    Instant before = begun;
    int last = -1;
    for (BatchBook.StepTime step : recorded) {
      Integer at = place.get(step.key());
      double gap = Duration.between(before, step.at()).toMillis() / 60_000.0;
      before = step.at();
      if (at == null || plan.steps().get(at).care() != PlannedStep.Care.HANDS) {
        last = at == null ? last : at;
        continue;
      }
      hands++;
      boolean waited = waits(plan, last, at);
      last = at;
      if (!waited && gap >= LEAST && gap <= MOST) {
        believed++;
        sum += gap;
      } else {
        sum += plan.steps().get(at).minutes();
      }
    }
    return hands > 0 && 2 * believed >= hands ? Optional.of(sum) : Optional.empty();
  }

  private static boolean waits(BatchPlan plan, int from, int to) {
    for (int i = from + 1; i < to; i++) {
      if (plan.steps().get(i).care() == PlannedStep.Care.WAIT) {
        return true;
      }
    }
    return false;
  }

  /** What was recorded for a vessel or a candle; empty where fewer than three batches count. */
  public Optional<Recorded> of(String design) {
    List<Double> all = new ArrayList<>(perPiece.getOrDefault(design, List.of()));
    if (all.size() < ENOUGH) {
      return Optional.empty();
    }
    all.sort(null);
    double middle = quantile(all, 0.5);
    double span = (quantile(all, 0.75) - quantile(all, 0.25)) / 2;
    return Optional.of(
        new Recorded(middle, Math.max(LEAST_UNCERTAINTY, span / middle), all.size()));
  }

  /** Linear between the two nearest. */
  private static double quantile(List<Double> rising, double q) {
    double at = q * (rising.size() - 1);
    int low = (int) Math.floor(at);
    int high = Math.min(rising.size() - 1, low + 1);
    return rising.get(low) + (at - low) * (rising.get(high) - rising.get(low));
  }
}
