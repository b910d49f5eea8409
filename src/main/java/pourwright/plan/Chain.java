package pourwright.plan;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Steps laid one after the other; long work of hands is cut into stretches. */
final class Chain {
  private final String batch;
  private final int stretch;
  private final List<Step> steps = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();

  Chain(String batch, int stretch) {
    this.batch = batch;
    this.stretch = stretch;
  }

  List<Step> steps() {
    return steps;
  }

  List<Link> links() {
    return links;
  }

  /** Key of the step that was laid last. */
  String last() {
    return steps.get(steps.size() - 1).key();
  }

  /** Lays a step after the last one. */
  Chain then(Step step, int minMin, @Nullable Integer maxMin, String reason) {
    if (!steps.isEmpty()) {
      links.add(new Link(last(), step.key(), minMin, maxMin, reason));
    }
    steps.add(step);
    return this;
  }

  /** Lays a wait that begins where the last step ends. */
  Chain thenWait(String name, String words, double hours, String reason) {
    int minutes = (int) Math.ceil(hours * 60 - 1e-9);
    return minutes == 0 ? this : then(Step.wait(batch, name, words, minutes), 0, 0, reason);
  }

  /** Lays work of hands, in stretches where it is long. */
  Chain thenHands(Step whole, int minMin, @Nullable Integer maxMin, String reason) {
    int parts = Math.max(1, (whole.minutes() + stretch - 1) / stretch);
    int left = whole.minutes();
    for (int part = 1; part <= parts; part++) {
      int minutes = (left + parts - part) / (parts - part + 1);
      left -= minutes;
      String key = parts == 1 ? whole.key() : whole.key() + "-" + part;
      String words = parts == 1 ? whole.words() : whole.words() + ", part " + part;
      Step step =
          new Step(
              key,
              whole.batch(),
              words,
              whole.kind(),
              minutes,
              whole.people(),
              whole.uses(),
              whole.hot(),
              whole.tags(),
              whole.family(),
              0,
              null);
      then(
          step,
          part == 1 ? minMin : 0,
          part == 1 ? maxMin : null,
          part == 1 ? reason : "goes on where it stopped");
    }
    return this;
  }
}
