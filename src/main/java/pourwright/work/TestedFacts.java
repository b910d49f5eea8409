package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import pourwright.label.BurnFacts;
import pourwright.shape.Point;
import pourwright.shape.Solid;

/** What the passed burn tests of a version of a candle's card have shown, for its care lines. */
public final class TestedFacts {
  /** Length the wick was trimmed to before each cycle of a test, a reading on the test. */
  public static final String TRIM = "trim_mm";

  /** Wax left when the last cycle of a test was ended, a reading on the test. */
  public static final String LEFT = "wax_left_mm";

  /** House: a melt pool is read to about 3 mm, so a pool this near to the wall has reached it. */
  private static final double READ_TO_MM = 3;

  private static final int TESTS = 100;

  private final Books books;

  /** Facts in the books as they are now. */
  public TestedFacts(Books books) {
    this.books = books;
  }

  /**
   * The facts; null where nothing was tested. Of several tests the strictest value counts: the
   * shortest trim, the deepest rest of wax, the latest first pool.
   */
  BurnFacts of(CandleCards cards, int version) {
    String candle = cards.candle().code();
    BurnBook.Extremes seen = books.burns().extremes(candle, version);
    Double life = seen.lifeH();
    List<BurnTest> passed = passed(candle, version);
    return new BurnFacts(
        seen.hours(),
        reading(passed, TRIM, true),
        firstPoolH(passed, cards),
        reading(passed, LEFT, false),
        life == null || life < 1 ? null : life,
        seen.wallC());
  }

  /** Passed tests of a version, newest first. */
  public List<BurnTest> passed(String candle, int version) {
    List<BurnTest> passed = new ArrayList<>();
    for (BurnTest test : books.burns().list(candle, null, TESTS).items()) {
      BurnTest.Closed closed = test.closed();
      if (test.candleVersion() == version && closed != null && closed.verdict().equals("pass")) {
        passed.add(test);
      }
    }
    return passed;
  }

  private @Nullable Double reading(List<BurnTest> tests, String quantity, boolean least) {
    Double found = null;
    for (BurnTest test : tests) {
      var newest = books.readings().newest(Subject.of(Subject.Kind.BURN_TEST, test.id()), quantity);
      if (newest.isPresent()) {
        double value = newest.get().value();
        found =
            found == null
                ? Double.valueOf(value)
                : least ? Math.min(found, value) : Math.max(found, value);
      }
    }
    return found;
  }

  /** Hours until the pool of every sample had reached the wall in its first cycle, else null. */
  private @Nullable Double firstPoolH(List<BurnTest> tests, CandleCards cards) {
    double[] opening = openingMm(cards);
    double latest = 0;
    for (BurnTest test : tests) {
      for (BurnTest.Sample sample : books.burns().samples(test.id())) {
        OptionalDouble hours = fullAfterH(sample, opening);
        if (hours.isEmpty()) {
          return null;
        }
        latest = Math.max(latest, hours.getAsDouble());
      }
    }
    return latest > 0 ? Double.valueOf(latest) : null;
  }

  private OptionalDouble fullAfterH(BurnTest.Sample sample, double[] opening) {
    return books.burns().cycles(sample.id()).stream()
        .filter(c -> c.number() == 1)
        .flatMap(c -> books.burns().seen(c.id()).stream())
        .map(BurnTest.Seen::look)
        .filter(look -> isFull(look, opening))
        .mapToDouble(look -> look.minute() / 60)
        .min();
  }

  private static boolean isFull(BurnTest.Look look, double[] opening) {
    Double length = look.poolLengthMm();
    Double width = look.poolWidthMm() == null ? length : look.poolWidthMm();
    return length != null
        && width != null
        && Math.max(length, width) >= opening[0] - READ_TO_MM
        && Math.min(length, width) >= opening[1] - READ_TO_MM;
  }

  /** Long and short side of the cavity at the wax's surface, mm. */
  static double[] openingMm(CandleCards cards) {
    Solid cavity = cards.vessel().body().cavity().solid();
    double z = Math.max(0, cavity.heightMm() - cards.candle().body().headspaceMm());
    double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
    double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
    for (Point point : cavity.sectionAt(z, 0.1)) {
      low[0] = Math.min(low[0], point.xMm());
      low[1] = Math.min(low[1], point.yMm());
      high[0] = Math.max(high[0], point.xMm());
      high[1] = Math.max(high[1], point.yMm());
    }
    double x = high[0] - low[0];
    double y = high[1] - low[1];
    return new double[] {Math.max(x, y), Math.min(x, y)};
  }
}
