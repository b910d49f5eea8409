package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** The nine places answer, each with its name, and the house around them stands. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PlacesTest {
  private Desk desk;
  private Server server;
  private Visitor visitor;

  @BeforeAll
  void openTheStudio(@TempDir Path folder) {
    desk = TestStudio.desk(folder);
    server = TestStudio.open(desk, folder);
    visitor = new Visitor(server.port());
  }

  @AfterAll
  void closeTheStudio() {
    server.close();
  }

  @Test
  void theNinePlacesOfTheDesignAnswerInTheirOrder() {
    List<Place> places = Places.all(desk);
    assertThat(places)
        .extracting(Place::name)
        .containsExactly(
            "Now",
            "Order book",
            "Drawing board",
            "Casting bench",
            "Pouring bench",
            "Test shelf",
            "Stockroom",
            "Slate",
            "Label press");
    for (Place place : places) {
      HttpResponse<String> answer = visitor.get(place.path());
      assertThat(answer.statusCode()).as(place.path()).isEqualTo(200);
      Document page = visitor.page(place.path());
      assertThat(page.select("h1")).hasSize(1);
      assertThat(page.select("nav a[aria-current=page]").text()).isEqualTo(place.name());
    }
  }

  @Test
  void anUnknownPageSaysSoInsideTheHouse() {
    HttpResponse<String> answer = visitor.get("/attic");
    assertThat(answer.statusCode()).isEqualTo(404);
    assertThat(answer.body()).contains("There is no such page").doesNotContain("Exception");
  }

  @Test
  void theLookOfThisDeviceIsRememberedAndNeedsNoScript() {
    visitor.post("/casting", "/look", Map.of("scheme", "dark", "contrast", "high"));
    Document page = visitor.page("/casting");
    assertThat(page.select("html").attr("data-scheme")).isEqualTo("dark");
    assertThat(page.select("html").attr("data-contrast")).isEqualTo("high");
  }

  @Test
  void healthIsToldInOneWord() {
    assertThat(visitor.get("/healthz").body()).isEqualTo("ok");
    assertThat(visitor.get("/readyz").body()).isEqualTo("ready");
  }
}
