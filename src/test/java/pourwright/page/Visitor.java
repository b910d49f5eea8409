package pourwright.page;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** A browser without a screen: keeps cookies, reads pages, fills in forms and posts them. */
public final class Visitor {
  private final String base;
  private final HttpClient http =
      HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

  public Visitor(int port) {
    this("127.0.0.1", port);
  }

  public Visitor(String host, int port) {
    this.base = "http://" + host + ":" + port;
  }

  public String base() {
    return base;
  }

  public HttpResponse<String> get(String path) {
    return send(HttpRequest.newBuilder(URI.create(base + path)).build());
  }

  public Document page(String path) {
    return Jsoup.parse(get(path).body(), base);
  }

  /** Posts the form on a page whose action is given, with these fields changed. */
  public HttpResponse<String> post(String path, String action, Map<String, String> changed) {
    Document page = page(path);
    Element form =
        page.selectFirst("main form[action=\"" + action + "\"], form[action=\"" + action + "\"]");
    if (form == null) {
      throw new IllegalArgumentException(path + " has no form for " + action);
    }
    Map<String, String> fields = new java.util.LinkedHashMap<>();
    ((org.jsoup.nodes.FormElement) form).formData().forEach(kv -> fields.put(kv.key(), kv.value()));
    fields.putAll(changed);
    return post(action, fields);
  }

  /** Posts fields as they are, with the origin a browser would send. */
  public HttpResponse<String> post(String action, Map<String, String> fields) {
    String body =
        fields.entrySet().stream()
            .map(e -> coded(e.getKey()) + "=" + coded(e.getValue()))
            .collect(Collectors.joining("&"));
    return send(
        HttpRequest.newBuilder(URI.create(base + action))
            .header("Origin", base)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build());
  }

  public HttpResponse<String> send(HttpRequest request) {
    try {
      return http.send(request, HttpResponse.BodyHandlers.ofString());
    } catch (IOException e) {
      throw new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static String coded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
