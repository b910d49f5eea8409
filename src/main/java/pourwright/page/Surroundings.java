package pourwright.page;

import java.time.Instant;
import java.util.List;

/** What every page shows around its own content, asked anew for each page. */
public interface Surroundings {
  /** The timers that run or ring, the next one first. */
  List<Bell> bells(Instant now);

  /** Whether a flame burns or wax melts somewhere, so that STOP stands on every page. */
  boolean hot();

  /** What the Undo button would take back, or an empty string. */
  String lastDeed();

  /** All three at one moment. */
  record Around(List<Bell> bells, boolean hot, String lastDeed) {
    /** Copies the list. */
    public Around {
      bells = List.copyOf(bells);
    }
  }

  /** All three, in one look at the books where that is to be had. */
  default Around around(Instant now) {
    return new Around(bells(now), hot(), lastDeed());
  }

  /** Nothing runs, nothing burns, nothing to take back. */
  static Surroundings quiet() {
    return new Surroundings() {
      @Override
      public List<Bell> bells(Instant now) {
        return List.of();
      }

      @Override
      public boolean hot() {
        return false;
      }

      @Override
      public String lastDeed() {
        return "";
      }
    };
  }
}
