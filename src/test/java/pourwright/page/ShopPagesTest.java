package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pourwright.work.CloseBooks;
import pourwright.work.Signed;
import pourwright.work.Studio;

/** Goods left with a shop, the settings of selling, money without an order, and closing a year. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ShopPagesTest extends BrowserTest {
  private Workshop workshop;
  private Studio studio;
  private Server server;
  private String base;

  @BeforeAll
  void threeCandles(@TempDir Path folder) {
    workshop = new Workshop(folder);
    studio = workshop.desk.studio();
    server = TestStudio.open(workshop.desk, folder);
    base = "http://127.0.0.1:" + server.port();
    studio.saveSetting.run(workshop.act(), "slate.price.bollard-rain", "20.00");
    workshop.candles("bollard-rain", "soft-a", workshop.vessels("bollard", 3), "", 0);
    Signed.forSale(studio, "bollard-rain");
    Page page = visit(base, "/settings", Window.PHONE);
    page.locator("#hand").fill("MB");
    page.locator("form[action='/settings/hand'] button").click();
  }

  @AfterAll
  void close() {
    server.close();
  }

  private void looksWell(Page page) {
    assertThat(axe(page)).isEmpty();
    assertThat(((Number) page.evaluate("document.documentElement.scrollWidth")).intValue())
        .isLessThanOrEqualTo(390);
  }

  private void by(Page page) {
    if (page.locator("main form #by").count() > 0) {
      page.locator("main form #by").first().fill("MB");
    }
  }

  @Test
  void candlesAreLeftSoldAndFetchedOnAPhone() {
    Page page = visit(base, "/stockroom/shops", Window.PHONE);
    page.locator("#shop").fill("Quay Shop");
    page.locator("[name='take-bollard-rain']").fill("3");
    by(page);
    looksWell(page);
    page.locator("main form button.primary").click();
    assertThat(page.locator(".said").innerText()).contains("3 pieces are left there");
    page.locator("[name^='sold-']").fill("4");
    by(page);
    page.locator("main form button.primary").click();
    assertThat(page.locator("[name^='sold-']").inputValue()).isEqualTo("4");
    page.locator("[name^='sold-']").fill("2");
    page.locator("[name^='home-']").fill("1");
    page.locator("#paid").fill("24");
    by(page);
    looksWell(page);
    page.locator("main form button.primary").click();
    assertThat(page.locator(".said").innerText())
        .contains("2 pieces were sold there, 0 are still there.");
    assertThat(page.locator("main").innerText())
        .contains("commission kept by the shop 16.00 EUR", "The shop still owes 0.00 EUR.");
    page.navigate(base + "/stockroom/shops");
    assertThat(page.locator("main").innerText()).contains("nothing is there any more");
  }

  @Test
  void whatOnlyAFileCouldChangeIsChangedByAForm() {
    Page page = visit(base, "/settings/sale", Window.PHONE);
    page.locator("[name='books.tax']").fill("not charged (small business)");
    page.locator("[name='slate.terms.wholesale']").fill("30 days");
    page.locator("[name='refill.limit']").fill("2");
    page.locator("[name='candle.sell-within-days']").fill("400");
    by(page);
    looksWell(page);
    page.locator("main form button.primary").click();
    assertThat(page.locator(".said").innerText()).contains("Saved.");
    Map<String, String> settings = studio.look(b -> b.settings().all());
    assertThat(settings)
        .containsEntry("books.tax", "not charged (small business)")
        .containsEntry("slate.terms.wholesale", "30 days")
        .containsEntry("refill.limit", "2")
        .containsEntry("candle.sell-within-days", "400");
    page.locator("[name='refill.limit']").fill("-1");
    by(page);
    page.locator("main form button.primary").click();
    assertThat(page.locator("[name='refill.limit']").inputValue()).isEqualTo("-1");
  }

  @Test
  void rentIsWrittenDownAndAClosedYearTakesNoMore() {
    Page page = visit(base, "/slate/money", Window.PHONE);
    page.locator("#amount").fill("300");
    by(page);
    looksWell(page);
    page.locator("main form button.primary").click();
    assertThat(page.locator("main").innerText()).contains("fixed cost 300.00 EUR");
    page.navigate(base + "/slate/books");
    looksWell(page);
    LocalDate last = studio.today().withDayOfYear(1).minusDays(1);
    if (page.locator("#close-by").count() > 0) {
      page.locator("#close-by").fill("MB");
    }
    page.locator("form[action='/slate/books/close'] button").click();
    assertThat(page.locator(".said").innerText()).contains("Closed.");
    Optional<LocalDate> closed = studio.look(CloseBooks::closed);
    assertThat(closed).contains(last);
    page.navigate(base + "/slate/money");
    page.locator("#amount").fill("300");
    page.locator("#day").fill(last.toString());
    by(page);
    page.locator("main form button.primary").click();
    assertThat(page.locator("main").innerText()).contains("the books are closed up to " + last);
    assertThat(page.locator("#amount").inputValue()).isEqualTo("300");
  }
}
