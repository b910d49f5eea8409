package pourwright.page.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pourwright.card.CandleDesign;
import pourwright.card.WickPlan;
import pourwright.page.BrowserTest;
import pourwright.page.Desk;
import pourwright.page.Server;
import pourwright.page.TestStudio;
import pourwright.work.Act;
import pourwright.work.Drawers;
import pourwright.work.SaveCard;

/** The test shelf in a real browser, by a clock that the test turns. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ShelfBrowserTest extends BrowserTest {

  /** A clock that stands until it is turned. */
  private static final class HandClock extends Clock {
    private volatile Instant now = Instant.parse("2026-03-02T08:00:00Z");

    void turn(Duration by) {
      now = now.plus(by);
    }

    @Override
    public Instant instant() {
      return now;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }
  }

  private HandClock clock = new HandClock();
  private final List<Server> servers = new ArrayList<>();
  private String base;

  @BeforeEach
  void openTheStudio(@TempDir Path folder) {
    clock = new HandClock();
    complaints.clear();
    Desk desk = TestStudio.desk(folder, clock);
    CandleDesign bollard =
        new CandleDesign(
            "bollard-rain",
            "Bollard, Rain on slate",
            "bollard",
            "grey",
            "wax",
            "soft-a",
            new WickPlan("flat-48", 1, 100, null, null, List.of()),
            12,
            null,
            1,
            List.of(),
            null);
    desk.studio()
        .saveCard
        .run(Act.of("mo", "k"), SaveCard.Request.of(Drawers.CANDLE, "bollard-rain", 0, bollard));
    Server server = TestStudio.open(desk, folder);
    servers.add(server);
    base = "http://127.0.0.1:" + server.port();
  }

  /** After the windows, which keep a stream open. */
  @AfterAll
  void closeTheStudios() {
    servers.forEach(Server::close);
  }

  /** The device asks once who works here. */
  private static void sign(com.microsoft.playwright.Locator initials) {
    if (initials.count() > 0) {
      initials.first().fill("mo");
    }
  }

  private static LocatorAssertions that(Page page, String selector) {
    return PlaywrightAssertions.assertThat(page.locator(selector).first());
  }

  private Page begin(String rules) {
    Page page = visit(base, "/shelf", Window.PHONE);
    page.locator("a[href='/shelf/new']").click();
    page.locator("#rules").selectOption(rules);
    page.locator("#purpose").fill("first test of the 4.8 g/h wick");
    page.locator("#samples").fill("A\nB");
    page.locator("#by").fill("mo");
    page.locator("main form button").click();
    that(page, "h1").containsText("Test 1: bollard-rain");
    return page;
  }

  private void light(Page page, String sample) {
    light(page, sample, "USUAL", "400");
  }

  private void light(Page page, String sample, String kind, String mass) {
    page.navigate(base + "/shelf/test/1");
    com.microsoft.playwright.Locator form =
        page.locator("form", new Page.LocatorOptions().setHasText("Light " + sample));
    for (String box : List.of("tray", "extinguisher", "alarm", "trimmed", "stays")) {
      form.locator("input[name=" + box + "]").check();
    }
    form.locator("select").selectOption(kind);
    form.locator("input[name^=stays-]").fill("Mo");
    form.locator("input[name^=mass-]").fill(mass);
    if (form.locator("input[name^=base-]").count() > 0) {
      form.locator("input[name^=base-]").fill("22.5");
      form.locator("input[name^=room-]").fill("21");
    }
    sign(form.locator("input[name=by]"));
    form.locator("button").click();
    that(page, "h1").containsText(sample + ", cycle");
  }

  private static void read(Page page, String minute, String flame, String mass) {
    page.locator("#minute").fill(minute);
    page.locator("#flame_height_mm").fill(flame);
    page.locator("#mass_g").fill(mass);
    sign(page.locator("main form[action$='/look'] input[name=by]"));
    page.locator("main form[action$='/look'] button").click();
    that(page, ".said").containsText("Recorded");
  }

  private static void putOut(Page page, String how) {
    page.locator("#how").selectOption(how);
    sign(page.locator("main form[action$='/out'] input[name=by]"));
    page.locator("main form[action$='/out'] button").click();
    that(page, ".said").containsText("Out.");
  }

  @Test
  void aTestOfThreeCyclesOnTwoSamplesIsRecordedJudgedAndSigned() {
    Page page = begin("astm-f2417");
    for (int cycle = 1; cycle <= 3; cycle++) {
      List<String> burning = new ArrayList<>();
      for (String sample : List.of("A", "B")) {
        light(page, sample, "USUAL", String.valueOf(420 - 20 * cycle));
        burning.add(page.url());
        read(page, "0", "20", String.valueOf(420 - 20 * cycle));
      }
      assertThat(page.locator("a.stop").isVisible()).isTrue();
      clock.turn(Duration.ofHours(4));
      for (String url : burning) {
        page.navigate(url);
        that(page, ".figure").containsText("240");
        read(page, "", "38", String.valueOf(400 - 20 * cycle));
        putOut(page, cycle == 3 ? "stop_depth" : "end of its cycle");
      }
      clock.turn(Duration.ofHours(cycle == 3 ? 1 : 5));
    }
    page.navigate(base + "/shelf/test/1");
    that(page, "#verdict").containsText("pass");
    that(page, "main").containsText("2 of 2 passed: up to 78 % of such candles could still fail");
    that(page, "main").containsText("5.00 g/h");
    assertThat(page.locator("figure.drawing svg").count()).isEqualTo(2);
    sign(page.locator("main form[action$='/close'] input[name=by]"));
    page.locator("main form[action$='/close'] button").click();
    that(page, ".said").containsText("Closed: pass.");
    that(page, "main").containsText("Still missing before it may be proved");
    that(page, "main").containsText("the vessel is not proved wax-tight yet");
    that(page, "main").containsText("2 of 3 passed full lives");
    that(page, "main").containsText("0 of 2 casts");
    assertThat(page.locator("input[value=proved]").count()).isZero();
    page.locator("input[value=withdrawn]").check();
    page.locator("#why").fill("two lives are not enough");
    sign(page.locator("main form[action$='/word'] input[name=by]"));
    page.locator("main form[action$='/word'] button").click();
    page.navigate(base + "/shelf");
    that(page, "main").containsText("withdrawn");
    page.locator("a[href='/shelf/rule']").click();
    page.locator("#lives").fill("4");
    sign(page.locator("main form input[name=by]"));
    page.locator("main form button").click();
    that(page, ".said").containsText("Your rule of proof is set.");
    page.navigate(base + "/shelf/rule");
    assertThat(page.locator("#lives").inputValue()).isEqualTo("4");
    assertThat(axe(page)).isEmpty();
    page.navigate(base + "/shelf");
    assertThat(axe(page)).isEmpty();
    page.navigate(base + "/shelf/test/1");
    assertThat(axe(page)).isEmpty();
    assertThat(complaints).isEmpty();
  }

  @Test
  void nothingIsLitBeforeEveryLineIsTrueAndAHighFlameIsCalledOut() {
    Page page = begin("house");
    page.locator("#stays-1").fill("Ada");
    page.locator("#kind-1").selectOption("ONE_HOUR");
    page.locator("main form[action$='/light/1'] button").click();
    that(page, ".said-refused").containsText("Before lighting, every line has to be true");
    assertThat(page.locator("#stays-1").inputValue()).isEqualTo("Ada");
    assertThat(page.locator("#kind-1").inputValue()).isEqualTo("ONE_HOUR");
    light(page, "A");
    assertThat(axe(page)).isEmpty();
    read(page, "10", "49", "400");
    that(page, ".said").containsText("Recorded.");
    read(page, "20", "55", "399");
    that(page, ".said-warning").containsText("Keep watching");
    read(page, "30", "75", "398");
    that(page, ".said-refused").containsText("STOP");
    putOut(page, "stopped_early");
    page.navigate(base + "/shelf/test/1");
    that(page, "#verdict").containsText("not enough evidence");
    clock.turn(Duration.ofHours(1));
    page.navigate(base + "/shelf/test/1");
    com.microsoft.playwright.Locator again =
        page.locator("form", new Page.LocatorOptions().setHasText("Light A"));
    again.locator("input[name^=base-]").fill("24");
    again.locator("input[name^=room-]").fill("21");
    again.locator("button").click();
    that(page, ".said-refused").containsText("Its base is 3.0 K warmer than the room");
    light(page, "A", "ONE_HOUR", "398");
    page.navigate(base + "/shelf/test/1");
    that(page, "main").containsText("Cycle 2, one hour only");
    that(page, "main").containsText("lit early, counts for nothing");
  }

  private Page simulate(String outline, String hours, String grid) {
    Page page = visit(base, "/shelf/simulate", Window.LAPTOP);
    page.locator("#outline").selectOption(outline);
    page.locator("#hours").fill(hours);
    page.locator("#grid").fill(grid);
    page.locator("main form button").click();
    that(page, "h1").containsText("Simulation");
    return page;
  }

  @Test
  void aSimulationIsRunAndScrubbed() {
    Page page = simulate("circle", "1", "5");
    PlaywrightAssertions.assertThat(page.locator("#run [role=status]"))
        .containsText("done", new LocatorAssertions.ContainsTextOptions().setTimeout(60_000));
    that(page, "#moment").containsText("after 1 h 0 min");
    page.locator("#at").fill("3");
    that(page, "#moment").containsText("after 0 h 20 min");
    assertThat(page.locator("#scene rect").count()).isGreaterThan(20);
    page.locator("#play").click();
    that(page, "#play").containsText("Pause");
    that(page, "#moment").not().containsText("after 0 h 20 min");
    page.locator("#play").click();
    that(page, "#play").containsText("Play");
    assertThat(Integer.parseInt(page.locator("#at").inputValue())).isGreaterThan(3);
    that(page, "main").containsText("with usual ranges of its inputs");
    that(page, "main").containsText("not calibrated on three tests");
    that(page, "main").containsText("A prediction never replaces a burn test");
    for (Object fill :
        (List<?>)
            page.evaluate(
                "[...document.querySelectorAll('#scene rect')].map(r => r.getAttribute('fill'))")) {
      assertThat(isGreen(String.valueOf(fill))).isFalse();
    }
    assertThat(axe(page)).isEmpty();
    assertThat(complaints).isEmpty();
  }

  private static boolean isGreen(String hex) {
    int r = Integer.parseInt(hex.substring(1, 3), 16);
    int g = Integer.parseInt(hex.substring(3, 5), 16);
    int b = Integer.parseInt(hex.substring(5, 7), 16);
    return g > r && g > b;
  }

  @Test
  void aLongSimulationIsCancelled() {
    Page page = simulate("octagon", "12", "1");
    page.locator("#run form button").click();
    that(page, ".said").containsText("Cancelled.");
    PlaywrightAssertions.assertThat(page.locator("#run [role=status]"))
        .containsText("cancelled", new LocatorAssertions.ContainsTextOptions().setTimeout(120_000));
  }

  @Test
  void aLogIsReadInAndAMissedBellIsNoted() {
    Page page = begin("house");
    light(page, "A");
    clock.turn(Duration.ofMinutes(200));
    page.reload();
    page.locator("details.card summary").click();
    page.locator("#lines").fill("minute, g\n0, 400.5\n58, 395.4\n130, 389.9");
    sign(page.locator("#by-log"));
    page.locator("main form[action$='/log'] button").click();
    that(page, ".said").containsText("3 readings recorded from the log");
    page.navigate(base + "/shelf/test/1");
    page.locator("#log-file summary").click();
    page.locator("#log").setInputFiles(csv("minute,wall_c\n0,21\n60,3O\n"));
    sign(page.locator("#log-file input[name=by]"));
    page.locator("#log-file button").click();
    that(page, ".said-refused").containsText("Line 3 is not a time and a value: 60 3O");
    page.locator("#log").setInputFiles(csv("minute,wall_c\n0,21\n60,30\n500,30\n"));
    page.locator("#log-file button").click();
    that(page, ".said").containsText("3 readings recorded from the log");
    that(page, "main").containsText("Outer wall, °C");
    assertThat(axe(page)).isEmpty();
    that(page, "main").containsText("no reading at 180 min");
    that(page, "main").containsText("g/h");
  }

  private static FilePayload csv(String text) {
    return new FilePayload("log.csv", "text/csv", text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void theWickThatPromisesMostIsAdvisedAndNothingIsCalledProved() {
    Page page = visit(base, "/shelf/next", Window.PHONE);
    page.locator("#candidates")
        .fill("flat braid 4.1 g/h; 0; 0; bad; 12\nflat braid 4.8 g/h; 1; 0; good; 12");
    page.locator("main form button").click();
    that(page, ".said").containsText("flat braid 4.8 g/h: a chance of");
    that(page, ".said").containsText("A chance is no proof");
    assertThat(axe(page)).isEmpty();
    page.locator("#candidates").fill("only a name");
    page.locator("main form button").click();
    that(page, ".said-refused").containsText("has not the five parts");
  }

  @Test
  void theShelfFitsANarrowScreen() {
    Page page = begin("house");
    light(page, "A");
    page.setViewportSize(320, 640);
    for (String path :
        List.of(
            "/shelf",
            "/shelf/new",
            "/shelf/test/1",
            "/shelf/cycle/1",
            "/shelf/simulate",
            "/shelf/rule",
            "/shelf/proof",
            "/shelf/fit",
            "/shelf/wicks",
            "/shelf/next")) {
      page.navigate(base + path);
      Object wide = page.evaluate("document.documentElement.scrollWidth");
      assertThat(((Number) wide).intValue()).as(path).isLessThanOrEqualTo(320);
    }
  }
}
