package pourwright.main;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pourwright.page.BrowserTest;
import pourwright.page.Place;
import pourwright.page.Server;
import pourwright.page.ServerSettings;
import pourwright.page.guard.SecretsFile;

/** Every place with a year of work in it: what an empty studio cannot show. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FullHouseTest extends BrowserTest {
  private Wiring wiring;
  private Server server;
  private String base;

  @BeforeAll
  void openTheSample(@TempDir Path folder) {
    wiring = Wiring.open(folder, "", Wiring.systemClock());
    DemoStudio.make(
        wiring.store().unitOfWork(),
        wiring.studio().files(),
        new DemoStudio.Spec(1, 17),
        Instant.now(),
        ZoneId.of("UTC"));
    server =
        new Server(
            wiring.site(null),
            ServerSettings.onAnyPort(SampleStudio.NAME),
            new SecretsFile(folder));
    base = "http://127.0.0.1:" + server.start();
  }

  @AfterAll
  void close() {
    server.close();
    wiring.close();
  }

  private List<String> routes() {
    List<String> routes = new ArrayList<>();
    wiring.site(null).places().forEach((Place p) -> routes.add(p.path()));
    routes.addAll(List.of("/history", "/hold", "/stop", "/settings", "/piece/1", "/lot/1"));
    return routes;
  }

  @Test
  void axeFindsNothingAndNothingScrollsSideways() {
    List<String> found = new ArrayList<>();
    Window dark = new Window(1280, 900, ColorScheme.DARK, true);
    for (Window window : List.of(Window.NARROW, dark)) {
      Page page = visit(base, "/", window);
      for (String route : routes()) {
        page.navigate(base + route);
        axe(page).forEach(v -> found.add(window.width() + " " + route + " " + v));
        int wide = ((Number) page.evaluate("document.documentElement.scrollWidth")).intValue();
        if (wide > window.width()) {
          found.add(window.width() + " " + route + " scrolls sideways: " + wide);
        }
      }
    }
    assertThat(found).isEmpty();
    assertThat(outside).isEmpty();
    assertThat(complaints).isEmpty();
  }
}
