package pourwright.plan;

import java.util.List;

/** The answer to: when can this order leave? */
public sealed interface Promise {
  /**
   * A date that holds.
   *
   * @param endMin minute at which the order's last step ends
   * @param boundMin no plan that keeps the other promises ends it before this minute
   * @param plan a whole plan with the order in it that shows how
   * @param gains what would make it earlier, the greatest gain first; empty when nothing would
   */
  record Holds(int endMin, long boundMin, Plan plan, List<Gain> gains) implements Promise {
    /** Keeps its own copy. */
    public Holds {
      gains = List.copyOf(gains);
    }

    /** True when no earlier minute holds. */
    public boolean proven() {
      return endMin <= boundMin;
    }

    /** What holds the date back, as it is shown. */
    public String limitedBy() {
      return gains.isEmpty() ? "the waits themselves" : gains.get(0).limit();
    }
  }

  /**
   * What one more of something would buy.
   *
   * @param limit what holds the date back, e.g. {@code Bollard mold}
   * @param remedy e.g. {@code one more Bollard mold}
   * @param minutesEarlier by how much the date would come forward, above 0
   */
  record Gain(String limit, String remedy, int minutesEarlier) {}

  /**
   * No date within the time planned for.
   *
   * @param reasons why, in the trade's words
   */
  record None(List<String> reasons) implements Promise {
    /** Keeps its own copy. */
    public None {
      reasons = List.copyOf(reasons);
    }
  }
}
