package pourwright.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import pourwright.burn.BurnRate;
import pourwright.burn.Reading;
import pourwright.burn.TestSample;
import pourwright.card.CandleDesign;
import pourwright.card.CardBook;
import pourwright.card.PourCard;
import pourwright.card.ResolvedCandle;
import pourwright.pour.Dose;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Outline;
import pourwright.wick.WickMemory;
import pourwright.wick.WickMemory.Burnt;

/**
 * What the studio's own burn tests say of wicks: for each candle that was burnt its burn rate by
 * wick and, where one wick stood alone, how far its pool reached.
 *
 * @param rates g/h of one wick
 * @param reaches melt radius in mm, only of pools that stopped short of the wall
 * @param full how many pools reached the wall, so that only a least radius is known of them
 */
public record WickTests(List<WickMemory.Test> rates, List<WickMemory.Test> reaches, int full) {
  private static final int TESTS_LOOKED_AT = 60;

  /** A pool this near the wall has no radius of its own any more. */
  private static final double FULL = 0.97;

  /** Copies. */
  public WickTests {
    rates = List.copyOf(rates);
    reaches = List.copyOf(reaches);
  }

  /** All of them, the latest 60 tests. */
  public static WickTests of(Books books) {
    CardBook cards = Drawers.book(books);
    Map<String, Optional<ResolvedCandle>> candles = new HashMap<>();
    List<WickMemory.Test> rates = new ArrayList<>();
    List<WickMemory.Test> reaches = new ArrayList<>();
    int full = 0;
    for (BurnTest test : books.burns().list(null, null, TESTS_LOOKED_AT).items()) {
      Optional<ResolvedCandle> candle =
          candles.computeIfAbsent(
              test.candle() + " " + test.candleVersion(), k -> candle(books, cards, test));
      if (candle.isEmpty()) {
        continue;
      }
      Burnt burnt = burnt(candle.get());
      for (BurnTest.Sample sample : books.burns().samples(test.id())) {
        List<List<BurnTest.Seen>> cycles =
            books.burns().cycles(sample.id()).stream()
                .map(c -> books.burns().seen(c.id()))
                .toList();
        int wicks = candle.get().design().wicks().count();
        rate(cycles).ifPresent(r -> rates.add(new WickMemory.Test(burnt, r / wicks)));
        OptionalDouble reach = wicks == 1 ? reach(cycles) : OptionalDouble.empty();
        if (reach.isPresent()) {
          boolean whole = reach.getAsDouble() >= FULL * halfWidthMm(candle.get());
          full += whole ? 1 : 0;
          if (!whole) {
            reaches.add(new WickMemory.Test(burnt, reach.getAsDouble()));
          }
        }
      }
    }
    return new WickTests(rates, reaches, full);
  }

  private static Optional<ResolvedCandle> candle(Books books, CardBook cards, BurnTest test) {
    try {
      return books
          .cards()
          .version(Drawers.CANDLE, test.candle(), test.candleVersion())
          .map(CardVersion::body)
          .map((CandleDesign design) -> design.resolve(cards));
    } catch (OutOfRange e) {
      return Optional.empty();
    }
  }

  /** What a candle's wick burns in. */
  public static Burnt burnt(ResolvedCandle candle) {
    return burnt(candle, candle.design().wicks().wick());
  }

  /** The same with another wick. */
  public static Burnt burnt(ResolvedCandle candle, String wick) {
    PourCard pour = candle.pour().card();
    return new Burnt(
        wick,
        codes(pour.waxes()),
        codes(pour.fragrances()),
        Dose.loadOfTotal(pour.load(), pour.loadOf()),
        candle.design().vessel());
  }

  private static String codes(List<PourCard.Part> parts) {
    return parts.stream().map(PourCard.Part::material).sorted().collect(Collectors.joining("+"));
  }

  private static Optional<Double> rate(List<List<BurnTest.Seen>> cycles) {
    OptionalDouble mean =
        cycles.stream()
            .map(seen -> BurnRate.of(weighings(seen), BurnRate.USUAL_RESOLUTION_G))
            .flatMap(Optional::stream)
            .mapToDouble(BurnRate::gramsPerHour)
            .filter(r -> r > 0)
            .average();
    return mean.isPresent() ? Optional.of(mean.getAsDouble()) : Optional.empty();
  }

  private static TestSample.Cycle weighings(List<BurnTest.Seen> seen) {
    List<Reading> readings = new ArrayList<>();
    for (BurnTest.Seen each : seen) {
      Double mass = each.look().massG();
      if (mass != null) {
        readings.add(new Reading(each.look().minute(), Map.of("mass_g", mass)));
      }
    }
    return new TestSample.Cycle(readings);
  }

  private static OptionalDouble reach(List<List<BurnTest.Seen>> cycles) {
    return cycles.stream()
        .flatMap(List::stream)
        .mapToDouble(s -> radius(s.look().poolLengthMm(), s.look().poolWidthMm()))
        .filter(r -> r > 0)
        .max();
  }

  private static double radius(@Nullable Double length, @Nullable Double width) {
    if (length == null) {
      return width == null ? 0 : width / 2;
    }
    return width == null ? length / 2 : (length + width) / 4;
  }

  private static double halfWidthMm(ResolvedCandle candle) {
    Outline surface = surface(candle);
    return Math.min(surface.lengthMm(), surface.widthMm()) / 2;
  }

  /** The outline of the set wax's surface. */
  public static Outline surface(ResolvedCandle candle) {
    double line = candle.vessel().cavity().heightMm() - candle.design().headspaceMm();
    var cavity = candle.vessel().cavity().solid();
    return cavity.isStraight() || line <= 0 ? cavity.bottom() : cavity.below(line).top();
  }
}
