package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.work.Drawers;
import pourwright.work.SaveCard;

/**
 * Goal G10, autosave honesty: 'saved' stands on a page only after the commit. The program itself is
 * killed (SIGKILL) at random moments under somebody who types; started again, the form holds all
 * that stood there when the page said 'saved', and at most two seconds of typing are lost.
 */
@DisplayName("G10 autosave honesty")
class AutosaveHonestyTest extends BrowserTest {
  private static final String FORM = "/stockroom/delivery";
  private static final int LOST_MS_MOST = 2_000;

  /** Long enough for several saves: the first is sent 700 ms after the first letter. */
  private static final int TYPES_MS_MOST = 3_000;

  private static final int KILLS = 200;

  @TempDir Path corner;

  /** Notes when which text stood in the field, and which stood there when 'saved' was shown. */
  private static final String WATCH =
      "window.typed = []; window.saved = [];"
          + "const box = document.getElementById('lines'), word = document.getElementById('saved');"
          + "const note = () => typed.push([Date.now(), box.value]); note();"
          + "box.addEventListener('input', note);"
          + "new MutationObserver(() => { if (/^saved/.test(word.textContent)) saved.push(box.value);"
          + " }).observe(word, {childList: true, characterData: true, subtree: true});";

  /** Somebody types: a letter each 30 to 150 ms, now and then a pause of a second and a half. */
  private static final String TYPE =
      "seed => { const box = document.getElementById('lines'); let n = seed;"
          + " const next = () => { n = (n * 1103515245 + 12345) % 2147483648;"
          + " box.value += 'abcdefghij'[n % 10]; box.dispatchEvent(new Event('input', {bubbles:"
          + " true})); setTimeout(next, n % 23 === 0 ? 1500 : 30 + n % 120); }; next(); }";

  @Test
  void nothingShownAsSavedIsLostWhenTheProgramIsKilled() throws Exception {
    killAndLook(Integer.getInteger("autosave.rounds", 2));
  }

  @Test
  @Tag("long")
  void nothingShownAsSavedIsLostWhenTheProgramIsKilledTwoHundredTimes() throws Exception {
    killAndLook(KILLS);
  }

  private void killAndLook(int rounds) throws Exception {
    long seed = Long.getLong("kill.seed", System.nanoTime());
    Random random = new Random(seed);
    Path data = corner.resolve("data");
    new OpenStudio(corner).withDemoCards().close();
    RunningProgram program = RunningProgram.start(data, 0, corner.resolve("said"));
    try {
      int port = program.awaitPort();
      String base = "http://localhost:" + port;
      BrowserContext browser = visit(base, "/stockroom", Window.LAPTOP).context();
      Page page = form(browser, base);
      long worst = 0;
      int shown = 0;
      for (int round = 1; round <= rounds; round++) {
        String what = "round " + round + ", seed " + seed;
        page.evaluate(WATCH);
        page.evaluate(TYPE, random.nextInt(1_000_000));
        if (round == 1) {
          awaitSaved(page);
        }
        Thread.sleep(random.nextInt(TYPES_MS_MOST));
        long killed = System.currentTimeMillis();
        program.kill();
        program.assertKilled();
        Thread.sleep(random.nextInt(300));
        List<String> saved = texts(page.evaluate("saved"));
        List<Moment> typed = moments(page.evaluate("typed"));
        // gone while no program answers: it must not save on leaving what it could not save before
        page.close();
        program = RunningProgram.start(data, port, corner.resolve("said"));
        assertThat(program.awaitPort()).isEqualTo(port);
        // the form as it comes back is looked at, then typed into in the next round
        page = form(browser, base);
        String there = page.inputValue("#lines");
        for (String text : saved) {
          assertThat(there).as(what + ": shown as saved").startsWith(text);
        }
        shown += saved.size();
        long lost = 0;
        for (Moment moment : typed) {
          if (moment.atMs() <= killed && !there.startsWith(moment.text())) {
            lost = killed - moment.atMs();
            break;
          }
        }
        assertThat(lost).as(what + ": ms of typing lost").isLessThanOrEqualTo(LOST_MS_MOST);
        worst = Math.max(worst, lost);
      }
      System.err.printf(
          "G10: %d kills, %d times shown as saved, 0 of them missing; at most %d ms of typing lost%n",
          rounds, shown, worst);
      assertThat(shown).as("times 'saved' was shown").isPositive();
    } finally {
      program.kill();
    }
  }

  private record Moment(long atMs, String text) {}

  private static List<String> texts(Object found) {
    List<String> texts = new ArrayList<>();
    ((List<?>) found).forEach(text -> texts.add(String.valueOf(text)));
    return texts;
  }

  private static List<Moment> moments(Object found) {
    List<Moment> moments = new ArrayList<>();
    for (Object pair : (List<?>) found) {
      List<?> both = (List<?>) pair;
      moments.add(new Moment(((Number) both.get(0)).longValue(), String.valueOf(both.get(1))));
    }
    return moments;
  }

  private static void waitUntilRecalled(Page page) {
    String answered =
        "performance.getEntriesByType('resource').some(e => e.name.includes('/draft?') &&"
            + " e.responseEnd > 0)";
    page.waitForCondition(() -> Boolean.TRUE.equals(page.evaluate(answered)));
    page.waitForTimeout(50);
  }

  private static void awaitSaved(Page page) {
    page.waitForCondition(() -> !texts(page.evaluate("saved")).isEmpty());
  }

  private static Page form(BrowserContext browser, String base) {
    Page page = browser.newPage();
    page.navigate(base + FORM);
    waitUntilRecalled(page);
    return page;
  }

  @Test
  void aClosedTabLosesNothingAndAKeptFormLeavesNoDraft() {
    try (OpenStudio open = new OpenStudio(corner).withDemoCards()) {
      Page page = visit(open.base(), "/stockroom/receive", Window.PHONE);
      page.selectOption("#material", "rapid-grey");
      page.fill("#amount", "5 kg");
      page.fill("#lot", "W-77");
      saidSaved(page);
      BrowserContext browser = page.context();
      page.close();

      Page again = browser.newPage();
      again.navigate(open.base() + "/stockroom/receive");
      again.waitForSelector(".draft");
      assertThat(again.textContent(".draft")).containsPattern("filled in again . \\d\\d:\\d\\d");
      assertThat(again.inputValue("#material")).isEqualTo("rapid-grey");
      assertThat(again.inputValue("#amount")).isEqualTo("5 kg");
      assertThat(again.inputValue("#lot")).isEqualTo("W-77");
      assertThat(axe(again)).isEmpty();
      again.fill("#by", "MB");
      again.click("main form button.primary");
      again.waitForSelector(".said-done");

      again.navigate(open.base() + "/stockroom/receive");
      waitUntilRecalled(again);
      assertThat(again.querySelector(".draft")).isNull();
      assertThat(again.inputValue("#lot")).isEmpty();
      assertThat(complaints).isEmpty();
      assertThat(outside).isEmpty();
    }
  }

  @Test
  void sheBeginsAnewByOneButtonAndAnotherDeviceSeesNothing() {
    try (OpenStudio open = new OpenStudio(corner).withDemoCards()) {
      Page page = visit(open.base(), FORM, Window.LAPTOP);
      page.fill("#lines", "5 kg Soft plant wax A, 48.20");
      saidSaved(page);
      Page other = visit(open.base(), FORM, Window.LAPTOP);
      waitUntilRecalled(other);
      assertThat(other.inputValue("#lines")).isEmpty();
      page.navigate(open.base() + FORM);
      page.waitForSelector(".draft");
      assertThat(page.inputValue("#lines")).isEqualTo("5 kg Soft plant wax A, 48.20");
      page.click(".draft button");
      page.waitForSelector(
          ".draft", new Page.WaitForSelectorOptions().setState(WaitForSelectorState.DETACHED));
      waitUntilRecalled(page);
      assertThat(page.inputValue("#lines")).isEmpty();
      page.navigate(open.base() + FORM);
      waitUntilRecalled(page);
      assertThat(page.inputValue("#lines")).isEmpty();
    }
  }

  @Test
  void aRefusedFormShowsTheNewestAndACardStillMeetsAnotherHand() {
    try (OpenStudio open = new OpenStudio(corner).withDemoCards()) {
      Page page = visit(open.base(), "/board/mold/bollard-mold/edit", Window.LAPTOP);
      page.fill("#name", "Mold of the draft");
      saidSaved(page);
      var current = open.studio.look(b -> b.cards().current(Drawers.MOLD, "bollard-mold"));
      var mold = current.orElseThrow();
      var hers = SaveCard.Request.of(Drawers.MOLD, "bollard-mold", mold.version(), mold.body());
      assertThat(open.studio.saveCard.run(open.act(), hers))
          .isInstanceOf(SaveCard.Saving.Saved.class);
      page.navigate(open.base() + "/board/mold/bollard-mold/edit");
      page.waitForSelector(".draft");
      assertThat(page.inputValue("#name")).isEqualTo("Mold of the draft");
      page.fill("#by", "MB");
      page.click("main form button.primary");
      assertThat(page.textContent("main")).contains("Somebody saved a newer version");
      assertThat(page.inputValue("#name")).isEqualTo("Mold of the draft");
      page.fill("#name", "");
      page.click("main form button.primary");
      page.waitForSelector("main .complaints, main .wrong");
      assertThat(page.inputValue("#name")).isEmpty();
      assertThat(page.querySelector(".draft")).isNull();
    }
  }

  @Test
  void theRouteTakesNothingStrangeAndNoPassphrase() {
    try (OpenStudio open = new OpenStudio(corner)) {
      Visitor visitor = open.visitor();
      String token = visitor.page(FORM).select("meta[name=token]").attr("content");
      assertThat(draft(visitor, "none", FORM, "[]")).isEqualTo(403);
      assertThat(draft(visitor, token, "/sign-in", "[]")).isEqualTo(422);
      assertThat(draft(visitor, token, "http://studio.test/x", "[]")).isEqualTo(422);
      assertThat(draft(visitor, token, FORM, "")).isEqualTo(422);
      assertThat(draft(visitor, token, FORM, "x".repeat(100_001))).isEqualTo(413);
      assertThat(visitor.get("/draft?form=" + FORM).statusCode()).isEqualTo(204);
      assertThat(draft(visitor, token, FORM, "[]")).isEqualTo(200);
      assertThat(visitor.get("/draft?form=" + FORM).body()).isEqualTo("[]");
    }
  }

  private static int draft(Visitor visitor, String token, String form, String typed) {
    return visitor
        .post(
            "/draft",
            Map.of("token", token, "draft_form", form, "draft_key", "key-1", "draft_typed", typed))
        .statusCode();
  }

  private static void saidSaved(Page page) {
    page.waitForCondition(() -> page.textContent("#saved").matches("saved . \\d\\d:\\d\\d"));
  }
}
