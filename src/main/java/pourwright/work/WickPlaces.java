package pourwright.work;

import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.card.ResolvedCandle;
import pourwright.card.WickPlan;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Outline;
import pourwright.shape.Point;
import pourwright.wick.WickLayout;
import pourwright.wick.WickLayout.Clearances;
import pourwright.wick.WickOffer;

/**
 * Where the wicks of a candle stand: as its card says, or laid out by covering the wax surface with
 * the house's clearances. One answer for drawings, template and pages.
 *
 * @param layout the places and how far each pool must reach
 * @param written whether they stand on the card
 * @param sentence what symmetry costs, what is too near, or empty
 */
public record WickPlaces(WickLayout layout, boolean written, String sentence) {
  /** Places on a card are rounded to a hundredth of a millimetre. */
  private static final double ROUNDED_MM = 0.02;

  /**
   * The places of a candle's wicks.
   *
   * @throws OutOfRange when the card leaves them open and no layout keeps the clearances, or a
   *     place on the card lies in the wall
   */
  public static WickPlaces of(ResolvedCandle candle) {
    WickPlan plan = candle.design().wicks();
    Outline surface = WickTests.surface(candle);
    if (!plan.positionsMm().isEmpty()) {
      WickLayout layout =
          WickLayout.at(
              surface,
              plan.positionsMm().stream().map(p -> new Point(p.get(0), p.get(1))).toList());
      return new WickPlaces(layout, true, tooNear(surface, layout.inOwnAxes()));
    }
    return laidOut(candle, surface, plan.count(), false);
  }

  /**
   * A layout to be kept on a card.
   *
   * @param free true for the one without symmetry, where one is worth offering
   */
  public static WickPlaces laidOut(ResolvedCandle candle, int count, boolean free) {
    return laidOut(candle, WickTests.surface(candle), count, free);
  }

  private static WickPlaces laidOut(
      ResolvedCandle candle, Outline surface, int count, boolean free) {
    WickOffer offer = WickOffer.of(surface, WickChoice.WALL_MM, WickChoice.SPACING_MM, count);
    WickLayout other = offer.free();
    WickLayout layout = free && other != null ? other : offer.layout();
    Outline base = candle.vessel().cavity().solid().bottom();
    WickLayout onBase = inTheWall(base, layout) ? onBase(base, count) : null;
    return new WickPlaces(onBase == null ? layout : onBase, false, offer.sentence());
  }

  /** A cavity that narrows downward: a place over the base's wall is no place for a tab. */
  private static boolean inTheWall(Outline base, WickLayout layout) {
    return layout.inOwnAxes().stream().anyMatch(p -> !base.contains(p.xMm(), p.yMm()));
  }

  private static @Nullable WickLayout onBase(Outline base, int count) {
    try {
      Clearances house = new Clearances(WickChoice.WALL_MM, WickChoice.SPACING_MM, true);
      return WickLayout.of(base, house, count);
    } catch (OutOfRange e) {
      return null;
    }
  }

  private static String tooNear(Outline surface, List<Point> places) {
    double wall = Double.POSITIVE_INFINITY;
    double apart = Double.POSITIVE_INFINITY;
    for (int i = 0; i < places.size(); i++) {
      Point p = places.get(i);
      wall = Math.min(wall, surface.clearanceMm(p.xMm(), p.yMm()));
      for (int j = 0; j < i; j++) {
        apart = Math.min(apart, p.minus(places.get(j)).length());
      }
    }
    String near = "";
    if (wall < WickChoice.WALL_MM - ROUNDED_MM) {
      near =
          String.format(
              java.util.Locale.ROOT,
              "A wick on the card is %.1f mm from the wall, nearer than 15 mm (house).",
              wall);
    } else if (apart < WickChoice.SPACING_MM - ROUNDED_MM) {
      near =
          String.format(
              java.util.Locale.ROOT,
              "Two wicks on the card are %.1f mm apart, nearer than 30 mm (house).",
              apart);
    }
    return near;
  }

  /** The places as a card keeps them, to a hundredth of a millimetre. */
  public List<List<Double>> forTheCard() {
    return places().stream()
        .map(p -> List.of(Math.rint(100 * p.xMm()) / 100, Math.rint(100 * p.yMm()) / 100))
        .toList();
  }

  /** The places in the cavity's own axes, from its centroid. */
  public List<Point> places() {
    return layout.inOwnAxes();
  }
}
