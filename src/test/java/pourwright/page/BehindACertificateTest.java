package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpsConfigurator;
import com.sun.net.httpserver.HttpsServer;
import java.io.IOException;
import java.io.InputStream;
import java.net.CookieManager;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The way of docs/keeping.md to a certificate of her own: a proxy before the studio. */
class BehindACertificateTest {
  private static final String PASSPHRASE = "slate tide lantern wick";
  private static final char[] KEY = "of-the-test".toCharArray();
  private static final Set<String> HANDED_ON = Set.of("cookie", "content-type", "sec-fetch-site");

  /** Signing in and recording go through; what another site sends is turned away all the same. */
  @Test
  @DisplayName("behind a proxy with a certificate: sign in, record, and a foreign origin stays out")
  void theStudioWorksBehindAProxyThatSaysItsOwnNameAndOrigin(@TempDir Path folder)
      throws Exception {
    SSLContext secret = certificate(folder.resolve("key.p12"));
    try (Server studio =
        TestStudio.share(TestStudio.site(TestStudio.desk(folder)), folder, PASSPHRASE)) {
      HttpsServer proxy =
          HttpsServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
      proxy.setHttpsConfigurator(new HttpsConfigurator(secret));
      String own = "https://localhost:" + proxy.getAddress().getPort();
      String inside = "http://localhost:" + studio.port();
      proxy.createContext("/", exchange -> handOn(exchange, own, inside));
      proxy.start();
      try {
        HttpClient browser =
            HttpClient.newBuilder().sslContext(secret).cookieHandler(new CookieManager()).build();
        HttpResponse<String> first = get(browser, own + "/");
        assertThat(first.statusCode()).isEqualTo(303);
        assertThat(first.headers().firstValue("Location")).contains("/sign-in");
        String signIn = own + "/sign-in";
        String words = "&passphrase=" + URLEncoder.encode(PASSPHRASE, StandardCharsets.UTF_8);
        assertThat(post(browser, signIn, signIn, "https://elsewhere.test", words)).isEqualTo(403);
        assertThat(post(browser, signIn, signIn, own, words)).isEqualTo(303);
        assertThat(get(browser, own + "/timers").statusCode()).isEqualTo(200);
        String timer = "&by=MB&label=demold&minutes=60";
        assertThat(post(browser, own + "/timers", own + "/timers", own, timer)).isEqualTo(303);
        assertThat(get(browser, own + "/timers").body()).contains("demold");
      } finally {
        proxy.stop(0);
      }
    }
  }

  /** What the page of the guide asks of the proxy: Host set, its own Origin put in that name. */
  private static void handOn(HttpExchange exchange, String own, String inside) throws IOException {
    HttpRequest.Builder ask =
        HttpRequest.newBuilder(URI.create(inside + exchange.getRequestURI()))
            .method(
                exchange.getRequestMethod(),
                HttpRequest.BodyPublishers.ofByteArray(exchange.getRequestBody().readAllBytes()));
    exchange
        .getRequestHeaders()
        .forEach(
            (name, values) -> {
              if (HANDED_ON.contains(name.toLowerCase(java.util.Locale.ROOT))) {
                values.forEach(value -> ask.header(name, value));
              }
            });
    String origin = exchange.getRequestHeaders().getFirst("Origin");
    if (origin != null) {
      ask.header("Origin", origin.equals(own) ? inside : origin);
    }
    try {
      HttpResponse<byte[]> answer =
          HttpClient.newHttpClient().send(ask.build(), HttpResponse.BodyHandlers.ofByteArray());
      for (String name : Set.of("Location", "Set-Cookie", "Content-Type")) {
        answer.headers().allValues(name).forEach(v -> exchange.getResponseHeaders().add(name, v));
      }
      byte[] body = answer.body();
      exchange.sendResponseHeaders(answer.statusCode(), body.length == 0 ? -1 : body.length);
      exchange.getResponseBody().write(body);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      exchange.close();
    }
  }

  private static HttpResponse<String> get(HttpClient browser, String address) throws Exception {
    return browser.send(
        HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString());
  }

  /** Posts with the token of a page, as its form would from this origin; the status. */
  private static int post(
      HttpClient browser, String page, String action, String origin, String fields)
      throws Exception {
    String token = Jsoup.parse(get(browser, page).body()).select("input[name=token]").val();
    return browser
        .send(
            HttpRequest.newBuilder(URI.create(action))
                .header("Origin", origin)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("token=" + token + fields))
                .build(),
            HttpResponse.BodyHandlers.ofString())
        .statusCode();
  }

  private static SSLContext certificate(Path file)
      throws IOException, InterruptedException, GeneralSecurityException {
    Process made =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home", ""), "bin", "keytool").toString(),
                "-genkeypair",
                "-alias",
                "studio",
                "-keyalg",
                "EC",
                "-dname",
                "CN=localhost",
                "-ext",
                "san=dns:localhost",
                "-storetype",
                "PKCS12",
                "-keystore",
                file.toString(),
                "-storepass",
                new String(KEY))
            .redirectErrorStream(true)
            .start();
    assertThat(made.waitFor(60, TimeUnit.SECONDS)).isTrue();
    KeyStore store = KeyStore.getInstance("PKCS12");
    try (InputStream in = Files.newInputStream(file)) {
      store.load(in, KEY);
    }
    KeyManagerFactory keys = KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
    keys.init(store, KEY);
    TrustManagerFactory trust =
        TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    trust.init(store);
    SSLContext secret = SSLContext.getInstance("TLS");
    secret.init(keys.getKeyManagers(), trust.getTrustManagers(), null);
    return secret;
  }
}
