package pourwright.cast;

import java.util.ArrayList;
import java.util.List;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * Mixed slurry that is left in the bowl, and the free molds that it could fill.
 *
 * @param volumeMl volume left, ml, not negative
 * @param molds kinds of molds that stand free
 * @param moldsAtMost how many molds there is time to fill before the pot life ends
 */
public record Leftover(double volumeMl, List<Mold> molds, int moldsAtMost) {
  /** A number of molds that no bench reaches: no limit. */
  public static final int NO_LIMIT = 100_000;

  /** Largest volume that is computed with, ml: ten cubic metres. */
  private static final double VOLUME_MAX_ML = 1e7;

  /** Checks the ranges. */
  public Leftover {
    Check.between("volume_ml", volumeMl, 0, VOLUME_MAX_ML);
    molds = List.copyOf(molds);
    if (moldsAtMost < 0 || moldsAtMost > NO_LIMIT) {
      throw new OutOfRange(
          "molds_at_most", "molds_at_most is " + moldsAtMost, "give 0 or more, or leave it out");
    }
  }

  /**
   * A kind of mold that stands free.
   *
   * @param name her name for it
   * @param volumeMl what one takes, ml, greater than zero
   * @param free how many stand free
   * @param value what one more of its pieces is worth to her, in any unit, not negative
   */
  public record Mold(String name, double volumeMl, int free, double value) {
    /** Checks the ranges. */
    public Mold {
      Check.positive("volume_ml", volumeMl);
      Check.between("volume_ml", volumeMl, 1e-6, VOLUME_MAX_ML);
      Check.between("value", value, 0, 1e9);
      if (free < 0 || free > NO_LIMIT) {
        throw new OutOfRange("free", "free is " + free, "give the number of molds that stand free");
      }
    }
  }

  /**
   * Molds to fill.
   *
   * @param fill kinds with a count above zero, in the order of the molds asked about
   * @param usedMl slurry that goes into them, ml
   * @param value what the pieces are worth together
   * @param proven true when no better filling exists
   */
  public record Filling(List<Filled> fill, double usedMl, double value, boolean proven) {
    /** Keeps its own copy. */
    public Filling {
      fill = List.copyOf(fill);
    }
  }

  /** So many molds of a kind. */
  public record Filled(String name, int count) {}

  /** The filling with these counts, one for each mold of this leftover, in its order. */
  public Filling filling(long[] counts, boolean proven) {
    List<Filled> fill = new ArrayList<>();
    double used = 0;
    double value = 0;
    for (int i = 0; i < counts.length; i++) {
      Mold mold = molds.get(i);
      used += counts[i] * mold.volumeMl();
      value += counts[i] * mold.value();
      if (counts[i] > 0) {
        fill.add(new Filled(mold.name(), Math.toIntExact(counts[i])));
      }
    }
    return new Filling(fill, used, value, proven);
  }
}
