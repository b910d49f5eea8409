package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Goal G1: from the first page of the sample's cards to a batch in the books. */
@DisplayName("G1 first value")
class FirstBatchTest extends BrowserTest {
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
