package pourwright.burn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.heat.Melting;

/**
 * An implementation check, not a validation: the regression set of the handbook of burning, section
 * 7.6, made by another program of the same formulation, with that section's tolerances. Wax leaves
 * in whole rows here, as it did there.
 */
class RegressionTest {
  private static final Map<String, Consumer<Prototype>> CASES = new TreeMap<>();

  static {
    CASES.put("REF", p -> {});
    CASES.put("k 0.5", p -> stuff(p, .5, 1600));
    CASES.put("k 2", p -> stuff(p, 2, 2400));
    CASES.put("glass", RegressionTest::glass);
    CASES.put("chi 0.15", p -> p.chi = .15);
    CASES.put("chi 0.30", p -> p.chi = .3);
    CASES.put("root 2 W", p -> p.root = 2);
    CASES.put("1.2 mg/s", p -> p.milligramsPerS = 1.2);
    CASES.put("soft", p -> p.wax = new Melting(45, 52, 150e3, 2200, 2300, .2, .17, 900));
    CASES.put("room 30", p -> p.room = 30);
    CASES.put("radius 30", p -> p.radius = 30);
    CASES.put("radius 45", p -> p.radius = 45);
  }

  private static void stuff(Prototype p, double k, double rho) {
    p.k = k;
    p.rho = rho;
  }

  private static void glass(Prototype p) {
    p.wall = 2.5;
    p.base = 2.5;
    p.rho = 2500;
    p.c = 840;
  }

  @ParameterizedTest
  @CsvSource({
    "REF, 34.4, 34.9, 36.4, 10.9, 49.0, ",
    "k 0.5, 36.8, 37.5, 37.5, 11.1, 50.2, 75",
    "k 2, 35.0, 34.0, 33.9, 11.0, 47.1, ",
    "glass, 36.8, 37.5, 37.5, 11.1, 58.2, 76",
    "chi 0.15, 33.6, 34.4, 32.9, 10.7, 44.5, ",
    "chi 0.30, 37.5, 37.5, 37.5, 11.8, 57.3, 44",
    "root 2 W, 31.1, 31.0, 33.0, 9.1, 43.3, ",
    "1.2 mg/s, 33.6, 32.9, 33.2, 11.3, 45.3, ",
    "soft, 37.5, 37.5, 37.5, 11.7, 49.3, 57",
    "room 30, 37.5, 37.5, 37.5, 12.3, 57.1, 49",
    "radius 30, 30, 30, 30, 12.2, 57.6, 36",
    "radius 45, 38.0, 40.2, 41.3, 11.6, 41.2, "
  })
  void theFiguresOfTheRegressionSetAreMet(
      String name, double r1, double r2, double r4, double depth, double wall, Double fullMin) {
    Prototype p = new Prototype();
    CASES.getOrDefault(name, q -> {}).accept(p);
    BurnResult result = p.run();
    assertThat(Prototype.at(result, 1).equivalentRadiusMm()).isCloseTo(r1, within(1.5));
    assertThat(Prototype.at(result, 2).equivalentRadiusMm()).isCloseTo(r2, within(1.5));
    assertThat(Prototype.at(result, 4).equivalentRadiusMm()).isCloseTo(r4, within(1.5));
    assertThat(Prototype.at(result, 2).depthMm()).isCloseTo(depth, within(.25 * depth));
    assertThat(result.wallMaxC()).isCloseTo(wall, within(2.0));
    if (fullMin == null) {
      assertThat(result.fullPoolH()).isNaN();
    } else {
      assertThat(60 * result.fullPoolH()).isCloseTo(fullMin, within(.2 * fullMin));
    }
  }

  @Test
  void theFinerReferenceIsMetToo() {
    Prototype p = new Prototype();
    p.grid = 1.25;
    p.hours = 2;
    BurnResult result = p.run();
    assertThat(Prototype.at(result, 1).equivalentRadiusMm()).isCloseTo(34.2, within(1.5));
    assertThat(Prototype.at(result, 2).equivalentRadiusMm()).isCloseTo(35.4, within(1.5));
    assertThat(Prototype.at(result, 2).wallC()).isCloseTo(46.7, within(2.0));
    assertThat(Prototype.at(result, 2).depthMm()).isCloseTo(8.9, within(.25 * 8.9));
  }
}
