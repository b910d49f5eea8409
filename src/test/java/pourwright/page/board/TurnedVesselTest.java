package pourwright.page.board;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.card.OutlineForm;
import pourwright.card.SolidForm;
import pourwright.card.Vessel;
import pourwright.page.BrowserTest;
import pourwright.page.OpenStudio;
import pourwright.work.Drawers;

/** The vessel that is turned on the screen, in a real browser. */
class TurnedVesselTest extends BrowserTest {
  private OpenStudio open;

  @BeforeEach
  void openTheStudio(@TempDir Path folder) {
    open = new OpenStudio(folder).withDemoCards();
    OutlineForm fluted =
        new OutlineForm(
            "circle", Map.of("diameter_mm", 90.0, "ribs", 24.0, "rib_depth_mm", 4.0), List.of());
    Vessel vessel =
        new Vessel(
            "fluted",
            "Fluted post",
            new SolidForm(fluted, null, 100, new SolidForm.Shaping(60, List.of())),
            SolidForm.straight(OutlineForm.circle(64), 88),
            null,
            null,
            null);
    open.save(Drawers.VESSEL, "fluted", vessel);
  }

  @AfterEach
  void closeTheStudio() {
    open.close();
  }

  private static Object picture(Page page) {
    return page.evaluate("document.querySelector('#turn canvas').toDataURL()");
  }

  private static Object dark(Page page) {
    return page.evaluate(
        "(() => { const c = document.querySelector('#turn canvas');"
            + " const d = c.getContext('2d').getImageData(0, 0, c.width, c.height).data;"
            + " let n = 0; for (let i = 3; i < d.length; i += 4) n += d[i] > 200 ? 1 : 0;"
            + " return n / (d.length / 4); })()");
  }

  @Test
  void itTurnsByKeyboardAndByButtonAndKeepsThePolicy() {
    Page page = visit(open.base(), "/board/vessel/fluted", Window.PHONE);
    page.waitForSelector("#turn:not([hidden])");
    Object first = picture(page);
    assertThat(((Number) dark(page)).doubleValue()).isBetween(0.15, 0.7);
    page.focus("#turn canvas");
    page.keyboard().press("ArrowRight");
    Object second = picture(page);
    assertThat(second).isNotEqualTo(first);
    String said = page.getAttribute("#turn canvas", "aria-valuetext");
    page.click("button[data-way=up]");
    assertThat(picture(page)).isNotEqualTo(second);
    assertThat(page.getAttribute("#turn canvas", "aria-valuetext")).isNotEqualTo(said);
    for (int i = 0; i < 20; i++) {
      page.click("button[data-way=down]");
    }
    assertThat(page.getAttribute("#turn canvas", "aria-valuetext")).contains("below");
    assertThat(axe(page)).isEmpty();
    Object wide = page.evaluate("document.documentElement.scrollWidth");
    assertThat(((Number) wide).intValue()).isLessThanOrEqualTo(390);
    assertThat(complaints).isEmpty();
    assertThat(outside).isEmpty();
  }

  @Test
  void withoutScriptTheSectionStandsAlone() {
    Page page = visit(open.base(), "/board/vessel/fluted", Window.PHONE.withoutScript());
    assertThat(page.locator("#turn").isVisible()).isFalse();
    assertThat(page.locator("svg").first().isVisible()).isTrue();
  }

  /** House bar for the page with a body to turn: 600 KB with all it loads. */
  @Test
  void thePageStaysLight() {
    Page page = visit(open.base(), "/board/vessel/fluted", Window.PHONE);
    Object bytes =
        page.evaluate(
            "performance.getEntries().reduce((sum, e) => sum + (e.decodedBodySize || 0), 0)");
    assertThat(((Number) bytes).longValue()).isBetween(20_000L, 600_000L);
  }
}
