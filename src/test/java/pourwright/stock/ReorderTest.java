package pourwright.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** When to order. Formula: Silver, Pyke, Peterson, Inventory Management, 3rd ed. 1998, ch. 7. */
class ReorderTest {
  private static final Reorder.Use WAX = new Reorder.Use(500, 200, 9, 2);

  @Test
  void theSafetyStockCoversUseAndLeadTimeThatVary() {
    Reorder reorder = Reorder.of(WAX, 0.95);
    // sqrt(9·200² + 500²·2²) = sqrt(360 000 + 1 000 000) = 1166.19; 1.6449 times it = 1918.2
    assertThat(reorder.safetyG()).isCloseTo(1918.2, within(0.1));
    assertThat(reorder.orderPointG()).isCloseTo(4500 + 1918.2, within(0.1));
  }

  @Test
  void theLastDayToOrderIsWhenTheOrderPointIsReached() {
    Reorder reorder = Reorder.of(WAX, 0.95);
    LocalDate today = LocalDate.of(2026, 5, 4);
    assertThat(reorder.orderBy(today, 8000, WAX)).isEqualTo(today.plusDays(3));
    assertThat(reorder.orderBy(today, 6000, WAX)).isEqualTo(today);
  }

  @Test
  void whatExpiresBeforeItIsUsedIsNotWorthBuying() {
    assertThat(Reorder.mostThatKeeps(WAX, 365, 20_000)).isEqualTo(162_500);
  }
}
