package pourwright.burn;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a cycle of a test is for: as the label will say it, or one of the ways in which people treat
 * a candle all the same. Limits hold for every kind; what the label says comes from the usual ones.
 */
public enum CycleKind {
  /** Four hours, trimmed, upright, out of a draught. */
  USUAL("usual", "as the label says: 4 h, trimmed", List.of(60, 120, 180, 240)),
  /** Put out after one hour, before the pool is full. */
  ONE_HOUR("one hour", "one hour only", List.of(60)),
  /** The wick is left as the last cycle left it. */
  UNTRIMMED("untrimmed", "untrimmed", List.of(60, 120, 180, 240)),
  /** Left burning for eight hours, with somebody in the room all the time. */
  FORGOTTEN(
      "forgotten", "forgotten for 8 h, watched", List.of(60, 120, 180, 240, 300, 360, 420, 480)),
  /** In moving air. */
  DRAUGHT("draught", "in a draught", List.of(60, 120, 180, 240)),
  /** The wick does not stand in the middle. */
  OFF_CENTRE("off centre", "wick off centre", List.of(60, 120, 180, 240)),
  /** In a room of 28 to 32 °C (house). */
  WARM_ROOM("warm room", "in a warm room, 28 to 32 °C", List.of(60, 120, 180, 240));

  private static final String MARK = "cycle: ";

  private final String word;
  private final String words;
  private final List<Integer> bellsMin;

  CycleKind(String word, String words, List<Integer> bellsMin) {
    this.word = word;
    this.words = words;
    this.bellsMin = bellsMin;
  }

  /** Its short name. */
  public String word() {
    return word;
  }

  /** What it is, for people. */
  public String words() {
    return words;
  }

  /** When the bell calls for a reading, minutes since lighting; at the last it is put out. */
  public List<Integer> bellsMin() {
    return bellsMin;
  }

  /** True for every way that the label does not ask for. */
  public boolean isMisuse() {
    return this != USUAL;
  }

  /** The note on a cycle's first look that says its kind. */
  public String note() {
    return MARK + word;
  }

  /** The kind that a note says, or null where it says none. */
  public static @Nullable CycleKind ofNote(String note) {
    for (CycleKind kind : values()) {
      if (note.equals(kind.note())) {
        return kind;
      }
    }
    return null;
  }
}
