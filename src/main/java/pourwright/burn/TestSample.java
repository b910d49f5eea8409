package pourwright.burn;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One candle under test, with its cycles in order.
 *
 * @param end how its life ended, as far as it was burnt
 * @param name what stands on it; empty where it is named by its place among the samples
 */
public record TestSample(List<Cycle> cycles, End end, String name) {

  /** Copies the list. */
  public TestSample {
    cycles = List.copyOf(cycles);
  }

  /** A sample without a name. */
  public TestSample(List<Cycle> cycles, End end) {
    this(cycles, end, "");
  }

  /**
   * From lighting to putting out.
   *
   * @param number of the cycle in the candle's life; 0 where its place among the cycles is meant
   */
  public record Cycle(List<Reading> readings, int number) {
    /** A cycle that is numbered by its place. */
    public Cycle(List<Reading> readings) {
      this(readings, 0);
    }

    /** Copies the list. */
    public Cycle {
      readings = List.copyOf(readings);
    }
  }

  /** How a life ended. */
  public enum End {
    /** Still to be burnt to its end. */
    NOT_YET("not_yet"),
    /** Given up before its end. */
    STOPPED_EARLY("stopped_early"),
    /** Went out by itself at its end. */
    SELF_EXTINGUISHED("self_extinguished"),
    /** All its wax burnt, without harm. */
    WAX_USED_UP("wax_used_up"),
    /** Burnt to the depth of wax at which the label says to stop. */
    STOP_DEPTH("stop_depth"),
    /** The surface or the vessel burnt. */
    SURFACE_IGNITED("surface_ignited"),
    /** The container broke or cracked. */
    CONTAINER_BROKE("container_broke");

    private final String word;

    End(String word) {
      this.word = word;
    }

    /** As written in headless documents. */
    public String word() {
      return word;
    }

    /** True when the end was reached and nothing happened. */
    public boolean isGood() {
      return this == SELF_EXTINGUISHED || this == WAX_USED_UP || this == STOP_DEPTH;
    }

    /** True when it burnt on until nothing was left to burn. */
    public boolean isTheVeryEnd() {
      return this == SELF_EXTINGUISHED || this == WAX_USED_UP;
    }

    /** The end of that word, not yet for any other. */
    public static End of(@Nullable String word) {
      for (End end : values()) {
        if (end.word.equals(word)) {
          return end;
        }
      }
      return "stopped for safety".equals(word) ? STOPPED_EARLY : NOT_YET;
    }

    /** True when the end itself fails the test. */
    public boolean isBad() {
      return this == SURFACE_IGNITED || this == CONTAINER_BROKE;
    }
  }
}
