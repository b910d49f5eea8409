package pourwright.pour;

import java.util.List;
import pourwright.quantity.Check;

/**
 * Which candles share a pitcher. Only what has the same wax, scent and load, and a temperature in
 * common, goes together; fewest pours first (each is a pitcher to wash and leaves a residue), then
 * the smallest pitchers that hold them.
 */
public interface PourGrouping {

  /**
   * A candle to fill.
   *
   * @param id what it is
   * @param melt wax, scent and load: only equal ones share a pitcher
   * @param grams net wax and fragrance
   * @param pourFromC lowest pouring temperature
   * @param pourToC highest pouring temperature
   */
  record ToFill(String id, String melt, double grams, double pourFromC, double pourToC) {
    /** Checks mass and window. */
    public ToFill {
      Check.positive("grams", grams);
      Check.between("pour_to_c", pourToC, pourFromC, 200);
    }
  }

  /** A pitcher that is there, as often as it is washed. */
  record Pitcher(String name, double holdsG, double residueG) {
    /** Checks that something fits. */
    public Pitcher {
      Check.positive("holds_g", holdsG);
      Check.between("residue_g", residueG, 0, holdsG);
    }

    /** Wax for candles, without what stays behind. */
    double usableG() {
      return holdsG - residueG;
    }
  }

  /** One pour: a pitcher, its candles, and the temperatures they have in common. */
  record Pour(Pitcher pitcher, List<ToFill> candles, double fromC, double toC) {
    /** Copies the list. */
    public Pour {
      candles = List.copyOf(candles);
    }

    /** Grams to melt, residue included. */
    public double meltG() {
      return pitcher.residueG() + candles.stream().mapToDouble(ToFill::grams).sum();
    }
  }

  /**
   * A grouping.
   *
   * @param pours in the order of the melts
   * @param atLeast no grouping has fewer pours than this
   */
  record Grouping(List<Pour> pours, int atLeast) {
    /** Copies the list. */
    public Grouping {
      pours = List.copyOf(pours);
    }

    /** True when it is proved that no grouping has fewer pours. */
    public boolean isProven() {
      return pours.size() == atLeast;
    }

    /** Wax that is melted and not poured, in grams. */
    public double residueG() {
      return pours.stream().mapToDouble(p -> p.pitcher().residueG()).sum();
    }
  }

  /** Groups candles into pours. */
  Grouping group(List<ToFill> candles, List<Pitcher> pitchers);
}
