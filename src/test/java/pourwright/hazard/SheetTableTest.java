package pourwright.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pourwright.hazard.SheetTable.Column;
import pourwright.quantity.OutOfRange;

class SheetTableTest {
  private static final String TABLE =
      """
      Substance;CAS No.;Conc. %;Hazard classes;M acute;ATE oral
      Linalool;78-70-6;10 - 15;Skin Sens. 1B H317, Skin Irrit. 2 H315;;
      "Limonene; (R)";5989-27-5;5,5;Aquatic Acute 1 H400;1;4400
      Musk;;2;Aquatic Chronic 1 H410;;
      Wrong;78-70-7;3;Skin Sens. 1 H317;;
      ;;;;;
      """;

  @Test
  void columnsAreGuessedByTheirNames() {
    assertThat(SheetTable.read(TABLE).guess())
        .isEqualTo(
            Map.of(
                Column.NAME,
                0,
                Column.CAS,
                1,
                Column.SHARE,
                2,
                Column.CLASSES,
                3,
                Column.M_ACUTE,
                4,
                Column.ORAL,
                5));
  }

  @Test
  void everyRowIsReadLikeALineOfASheetWithItsDoubts() {
    SheetTable table = SheetTable.read(TABLE);
    assertThat(table.rows()).hasSize(4);
    List<SheetLine> lines = SheetReader.read(table.text(table.guess())).lines();
    assertThat(lines).hasSize(4);
    SheetLine linalool = lines.get(0);
    assertThat(linalool.name()).isEqualTo("Linalool");
    assertThat(linalool.lowText()).isEqualTo("10");
    assertThat(linalool.highText()).isEqualTo("15");
    assertThat(linalool.classes()).hasSize(2);
    SheetLine limonene = lines.get(1);
    assertThat(limonene.highText()).isEqualTo("5,5");
    assertThat(limonene.acuteMText()).isEqualTo("1");
    assertThat(limonene.oralText()).isEqualTo("4400");
    assertThat(lines.get(2).doubts()).anyMatch(d -> d.contains("no CAS number"));
    assertThat(lines.get(3).cas()).isEmpty();
    assertThat(lines.get(3).doubts()).anyMatch(d -> d.contains("check digit of 78-70-7 is wrong"));
  }

  @Test
  void twoColumnsForARangeAreOneRange() {
    SheetTable table = SheetTable.read("Name,CAS,from,to\nLinalool,78-70-6,10,15\n");
    SheetLine line = SheetReader.read(table.text(table.guess())).lines().get(0);
    assertThat(line.lowText()).isEqualTo("10");
    assertThat(line.highText()).isEqualTo("15");
  }

  @Test
  void whatIsNoTableIsRefusedInWords() {
    assertThatThrownBy(() -> SheetTable.read("just words")).isInstanceOf(OutOfRange.class);
    assertThatThrownBy(() -> SheetTable.read("a,b\n\"open,1\n")).isInstanceOf(OutOfRange.class);
    SheetTable table = SheetTable.read("a,b\n1,2\n");
    assertThatThrownBy(() -> table.text(table.guess()))
        .isInstanceOfSatisfying(
            OutOfRange.class, e -> assertThat(e.sentence()).contains("a name or a CAS number"));
  }

  @Test
  void oneSubstanceTypedFieldByFieldIsALineOfTheSheet() {
    Map<Column, String> typed = new EnumMap<>(Column.class);
    typed.put(Column.NAME, "Isoeugenol");
    typed.put(Column.CAS, "97-54-1");
    typed.put(Column.LOW, "0.1");
    typed.put(Column.HIGH, "0.2");
    typed.put(Column.CLASSES, "Skin Sens. 1A");
    typed.put(Column.LIMITS, "Skin Sens. 1A: C >= 0.01 %");
    SheetLine read = SheetReader.read(SheetTable.line(typed)).lines().get(0);
    assertThat(read.cas()).isEqualTo("97-54-1");
    assertThat(read.highText()).isEqualTo("0.2");
    assertThat(read.limits()).hasSize(1);
    typed.remove(Column.HIGH);
    assertThatThrownBy(() -> SheetTable.line(typed)).isInstanceOf(OutOfRange.class);
  }
}
