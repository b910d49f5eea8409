package pourwright.card;

import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.material.Material;
import pourwright.quantity.Check;

/**
 * From demold to a vessel that may be filled: sanding, coats, the wait for them.
 *
 * @param grits grits of wet sanding, coarse to fine; empty where nothing is sanded
 * @param sandMinutesPerPiece hands for all grits together, per piece
 * @param coats the coats, in order
 * @param fullDryH from the last coat to a sealer at full strength, in h; the sealer's sheet decides
 * @param tightnessTest true where each piece is filled and looked at before it is wicked
 * @param note anything worth reading
 */
public record Finish(
    String code,
    String name,
    List<Integer> grits,
    double sandMinutesPerPiece,
    List<Coat> coats,
    double fullDryH,
    boolean tightnessTest,
    @Nullable String note)
    implements Card {

  /** Where a coat goes. */
  public enum Where {
    /** The cavity. */
    INSIDE,
    /** The outside. */
    OUTSIDE,
    /** Both. */
    BOTH
  }

  /**
   * One coat.
   *
   * @param sealer code of the sealer
   * @param where which faces
   * @param recoatFromH earliest next coat, in h
   * @param recoatToH latest next coat, in h; null where the sheet sets none
   */
  public record Coat(String sealer, Where where, double recoatFromH, @Nullable Double recoatToH) {
    /** Checks the range and the order of the two times. */
    public Coat {
      Material.checkCode("sealer", sealer);
      Check.between("recoat_from_h", recoatFromH, 0, 500);
      if (recoatToH != null) {
        Written.notEarlier(
            "recoat_to_h", recoatToH, recoatFromH, "the latest next coat is before the earliest");
      }
    }
  }

  /** Checks the range. */
  public Finish {
    Written.head("finish", code, name);
    grits = List.copyOf(grits);
    coats = List.copyOf(coats);
    Check.between("sand_minutes_per_piece", sandMinutesPerPiece, 0, 600);
    Check.between("full_dry_h", fullDryH, 0, 2000);
  }

  @Override
  public CardKind kind() {
    return CardKind.FINISH;
  }
}
