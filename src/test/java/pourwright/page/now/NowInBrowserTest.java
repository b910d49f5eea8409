package pourwright.page.now;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.page.BrowserTest;
import pourwright.page.OpenStudio;

/** What now and next, what is late, what is short, and the last day to cast, on the first page. */
class NowInBrowserTest extends BrowserTest {
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

  private void order(String number, String design, int pieces, LocalDate due) {
    OrderLine line = new OrderLine(number, design, 1, pieces, due, null);
    open.studio.orders.take(
        open.act(), new Order(number, "shop", null, OrderState.OPEN, List.of(line)));
  }

  private static void assertFits(Page page, int width) {
    Object wide = page.evaluate("document.documentElement.scrollWidth");
    assertThat(((Number) wide).intValue()).as(page.url()).isLessThanOrEqualTo(width);
  }

  private Page now(Window window) {
    Page page = visit(open.base(), "/", window);
    page.waitForSelector("#next");
    return page;
  }

  @Test
  void aStudioWithOrdersAndNoMaterialSeesWhatToDoAndWhatIsShort() {
    LocalDate today = open.studio.today();
    order("L-1", "bollard-rain", 3, today.plusDays(2));
    order("L-2", "cog-fig", 2, today.plusDays(90));
    Page page = now(Window.PHONE);
    assertThat(page.locator("section:has(#next)").innerText()).contains("cast");
    assertThat(page.locator("section:has(#late)").innerText())
        .contains("d late", "L-1")
        .doesNotContain("L-2");
    assertThat(page.locator("section:has(#short)").innerText()).contains("Soft plant wax A");
    assertThat(page.locator("section:has(#last)").innerText())
        .contains("gone, ", "for the parcel of " + today.plusDays(90));
    assertThat(page.locator("svg.clock-strip rect").count()).isGreaterThan(2);
    assertFits(page, 390);
    assertThat(axe(page)).isEmpty();
    page.setViewportSize(1280, 900);
    assertFits(page, 1280);
    assertThat(axe(page)).isEmpty();
    assertThat(outside).isEmpty();
    assertThat(complaints).isEmpty();
  }

  @Test
  void darkAndWithoutScriptItSaysTheSame() {
    order("L-3", "ferry-rain", 1, open.studio.today().plusDays(60));
    Page dark = now(Window.LAPTOP.dark());
    assertThat(axe(dark)).isEmpty();
    Page plain = now(Window.PHONE.withoutScript());
    assertThat(plain.locator("section:has(#next)").innerText()).contains("Ferry");
    assertThat(plain.locator("section:has(#late)").innerText()).contains("Nothing is late");
    assertFits(plain, 390);
  }

  @Test
  void anEmptyStudioHasNothingToDo() {
    Page page = now(Window.PHONE);
    assertThat(page.locator("section:has(#next)").innerText())
        .contains("Nothing waits for a hand.");
    assertThat(axe(page)).isEmpty();
  }
}
