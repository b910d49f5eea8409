package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Goal G1: from the first page to a batch in the books, by the sample's cards and from an empty
 * studio of one's own, where a vessel is drawn and the house's mix taken. A field that is filled is
 * one interaction and its characters take their time.
 */
@DisplayName("G1 first value")
class FirstBatchTest extends BrowserTest {
  @Test
  @DisplayName("G1 an empty studio has its own first batch by 12 interactions and 90 s at the most")
  void anEmptyStudioHasItsOwnFirstBatch(@TempDir Path folder) {
    try (OpenStudio open = new OpenStudio(folder)) {
      // where 'Begin my own studio', one tap in the sample, has led
      Page page = visit(open.base(), "/welcome", Window.PHONE);
      Thumb thumb = Thumb.on(page);
      thumb.tap("#by").type("MB").tap("#house-cards button.primary");
      page.waitForSelector(".said-done");
      thumb.tap("main a[href='/board/vessel/new']");
      page.waitForURL("**/board/vessel/new");
      thumb.tap("#name").type("Mug");
      thumb.tap("#outer_length").type("90").tap("#outer_height").type("100");
      thumb.tap("#cavity_length").type("74").tap("#cavity_height").type("90");
      thumb.tap("main form button.primary");
      page.waitForURL("**/board/vessel/mug");
      thumb.tap("text=Cast it");
      page.waitForURL("**/casting/sheet*");
      thumb.tap("text=Begin this cast");
      page.waitForSelector("#step");
      assertThat(open.studio.<Integer>look(b -> b.batches().running().size())).isEqualTo(1);
      System.err.printf(
          "G1, own studio: %d interactions and %d ms, one more from the sample%n",
          thumb.taps(), thumb.milliseconds());
      // the one tap that left the sample counts too
      assertThat(thumb.taps() + 1).isLessThanOrEqualTo(12);
      assertThat(thumb.milliseconds()).isLessThanOrEqualTo(90_000);
      closeWindows();
    }
    assertThat(complaints).isEmpty();
  }

  @Test
  @DisplayName("G1 an empty studio comes to its first planned candle by pages alone")
  void anEmptyStudioComesToItsFirstPlannedCandle(@TempDir Path folder) {
    try (OpenStudio open = new OpenStudio(folder)) {
      Page page = visit(open.base(), "/settings", Window.PHONE);
      Thumb thumb = Thumb.on(page);
      thumb.tap("#hand").type("MB").tap("main form[action='/settings/hand'] button");
      fill(thumb, "studio.name", "Cellar");
      save(page, thumb);
      page.navigate(open.base() + "/welcome");
      thumb.tap("#house-cards button.primary");
      page.waitForSelector(".said-done");
      thumb.tap("main a[href='/board/vessel/new']");
      page.waitForURL("**/board/vessel/new");
      fill(thumb, "name", "Mug", "outer_length", "90", "outer_height", "100");
      fill(thumb, "cavity_length", "74", "cavity_height", "90");
      save(page, thumb);
      thumb.tap("text=Weigh with water");
      page.waitForURL("**/weigh");
      fill(thumb, "empty_g", "520", "full_g", "905");
      save(page, thumb);
      page.navigate(open.base() + "/board/mold/new");
      fill(thumb, "name", "Mug mold");
      save(page, thumb);
      page.navigate(open.base() + "/board/pour/new");
      fill(thumb, "name", "Plain", "family", "plain");
      thumb.choose("#wax1", "plant-wax").choose("#scent1", "fragrance-oil");
      fill(thumb, "load", "6", "add_from", "65", "add_to", "70", "pour_from", "55");
      fill(thumb, "pour_to", "60", "rest", "14");
      save(page, thumb);
      for (String material : new String[] {"plant-wax", "fragrance-oil"}) {
        page.navigate(open.base() + "/stockroom/receive");
        thumb.choose("#material", material);
        fill(thumb, "amount", "1 kg", "lot", "L1");
        save(page, thumb);
      }
      page.navigate(open.base() + "/welcome");
      thumb.tap("main a[href='/board/candle/new']");
      page.waitForURL("**/board/candle/new");
      fill(thumb, "name", "First light");
      save(page, thumb);
      page.navigate(open.base() + "/welcome");
      thumb.tap("main a[href='/orders/new']");
      page.waitForURL("**/orders/new");
      fill(thumb, "quantity", "2");
      save(page, thumb);
      page.navigate(open.base() + "/welcome");
      assertThat(page.textContent("main")).contains("5 of 5");
      page.navigate(open.base() + "/");
      page.waitForCondition(() -> page.textContent("main").contains("Mug") || again(page));
      System.err.printf(
          "G1, empty studio to the first planned candle: %d interactions and %d ms%n",
          thumb.taps(), thumb.milliseconds());
      // ten minutes by the issue; taps and characters are the least part of them
      assertThat(thumb.milliseconds()).isLessThanOrEqualTo(120_000);
      closeWindows();
    }
    assertThat(complaints).isEmpty();
  }

  private static boolean again(Page page) {
    page.waitForTimeout(500);
    page.reload();
    return false;
  }

  private static void fill(Thumb thumb, String... fields) {
    for (int i = 0; i < fields.length; i += 2) {
      thumb.write("[name='" + fields[i] + "']", fields[i + 1]);
    }
  }

  private static void save(Page page, Thumb thumb) {
    thumb.tap("main form button.primary");
    page.waitForSelector(".said-done, .complaints, .wrong");
    assertThat(page.locator(".wrong").allTextContents()).isEmpty();
  }

  @Test
  @DisplayName("G1 the first batch is saved by 12 interactions and 90 s at the most, no account")
  void theFirstBatchIsSavedByTwelveInteractionsAtMost(@TempDir Path folder) {
    try (OpenStudio open = new OpenStudio(folder).withDemoCards()) {
      Page page = visit(open.base(), "/", Window.PHONE);
      Thumb thumb = Thumb.on(page);
      thumb.tap("a.to-places").tap("nav.places a:has-text('Casting bench')");
      page.waitForURL("**/casting");
      thumb.tap("main a[href='/casting/new']");
      page.waitForURL("**/casting/new");
      thumb.choose("#vessel1", "bollard").tap("main form button[type=submit]");
      page.waitForURL("**/casting/sheet*");
      thumb.tap("#by").type("MB").tap("text=Begin this cast");
      page.waitForSelector("#step");
      assertThat(open.studio.<Integer>look(b -> b.batches().running().size())).isEqualTo(1);
      assertThat(thumb.taps()).isLessThanOrEqualTo(12);
      assertThat(thumb.milliseconds()).isLessThanOrEqualTo(90_000);
      closeWindows();
    }
    assertThat(complaints).isEmpty();
  }
}
