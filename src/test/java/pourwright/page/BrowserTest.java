package pourwright.page;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;

/**
 * A base for tests in a real browser: one Chromium for the whole run, a fresh context for each
 * visit. Every visit notes requests that leave the studio, complaints of the content policy, and
 * errors on the console.
 */
public abstract class BrowserTest {
  private static final List<String> BROWSERS =
      List.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome");
  private static @Nullable Browser shared;

  private final List<BrowserContext> opened = new ArrayList<>();

  /** Requests that went anywhere but to the studio. */
  protected final Set<String> outside = new TreeSet<>();

  /** What the console complained about, content policy included. */
  protected final List<String> complaints = new ArrayList<>();

  /** How a visit looks at the studio. */
  public record Window(int width, int height, ColorScheme scheme, boolean script) {
    public static final Window LAPTOP = new Window(1280, 900, ColorScheme.LIGHT, true);
    public static final Window PHONE = new Window(390, 844, ColorScheme.LIGHT, true);
    public static final Window NARROW = new Window(320, 640, ColorScheme.LIGHT, true);

    public Window dark() {
      return new Window(width, height, ColorScheme.DARK, script);
    }

    public Window withoutScript() {
      return new Window(width, height, scheme, false);
    }
  }

  private static synchronized Browser browser() {
    if (shared == null) {
      Playwright playwright =
          Playwright.create(
              new Playwright.CreateOptions()
                  .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
      shared =
          playwright
              .chromium()
              .launch(
                  new BrowserType.LaunchOptions()
                      .setExecutablePath(chromium())
                      .setArgs(
                          List.of(
                              "--no-sandbox",
                              "--host-resolver-rules=MAP studio.test 127.0.0.1",
                              "--disable-gpu",
                              "--disable-quic",
                              "--no-first-run",
                              "--disable-background-networking",
                              "--disable-component-update",
                              "--disable-sync")));
      Runtime.getRuntime().addShutdownHook(new Thread(playwright::close));
    }
    return shared;
  }

  private static Path chromium() {
    return BROWSERS.stream()
        .map(Path::of)
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no Chromium here; ./check installs one"));
  }

  /** Opens a page on the studio; {@code base} as in {@code http://127.0.0.1:1234}. */
  protected Page visit(String base, String path, Window window) {
    BrowserContext context =
        browser()
            .newContext(
                new Browser.NewContextOptions()
                    .setViewportSize(window.width(), window.height())
                    .setColorScheme(window.scheme())
                    .setJavaScriptEnabled(window.script())
                    .setLocale("en-GB")
                    .setTimezoneId("UTC"));
    opened.add(context);
    Page page = context.newPage();
    page.onRequest(
        request -> {
          String url = request.url();
          boolean own = url.startsWith(base + "/") || url.startsWith("data:");
          if (!own && !url.startsWith("blob:")) {
            outside.add(url);
          }
        });
    page.onConsoleMessage(
        message -> {
          if (message.type().equals("error") || message.type().equals("warning")) {
            complaints.add(page.url() + ": " + message.text());
          }
        });
    page.onPageError(error -> complaints.add(page.url() + ": " + error));
    page.navigate(base + path);
    return page;
  }

  /** What axe finds on a page: rule and place of each violation, target size included. */
  public static List<String> axe(Page page) {
    return axe(
        page,
        "{runOnly: {type: 'tag', values:"
            + " ['wcag2a','wcag2aa','wcag21a','wcag21aa','wcag22aa','best-practice']}, rules:"
            + " {'target-size': {enabled: true}}}");
  }

  /** What axe finds by its rules of colour, the only ones that another scheme can break. */
  public static List<String> axeOfColours(Page page) {
    return axe(page, "{runOnly: {type: 'rule', values: ['color-contrast', 'link-in-text-block']}}");
  }

  @SuppressWarnings("unchecked")
  private static List<String> axe(Page page, String options) {
    if (!Boolean.TRUE.equals(page.evaluate("'axe' in window"))) {
      page.evaluate(resource("/axe.min.js") + "; 0");
    }
    Object found =
        page.evaluate(
            "async () => { const r = await axe.run(document, "
                + options
                + "); return r.violations.flatMap(v => v.nodes.map(n => v.id + ' at ' +"
                + " n.target.join(' ') + ': ' + n.failureSummary.replace(/\\s+/g, ' '))); }");
    return found instanceof List<?> list ? (List<String>) list : List.of();
  }

  protected static String resource(String name) {
    try (var in = BrowserTest.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("no test resource " + name);
      }
      return new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @AfterEach
  protected void closeWindows() {
    opened.forEach(BrowserContext::close);
    opened.clear();
  }
}
