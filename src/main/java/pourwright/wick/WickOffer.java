package pourwright.wick;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Outline;
import pourwright.wick.WickLayout.Clearances;

/**
 * A symmetric layout, and beside it a free one where symmetry costs more than 2 % of the reach: the
 * maker chooses. Maths: docs/models/wick.md 1.
 *
 * @param layout keeps a mirror axis of the outline, where it has one
 * @param free covers with a smaller reach (or the same reach with fewer wicks) but keeps no axis;
 *     null where it would gain 2 % or less
 */
public record WickOffer(WickLayout layout, @Nullable WickLayout free) {
  /** A free layout is offered when its reach is less than this share of the symmetric one's. */
  public static final double WORTH = 0.98;

  /** The layouts of so many wicks; refused as {@link WickLayout#of} is. */
  public static WickOffer of(Outline outline, double wallMm, double spacingMm, int count) {
    WickLayout layout = WickLayout.of(outline, new Clearances(wallMm, spacingMm, true), count);
    return beside(outline, wallMm, spacingMm, layout, count, WORTH * layout.coveringRadiusMm());
  }

  /** The layouts of the fewest wicks; refused as {@link WickLayout#fewest} is. */
  public static WickOffer fewest(
      Outline outline, double wallMm, double spacingMm, double meltRadiusMm) {
    WickLayout layout =
        WickLayout.fewest(outline, new Clearances(wallMm, spacingMm, true), meltRadiusMm);
    int count = layout.positions().size();
    if (count > 1) {
      WickOffer one = beside(outline, wallMm, spacingMm, layout, count - 1, meltRadiusMm);
      if (one.free != null) {
        return one;
      }
    }
    return beside(outline, wallMm, spacingMm, layout, count, WORTH * layout.coveringRadiusMm());
  }

  private static WickOffer beside(
      Outline outline, double wall, double spacing, WickLayout layout, int count, double reachMm) {
    try {
      WickLayout free = WickLayout.of(outline, new Clearances(wall, spacing, false), count);
      return new WickOffer(layout, free.coveringRadiusMm() < reachMm ? free : null);
    } catch (OutOfRange e) {
      return new WickOffer(layout, null);
    }
  }

  /** What symmetry costs, in a sentence; empty when it costs nothing worth saying. */
  public String sentence() {
    WickLayout other = free;
    if (other == null) {
      return "";
    }
    int fewer = layout.positions().size() - other.positions().size();
    return fewer > 0
        ? String.format(
            Locale.ROOT,
            "Without symmetry one wick fewer covers the surface, each pool reaching %.1f mm.",
            other.coveringRadiusMm())
        : String.format(
            Locale.ROOT,
            "Without symmetry each pool need only reach %.1f mm instead of %.1f mm.",
            other.coveringRadiusMm(),
            layout.coveringRadiusMm());
  }
}
