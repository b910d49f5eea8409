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

  /**
   * What an Undo button takes back.
   *
   * @param words what it is, or an empty string
   * @param deeds numbers of the deeds, the newest first, with commas; empty for nothing
   */
  record Back(String words, String deeds) {
    /** Nothing. */
    public static final Back NOTHING = new Back("", "");
  }

  /**
   * All of it at one moment.
   *
   * @param last the newest deed that can be taken back
   * @param done what a request has just done and can be taken back
   */
  record Around(List<Bell> bells, boolean hot, Back last, Back done) {
    /** Copies the list. */
    public Around {
      bells = List.copyOf(bells);
    }
  }

  /**
   * All of it, in one look at the books where that is to be had.
   *
   * @param requestKey of the request that was answered just now, or an empty string
   */
  default Around around(Instant now, String requestKey) {
    return new Around(bells(now), hot(), new Back(lastDeed(), ""), Back.NOTHING);
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
