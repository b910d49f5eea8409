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
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One visitor of a bench: keeps its cookies, reads pages, sets and answers timers and counts a lot
 * as the forms do.
 */
final class BenchVisitor {
  private static final Pattern TOKEN =
      Pattern.compile("name=\"token\" (?:value|content)=\"([^\"]+)\"");
  private static final Pattern MATERIAL = Pattern.compile("\"(/stockroom/material/[^\"/?]+)\"");
  private static final Pattern LOT = Pattern.compile("\"(/stockroom/lot/\\d+)\"");
  private static final AtomicInteger NEXT = new AtomicInteger();
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  private final URI base;
  private final HttpClient http =
      HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
  private final String name = "bench-" + NEXT.incrementAndGet();
  private String token = "";
  private String lot = "";

  BenchVisitor(URI base) {
    this.base = base;
  }

  /** Reads a page; true when it answers 200. */
  boolean get(String path) throws IOException, InterruptedException {
    return send(HttpRequest.newBuilder(base.resolve(path))).statusCode() == 200;
  }

  /** Writes the next of what it writes in turn; true when it was taken. */
  boolean write(int nth) throws IOException, InterruptedException {
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
    token = first(TOKEN, body("/timers"));
    String material = first(MATERIAL, body("/stockroom"));
    lot = first(LOT, body(material));
  }

  /** Answers the timer that it set, as its page gives it. */
  private boolean answerTimer() throws IOException, InterruptedException {
    Pattern bell =
        Pattern.compile("data-name=\"" + name + "\".*?(/bells/\\d+/answer)", Pattern.DOTALL);
    return post(first(bell, body("/timers")), "&back=/timers");
  }

  private String body(String path) throws IOException, InterruptedException {
    return send(HttpRequest.newBuilder(base.resolve(path))).body();
  }

  private static String first(Pattern pattern, String text) throws IOException {
    Matcher found = pattern.matcher(text);
    if (!found.find()) {
      throw new IOException("the page has no " + pattern);
    }
    return found.group(1);
  }

  private boolean post(String path, String fields) throws IOException, InterruptedException {
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
    return answer.statusCode() == 303;
  }

  private HttpResponse<String> send(HttpRequest.Builder request)
      throws IOException, InterruptedException {
    return http.send(request.timeout(PATIENCE).build(), HttpResponse.BodyHandlers.ofString());
  }
}
