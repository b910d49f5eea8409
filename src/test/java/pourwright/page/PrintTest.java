package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.card.CandleDesign;
import pourwright.stock.Amount;
import pourwright.stock.Price;
import pourwright.work.BeginPour;
import pourwright.work.Drawers;
import pourwright.work.MarketDay;
import pourwright.work.ReceiveLot;
import pourwright.work.Studio;

/** Goal G21: what is printed is the same from every look, on both papers, and no row is torn. */
@DisplayName("G21 print")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PrintTest extends BrowserTest {
  /** ISO 216 and ANSI/ASME Y14.1, points of 1/72 inch. */
  private static final Map<String, PDRectangle> PAPERS =
      Map.of("A4", PDRectangle.A4, "Letter", PDRectangle.LETTER);

  private static final int LOTS = 20;
  private static final String COUNT_LIST = "/stockroom/count.pdf";
  private static final float COARSE_DPI = 60;
  private static final float RASTER_DPI = 300;
  private static final double DIFFERENT_MOST = 0.001;

  /** Of 255, so far two pixels may be apart and still count as one. */
  private static final int SAME = 8;

  /** A mark at the beginning and the end of each cell and line, which the paper is read for. */
  private static final Pattern MARK = Pattern.compile("zq(\\d+)zq");

  private static final String MARK_ROWS =
      "() => { let n = 0; const rows = [...document.querySelectorAll('main tr, main li, main dl > div, main .cards > .card')]"
          + ".filter(r => !r.querySelector('tr, li, dl > div') && r.offsetParent && r.innerText.trim());"
          + " for (const row of rows) { n++; const cells = row.cells ? [...row.cells] : [row];"
          + " for (const cell of cells) { cell.prepend('zq' + n + 'zq ');"
          + " cell.append(' zq' + n + 'zq'); } }"
          + " return rows.filter(r => getComputedStyle(r).breakInside !== 'avoid').length; }";

  private Server server;
  private String base;
  private final List<String> pages = new ArrayList<>();
  private final List<String> files = new ArrayList<>();
  private String labels = "";

  @BeforeAll
  void aStudioAtWork(@TempDir Path folder) {
    Workshop workshop = new Workshop(folder);
    Studio studio = workshop.desk.studio();
    server = TestStudio.open(workshop.desk, folder);
    base = "http://127.0.0.1:" + server.port();
    for (int i = 0; i < LOTS; i++) {
      studio.receiveLot.run(
          workshop.act(),
          new ReceiveLot.Request(
              "scent-rain",
              "NQ-" + (400 + i),
              Amount.ofGrams(250 + i),
              null,
              null,
              null,
              new Price(900, "EUR")));
    }
    CandleDesign candle =
        studio.look(b -> b.cards().current(Drawers.CANDLE, "bollard-rain")).orElseThrow().body();
    var vessels = workshop.vessels("bollard", 6);
    workshop.candles(candle.code(), "soft-a", vessels.subList(0, 3), "scent-rain", 30);
    workshop.prove(candle.code(), "soft-a", "scent-rain", 30);
    var makes = List.of(new BatchPlan.Makes("bollard", 1, 4, "bollard-mold"));
    long cast =
        studio
            .startCast
            .run(workshop.act(), new BatchPlan(BatchKind.CAST, "grey", 1, makes, List.of(), null))
            .made()
            .id();
    long pour =
        studio
            .beginPour
            .run(workshop.act(), new BeginPour.Request(candle.code(), 2, 0))
            .made()
            .id();
    MarketDay.Pack pack =
        new MarketDay.Pack(
            "Market Quay", LocalDate.of(2026, 3, 7), new TreeMap<>(Map.of(candle.code(), 2)), 5000);
    studio.market.pack(workshop.act(), pack).made();
    pages.addAll(
        List.of(
            "/casting/sheet?mix=grey&vessel1=bollard&count1=4&water_c=18&room_c=20&step=1",
            "/casting/" + cast,
            "/pouring/" + pour,
            "/stockroom",
            "/stockroom/material/scent-rain",
            "/stockroom/market/Market%20Quay",
            "/board/vessel/bollard",
            "/"));
    files.addAll(
        List.of(
            "/sheet/" + cast + "/print",
            "/sheet/" + pour + "/print",
            "/stockroom/lot/" + workshop.lot("scent-rain") + "/recall.pdf",
            COUNT_LIST,
            "/stockroom/market/Market%20Quay/sheet.pdf"));
    labels =
        "/press/candle/"
            + candle.code()
            + "/labels.pdf?width=90&height=130&to=eu&language=en&copies=3&columns=2&rows=2&left=8"
            + "&top=6&gap=2&paper=";
  }

  @AfterAll
  void close() {
    closeWindows();
    server.close();
  }

  private static byte[] paper(Page page, String size) {
    return page.pdf(
        new Page.PdfOptions().setFormat(size).setPrintBackground(true).setPreferCSSPageSize(false));
  }

  /** Opens the studio in a look that is chosen at the foot of the page. */
  private Page looking(String scheme, boolean contrast) {
    Page page = visit(base, "/", scheme.equals("dark") ? Window.LAPTOP.dark() : Window.LAPTOP);
    page.locator(".look input[value=" + scheme + "]").check();
    page.locator(".look input[name=contrast]").setChecked(contrast);
    page.locator("form[action='/look'] button").first().click();
    assertThat(page.locator("html").getAttribute("data-scheme")).isEqualTo(scheme);
    return page;
  }

  @Test
  @DisplayName("G21 every page printed from light, dark and high contrast: at most 0.1 % differs")
  void theLookOfTheScreenDoesNotReachThePaper() throws IOException {
    Page light = looking("light", false);
    Page dark = looking("dark", false);
    Page strong = looking("dark", true);
    double most = 0;
    for (String path : pages) {
      List<BufferedImage> first = printed(light, path);
      // the strongest look has the most to say against the paper: a sheet of tables is enough
      for (Page other : path.startsWith("/casting/sheet") ? List.of(dark, strong) : List.of(dark)) {
        List<BufferedImage> second = printed(other, path);
        assertThat(second).as(path).hasSameSizeAs(first);
        for (int i = 0; i < first.size(); i++) {
          double differs = different(first.get(i), second.get(i));
          most = Math.max(most, differs);
          assertThat(differs).as(path + ", page " + (i + 1)).isLessThanOrEqualTo(DIFFERENT_MOST);
        }
      }
    }
    say(
        "at most %.4f %% of the pixels differ, %d pages of the studio"
            .formatted(100 * most, pages.size()));
  }

  private List<BufferedImage> printed(Page page, String path) throws IOException {
    page.navigate(base + path);
    byte[] pdf = paper(page, "A4");
    keep(path, pdf);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFRenderer renderer = new PDFRenderer(document);
      List<BufferedImage> images = new ArrayList<>();
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        images.add(renderer.renderImageWithDPI(i, COARSE_DPI));
      }
      return images;
    }
  }

  private static double different(BufferedImage one, BufferedImage other) {
    int w = one.getWidth();
    int h = one.getHeight();
    assertThat(other.getWidth()).isEqualTo(w);
    assertThat(other.getHeight()).isEqualTo(h);
    int[] a = one.getRGB(0, 0, w, h, null, 0, w);
    int[] b = other.getRGB(0, 0, w, h, null, 0, w);
    int differ = 0;
    for (int i = 0; i < a.length; i++) {
      boolean same = true;
      for (int shift = 0; shift <= 16; shift += 8) {
        same &= Math.abs((a[i] >> shift & 255) - (b[i] >> shift & 255)) <= SAME;
      }
      differ += same ? 0 : 1;
    }
    return differ / (double) a.length;
  }

  @Test
  @DisplayName("G21 A4 and Letter: each row of a table or list stands whole on one page")
  void noRowIsTornByTheEndOfThePaper() throws IOException {
    Page page = visit(base, "/", Window.LAPTOP);
    int rows = 0;
    int breaks = 0;
    for (String path : pages) {
      page.navigate(base + path);
      page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
      Object free = page.evaluate(MARK_ROWS);
      assertThat(free).as(path + ": rows that the paper may tear").isEqualTo(0);
      for (Map.Entry<String, PDRectangle> size : PAPERS.entrySet()) {
        try (PDDocument document = Loader.loadPDF(paper(page, size.getKey()))) {
          isOn(document, size.getValue(), path);
          Map<Integer, Set<Integer>> pagesOf = marks(document);
          rows += pagesOf.size();
          breaks += document.getNumberOfPages() - 1;
          pagesOf.forEach(
              (row, on) ->
                  assertThat(on).as(path + " on " + size.getKey() + ", row " + row).hasSize(1));
        }
      }
      page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN));
    }
    assertThat(rows).as("rows that were looked for").isGreaterThan(2 * LOTS);
    assertThat(breaks).as("ends of paper that were looked at").isGreaterThan(4);
    say("%d rows, %d ends of paper, none torn".formatted(rows, breaks));
  }

  /** On which pages the marks of each row stand. */
  private static Map<Integer, Set<Integer>> marks(PDDocument document) throws IOException {
    Map<Integer, Set<Integer>> pagesOf = new TreeMap<>();
    for (int i = 1; i <= document.getNumberOfPages(); i++) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setStartPage(i);
      stripper.setEndPage(i);
      Matcher marks = MARK.matcher(stripper.getText(document).replaceAll("\\s", ""));
      while (marks.find()) {
        pagesOf.computeIfAbsent(Integer.valueOf(marks.group(1)), row -> new TreeSet<>()).add(i);
      }
    }
    return pagesOf;
  }

  private static void isOn(PDDocument document, PDRectangle size, String path) {
    document
        .getPages()
        .forEach(
            page -> {
              assertThat(page.getMediaBox().getWidth())
                  .as(path)
                  .isCloseTo(size.getWidth(), org.assertj.core.api.Assertions.within(1f));
              assertThat(page.getMediaBox().getHeight())
                  .as(path)
                  .isCloseTo(size.getHeight(), org.assertj.core.api.Assertions.within(1f));
            });
  }

  @Test
  @DisplayName("G21 the program's own sheets: the same from light and dark, on A4 and Letter")
  void theProgramsOwnSheetsComeOnBothPapers() throws IOException {
    Page light = looking("light", false);
    Page dark = looking("dark", true);
    for (String path : files) {
      for (Map.Entry<String, PDRectangle> size : PAPERS.entrySet()) {
        String asked = path + "?paper=" + size.getKey().toLowerCase(Locale.ROOT);
        byte[] first = file(light, asked);
        keep(asked, first);
        try (PDDocument document = Loader.loadPDF(first);
            PDDocument again = Loader.loadPDF(file(dark, asked))) {
          isOn(document, size.getValue(), asked);
          assertThat(new PDFTextStripper().getText(again))
              .isEqualTo(new PDFTextStripper().getText(document));
          assertThat(
                  different(
                      new PDFRenderer(document).renderImageWithDPI(0, COARSE_DPI),
                      new PDFRenderer(again).renderImageWithDPI(0, COARSE_DPI)))
              .isLessThanOrEqualTo(DIFFERENT_MOST);
        }
      }
    }
  }

  @Test
  @DisplayName("G21 the count list: each lot on one line with what the books say of it")
  void theCountListHasEachLotWholeOnOneLine() throws IOException {
    Page page = visit(base, "/stockroom", Window.LAPTOP);
    for (String asked :
        page.locator("a[href^='" + COUNT_LIST + "']").all().stream()
            .map(link -> link.getAttribute("href"))
            .toList()) {
      try (PDDocument document = Loader.loadPDF(file(page, asked))) {
        assertThat(document.getNumberOfPages()).isGreaterThan(1);
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        List<String> lines = stripper.getText(document).lines().toList();
        for (int i = 0; i < LOTS; i++) {
          String row = "Rain on slate.*NQ-" + (400 + i) + " +" + (250 + i) + " g.*";
          assertThat(lines).as(asked).anyMatch(line -> line.strip().matches(row));
        }
      }
    }
  }

  @Test
  @DisplayName("G21 every code on the labels is read back from 300 dots per inch, 100 %")
  void everyCodeOnTheLabelsIsReadBack() throws IOException, ReaderException {
    int read = 0;
    Page page = visit(base, "/press", Window.LAPTOP);
    for (String size : List.of("a4", "letter")) {
      byte[] sheet = file(page, labels + size);
      keep("labels-" + size, sheet);
      try (PDDocument document = Loader.loadPDF(sheet)) {
        BufferedImage all = new PDFRenderer(document).renderImageWithDPI(0, RASTER_DPI);
        for (int i = 0; i < 3; i++) {
          double dots = RASTER_DPI / 25.4;
          BufferedImage one =
              all.getSubimage(
                  (int) ((8 + i % 2 * 92) * dots),
                  (int) ((6 + i / 2 * 132) * dots),
                  (int) (90 * dots),
                  (int) (130 * dots));
          assertThat(decoded(one)).startsWith(base);
          read++;
        }
      }
    }
    say(read + " of 6 codes read back");
  }

  private static String decoded(BufferedImage image) throws ReaderException {
    int w = image.getWidth();
    int h = image.getHeight();
    var light = new RGBLuminanceSource(w, h, image.getRGB(0, 0, w, h, null, 0, w));
    return new QRCodeReader()
        .decode(
            new BinaryBitmap(new HybridBinarizer(light)),
            Map.of(DecodeHintType.TRY_HARDER, Boolean.TRUE))
        .getText();
  }

  /** A file as the browser of this window gets it. */
  private byte[] file(Page page, String path) {
    APIResponse answer = page.request().get(base + path);
    assertThat(answer.status()).as(path).isEqualTo(200);
    return answer.body();
  }

  private static void say(String figure) {
    System.getLogger("print").log(System.Logger.Level.INFO, "G21 " + figure);
  }

  /** Kept to be looked at where a folder is named. */
  private static void keep(String name, byte[] pdf) {
    String folder = System.getProperty("pourwright.keep");
    if (folder != null) {
      try {
        Files.write(Path.of(folder, name.replaceAll("[^a-z0-9]+", "-") + ".pdf"), pdf);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
