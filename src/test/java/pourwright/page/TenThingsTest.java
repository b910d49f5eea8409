package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Piece;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.stock.Shelf;
import pourwright.work.BeginPour;
import pourwright.work.PieceBook;
import pourwright.work.Signed;
import pourwright.work.Subject;

/**
 * Ten things from a phone that slept, each in ten seconds and three taps: 400 ms a tap and 120 ms a
 * digit, the pace of the issue's own figures, on a page that the browser froze and took up again.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TenThingsTest extends BrowserTest {
  private static final LocatorAssertions.ContainsTextOptions PATIENT =
      new LocatorAssertions.ContainsTextOptions().setTimeout(20_000);

  private Workshop workshop;
  private List<Piece> vessels;
  private Server server;
  private String base;

  @BeforeAll
  void openTheStudio(@TempDir Path folder) {
    workshop = new Workshop(folder);
    vessels = workshop.vessels("bollard", 2);
    server =
        TestStudio.open(
            TestStudio.promising(workshop.desk), ServerSettings.onAnyPort("Test studio"), folder);
    base = "http://127.0.0.1:" + server.port();
  }

  @AfterAll
  void closeTheStudio() {
    server.close();
  }

  @AfterEach
  void nothingWasComplainedAbout() {
    assertThat(complaints).isEmpty();
  }

  /** A phone whose hand is known, on this page. */
  private Page phone(String path) {
    Page page = visit(base, "/settings", Window.PHONE);
    page.fill("#hand", "MB");
    page.locator("main form[action='/settings/hand'] button").first().click();
    page.navigate(base + path);
    return page;
  }

  private static void says(Page page, String selector, String text) {
    PlaywrightAssertions.assertThat(page.locator(selector).first()).containsText(text, PATIENT);
  }

  private static void quick(Thumb thumb) {
    assertThat(thumb.taps()).isLessThanOrEqualTo(3);
    assertThat(thumb.milliseconds()).isLessThanOrEqualTo(10_000);
  }

  /** A cast that has just begun. */
  private Page cast() {
    Page page =
        phone("/casting/sheet?mix=grey&vessel1=bollard&count1=2&water_c=20&room_c=20&step=1");
    page.locator("text=Begin this cast").click();
    page.waitForSelector("#step");
    return page;
  }

  /** The page of a cast whose steps are done up to the one that says this. */
  private Page castAt(String sentence) {
    Page page = cast();
    for (int i = 0; i < 20 && !standing(page).contains(sentence); i++) {
      next(page);
    }
    assertThat(standing(page)).contains(sentence);
    return page;
  }

  /** What the step, or the demolding, asks for. */
  private static String standing(Page page) {
    return page.locator("section:has(#step), section:has(#demold)").first().innerText();
  }

  private static void next(Page page) {
    String key = page.locator("form[action$='/step'] input[name=key]").inputValue();
    page.locator("form[action$='/step'] .primary").click();
    PlaywrightAssertions.assertThat(page.locator("input[name=key][value='" + key + "']"))
        .hasCount(0, new LocatorAssertions.HasCountOptions().setTimeout(20_000));
  }

  @Test
  void whatNow() {
    OrderLine line =
        new OrderLine("T-1", "bollard-rain", 1, 2, workshop.desk.today().plusDays(70), null);
    workshop
        .desk
        .studio()
        .orders
        .take(workshop.act(), new Order("T-1", "shop", null, OrderState.OPEN, List.of(line)));
    Page page = phone("/");
    Thumb thumb = Thumb.on(page);
    says(page, "section:has(#next) dl", "");
    assertThat(page.locator("section:has(#next) dd").first().innerText()).isNotBlank();
    assertThat(thumb.taps()).isZero();
  }

  @Test
  void itIsInAsPlanned() {
    Page page = cast();
    String before = page.locator("#step").innerText();
    Thumb thumb = Thumb.on(page).tap("form[action$='/step'] .primary");
    page.waitForFunction("s => document.querySelector('#step').innerText !== s", before);
    assertThat(thumb.taps()).isEqualTo(1);
    quick(thumb);
  }

  @Test
  void theThermometerReadingTellsTheTimeLeft() {
    long pour =
        workshop
            .desk
            .studio()
            .beginPour
            .run(workshop.act(), new BeginPour.Request("bollard-rain", 2, 0))
            .made()
            .id();
    Page page = phone("/pouring/" + pour);
    for (int i = 0; i < 10 && page.locator("#wax_c").count() == 0; i++) {
      next(page);
    }
    page.fill("#wax_c", "85");
    page.fill("#room_c", "21");
    page.locator("form[action$='/reading'] button").click();
    workshop.clock.move(Duration.ofMinutes(4));
    page.reload();
    Thumb thumb =
        Thumb.on(page)
            .tap("#wax_c")
            .digits("80.1")
            .tap(".pad .primary")
            .tap("form[action$='/reading'] button");
    says(page, "#reached-range", "95 %");
    assertThat(page.locator("#reached").innerText()).isNotBlank();
    quick(thumb);
  }

  @Test
  void aTimerIsAnsweredByOneTapAndSetByThree() {
    Subject studio = new Subject(Subject.Kind.STUDIO, "studio");
    workshop.desk.studio().timers.start(workshop.act(), "Ring", studio, Duration.ofMinutes(1));
    workshop.clock.move(Duration.ofMinutes(2));
    Page page = phone("/casting");
    Thumb answering = Thumb.on(page).tap(".bell-rings button");
    says(page, ".said", "Answered");
    assertThat(answering.taps()).isEqualTo(1);
    page.navigate(base + "/timers");
    Thumb setting =
        Thumb.on(page)
            .tap("#label")
            .type("coat 2")
            .tap("#minutes")
            .type("45")
            .tap("form[action='/timers'] button");
    says(page, ".bell-name", "coat 2");
    quick(setting);
  }

  @Test
  void theWaterThatReallyWentIn() {
    Page page = castAt("first water");
    Locator water = page.locator("form[action$='/step'] p:has(.figure) + .field input").first();
    String field = water.getAttribute("name");
    Thumb thumb =
        Thumb.on(page).tap(water).digits("252").tap(".pad .primary").tap(".actions .primary");
    page.waitForFunction("n => !document.getElementsByName(n).length", field);
    page.reload();
    assertThat(page.locator("main").textContent()).contains("252");
    quick(thumb);
  }

  @Test
  void demoldedGoodByOneTapEarlyByTwoLateWithADefectByThree() {
    Page page = castAt("Flex the mold");
    Thumb good = Thumb.on(page).tap("form[action$='/demold'] .primary");
    says(page, ".said", "2 green vessels");
    assertThat(good.taps()).isEqualTo(1);
    page = castAt("Flex the mold");
    Thumb early = Thumb.on(page).tap("input[value=early]").tap("form[action$='/demold'] .primary");
    says(page, ".said", "2 green vessels");
    quick(early);
    page = castAt("Flex the mold");
    Thumb late =
        Thumb.on(page)
            .tap("input[value=late]")
            .tap(".chips input")
            .tap("form[action$='/demold'] .primary");
    says(page, ".said", "2 green vessels");
    quick(late);
  }

  @Test
  void aPieceIsFoundByItsMark() {
    String mark = vessels.get(0).mark().text();
    Page page = phone("/orders");
    Thumb thumb = Thumb.on(page).tap("#find-mark").type(mark).tap(".find button");
    says(page, "h1", mark);
    quick(thumb);
  }

  @Test
  void aBurnReading() {
    Page page = phone("/shelf/new?candle=bollard-rain");
    page.fill("#purpose", "first");
    page.fill("#samples", "A");
    page.locator("main form button").click();
    for (String box : List.of("tray", "extinguisher", "alarm", "trimmed", "stays")) {
      page.locator("main form:has-text('Light A') input[name=" + box + "]").check();
    }
    page.locator("main form:has-text('Light A') input[name^=stays-]").fill("MB");
    page.locator("main form:has-text('Light A') input[name^=mass-]").fill("420");
    page.locator("main form:has-text('Light A') button").click();
    says(page, "h1", "cycle");
    Thumb thumb =
        Thumb.on(page)
            .tap("#flame_height_mm")
            .digits("28")
            .tap(".pad .primary")
            .tap("form[action$='/look'] .primary");
    says(page, ".said", "Recorded");
    quick(thumb);
  }

  @Test
  void aTubOnTheScaleTellsWhatIsLeftAndWhatItIsEnoughFor() {
    Shelf wax =
        workshop
            .desk
            .studio()
            .look(books -> books.lots().shelves("soft-wax-a").stream().findFirst().orElseThrow());
    Page page = phone("/stockroom/lot/" + wax.lot().id());
    Thumb thumb =
        Thumb.on(page)
            .tap("#found")
            .digits("1850")
            .tap(".pad .primary")
            .tap("form[action$='/count'] .primary");
    says(page, ".said", "1.85 kg");
    says(page, ".said", "enough for about");
    quick(thumb);
  }

  @Test
  void whenCanIHaveIt() {
    Page page = phone("/orders");
    Thumb thumb =
        Thumb.on(page)
            .choose("#candle", "bollard-rain")
            .tap("form[action='/plan/promise'] .primary");
    says(page, "#answer", "No date can be promised before it is proved for sale.");
    says(page, "#making", "20");
    quick(thumb);
    workshop.vessels("bollard", 1);
    Signed.forSale(workshop.desk.studio(), "bollard-rain");
    page.navigate(base + "/orders");
    Thumb proved =
        Thumb.on(page)
            .choose("#candle", "bollard-rain")
            .tap("form[action='/plan/promise'] .primary");
    says(page, "#answer", "20");
    quick(proved);
  }

  @Test
  void stopAndHoldAreOneTapAndOneConfirm() {
    workshop
        .desk
        .studio()
        .beginPour
        .run(workshop.act(), new BeginPour.Request("bollard-rain", 1, 0))
        .made();
    Page page = phone("/orders");
    Thumb stop = Thumb.on(page).tap("a.stop").tap("form[action='/stop'] .primary");
    says(page, ".said", "");
    assertThat(stop.taps()).isEqualTo(2);
    long piece =
        workshop
            .desk
            .studio()
            .look(b -> b.pieces().list(PieceBook.Which.ALL, null, 1).items().get(0).id());
    page.navigate(base + "/piece/" + piece);
    Thumb hold = Thumb.on(page).tap("main form[action='/hold'] .danger");
    says(page, "main", "hold");
    assertThat(page.url()).matches(".*/(hold|piece)/\\d+");
    quick(hold);
  }
}
