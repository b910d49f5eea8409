package pourwright.page;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/**
 * The way of a vessel from the drawing to the proof, walked on a phone in a running studio, with a
 * picture of every screen: {@code walk-01-draw-390-light.png} and on.
 */
final class WalkPictures {
  private static final int STEPS_MAX = 15;
  private static final Map<String, String> CONSTANT =
      Map.of("#before_g", "500.2", "#later_g", "500.0", "#hours", "24");

  private final Page page;
  private final String base;
  private final Path folder;
  private final String look;
  private int number;

  WalkPictures(Page page, String base, Path folder, BrowserTest.Window window) {
    this.page = page;
    this.base = base;
    this.folder = folder;
    this.look = window.width() + "-" + window.scheme().name().toLowerCase(Locale.ROOT);
  }

  void take() {
    draw();
    weigh();
    mix();
    castAndDemold();
    stand("Green", "HARDENED", Map.of());
    stand("Hardened", "DRIED", CONSTANT);
    stand("Dry", "SEALED", Map.of());
    stand("Damp", "DRIED", CONSTANT);
    stand("Dry", "HELD_WATER", Map.of());
    stand("Damp", "DRIED", CONSTANT);
    stand("Dry", "SEEP_TEST", Map.of());
    stand("SeepTesting", "HELD_WAX", Map.of());
    go("/casting/pieces/Dry");
    shoot("wax-tight");
  }

  private void draw() {
    go("/board/vessel/new");
    page.fill("#name", "Quay cup");
    page.fill("#outer_length", "90 mm");
    page.fill("#outer_height", "100");
    page.fill("#cavity_length", "74");
    page.fill("#cavity_height", "90");
    sign();
    shoot("draw");
    press("main button.primary");
    shoot("drawn");
  }

  private void weigh() {
    press("main a[href$='/weigh']");
    page.fill("#empty_g", "520");
    page.fill("#full_g", "905");
    page.fill("#water_c", "20");
    sign();
    shoot("weigh");
    press("main button.primary");
    shoot("weighed");
  }

  private void mix() {
    go("/casting/new");
    page.selectOption("#vessel1", "quay-cup");
    shoot("what");
    press("main button.primary");
    sign();
    shoot("sheet");
    press("main button.primary");
  }

  private void castAndDemold() {
    for (int i = 0; i < STEPS_MAX && page.locator("form[action$='/step']").count() > 0; i++) {
      sign();
      shoot("cast");
      press("form[action$='/step'] .primary");
    }
    shoot("demold");
    press("form[action$='/demold'] .primary");
  }

  /** Pieces of this walk alone: others that stand there are left as they are. */
  private void stand(String state, String step, Map<String, String> more) {
    go("/casting/pieces/" + state);
    for (Locator group : page.locator("#pieces fieldset").all()) {
      boolean ours = group.locator("legend").innerText().contains("Quay cup");
      group.locator("input[type=checkbox]").all().forEach(tick -> tick.setChecked(ours));
    }
    more.forEach(page::fill);
    sign();
    shoot(step.toLowerCase(Locale.ROOT).replace('_', '-'));
    press("button[value=" + step + "]");
  }

  private void go(String path) {
    page.navigate(base + path);
  }

  private void press(String what) {
    page.locator(what).first().click();
    page.waitForLoadState();
  }

  /** A device that nobody has signed on yet asks for initials. */
  private void sign() {
    Locator by = page.locator("main form:not([hidden]) #by");
    if (by.count() > 0 && by.first().isVisible()) {
      by.first().fill("AB");
    }
  }

  private void shoot(String name) {
    number++;
    String file = String.format(Locale.ROOT, "walk-%02d-%s-%s.png", number, name, look);
    page.screenshot(new Page.ScreenshotOptions().setPath(folder.resolve(file)).setFullPage(true));
  }
}
