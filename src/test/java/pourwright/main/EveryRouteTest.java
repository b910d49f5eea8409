package pourwright.main;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import io.javalin.config.RoutesConfig;
import java.io.ByteArrayInputStream;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;
import org.jsoup.nodes.TextNode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.batch.PieceStep;
import pourwright.card.CandleDesign;
import pourwright.page.BrowserTest;
import pourwright.page.Place;
import pourwright.page.Routes;
import pourwright.page.Server;
import pourwright.page.ServerSettings;
import pourwright.page.Site;
import pourwright.page.Visitor;
import pourwright.page.guard.SecretsFile;
import pourwright.page.plan.BuyDesk;
import pourwright.page.plan.PlanCorner;
import pourwright.page.plan.PromiseDesk;
import pourwright.page.plan.SeasonDesk;
import pourwright.plan.ForwardRule;
import pourwright.plan.Promise;
import pourwright.plan.SeatClass;
import pourwright.stock.Purchase;
import pourwright.work.Act;
import pourwright.work.AfterSale;
import pourwright.work.AttachFile;
import pourwright.work.BeginPour;
import pourwright.work.BooksUnavailable;
import pourwright.work.CardVersion;
import pourwright.work.Classes;
import pourwright.work.Drawers;
import pourwright.work.MarketDay;
import pourwright.work.Outcome;
import pourwright.work.PieceBook;
import pourwright.work.RecordAfterSale;
import pourwright.work.Studio;
import pourwright.work.Subject;

/**
 * Every page the studio can show, found by its links and its forms, in three states: empty, with a
 * year of work in it, and refusing what was typed. Each is looked at by axe (WCAG 2.2 A and AA,
 * best practice, target size), and must not scroll sideways at 320 pixels (WCAG 1.4.10), also with
 * the text spacing of WCAG 1.4.12.
 *
 * <p>Everyday one page of each route and state in one of nine looks by turns; {@code dev/everypage}
 * shows three pages of each route in all nine looks.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class EveryRouteTest extends BrowserTest {
  private static final List<String> HOUSE =
      List.of(
          "/help",
          "/devices",
          "/sign-in",
          "/timers",
          "/history",
          "/hold",
          "/after",
          "/stop",
          "/find",
          "/find?mark=12X",
          "/settings",
          "/welcome",
          "/plan",
          "/plan/again",
          "/after",
          "/settings/crew",
          "/m/12X",
          "/pair/none",
          "/nowhere",
          "/broken",
          "/full",
          "/piece/999999");

  /** Parts of other pages, files, what is good once, and what only one step of a pour offers. */
  private static final Set<String> NO_PAGES =
      Set.of(
          "/static/{name}",
          "/healthz",
          "/readyz",
          "/bells",
          "/bells/stream",
          "/draft",
          "/shelf/runs/{id}/part",
          "/shelf/runs/{id}/scene",
          "/pair/{code}",
          "/slate/books/csv/{table}",
          "/slate/books/journal",
          "/slate/books/workbook",
          "/pouring/template/{candle}");

  /** Pages of things that a year of the demo does not hold yet. */
  private static final Set<String> NOT_IN_THE_DEMO =
      Set.of(
          "/after/{id}",
          "/stockroom/market/{name}",
          "/stockroom/market/{name}/sheet.pdf",
          "/stockroom/shops/{name}");

  /** Deeds that end the visit, begin long work, or cannot be refused. */
  private static final Set<String> NOT_TRIED =
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

  private Wiring emptyBooks;
  private Server empty;
  private Wiring fullBooks;
  private Server full;
  private int turn;
  private int looked;
  private final List<String> found = new ArrayList<>();

  @BeforeAll
  void openBoth(@TempDir Path folder) {
    emptyBooks = Wiring.open(folder.resolve("empty"), "", Wiring.systemClock());
    empty = serve(emptyBooks, folder.resolve("empty"));
    fullBooks = Wiring.open(folder.resolve("full"), "", Wiring.systemClock());
    DemoStudio.make(
        fullBooks.store().unitOfWork(),
        fullBooks.studio().files(),
        new DemoStudio.Spec(1, 17),
        Instant.now(),
        ZoneId.of("UTC"));
    full = serve(fullBooks, folder.resolve("full"));
    workToday(fullBooks.studio());
  }

  /** A cast and two pours under way, a picture of one, a simulation. */
  private void workToday(Studio studio) {
    BatchPlan.Makes makes = new BatchPlan.Makes("bollard", 1, 2, "bollard-mold");
    BatchPlan cast = new BatchPlan(BatchKind.CAST, "grey", 1, List.of(makes), List.of(), null);
    long batch = studio.startCast.run(Act.of("MB", "a cast today"), cast).made().id();
    Subject subject = Subject.of(Subject.Kind.BATCH, batch);
    AttachFile.Request note = new AttachFile.Request(subject, "text/plain", "note.txt");
    byte[] words = "sprayed the mold twice".getBytes(StandardCharsets.UTF_8);
    assertThat(
            studio.attachFile.run(
                Act.of("MB", "a note today"), note, new ByteArrayInputStream(words)))
        .matches(Outcome::isDone);
    List<CandleDesign> designs =
        studio.look(
            books -> books.cards().all(Drawers.CANDLE).stream().map(CardVersion::body).toList());
    for (CandleDesign design : designs.subList(0, 2)) {
      assertThat(
              studio.beginPour.run(
                  Act.of("MB", "pour today of " + design.code()),
                  new BeginPour.Request(design.code(), 4, 0)))
          .matches(Outcome::isDone);
    }
    afterTheSale(studio);
    LocalDate day = studio.today().plusDays(9);
    SeatClass taught =
        new SeatClass(
            Classes.name(day, LocalTime.of(10, 0)),
            "bollard-rain",
            SeatClass.Does.CAST,
            6,
            day,
            LocalTime.of(10, 0),
            LocalTime.of(13, 0),
            "MB");
    assertThat(studio.orders.takeClass(Act.of("MB", "a class"), taught)).matches(Outcome::isDone);
    Visitor visitor = new Visitor(full.port());
    done(visitor.post("/shelf/simulate", "/shelf/simulate", Map.of("hours", "1", "grid", "5")));
    done(visitor.post("/plan", "/plan/again", Map.of()));
    await("a plan to take", () -> visitor.get("/plan/again").body().contains("/plan/take"));
    done(visitor.post("/plan/again", "/plan/take", Map.of("by", "MB")));
  }

  /** A candle that came back, and a market day that waits to be counted back. */
  private static void afterTheSale(Studio studio) {
    Piece sold =
        studio.look(
            books ->
                books.pieces().list(PieceBook.Which.ALL, null, 500).items().stream()
                    .filter(
                        p -> p.state() instanceof PieceState.Gone g && g.how() == PieceStep.SOLD)
                    .findFirst()
                    .orElseThrow());
    assertThat(
            studio.afterSale.run(
                Act.of("MB", "one came back"),
                new RecordAfterSale.Request(AfterSale.Kind.RETURN, sold.id(), null, "", null, 0)))
        .matches(Outcome::isDone);
    String candle =
        studio.look(
            books ->
                books.recalls().counts("Rested").keySet().stream()
                    .filter(code -> books.burns().proof(code, 1).isPresent())
                    .filter(
                        code ->
                            books.recalls().standing(code, "Rested", 50).stream()
                                .anyMatch(p -> books.holds().stopping(p).isEmpty()))
                    .findFirst()
                    .orElseThrow());
    assertThat(
            studio.market.pack(
                Act.of("MB", "a market"),
                new MarketDay.Pack("Market today Quay", studio.today(), Map.of(candle, 1), 0)))
        .matches(Outcome::isDone);
  }

  private static void done(HttpResponse<String> answer) {
    assertThat(answer.statusCode()).as(answer.uri().getPath()).isIn(302, 303);
  }

  private static void await(String what, BooleanSupplier there) {
    for (int i = 0; i < 300 && !there.getAsBoolean(); i++) {
      LockSupport.parkNanos(100_000_000);
    }
    assertThat(there.getAsBoolean()).as(what).isTrue();
  }

  private static Server serve(Wiring wiring, Path folder) {
    Server server =
        new Server(
            Site.of(wiring.desk(), () -> "")
                .and(new PlanCorner(wiring.desk(), new ForwardRule(), Duration.ofSeconds(2)))
                .and(
                    new PromiseDesk(
                        wiring.desk(),
                        (problem, goal, standing, effort) ->
                            new Promise.None(List.of("no search in this test")),
                        Duration.ofSeconds(1)))
                .and(new SeasonDesk(wiring.desk()))
                .and(
                    new BuyDesk(wiring.desk(), list -> new Purchase.NotToBeHad(0, "nothing", 1, 0)))
                .and(EveryRouteTest::broken),
            ServerSettings.onAnyPort(SampleStudio.NAME),
            new SecretsFile(folder));
    server.start();
    return server;
  }

  /** Pages on which the program or the disk fails, to see what is said then. */
  private static void broken(RoutesConfig routes) {
    routes.get(
        "/broken",
        http -> {
          throw new IllegalStateException("a fault that a test made");
        });
    routes.get(
        "/full",
        http -> {
          throw new BooksUnavailable(true, "the disk is full", "free some space and do it again");
        });
  }

  @AfterAll
  void close() {
    empty.close();
    full.close();
    emptyBooks.close();
    fullBooks.close();
  }

  @Test
  void everyRouteInThreeStatesInOneLookEach() {
    walk(1, false);
  }

  @Test
  @Tag("long")
  void everyRouteInThreeStatesInAllNineLooks() {
    walk(Integer.parseInt(System.getenv().getOrDefault("EVERY_PAGES", "3")), true);
  }

  /** Units are set to hers for this and set back: no figure and no field is in grams alone. */
  @Test
  void everyPageShowsHerUnits() {
    Map<String, String> hers =
        Map.of("units.mass", "oz", "units.length", "in", "units.temperature", "f");
    Map<String, String> house =
        Map.of("units.mass", "g", "units.length", "mm", "units.temperature", "c");
    set(hers);
    List<String> alone = new ArrayList<>();
    Visitor visitor = new Visitor(full.port());
    for (String route : Routes.walk(full, start(fullBooks), 1).pages()) {
      Element main = visitor.page(route).selectFirst("main");
      if (main == null) {
        continue;
      }
      main.select(".unit").stream()
          .filter(unit -> METRIC.contains(unit.text().strip()))
          .forEach(
              unit -> alone.add(route + " asks in " + requireNonNull(unit.parent()).outerHtml()));
      main.select("svg, script, style, textarea, option, title, pre, code, button").remove();
      main.getAllElements().stream()
          .flatMap(each -> each.textNodes().stream())
          .map(TextNode::text)
          .filter(text -> ALONE.matcher(text).find())
          .forEach(text -> alone.add(route + " says " + text.strip()));
    }
    set(house);
    assertThat(alone).isEmpty();
  }

  private static final Set<String> METRIC = Set.of("g", "kg", "mm", "\u00b0C");
  private static final Pattern ALONE =
      Pattern.compile(
          "(?<![\\d.,\\w-])-?\\d[\\d.,]*[ \\u00a0](\u00b0C|kg|g|mm)(?![\\w/\u00b7\u00b2\u00b3])(?! \\()");

  private void set(Map<String, String> settings) {
    settings.forEach(
        (key, value) ->
            assertThat(
                    fullBooks
                        .studio()
                        .saveSetting
                        .run(Act.of("MB", key + " " + value + " " + turn++), key, value))
                .matches(Outcome::isDone));
  }

  /** What is typed into a form and refused stands there again to the letter; some is taken. */
  @Test
  @Order(Integer.MAX_VALUE)
  void whatWasTypedAndRefusedIsShownAgain() {
    List<String> lost = new ArrayList<>();
    Set<String> tried = new HashSet<>();
    Visitor visitor = new Visitor(full.port());
    Routes year = Routes.walk(full, start(fullBooks), 1);
    int refused = 0;
    for (String route : year.pages()) {
      for (Element each : visitor.page(route).select("main form[method=post]")) {
        FormElement form = (FormElement) each;
        String action = form.attr("action");
        boolean file = form.attr("enctype").equals("multipart/form-data");
        if (file || NOT_TRIED.contains(action) || !tried.add(action.replaceAll("\\d+", "N"))) {
          continue;
        }
        Map<String, String> fields = new LinkedHashMap<>();
        form.formData().forEach(field -> fields.put(field.key(), field.value()));
        List<String> typed = form.select(TYPED).eachAttr("name");
        typed.forEach(name -> fields.put(name, ODD));
        HttpResponse<String> answer = visitor.post(action, fields);
        if (answer.statusCode() < 400) {
          continue;
        }
        refused++;
        Document again = Jsoup.parse(answer.body());
        for (String name : typed) {
          if (again.select("main form [name=" + name + "]").stream()
              .noneMatch(field -> field.val().equals(ODD))) {
            lost.add(route + " -> " + action + " loses " + name);
          }
        }
      }
    }
    assertThat(lost).isEmpty();
    assertThat(refused).isGreaterThan(15);
  }

  private static final String ODD = "1 1/2 qq";
  private static final String TYPED =
      "input:not([type]), input[type=text], input[type=number], textarea";

  private void walk(int ofEach, boolean all) {
    found.clear();
    looked = 0;
    long began = System.nanoTime();
    Routes bare = Routes.walk(empty, start(emptyBooks), ofEach);
    Routes year = Routes.walk(full, start(fullBooks), ofEach);
    assertThat(bare.broken()).containsExactly("/broken", "/full");
    assertThat(year.broken()).containsExactly("/broken", "/full");
    assertThat(year.unreached())
        .as("routes that no link leads to")
        .filteredOn(route -> !NO_PAGES.contains(route) && !NOT_IN_THE_DEMO.contains(route))
        .isEmpty();
    Page page = visit(base(full), "/", Window.NARROW);
    year.pages().forEach(route -> look(page, full, "year", route, all));
    int refused = refusals(page, full, year, all);
    Page other = visit(base(empty), "/", Window.NARROW);
    bare.pages().forEach(route -> look(other, empty, "empty", route, all));
    refused += refusals(other, empty, bare, all);
    assertThat(refused).as("forms that refused an empty sheet").isGreaterThan(60);
    closeWindows();
    System.err.printf(
        "every route: %d routes, %d pages empty, %d with a year, %d refusals, %d looks, %d findings,"
            + " %.0f s%n",
        full.looks().size(),
        bare.pages().size(),
        year.pages().size(),
        refused,
        looked,
        found.size(),
        (System.nanoTime() - began) / 1e9);
    assertThat(found).isEmpty();
    assertThat(outside).isEmpty();
    complaints.removeIf(c -> c.contains("status of 4") || c.contains("status of 5"));
    assertThat(complaints).isEmpty();
  }

  private static List<String> start(Wiring wiring) {
    List<String> from = new ArrayList<>();
    wiring.site(null).places().forEach((Place p) -> from.add(p.path()));
    from.addAll(HOUSE);
    return from;
  }

  private static String base(Server server) {
    return "http://127.0.0.1:" + server.port();
  }

  private void look(Page page, Server server, String state, String route, boolean all) {
    page.navigate(base(server) + route);
    look(page, state + " " + route, all);
  }

  /**
   * Looks at the page that is open, in all nine looks or in the one whose turn it is. Of the nine,
   * the light ones by all rules and the others by the rules of colour: a scheme changes no more.
   */
  private void look(Page page, String name, boolean all) {
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
      (colours ? axeOfColours(page) : axe(page)).forEach(v -> found.add(where + v));
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
  private int refusals(Page page, Server server, Routes routes, boolean all) {
    int refused = 0;
    Set<String> tried = new HashSet<>();
    for (String route : routes.pages()) {
      page.navigate(base(server) + route);
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
        look(page, "refused " + route + " -> " + answer.getKey(), all);
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
