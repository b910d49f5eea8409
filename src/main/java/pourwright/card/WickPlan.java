package pourwright.card;

import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.material.Material;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * Which wicks, how many and where.
 *
 * @param wick code of the wick
 * @param count how many, 1 or more
 * @param cutMm length each is cut to, in mm; 0 where it is bought cut
 * @param tab code of the tab, null for a wick bought with one
 * @param sticker code of the sticker, null where none is used
 * @param positionsMm x, y of each wick from the cavity's centroid; empty where the layout is left
 *     to the drawing board
 */
public record WickPlan(
    String wick,
    int count,
    double cutMm,
    @Nullable String tab,
    @Nullable String sticker,
    List<List<Double>> positionsMm) {
  /** Checks counts and codes. */
  public WickPlan {
    Material.checkCode("wick", wick);
    Check.between("count", count, 1, 100);
    Check.between("cut_mm", cutMm, 0, 1000);
    positionsMm = positionsMm.stream().map(List::copyOf).toList();
    if (!positionsMm.isEmpty() && positionsMm.size() != count) {
      throw new OutOfRange(
          "positions_mm",
          count + " wicks and " + positionsMm.size() + " positions",
          "give one position for each wick, or none");
    }
  }
}
