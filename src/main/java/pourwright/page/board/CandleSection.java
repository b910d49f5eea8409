package pourwright.page.board;

import java.util.List;
import pourwright.card.ResolvedCandle;
import pourwright.page.Desk;
import pourwright.pour.Fill;
import pourwright.shape.Point;

/** The section of a candle with its lines, for pages of other places. */
public final class CandleSection {
  private final Lengths lengths;

  /** Drawings as this studio reads them. */
  public CandleSection(Desk desk) {
    this.lengths = new Lengths(desk);
  }

  /** The vessel cut along its length, with hot line and set line. */
  public Drawing of(ResolvedCandle candle, Fill fill) {
    return new VesselDrawing(candle.vessel().hollow(), lengths::rough)
        .section(
            candle.design().name(),
            new VesselDrawing.Lines(fill.setLineMm(), fill.hotLineMm(), List.of()));
  }

  /** The wax surface from above with wicks at these places about the cavity's centroid. */
  public Drawing plan(ResolvedCandle candle, Fill fill, List<Point> wicks) {
    return new VesselDrawing(candle.vessel().hollow(), lengths::rough)
        .plan(
            candle.design().name(),
            new VesselDrawing.Lines(fill.setLineMm(), fill.hotLineMm(), wicks));
  }
}
