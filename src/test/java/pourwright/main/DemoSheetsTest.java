package pourwright.main;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pourwright.hazard.Audience;
import pourwright.hazard.Blend;
import pourwright.hazard.HazardSheet;
import pourwright.hazard.Ingredient;
import pourwright.hazard.Regime;

class DemoSheetsTest {
  private static Blend blend(String scent) {
    HazardSheet sheet =
        DemoSheets.all().stream().filter(s -> s.material().equals(scent)).findFirst().orElseThrow();
    return new Blend(
        Regime.CLP, Audience.PUBLIC, sheet.composition(scent), List.of(Ingredient.plain("wax", 1)));
  }

  /** Worked out by hand from the invented sheets: upper ends times 8 %. */
  @Test
  void theThreeScentsOfTheDemoGiveThreeDifferentLabels() {
    assertThat(blend("scent-rain").at(0.08).supplemental()).containsExactly("EUH208");
    assertThat(blend("scent-rain").at(0.08).classes()).isEmpty();
    assertThat(blend("scent-fig").at(0.08).classes()).containsExactly("Aquatic Chronic 3");
    assertThat(blend("scent-hearth").at(0.08).statements()).containsExactly("H317");
    assertThat(blend("scent-hearth").at(0.08).namedSubstances())
        .containsExactly("Eugenol", "Linalool", "Isoeugenol");
  }
}
