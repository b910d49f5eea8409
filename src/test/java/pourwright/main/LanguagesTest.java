package pourwright.main;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pourwright.page.BrowserTest;
import pourwright.page.Place;
import pourwright.page.Places;
import pourwright.page.Routes;
import pourwright.page.Server;
import pourwright.page.ServerSettings;
import pourwright.page.Site;
import pourwright.page.Visitor;
import pourwright.page.guard.SecretsFile;
import pourwright.page.words.Language;
import pourwright.page.words.Unsaid;

/** Goal G22: three languages, no text left in plain English, and a page that runs the other way. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LanguagesTest extends BrowserTest {
  private Wiring books;
  private Server server;
  private Path folder;

  @BeforeAll
  void openAYearOfWork(@TempDir Path dir) {
    folder = dir.resolve("studio");
    books = Wiring.open(folder, "", Wiring.systemClock());
    DemoStudio.make(
        books.store().unitOfWork(),
        books.studio().files(),
        new DemoStudio.Spec(1, 17),
        Instant.now(),
        ZoneId.of("UTC"));
    server =
        new Server(
            Site.of(books.desk(), () -> ""),
            ServerSettings.onAnyPort(SampleStudio.NAME),
            new SecretsFile(folder));
    server.start();
  }

  @AfterAll
  void close() {
    server.close();
    books.close();
  }

  private List<String> starts() {
    List<String> starts = new java.util.ArrayList<>();
    for (Place place : Places.all(books.desk())) {
      starts.add(place.path());
    }
    starts.addAll(
        List.of(
            "/help",
            "/devices",
            "/timers",
            "/history",
            "/hold",
            "/stop",
            "/find?mark=12X",
            "/settings",
            "/welcome",
            "/plan",
            "/nowhere"));
    return starts;
  }

  @Test
  void noPageSaysAnythingThatTheBooksOfPhrasesDoNotHave() {
    Routes routes = Routes.walk(server, starts(), 1);
    Visitor visitor = new Visitor(server.port());
    Unsaid unsaid = Unsaid.in(folder.resolve("studio.db"));
    Map<String, String> found = new TreeMap<>();
    for (String page : new TreeSet<>(routes.pages())) {
      unsaid.on(visitor.get(page).body()).forEach(phrase -> found.putIfAbsent(phrase, page));
    }
    String list = System.getProperty("pourwright.unsaid", "");
    if (!list.isEmpty()) {
      write(Path.of(list), found, unsaid);
    }
    assertThat(routes.pages()).hasSizeGreaterThan(30);
    assertThat(found).isEmpty();
  }

  private static void write(Path file, Map<String, String> found, Unsaid unsaid) {
    try {
      java.nio.file.Files.write(
          file,
          found.entrySet().stream()
              .map(e -> e.getValue() + "\t" + e.getKey() + "\t" + unsaid.asPhrase(e.getKey()))
              .toList());
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void aDeviceChoosesItsLanguageAndNothingElseChanges() {
    Visitor german = new Visitor(server.port());
    german.post("/", "/language", Map.of("language", "de"));
    assertThat(german.page("/").select("html").attr("lang")).isEqualTo("de");
    assertThat(new Visitor(server.port()).page("/").select("html").attr("lang")).isEqualTo("en");
    for (Language language : Language.offered()) {
      german.post("/", "/language", Map.of("language", language.tag()));
      assertThat(german.page("/casting").select("nav.places a")).hasSize(9);
    }
  }

  @Test
  void aPageThatRunsFromRightToLeftIsNotBroken() {
    Page page = visit("http://127.0.0.1:" + server.port(), "/", Window.PHONE);
    page.evaluate(
        "() => { const b = document.querySelector('form[action=\"/language\"] button');"
            + " b.value = 'qps-rtl'; b.click(); }");
    page.waitForFunction("document.documentElement.dir === 'rtl'");
    for (String start : starts()) {
      page.navigate("http://127.0.0.1:" + server.port() + start);
      Object wide = page.evaluate("document.documentElement.scrollWidth");
      assertThat(((Number) wide).intValue()).as(start).isLessThanOrEqualTo(390);
    }
  }
}
