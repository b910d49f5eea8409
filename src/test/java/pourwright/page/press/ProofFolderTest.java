package pourwright.page.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.HexFormat;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Piece;
import pourwright.label.LabelPress;
import pourwright.label.LabelRequest;
import pourwright.label.LabelText;
import pourwright.label.Language;
import pourwright.label.Maker;
import pourwright.label.Panel;
import pourwright.work.Attachment;
import pourwright.work.BurnTest;
import pourwright.work.CandleLabel;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.FolderPrinter;
import pourwright.work.FolderReader;
import pourwright.work.IssueFolder;
import pourwright.work.IssuedFolder;
import pourwright.work.LabelReader;
import pourwright.work.Outcome;
import pourwright.work.ProofFolder;
import pourwright.work.Subject;

/** A proof folder is issued once and for all; what has changed since asks for a new version. */
class ProofFolderTest {
  private PressStudio press;
  private List<Piece> candles;

  @BeforeEach
  void aCandle(@TempDir Path folder) {
    press = new PressStudio(folder);
    press.sheets("2026-01", PressStudio.OIL);
    candles = press.candles(4);
  }

  private BurnTest prove() {
    BurnTest test = press.prove(candles.subList(0, 3), 3, 4);
    press.clock.move(Duration.ofDays(1));
    return test;
  }

  private IssueFolder.Request request(String risks) {
    IssuedFolder.Label set =
        new IssuedFolder.Label(
            74,
            105,
            "eu",
            List.of("en"),
            "tag",
            "C23S-PQ2V-AMH9-VVRF",
            candles.get(3).mark().text());
    return press.studio.look(
        books -> {
          CandleLabel label =
              new LabelReader(books)
                  .candle(press.candle.code(), candles.get(3).mark())
                  .orElseThrow();
          LabelRequest request =
              new LabelRequest(
                  label.candle().design().name(),
                  "Rain on slate",
                  label.classification(),
                  label.candle().netG().low(),
                  new Panel.Cylinder(80, 90),
                  250,
                  new Maker("Undercroft Lantern Works", "1 Cellar Steps", "+00", "w@example.org"),
                  set.mark(),
                  "http://studio.example/m",
                  label.burn(),
                  List.of(Language.ENGLISH),
                  "eu",
                  set.ufi());
          LabelText text = LabelPress.text(request, label.gate());
          ProofFolder folder =
              new FolderReader(books, ZoneOffset.UTC).folder(label, request, text, set, risks);
          return new IssueFolder.Request(folder, text, set, risks);
        });
  }

  private Outcome<CardVersion<IssuedFolder>> issue(String risks) {
    return press.studio.issueFolder.run(press.act(), request(risks), FolderPrinter.ofTheHouse());
  }

  private List<CardVersion<IssuedFolder>> issued() {
    return press.studio.look(b -> b.cards().history(Drawers.FOLDER, press.candle.code()));
  }

  private byte[] file(IssuedFolder issued) throws IOException {
    try (InputStream in = press.studio.files().open(issued.sha256()).orElseThrow()) {
      return in.readAllBytes();
    }
  }

  private static String sha256(byte[] bytes) throws NoSuchAlgorithmException {
    return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
  }

  @Test
  void anIssuedFolderStaysByteForByteAndAChangeAsksForANewVersion()
      throws IOException, NoSuchAlgorithmException {
    BurnTest test = prove();
    CardVersion<IssuedFolder> first = issue("Tips at 30 degrees.").made();
    assertThat(first.version()).isEqualTo(1);
    byte[] before = file(first.body());
    assertThat(first.body().changes(request("Tips at 30 degrees.").folder().lines())).isEmpty();
    press.clock.move(Duration.ofDays(30));
    assertThat(issue("Tips at 30 degrees."))
        .isInstanceOfSatisfying(
            Outcome.Refused.class,
            r -> assertThat(r.sentence()).isEqualTo("nothing has changed since version 1"));
    press.reading(Subject.of(Subject.Kind.BURN_TEST, test.id()), "trim_mm", 6);
    List<String> changes = first.body().changes(request("Tips at 30 degrees.").folder().lines());
    assertThat(changes).anyMatch(c -> c.contains("Wick trimmed before each cycle to 6.0 mm"));
    CardVersion<IssuedFolder> second = issue("Tips at 30 degrees.").made();
    assertThat(second.version()).isEqualTo(2);
    assertThat(second.body().sha256()).isNotEqualTo(first.body().sha256());
    assertThat(file(first.body())).isEqualTo(before);
    assertThat(sha256(file(first.body()))).isEqualTo(first.body().sha256());
    List<Attachment> kept =
        press.studio.look(
            b -> b.attachments().of(Subject.card(Drawers.CANDLE, press.candle.code())));
    assertThat(kept)
        .extracting(Attachment::sha256)
        .containsExactly(first.body().sha256(), second.body().sha256());
  }

  @Test
  void aNewSheetAsksForANewVersionAndOtherRiskNotesToo() {
    prove();
    IssuedFolder first = issue("none").made().body();
    assertThat(first.changes(request("A child can reach it.").folder().lines()))
        .contains("now: Risk notes: A child can reach it.", "then: Risk notes: none");
    press.sheets("2026-09", PressStudio.OIL);
    assertThat(first.changes(request("none").folder().lines()))
        .anyMatch(c -> c.startsWith("now: ") && c.contains("2026-09"))
        .anyMatch(c -> c.startsWith("then: ") && c.contains("2026-01"));
    assertThat(issue("none").made().version()).isEqualTo(2);
  }

  @Test
  void aCandleThatIsNotProvedGetsNoFolder() {
    assertThat(issue("none"))
        .isInstanceOfSatisfying(
            Outcome.Refused.class,
            r -> assertThat(r.sentence()).contains("no word stands behind version 1"));
    assertThat(issued()).isEmpty();
  }

  @Test
  void theSameTapTwiceIssuesOnce() {
    prove();
    var act = press.act();
    var first = press.studio.issueFolder.run(act, request("none"), FolderPrinter.ofTheHouse());
    var again = press.studio.issueFolder.run(act, request("none"), FolderPrinter.ofTheHouse());
    assertThat(again.made()).isEqualTo(first.made());
    assertThat(issued()).hasSize(1);
  }

  @Test
  void everythingTheCandleIsProvedByStandsInTheFile() throws IOException {
    prove();
    IssuedFolder issued = issue("Tips at 30 degrees.").made().body();
    byte[] pdf = file(issued);
    String keep = System.getProperty("pourwright.keep");
    if (keep != null) {
      java.nio.file.Files.write(Path.of(keep, "folder.pdf"), pdf);
    }
    try (PDDocument document = Loader.loadPDF(pdf)) {
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      assertThat(text)
          .contains("version 1", "Cards and versions", "Mix card", "Pour card", "Lots")
          .contains("Skin Sens. 1", "Table 3.4.5", "Linalool", "sheet 2026-01")
          .contains("Verdict: pass", "Proved for sale by MB", "My rule, my name.")
          .contains("W-2", "Readings of burn test 1")
          .contains("Tips at 30 degrees.", "The label, true to size", "UFI: C23S-PQ2V-AMH9-VVRF")
          .doesNotContain("TEST, NOT FOR SALE")
          .doesNotContainIgnoringCase("compliant");
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
        }
      }
    }
  }
}
