package pourwright.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The limit rows of handbook compliance 2.2 to 2.6, written down a second time: each is seen at the
 * limit, a hair under it and a hair over it.
 */
class EveryLimitTest {
  /** Class, limit in % for the European rules, limit for HazCom, by handbook compliance 2.2. */
  private static final String SINGLE =
      """
      Resp. Sens. 1|1.0|0.1
      Resp. Sens. 1A|0.1|0.1
      Resp. Sens. 1B|1.0|1.0
      Skin Sens. 1|1.0|0.1
      Skin Sens. 1A|0.1|0.1
      Skin Sens. 1B|1.0|1.0
      Muta. 1A|0.1|0.1
      Muta. 1B|0.1|0.1
      Muta. 2|1.0|1.0
      Carc. 1A|0.1|0.1
      Carc. 1B|0.1|0.1
      Carc. 2|1.0|0.1
      Repr. 1A|0.3|0.1
      Repr. 1B|0.3|0.1
      Repr. 2|3.0|0.1
      Lact.|0.3|0.1
      STOT SE 1|10|1.0
      STOT SE 2|10|1.0
      STOT RE 1|10|1.0
      STOT RE 2|10|1.0
      ED HH 1|0.1|
      ED HH 2|1.0|
      ED ENV 1|0.1|
      ED ENV 2|1.0|
      PBT|0.1|
      vPvB|0.1|
      PMT|0.1|
      vPvM|0.1|
      """;

  private static List<String> classes(Regime regime, String written, double percent) {
    String line = String.format(Locale.ROOT, "x %.5f %s", percent, written);
    return Compositions.classify(regime, line).classes();
  }

  @Test
  void everyLimitOfOneSubstanceIsMetAtAndOverAndNotUnder() {
    int looked = 0;
    for (String row : SINGLE.lines().toList()) {
      String[] cells = row.split("\\|", -1);
      for (Regime regime : Regime.values()) {
        String limit = regime == Regime.HAZCOM ? cells[2] : cells[1];
        boolean onlyEurope = cells[2].isEmpty();
        if (limit.isEmpty() || (onlyEurope && regime != Regime.CLP)) {
          continue;
        }
        double percent = Double.parseDouble(limit);
        String what = regime + " " + row;
        assertThat(classes(regime, cells[0], percent)).as(what).contains(cells[0]);
        assertThat(classes(regime, cells[0], percent + 0.001)).as(what).contains(cells[0]);
        assertThat(classes(regime, cells[0], percent - 0.001)).as(what).doesNotContain(cells[0]);
        looked++;
      }
    }
    assertThat(looked).isEqualTo(20 * 3 + 8);
  }

  /** No single limit of the program is without its row here. */
  @Test
  void noLimitOfTheProgramIsLeftOut() {
    List<String> known = SINGLE.lines().map(r -> r.split("\\|", -1)[0]).toList();
    for (Regime regime : Regime.values()) {
      for (Tables.SingleLimit limit : Tables.shared().singleLimits(regime)) {
        assertThat(known).contains(limit.ingredient().fullCode());
      }
    }
  }

  /** Category 1 between 1 and 10 % is category 2 in Europe: CLP Tables 3.8.3 and 3.9.4. */
  @ParameterizedTest
  @CsvSource({
    "STOT SE 1,1,STOT SE 2", "STOT SE 1,9.999,STOT SE 2", "STOT SE 1,0.999,",
    "STOT RE 1,1,STOT RE 2", "STOT RE 1,9.999,STOT RE 2", "STOT RE 1,0.999,"
  })
  void lessOfACategoryOneOrganToxicantIsCategoryTwo(
      String written, double percent, @Nullable String expected) {
    assertThat(classes(Regime.CLP, written, percent))
        .isEqualTo(expected == null ? List.of() : List.of(expected));
  }

  /** Elicitation limits, CLP Table 3.4.6, from memory: a tenth of the class limit. */
  @ParameterizedTest
  @CsvSource({
    "Skin Sens. 1,0.1", "Skin Sens. 1A,0.01", "Skin Sens. 1B,0.1",
    "Resp. Sens. 1,0.1", "Resp. Sens. 1A,0.01", "Resp. Sens. 1B,0.1"
  })
  void aSensitiserIsNamedFromItsElicitationLimit(String written, double percent) {
    for (double more : new double[] {0, 0.001}) {
      assertThat(supplemental(written, percent + more)).containsExactly("EUH208");
    }
    assertThat(supplemental(written, percent - 0.001)).isEmpty();
  }

  private static List<String> supplemental(String written, double percent) {
    return Compositions.classify(
            Regime.CLP, String.format(Locale.ROOT, "x %.5f %s", percent, written))
        .supplemental();
  }

  /** Sums of 20 % for one effect and 10 % for aspiration: CLP 3.8.3.4.5, 3.10.3.3. */
  @ParameterizedTest
  @CsvSource({"STOT SE 3 (H335),20", "STOT SE 3 (H336),20", "Asp. Tox. 1,10"})
  void theLimitsOfSumsOfOneEffect(String written, double percent) {
    for (double more : new double[] {0, 0.001}) {
      assertThat(liquid(written, percent + more)).hasSize(1);
    }
    assertThat(liquid(written, percent - 0.001)).isEmpty();
  }

  private static List<String> liquid(String written, double percent) {
    return Compositions.classify(
            Regime.CLP, Form.LIQUID, String.format(Locale.ROOT, "x %.5f %s", percent, written))
        .classes();
  }

  /** Bounds of CLP Table 3.1.1, upper ones inclusive: at, a hair over, for a pure substance. */
  @ParameterizedTest
  @CsvSource({
    "oral,5,1",
    "oral,5.01,2",
    "oral,50,2",
    "oral,50.1,3",
    "oral,300,3",
    "oral,300.1,4",
    "oral,2000,4",
    "oral,2000.1,",
    "dermal,50,1",
    "dermal,50.1,2",
    "dermal,200,2",
    "dermal,200.1,3",
    "dermal,1000,3",
    "dermal,1000.1,4",
    "dermal,2000,4",
    "dermal,2000.1,",
    "vapour,0.5,1",
    "vapour,0.501,2",
    "vapour,2.0,2",
    "vapour,2.01,3",
    "vapour,10,3",
    "vapour,10.1,4",
    "vapour,20,4",
    "vapour,20.1,",
    "dust,0.05,1",
    "dust,0.0501,2",
    "dust,0.5,2",
    "dust,0.501,3",
    "dust,1.0,3",
    "dust,1.01,4",
    "dust,5,4",
    "dust,5.01,"
  })
  void anAcuteEstimateIsOfTheCategoryOfItsBounds(
      String route, double estimate, @Nullable String category) {
    AcuteEstimates estimates =
        new AcuteEstimates(
            route.equals("oral") ? estimate : null,
            route.equals("dermal") ? estimate : null,
            route.equals("vapour") ? estimate : null,
            route.equals("dust") ? estimate : null);
    assertThat(classes(acute(1, Set.of(), estimates)))
        .isEqualTo(category == null ? List.of() : List.of("Acute Tox. " + category));
  }

  /**
   * Converted point estimates of CLP Table 3.1.2, from memory: 100 / (share / estimate) against the
   * bounds, so 100 mg/kg of category 3 by mouth in a third of the mixture is 300 and category 3.
   */
  @ParameterizedTest
  @CsvSource({
    "Acute Tox. 1 (oral),10,1", "Acute Tox. 1 (oral),9.99,2", "Acute Tox. 2 (oral),10,2",
    "Acute Tox. 2 (oral),9.99,3", "Acute Tox. 3 (oral),33.34,3", "Acute Tox. 3 (oral),33.3,4",
    "Acute Tox. 4 (oral),25,4", "Acute Tox. 4 (oral),24.9,", "Acute Tox. 1 (dermal),10,1",
    "Acute Tox. 2 (dermal),25,2", "Acute Tox. 2 (dermal),24.9,3", "Acute Tox. 3 (dermal),30,3",
    "Acute Tox. 3 (dermal),29.9,4", "Acute Tox. 4 (dermal),55,4", "Acute Tox. 4 (dermal),54.9,"
  })
  void aCategoryAloneCountsWithItsPointEstimate(
      String written, double percent, @Nullable String category) {
    assertThat(
            classes(acute(percent / 100, Set.of(HazardClass.parse(written)), AcuteEstimates.NONE)))
        .isEqualTo(category == null ? List.of() : List.of("Acute Tox. " + category));
  }

  private static List<Ingredient> acute(
      double share, Set<HazardClass> classes, AcuteEstimates estimates) {
    List<Ingredient> lines = new ArrayList<>();
    lines.add(
        new Ingredient(
            "x",
            null,
            Share.of(share),
            classes,
            Map.of(),
            null,
            null,
            new Ingredient.AcuteFacts(estimates, Set.of(), true)));
    if (share < 1) {
      lines.add(Ingredient.plain("water", 1 - share));
    }
    return lines;
  }

  private static List<String> classes(List<Ingredient> lines) {
    return Classifier.classify(
            new Mixture(Regime.CLP, Form.LIQUID, Audience.TRADE, lines, Mixture.Tested.NOTHING))
        .classes();
  }

  /** Check value 32 and handbook compliance 2.11: of 3 to 7 % it is 7 % that counts. */
  @Test
  void ofARangeTheUpperEndCounts() {
    List<Ingredient> lines =
        List.of(
            Ingredient.plain("x", 0, "Skin Corr. 1B").at(new Share(0.03, 0.07)),
            Ingredient.plain("w", 0).at(new Share(0.93, 0.97)));
    Classification found =
        Classifier.classify(
            new Mixture(Regime.CLP, Form.SOLID, Audience.PUBLIC, lines, Mixture.Tested.NOTHING));
    assertThat(found.classes()).contains("Skin Corr. 1B");
    assertThat(found.reasons().get(0).parts().get(0).fraction()).isEqualTo(0.07);
  }
}
