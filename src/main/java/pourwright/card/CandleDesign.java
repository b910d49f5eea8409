package pourwright.card;

import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.material.Material;
import pourwright.quantity.Check;

/**
 * A candle: a vessel with what is poured into it, its wicks and its box.
 *
 * @param vessel code of the vessel
 * @param mix code of the mix card its vessel is cast from
 * @param finish code of the finish
 * @param pour code of the pour card
 * @param wicks which wicks and where
 * @param headspaceMm from the set wax to the rim, in mm; house: 12
 * @param restDays rest before sale where it differs from the pour card's, else null
 * @param piecesPerBox pieces in one box, 1 or more
 * @param boxed what goes with each box: packaging, labels, care cards
 * @param note anything worth reading
 */
public record CandleDesign(
    String code,
    String name,
    String vessel,
    String mix,
    String finish,
    String pour,
    WickPlan wicks,
    double headspaceMm,
    @Nullable Double restDays,
    int piecesPerBox,
    List<Packed> boxed,
    @Nullable String note)
    implements Card {
  /** House habit: wax ends 12 mm under the rim. */
  public static final double HEADSPACE_MM = 12;

  /**
   * Something that goes with each box.
   *
   * @param material its code
   * @param count how many in a box
   */
  public record Packed(String material, int count) {
    /** Checks the count. */
    public Packed {
      Material.checkCode("material", material);
      Check.between("count", count, 1, 1000);
    }
  }

  /** Checks codes and range. */
  public CandleDesign {
    Written.head("candle", code, name);
    Material.checkCode("vessel", vessel);
    Material.checkCode("mix", mix);
    Material.checkCode("finish", finish);
    Material.checkCode("pour", pour);
    Check.between("headspace_mm", headspaceMm, 0, 500);
    if (restDays != null) {
      Check.between("rest_days", restDays, 0, 365);
    }
    Check.between("pieces_per_box", piecesPerBox, 1, 1000);
    boxed = List.copyOf(boxed);
  }

  /** The same candle with its wicks at these places, one for each place. */
  public CandleDesign withPlaces(List<List<Double>> positionsMm) {
    WickPlan moved =
        new WickPlan(
            wicks.wick(),
            positionsMm.size(),
            wicks.cutMm(),
            wicks.tab(),
            wicks.sticker(),
            positionsMm);
    return new CandleDesign(
        code,
        name,
        vessel,
        mix,
        finish,
        pour,
        moved,
        headspaceMm,
        restDays,
        piecesPerBox,
        boxed,
        note);
  }

  /** Looks up every card and material. */
  public ResolvedCandle resolve(CardBook book) {
    return new ResolvedCandle(
        this,
        book.vessel(vessel),
        book.mix(mix).resolve(book.materials()),
        book.finish(finish),
        book.pour(pour).resolve(book.materials()),
        book.materials());
  }

  @Override
  public CardKind kind() {
    return CardKind.CANDLE;
  }
}
