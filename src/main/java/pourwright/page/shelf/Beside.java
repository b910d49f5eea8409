package pourwright.page.shelf;

import java.util.List;
import java.util.Locale;
import pourwright.burn.Burn;
import pourwright.burn.BurnResult;
import pourwright.burn.Simulation;
import pourwright.burn.TestFit;
import pourwright.burn.Vessel;
import pourwright.burn.Warmth;
import pourwright.quantity.Counted;
import pourwright.shape.Circle;

/**
 * A tested candle that a simulation is held against. Until three of its tests have read the wall no
 * temperature of wall or base is told, only whether both simulations differ by more than they are
 * good for; from then on also degrees with a band, for vessels of its family.
 *
 * @param name the tested candle's
 * @param burn the same hours of it, at the burn rate that its tests weighed
 * @param tested the candle as its tests burnt it
 * @param tests their readings, the oldest test first
 */
record Beside(String name, Burn burn, Burn tested, List<List<TestFit.Got>> tests) {
  /** House: two simulations that differ by less are called alike. */
  private static final double ALIKE_K = 1;

  /** House: of one family are round vessels whose cavities differ by less than a tenth, */
  private static final double FAMILY_SHARE = 0.1;

  /** and whose walls and bases by no more than 2 mm. */
  private static final double FAMILY_MM = 2;

  /** Copies the lists. */
  Beside {
    tests = tests.stream().map(List::copyOf).toList();
  }

  /** Wall and underside of a result beside those of the tested candle, in words. */
  String told(BurnResult result) {
    BurnResult other = Simulation.run(burn);
    return "wall "
        + than(result.wallMaxC() - other.wallMaxC())
        + ", underside "
        + than(result.baseMaxC() - other.baseMaxC());
  }

  private static String than(double kelvin) {
    return Math.abs(kelvin) < ALIKE_K ? "alike" : kelvin > 0 ? "warmer" : "cooler";
  }

  /** Wall and underside of what is simulated in degrees with their bands, or why they are not. */
  String warm(Burn asked) {
    int read = Warmth.wallTests(tests);
    if (read < Warmth.TESTS_MIN) {
      return "not shown: " + read + " of 3 tests of this vessel's family have read the wall";
    }
    if (!isFamily(asked)) {
      Vessel vessel = tested.vessel();
      return String.format(
          Locale.ROOT,
          "not shown: another vessel than the tested one, which is %.0f mm across inside and %.0f"
              + " mm high, wall %.0f mm, base %.0f mm",
          vessel.cavity().bottom().lengthMm(),
          vessel.cavity().heightMm(),
          vessel.wallMm(),
          vessel.baseMm());
    }
    return Warmth.of(TestFit.lay(tested, tests), asked)
        .map(warmth -> degrees(warmth) + ", from " + Counted.of(warmth.tests(), "test", "tests"))
        .orElse("");
  }

  /** In words: 'wall 52 °C (44 to 60), underside 40 °C (30 to 50)'. */
  static String degrees(Warmth warmth) {
    return String.format(
        Locale.ROOT,
        "wall %.0f °C (%.0f to %.0f), underside %.0f °C (%.0f to %.0f)",
        warmth.wall().likelyC(),
        warmth.wall().lowC(),
        warmth.wall().highC(),
        warmth.base().likelyC(),
        warmth.base().lowC(),
        warmth.base().highC());
  }

  private boolean isFamily(Burn asked) {
    Vessel one = tested.vessel();
    Vessel other = asked.vessel();
    return asked.wicks().size() == 1
        && other.cavity().bottom() instanceof Circle
        && near(one.cavity().bottom().lengthMm(), other.cavity().bottom().lengthMm())
        && near(one.cavity().heightMm(), other.cavity().heightMm())
        && Math.abs(one.wallMm() - other.wallMm()) <= FAMILY_MM
        && Math.abs(one.baseMm() - other.baseMm()) <= FAMILY_MM;
  }

  private static boolean near(double one, double other) {
    return Math.abs(one - other) <= FAMILY_SHARE * one;
  }
}
