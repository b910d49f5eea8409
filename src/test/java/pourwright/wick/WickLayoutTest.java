package pourwright.wick;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Circle;
import pourwright.shape.Ellipse;
import pourwright.shape.Outline;
import pourwright.shape.Point;
import pourwright.shape.Stadium;
import pourwright.shape.Traced;
import pourwright.wick.WickLayout.Clearances;

class WickLayoutTest {
  static final Outline SQUARE =
      Traced.through(
          List.of(new Point(0, 0), new Point(80, 0), new Point(80, 80), new Point(0, 80)));
  static final Outline ELL =
      Traced.through(
          List.of(
              new Point(0, 0),
              new Point(90, 0),
              new Point(90, 30),
              new Point(30, 30),
              new Point(30, 90),
              new Point(0, 90)));

  /**
   * K. Bezdek 1979/1983; G. Fejes Tóth: the least radius of n equal discs that cover a unit circle.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 1",
    "2, 1",
    "3, 0.866025",
    "4, 0.707107",
    "5, 0.609383",
    "6, 0.555905",
    "7, 0.5",
    "8, 0.445042",
    "9, 0.414214"
  })
  void aCircleIsCoveredAsWellAsIsKnown(int count, double best) {
    WickLayout free = WickLayout.of(new Circle(80), new Clearances(0, 0, false), count);
    assertThat(free.coveringRadiusMm() / 40).isCloseTo(best, within(0.01 * best));
    assertThat(free.coveringRadiusMm() / 40).isGreaterThan(best * 0.99999);
    WickLayout even = WickLayout.of(new Circle(80), new Clearances(0, 0, true), count);
    assertThat(even.coveringRadiusMm() / 40).isCloseTo(best, within(0.01 * best));
  }

  /** Tarnai and Gáspár 1995; Heppes and Melissen 1997: the same for a unit square. */
  @ParameterizedTest
  @CsvSource({"1, 0.707107", "2, 0.559017", "3, 0.503891", "4, 0.353553", "5, 0.326161"})
  void aSquareIsCoveredAsWellAsIsKnown(int count, double best) {
    WickLayout free = WickLayout.of(SQUARE, new Clearances(0, 0, false), count);
    assertThat(free.coveringRadiusMm() / 80).isCloseTo(best, within(0.01 * best));
    assertThat(free.coveringRadiusMm() / 80).isGreaterThan(best * 0.99999);
  }

  static List<Outline> outlines() {
    return List.of(new Circle(100), new Ellipse(120, 60), SQUARE, new Stadium(150, 50), ELL);
  }

  @ParameterizedTest
  @MethodSource("outlines")
  void everyPointIsCoveredAndClearancesAndAnAxisAreKept(Outline outline) {
    for (int count = 1; count <= 6; count++) {
      WickLayout layout = WickLayout.of(outline, new Clearances(8, 15, true), count);
      assertThat(layout.positions()).hasSize(count);
      for (int i = 0; i < count; i++) {
        Point p = layout.positions().get(i);
        assertThat(outline.clearanceMm(p.xMm(), p.yMm())).isGreaterThan(8 - 1e-6);
        for (int j = 0; j < i; j++) {
          assertThat(p.minus(layout.positions().get(j)).length()).isGreaterThan(15 - 1e-6);
        }
      }
      assertThat(layout.mirrorAxes()).isPositive();
      double[] centres = Reference.flat(layout.positions());
      double farthest = new Reference(outline, 8, 15).radius(centres, 160);
      assertThat(layout.coveringRadiusMm()).isGreaterThanOrEqualTo(farthest - 1e-9);
      assertThat(layout.coveringRadiusMm()).isCloseTo(farthest, within(0.01 * farthest));
    }
  }

  /** An outline with those of its mirror axes that are not alike, in degrees. */
  private record Even(String name, Outline outline, List<Double> axesDeg) {
    @Override
    public String toString() {
      return name;
    }
  }

  static List<Even> even() {
    return List.of(
        new Even("circle", new Circle(100), List.of(0.0)),
        new Even("ellipse 2:1", new Ellipse(120, 60), List.of(0.0, 90.0)),
        new Even("square", SQUARE, List.of(0.0, 45.0)),
        new Even("stadium 3:1", new Stadium(150, 50), List.of(0.0, 90.0)),
        new Even("L", ELL, List.of(45.0)));
  }

  /** The reference is a plain search by chance over sample points, in the test tree. */
  @ParameterizedTest
  @MethodSource("even")
  void noSearchByChanceFindsARadiusMoreThanTwoPercentSmaller(Even even) {
    for (int count = 2; count <= 4; count++) {
      chance(even, count, 3, 300);
    }
  }

  @ParameterizedTest
  @MethodSource("even")
  @Tag("long")
  void noLongSearchByChanceDoesEither(Even even) {
    for (int count = 1; count <= 7; count++) {
      chance(even, count, 10, 1000);
    }
  }

  /** Symmetric layouts against a symmetric search, free ones against a free one, and the offer. */
  private static void chance(Even even, int count, int starts, int tries) {
    Reference search = new Reference(even.outline, 8, 15);
    WickOffer offer = WickOffer.of(even.outline, 8, 15, count);
    WickLayout free = WickLayout.of(even.outline, new Clearances(8, 15, false), count);
    WickLayout offered = offer.free() == null ? offer.layout() : offer.free();
    double symmetric = search.bestEven(count, even.axesDeg, starts, tries);
    double best = Math.min(symmetric, search.best(count, 2 * starts, tries));
    String row =
        String.format(
            Locale.ROOT,
            "%s, %d wicks: symmetric %.3f (by chance %.3f), free %.3f (by chance %.3f)",
            even,
            count,
            offer.layout().coveringRadiusMm(),
            symmetric,
            free.coveringRadiusMm(),
            best);
    assertThat(offer.layout().coveringRadiusMm()).as(row).isLessThan(1.02 * symmetric);
    assertThat(free.coveringRadiusMm()).as(row).isLessThan(1.02 * best);
    assertThat(offered.coveringRadiusMm()).as(row).isLessThan(1.02 * 1.02 * best);
  }

  /** Own figures: on this L four wicks reach 26.05 mm freely and 27.04 mm along the mirror axis. */
  @Test
  void whereSymmetryCostsMoreThanTwoPercentTheFreeLayoutIsOfferedToo() {
    WickOffer offer = WickOffer.of(ELL, 0, 0, 4);
    assertThat(offer.layout().mirrorAxes()).isEqualTo(1);
    assertThat(offer.layout().coveringRadiusMm()).isCloseTo(27.04, within(0.02));
    assertThat(requireNonNull(offer.free()).coveringRadiusMm()).isCloseTo(26.05, within(0.02));
    assertThat(offer.sentence()).contains("26.0 mm instead of 27.0 mm");
    assertThat(WickOffer.of(new Circle(80), 8, 15, 3).free()).isNull();
  }

  @Test
  void aFreeLayoutWithAWickFewerIsOfferedWhereItReaches() {
    WickOffer offer = WickOffer.fewest(ELL, 0, 0, 26.5);
    assertThat(offer.layout().positions()).hasSize(5);
    assertThat(requireNonNull(offer.free()).positions()).hasSize(4);
    assertThat(offer.sentence()).contains("one wick fewer");
  }

  @Test
  void oneWickInACircleSitsAtItsCentre() {
    Point p = WickLayout.of(new Circle(76.2), new Clearances(15, 30, true), 1).positions().get(0);
    assertThat(p.length()).isLessThan(1e-3);
  }

  /** Common practice, no source: an oval about twice as long as wide takes a row. */
  @Test
  void anOvalTwiceAsLongAsWideTakesARowOfThree() {
    List<Point> row =
        WickLayout.of(new Ellipse(120, 60), new Clearances(15, 30, true), 3).positions();
    assertThat(row).allMatch(p -> Math.abs(p.yMm()) < 1e-6);
    assertThat(row).anyMatch(p -> Math.abs(p.xMm()) < 1e-3);
  }

  @Test
  void aTallOutlineIsTurnedSoThatXRunsAlongIt() {
    WickLayout layout = WickLayout.of(new Ellipse(60, 120), new Clearances(15, 30, true), 2);
    assertThat(layout.turnedDeg()).isEqualTo(-90);
    assertThat(Math.abs(layout.positions().get(0).xMm())).isGreaterThan(15);
  }

  @Test
  void theFewestWicksAreFoundForAMeltRadius() {
    WickLayout layout = WickLayout.fewest(new Ellipse(120, 60), new Clearances(15, 30, true), 34);
    assertThat(layout.positions()).hasSize(3);
    assertThat(layout.coveringRadiusMm()).isLessThanOrEqualTo(34);
    assertThat(WickLayout.fewest(new Circle(76.2), new Clearances(15, 30, true), 38.2).positions())
        .hasSize(1);
  }

  @Test
  void whereClearancesCannotBeKeptTheAnswerIsThatNoWickFits() {
    List<Runnable> tries = new ArrayList<>();
    tries.add(() -> WickLayout.of(new Circle(25), new Clearances(15, 30, true), 1));
    tries.add(() -> WickLayout.of(new Circle(60), new Clearances(15, 40, true), 2));
    tries.add(() -> WickLayout.fewest(new Circle(76.2), new Clearances(15, 30, true), 20));
    for (Runnable attempt : tries) {
      assertThatThrownBy(attempt::run)
          .isInstanceOf(OutOfRange.class)
          .hasMessageContaining("no wick fits");
    }
  }

  @Test
  void aCircleJustWideEnoughForOneWickTakesItAtTheCentre() {
    Point p = WickLayout.of(new Circle(30), new Clearances(15, 0, true), 1).positions().get(0);
    assertThat(p.length()).isLessThan(1e-3);
  }
}
