package pourwright.page.casting;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Piece;
import pourwright.page.BrowserTest;
import pourwright.page.OpenStudio;
import pourwright.work.PieceBook;

/** A whole cast on a phone's screen, by thumb and then by keyboard alone, in a real browser. */
class CastInBrowserTest extends BrowserTest {
  private static final String SHEET =
      "/casting/sheet?mix=grey&vessel1=bollard&count1=2&water_c=20&room_c=20&step=1";
  private static final int STEPS_MAX = 15;

  private OpenStudio open;

  @BeforeEach
  void openTheStudio(@TempDir Path folder) {
    open = new OpenStudio(folder).withDemoCards();
  }

  @AfterEach
  void closeTheStudio() {
    open.close();
  }

  @Test
  void aCastIsDoneByThumbAt390Pixels() {
    Page page = visit(open.base(), SHEET, Window.PHONE);
    assertThat(axe(page)).isEmpty();
    sign(page, "main #by");
    page.click("text=Begin this cast");
    boolean looked = false;
    for (int i = 0; i < STEPS_MAX && page.locator("form[action$='/step']").count() > 0; i++) {
      assertFits(page);
      if (page.locator(".figure").count() > 0 && !looked) {
        looked = true;
        assertThat(axe(page)).isEmpty();
        assertThat(fontPixels(page)).isGreaterThanOrEqualTo(48);
        double high = page.locator(".actions .primary").first().boundingBox().height;
        assertThat(high).isGreaterThanOrEqualTo(96);
      }
      sign(page, "form[action$='/step'] #by");
      page.click("form[action$='/step'] .primary");
    }
    assertThat(looked).isTrue();
    sign(page, "form[action$='/demold'] #by");
    assertFits(page);
    page.click("text=Demolded");
    assertThat(page.url()).endsWith("/casting/pieces/Green");
    assertThat(axe(page)).isEmpty();
    assertFits(page);
    sign(page, "main #by");
    page.click("button[value=HARDENED]");
    page.navigate(open.base() + "/casting/pieces/Hardened");
    assertFits(page);
    page.fill("#before_g", "500.2");
    page.fill("#later_g", "500.0");
    page.fill("#hours", "24");
    sign(page, "main #by");
    page.click("button[value=DRIED]");
    List<Piece> pieces =
        open.studio.look(b -> b.pieces().list(PieceBook.Which.ALL, null, 10).items());
    assertThat(pieces).hasSize(2).allSatisfy(p -> assertThat(p.state().code()).isEqualTo("Dry"));
    assertThat(outside).isEmpty();
    assertThat(complaints).isEmpty();
  }

  private static double fontPixels(Page page) {
    Object size =
        page.evaluate("parseFloat(getComputedStyle(document.querySelector('.figure')).fontSize)");
    return ((Number) size).doubleValue();
  }

  private static void assertFits(Page page) {
    Object wide = page.evaluate("document.documentElement.scrollWidth");
    assertThat(((Number) wide).intValue()).as(page.url()).isLessThanOrEqualTo(390);
  }

  @Test
  void aCastIsDoneWithTheKeyboardAlone() {
    Page page = visit(open.base(), SHEET, Window.PHONE);
    signByKeys(page, "main #by");
    page.keyboard().press("Enter");
    page.waitForSelector("#step");
    for (int i = 0; i < STEPS_MAX && page.locator("form[action$='/step']").count() > 0; i++) {
      String step = page.locator("#step").innerText();
      signByKeys(page, "form[action$='/step'] #by");
      tabTo(page, "form[action$='/step'] .primary");
      page.keyboard().press("Enter");
      page.waitForFunction(
          "s => { const h = document.querySelector('#step');"
              + " return document.readyState === 'complete'"
              + " && (h ? h.innerText !== s : !!document.querySelector('#demold')); }",
          step);
    }
    signByKeys(page, "form[action$='/demold'] #by");
    tabTo(page, "form[action$='/demold'] .primary");
    page.keyboard().press("Enter");
    page.waitForURL("**/casting/pieces/Green");
    assertThat(page.locator("input[name=piece]").count()).isEqualTo(2);
  }

  /** The device remembers who works at it; initials are written where they are still asked for. */
  private static void sign(Page page, String field) {
    if (page.locator(field).count() > 0) {
      page.fill(field, "AB");
    }
  }

  private static void signByKeys(Page page, String field) {
    if (page.locator(field).count() > 0) {
      tabTo(page, field);
      page.keyboard().type("AB");
    }
  }

  /** Presses Tab until the element has the focus, as a hand without a mouse would. */
  private static void tabTo(Page page, String selector) {
    Locator wanted = page.locator(selector).first();
    for (int i = 0; i < 120; i++) {
      Object there = wanted.evaluate("e => e === document.activeElement");
      if (Boolean.TRUE.equals(there)) {
        return;
      }
      page.keyboard().press("Tab");
    }
    throw new AssertionError("the Tab key does not reach " + selector + " on " + page.url());
  }
}
