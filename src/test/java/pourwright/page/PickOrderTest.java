package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Piece;
import pourwright.order.OrderState;
import pourwright.work.Signed;

/** A shop's order is picked by marks, only of what is proved for sale, and leaves. */
class PickOrderTest extends BrowserTest {
  @TempDir Path folder;
  private Workshop workshop;

  @BeforeEach
  void theStudioIsOpen() {
    workshop = new Workshop(folder);
  }

  private long inState(String state) {
    return workshop.desk.studio().look(b -> b.pieces().inStates(List.of(state))).values().stream()
        .mapToLong(Long::longValue)
        .sum();
  }

  @Test
  void anOrderIsPickedAndSentAndAnUndoPutsItBack() {
    List<Piece> candles =
        workshop.candles(
            "bollard-rain", "soft-a", workshop.vessels("bollard", 4), "scent-rain", 30);
    workshop.order("Ada 7", "bollard-rain", 1, "shop");
    try (Server server = TestStudio.open(workshop.desk, folder)) {
      Visitor visitor = new Visitor(server.port());
      visitor.post("/", "/hand", Map.of("hand", "MB"));
      String path = visitor.page("/orders").select("td a:contains(Ada 7)").attr("href");
      assertThat(path).isEqualTo("/orders/pick/Ada%207");
      visitor.post(path, path, Map.of());
      assertThat(visitor.page("/history").text()).doesNotContain("picked for an order line");
      assertThat(inState("Picked")).as("not proved for sale").isZero();

      Signed.forSale(workshop.desk.studio(), "bollard-rain", candles.get(3).id());
      Document page = visitor.page(path);
      assertThat(page.select("input[type=checkbox][checked]")).hasSize(1);
      for (Window look : List.of(Window.PHONE, Window.LAPTOP.dark())) {
        Page shown = visit(visitor.base(), path, look);
        assertThat(axe(shown)).isEmpty();
      }
      visitor.post(path, path, Map.of());
      assertThat(inState("Picked")).isEqualTo(1);
      visitor.post("/history", "/undo", Map.of());
      assertThat(inState("Picked")).isZero();
      visitor.post(path, path, Map.of());
      assertThat(visitor.page(path).select(".figure").text()).contains("1 of 1");
      visitor.post(path, path + "/sent", Map.of());
      assertThat(workshop.desk.studio().look(b -> b.orders().order("Ada 7")).orElseThrow().state())
          .isEqualTo(OrderState.SENT);
      String first =
          workshop
              .desk
              .studio()
              .look(b -> b.pieces().piece(candles.get(0).id()).orElseThrow().state().code());
      assertThat(first).as("the oldest goes first").isEqualTo("Gone");
    }
  }
}
