package pourwright.page.press;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Piece;
import pourwright.page.BrowserTest;
import pourwright.page.Server;
import pourwright.page.TestStudio;

/** The proof folder in a browser: issued, listed, downloaded, asked for again after a change. */
class FolderPageTest extends BrowserTest {
  private static @Nullable Server opened;

  @AfterAll
  static void closeTheStudio() {
    if (opened != null) {
      opened.close();
    }
  }

  @Test
  void aFolderIsIssuedListedAndAskedForAgain(@TempDir Path folder) {
    PressStudio press = new PressStudio(folder);
    press.maker();
    press.sheets("2026-01", "Linalool 78-70-6 1 % Skin Sens. 1B H317");
    List<Piece> candles = press.candles(4);
    press.prove(candles.subList(0, 3), 3, 4);
    press.clock.move(Duration.ofDays(1));
    Server server = TestStudio.open(press.desk, folder);
    opened = server;
    String base = "http://127.0.0.1:" + server.port();
    String path = "/press/folder/" + press.candle.code();
    Page page = visit(base, path, Window.PHONE);
    assertThat(page.locator("main").textContent()).contains("None yet", "the batch mark");
    page.locator("#mark").fill(candles.get(3).mark().text());
    page.locator("#risks").fill("Tips at 30 degrees.");
    page.locator("#by").fill("MB");
    issue(page);
    assertThat(page.locator(".said").first().textContent()).contains("Version 1 is issued");
    assertThat(page.locator("main").textContent())
        .contains("Version 1 (PDF)", "nothing has changed since");
    assertThat(((Number) page.evaluate("document.documentElement.scrollWidth")).intValue())
        .isLessThanOrEqualTo(390);
    assertThat(axe(page)).isEmpty();
    Object type =
        page.evaluate(
            "fetch(document.querySelector('#issued ~ ul a').href).then(r => r.headers.get("
                + "'content-type'))");
    assertThat(String.valueOf(type)).startsWith("application/pdf");
    press.sheets("2026-09", "Linalool 78-70-6 1 % Skin Sens. 1B H317");
    page.reload();
    assertThat(page.locator("main").textContent())
        .contains("changed since: issue a new version", "2026-09");
    page.navigate(base + "/press/candle/" + press.candle.code());
    assertThat(page.locator("main").textContent()).contains("letters of the net contents");
    page.locator("#trim_mm").fill("6");
    if (page.locator("form[action$=measured] #by").count() > 0) {
      page.locator("form[action$=measured] #by").fill("MB");
    }
    page.getByRole(
            AriaRole.BUTTON,
            new Page.GetByRoleOptions().setName("Keep with the test").setExact(true))
        .click();
    assertThat(page.locator("main").textContent()).contains("Trim the wick to 6 mm");
    for (String ending : List.of("label.svg", "label.png")) {
      Object status =
          page.evaluate(
              "fetch('/press/candle/"
                  + press.candle.code()
                  + "/"
                  + ending
                  + "').then(r => r.status + ' ' + r.headers.get('content-type'))");
      assertThat(String.valueOf(status))
          .startsWith("200 image/" + (ending.endsWith("svg") ? "svg" : "png"));
    }
    assertThat(axe(page)).isEmpty();
  }

  private static void issue(Page page) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Issue it").setExact(true))
        .click();
  }
}
