package pourwright.main;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;

/**
 * One visitor of a bench: keeps its cookies, reads pages, sets and answers timers and counts a lot
 * as the forms do.
 */
final class BenchVisitor {
  private static final Pattern TOKEN =
      Pattern.compile("name=\"token\" (?:value|content)=\"([^\"]+)\"");
  private static final Pattern MATERIAL = Pattern.compile("\"(/stockroom/material/[^\"/?]+)\"");
  private static final Pattern NAME =
      Pattern.compile("name=\"studio.name\"[^>]* value=\"([^\"]*)\"");
  private static final Pattern CURRENCY =
      Pattern.compile("name=\"currency\"[^>]* value=\"([^\"]*)\"");
  private static final Pattern LOT = Pattern.compile("\"(/stockroom/lot/\\d+)\"");
  private static final int SAID_MOST = 200;
  private static final AtomicInteger NEXT = new AtomicInteger();
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  private final URI base;
  private final HttpClient http =
      HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
  private final String name = "bench-" + NEXT.incrementAndGet();
  private String token = "";
  private String lot = "";
  private String studio = "";

  private final int which;

  /**
   * A visitor.
   *
   * @param which the number among those who write: each counts a lot of its own, since a count is
   *     refused where another's came between its look and its writing
   */
  BenchVisitor(URI base, int which) {
    this.base = base;
    this.which = which;
  }

  /** Reads a page; what it answers unless that is 200. */
  Optional<String> get(String path) throws IOException, InterruptedException {
    return unless(200, path, send(HttpRequest.newBuilder(base.resolve(path))));
  }

  /** The status and the sentence of an answer that should have had another status. */
  private static Optional<String> unless(int wanted, String path, HttpResponse<String> answer) {
    if (answer.statusCode() == wanted) {
      return Optional.empty();
    }
    String body = answer.body();
    int main = Math.max(0, body.indexOf("<main"));
    String said = body.substring(main).replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ").strip();
    return Optional.of(
        path.replaceAll("\\d+", "N")
            + " answered "
            + answer.statusCode()
            + " "
            + said.substring(0, Math.min(SAID_MOST, said.length())));
  }

  /** Writes the next of what it writes in turn; what was answered unless it was taken. */
  Optional<String> write(int nth) throws IOException, InterruptedException {
    if (token.isEmpty()) {
      prepare();
    }
    return switch (nth % 3) {
      case 0 -> post("/timers", "&label=" + name + "&minutes=600");
      case 1 -> answerTimer();
      default -> post(lot + "/count", "&found=" + (100 + nth % 50));
    };
  }

  /** Reads the form token, and finds a lot to count. */
  private void prepare() throws IOException, InterruptedException {
    token = nth(TOKEN, body("/timers"), 0);
    String material = nth(MATERIAL, body("/stockroom"), which);
    lot = nth(LOT, body(material), 0);
  }

  /**
   * Changes the units in the settings, there and back by turns, and shows a page in them; what was
   * answered unless both went well.
   */
  Optional<String> changeUnits(int nth, String page) throws IOException, InterruptedException {
    if (token.isEmpty()) {
      token = nth(TOKEN, body("/timers"), 0);
    }
    if (studio.isEmpty()) {
      String settings = body("/settings");
      String name = nth(NAME, settings, 0).replace("&#34;", "\"").replace("&amp;", "&");
      studio =
          "&studio.name="
              + URLEncoder.encode(name, StandardCharsets.UTF_8)
              + "&currency="
              + nth(CURRENCY, settings, 0);
    }
    String units =
        nth % 2 == 0
            ? "&units.mass=oz&units.length=in&units.temperature=f"
            : "&units.mass=g&units.length=mm&units.temperature=c";
    Optional<String> wrong = post("/settings", studio + units);
    return wrong.isPresent() ? wrong : get(page);
  }

  /** Answers the timer that it set, as its page gives it. */
  private Optional<String> answerTimer() throws IOException, InterruptedException {
    Pattern bell =
        Pattern.compile("data-name=\"" + name + "\".*?(/bells/\\d+/answer)", Pattern.DOTALL);
    return post(nth(bell, body("/timers"), 0), "&back=/timers");
  }

  private String body(String path) throws IOException, InterruptedException {
    return send(HttpRequest.newBuilder(base.resolve(path))).body();
  }

  private static String nth(Pattern pattern, String text, int nth) throws IOException {
    return pattern
        .matcher(text)
        .results()
        .map(found -> found.group(1))
        .distinct()
        .skip(nth)
        .findFirst()
        .orElseThrow(() -> new IOException("the page has no " + pattern));
  }

  private Optional<String> post(String path, String fields)
      throws IOException, InterruptedException {
    String form =
        "token="
            + URLEncoder.encode(token, StandardCharsets.UTF_8)
            + "&request_key="
            + UUID.randomUUID()
            + "&by=BM"
            + fields;
    String origin = base.getScheme() + "://" + base.getAuthority();
    HttpResponse<String> answer =
        send(
            HttpRequest.newBuilder(base.resolve(path))
                .header("Origin", origin)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form)));
    return unless(303, path, answer);
  }

  private HttpResponse<String> send(HttpRequest.Builder request)
      throws IOException, InterruptedException {
    return http.send(request.timeout(PATIENCE).build(), HttpResponse.BodyHandlers.ofString());
  }
}
