package pourwright.order;

import java.math.BigDecimal;
import java.time.LocalDate;

/** One cell of a table, as the file has it. */
sealed interface Cell {
  /** What a text file has everywhere. */
  record Text(String text) implements Cell {}

  /** A number that a workbook holds as such. */
  record Number(BigDecimal number) implements Cell {}

  /** A date that a workbook holds as such. */
  record Day(LocalDate day) implements Cell {}

  /** Something that has no value: an error, a formula without a result. */
  record Broken(String reason) implements Cell {}

  /** The cell as text, stripped of blanks of every kind at both ends. */
  default String shown() {
    if (this instanceof Text t) {
      return Blanks.strip(t.text());
    }
    if (this instanceof Number n) {
      return n.number().stripTrailingZeros().toPlainString();
    }
    return this instanceof Day d ? d.day().toString() : "";
  }

  /** True when there is nothing to read. */
  default boolean isBlank() {
    return this instanceof Text t && Blanks.strip(t.text()).isEmpty();
  }
}
