package pourwright.cast;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;

/**
 * When a mix may be demolded, learnt from her own judgement at demolding. Told in hours at 20 °C
 * (equivalent age), so that a cold week does not blur it.
 *
 * @param notBeforeH longest age at which it was still too early; null when it never was
 * @param fromH shortest age at which it was right; null when it never was
 * @param untilH shortest age at which it was too late; null when it never was
 * @param casts how many were judged
 */
public record DemoldWindow(
    @Nullable Double notBeforeH, @Nullable Double fromH, @Nullable Double untilH, int casts) {

  /** House: fewer judged casts than this are too few to move the card's own time. */
  public static final int CASTS_MIN = 5;

  /** How a demolding was judged. */
  public enum Judged {
    /** Soft edges, it stuck. */
    EARLY,
    /** It came off well. */
    RIGHT,
    /** It held fast or was discoloured. */
    LATE
  }

  /** A demolding at an age. */
  public record Demolded(double ageH, Judged judged) {
    /** Checks the age. */
    public Demolded {
      Check.notNegative("age_h", ageH);
    }
  }

  /** Learns from what was judged. */
  public static DemoldWindow of(List<Demolded> all) {
    return new DemoldWindow(
        all.stream()
            .filter(d -> d.judged() == Judged.EARLY)
            .map(Demolded::ageH)
            .max(Comparator.naturalOrder())
            .orElse(null),
        shortest(all, Judged.RIGHT),
        shortest(all, Judged.LATE),
        all.size());
  }

  private static @Nullable Double shortest(List<Demolded> all, Judged judged) {
    return all.stream()
        .filter(d -> d.judged() == judged)
        .map(Demolded::ageH)
        .min(Comparator.naturalOrder())
        .orElse(null);
  }

  /** True when there are enough judged casts to put them before the card's time. */
  public boolean isTold() {
    return casts >= CASTS_MIN && fromH != null;
  }

  /** True when early and right overlap, so that something beside age decides. */
  public boolean overlaps() {
    return notBeforeH != null && fromH != null && notBeforeH >= fromH;
  }

  /** Age from which it was right every time; the later of the two where they overlap; or null. */
  public @Nullable Double fromEveryTimeH() {
    if (fromH == null) {
      return null;
    }
    return notBeforeH == null ? fromH : (Double) Math.max(notBeforeH, fromH);
  }
}
