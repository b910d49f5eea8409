package pourwright.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DeclarationTest {
  private static final Panel TUMBLER = new Panel.Cylinder(80, 90);

  /** 16 CFR 500.19 factors, check values 36 and 37; three figures, rounded down. */
  @ParameterizedTest
  @CsvSource({
    "226.796,NET WT 8 OZ (226 g),226 g",
    "227,NET WT 8 OZ (227 g),227 g",
    "226.79,NET WT 7.99 OZ (226 g),226 g",
    "200,NET WT 7.05 OZ (200 g),200 g",
    "85.6,NET WT 3.01 OZ (85.6 g),85.6 g",
    "453.592,NET WT 1 LB (453 g),453 g",
    "567,NET WT 1 LB 4 OZ (567 g),567 g",
    "1134,NET WT 2 LB 8 OZ (1.13 kg),1.13 kg",
    "999.9,NET WT 2 LB 3.27 OZ (999 g),999 g"
  })
  void theDeclarationIsRoundedDownInBothSystems(double netG, String us, String metric) {
    Declaration found = Declaration.of(netG, TUMBLER, false);
    assertThat(found.textUs()).isEqualTo(us);
    assertThat(found.textMetric()).isEqualTo(metric);
  }

  /** 16 CFR 500.21(a) and (b), check values 34 and 35. */
  @Test
  void theLettersOfATumblerAreAnEighthOfAnInch() {
    Declaration large = Declaration.of(200, new Panel.Cylinder(80, 90), false);
    assertThat(large.panelMm2()).isCloseTo(9047.8, within(0.05));
    assertThat(large.panelMm2() / 645.16).isCloseTo(14.02, within(0.005));
    assertThat(large.typeHeightMm()).isEqualTo(3.2);
    Declaration small = Declaration.of(200, new Panel.Cylinder(60, 50), false);
    assertThat(small.panelMm2() / 645.16).isCloseTo(5.84, within(0.005));
    assertThat(small.typeHeightMm()).isEqualTo(3.2);
  }

  /** 16 CFR 500.21(b): bands of 5, 25, 100 and 400 square inches; molded in, from memory. */
  @ParameterizedTest
  @CsvSource({
    "5,1.6",
    "5.01,3.2",
    "25,3.2",
    "25.01,4.8",
    "100,4.8",
    "100.01,6.4",
    "400,6.4",
    "401,12.7"
  })
  void theLettersGrowWithThePanel(double squareInches, double heightMm) {
    Panel panel = new Panel.Rectangle(25.4, 25.4 * squareInches);
    assertThat(Declaration.of(200, panel, false).typeHeightMm()).isEqualTo(heightMm);
    assertThat(Declaration.of(200, panel, true).typeHeightMm()).isEqualTo(heightMm + 1.6);
  }

  /** Directive 76/211/EEC, heights from memory. */
  @ParameterizedTest
  @CsvSource({"50,2", "50.1,3", "200,3", "200.1,4", "1000,4", "1000.1,6"})
  void theEuropeanFiguresGrowWithTheQuantity(double netG, double heightMm) {
    assertThat(Declaration.of(netG, TUMBLER, false).typeHeightEuropeMm()).isEqualTo(heightMm);
  }

  @Property
  void aDeclarationNeverSaysMoreThanThereIs(@ForAll @DoubleRange(min = 1, max = 5000) double netG) {
    Declaration found = Declaration.of(netG, TUMBLER, false);
    String[] metric = found.textMetric().split(" ", -1);
    double grams = Double.parseDouble(metric[0]) * (metric[1].equals("kg") ? 1000 : 1);
    assertThat(grams).isBetween(netG * 0.99, netG * (1 + 1e-8));
    String us = found.textUs().replace("NET WT ", "").replaceAll(" \\(.*", "");
    double ounces = 0;
    String[] words = us.split(" ", -1);
    for (int i = 0; i < words.length; i += 2) {
      ounces += Double.parseDouble(words[i]) * (words[i + 1].equals("LB") ? 16 : 1);
    }
    assertThat(ounces).isBetween(netG * 0.0352740 - 0.0101, netG * 0.0352740 * (1 + 1e-8));
  }
}
