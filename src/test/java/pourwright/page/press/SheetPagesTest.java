package pourwright.page.press;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.page.BrowserTest;
import pourwright.page.Server;
import pourwright.page.TestStudio;
import pourwright.page.Visitor;
import pourwright.work.Drawers;

/** A sheet from a table, the labels it changes, scents side by side: in a browser. */
class SheetPagesTest extends BrowserTest {
  private static final String TABLE =
      "Substance;CAS;Conc. %;Hazard classes\n"
          + "Linalool;78-70-6;8 - 15;Skin Sens. 1B H317\n"
          + "Wrong;78-70-7;3;Aquatic Chronic 3 H412\n";
  private static @Nullable Server opened;

  @AfterAll
  static void closeTheStudio() {
    if (opened != null) {
      opened.close();
    }
  }

  @Test
  void aTableBecomesASheetAndTheChangedLabelsAreListed(@TempDir Path folder) {
    PressStudio press = new PressStudio(folder);
    press.sheets("2026-01", "Linalool 78-70-6 1 % Skin Sens. 1B H317");
    String scent =
        press
            .studio
            .look(b -> b.cards().current(Drawers.POUR, press.candle.pour()))
            .orElseThrow()
            .body()
            .fragrances()
            .get(0)
            .material();
    Server server = TestStudio.open(press.desk, folder);
    opened = server;
    String base = "http://127.0.0.1:" + server.port();
    Page page = visit(base, "/press/sheet/" + scent, Window.PHONE);
    page.locator("summary", new Page.LocatorOptions().setHasText("field by field")).click();
    press(page, "Add the line");
    assertThat(page.locator("#one_name-wrong").textContent()).contains("name or CAS number");
    page.locator("#one_name").fill("Citral");
    page.locator("#one_cas").fill("5392-40-5");
    page.locator("#one_high").fill("1");
    page.locator("#one_classes").fill("Skin Sens. 1");
    press(page, "Add the line");
    assertThat(page.locator("#text").inputValue())
        .contains("Linalool 78-70-6")
        .endsWith("Citral 5392-40-5 1 % Skin Sens. 1");
    assertThat(page.locator("main").textContent()).contains("5392-40-5 · 1 %");
    assertThat(axe(page)).isEmpty();
    fits(page);
    page.locator("#table").fill(TABLE);
    press(page, "Show its columns");
    assertThat(page.locator("#col_share").inputValue()).isEqualTo("2");
    assertThat(axe(page)).isEmpty();
    fits(page);
    press(page, "Read it");
    assertThat(page.locator("main").textContent())
        .contains("8 to 15 %", "check digit of 78-70-7 is wrong");
    assertThat(axe(page)).isEmpty();
    page.locator("#revision").fill("2026-09");
    page.locator("input[name=looked]").check();
    page.locator("#by").fill("MB");
    press(page, "Keep the sheet");
    assertThat(page.url()).endsWith("/press/reprint/" + scent);
    assertThat(page.locator("main").textContent())
        .contains("Sheet 2026-09 against 2026-01", press.candle.name(), "H317");
    assertThat(axe(page)).isEmpty();
    fits(page);
    page.navigate(base + "/press/scents?pour=" + press.candle.pour() + "&load=8");
    assertThat(page.locator("main").textContent())
        .contains("At 8.00 % of the total", "H317", "no class at all up to 6.66 %");
    assertThat(axe(page)).isEmpty();
    fits(page);
    page.navigate(base + "/press/candle/" + press.candle.code());
    assertThat(page.locator("main").textContent())
        .contains("What a narrower range would change", "Linalool is given as 8.00 % to 15.00 %");
    fits(page);
    press(page, "Set it");
    assertThat(page.locator("#ufi-wrong").count()).isZero();
    page.locator("#ufi").fill("C23S-PQ2V-AMH9-VVRG");
    press(page, "Set it");
    assertThat(page.locator("#ufi-wrong").textContent()).contains("is not a UFI");
  }

  @Test
  void anEmptySheetIsRefusedWithWhatIsMissing(@TempDir Path folder) {
    PressStudio press = new PressStudio(folder);
    Server server = TestStudio.open(press.desk, folder);
    try {
      Visitor visitor = new Visitor(server.port());
      String sheet = "/press/sheet/scent-rain";
      for (Map<String, String> sent : List.of(Map.of("step", "read"), Map.of("text", "  "))) {
        HttpResponse<String> refused = visitor.post(sheet, sheet, sent);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(refused.body()).select("#text-wrong").text())
            .contains("Paste section 3");
      }
    } finally {
      server.close();
    }
  }

  private static void fits(Page page) {
    assertThat(((Number) page.evaluate("document.documentElement.scrollWidth")).intValue())
        .isLessThanOrEqualTo(390);
  }

  private static void press(Page page, String button) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button).setExact(true))
        .first()
        .click();
  }
}
