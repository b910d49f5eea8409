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
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One visitor of a bench: keeps its cookies, reads pages, starts timers as the form does. */
final class BenchVisitor {
  private static final Pattern TOKEN =
      Pattern.compile("name=\"token\" (?:value|content)=\"([^\"]+)\"");
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  private final URI base;
  private final HttpClient http =
      HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
  private String token = "";

  BenchVisitor(URI base) {
    this.base = base;
  }

  /** Reads a page; true when it answers 200. */
  boolean get(String path) throws IOException, InterruptedException {
    return send(HttpRequest.newBuilder(base.resolve(path))).statusCode() == 200;
  }

  /** Starts a timer; true when it was taken. */
  boolean startTimer(int nth) throws IOException, InterruptedException {
    if (token.isEmpty()) {
      Matcher found = TOKEN.matcher(send(HttpRequest.newBuilder(base.resolve("/timers"))).body());
      token = found.find() ? found.group(1) : "";
    }
    String form =
        "token="
            + URLEncoder.encode(token, StandardCharsets.UTF_8)
            + "&request_key="
            + UUID.randomUUID()
            + "&label=bench+"
            + nth
            + "&minutes=600&by=BM";
    String origin = base.getScheme() + "://" + base.getAuthority();
    HttpResponse<String> answer =
        send(
            HttpRequest.newBuilder(base.resolve("/timers"))
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
