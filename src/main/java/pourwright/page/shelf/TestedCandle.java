package pourwright.page.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pourwright.burn.Burn;
import pourwright.burn.BurnRate;
import pourwright.burn.Reading;
import pourwright.burn.Room;
import pourwright.burn.TestFit;
import pourwright.burn.Vessel;
import pourwright.burn.Warmth;
import pourwright.burn.WickFit;
import pourwright.card.CandleDesign;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Circle;
import pourwright.work.Books;
import pourwright.work.BurnTest;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;

/**
 * What the closed tests of a candle read in the first cycle of each sample.
 *
 * @param ids the tests, the oldest first
 * @param each their readings
 * @param rate mean burn rate of their usual cycles, g/h; 0 where nothing was weighed
 */
record TestedCandle(List<Long> ids, List<List<TestFit.Got>> each, double rate) {
  private static final int TESTS = 30;
  private static final double EMISSIVITY = .92;
  private static final double HEAT_CAPACITY = 950;
  private static final double ROOM_C = 21;
  private static final double CYCLE_H = 4;

  int tests() {
    return ids.size();
  }

  /** How many readings a fit stands on: those of all tests but the latest of several. */
  int seenReadings() {
    return (int)
        before().stream()
            .flatMap(List::stream)
            .filter(g -> g.want().kind() != WickFit.Kind.BASE_C)
            .count();
  }

  private List<List<TestFit.Got>> before() {
    return each.subList(0, each.size() < 2 ? each.size() : each.size() - 1);
  }

  /** How many tests before the latest have read the wall. */
  int seenTests() {
    return Warmth.wallTests(before());
  }

  /** The candle as it was tested, as long as it was read. */
  Burn burn(Vessel vessel, String wax) {
    return SimulationForm.candle(vessel, wax, rate, new double[] {ROOM_C, hours()});
  }

  /** A usual cycle of it. */
  Burn cycle(Vessel vessel, String wax) {
    return SimulationForm.candle(vessel, wax, rate, new double[] {ROOM_C, CYCLE_H});
  }

  private double hours() {
    double most = 0.5;
    for (List<TestFit.Got> test : each) {
      for (TestFit.Got got : test) {
        most = Math.max(most, got.want().hours());
      }
    }
    return Math.min(12, most);
  }

  /** The vessel of a candle as a simulation takes it: even wall and base from its drawing. */
  static Optional<Vessel> vessel(Books books, String code, double k, double density) {
    Optional<CandleDesign> candle =
        books.cards().current(Drawers.CANDLE, code).map(CardVersion::body);
    return candle
        .flatMap(c -> books.cards().current(Drawers.VESSEL, c.vessel()))
        .map(CardVersion::body)
        .map(
            v ->
                new Vessel(
                    v.cavity().solid(),
                    v.cavity().heightMm() - candle.get().headspaceMm(),
                    (v.outer().solid().bottom().lengthMm() - v.cavity().solid().bottom().lengthMm())
                        / 2,
                    v.outer().heightMm() - v.cavity().heightMm(),
                    new Vessel.Stuff(k, density, HEAT_CAPACITY, EMISSIVITY)));
  }

  /** Reads the closed tests of a candle. */
  static TestedCandle of(Books books, String candle) {
    List<Long> ids = new ArrayList<>();
    List<List<TestFit.Got>> each = new ArrayList<>();
    List<Double> rates = new ArrayList<>();
    for (BurnTest test : books.burns().list(candle, null, TESTS).items()) {
      if (test.closed() == null) {
        continue;
      }
      List<TestFit.Got> got = new ArrayList<>();
      for (TestReader.Sample sample : TestReader.samples(books, test.id())) {
        for (TestReader.Burnt burnt : sample.cycles()) {
          if (!burnt.early() && !burnt.kind().isMisuse()) {
            BurnRate.of(burnt.judged(), BurnRate.USUAL_RESOLUTION_G)
                .ifPresent(r -> rates.add(r.gramsPerHour()));
            if (burnt.cycle().number() == 1) {
              burnt.judged().readings().forEach(r -> add(got, r));
            }
          }
        }
      }
      ids.add(0, test.id()); // listed newest first
      each.add(0, got);
    }
    return new TestedCandle(ids, each, rates.stream().mapToDouble(r -> r).average().orElse(0));
  }

  /**
   * A tested candle to hold a simulation against; empty where no closed test weighed it or it is
   * not a round one with one wick.
   *
   * @param asked what is simulated: mix, room, hours and switches are taken from it
   */
  static Optional<Beside> tested(Books books, String code, String wax, Burn asked) {
    double[] set = {
      asked.vessel().stuff().conductivity(),
      asked.vessel().stuff().density(),
      asked.room().celsius(),
      asked.fineness().hours()
    };
    Optional<CandleDesign> design =
        books.cards().current(Drawers.CANDLE, code).map(CardVersion::body);
    try {
      Optional<Vessel> vessel = vessel(books, code, set[0], set[1]);
      TestedCandle tested = of(books, code);
      double rate = tested.rate;
      boolean fits =
          design.isPresent()
              && design.get().wicks().count() == 1
              && vessel.isPresent()
              && vessel.get().cavity().bottom() instanceof Circle
              && rate > 0;
      return fits
          ? Optional.of(
              new Beside(
                  design.get().name(),
                  SimulationForm.candle(vessel.get(), wax, rate, new double[] {set[2], set[3]}),
                  switched(tested.burn(vessel.get(), wax), asked),
                  tested.each))
          : Optional.empty();
    } catch (OutOfRange e) {
      return Optional.empty(); // a card or what was weighed cannot be
    }
  }

  private static void add(List<TestFit.Got> got, Reading reading) {
    double hours = reading.minute() / 60;
    if (hours < 0.25) {
      return; // the first quarter of an hour is shorter than the fit's records
    }
    Double length = reading.values().get("pool_length_mm");
    Double width = reading.values().getOrDefault("pool_width_mm", length);
    Double depth = reading.values().get("pool_depth_mm");
    Double wall = reading.values().get("wall_c");
    if (length != null && width != null) {
      got.add(
          new TestFit.Got(
              new WickFit.Want(hours, WickFit.Kind.POOL_RADIUS_MM), (length + width) / 4));
    }
    if (depth != null) {
      got.add(new TestFit.Got(new WickFit.Want(hours, WickFit.Kind.POOL_DEPTH_MM), depth));
    }
    if (wall != null) {
      got.add(new TestFit.Got(new WickFit.Want(hours, WickFit.Kind.WALL_C), wall));
    }
    Double base = reading.values().get("base_c");
    if (base != null) {
      got.add(new TestFit.Got(new WickFit.Want(hours, WickFit.Kind.BASE_C), base));
    }
  }

  /** The tests' own burn with the switches of what is simulated. */
  private static Burn switched(Burn burn, Burn asked) {
    return new Burn(
        burn.vessel(),
        burn.wax(),
        burn.across(),
        burn.upright(),
        burn.wicks(),
        burn.flame(),
        new Room(burn.room().celsius(), burn.room().waxEmissivity(), asked.room().convection()),
        burn.fineness(),
        asked.contact());
  }
}
