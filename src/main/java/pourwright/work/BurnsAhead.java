package pourwright.work;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.burn.TestSample;
import pourwright.card.CandleDesign;
import pourwright.card.CardBook;
import pourwright.plan.NextBurn;

/**
 * Open burn tests as the plan sees them: what burns now, and from when the rest may be lit again.
 */
final class BurnsAhead {
  private BurnsAhead() {}

  /** The next cycle of every open test that still has one, the oldest test first. */
  static List<NextBurn> of(Books books, CardBook book, Instant now) {
    List<NextBurn> burns = new ArrayList<>();
    for (BurnTest test : books.burns().open()) {
      List<NextBurn.Sample> samples = new ArrayList<>();
      for (BurnTest.Sample sample : books.burns().samples(test.id())) {
        NextBurn.Sample next = next(books.burns().cycles(sample.id()), sample.label(), now);
        if (next != null) {
          samples.add(next);
        }
      }
      if (!samples.isEmpty()) {
        burns.add(new NextBurn("T" + test.id(), name(book, test.candle()), samples));
      }
    }
    return burns;
  }

  private static NextBurn.@Nullable Sample next(
      List<BurnTest.Cycle> cycles, String label, Instant now) {
    if (cycles.isEmpty()) {
      return new NextBurn.Sample(label, 0, null);
    }
    BurnTest.Cycle last = cycles.get(cycles.size() - 1);
    Instant out = last.endedAt();
    if (out == null) {
      return new NextBurn.Sample(label, 0, minute(now, last.litAt()));
    }
    return BurnLife.end(cycles) == TestSample.End.NOT_YET
        ? new NextBurn.Sample(label, minute(now, out.plus(BurnLife.REST)), null)
        : null;
  }

  private static int minute(Instant now, Instant at) {
    long minutes = -Math.floorDiv(-Duration.between(now, at).getSeconds(), 60);
    return (int) Math.max(-1_000_000, Math.min(1_000_000, minutes));
  }

  private static String name(CardBook book, String candle) {
    return book.all(CandleDesign.class).stream()
        .filter(c -> c.code().equals(candle))
        .map(CandleDesign::name)
        .findFirst()
        .orElse(candle);
  }
}
