package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.ByteArrayInputStream;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** The books of account on their page and as files. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BooksPageTest extends BrowserTest {
  private static final String DAYS = "from=2026-01-01&until=2026-12-31";
  private Server server;
  private String base;

  @BeforeAll
  void open(@TempDir Path folder) {
    Workshop workshop = new Workshop(folder);
    server = TestStudio.open(workshop.desk, folder);
    base = "http://127.0.0.1:" + server.port();
  }

  @AfterAll
  void close() {
    server.close();
  }

  /** Every material of the workshop came in once, for 40.00 EUR. */
  @Test
  void thePageTellsWhatStockIsWorthOnAPhone() {
    Page page = visit(base, "/slate", Window.PHONE);
    page.getByText("The books").click();
    page.fill("#from", "2026-01-01");
    page.fill("#until", "2026-12-31");
    page.locator("button.primary").click();
    page.waitForLoadState();
    String text = page.locator("main").innerText();
    int materials = pourwright.main.DemoCards.materials().size();
    assertThat(text)
        .contains("not tax advice")
        .contains(materials * 40 + ".00 EUR")
        .contains("first in, first out");
    assertThat(axe(page)).isEmpty();
    assertThat(((Number) page.evaluate("document.documentElement.scrollWidth")).intValue())
        .isLessThanOrEqualTo(390);
  }

  @Test
  void theJournalTheTablesAndTheWorkbookAreFiles() throws Exception {
    Visitor visitor = new Visitor(server.port());
    HttpResponse<String> journal = visitor.get("/slate/books/journal?" + DAYS);
    assertThat(journal.body()).contains("commodity 1000.00 EUR", "2026-03-02 (D", "Liabilities");
    HttpResponse<String> csv = visitor.get("/slate/books/csv/purchases?" + DAYS);
    assertThat(csv.body()).startsWith("day,material,lot,supplier,amount,unit,price\r\n2026-03-02,");
    assertThat(visitor.get("/slate/books/csv/nothing?" + DAYS).statusCode()).isEqualTo(404);
    assertThat(visitor.get("/slate/books?from=2026-05-01&until=2026-04-01").statusCode())
        .isEqualTo(422);
    byte[] bytes =
        java.net
            .URI
            .create(base + "/slate/books/workbook?" + DAYS)
            .toURL()
            .openStream()
            .readAllBytes();
    try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(bytes))) {
      assertThat(book.getSheets().map(s -> s.getName()))
          .containsExactly("overview", "sales", "purchases", "stock", "months", "accounts");
      var purchases = book.findSheet("purchases").orElseThrow().read();
      assertThat(purchases.get(1).getCellAsNumber(6).orElseThrow()).isEqualByComparingTo("40");
    }
  }
}
