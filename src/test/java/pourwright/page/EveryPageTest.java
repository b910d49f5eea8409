package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** What every page of the house owes to whoever opens it, looked at in a browser. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EveryPageTest extends BrowserTest {
  private static final long WEIGHT_MAX = 150 * 1024;

  private Desk desk;
  private Server server;
  private String base;

  @BeforeAll
  void openTheStudio(@TempDir Path folder) {
    desk = TestStudio.desk(folder);
    server = TestStudio.open(desk, folder);
    base = "http://127.0.0.1:" + server.port();
  }

  @AfterAll
  void closeTheStudio() {
    server.close();
  }

  private List<String> routes() {
    List<String> routes = new ArrayList<>();
    Places.all(desk).forEach(p -> routes.add(p.path()));
    routes.addAll(
        List.of(
            "/help",
            "/devices",
            "/sign-in",
            "/timers",
            "/history",
            "/hold",
            "/stop",
            "/find",
            "/find?mark=12X",
            "/settings",
            "/welcome",
            "/nowhere"));
    return routes;
  }

  @Test
  void axeNoticesABadPage() {
    Page page = visit(base, "/", Window.LAPTOP);
    page.evaluate(
        "document.querySelector('main').innerHTML = '<img src=\"data:,\"><p"
            + " id=pale>pale</p><a href=a id=s1>x</a><a href=b id=s2>y</a>';"
            + "document.getElementById('pale').style.color = '#ddd'");
    assertThat(axe(page))
        .anyMatch(v -> v.startsWith("image-alt"))
        .anyMatch(v -> v.startsWith("color-contrast"));
  }

  @Test
  void theTabKeyReachesEverythingAndTheFocusIsSeen() {
    Page page = visit(base, "/", Window.LAPTOP);
    for (String route : routes()) {
      page.navigate(base + route);
      List<String> hidden = tabWalk(page);
      assertThat(hidden).as(route).isEmpty();
    }
  }

  /** Walks with Tab until the focus leaves the page; says what had no visible focus. */
  private static List<String> tabWalk(Page page) {
    List<String> findings = new ArrayList<>();
    int steps = 0;
    int stops =
        ((Number)
                page.evaluate(
                    "[...document.querySelectorAll('a[href],button:not(:disabled),"
                        + "input:not([type=hidden]),select,textarea,summary')].filter(e =>"
                        + " e.checkVisibility() && !(e.type === 'radio' &&"
                        + " !e.checked)).length"))
            .intValue();
    for (; steps < stops; steps++) {
      page.keyboard().press("Tab");
      Object finding =
          page.evaluate(
              "() => { const e = document.activeElement; if (!e || e === document.body) return"
                  + " 'focus left the page'; const s = getComputedStyle(e); const r ="
                  + " e.getBoundingClientRect(); const w = parseFloat(s.outlineWidth); const name ="
                  + " e.tagName + ' ' + (e.textContent || e.name || '').trim().slice(0, 30); if"
                  + " (s.outlineStyle === 'none' || w < 2) return name + ': no outline'; if"
                  + " (r.bottom <= 0 || r.top >= innerHeight || r.width === 0) return name + ': out"
                  + " of sight'; const at = document.elementFromPoint(r.left + r.width / 2, r.top +"
                  + " r.height / 2); if (at && !(e.contains(at) || at.contains(e) ||"
                  + " (e.labels && [...e.labels].some(l => l.contains(at))))) return name + ':"
                  + " covered by ' + at.tagName; return ''; }");
      if (!String.valueOf(finding).isEmpty()) {
        findings.add("stop " + steps + ": " + finding);
      }
    }
    return findings;
  }

  @Test
  void nothingIsAskedOfTheOutsideAndThePolicyIsNeverBroken() {
    Page page = visit(base, "/", Window.LAPTOP);
    for (String route : routes()) {
      page.navigate(base + route);
      page.waitForTimeout(50);
    }
    assertThat(outside).isEmpty();
    complaints.removeIf(c -> c.contains("status of 4"));
    assertThat(complaints).isEmpty();
  }

  /** Uncompressed, so an upper bound of what goes over the air. */
  @Test
  void noPageWeighsMoreThanAHundredAndFiftyKilobytes() {
    Visitor visitor = new Visitor(server.port());
    for (String route : routes()) {
      long weight = visitor.get(route).body().length();
      for (Element asset : visitor.page(route).select("link[href], script[src], img[src]")) {
        String path = asset.hasAttr("href") ? asset.attr("href") : asset.attr("src");
        weight += visitor.get(path).body().length();
      }
      assertThat(weight).as(route).isBetween(1_000L, WEIGHT_MAX);
    }
  }

  @Test
  void thePlacesWorkWithoutScript() {
    Page page = visit(base, "/", Window.PHONE.withoutScript());
    for (Place place : Places.all(desk)) {
      page.locator("nav.places a", new Page.LocatorOptions().setHasText(place.name())).click();
      assertThat(page.locator("h1").textContent()).isNotBlank();
      assertThat(page.url()).isEqualTo(base + place.path());
    }
    page.locator("input[value=dark]").check();
    page.locator("form[action='/look'] button").click();
    assertThat(page.locator("html").getAttribute("data-scheme")).isEqualTo("dark");
  }

  @Test
  void printingFromTheDarkIsBlackOnWhite() {
    Page page = visit(base, "/casting", Window.LAPTOP.dark());
    page.emulateMedia(
        new Page.EmulateMediaOptions().setMedia(com.microsoft.playwright.options.Media.PRINT));
    Object colours =
        page.evaluate(
            "getComputedStyle(document.body).backgroundColor + ' ' +"
                + " getComputedStyle(document.body).color");
    assertThat(colours).isEqualTo("rgb(255, 255, 255) rgb(0, 0, 0)");
    assertThat(page.locator(".foot").isVisible()).isFalse();
  }
}
