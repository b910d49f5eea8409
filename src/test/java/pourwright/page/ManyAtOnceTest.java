package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Grade;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.batch.RecordedStep;
import pourwright.stock.Amount;
import pourwright.work.BeginPour;
import pourwright.work.FinishCast;
import pourwright.work.PieceBook;

/** Many at once at the pace of a thumb: 400 ms a tap, 120 ms a digit; taps are counted. */
class ManyAtOnceTest extends BrowserTest {
  private Workshop workshop;
  private Server server;
  private String base;

  @BeforeEach
  void open(@TempDir Path folder) {
    workshop = new Workshop(folder);
    server = TestStudio.open(workshop.desk, folder);
    base = "http://127.0.0.1:" + server.port();
  }

  @AfterEach
  void close() {
    closeWindows();
    server.close();
    assertThat(complaints).isEmpty();
  }

  private Page phone(String path) {
    Page page = visit(base, "/settings", Window.PHONE);
    page.fill("#hand", "MB");
    page.locator("main form[action='/settings/hand'] button").first().click();
    page.navigate(base + path);
    return page;
  }

  private List<Piece> standing(String state) {
    return workshop
        .desk
        .studio()
        .look(b -> b.pieces().list(new PieceBook.Which(null, state), null, 100).items());
  }

  @Test
  @DisplayName("24 vessels recorded with two exceptions in under 40 s of taps")
  void twentyFourVesselsAllAsPlannedExceptTwo() {
    green(24);
    Page page = phone("/casting/pieces/Green");
    assertThat(page.locator("input[name=piece]:checked").count()).isEqualTo(24);
    Thumb thumb = Thumb.on(page);
    String second = page.locator("input[name=piece]").nth(3).getAttribute("value");
    String fell = page.locator("input[name=piece]").nth(17).getAttribute("value");
    thumb.tap("label:has(input[value='" + second + "'])");
    thumb.tap("label:has(input[value='" + fell + "'])");
    thumb.tap("button[name=step][value=HARDENED]");
    page.waitForSelector(".said-done");
    assertThat(page.locator("input[name=piece]").count()).isEqualTo(2);
    thumb.tap("label:has(input[value='" + second + "'])");
    thumb.tap("details summary:has-text('Not as it should be')");
    thumb.tap("button[name=mistake][value=dropped]");
    page.waitForSelector(".said-warning");
    thumb.tap("details summary:has-text('Not as it should be')");
    thumb.tap("label:has(input[name=why])");
    thumb.tap("button[name=grade][value=second]");
    page.waitForSelector(".said-done");
    assertThat(standing("Hardened")).hasSize(22);
    assertThat(standing("Green"))
        .singleElement()
        .satisfies(p -> assertThat(p.grade()).isEqualTo(Grade.SECOND));
    Piece gone =
        workshop.desk.studio().look(b -> b.pieces().piece(Long.parseLong(fell)).orElseThrow());
    assertThat(gone.state()).isInstanceOf(PieceState.Gone.class);
    assertThat(thumb.taps()).isLessThanOrEqualTo(9);
    assertThat(thumb.milliseconds()).isLessThan(40_000);
  }

  private void green(int count) {
    BatchPlan plan =
        new BatchPlan(
            BatchKind.CAST,
            "grey",
            1,
            List.of(new BatchPlan.Makes("bollard", 1, count, "bollard-mold")),
            List.of(),
            null);
    long cast = workshop.desk.studio().startCast.run(workshop.act(), plan).made().id();
    workshop
        .desk
        .studio()
        .finishCast
        .run(
            workshop.act(),
            new FinishCast.Request(cast, List.of(new FinishCast.Demolded("bollard", count)), null))
        .made();
  }

  @Test
  @DisplayName("yesterday's paper sheet entered in under 60 s of taps, in the sheet's own order")
  void yesterdaysSheetIsEnteredInItsOwnOrder() {
    Batch pour =
        workshop
            .desk
            .studio()
            .beginPour
            .run(workshop.act(), new BeginPour.Request("bollard-rain", 6, 0))
            .made();
    List<String> order = pour.plan().steps().stream().map(s -> s.key()).toList();
    var paper = new Visitor(server.port()).get("/sheet/" + pour.id() + "/print");
    assertThat(paper.statusCode()).isEqualTo(200);
    assertThat(paper.body()).startsWith("%PDF");
    Instant begun = workshop.clock.instant();
    workshop.clock.move(Duration.ofHours(20));
    Page page = phone("/pouring/" + pour.id());
    Thumb thumb = Thumb.on(page).tap("a:has-text('On paper')");
    page.waitForSelector("#day");
    assertThat(page.locator("fieldset.sheet-line input[type=checkbox]").all())
        .extracting(b -> b.getAttribute("name").substring(4))
        .containsExactlyElementsOf(order);
    int minute = 10;
    for (String key : order) {
      thumb
          .tap("#time-" + key)
          .digits(String.format(java.util.Locale.ROOT, "%02d%02d", 9 + minute / 60, minute % 60))
          .tap(".pad .primary");
      minute += 12;
    }
    thumb.tap("#amount-scent-scent-rain").digits("171").tap(".pad .primary");
    thumb.tap("#c-melt").digits("86").tap(".pad .primary");
    thumb.tap("#c-pour").digits("57").tap(".pad .primary");
    thumb.tap("form .actions .primary");
    page.waitForSelector(".said");
    assertThat(page.locator(".said").first().innerText())
        .contains(order.size() + " lines of the sheet are recorded");
    List<RecordedStep> done = workshop.desk.studio().look(b -> b.batches().steps(pour.id()));
    assertThat(done).extracting(RecordedStep::key).containsExactlyElementsOf(order);
    assertThat(done).extracting(RecordedStep::at).isSorted();
    assertThat(done.get(0).at()).isEqualTo(begun.plus(Duration.ofMinutes(10)));
    assertThat(done.stream().filter(s -> s.key().equals("scent")).toList())
        .singleElement()
        .satisfies(s -> assertThat(s.used().get(0).amount()).isEqualTo(Amount.ofGrams(171)));
    assertThat(thumb.taps()).isLessThanOrEqualTo(3 * order.size() + 11);
    assertThat(thumb.milliseconds()).isLessThan(60_000);
    page.locator("form.undo button").click();
    page.waitForSelector(".said");
    assertThat(workshop.desk.studio().<List<RecordedStep>>look(b -> b.batches().steps(pour.id())))
        .isEmpty();
  }
}
