package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pourwright.work.SaleSums;

/** An order's money: agreed prices, a deposit, the papers; and the terms of the channels. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SaleMoneyTest extends BrowserTest {
  private Workshop workshop;
  private Server server;
  private String base;

  @BeforeAll
  void open(@TempDir Path folder) {
    workshop = new Workshop(folder);
    server = TestStudio.open(workshop.desk, folder);
    base = "http://127.0.0.1:" + server.port();
  }

  @AfterAll
  void close() {
    server.close();
  }

  private String pdf(String path) throws IOException {
    byte[] bytes = URI.create(base + path).toURL().openStream().readAllBytes();
    try (PDDocument document = Loader.loadPDF(bytes)) {
      return new PDFTextStripper().getText(document);
    }
  }

  @Test
  void aPriceIsAgreedADepositPaidAndTheInvoiceSaysWhatIsLeft() throws IOException {
    var studio = workshop.desk.studio();
    studio.saveSetting.run(workshop.act(), "books.tax", "not charged (small business)");
    studio.saveSetting.run(workshop.act(), "slate.terms.wholesale", "30 days");
    workshop.order("W-1", "bollard-rain", 6, "wholesale");
    Page page = visit(base, "/slate/order", Window.PHONE);
    page.getByText("W-1").click();
    page.waitForLoadState();
    assertThat(page.locator("main").innerText())
        .contains("no price")
        .doesNotContain("no price each");
    assertThat(axe(page)).isEmpty();
    page.locator("input[name^='price-']").fill("14.50");
    page.locator("#by").fill("MB");
    page.getByText("Agree on these prices").click();
    page.waitForLoadState();
    assertThat(page.locator("main").innerText()).contains("87.00 EUR", "agreed");
    page.selectOption("#kind", "deposit");
    page.fill("#amount", "20 USD");
    page.getByText("Write it down").click();
    page.waitForLoadState();
    assertThat(page.locator("#amount-wrong").innerText())
        .contains("is in USD and the studio keeps its books in EUR");
    page.fill("#amount", "20");
    page.getByText("Write it down").click();
    page.waitForLoadState();
    SaleSums sums = studio.look(b -> SaleSums.of(b, "W-1")).orElseThrow();
    assertThat(sums.totalMinor() - sums.paidMinor()).isEqualTo(6700);
    assertThat(pdf("/slate/order/W-1/invoice.pdf"))
        .contains("Invoice", "6", "14.50 EUR", "87.00 EUR", "To pay: 67.00 EUR")
        .contains("Tax: not charged (small business).", "Terms: 30 days.", "deposit");
    assertThat(pdf("/slate/order/W-1/quote.pdf")).contains("Quote", "nothing is owed");
    assertThat(pdf("/slate/order/W-1/slip.pdf"))
        .contains("Packing slip", "care card", "Burn within sight.")
        .doesNotContain("EUR");
    assertThat(complaints.stream().filter(c -> !c.contains("status of 4"))).isEmpty();
  }

  @Test
  void theTermsOfAChannelAreHersAndAParcelIsChargedByItsSize() {
    Visitor visitor = new Visitor(server.port());
    visitor.post(
        "/slate/channels",
        "/slate/channels",
        Map.of("stall-fee", "4", "wholesale-share", "55", "by", "MB"));
    var terms = workshop.desk.studio().look(b -> new pourwright.work.SlateBook(b).terms());
    assertThat(terms.get(1).channel().feeFraction()).isEqualTo(0.04);
    assertThat(terms.get(2).ofShopPrice()).isEqualTo(0.55);
    // handbook compliance, check value 48: 30 x 25 x 20 cm over 5000 is 3.0 kg
    assertThat(
            visitor
                .page(
                    "/slate/channels?length=30&width=25&height=20&kg=1.4&divisor=5000&rates="
                        + "2+4.90%0A5+6.90")
                .select("main")
                .text())
        .contains("charged as 3.00 kg", "Postage 6.90");
    assertThat(
            visitor
                .get(
                    "/slate/channels?length=30&width=25&height=20&kg=1.4&divisor=5000&rates=1+4.90")
                .statusCode())
        .isEqualTo(422);
    Page page = visit(base, "/slate/channels", Window.PHONE);
    assertThat(axe(page)).isEmpty();
    assertThat(((Number) page.evaluate("document.documentElement.scrollWidth")).intValue())
        .isLessThanOrEqualTo(390);
    assertThat(List.copyOf(outside)).isEmpty();
  }
}
