package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.work.BeginPour;

/**
 * Goal G12, measured from bounding boxes on two phones: what is hit is big enough and far enough
 * apart, what is read is large and dark enough, and Next is in sight on every step, unscrolled.
 */
@DisplayName("G12 bench mode")
class BenchMeasuresTest extends BrowserTest {
  private Workshop workshop;
  private Server server;
  private String base;

  @BeforeEach
  void open(@TempDir Path folder) {
    workshop = new Workshop(folder);
    workshop.vessels("bollard", 2);
    server = TestStudio.open(workshop.desk, folder);
    base = "http://127.0.0.1:" + server.port();
  }

  @AfterEach
  void close() {
    closeWindows();
    server.close();
  }

  /** What is too small, too near, too pale or out of sight; measured as the page stands. */
  private static final String MEASURE =
      """
      () => {
        const found = [];
        const bench = document.querySelector('.bench');
        if (!bench) return ['no bench on ' + location.pathname];
        bench.querySelectorAll('details').forEach(d => { d.open = true; });
        const name = e => e.tagName.toLowerCase() + ' "' + (e.innerText || e.name || e.id || '').trim().slice(0, 30) + '"';
        const seen = e => e.checkVisibility() && e.getBoundingClientRect().width > 1;
        const box = e => e.getBoundingClientRect();
        const targets = [...bench.querySelectorAll('button, a, summary, select, textarea, input:not([type=hidden]):not([type=radio]):not([type=checkbox]), label:has(> input[type=radio]), label:has(> input[type=checkbox])')].filter(seen);
        for (const t of targets) {
          const least = t.matches('.primary') ? 96 : 72;
          if (box(t).height < least - 0.01) found.push(name(t) + ' is ' + box(t).height.toFixed(1) + ' high, ' + least + ' wanted');
        }
        for (const p of bench.querySelectorAll('.next .primary')) {
          const b = box(p);
          if (b.top < 0 || b.bottom > innerHeight) found.push(name(p) + ' is out of sight: ' + b.top + ' to ' + b.bottom);
          if (b.width < innerWidth - 32) found.push(name(p) + ' is not full width');
        }
        const next = bench.querySelector('.next');
        const floor = next ? box(next).top : innerHeight;
        const step = bench.querySelector('section[aria-labelledby=step]');
        const clock = bench.querySelector('section[aria-labelledby=cooling]');
        const waits = step && clock && box(clock).top < box(step).top;
        const figure = waits ? clock.querySelector('#reached, #wax_c') : step?.querySelector('.figure');
        for (const must of [waits ? clock.querySelector('h2') : step?.querySelector('h2'), figure])
          if (must && (box(must).top < 0 || box(must).bottom > floor)) found.push(name(must) + ' is below the fold: ' + box(must).bottom.toFixed(0) + ' of ' + floor);
        const still = targets.filter(t => !t.closest('.next'));
        for (let i = 0; i < still.length; i++) for (let j = i + 1; j < still.length; j++) {
          const a = box(still[i]), b = box(still[j]);
          const dx = Math.max(a.left, b.left) - Math.min(a.right, b.right);
          const dy = Math.max(a.top, b.top) - Math.min(a.bottom, b.bottom);
          if (Math.max(dx, dy) < 11.99) found.push(name(still[i]) + ' and ' + name(still[j]) + ' are ' + Math.max(dx, dy).toFixed(1) + ' apart');
        }
        const shade = c => { const n = c.match(/[\\d.]+/g).map(Number); return n.length < 4 ? [...n, 1] : n; };
        const lum = c => { const f = v => { v /= 255; return v <= 0.03928 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4; }; return 0.2126 * f(c[0]) + 0.7152 * f(c[1]) + 0.0722 * f(c[2]); };
        const behind = e => { for (; e; e = e.parentElement) { const c = shade(getComputedStyle(e).backgroundColor); if (c[3] === 1) return c; } return [255, 255, 255, 1]; };
        const walk = document.createTreeWalker(bench, NodeFilter.SHOW_TEXT);
        while (walk.nextNode()) {
          const e = walk.currentNode.parentElement;
          const text = walk.currentNode.textContent.trim();
          if (!text || !seen(e) || e.closest('svg, .visually-hidden, option, select')) continue;
          const s = getComputedStyle(e);
          if (parseFloat(s.fontSize) < 19.99) found.push('"' + text.slice(0, 30) + '" is ' + s.fontSize);
          const a = lum(shade(s.color)), b = lum(behind(e));
          const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
          if (ratio < 7) found.push('"' + text.slice(0, 30) + '" has contrast ' + ratio.toFixed(2));
        }
        for (const f of bench.querySelectorAll('.figure'))
          if (seen(f) && parseFloat(getComputedStyle(f).fontSize) < 48) found.push('figure "' + f.innerText + '" is ' + getComputedStyle(f).fontSize);
        if (document.documentElement.scrollWidth > innerWidth) found.push('wider than the screen');
        return found;
      }
      """;

  @SuppressWarnings("unchecked")
  private static void measure(Page page, Set<String> found) {
    page.evaluate("window.scrollTo(0, 0)");
    String where = page.url().replaceFirst(".*?//[^/]*", "");
    ((List<String>) page.evaluate(MEASURE)).forEach(f -> found.add(where + ": " + f));
  }

  private Page phone(int width, int height, ColorScheme scheme) {
    Page page = visit(base, "/settings", new Window(width, height, scheme, true));
    page.fill("#hand", "MB");
    page.locator("main form[action='/settings/hand'] button").first().click();
    return page;
  }

  /** Taps Next until no step is left, and measures before each; there are at least so many. */
  private static Set<String> walk(Page page, int least) {
    Set<String> found = new TreeSet<>();
    int steps = 0;
    while (page.locator("form[action$='/step']").count() > 0 && steps < 20) {
      measure(page, found);
      page.locator("form[action$='/step'] .next .primary").click();
      page.waitForLoadState();
      steps++;
    }
    assertThat(steps).isGreaterThanOrEqualTo(least);
    measure(page, found);
    return found;
  }

  @ParameterizedTest(name = "G12 a whole pour on {0} × {1}, {2}")
  @CsvSource({"360, 640, LIGHT", "412, 915, DARK"})
  void aWholePour(int width, int height, ColorScheme scheme) {
    long pour =
        workshop
            .desk
            .studio()
            .beginPour
            .run(workshop.act(), new BeginPour.Request("bollard-rain", 2, 0.1))
            .made()
            .id();
    Page page = phone(width, height, scheme);
    page.navigate(base + "/pouring/" + pour);
    Set<String> found = walk(page, 10);
    page.locator("form[action$='/finish'] .next .primary").click();
    page.waitForSelector(".said-done");
    measure(page, found);
    assertThat(found).isEmpty();
  }

  @ParameterizedTest(name = "G12 a whole cast on {0} × {1}, {2}")
  @CsvSource({"360, 640, DARK", "412, 915, LIGHT"})
  void aWholeCast(int width, int height, ColorScheme scheme) {
    Page page = phone(width, height, scheme);
    page.navigate(
        base + "/casting/sheet?mix=grey&vessel1=bollard&count1=2&water_c=20&room_c=20&step=1");
    page.locator("text=Begin this cast").click();
    page.waitForSelector("#step");
    Set<String> found = walk(page, 6);
    page.locator("form[action$='/demold'] .next .primary").click();
    page.waitForURL("**/casting/pieces/Green");
    measure(page, found);
    assertThat(found).isEmpty();
  }
}
