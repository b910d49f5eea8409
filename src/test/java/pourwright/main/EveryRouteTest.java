package pourwright.main;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
import pourwright.page.BrowserTest;
import pourwright.page.Routes;
import pourwright.page.Server;
import pourwright.page.Visitor;
import pourwright.work.Act;
import pourwright.work.Outcome;

/**
 * Every page the studio can show, found by its links and its forms, in three states: empty, with a
 * year of work in it, and refusing what was typed. A {@link RouteWalk} looks at each.
 *
 * <p>Everyday one page of each route and state in one of nine looks by turns; {@code dev/everypage}
 * shows three pages of each route in all nine looks.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class EveryRouteTest extends BrowserTest {
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

  private EveryStudio studio;
  private int saved;

  @BeforeAll
  void openBoth(@TempDir Path folder) {
    studio = new EveryStudio(folder);
  }

  @AfterAll
  void close() {
    studio.close();
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

  private void walk(int ofEach, boolean all) {
    long began = System.nanoTime();
    Routes bare = studio.bare(ofEach);
    Routes year = studio.worked(ofEach);
    assertThat(bare.broken()).containsExactly("/broken", "/full");
    assertThat(year.broken()).containsExactly("/broken", "/full");
    assertThat(year.unreached())
        .as("routes that no link leads to")
        .filteredOn(route -> !NO_PAGES.contains(route) && !NOT_IN_THE_DEMO.contains(route))
        .isEmpty();
    RouteWalk walk = new RouteWalk(all);
    int refused =
        through(walk, studio.full, "year", year) + through(walk, studio.empty, "empty", bare);
    assertThat(refused).as("forms that refused an empty sheet").isGreaterThan(60);
    closeWindows();
    System.err.printf(
        "every route: %d routes, %d pages empty, %d with a year, %d refusals, %d looks, %d findings,"
            + " %.0f s%n",
        studio.full.looks().size(),
        bare.pages().size(),
        year.pages().size(),
        refused,
        walk.looked(),
        walk.found().size(),
        (System.nanoTime() - began) / 1e9);
    assertThat(walk.found()).isEmpty();
    assertThat(outside).isEmpty();
    complaints.removeIf(c -> c.contains("status of 4") || c.contains("status of 5"));
    assertThat(complaints).isEmpty();
  }

  private int through(RouteWalk walk, Server server, String state, Routes routes) {
    String base = "http://127.0.0.1:" + server.port();
    return walk.through(visit(base, "/", Window.NARROW), base, state, routes);
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
    Visitor visitor = new Visitor(studio.full.port());
    for (String route : studio.worked(1).pages()) {
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
                    studio
                        .year()
                        .saveSetting
                        .run(Act.of("MB", key + " " + value + " " + saved++), key, value))
                .matches(Outcome::isDone));
  }

  /** What is typed into a form and refused stands there again to the letter; some is taken. */
  @Test
  @Order(Integer.MAX_VALUE)
  void whatWasTypedAndRefusedIsShownAgain() {
    List<String> lost = new ArrayList<>();
    Set<String> tried = new HashSet<>();
    Visitor visitor = new Visitor(studio.full.port());
    Routes year = studio.worked(1);
    int refused = 0;
    for (String route : year.pages()) {
      for (Element each : visitor.page(route).select("main form[method=post]")) {
        FormElement form = (FormElement) each;
        String action = form.attr("action");
        boolean file = form.attr("enctype").equals("multipart/form-data");
        if (file
            || RouteWalk.NOT_TRIED.contains(action)
            || !tried.add(action.replaceAll("\\d+", "N"))) {
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
}
