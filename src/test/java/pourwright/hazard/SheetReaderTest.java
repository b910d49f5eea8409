package pourwright.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import pourwright.quantity.OutOfRange;

/** Layouts are invented after the usual columns of section 3; CAS numbers are real. */
class SheetReaderTest {
  private static final String TABLE =
      """
      3.2 Mixtures
      Name CAS-No. EC-No. Conc. Classification
      Linalool 78-70-6 201-134-4 10 - 25 % Skin Irrit. 2; H315, Eye Irrit. 2; H319, Skin Sens. 1B; H317
      d-Limonene\t5989-27-5\t227-813-5\t01-2119529223-47\t≥5 – <10 %\tFlam. Liq. 3 H226, Skin Irrit. 2 H315,
      Skin Sens. 1B H317, Asp. Tox. 1 H304, Aquatic Acute 1 H400 (M=1), Aquatic Chronic 3 H412
      3,7-dimethylocta-2,6-dienal | 5392-40-5 | 1,5 % | Skin Sens. 1 H317 |
      Isoeugenol 97-54-1 < 0.1 % Acute Tox. 4 (oral); H302, Skin Sens. 1A; H317, Skin Sens. 1A; H317: C ≥ 0.01 %
      """;

  @Test
  void theUsualColumnsAreRead() {
    SheetReader.Result found = SheetReader.read(TABLE);
    assertThat(found.lines())
        .extracting(SheetLine::name)
        .containsExactly("Linalool", "d-Limonene", "3,7-dimethylocta-2,6-dienal", "Isoeugenol");
    assertThat(found.lines()).extracting(SheetLine::lowText).containsExactly("10", "5", "", "");
    assertThat(found.lines())
        .extracting(SheetLine::highText)
        .containsExactly("25", "10", "1,5", "0.1");
    assertThat(found.unread()).hasSize(2);
    SheetLine linalool = found.lines().get(0);
    assertThat(linalool.isClear()).isTrue();
    assertThat(linalool.classes())
        .extracting(HazardClass::code)
        .containsExactlyInAnyOrder("Skin Irrit. 2", "Eye Irrit. 2", "Skin Sens. 1B");
    SheetLine limonene = found.lines().get(1);
    assertThat(limonene.classes())
        .extracting(HazardClass::code)
        .contains("Asp. Tox. 1", "Aquatic Acute 1", "Aquatic Chronic 3", "Flam. Liq. 3");
    assertThat(limonene.acuteMText()).isEqualTo("1");
    assertThat(limonene.doubts()).anyMatch(d -> d.contains("neither acute nor chronic"));
    SheetLine isoeugenol = found.lines().get(3);
    assertThat(isoeugenol.limits()).containsEntry(HazardClass.parse("Skin Sens. 1A"), "0.01");
    assertThat(isoeugenol.ingredient().specificLimits().values().iterator().next())
        .isCloseTo(0.0001, within(1e-12));
    assertThat(isoeugenol.ingredient().share().low()).isZero();
  }

  @Test
  void aWrongCheckDigitIsNotTakenAndIsShown() {
    SheetLine line = SheetReader.read("Linalool 78-70-7 5 % Skin Sens. 1B").lines().get(0);
    assertThat(line.cas()).isEmpty();
    assertThat(line.doubts()).anyMatch(d -> d.contains("check digit of 78-70-7"));
  }

  @Test
  void aNumberWithoutItsPercentSignIsAsked() {
    SheetLine line = SheetReader.read("Linalool 78-70-6 5 - 10 Skin Sens. 1B").lines().get(0);
    assertThat(line.highText()).isEqualTo("10");
    assertThat(line.doubts()).anyMatch(d -> d.contains("no % stands behind 10"));
  }

  @Test
  void aLowerBoundAloneIsNoShare() {
    SheetLine line = SheetReader.read("Linalool 78-70-6 > 50 % Skin Sens. 1B").lines().get(0);
    assertThat(line.highText()).isEmpty();
    assertThatThrownBy(line::ingredient).isInstanceOf(OutOfRange.class);
  }

  @Test
  void thousandsThatMayBeDecimalsAreLeftOut() {
    SheetLine line =
        SheetReader.read("X 78-70-6 5 % Acute Tox. 4 (oral) ATE oral = 1,500 mg/kg").lines().get(0);
    assertThat(line.oralText()).isEmpty();
    assertThat(line.doubts()).anyMatch(d -> d.contains("1,500"));
    SheetLine clear =
        SheetReader.read("X 78-70-6 5 % Acute Tox. 4 (oral) ATE oral = 1500 mg/kg").lines().get(0);
    assertThat(clear.oralText()).isEqualTo("1500");
  }

  @Test
  void statementsWithoutTheirClassAreReadAndAsked() {
    SheetLine line = SheetReader.read("Linalool 78-70-6 5 % H317, H315").lines().get(0);
    assertThat(line.classes())
        .extracting(HazardClass::code)
        .containsExactlyInAnyOrder("Skin Sens. 1", "Skin Irrit. 2");
    assertThat(line.doubts()).hasSize(2);
  }

  @Test
  void theNameMayStandInTheLineAbove() {
    SheetLine line =
        SheetReader.read("Linalool\nCAS: 78-70-6 EC: 201-134-4\n10 - 25 %\nSkin Sens. 1B, H317")
            .lines()
            .get(0);
    assertThat(line.name()).isEqualTo("Linalool");
    assertThat(line.highText()).isEqualTo("25");
    assertThat(line.doubts()).containsExactly("the name was taken from the line above");
  }

  @Provide
  Arbitrary<String> scraps() {
    Arbitrary<String> piece =
        Arbitraries.oneOf(
            Arbitraries.of(
                "78-70-6",
                "5989-27-5",
                " ",
                "\n",
                "%",
                "<",
                "≥",
                "-",
                "–",
                "Skin Sens. 1B",
                "H317",
                "M=10",
                "M (chronic) = 100",
                "C ≥ 0.01 %",
                "Acute Tox. 4",
                "ATE oral",
                "mg/kg",
                "10",
                "1,5",
                "0.1",
                "100",
                "201-134-4",
                "Linalool",
                "to",
                ";",
                "(oral)"),
            Arbitraries.strings().ofMaxLength(6));
    return piece.list().ofMaxSize(40).map(p -> String.join("", p));
  }

  @Property
  void everyNumberOfTheResultStandsInTheText(@ForAll("scraps") String text) {
    holds(text);
  }

  /** What must hold for any text; also the law of the fuzz target. */
  static void holds(String text) {
    SheetReader.Result found;
    try {
      found = SheetReader.read(text);
    } catch (OutOfRange e) {
      return;
    }
    for (SheetLine line : found.lines()) {
      for (String number : line.numbers()) {
        assertThat(text.replace('\t', ' '))
            .containsPattern("(?<![0-9.,])" + Pattern.quote(number) + "(?![0-9]|[.,][0-9])");
      }
      if (!line.cas().isEmpty()) {
        assertThat(text).contains(line.cas());
      }
      if (!line.highText().isEmpty()) {
        List<String> shown = line.doubts();
        Ingredient read = line.ingredient();
        assertThat(read.share().high() * 100)
            .isCloseTo(Double.parseDouble(line.highText().replace(',', '.')), within(1e-9));
        assertThat(shown).isNotNull();
      }
    }
  }
}
