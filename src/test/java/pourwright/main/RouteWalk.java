package pourwright.main;

import static java.util.Objects.requireNonNull;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pourwright.page.BrowserTest;
import pourwright.page.Routes;

/**
 * Looks at page after page, and at what each says when its forms are sent with nothing in them: by
 * axe (WCAG 2.2 A and AA, best practice, target size), and whether it scrolls sideways at 320
 * pixels (WCAG 1.4.10), also with the text spacing of WCAG 1.4.12.
 */
final class RouteWalk {
  /** Deeds that end the visit, begin long work, or cannot be refused. */
  static final Set<String> NOT_TRIED =
      Set.of(
          "/own-studio", "/sign-out", "/look", "/undo", "/plan/again", "/plan/take", "/shelf/fit");

  private enum Scheme {
    LIGHT,
    DARK,
    HIGH_CONTRAST
  }

  private record Look(Scheme scheme, int width) {}

  private static final List<Look> LOOKS = new ArrayList<>();

  static {
    for (int width : List.of(320, 390, 1280)) {
      for (Scheme scheme : Scheme.values()) {
        LOOKS.add(new Look(scheme, width));
      }
    }
  }

  private final boolean all;
  private final List<String> found = new ArrayList<>();
  private int turn;
  private int looked;

  /**
   * A walk.
   *
   * @param all whether each page is seen in all nine looks, or in one of them by turns
   */
  RouteWalk(boolean all) {
    this.all = all;
  }

  /** What is wrong, and where. */
  List<String> found() {
    return found;
  }

  /** How many looks were taken. */
  int looked() {
    return looked;
  }

  /** Looks at these pages of a studio and then at its refusals; returns how many refused. */
  int through(Page page, String base, String state, Routes routes) {
    for (String route : routes.pages()) {
      page.navigate(base + route);
      look(page, state + " " + route);
    }
    return refusals(page, base, routes);
  }

  /**
   * Looks at the page that is open, in all nine looks or in the one whose turn it is. Of the nine,
   * the light ones by all rules and the others by the rules of colour: a scheme changes no more.
   */
  private void look(Page page, String name) {
    for (Look look : all ? LOOKS : List.of(LOOKS.get(turn++ % LOOKS.size()))) {
      boolean dark = look.scheme() == Scheme.DARK;
      page.emulateMedia(
          new Page.EmulateMediaOptions()
              .setColorScheme(dark ? ColorScheme.DARK : ColorScheme.LIGHT));
      page.evaluate(
          "high => { document.documentElement.dataset.contrast = high ? 'high' : 'normal' }",
          look.scheme() == Scheme.HIGH_CONTRAST);
      page.setViewportSize(look.width(), look.width() > 1000 ? 900 : 700);
      String where = name + " " + look.width() + " " + look.scheme() + ": ";
      boolean colours = all && look.scheme() != Scheme.LIGHT;
      (colours ? BrowserTest.axeOfColours(page) : BrowserTest.axe(page))
          .forEach(v -> found.add(where + v));
      looked++;
    }
    page.setViewportSize(320, 700);
    sideways(page, name + " 320: ");
    page.evaluate(SPACING);
    sideways(page, name + " 320 with text spacing: ");
  }

  /** Line height 1.5, letters 0.12, words 0.16, paragraphs 2 times the font size: WCAG 1.4.12. */
  private static final String SPACING =
      "(() => { const s = new CSSStyleSheet(); s.replaceSync('* { line-height: 1.5 !important;"
          + " letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p {"
          + " margin-bottom: 2em !important }'); document.adoptedStyleSheets = [s]; })()";

  private void sideways(Page page, String where) {
    Object wide = page.evaluate("document.documentElement.scrollWidth");
    if (((Number) wide).intValue() > 320) {
      found.add(where + "scrolls sideways, " + wide + " pixels wide");
    }
    Object cut =
        page.evaluate(
            "[...document.querySelectorAll('main *, nav *, header *')].filter(e => { const s ="
                + " getComputedStyle(e); return s.overflow === 'hidden' && s.position !=="
                + " 'absolute' && e.clientHeight > 0 && e.scrollHeight > e.clientHeight + 2;"
                + " }).map(e => e.outerHTML.slice(0, 80)).join(' | ')");
    if (!String.valueOf(cut).isEmpty()) {
      found.add(where + "cuts off " + cut);
    }
  }

  /** Sends every form of every page with nothing in it and looks at what is said then. */
  private int refusals(Page page, String base, Routes routes) {
    int refused = 0;
    Set<String> tried = new HashSet<>();
    for (String route : routes.pages()) {
      page.navigate(base + route);
      @SuppressWarnings("unchecked")
      List<String> actions =
          (List<String>)
              page.evaluate(
                  "[...document.querySelectorAll('main form[method=post]')].map(f =>"
                      + " f.getAttribute('action'))");
      Map<String, String> answers = new LinkedHashMap<>();
      for (String action : new LinkedHashSet<>(actions)) {
        String kind = routes.pattern(route).orElse(route) + " " + action.replaceAll("\\d+", "N");
        if (!NOT_TRIED.contains(action) && tried.add(kind)) {
          refusal(page, route, action).ifPresent(said -> answers.put(action, said));
        }
      }
      for (Map.Entry<String, String> answer : answers.entrySet()) {
        refused++;
        page.setContent(answer.getValue());
        page.evaluate("document.adoptedStyleSheets = []");
        look(page, "refused " + route + " -> " + answer.getKey());
      }
    }
    return refused;
  }

  /**
   * The page that answers a form with nothing in it, if it refuses. Asked from within the page, so
   * that an answer that is no page, or none at all, holds nobody up.
   */
  private Optional<String> refusal(Page page, String route, String action) {
    Object answer = page.evaluate(POST, action);
    if (!(answer instanceof Map<?, ?> said)) {
      throw new IllegalStateException(route + " -> " + action + ": " + answer);
    }
    int status = ((Number) requireNonNull(said.get("status"))).intValue();
    String body = String.valueOf(said.get("body"));
    if (status == NO_ANSWER) {
      found.add(route + " -> " + action + ": no answer: " + body);
      return Optional.empty();
    }
    boolean whole = body.stripLeading().startsWith("<!DOCTYPE html>");
    if (status >= 400 && !whole) {
      found.add(route + " -> " + action + ": refused without a page: " + body);
    }
    return status >= 400 && whole ? Optional.of(body) : Optional.empty();
  }

  private static final int NO_ANSWER = -1;

  /** Empties and sends a form; a form that was accepted leads elsewhere, which is not followed. */
  private static final String POST =
      "async action => { const f = [...document.querySelectorAll('main form[method=post]')].find(f =>"
          + " f.getAttribute('action') === action); for (const e of f.elements) { if (e.type ==="
          + " 'checkbox' || e.type === 'radio') e.checked = false; else if (e.type !== 'hidden' &&"
          + " e.tagName !== 'BUTTON') e.value = ''; } const data = new FormData(f); const body ="
          + " f.enctype === 'multipart/form-data' ? data : new URLSearchParams(data); try { const"
          + " answer = await fetch(f.action, {method: 'POST', body, redirect: 'manual', signal:"
          + " AbortSignal.timeout(20000)}); return {status: answer.status, body: await"
          + " answer.text()}; } catch (e) { return {status: -1, body: String(e)}; } }";
}
