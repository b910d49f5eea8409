package pourwright.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.quantity.OutOfRange;

class ClassifierTest {
  private static final String OIL_AT_8 =
      "linalool 1.2 Skin Sens. 1B + Skin Irrit. 2 + Eye Irrit. 2; limonene 0.8 Skin Sens. 1B +"
          + " Skin Irrit. 2 + Aquatic Acute 1 + Aquatic Chronic 3 + Asp. Tox. 1 + M1; musk 0.8"
          + " Aquatic Acute 1 + Aquatic Chronic 1 + M1; citral 0.12 Skin Sens. 1 + Skin Irrit. 2 +"
          + " Eye Irrit. 2; wax 97.08";
  private static final String OIL_AT_6 =
      "linalool 0.9 Skin Sens. 1B + Skin Irrit. 2 + Eye Irrit. 2; limonene 0.6 Skin Sens. 1B +"
          + " Skin Irrit. 2 + Aquatic Acute 1 + Aquatic Chronic 3 + Asp. Tox. 1 + M1; musk 0.6"
          + " Aquatic Acute 1 + Aquatic Chronic 1 + M1; citral 0.09 Skin Sens. 1 + Skin Irrit. 2 +"
          + " Eye Irrit. 2; wax 97.81";

  private static Classification clp(String written) {
    return Compositions.classify(Regime.CLP, written);
  }

  /** UN GHS example 3.1d (ST/SG/AC.10/C.4/2008/23): 873 mg/kg, 6.6 mg/l, 11 % unknown. */
  @Test
  void theUnitedNationsAcuteExampleComesToItsPublishedEstimates() {
    Classification found =
        Compositions.classify(
            Regime.GHS,
            Form.LIQUID,
            "one 26 oral=2737 + vapour=11; two 23 oral=4500 + vapour=19; three 11 oral=5001 +"
                + " no-inhalation-data; four 40 oral=400 + vapour=4");
    assertThat(found.hazards())
        .extracting(HazardClass::fullCode)
        .containsExactly("Acute Tox. 3 (inhalation)", "Acute Tox. 4 (oral)");
    assertThat(sum(found, "acute toxicity, oral")).isCloseTo(872.52, within(0.01));
    assertThat(sum(found, "acute toxicity, vapour")).isCloseTo(6.557, within(0.0005));
    assertThat(found.supplemental())
        .containsExactly(
            "11 % of the mixture consists of ingredients of unknown acute inhalation toxicity");
    assertThat(found.statements()).containsExactly("H302", "H331");
    assertThat(found.signalWord()).isEqualTo("Danger");
  }

  /** UN GHS example 4.1a (ST/SG/AC.10/C.4/2012/25): sums 0.1, 2.0, 20 and 26.01. */
  @Test
  void theUnitedNationsAquaticExampleComesToItsPublishedSums() {
    Composition composition =
        Composition.of(
            Compositions.read(
                "a 0.01 Aquatic Acute 1 + Aquatic Chronic 1 + M10; b 1.0 Aquatic Acute 2 + Aquatic"
                    + " Chronic 2; c 25.0 Aquatic Chronic 4; d 73.99"));
    assertThat(weighted("aquatic-acute-1", composition)).isCloseTo(0.001, within(1e-9));
    assertThat(weighted("aquatic-acute-2", composition)).isCloseTo(0.02, within(1e-9));
    assertThat(weighted("aquatic-acute-3", composition)).isCloseTo(0.20, within(1e-9));
    assertThat(weighted("aquatic-chronic-1", composition)).isCloseTo(0.001, within(1e-9));
    assertThat(weighted("aquatic-chronic-2", composition)).isCloseTo(0.02, within(1e-9));
    assertThat(weighted("aquatic-chronic-3", composition)).isCloseTo(0.20, within(1e-9));
    assertThat(weighted("aquatic-chronic-4", composition)).isCloseTo(0.2601, within(1e-9));
  }

  private static double weighted(String name, Composition composition) {
    Tables.Sum sum = Tables.shared().sum(Regime.GHS, name);
    return sum == null ? Double.NaN : Sums.outcome(sum, composition).weighted();
  }

  /** Handbook compliance E5, check value 16: constructed by applying the cited limits. */
  @Test
  void theOilAtEightPerCentMakesASensitisingCandle() {
    Classification found = clp(OIL_AT_8);
    assertThat(found.statements()).containsExactly("H317", "H412");
    assertThat(found.signalWord()).isEqualTo("Warning");
    assertThat(found.pictograms()).containsExactly("GHS07");
    assertThat(found.namedSubstances()).containsExactly("linalool", "limonene", "citral");
    assertThat(found.supplemental()).isEmpty();
    assertThat(found.precautionary())
        .containsExactly("P102", "P273", "P280", "P302+P352", "P333+P313", "P501");
  }

  /** Handbook compliance E6, check value 17. */
  @Test
  void theOilAtSixPerCentOnlyNamesItsSensitisers() {
    Classification found = clp(OIL_AT_6);
    assertThat(found.statements()).containsExactly("H412");
    assertThat(found.supplemental()).containsExactly("EUH208");
    assertThat(found.namedSubstances()).containsExactly("linalool", "limonene");
    assertThat(found.pictograms()).isEmpty();
    assertThat(found.signalWord()).isNull();
    assertThat(found.precautionary()).containsExactly("P273", "P501");
  }

  /** Handbook compliance E7, E8, check values 13 to 15. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          x 0.012 Skin Sens. 1A + scl=Skin Sens. 1A:0.01 | H317 | ''
          x 0.005 Skin Sens. 1A + scl=Skin Sens. 1A:0.01 | '' | EUH208
          x 0.0009 Skin Sens. 1A + scl=Skin Sens. 1A:0.01 | '' | ''
          x 0.05 Skin Sens. 1A | '' | EUH208
          x 0.01 Skin Sens. 1A | '' | EUH208
          x 0.0099 Skin Sens. 1A | '' | ''
          x 0.05 Skin Sens. 1B | '' | ''
          x 0.1 Skin Sens. 1B | '' | EUH208
          x 0.099 Skin Sens. 1B | '' | ''
          x 0.99 Skin Sens. 1B | '' | EUH208
          """)
  void sensitisersAreNamedFromTheirElicitationLimit(
      String written, String statement, String supplemental) {
    Classification found = clp(written);
    assertThat(String.join(" ", found.statements())).isEqualTo(statement);
    assertThat(String.join(" ", found.supplemental())).isEqualTo(supplemental);
  }

  /** Handbook compliance E9, check value 53: CLP Annex I Table 4.1.4. */
  @Test
  void chronicTwoShowsTheTreeAndFishWithoutASignalWordAndChronicThreeShowsNothing() {
    assertThat(clp("x 2.5 Aquatic Chronic 1 + M1").pictograms()).containsExactly("GHS09");
    assertThat(clp("x 2.5 Aquatic Chronic 1 + M1").signalWord()).isNull();
    assertThat(clp("x 0.25 Aquatic Chronic 1 + M1").pictograms()).isEmpty();
    assertThat(clp("x 0.25 Aquatic Chronic 1 + M1").signalWord()).isNull();
  }

  /** Handbook compliance E9: M-factors are powers of ten. */
  @Test
  void anMFactorOfElevenIsRefused() {
    assertThatThrownBy(() -> Compositions.read("x 1 Aquatic Chronic 1 + M11"))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("powers of ten");
  }

  /** Handbook compliance E10: the trace is not counted, and that is said. */
  @Test
  void aCorrosiveJustBelowItsCutOffIsFlagged() {
    assertThat(clp("a 0.9 Skin Corr. 1B; b 1.5 Skin Irrit. 2; c 97.6").warnings())
        .anyMatch(w -> w.contains("below their cut-off"));
  }

  /** Handbook compliance E12, check values 22 to 25: CLP Articles 26 and 27. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          a 5 Skin Corr. 1B; b 1 Skin Sens. 1B; c 20 STOT SE 3 (H335) | GHS05 GHS07 | H314 H317 H335
          a 10 Skin Irrit. 2; b 3 Eye Dam. 1 | GHS05 | H315 H318
          a 10 Skin Irrit. 2; b 3 Eye Dam. 1; c 1 Skin Sens. 1B | GHS05 GHS07 | H315 H317 H318
          a 1 Resp. Sens. 1; b 1 Skin Sens. 1B | GHS08 | H317 H334
          a 1 Carc. 2; b 1 Skin Sens. 1B | GHS07 GHS08 | H317 H351
          a 90 Acute Tox. 3 (oral); b 1 Skin Sens. 1B; c 9 | GHS06 | H301 H317
          a 25 Aquatic Acute 1 + Aquatic Chronic 1 + M1 | GHS09 | H410
          """)
  void strongerPictogramsAndStatementsTakeTheWeakerOnesPlace(
      String written, String pictograms, String statements) {
    Classification found = clp(written);
    assertThat(String.join(" ", found.pictograms())).isEqualTo(pictograms);
    assertThat(String.join(" ", found.statements())).isEqualTo(statements);
  }

  /** Check value 24, second half: GHS08 for aspiration does not take GHS07 for H317 away. */
  @Test
  void theHealthHazardForAspirationLeavesTheExclamationMark() {
    Classification found =
        Compositions.classify(Regime.CLP, Form.LIQUID, "a 10 Asp. Tox. 1; b 1 Skin Sens. 1B; c 89");
    assertThat(found.pictograms()).containsExactly("GHS07", "GHS08");
  }

  /** Check value 54: CLP Annex I 3.10.3.3, from memory; a solid is no aspiration hazard. */
  @Test
  void aCandleIsNoAspirationHazardThoughItsOilIs() {
    assertThat(clp("a 12 Asp. Tox. 1; w 88").classes()).isEmpty();
    assertThat(Compositions.classify(Regime.CLP, Form.LIQUID, "a 10 Asp. Tox. 1; w 90").classes())
        .containsExactly("Asp. Tox. 1");
    assertThat(Compositions.classify(Regime.CLP, Form.LIQUID, "a 9.99 Asp. Tox. 1; w 90").classes())
        .isEmpty();
  }

  /** Check value 19: REACH Annex XVII entry 30, from memory. */
  @Test
  void aReproductiveToxicantAt032PerCentIsStoppedForThePublic() {
    Classification found = clp("x 0.32 Repr. 1B; w 99.68");
    assertThat(found.stops()).singleElement().asString().contains("entry 30", "0.32 %");
    Classification trade =
        Classifier.classify(
            new Mixture(
                Regime.CLP,
                Form.SOLID,
                Audience.TRADE,
                Compositions.read("x 0.32 Repr. 1B; w 99.68"),
                Mixture.Tested.NOTHING));
    assertThat(trade.stops()).isEmpty();
  }

  /** Handbook compliance E13: constructed; 0.8 % of ATE 500 is below the 1 % cut-off. */
  @Test
  void lessThanOnePerCentOfACategoryFourSubstanceDoesNotCount() {
    assertThat(clp("x 0.8 oral=500; w 99.2").classes()).isEmpty();
    assertThat(clp("x 25 Acute Tox. 4 (oral); w 75").statements()).containsExactly("H302");
    assertThat(clp("x 24.9 Acute Tox. 4 (oral); w 75.1").statements()).isEmpty();
  }

  /** Flash points: CLP Annex I Table 2.6.1 and 29 CFR 1910.1200 B.6, from memory. */
  @ParameterizedTest
  @CsvSource({
    "22.9,34,CLP,H224",
    "22.9,36,CLP,H225",
    "23,100,CLP,H226",
    "60,100,CLP,H226",
    "60.1,200,CLP,''",
    "60.1,200,HAZCOM,H227",
    "93.1,200,HAZCOM,''"
  })
  void aLiquidIsFlammableByItsFlashPoint(
      double flashC, double boilsC, Regime regime, String statement) {
    Classification found =
        Classifier.classify(
            new Mixture(
                regime,
                Form.LIQUID,
                Audience.TRADE,
                Compositions.read("x 100"),
                new Mixture.Tested(flashC, boilsC, null, null)));
    assertThat(String.join(" ", found.statements())).isEqualTo(statement);
  }

  /** The pH rule: CLP Annex I 3.2.3.1.2. */
  @ParameterizedTest
  @CsvSource({"2,true", "2.1,false", "11.4,false", "11.5,true"})
  void strongAcidsAndAlkalisAreCorrosive(double ph, boolean corrosive) {
    Classification found =
        Classifier.classify(
            new Mixture(
                Regime.CLP,
                Form.LIQUID,
                Audience.TRADE,
                Compositions.read("x 100"),
                new Mixture.Tested(null, null, null, ph)));
    assertThat(found.classes().contains("Skin Corr. 1")).isEqualTo(corrosive);
  }

  @Test
  void moreThanAWholeIsRefusedAndLessIsSaid() {
    assertThatThrownBy(() -> clp("a 60; b 41")).isInstanceOf(OutOfRange.class);
    assertThat(clp("a 60; b 30").warnings()).anyMatch(w -> w.contains("10 % is unknown"));
    assertThat(clp("a 60; b 40").warnings()).isEmpty();
  }

  /** The registry's published rule: 7732-18-5 is (8·1+1·2+2·3+3·4+7·5+7·6) mod 10 = 5. */
  @ParameterizedTest
  @ValueSource(strings = {"7732-18-5", "78-70-6", "5989-27-5", "5392-40-5", "97-53-0", "106-22-9"})
  void casNumbersWithTheirCheckDigitAreTaken(String cas) {
    assertThat(CasNumber.isValid(cas)).isTrue();
    int last = cas.charAt(cas.length() - 1) - '0';
    for (int digit = 0; digit < 10; digit++) {
      String other = cas.substring(0, cas.length() - 1) + digit;
      assertThat(CasNumber.isValid(other)).isEqualTo(digit == last);
    }
  }

  @Test
  void linesOfOneSubstanceAreAddedByCasThenByName() {
    Ingredient a = withCas("Linalool", "78-70-6", 0.006);
    Ingredient b = withCas("3,7-dimethyl-1,6-octadien-3-ol", "78-70-6", 0.004);
    Ingredient wax = Ingredient.plain("wax", 0.99);
    assertThat(classes(List.of(a, b, wax))).containsExactly("Skin Sens. 1B");
    Ingredient c = Ingredient.plain("x", 0.006, "Skin Sens. 1B");
    Ingredient d = Ingredient.plain(" X ", 0.004, "Skin Sens. 1B");
    assertThat(classes(List.of(c, d, wax))).containsExactly("Skin Sens. 1B");
  }

  private static List<String> classes(List<Ingredient> lines) {
    return Classifier.classify(
            new Mixture(Regime.CLP, Form.SOLID, Audience.PUBLIC, lines, Mixture.Tested.NOTHING))
        .classes();
  }

  private static Ingredient withCas(String name, String cas, double fraction) {
    return new Ingredient(
        name,
        new CasNumber(cas),
        Share.of(fraction),
        Set.of(HazardClass.parse("Skin Sens. 1B")),
        Map.of(),
        null,
        null,
        Ingredient.AcuteFacts.PLAIN);
  }

  private static double sum(Classification found, String endpoint) {
    return found.reasons().stream()
        .filter(r -> r.endpoint().equals(endpoint))
        .mapToDouble(Finding::sum)
        .findFirst()
        .orElse(Double.NaN);
  }
}
