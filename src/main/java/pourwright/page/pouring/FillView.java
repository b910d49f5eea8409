package pourwright.page.pouring;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pourwright.card.ResolvedCandle;
import pourwright.page.Desk;
import pourwright.page.board.CandleSection;
import pourwright.page.pouring.PourPage.FillCard;
import pourwright.pour.Fill;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;
import pourwright.work.Books;
import pourwright.work.PourFill;
import pourwright.work.PourWatch;

/** How high the wax stands in one vessel of a pour, and how much of it there is. */
final class FillView {
  private FillView() {}

  static List<FillCard> of(Desk desk, Books books, PourWatch watch) {
    List<FillCard> cards = new ArrayList<>();
    for (PourWatch.Part part : watch.parts()) {
      ResolvedCandle candle = part.candle();
      cards.add(of(desk, books, candle, watch.parts().size() > 1 ? candle.design().name() : ""));
    }
    return cards;
  }

  private static FillCard of(Desk desk, Books books, ResolvedCandle candle, String name) {
    try {
      PourFill found = PourFill.of(books, candle, 0);
      return new FillCard(
          name, new CandleSection(desk).of(candle, found.fill()), lines(found, candle));
    } catch (OutOfRange e) {
      return new FillCard(name, null, List.of(e.sentence() + ": " + e.hint() + "."));
    }
  }

  private static List<String> lines(PourFill found, ResolvedCandle candle) {
    List<String> lines = new ArrayList<>();
    Fill fill = found.fill();
    double rim = candle.vessel().cavity().heightMm();
    lines.add(
        String.format(
            Locale.ROOT,
            "Hot line %.0f mm above the base, %.0f mm under the rim: it fits. Set line %.0f mm.",
            fill.hotLineMm(),
            rim - fill.hotLineMm(),
            fill.setLineMm()));
    Sourced net = found.netG();
    int weighed = found.weighedG().size();
    lines.add(
        weighed >= PourFill.ENOUGH
            ? String.format(
                Locale.ROOT,
                "Net %.1f g each \u00b1 %.1f g, by %s weighed empty and full (drawing: %.1f g).",
                net.value(),
                net.value() * net.relativeUncertainty(),
                Counted.of(weighed, "candle", "candles"),
                found.drawn().value())
            : String.format(
                Locale.ROOT,
                "Net %.1f g each by the drawing \u00b1 %.0f %%. %d of %s weighed empty and full;"
                    + " then those count.",
                net.value(),
                100 * net.relativeUncertainty(),
                weighed,
                Counted.of(PourFill.ENOUGH, "candle", "candles")));
    return lines;
  }
}
