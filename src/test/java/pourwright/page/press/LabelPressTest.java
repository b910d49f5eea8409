package pourwright.page.press;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.card.CandleDesign;
import pourwright.card.Card;
import pourwright.hazard.HazardSheet;
import pourwright.main.DemoCards;
import pourwright.page.BrowserTest;
import pourwright.page.Desk;
import pourwright.page.Server;
import pourwright.page.TestStudio;
import pourwright.work.Act;
import pourwright.work.CardVersion;
import pourwright.work.Drawer;
import pourwright.work.Drawers;
import pourwright.work.SaveCard;

/** The label press in a browser: from a pasted sheet to a printed test label. */
class LabelPressTest extends BrowserTest {
  private static final List<Server> OPENED = new ArrayList<>();
  private static final String OIL =
      """
      Linalool 78-70-6 201-134-4 10 - 15 % Skin Sens. 1B; H317, Skin Irrit. 2; H315
      Limonene 5989-27-5 5 - 10 % Skin Sens. 1B H317, Aquatic Acute 1 H400 M (acute) = 1, Aquatic Chronic 3 H412
      Musk no CAS 10 % Aquatic Chronic 1 H410, M (chronic) = 1
      """;

  private Desk desk;
  private String base;

  @BeforeEach
  void openTheStudio(@TempDir Path folder) {
    desk = TestStudio.desk(folder);
    Server server = TestStudio.open(desk, folder);
    OPENED.add(server);
    base = "http://127.0.0.1:" + server.port();
    DemoCards.materials().forEach(m -> save(Drawers.MATERIAL, m.code(), m));
    DemoCards.cards().forEach(this::saveCard);
  }

  /** After the windows are closed: an open window holds a line to the studio. */
  @AfterAll
  static void closeTheStudios() {
    OPENED.forEach(Server::close);
    OPENED.clear();
  }

  private <T> void save(Drawer<T> drawer, String code, T body) {
    desk.studio()
        .saveCard
        .run(Act.of("AB", drawer.name() + "-" + code), SaveCard.Request.of(drawer, code, 0, body));
  }

  private void saveCard(Card card) {
    for (Drawer<? extends Card> drawer : Drawers.ofCards()) {
      if (drawer.type().isInstance(card)) {
        saveIn(drawer, card);
      }
    }
  }

  private <T extends Card> void saveIn(Drawer<T> drawer, Card card) {
    save(drawer, card.code(), drawer.type().cast(card));
  }

  private CandleDesign design() {
    return desk.studio().look(books -> books.cards().all(Drawers.CANDLE)).stream()
        .map(v -> v.body())
        .filter(
            d ->
                desk.studio()
                    .look(books -> books.cards().current(Drawers.POUR, d.pour()))
                    .map(p -> !p.body().fragrances().isEmpty())
                    .orElse(false))
        .findFirst()
        .orElseThrow();
  }

  private String scent(CandleDesign design) {
    return desk.studio()
        .look(books -> books.cards().current(Drawers.POUR, design.pour()))
        .orElseThrow()
        .body()
        .fragrances()
        .get(0)
        .material();
  }

  private static void press(Page page, String button) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button).setExact(true))
        .click();
  }

  private void keepSheet(Page page, String material, String text, boolean none) {
    page.navigate(base + "/press/sheet/" + material);
    page.locator("#text").fill(text);
    page.locator("#revision").fill("2026-02-01");
    page.locator("input[name=looked]").check();
    page.locator("input[name=none]").setChecked(none);
    if (page.locator("#by").count() > 0) {
      page.locator("#by").fill("AB");
    }
    press(page, "Keep the sheet");
  }

  private void keepEverySheet(Page page, CandleDesign design) {
    keepSheet(page, scent(design), OIL, false);
    desk.studio()
        .look(books -> books.cards().current(Drawers.POUR, design.pour()))
        .orElseThrow()
        .body()
        .waxes()
        .forEach(w -> keepSheet(page, w.material(), "", true));
    desk.studio()
        .look(books -> books.cards().current(Drawers.POUR, design.pour()))
        .orElseThrow()
        .body()
        .extras()
        .forEach(w -> keepSheet(page, w.material(), "", true));
  }

  @Test
  void aPastedSheetIsReadAndItsDoubtsAreShownBeforeItIsKept() {
    String scent = scent(design());
    Page page = visit(base, "/press/sheet/" + scent, Window.PHONE);
    page.locator("#text").fill(OIL);
    press(page, "Read it");
    assertThat(page.locator("main").textContent())
        .contains("Linalool", "10 to 15 %", "Musk", "no CAS number");
    assertThat(axe(page)).isEmpty();
    page.locator("#revision").fill("2026-02-01");
    page.locator("#by").fill("AB");
    press(page, "Keep the sheet");
    assertThat(page.locator(".said-refused").textContent()).contains("doubtful");
    page.locator("input[name=looked]").check();
    press(page, "Keep the sheet");
    assertThat(page.locator(".said").textContent()).contains("is kept");
    Optional<CardVersion<HazardSheet>> kept =
        desk.studio().look(books -> books.cards().current(Drawers.SHEET, scent));
    assertThat(kept).hasValueSatisfying(v -> assertThat(v.body().lines()).hasSize(3));
    page.navigate(base + "/press/sheet/" + scent);
    assertThat(page.locator("#text").inputValue()).contains("Linalool 78-70-6 10 - 15 %");
  }

  @Test
  void aCandleIsClassifiedWithItsReasonsAndOnlyATestLabelPrints()
      throws IOException, InterruptedException {
    CandleDesign design = design();
    Page page = visit(base, "/press", Window.PHONE);
    keepEverySheet(page, design);
    page.navigate(base + "/press/candle/" + design.code());
    String text = page.locator("main").textContent();
    assertThat(text)
        .contains("H412")
        .contains("Regulation (EC) 1272/2008")
        .contains("no word stands behind version 1")
        .contains("You check it against the supplier's sheet")
        .doesNotContainIgnoringCase("compliant");
    assertThat(page.locator("section:has(#preview) svg").count()).isPositive();
    assertThat(((Number) page.evaluate("document.documentElement.scrollWidth")).intValue())
        .isLessThanOrEqualTo(390);
    assertThat(axe(page)).isEmpty();
    Object width =
        page.evaluate(
            "document.querySelector('section:has(#preview) .scroll > svg').getBoundingClientRect()"
                + ".width");
    assertThat(((Number) width).doubleValue()).isBetween(279.0, 280.5);
    HttpResponse<InputStream> pdf =
        HttpClient.newHttpClient()
            .send(
                HttpRequest.newBuilder(
                        URI.create(
                            base
                                + "/press/candle/"
                                + design.code()
                                + "/labels.pdf?width=90"
                                + "&height=130&to=eu&language=en&copies=3&paper=a4&columns=2"
                                + "&rows=2&left=10&top=10&gap=4"))
                    .build(),
                HttpResponse.BodyHandlers.ofInputStream());
    assertThat(pdf.statusCode()).isEqualTo(200);
    try (PDDocument document = Loader.loadPDF(pdf.body().readAllBytes())) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
      String printed = new PDFTextStripper().getText(document);
      assertThat(printed.split("TEST, NOT FOR SALE", -1)).hasSize(4);
      assertThat(printed).contains(design.name());
    }
  }

  @Test
  void theSampleOfALotIsJudgedAndKept() {
    Page page = visit(base, "/press/net", Window.PHONE);
    page.locator("#label").fill("227");
    page.locator("#lot").fill("100");
    page.locator("#nets")
        .fill("225.8\n226.1\n225.5\n226.4\n225.9\n226.2\n225.7\n226.0\n226.3\n225.6\n226.1\n225.4");
    page.locator("#by").fill("AB");
    press(page, "Judge and keep");
    assertThat(page.locator(".said").textContent())
        .contains("the average is short", "1.083 g below");
    assertThat(axe(page)).isEmpty();
  }

  @Test
  void whoStandsOnTheLabelIsKept() {
    Page page = visit(base, "/press", Window.PHONE);
    page.locator("[id='maker.name']").fill("Undercroft Lantern Works");
    page.locator("[id='maker.address']").fill("1 Cellar Steps, Harbour");
    page.locator("#by").fill("AB");
    page.locator("form[action='/press/maker'] button").click();
    assertThat(page.locator("[id='maker.name']").inputValue())
        .isEqualTo("Undercroft Lantern Works");
  }
}
