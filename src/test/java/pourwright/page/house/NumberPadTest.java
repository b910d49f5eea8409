package pourwright.page.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.page.BrowserTest;
import pourwright.page.OpenStudio;

/** A number at the bench is put in with big keys of our own; a keyboard still types. */
class NumberPadTest extends BrowserTest {
  private static final String SHEET =
      "/casting/sheet?mix=grey&vessel1=bollard&count1=2&water_c=20&room_c=20&step=1";

  /** The smallest phone of goal G12: nothing of the pad may lie outside it. */
  private static final Window SMALL =
      new Window(360, 640, com.microsoft.playwright.options.ColorScheme.LIGHT, true);

  private OpenStudio open;

  @BeforeEach
  void openTheStudio(@TempDir Path folder) {
    open = new OpenStudio(folder).withDemoCards();
  }

  @AfterEach
  void closeTheStudio() {
    closeWindows();
    open.close();
  }

  private Page atTheScale() {
    Page page = visit(open.base(), SHEET, SMALL);
    page.fill("main #by", "AB");
    page.click("text=Begin this cast");
    for (int i = 0; i < 15 && weighs(page).count() == 0; i++) {
      if (page.locator("form[action$='/step'] #by").count() > 0) {
        page.fill("form[action$='/step'] #by", "AB");
      }
      page.click("form[action$='/step'] .primary");
    }
    return page;
  }

  private static Locator weighs(Page page) {
    return page.locator("form[action$='/step'] p:has(.figure) + .field input");
  }

  @Test
  void theFirstKeyTakesThePlaceOfThePlannedAmountAndLeavingItPutsItBack() {
    Page page = atTheScale();
    Locator weighed = weighs(page).first();
    String planned = weighed.inputValue();
    weighed.click();
    for (String key : List.of("4", "1", ".", "5")) {
      page.click(".pad button:text-is('" + key + "')");
    }
    assertThat(page.locator(".pad-figure").innerText()).isEqualTo("41.5");
    assertThat(axe(page)).isEmpty();
    page.click(".pad button:text-is('Leave it')");
    assertThat(weighed.inputValue()).isEqualTo(planned);
    weighed.click();
    page.click(".pad button:text-is('7')");
    page.click(".pad button:text-is('Put it in')");
    assertThat(weighed.inputValue()).isEqualTo("7");
    assertThat(page.locator(".pad").count()).isZero();
    assertThat(complaints).isEmpty();
  }

  /** Sizes and gaps of trust-and-use goal G12: 96 px, 72 px, 12 px, 48 px. */
  @Test
  void itsKeysAreBigEnoughForAKnuckleAndAllOfItIsInSight() {
    Page page = atTheScale();
    weighs(page).first().click();
    List<BoundingBox> keys = new ArrayList<>();
    for (Locator key : page.locator(".pad button").all()) {
      BoundingBox box = key.boundingBox();
      assertThat(box.height).as(key.innerText()).isGreaterThanOrEqualTo(72);
      assertThat(box.y + box.height).isLessThanOrEqualTo(640);
      assertThat(box.y).isGreaterThan(0);
      keys.add(box);
    }
    assertThat(keys).hasSize(14);
    assertThat(page.locator(".pad .primary").boundingBox().height).isGreaterThanOrEqualTo(96);
    for (BoundingBox a : keys) {
      for (BoundingBox b : keys) {
        assertThat(a == b || gap(a, b) >= 11.9).as(gap(a, b) + " px apart").isTrue();
      }
    }
    Object figure =
        page.evaluate(
            "parseFloat(getComputedStyle(document.querySelector('.pad-figure')).fontSize)");
    assertThat(((Number) figure).doubleValue()).isGreaterThanOrEqualTo(48);
  }

  private static double gap(BoundingBox a, BoundingBox b) {
    double across = Math.max(a.x, b.x) - Math.min(a.x + a.width, b.x + b.width);
    double down = Math.max(a.y, b.y) - Math.min(a.y + a.height, b.y + b.height);
    return Math.max(across, down);
  }

  @Test
  void aKeyboardStillTypes() {
    Page page = atTheScale();
    Locator weighed = weighs(page).first();
    weighed.click();
    weighed.press("Control+a");
    page.keyboard().type("12.25");
    PlaywrightAssertions.assertThat(page.locator(".pad-figure")).hasText("12.25");
    page.keyboard().press("Escape");
    assertThat(page.locator(".pad").count()).isZero();
  }
}
