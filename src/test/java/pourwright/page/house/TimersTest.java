package pourwright.page.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.page.BrowserTest;
import pourwright.page.Desk;
import pourwright.page.MovableClock;
import pourwright.page.Server;
import pourwright.page.TestStudio;
import pourwright.page.Visitor;
import pourwright.work.Act;
import pourwright.work.Subject;

/** A timer lives in the books: it rings on every open page, whatever happens to one of them. */
class TimersTest extends BrowserTest {
  private static final LocatorAssertions.IsVisibleOptions SOON =
      new LocatorAssertions.IsVisibleOptions().setTimeout(4_000);

  private MovableClock clock;
  private Desk desk;
  private Server server;
  private String base;
  private Path folder;

  @BeforeEach
  void openTheStudio(@TempDir Path dir) {
    folder = dir;
    clock = new MovableClock();
    desk = TestStudio.desk(dir, clock);
    server = TestStudio.open(desk, dir);
    base = "http://127.0.0.1:" + server.port();
  }

  @AfterEach
  void closeTheStudio() {
    server.close();
  }

  private void set(String label, Duration after) {
    Subject studio = new Subject(Subject.Kind.STUDIO, "studio");
    desk.studio().timers.start(Act.of("MK", "key of " + label), label, studio, after);
  }

  @Test
  void itRingsOnEveryOpenPageWithinASecondAndIsAnsweredOnce() {
    Page laptop = visit(base, "/casting", Window.LAPTOP);
    Page phone = visit(base, "/settings", Window.PHONE);
    phone.fill("#hand", "MK");
    phone.locator("main form[action='/settings/hand'] button").first().click();
    phone.navigate(base + "/pouring");
    set("Demold Bollard", Duration.ofSeconds(5));
    PlaywrightAssertions.assertThat(laptop.locator(".bell")).isVisible(SOON);
    clock.move(Duration.ofSeconds(4));
    for (Page page : new Page[] {laptop, phone}) {
      PlaywrightAssertions.assertThat(page.locator(".bell-rings")).isVisible(SOON);
      page.waitForCondition(() -> page.title().contains("rings"));
    }
    phone.locator(".bell-rings button").click();
    assertThat(phone.locator(".said").textContent()).contains("Answered: Demold Bollard");
    PlaywrightAssertions.assertThat(laptop.locator(".bell"))
        .hasCount(0, new LocatorAssertions.HasCountOptions().setTimeout(4_000));
  }

  /** Goal: within one second of the deadline on an open page, twenty at once; never early. */
  @Test
  void twentyTimersRingOnAnOpenPageWithinASecondOfTheirDeadlines() {
    Page laptop = visit(base, "/casting", Window.LAPTOP);
    watchTheBells(laptop);
    for (int i = 1; i <= 20; i++) {
      set("Tray " + i, Duration.ofMillis(4_000 + 150L * i));
    }
    laptop.waitForCondition(
        () -> Boolean.TRUE.equals(laptop.evaluate("Object.keys(window.rang).length === 20")));
    @SuppressWarnings("unchecked")
    Map<String, Number> late = (Map<String, Number>) laptop.evaluate("window.rang");
    assertThat(late.values()).allSatisfy(ms -> assertThat(ms.longValue()).isBetween(-250L, 1_000L));
  }

  /** The studio's clock is set two hours on: what is due then rings within a second of it. */
  @Test
  void aJumpOfTheClockRingsWithinASecondToo() {
    Page laptop = visit(base, "/casting", Window.LAPTOP);
    set("Pour Rain on slate", Duration.ofHours(2));
    PlaywrightAssertions.assertThat(laptop.locator(".bell")).isVisible(SOON);
    watchTheBells(laptop);
    laptop.evaluate("window.jumped = Date.now()");
    clock.move(Duration.ofHours(2));
    laptop.waitForCondition(() -> Boolean.TRUE.equals(laptop.evaluate("!!window.firstRing")));
    Object after = laptop.evaluate("window.firstRing - window.jumped");
    assertThat(((Number) after).longValue()).isLessThanOrEqualTo(1_000);
  }

  /** The day of 23 hours (29 March 2026 in Berlin, by the JDK's time zone data) moves no timer. */
  @Test
  void theHourThatIsLeftOutInSpringMovesNoTimer(@TempDir Path other) {
    Instant before = Instant.parse("2026-03-29T00:30:00Z");
    clock.move(Duration.between(clock.instant(), before));
    Desk plain = TestStudio.desk(other, clock);
    Desk berlin = new Desk(plain.studio(), clock, ZoneId.of("Europe/Berlin"), java.util.Locale.UK);
    plain
        .studio()
        .timers
        .start(
            Act.of("MK", "over the change"),
            "Harden",
            new Subject(Subject.Kind.STUDIO, "studio"),
            Duration.ofHours(2));
    try (Server there = TestStudio.open(berlin, other)) {
      Visitor visitor = new Visitor(there.port());
      assertThat(visitor.page("/").select(".bell").text()).contains("04:30");
      assertThat(visitor.page("/").select(".bell-left").text()).matches("(1:59:\\d\\d|2:00:00)");
    }
  }

  /** Notes for each timer how late the page began to ring, in milliseconds. */
  private static void watchTheBells(Page page) {
    page.evaluate(
        "() => { window.rang = {}; const look = () => {"
            + " for (const b of document.querySelectorAll('.bell-rings')) { const name ="
            + " b.dataset.name; if (!(name in window.rang)) {"
            + " window.rang[name] = Date.now() - Number(b.dataset.deadline); window.firstRing ="
            + " window.firstRing || Date.now(); } } };"
            + " new MutationObserver(look).observe(document.getElementById('bells'), {subtree:"
            + " true, childList: true, attributes: true}); }");
  }

  @Test
  void itSurvivesARestartOfTheStudioAndAJumpOfTheClock() {
    set("Pour Rain on slate", Duration.ofHours(3));
    server.close();
    clock.move(Duration.ofHours(2));
    server = TestStudio.open(TestStudio.desk(folder, clock), folder);
    Visitor visitor = new Visitor(server.port());
    assertThat(visitor.page("/").select(".bell-left").text()).matches("(59:\\d\\d|1:00:00)");
    clock.move(Duration.ofHours(2));
    assertThat(visitor.page("/").select(".bell-rings .bell-left").text()).startsWith("+1:0");
    clock.move(Duration.ofHours(-4));
    assertThat(visitor.page("/").select(".bell-left").text()).matches("(2:59:\\d\\d|3:00:00)");
  }

  /** Goal G23, offline: what happened, what goes on, what to do. */
  @Test
  @DisplayName("G23 a page that lost its connection says so")
  void aPageThatLostItsConnectionSaysClockLost() {
    Page page = visit(base, "/casting", Window.PHONE);
    assertThat(page.locator("#clock-lost").isVisible()).isFalse();
    server.close();
    PlaywrightAssertions.assertThat(page.locator("#clock-lost"))
        .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(25_000));
    assertThat(page.locator("#clock-lost").innerText())
        .contains("no connection to the studio", "still run there", "watch the time yourself");
    server = TestStudio.open(desk, folder);
  }

  /** The sound itself cannot be heard here: how loud each ring is asked to be is written down. */
  private static final String EAR =
      """
      window.peaks = [];
      window.AudioContext = class {
        constructor() { this.state = 'running'; this.currentTime = 0; this.destination = {}; }
        resume() {}
        createOscillator() {
          return { frequency: {}, connect(to) { return to; }, start() {}, stop() {} };
        }
        createGain() {
          return {
            gain: {
              setValueAtTime() {},
              exponentialRampToValueAtTime(v) { if (v > 0.001) window.peaks.push(v); },
            },
            connect(to) { return to; },
          };
        }
      };
      """;

  @Test
  @DisplayName("G14 an unanswered bell repeats and grows louder, until it is answered")
  void anUnansweredBellRepeatsAndGrowsLouder() {
    Page page = visit(base, "/casting", Window.LAPTOP);
    page.addInitScript(EAR);
    page.navigate(base + "/casting");
    page.locator("h1").click();
    set("Demold Bollard", Duration.ofSeconds(1));
    clock.move(Duration.ofSeconds(2));
    double first = loudest(page, 2);
    clock.move(Duration.ofSeconds(60));
    double later = loudest(page, 2);
    clock.move(Duration.ofSeconds(120));
    double last = loudest(page, 2);
    assertThat(first).isBetween(0.15, 0.35);
    assertThat(later).isBetween(first + 0.3, 0.9);
    assertThat(last).isEqualTo(0.9);
  }

  /** Waits for so many further rings; the loudest of the last of them. */
  private static double loudest(Page page, int rings) {
    page.evaluate("window.peaks = []");
    page.waitForCondition(
        () -> ((Number) page.evaluate("window.peaks.length")).intValue() >= rings);
    return ((Number) page.evaluate("window.peaks[window.peaks.length - 1]")).doubleValue();
  }

  @Test
  void aTimerIsSetAndAnsweredWithoutScript() {
    Visitor visitor = new Visitor(server.port());
    visitor.post("/timers", "/timers", Map.of("label", "Seal coat", "minutes", "20", "by", "MK"));
    assertThat(visitor.page("/").select(".bell-name").text()).contains("Seal coat");
    String answer = visitor.page("/").select(".bell form").attr("action");
    visitor.post("/", answer, Map.of());
    assertThat(visitor.page("/").select(".bell")).isEmpty();
  }

  @Test
  void twentyTimersRunSideBySide() {
    for (int i = 1; i <= 20; i++) {
      set("Timer " + i, Duration.ofMinutes(i));
    }
    clock.move(Duration.ofMinutes(10).plusSeconds(30));
    Visitor visitor = new Visitor(server.port());
    assertThat(visitor.page("/").select(".bell")).hasSize(20);
    assertThat(visitor.page("/").select(".bell-rings")).hasSize(10);
  }

  @Test
  void onAPhoneWhatRingsAndWhatComesNextLeaveTheStepInSight() {
    for (int i = 1; i <= 6; i++) {
      set("Timer " + i, Duration.ofMinutes(i));
    }
    clock.move(Duration.ofSeconds(90));
    Page phone = visit(base, "/casting", Window.PHONE);
    assertThat(phone.locator(".bell:visible").allTextContents())
        .satisfiesExactly(
            one -> assertThat(one).contains("Timer 1"), two -> assertThat(two).contains("Timer 2"));
    assertThat(phone.locator("#bells").boundingBox().height).isLessThan(844 / 3.0);
    phone.locator(".bells-more a").click();
    assertThat(phone.locator(".bell:visible").count()).isEqualTo(6);
    assertThat(visit(base, "/casting", Window.LAPTOP).locator(".bell:visible").count())
        .isEqualTo(6);
  }

  @Test
  void withoutAWordATimerIsNotSetAndWhatWasTypedStays() {
    Visitor visitor = new Visitor(server.port());
    var answer = visitor.post("/timers", "/timers", Map.of("label", "", "minutes", "soon"));
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("value=\"soon\"").contains("Please give what the timer");
  }
}
