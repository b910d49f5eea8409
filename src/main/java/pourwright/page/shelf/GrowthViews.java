package pourwright.page.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pourwright.burn.BurnRate;
import pourwright.burn.PoolGrowth;
import pourwright.burn.Reading;
import pourwright.card.CandleDesign;
import pourwright.quantity.OutOfRange;
import pourwright.work.Books;
import pourwright.work.BurnTest;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;

/** How each sample's pool grows, and how long what is left of its wax may still burn. */
final class GrowthViews {
  /** House: so much of the wax's height is left at the end. */
  private static final double LEFT_SHARE = 0.1;

  private GrowthViews() {}

  static List<String> of(Books books, BurnTest test, List<TestReader.Sample> samples) {
    Optional<CandleDesign> design =
        books
            .cards()
            .version(Drawers.CANDLE, test.candle(), test.candleVersion())
            .map(CardVersion::body);
    Optional<Double> opening = design.flatMap(d -> opening(books, d));
    List<String> lines = new ArrayList<>();
    for (TestReader.Sample sample : samples) {
      String who = sample.sample().label() + ": ";
      opening
          .flatMap(full -> PoolGrowth.of(widths(sample), full))
          .ifPresent(g -> lines.add(who + g.sentence()));
      design.flatMap(d -> left(books, d, sample)).ifPresent(l -> lines.add(who + l));
    }
    return lines;
  }

  /** Widest way across the cavity, mm. */
  static Optional<Double> opening(Books books, CandleDesign design) {
    return books
        .cards()
        .current(Drawers.VESSEL, design.vessel())
        .map(v -> v.body().cavity().solid())
        .map(s -> s.isStraight() ? s.bottom().lengthMm() : s.top().lengthMm());
  }

  private static List<double[]> widths(TestReader.Sample sample) {
    List<double[]> widths = new ArrayList<>();
    for (TestReader.Burnt burnt : sample.cycles()) {
      for (Reading reading : burnt.judged().readings()) {
        Double length = reading.values().get("pool_length_mm");
        if (length != null && !burnt.early()) {
          widths.add(new double[] {reading.minute() / 60, length});
        }
      }
    }
    return widths;
  }

  /** From the wax that was poured, less what burnt, at the last cycle's rate. */
  private static Optional<String> left(Books books, CandleDesign design, TestReader.Sample sample) {
    double first = Double.NaN;
    double last = Double.NaN;
    Optional<BurnRate> rate = Optional.empty();
    for (TestReader.Burnt burnt : sample.cycles()) {
      for (Reading reading : burnt.judged().readings()) {
        Double mass = reading.values().get("mass_g");
        if (mass != null) {
          first = Double.isNaN(first) ? mass : first;
          last = mass;
        }
      }
      Optional<BurnRate> now = BurnRate.of(burnt.judged(), BurnRate.USUAL_RESOLUTION_G);
      rate = now.isPresent() ? now : rate;
    }
    boolean over = sample.end().isGood() || sample.end().isBad();
    if (over || rate.isEmpty() || Double.isNaN(last)) {
      return Optional.empty();
    }
    double burnt = first - last;
    BurnRate at = rate.get();
    return waxG(books, design)
        .map(wax -> (1 - LEFT_SHARE) * wax - burnt)
        .filter(g -> g > 0)
        .map(g -> words(at.hoursLeft(g)));
  }

  private static String words(double[] hours) {
    return String.format(
        Locale.ROOT,
        "about %.0f h left to burn (%.0f to %.0f) until a tenth of the wax is left",
        hours[1],
        hours[0],
        hours[2]);
  }

  private static Optional<Double> waxG(Books books, CandleDesign design) {
    try {
      return Optional.of(design.resolve(Drawers.book(books)).netG().value());
    } catch (OutOfRange e) {
      return Optional.empty(); // a card or a density of it is missing
    }
  }
}
