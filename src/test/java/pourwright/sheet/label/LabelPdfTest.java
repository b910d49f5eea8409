package pourwright.sheet.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.hazard.Audience;
import pourwright.hazard.Classification;
import pourwright.hazard.Classifier;
import pourwright.hazard.Form;
import pourwright.hazard.Ingredient;
import pourwright.hazard.Mixture;
import pourwright.hazard.Regime;
import pourwright.label.BurnFacts;
import pourwright.label.LabelMinimum;
import pourwright.label.LabelPress;
import pourwright.label.LabelRequest;
import pourwright.label.LabelStock;
import pourwright.label.LabelText;
import pourwright.label.Language;
import pourwright.label.Maker;
import pourwright.label.Panel;
import pourwright.label.SaleGate;

class LabelPdfTest {
  private static final String LINK = "http://192.168.0.10:8080/mark/P0417K";

  static Classification classified(Ingredient... lines) {
    return Classifier.classify(
        new Mixture(
            Regime.CLP, Form.SOLID, Audience.PUBLIC, List.of(lines), Mixture.Tested.NOTHING));
  }

  static final Classification TWO_SIGNS =
      classified(
          Ingredient.plain("linalool", 0.012, "Skin Sens. 1B"),
          Ingredient.plain("musk", 0.025, "Aquatic Chronic 1"),
          Ingredient.plain("wax", 0.963));

  static final Classification ONE_SIGN =
      classified(
          Ingredient.plain("linalool", 0.012, "Skin Sens. 1B"), Ingredient.plain("wax", 0.988));

  static LabelText label(Classification found, double capacityMl, SaleGate gate, String... codes) {
    List<Language> languages = Arrays.stream(codes).map(Language::new).toList();
    return LabelPress.text(
        new LabelRequest(
            "Bollard",
            "Rain on slate",
            found,
            200,
            new Panel.Cylinder(80, 90),
            capacityMl,
            new Maker(
                "Undercroft Lantern Works",
                "1 Cellar Steps, Harbour",
                "+00 000 0000",
                "works@example.org"),
            "P0417-K",
            LINK,
            new BurnFacts(4.0, 5.0, 3.0, 13.0, 38.0, 52.0),
            languages,
            "eu",
            "C23S-PQ2V-AMH9-VVRF"),
        gate);
  }

  /** Regulation (EC) 1272/2008 Annex I Table 1.3 and Regulation (EU) 2024/2865. */
  @ParameterizedTest
  @CsvSource({"250,74,105", "600,90,120", "3500,105,148", "60000,148,210", "600000,148,210"})
  void signsAndLettersReadBackAreAtLeastTheLeastSizes(
      double capacityMl, double widthMm, double heightMm) throws IOException {
    LabelText text = label(TWO_SIGNS, capacityMl, SaleGate.open(), "en");
    LabelMinimum least = LabelMinimum.of(capacityMl);
    byte[] pdf = LabelPdf.sheets(List.of(text), LabelStock.single(widthMm, heightMm));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDPage page = document.getPage(0);
      assertThat(page.getMediaBox().getWidth() / 72 * 25.4).isCloseTo(widthMm, within(0.01));
      assertThat(page.getMediaBox().getHeight() / 72 * 25.4).isCloseTo(heightMm, within(0.01));
      assertThat(widthMm).isGreaterThanOrEqualTo(least.labelWidthMm());
      assertThat(heightMm).isGreaterThanOrEqualTo(least.labelHeightMm());
      PrintedGeometry printed = PrintedGeometry.of(document, page);
      assertThat(printed.redSquareSidesMm()).hasSize(2);
      assertThat(printed.redSquareSidesMm())
          .allSatisfy(side -> assertThat(side).isGreaterThanOrEqualTo(least.pictogramMm()))
          .allSatisfy(
              side ->
                  assertThat(side * side)
                      .isGreaterThanOrEqualTo(Math.min(least.pictogramAreaMm2(), 16 * 16) - 1));
      assertThat(printed.smallestXHeightMm()).isGreaterThanOrEqualTo(least.xHeightMm() - 0.005);
      assertThat(printed.outsideMm()).isLessThanOrEqualTo(0.01);
      assertThat(printed.embedded()).isNotEmpty().allMatch(e -> e);
    }
  }

  /** Regulation (EC) 1272/2008 Article 17 (1) (a): name, address and telephone of who supplies. */
  @ParameterizedTest
  @CsvSource({"60,52,110", "250,74,105", "600,90,120", "3500,105,148"})
  void whoSuppliesItIsNeverCutShort(double capacityMl, double widthMm, double heightMm)
      throws IOException {
    LabelText text = label(ONE_SIGN, capacityMl, SaleGate.open(), "en");
    byte[] pdf = LabelPdf.sheets(List.of(text), LabelStock.single(widthMm, heightMm));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      String printed = new PDFTextStripper().getText(document).replaceAll("\\s", "");
      assertThat(printed)
          .contains("UndercroftLanternWorks", "1CellarSteps,Harbour")
          .contains("+000000000", "works@example.org");
    }
  }

  /**
   * Every European size class with one sign and with three, in one and in two languages, on the
   * least label of its class, made higher until it holds the text; never below the least sizes.
   */
  @ParameterizedTest
  @CsvSource({
    "60,52,74,en",
    "500,74,105,en",
    "501,74,105,en",
    "3000,105,148,en de",
    "3001,105,148,en",
    "50000,105,148,en de",
    "50001,148,210,en de",
    "500000,148,210,en",
    "500001,210,297,en de"
  })
  void everySizeClassReadsBack(double capacityMl, double widthMm, double heightMm, String codes)
      throws IOException {
    Classification three =
        classified(
            Ingredient.plain("a", 0.012, "Skin Sens. 1B"),
            Ingredient.plain("b", 0.025, "Aquatic Chronic 1"),
            Ingredient.plain("c", 0.02, "Carc. 2"),
            Ingredient.plain("wax", 0.943));
    LabelMinimum least = LabelMinimum.of(capacityMl);
    for (Classification found : List.of(ONE_SIGN, three)) {
      LabelText text = label(found, capacityMl, SaleGate.open(), codes.split(" ", -1));
      PaperLabels printer = new PaperLabels();
      double high = heightMm;
      while (printer.preview(text, widthMm, high).svg().isEmpty()) {
        high += 5;
      }
      byte[] pdf = LabelPdf.sheets(List.of(text), LabelStock.single(widthMm, high));
      try (PDDocument document = Loader.loadPDF(pdf)) {
        PrintedGeometry printed = PrintedGeometry.of(document, document.getPage(0));
        assertThat(printed.redSquareSidesMm())
            .hasSize(found.pictograms().size())
            .allSatisfy(side -> assertThat(side).isGreaterThanOrEqualTo(least.pictogramMm()));
        assertThat(printed.smallestXHeightMm()).isGreaterThanOrEqualTo(least.xHeightMm() - 0.005);
        assertThat(printed.outsideMm()).isLessThanOrEqualTo(0.01);
        assertThat(printed.embedded()).isNotEmpty().allMatch(e -> e);
      }
    }
  }

  /** Signs that had to fall below the size asked for where possible are spoken of. */
  @Test
  void signsThatFallToTheirLeastSizeAreSpokenOf() {
    LabelText text = label(TWO_SIGNS, 250, SaleGate.open(), "en");
    PaperLabels printer = new PaperLabels();
    assertThat(printer.preview(text, 90, 130).smaller()).isEmpty();
    double height = 74;
    while (printer.preview(text, 60, height).svg().isEmpty()) {
      height += 1;
    }
    assertThat(printer.preview(text, 60, height).smaller())
        .contains("10 mm", "16 mm are asked for where possible");
    assertThat(printer.preview(text, 90, 130).sizes())
        .anyMatch(s -> s.startsWith("side of a hazard sign: 16.0 mm (at least 10.0 mm"))
        .anyMatch(s -> s.startsWith("a small x: "));
  }

  /** 16 CFR 1500.121(c) from memory: on a panel of 32.7 square inches capitals of 6/64 inch. */
  @Test
  void cautionsInTheUnitedStatesAreAsHighAsTheirPanelAsks() throws IOException {
    LabelText text =
        LabelPress.text(
            new LabelRequest(
                "Bollard",
                "Rain on slate",
                TWO_SIGNS,
                200,
                new Panel.Cylinder(120, 140),
                900,
                new Maker("Undercroft Lantern Works", "1 Cellar Steps", "+00", "w@example.org"),
                "P0417-K",
                LINK,
                new BurnFacts(4.0, 5.0, 3.0, 13.0, 38.0, 52.0),
                List.of(new Language("en")),
                "us",
                ""),
            SaleGate.open());
    byte[] pdf = LabelPdf.sheets(List.of(text), LabelStock.single(90, 130));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PrintedGeometry printed = PrintedGeometry.of(document, document.getPage(0));
      double smallOfCapital = LabelFonts.shared().xHeight() / LabelFonts.shared().capHeight();
      assertThat(printed.smallestXHeightMm() / smallOfCapital)
          .isGreaterThanOrEqualTo(6 * 25.4 / 64 - 0.005);
    }
  }

  /** Directive 76/211/EEC, from memory: figures of 200 g are at least 3 mm high. */
  @Test
  void theNetContentsAreAsHighAsAskedAndInTheLowestThird() throws IOException {
    LabelText text = label(TWO_SIGNS, 250, SaleGate.open(), "en");
    byte[] pdf = LabelPdf.sheets(List.of(text), LabelStock.single(74, 105));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PrintedGeometry printed = PrintedGeometry.of(document, document.getPage(0));
      assertThat(printed.capHeightMm("200 g")).isGreaterThanOrEqualTo(3 - 0.005);
      assertThat(printed.baselineFromTopMm("200 g")).isGreaterThan(105 * 0.7);
    }
  }

  @Test
  void theCodeReadsBackFromARasterOf300DotsPerInch() throws IOException, ReaderException {
    LabelText text = label(TWO_SIGNS, 250, SaleGate.open(), "en");
    LabelStock stock = new LabelStock(210, 297, 2, 2, 10, 10, 74, 105, 4);
    byte[] pdf = LabelPdf.sheets(Collections.nCopies(5, text), stock);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(document.getNumberOfPages()).isEqualTo(2);
      BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 300);
      for (LabelStock.Spot spot : stock.spots()) {
        assertThat(decoded(cut(page, spot))).isEqualTo(LINK);
      }
    }
  }

  private static BufferedImage cut(BufferedImage page, LabelStock.Spot spot) {
    double dots = 300 / 25.4;
    return page.getSubimage(
        (int) (spot.xMm() * dots),
        (int) (spot.yMm() * dots),
        (int) (74 * dots),
        (int) (105 * dots));
  }

  private static String decoded(BufferedImage image) throws ReaderException {
    int[] pixels =
        image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    LuminanceSource source = new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels);
    return new QRCodeReader()
        .decode(
            new BinaryBitmap(new HybridBinarizer(source)),
            Map.of(DecodeHintType.TRY_HARDER, Boolean.TRUE))
        .getText();
  }

  @Test
  void aClosedGatePrintsTestNotForSaleAndNothingElseToSellWith() throws IOException {
    SaleGate held =
        new SaleGate(List.of(), List.of("never burn-tested"), List.of(), List.of(), List.of());
    LabelText text = label(TWO_SIGNS, 250, held, "en", "de");
    byte[] pdf = LabelPdf.sheets(List.of(text), LabelStock.single(105, 148));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(new org.apache.pdfbox.text.PDFTextStripper().getText(document))
          .contains("TEST, NOT FOR SALE");
    }
  }

  @Test
  void aLabelThatIsTooSmallSaysHowHighItWouldHaveToBe() {
    LabelText text = label(TWO_SIGNS, 250, SaleGate.open(), "en", "de", "fr", "es");
    assertThatThrownBy(() -> LabelPdf.sheets(List.of(text), LabelStock.single(52, 74)))
        .isInstanceOf(LabelTooSmall.class)
        .hasMessageContaining("needs")
        .hasMessageContaining("fewer languages");
  }

  @Test
  void svgAndPngShowTheSameLabelTrueToSize() throws IOException {
    LabelText text = label(TWO_SIGNS, 250, SaleGate.open(), "en");
    String svg = LabelSvg.of(text, 74, 105);
    assertThat(svg)
        .startsWith("<svg")
        .contains("width=\"74.0mm\"", "Rain on slate")
        .endsWith("</svg>");
    byte[] png = LabelPng.of(text, 74, 105, 300);
    BufferedImage image = javax.imageio.ImageIO.read(new java.io.ByteArrayInputStream(png));
    assertThat(image.getWidth()).isCloseTo((int) Math.round(74 / 25.4 * 300), within(1));
    String keep = System.getProperty("pourwright.keep");
    if (keep != null) {
      Files.write(Path.of(keep, "label.png"), png);
      Files.write(
          Path.of(keep, "label-test.png"),
          LabelPng.of(
              label(
                  classified(
                      Ingredient.plain("a", 0.1, "Skin Corr. 1B"),
                      Ingredient.plain("b", 0.1, "Carc. 2", "Flam. Liq. 3"),
                      Ingredient.plain("c", 0.3, "Acute Tox. 3 (oral)"),
                      Ingredient.plain("w", 0.5)),
                  4000,
                  SaleGate.open(),
                  "en",
                  "de"),
              148,
              210,
              150));
    }
  }
}
