package pourwright.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import pourwright.stock.Deliveries.Came;
import pourwright.stock.Deliveries.LeadTime;
import pourwright.stock.Deliveries.Ordered;

/** What was ordered and what came; mean and sample deviation by hand. */
class DeliveriesTest {
  private static final LocalDate MARCH = LocalDate.of(2026, 3, 1);

  private static Ordered ordered(long id, String supplier, int day, double amount) {
    return new Ordered(id, "wax", supplier, MARCH.plusDays(day), 10L * day, amount);
  }

  private static Came came(String supplier, int day, double amount) {
    return new Came("wax", supplier, MARCH.plusDays(day), 10L * day + 5, amount);
  }

  @Test
  void whatComesFillsTheOldestOrderAndTheRestStaysOnOrder() {
    Deliveries deliveries =
        Deliveries.of(
            List.of(ordered(2, "quay", 4, 5000), ordered(1, "quay", 0, 1000)),
            List.of(came("quay", 6, 3000)));
    assertThat(deliveries.leads()).containsExactly(new Deliveries.Lead("wax", "quay", 6));
    assertThat(deliveries.open()).hasSize(1);
    assertThat(deliveries.open().get(0).order().id()).isEqualTo(2);
    assertThat(deliveries.onOrder("wax")).isEqualTo(3000);
    assertThat(deliveries.onOrder("wick")).isZero();
  }

  @Test
  void anotherSuppliersDeliveryAndOneFromBeforeFillNothing() {
    Deliveries deliveries =
        Deliveries.of(
            List.of(ordered(1, "quay", 5, 1000)),
            List.of(came("harbour", 7, 1000), came("quay", 4, 1000)));
    assertThat(deliveries.onOrder("wax")).isEqualTo(1000);
    assertThat(deliveries.leads()).isEmpty();
  }

  @Test
  void whatWasTakenInBeforeTheOrderOnTheSameDayIsNotIt() {
    Ordered order = new Ordered(1, "wax", "quay", MARCH, 7, 1000);
    Came before = new Came("wax", "quay", MARCH, 6, 1000);
    assertThat(Deliveries.of(List.of(order), List.of(before)).onOrder("wax")).isEqualTo(1000);
  }

  @Test
  void whereNobodyNamedASupplierAnyDeliveryOfTheMaterialCounts() {
    Deliveries deliveries =
        Deliveries.of(List.of(ordered(1, "", 0, 1000)), List.of(came("quay", 9, 950)));
    assertThat(deliveries.open()).as("95 % of it is all of it (house: 90 %)").isEmpty();
    assertThat(deliveries.from("quay", 7).deliveries()).isZero();
    assertThat(deliveries.leads().get(0).days()).isEqualTo(9);
  }

  @Test
  void aLeadTimeIsTheCardsUntilThreeDeliveriesWereCounted() {
    assertThat(LeadTime.of(List.of(5, 9), 8)).isEqualTo(new LeadTime(8, 2, 0));
    // 4, 7, 10: mean 7; squares 9 + 0 + 9 over 2 is 9: deviation 3
    LeadTime counted = LeadTime.of(List.of(4, 7, 10), 8);
    assertThat(counted.meanDays()).isEqualTo(7);
    assertThat(counted.deviationDays()).isCloseTo(3, within(1e-12));
    assertThat(counted.deliveries()).isEqualTo(3);
  }
}
