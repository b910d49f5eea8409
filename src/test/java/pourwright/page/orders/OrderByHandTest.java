package pourwright.page.orders;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.order.Order;
import pourwright.page.OpenStudio;
import pourwright.page.Visitor;
import pourwright.work.Customer;

/** Orders written down by hand, and customers who are looked at, changed and erased. */
class OrderByHandTest {
  private OpenStudio open;
  private Visitor visitor;

  @BeforeEach
  void openTheStudio(@TempDir Path folder) {
    open = new OpenStudio(folder).withDemoCards();
    visitor = open.visitor();
    visitor.post("/", "/hand", Map.of("hand", "MB"));
  }

  @AfterEach
  void closeTheStudio() {
    open.close();
  }

  private List<Order> orders() {
    return open.studio.look(b -> b.orders().list(null, null, 10)).items();
  }

  private int order(String quantity, String number) {
    return visitor
        .post(
            "/orders/new",
            "/orders/new",
            Map.of("design", "bollard-rain", "quantity", quantity, "due", "", "number", number))
        .statusCode();
  }

  @Test
  void anOrderIsWrittenDownByHandAndNeverOverAnother() {
    assertThat(order("3", "")).isEqualTo(303);
    assertThat(orders()).hasSize(1);
    String given = orders().get(0).number();
    assertThat(given).matches("\\d{4}-\\d\\d-\\d\\d 1");
    assertThat(orders().get(0).pieces()).isEqualTo(3);
    assertThat(order("5", "Ada")).isEqualTo(303);
    assertThat(order("9", "Ada")).isEqualTo(422);
    assertThat(order("0", "None")).isEqualTo(422);
    assertThat(order("2", "")).isEqualTo(303);
    assertThat(orders()).extracting(Order::pieces).containsExactlyInAnyOrder(3, 5, 2);
    assertThat(visitor.page("/orders").select("main").text()).contains(given).contains("Ada");
  }

  @Test
  void aCustomerIsErasedByPageAndOnlyTheReferenceStays() {
    open.studio.customers.put(open.act(), Customer.named("c7", "Ada Quay"));
    assertThat(visitor.page("/orders/customers").select("main").text()).contains("Ada Quay");
    String one = "/orders/customers/c7";
    Map<String, String> changed =
        Map.of("name", "Ada Quay", "address", "1 Mole Lane", "email", "", "phone", "", "note", "");
    assertThat(visitor.post(one, one, changed).statusCode()).isEqualTo(303);
    assertThat(visitor.page(one).select("#address").text()).isEqualTo("1 Mole Lane");
    assertThat(visitor.post(one, one + "/erase", Map.of()).statusCode()).isEqualTo(303);
    assertThat(visitor.get(one).statusCode()).isEqualTo(404);
    assertThat(open.studio.<Boolean>look(b -> b.customers().customer("c7").isEmpty())).isTrue();
    String history = visitor.page("/history").text();
    assertThat(history).contains("erased a customer").doesNotContain("Ada");
    visitor.post("/history", "/undo", Map.of());
    assertThat(visitor.get(one).statusCode()).isEqualTo(404);
  }
}
