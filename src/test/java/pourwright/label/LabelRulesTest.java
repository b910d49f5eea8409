package pourwright.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.hazard.Audience;
import pourwright.hazard.Classification;
import pourwright.hazard.Classifier;
import pourwright.hazard.Form;
import pourwright.hazard.Ingredient;
import pourwright.hazard.Mixture;
import pourwright.hazard.Regime;
import pourwright.quantity.OutOfRange;

class LabelRulesTest {
  static final Maker MAKER =
      new Maker(
          "Undercroft Lantern Works",
          "1 Cellar Steps, Harbour",
          "+00 000 0000",
          "works@example.org");

  static Classification classified(Ingredient... lines) {
    return Classifier.classify(
        new Mixture(
            Regime.CLP, Form.SOLID, Audience.PUBLIC, List.of(lines), Mixture.Tested.NOTHING));
  }

  static LabelRequest request(Classification found, double capacityMl, BurnFacts burn) {
    return new LabelRequest(
        "Bollard",
        "Rain on slate",
        found,
        200,
        new Panel.Cylinder(80, 90),
        capacityMl,
        MAKER,
        "P0417-K",
        "http://studio.example/m/P0417K",
        burn,
        List.of(Language.ENGLISH, new Language("de")),
        "eu",
        "C23S-PQ2V-AMH9-VVRF");
  }

  static final Classification SENSITISING =
      classified(
          Ingredient.plain("linalool", 0.012, "Skin Sens. 1B"), Ingredient.plain("wax", 0.988));

  /** CLP Annex I Table 1.3 and Regulation (EU) 2024/2865, check value 26. */
  @ParameterizedTest
  @CsvSource({
    "100,52,74,10,1.2", "500,52,74,10,1.2", "501,52,74,10,1.4", "600,52,74,10,1.4",
    "3000,52,74,10,1.4", "3500,74,105,23,1.8", "50001,105,148,32,2.0", "60000,105,148,32,2.0",
    "500001,148,210,46,2.0"
  })
  void leastSizesFollowTheCapacity(
      double capacityMl, double width, double height, double pictogram, double xHeight) {
    LabelMinimum least = LabelMinimum.of(capacityMl);
    assertThat(least.labelWidthMm()).isEqualTo(width);
    assertThat(least.labelHeightMm()).isEqualTo(height);
    assertThat(least.pictogramMm()).isEqualTo(pictogram);
    assertThat(least.xHeightMm()).isEqualTo(xHeight);
  }

  /** CLP Annex I 1.2.1.3, check value 27: a fifteenth of 52 × 74 mm is 256.5 mm². */
  @Test
  void aPictogramIsAFifteenthOfTheLeastLabel() {
    assertThat(LabelMinimum.of(200).pictogramAreaMm2()).isCloseTo(256.5, within(0.05));
  }

  /** CLP Annex I 1.5.2.1, check value 28. */
  @Test
  void aSmallPackageMayDropTheStatementsOfChronicTwoButNotOfSensitisation() {
    Classification chronic =
        classified(
            Ingredient.plain("musk", 0.025, "Aquatic Chronic 1"), Ingredient.plain("wax", 0.975));
    SmallPackage small = SmallPackage.of(60, chronic);
    assertThat(small.statements()).isEmpty();
    assertThat(small.precautions()).isFalse();
    assertThat(SmallPackage.of(126, chronic).statements()).containsExactly("H411");
    SmallPackage sensitising = SmallPackage.of(60, SENSITISING);
    assertThat(sensitising.statements()).containsExactly("H317");
    assertThat(sensitising.precautions()).isTrue();
  }

  /** CLP Annex I 1.5.2.1.2: Chronic 3 keeps H412 and may drop its precautions. */
  @Test
  void aSmallPackageKeepsH412AndMayDropItsPrecautions() {
    Classification found =
        classified(
            Ingredient.plain("musk", 0.0025, "Aquatic Chronic 1"), Ingredient.plain("wax", 0.9975));
    assertThat(SmallPackage.of(60, found).statements()).containsExactly("H412");
    assertThat(SmallPackage.of(60, found).precautions()).isFalse();
  }

  /** ECHA UFI Developers Manual, public test vector, check values 29 and 30. */
  @Test
  void theFormulaIdentifierAgreesWithThePublicTestVector() {
    assertThat(Ufi.austrian("U12345678", 178956970).text()).isEqualTo("C23S-PQ2V-AMH9-VVRF");
    assertThat(Ufi.isValid("C23S-PQ2V-AMH9-VVRG")).isFalse();
    assertThat(Ufi.isValid("C32S-PQ2V-AMH9-VVRF")).isFalse();
    assertThat(Ufi.isValid("C23S-PQ2V-AMH9-VVR")).isFalse();
    assertThatThrownBy(() -> Ufi.austrian("12345678", 1)).isInstanceOf(OutOfRange.class);
  }

  /**
   * ECHA UFI Developers Manual: of the published identifiers the last is group 1 with company
   * 371,123,456,789 and formula 123,456, which is the French VAT number AB123456789: 36 × 10 + 11 =
   * 371 before the nine digits.
   */
  @Test
  void aFrenchNumberIsPackedAsInThePublishedIdentifier() {
    assertThat(Ufi.of("FR", "AB 123 456 789", 123_456).text()).isEqualTo("27W0-KC81-E00T-V314");
    assertThat(Ufi.of("AT", "U12345678", 178_956_970).text()).isEqualTo("C23S-PQ2V-AMH9-VVRF");
    assertThatThrownBy(() -> Ufi.of("FR", "IO123456789", 1)).isInstanceOf(OutOfRange.class);
    assertThatThrownBy(() -> Ufi.of("FR", "AB123456789", 1L << 28)).isInstanceOf(OutOfRange.class);
    assertThatThrownBy(() -> Ufi.of("XX", "123", 1))
        .isInstanceOfSatisfying(
            OutOfRange.class, e -> assertThat(e.hint()).contains("type it in; it is checked"));
  }

  /** ECHA UFI Developers Manual: identifiers that pass the checksum. */
  @ParameterizedTest
  @ValueSource(strings = {"U1JV-SUMH-N988-U751", "1300-R0XX-J00J-GUNM", "27W0-KC81-E00T-V314"})
  void publishedIdentifiersPassTheCheck(String ufi) {
    assertThat(Ufi.isValid(ufi)).isTrue();
  }

  /** CLP Article 45: environment only, or EUH208 only, needs no notification. */
  @Test
  void onlyHealthAndPhysicalHazardsAskForAnIdentifier() {
    assertThat(PoisonCentre.asksForUfi(SENSITISING)).isTrue();
    assertThat(
            PoisonCentre.asksForUfi(
                classified(
                    Ingredient.plain("musk", 0.025, "Aquatic Chronic 1"),
                    Ingredient.plain("wax", 0.975))))
        .isFalse();
  }

  /** 16 CFR 1115.14, check value 52: learned Friday 3 January 2025, ten working days. */
  @Test
  void tenWorkingDaysFromTheThirdOfJanuaryEndOnTheSeventeenth() {
    LocalDate learned = LocalDate.of(2025, 1, 3);
    assertThat(ReportingClock.investigateBy(learned, Set.of()))
        .isEqualTo(LocalDate.of(2025, 1, 17));
    assertThat(ReportingClock.investigateBy(learned, Set.of(LocalDate.of(2025, 1, 9))))
        .isEqualTo(LocalDate.of(2025, 1, 20));
    assertThat(ReportingClock.reachBy(learned, Set.of())).isEqualTo(LocalDate.of(2025, 1, 10));
  }

  /** 16 CFR 1500.121(c) Table 1, from memory: panel in square inches, signal word, other text. */
  @ParameterizedTest
  @CsvSource({
    "2,3,2",
    "2.01,4,3",
    "5,4,3",
    "5.01,6,4",
    "10,6,4",
    "10.01,7,4",
    "15,7,4",
    "15.01,8,5",
    "30,8,5",
    "30.01,10,6"
  })
  void cautionsGrowWithThePanel(double squareInches, int signal64ths, int other64ths) {
    double mm2 = squareInches * 645.16;
    assertThat(CautionLetters.signalMm(mm2)).isCloseTo(signal64ths * 25.4 / 64, within(1e-9));
    assertThat(CautionLetters.otherMm(mm2)).isCloseTo(other64ths * 25.4 / 64, within(1e-9));
  }

  @Test
  void theLabelSaysOnlyWhatWasTested() {
    assertThat(CareLines.of(BurnFacts.UNTESTED, Language.ENGLISH)).isEmpty();
    List<String> lines =
        CareLines.of(new BurnFacts(4.0, 5.0, 2.9, 13.0, 37.8, 52.0), Language.ENGLISH);
    assertThat(lines)
        .containsExactly(
            "First burn: about 3 hours, until the wax is melted to the rim.",
            "Trim the wick to 5 mm before each burn.",
            "Burn for at most 4 hours at a time.",
            "Stop when 13 mm of wax are left.",
            "Burns for about 37.5 hours.",
            "The stone vessel gets warm: put it on a surface that stands heat.");
  }

  @Test
  void aClosedGateOrAMissingInputLeavesOnlyTheTestLabel() {
    LabelRequest full = request(SENSITISING, 250, BurnFacts.UNTESTED);
    assertThat(LabelPress.text(full, SaleGate.open()).isForSale()).isTrue();
    SaleGate held =
        new SaleGate(List.of(), List.of(), List.of(), List.of("lot F-17: smells off"), List.of());
    assertThat(LabelPress.text(full, held).banner()).startsWith("TEST, NOT FOR SALE");
    assertThat(held.reasons()).containsExactly("on hold: lot F-17: smells off");
    LabelRequest bare =
        new LabelRequest(
            "Bollard",
            "",
            SENSITISING,
            200,
            new Panel.Cylinder(80, 90),
            250,
            new Maker("U", "", "", ""),
            "",
            "",
            BurnFacts.UNTESTED,
            List.of(Language.ENGLISH),
            "eu",
            "");
    assertThat(LabelPress.text(bare, SaleGate.open()).isForSale()).isFalse();
    assertThat(LabelPress.missing(bare))
        .contains("the maker's postal address", "the batch mark")
        .anyMatch(m -> m.contains("UFI"));
  }

  @Test
  void anyDifferenceFromTheProvedCandleIsANewCombination() {
    Proof proved = new Proof("WAX-A", "RAIN", 0.08, "flat braid 4.8 g/h", "Bollard 2", "SEAL", "");
    assertThat(proved.differences(proved)).isEmpty();
    Proof other =
        new Proof("WAX-A", "RAIN", 0.09, "flat braid 4.8 g/h", "Bollard 2", "SEAL", "BLUE");
    assertThat(proved.differences(other))
        .containsExactly("load 9 %, proved at 8 %", "colour BLUE, proved with none");
  }

  @Test
  void theLabelNamesItsSensitisersInEveryLanguage() {
    LabelText text =
        LabelPress.text(request(SENSITISING, 250, BurnFacts.UNTESTED), SaleGate.open());
    assertThat(text.signalWord()).isEqualTo("Warning · Achtung");
    assertThat(String.join("\n", text.paragraphs()))
        .contains("May cause an allergic skin reaction.", "Contains linalool.")
        .contains("Kann allergische Hautreaktionen verursachen.", "Enthält linalool.");
    assertThat(String.join(" ", text.paragraphs())).doesNotContainIgnoringCase("compliant");
  }

  @Test
  void everyStatementAndPrecautionHasItsTextInEveryLanguage() {
    for (String code : pourwright.hazard.Statements.codes()) {
      assertThat(Texts.has(code)).as(code).isTrue();
      for (Language language : Language.all()) {
        assertThat(Texts.of(code, language)).as(code + " " + language).isNotBlank();
      }
    }
  }

  @Test
  void theListingTellsTheSameFacts() {
    List<String> lines =
        Listing.of(request(SENSITISING, 250, BurnFacts.UNTESTED), new Language("fr"));
    assertThat(lines.get(0)).isEqualTo("Bollard · Rain on slate");
    assertThat(lines).contains("Poids net: 200 g", "Lot: P0417-K");
    assertThat(lines)
        .anyMatch(l -> l.startsWith("Attention. Peut provoquer une allergie cutanée."));
  }
}
