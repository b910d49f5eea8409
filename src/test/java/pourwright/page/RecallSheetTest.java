package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.work.AdvancePieces;
import pourwright.work.Customer;
import pourwright.work.Recall;
import pourwright.work.Studio;

/** A scent lot turns out bad after candles of it were sold. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RecallSheetTest extends BrowserTest {
  private Workshop workshop;
  private Studio studio;
  private Server server;
  private String base;
  private long lot;
  private List<Piece> made;
  private Piece burnt;

  @BeforeAll
  void twoPoursOfWhichOneHasTheLot(@TempDir Path folder) {
    workshop = new Workshop(folder);
    studio = workshop.desk.studio();
    server = TestStudio.open(workshop.desk, folder);
    base = "http://127.0.0.1:" + server.port();
    lot = workshop.lot("scent-rain");
    List<Piece> vessels = workshop.vessels("bollard", 5);
    made = pour(vessels.subList(0, 3), true);
    pour(vessels.subList(3, 5), false);
    burnt = workshop.prove("bollard-rain", "soft-a", "scent-rain", 30);
    OrderLine line = new OrderLine("=A-7", "bollard-rain", 1, 2, null, null);
    studio.customers.put(workshop.act(), Customer.named("c7", "Ada Quay"));
    studio.orders.take(
        workshop.act(), new Order("=A-7", "shop", "c7", OrderState.OPEN, List.of(line)));
    long id = studio.look(b -> b.orders().lineIds("=A-7").get(line.key()));
    List<Long> two = made.subList(0, 2).stream().map(Piece::id).toList();
    studio.advancePieces.run(
        workshop.act(), new AdvancePieces.Request(two, PieceStep.PICKED, null, id));
    studio.advancePieces.run(
        workshop.act(), AdvancePieces.Request.of(two.subList(0, 1), PieceStep.SOLD));
  }

  private List<Piece> pour(List<Piece> vessels, boolean withLot) {
    return workshop.candles("bollard-rain", "soft-a", vessels, "scent-rain", withLot ? 30 : 0);
  }

  @AfterAll
  void close() {
    server.close();
  }

  @Test
  void everyPieceOfTheLotAndNoOtherIsCalledBackWithItsBuyer() {
    Recall recall = studio.look(b -> Recall.ofLot(b, lot)).orElseThrow();
    assertThat(recall.rows())
        .extracting(Recall.Row::piece)
        .containsExactlyInAnyOrderElementsOf(
            Stream.concat(made.stream(), Stream.of(burnt)).map(Piece::id).toList());
    assertThat(recall.batches()).isEqualTo(2);
    assertThat(recall.out()).isEqualTo(1);
    Recall.Row sold = recall.rows().get(0);
    assertThat(sold.piece()).isEqualTo(made.get(0).id());
    assertThat(List.of(sold.order(), sold.customerRef(), sold.customer(), sold.stands()))
        .containsExactly("=A-7", "c7", "Ada Quay", "sold");
    assertThat(recall.rows().stream().filter(r -> r.stands().equals("picked"))).hasSize(1);
  }

  @Test
  void theBuyerIsErasedAndTheRestOfTheSheetStays() {
    Recall before = studio.look(b -> Recall.ofLot(b, lot)).orElseThrow();
    long erased = studio.customers.erase(workshop.act(), "c7").deed().id();
    Recall after = studio.look(b -> Recall.ofLot(b, lot)).orElseThrow();
    assertThat(after.rows()).extracting(Recall.Row::customer).containsOnly("");
    assertThat(after.rows())
        .extracting(Recall.Row::mark, Recall.Row::order, Recall.Row::customerRef)
        .containsExactlyElementsOf(
            before.rows().stream()
                .map(r -> org.assertj.core.groups.Tuple.tuple(r.mark(), r.order(), r.customerRef()))
                .toList());
    assertThat(erased).isPositive();
    studio.customers.put(workshop.act(), Customer.named("c7", "Ada Quay"));
  }

  @Test
  void itIsAPageATableAndASheetToPrint() throws IOException {
    Page page = visit(base, "/stockroom/lot/" + lot, Window.PHONE);
    page.getByText("Who has what it is in").click();
    page.waitForLoadState();
    assertThat(page.locator("main").innerText())
        .contains("4 pieces from 2 batches; 1 of them left the studio.")
        .contains(made.get(0).mark().text());
    assertThat(axe(page)).isEmpty();
    assertThat(((Number) page.evaluate("document.documentElement.scrollWidth")).intValue())
        .isLessThanOrEqualTo(390);
    String csv = new Visitor(server.port()).get("/stockroom/lot/" + lot + "/recall.csv").body();
    assertThat(csv.lines()).hasSize(5);
    assertThat(csv).contains(",'=A-7,shop,c7,");
    byte[] pdf =
        URI.create(base + "/stockroom/lot/" + lot + "/recall.pdf")
            .toURL()
            .openStream()
            .readAllBytes();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      String text = new PDFTextStripper().getText(document);
      assertThat(text).contains("Recall sheet", "scent-rain, lot LOT-scent-rain");
      made.forEach(p -> assertThat(text).contains(p.mark().text()));
    }
    assertThat(new Visitor(server.port()).get("/stockroom/lot/999/recall").statusCode())
        .isEqualTo(404);
  }
}
