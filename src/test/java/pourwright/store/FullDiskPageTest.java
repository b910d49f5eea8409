package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.OutputStream;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.FormElement;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.page.Desk;
import pourwright.page.Server;
import pourwright.page.ServerSettings;
import pourwright.page.TestStudio;
import pourwright.page.Visitor;
import pourwright.work.Studio;

/**
 * The disk is full while the studio is open: reading goes on, a write is answered with 507 (RFC
 * 4918, section 11.5) and a sentence, what was typed is sent again by one button, nothing is half
 * there, and all is well once there is space.
 */
class FullDiskPageTest {
  @TempDir Path corner;

  /** A reason of 60 kB does not fit into what is left of a small database. */
  private static final String LONG = "The batch smelt of smoke. ".repeat(700).strip();

  /** One open studio and somebody who looks at it. */
  private record Open(SqliteStore store, Server server, Visitor visitor) implements AutoCloseable {
    static Open in(Path folder, Path secrets) {
      StudioFolder data = new StudioFolder(folder);
      SqliteStore store = SqliteStore.open(data);
      Studio studio = new Studio(store.unitOfWork(), Clock.systemUTC(), new HashedFiles(data));
      Desk desk = new Desk(studio, Clock.systemUTC(), ZoneOffset.UTC, Locale.UK);
      Server server =
          TestStudio.open(TestStudio.site(desk), ServerSettings.onAnyPort("Test studio"), secrets);
      return new Open(store, server, new Visitor(server.port()));
    }

    HttpResponse<String> startTimer(String label) {
      return visitor.post(
          "/timers", "/timers", Map.of("label", label, "minutes", "20", "by", "MB"));
    }

    long deeds() {
      return store.look(h -> h.createQuery("SELECT COUNT(*) FROM deed").mapTo(Long.class).one());
    }

    /** SQLite's own limit of pages gives the very error of a full disk, SQLITE_FULL. */
    void pages(String most) throws SQLException {
      for (Map.Entry<Connection, Boolean> entry : store.connections().entrySet()) {
        if (!entry.getValue()) {
          try (Statement statement = entry.getKey().createStatement()) {
            statement.execute("PRAGMA max_page_count = " + most);
          }
        }
      }
    }

    @Override
    public void close() {
      server.close();
      store.close();
    }
  }

  @Test
  void aWriteOnAFullDiskIsToldAndCanBeDoneAgainWithoutTypingItTwice() throws SQLException {
    try (Open open = Open.in(corner, corner)) {
      assertThat(open.startTimer("Seal coat").statusCode()).isEqualTo(303);
      open.pages("1");
      long before = open.deeds();
      HttpResponse<String> told = open.startTimer(LONG);
      assertThat(open.deeds()).isEqualTo(before);
      HttpResponse<String> done = tellsAndKeeps(open, told, () -> open.pages("1000000"));
      assertThat(done.statusCode()).isEqualTo(303);
      assertThat(open.deeds()).isEqualTo(before + 1);
      assertThat(open.store.unsound()).isEmpty();
    }
  }

  /** What makes space again. */
  private interface Freeing {
    void free() throws Exception;
  }

  /** The page of a write that did not fit; answers what came of its button after there is space. */
  private static HttpResponse<String> tellsAndKeeps(
      Open open, HttpResponse<String> told, Freeing freeing) {
    assertThat(told.statusCode()).isEqualTo(507);
    Document page = Jsoup.parse(told.body(), open.visitor.base());
    assertThat(page.select("h1").text()).isEqualTo("The disk is full; nothing of this was saved.");
    assertThat(page.select(".lead").text())
        .isEqualTo("Free some space and do it again; everything saved before is safe.");
    assertThat(open.visitor.get("/timers").statusCode()).isEqualTo(200);
    assertThat(open.visitor.get("/timers").body()).contains("Seal coat");
    FormElement form = (FormElement) page.selectFirst("main form");
    Map<String, String> fields = new LinkedHashMap<>();
    if (form != null) {
      form.formData().forEach(kv -> fields.put(kv.key(), kv.value()));
      assertThat(form.select("button").text()).isEqualTo("Do it again");
    }
    assertThat(fields).containsEntry("label", LONG).containsEntry("by", "MB");
    try {
      freeing.free();
    } catch (Exception e) {
      throw new AssertionError(e);
    }
    return open.visitor.post("/timers", fields);
  }

  /** The same on a disk that is really full. */
  @Test
  @Tag("long")
  void aStudioOnASmallDiskSurvivesThatItFillsUp() throws Exception {
    Path small = Files.createDirectory(corner.resolve("small"));
    Assumptions.assumeTrue(
        call("mount", "-t", "tmpfs", "-o", "size=8m", "tmpfs", small.toString()),
        "may mount a small disk");
    try {
      fillUp(small);
    } finally {
      assertThat(call("umount", small.toString())).isTrue();
    }
  }

  private void fillUp(Path small) throws Exception {
    Path data = small.resolve("studio");
    Path ballast = small.resolve("ballast");
    try (Open open = Open.in(data, corner)) {
      assertThat(open.startTimer("Seal coat").statusCode()).isEqualTo(303);
      fill(ballast);
      long acknowledged = open.deeds();
      HttpResponse<String> told = open.startTimer(LONG);
      for (int i = 0; i < 400 && told.statusCode() == 303; i++) {
        acknowledged++;
        told = open.startTimer(LONG);
      }
      assertThat(open.deeds()).isEqualTo(acknowledged);
      HttpResponse<String> done = tellsAndKeeps(open, told, () -> Files.delete(ballast));
      assertThat(done.statusCode()).isEqualTo(303);
      assertThat(open.deeds()).isEqualTo(acknowledged + 1);
    }
    try (SqliteStore again = SqliteStore.open(new StudioFolder(data))) {
      assertThat(again.unsound()).isEmpty();
    }
  }

  private static void fill(Path ballast) throws java.io.IOException {
    try (OutputStream out = Files.newOutputStream(ballast)) {
      byte[] block = new byte[4096];
      while (true) {
        out.write(block);
      }
    } catch (java.io.IOException full) {
      assertThat(full).hasMessageContaining("No space left");
    }
  }

  private static boolean call(String... words) throws InterruptedException {
    try {
      Process process = new ProcessBuilder(List.of(words)).start();
      return process.waitFor(20, TimeUnit.SECONDS) && process.exitValue() == 0;
    } catch (java.io.IOException e) {
      return false;
    }
  }
}
