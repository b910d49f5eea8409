package pourwright.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static pourwright.order.OrderFiles.DETECT;
import static pourwright.order.OrderFiles.NAMES;
import static pourwright.order.OrderFiles.utf8;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A file imported again adds nothing; what was changed in the shop is shown first. */
class ImportChangesTest {
  private static final String FIRST =
      "Order;Item;Qty;Due\n1;cog-fig;2;03.04.2026\n1;bollard-rain;1;03.04.2026\n"
          + "2;cog-fig;4;09.04.2026\n";

  private static OrderImport.Ready ready(String text) {
    return (OrderImport.Ready) OrderFile.read(utf8(text), NAMES, DETECT);
  }

  private static List<OrderLine> lines(String text) {
    return ready(text).lines().stream().map(OrderImport.Read::line).toList();
  }

  @Test
  void theSameFileAgainChangesNothing() {
    ImportChanges changes = ImportChanges.between(lines(FIRST), lines(FIRST));
    assertThat(changes.isNothing()).isTrue();
    assertThat(changes.same()).hasSize(3);
  }

  @Test
  void theSameOrdersWrittenAnotherWayHaveTheSameFingerprint() {
    String other =
        "Due,Qty,Item,Order\n2026-04-09,4,COG Fig loft,2\n2026-04-03,1,bollard-rain,1\n"
            + "2026-04-03,2,cog-fig,1\n";
    assertThat(ready(other).fingerprint()).isEqualTo(ready(FIRST).fingerprint());
    String more = FIRST.replace(";2;03", ";3;03");
    assertThat(ready(more).fingerprint()).isNotEqualTo(ready(FIRST).fingerprint());
  }

  @Test
  void editedAndCancelledLinesAreShown() {
    String second =
        "Order;Item;Qty;Due\n1;cog-fig;5;04.04.2026\n3;cog-fig;1;09.04.2026\n"
            + "2;cog-fig;4;09.04.2026\n";
    ImportChanges changes = ImportChanges.between(lines(FIRST), lines(second));
    assertThat(changes.added()).extracting(OrderLine::order).containsExactly("3");
    assertThat(changes.edited())
        .extracting(ImportChanges.Edit::words)
        .containsExactly("2 pieces become 5, due 2026-04-03 becomes 2026-04-04");
    assertThat(changes.cancelled())
        .extracting(l -> l.key().words())
        .containsExactly("1 bollard-rain");
    assertThat(changes.same()).hasSize(1);
  }

  @Test
  void anOrderThatIsNotInTheFileIsNotCancelled() {
    String part = "Order;Item;Qty;Due\n2;cog-fig;4;09.04.2026\n";
    assertThat(ImportChanges.between(lines(FIRST), lines(part)).isNothing()).isTrue();
  }

  @Test
  void whatWasDetectedIsShown() {
    OrderImport.Detected detected = ready(FIRST).detected();
    assertThat(detected.delimiter()).isEqualTo("semicolon");
    assertThat(detected.encoding()).isEqualTo("UTF-8");
    assertThat(detected.dates()).isEqualTo("d.m.y");
    assertThat(detected.map()).containsEntry(ImportField.DUE, "Due");
    assertThat(detected.rows()).isEqualTo(3);
  }

  @Test
  void aMapOfColumnsIsReadAsItIsTyped() {
    assertThat(ImportChoices.readMap("order=Name,design=Item,quantity=Qty,due=Ship by"))
        .containsEntry(ImportField.ORDER, "Name")
        .containsEntry(ImportField.DUE, "Ship by");
    assertThat(ImportChoices.readMap("order=No,, of order")).containsValue("No, of order");
    assertThatThrownBy(() -> ImportChoices.readMap("order")).hasMessageContaining("field=column");
    assertThatThrownBy(() -> ImportChoices.readMap("odrer=x")).hasMessageContaining("'odrer'");
    assertThatThrownBy(() -> ImportChoices.readMap("due=a,due=b")).hasMessageContaining("twice");
  }
}
