package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slf4j.LoggerFactory;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import pourwright.page.Desk;
import pourwright.page.HouseRoutes;
import pourwright.page.Server;
import pourwright.page.ServerSettings;
import pourwright.page.TestStudio;
import pourwright.page.Visitor;

/** Goal G23: each failure that is mapped says what happened, what is safe and what to do. */
@DisplayName("G23 plain errors")
class PlainErrorsTest {
  private static RuntimeException sqlite(SQLiteErrorCode code) {
    return StoreTrouble.of(new SQLiteException("[" + code + "] injected", code));
  }

  /** Each fault with words of what happened and of what to do. */
  private static Map<String, Supplier<RuntimeException>> faults() {
    Map<String, Supplier<RuntimeException>> faults = new LinkedHashMap<>();
    faults.put("disk is full|free some space", () -> sqlite(SQLiteErrorCode.SQLITE_FULL));
    faults.put(
        "cannot be written to|give this account", () -> sqlite(SQLiteErrorCode.SQLITE_READONLY));
    faults.put(
        "cannot be written to|choose another", () -> sqlite(SQLiteErrorCode.SQLITE_CANTOPEN));
    faults.put("keeps the database busy|close it", () -> sqlite(SQLiteErrorCode.SQLITE_BUSY));
    faults.put("keeps the database busy|do it again", () -> sqlite(SQLiteErrorCode.SQLITE_LOCKED));
    faults.put("damaged|restore the newest backup", () -> sqlite(SQLiteErrorCode.SQLITE_CORRUPT));
    faults.put("is not one|keep the folder", () -> sqlite(SQLiteErrorCode.SQLITE_NOTADB));
    faults.put(
        "did not take the write|look at the disk", () -> sqlite(SQLiteErrorCode.SQLITE_IOERR));
    faults.put(
        "The disk is full|free some space and",
        () -> new UncheckedIOException(new IOException("No space left on device")));
    faults.put(
        "Something in the program went wrong|Load the page again",
        () -> new IllegalStateException("injected"));
    return faults;
  }

  @Test
  @DisplayName("G23 ten faults injected: a plain page each, no stack trace, its number in the log")
  void everyFaultIsSaidPlainly(@TempDir Path folder) {
    Desk desk = TestStudio.desk(folder);
    List<Map.Entry<String, Supplier<RuntimeException>>> faults = List.copyOf(faults().entrySet());
    var site =
        TestStudio.site(desk)
            .and(
                routes ->
                    routes.get(
                        "/fault/{n}",
                        http -> {
                          throw faults.get(Integer.parseInt(http.pathParam("n"))).getValue().get();
                        }));
    ListAppender<ILoggingEvent> log = new ListAppender<>();
    log.start();
    Logger logger = (Logger) LoggerFactory.getLogger(HouseRoutes.class);
    logger.addAppender(log);
    logger.setAdditive(false);
    try (Server server = TestStudio.open(site, ServerSettings.onAnyPort("Test studio"), folder)) {
      Visitor visitor = new Visitor(server.port());
      for (int i = 0; i < faults.size(); i++) {
        HttpResponse<String> answer = visitor.get("/fault/" + i);
        String[] words = faults.get(i).getKey().split("\\|", -1);
        String page = Jsoup.parse(answer.body()).select("main").text();
        assertThat(answer.statusCode()).as(page).isBetween(500, 507);
        assertThat(page.toLowerCase(Locale.ROOT))
            .contains(words[0].toLowerCase(Locale.ROOT))
            .contains(words[1].toLowerCase(Locale.ROOT))
            .containsAnyOf("is safe", "are safe");
        assertThat(answer.body()).doesNotContain("\tat ", "Exception", "injected", ".java:");
        String number = Jsoup.parse(answer.body()).select("main code").text();
        assertThat(number).isNotBlank();
        assertThat(log.list)
            .as("in the log")
            .anyMatch(event -> event.getFormattedMessage().contains(number));
      }
      assertThat(visitor.get("/").statusCode()).isEqualTo(200);
    } finally {
      logger.detachAppender(log);
      logger.setAdditive(true);
    }
  }

  /**
   * Files and writing over their limits: turned away before the body is read (RFC 9110, 15.5.14).
   */
  @ParameterizedTest(name = "G23 {1} bytes of {0} are too large: a plain page")
  @CsvSource({
    "multipart/form-data; boundary=x, 60000000",
    "application/x-www-form-urlencoded, 3000000"
  })
  void whatIsTooLargeIsSaidPlainly(String type, long bytes, @TempDir Path folder)
      throws IOException {
    try (Server server = TestStudio.open(folder);
        Socket line = new Socket("127.0.0.1", server.port())) {
      line.setSoTimeout(10_000);
      String host = "127.0.0.1:" + server.port();
      String head =
          "POST /files HTTP/1.1\r\nHost: %s\r\nOrigin: http://%s\r\nConnection: close\r\n"
              + "Content-Type: %s\r\nContent-Length: %d\r\n\r\n";
      line.getOutputStream()
          .write(
              String.format(Locale.ROOT, head, host, host, type, bytes)
                  .getBytes(StandardCharsets.US_ASCII));
      String answer = new String(line.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(answer).startsWith("HTTP/1.1 413 ");
      assertThat(Jsoup.parse(answer.substring(answer.indexOf("\r\n\r\n"))).select("main").text())
          .contains("too large", "is safe", "make it smaller")
          .doesNotContain("Exception", ".java:");
      assertThat(new Visitor(server.port()).get("/").statusCode()).isEqualTo(200);
    }
  }
}
