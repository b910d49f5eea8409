package pourwright.page.guard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.page.Server;
import pourwright.page.TestStudio;
import pourwright.page.Visitor;

/** What comes through the door of a studio on this machine, and what does not. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DoorTest {
  private Server server;
  private Visitor visitor;
  private Path folder;

  @BeforeAll
  void openTheStudio(@TempDir Path dir) {
    folder = dir;
    server = TestStudio.open(dir);
    visitor = new Visitor(server.port());
  }

  @AfterAll
  void closeTheStudio() {
    server.close();
  }

  private String raw(String request) throws IOException {
    try (Socket socket = new Socket("127.0.0.1", server.port())) {
      socket.setSoTimeout(5_000);
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      socket.getOutputStream().flush();
      InputStream in = socket.getInputStream();
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void anotherNameGetsNothingNotEvenHealthOrStyle() throws IOException {
    for (String path : List.of("/", "/healthz", "/static/slab.css", "/bells", "/nowhere")) {
      String answer =
          raw("GET " + path + " HTTP/1.1\r\nHost: evil.example\r\nConnection: close\r\n\r\n");
      assertThat(answer).as(path).startsWith("HTTP/1.1 421").doesNotContain("nav");
    }
  }

  @Test
  void noHostAndTwoHostsAreBadRequests() throws IOException {
    String own = "Host: localhost:" + server.port() + "\r\n";
    assertThat(raw("GET / HTTP/1.0\r\n\r\n")).contains(" 400 ");
    assertThat(raw("GET / HTTP/1.1\r\nConnection: close\r\n\r\n")).contains(" 400 ");
    assertThat(raw("GET / HTTP/1.1\r\n" + own + own + "Connection: close\r\n\r\n"))
        .contains(" 400 ");
    assertThat(raw("GET http://evil.example/ HTTP/1.1\r\n" + own + "Connection: close\r\n\r\n"))
        .doesNotContain(" 200 ");
  }

  @Test
  void everyAnswerCarriesTheHeadersOfTheHouse() {
    for (String path : List.of("/", "/nowhere", "/healthz", "/static/slab.css")) {
      HttpResponse<String> answer = visitor.get(path);
      assertThat(answer.headers().firstValue("Content-Security-Policy"))
          .hasValue(
              "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:"
                  + " blob:; font-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src"
                  + " 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'");
      assertThat(answer.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
      assertThat(answer.headers().firstValue("Referrer-Policy")).hasValue("same-origin");
      assertThat(answer.headers().firstValue("Server")).isEmpty();
    }
    assertThat(visitor.get("/").headers().firstValue("Cache-Control")).hasValue("no-store");
  }

  @Test
  void theCookieIsTheStudiosOwnAndOutOfReachOfScripts() {
    HttpResponse<String> answer = new Visitor(server.port()).get("/");
    String cookie = answer.headers().firstValue("Set-Cookie").orElse("");
    assertThat(cookie)
        .matches("pourwright-[a-z0-9]{5}=[A-Za-z0-9_-]{43};.*")
        .contains("HttpOnly")
        .contains("SameSite=Strict")
        .contains("Path=/");
  }

  /** Origin and fetch site of an act, and whether it is let in; PORT and OTHER stand for ports. */
  @ParameterizedTest
  @CsvSource({
    "http://127.0.0.1:PORT, , good, 303",
    "http://127.0.0.1:PORT, same-origin, good, 303",
    "http://127.0.0.1:PORT, , none, 403",
    "http://127.0.0.1:PORT, , wrong, 403",
    "http://127.0.0.1:PORT, same-site, good, 403",
    "http://127.0.0.1:PORT, cross-site, good, 403",
    "http://127.0.0.1:PORT, none, good, 403",
    "http://127.0.0.1:OTHER, , good, 403",
    "http://127.0.0.1:OTHER, same-site, good, 403",
    "http://127.0.0.1, , good, 403",
    "https://127.0.0.1:PORT, , good, 403",
    "http://localhost:PORT, , good, 403",
    "http://evil.example, , good, 403",
    "http://evil.example, cross-site, good, 403",
    "http://127.0.0.1:PORT.evil.example, , good, 403",
    "null, , good, 403",
    "null, same-origin, good, 403",
    ", , good, 403",
    ", same-origin, good, 403",
    ", , none, 403"
  })
  void anActIsTakenFromTheStudiosOwnPageAlone(
      String origin, String site, String token, int status) {
    Document page = visitor.page("/casting");
    String good = page.select("meta[name=token]").attr("content");
    String body =
        switch (token) {
          case "good" -> "token=" + good;
          case "wrong" -> "token=" + good.substring(1) + "A";
          default -> "scheme=dark";
        };
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(visitor.base() + "/look"))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(body));
    if (origin != null) {
      String port = String.valueOf(server.port());
      String other = String.valueOf(server.port() + 1);
      request.header("Origin", origin.replace("PORT", port).replace("OTHER", other));
    }
    if (site != null) {
      request.header("Sec-Fetch-Site", site);
    }
    assertThat(visitor.send(request.build()).statusCode()).isEqualTo(status);
  }

  @Test
  void aTokenOfAnotherVisitIsWorthNothing() {
    String foreign =
        new Visitor(server.port()).page("/").select("meta[name=token]").attr("content");
    visitor.get("/");
    assertThat(visitor.post("/look", Map.of("token", foreign)).statusCode()).isEqualTo(403);
  }

  @Test
  void lookingNeverChangesAnything() {
    for (String path : List.of("/look", "/undo", "/sign-out", "/devices/end")) {
      assertThat(visitor.get(path).statusCode()).as("GET " + path).isIn(404, 405);
    }
  }

  @Test
  void noPathLeadsOutOfTheHouse() throws IOException {
    List<String> dots =
        List.of(
            "..", "%2e%2e", ".%2e", "%252e%252e", "..%00", "%c0%ae%c0%ae", "....", "..;", "..\\");
    List<String> slashes = List.of("/", "%2f", "\\", "%5c", "//", "/./");
    List<String> wanted = List.of("etc/passwd", "secrets.json", "windows/win.ini", "pom.xml");
    List<String> paths = new ArrayList<>();
    for (String dot : dots) {
      for (String slash : slashes) {
        for (String file : wanted) {
          paths.add("/static/" + (dot + slash).repeat(6) + file);
        }
      }
    }
    paths.add("/static//etc/passwd");
    paths.add("/static/slab.css%00.js");
    paths.add("//etc/passwd");
    assertThat(paths).hasSizeGreaterThan(200);
    for (String path : paths) {
      String answer =
          raw(
              "GET "
                  + path
                  + " HTTP/1.1\r\nHost: localhost:"
                  + server.port()
                  + "\r\nConnection: close\r\n\r\n");
      assertThat(answer).as(path).matches("(?s)HTTP/1.1 (400|404|30\\d).*");
      assertThat(answer).as(path).doesNotContain("root:").doesNotContain("\"key\"");
    }
  }

  @Test
  void whatSomebodyTypesIntoAnAddressIsNotRunAsPage() {
    HttpResponse<String> answer = visitor.get("/%3Cscript%3Ealert(1)%3C/script%3E");
    assertThat(answer.body()).doesNotContain("<script>alert");
  }

  @Test
  void anErrorPageNamesTheRequestAndShowsNoInsides() {
    HttpResponse<String> answer = visitor.get("/nowhere");
    assertThat(answer.body())
        .containsPattern("request <code translate=\"no\">[A-Z0-9]{8}</code>")
        .doesNotContain("java.")
        .doesNotContain("at pourwright");
  }

  @Test
  void theSecretsAreReadableByTheirOwnerAlone() throws IOException {
    Path file = folder.resolve(SecretsFile.NAME);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-------");
    assertThat(Files.readString(file)).doesNotContain("passphrase");
  }

  @Test
  void aBodyBeyondTheLimitIsRefused() throws IOException {
    String head =
        "POST /look HTTP/1.1\r\nHost: 127.0.0.1:"
            + server.port()
            + "\r\nOrigin: "
            + visitor.base()
            + "\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: 60000000"
            + "\r\nConnection: close\r\n\r\ntoken=x";
    assertThat(raw(head)).containsPattern("HTTP/1.1 (413|400)");
  }
}
