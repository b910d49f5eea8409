package pourwright.main;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.store.Backups;
import pourwright.store.StudioFolder;

/**
 * A file lock of SQLite is lost when the same process opens and closes the database by any other
 * way (sqlite.org, How To Corrupt An SQLite Database File, 2.2). So each opening of the books is
 * looked at from outside, with the calls that led to it.
 */
@Tag("long")
class OnlySqliteOpensTheBooksTest {
  @TempDir private Path home = Path.of("");

  /**
   * The openings of the database in a trace with call stacks that SQLite's library did not make.
   */
  static List<String> strange(List<String> trace) {
    List<String> strange = new ArrayList<>();
    Map<String, String> unfinished = new HashMap<>();
    String opening = "";
    boolean sqlite = true;
    for (String line : trace) {
      if (line.startsWith(" > ")) {
        sqlite |= line.contains("sqlitejdbc");
        continue;
      }
      if (!sqlite) {
        strange.add(opening);
      }
      String thread = line.split(" ", 2)[0];
      opening = opens(line) ? line : "";
      if (opening.endsWith("<unfinished ...>")) {
        unfinished.put(thread, opening);
        opening = "";
      } else if (line.contains("<... open")) {
        opening = Objects.requireNonNullElse(unfinished.remove(thread), "");
      }
      sqlite = opening.isEmpty();
    }
    if (!sqlite) {
      strange.add(opening);
    }
    strange.addAll(unfinished.values());
    return strange;
  }

  private static boolean opens(String line) {
    return line.contains("studio.db") && line.matches("(\\d+ +)?open.*");
  }

  @Test
  void anOpeningByAnythingElseIsNoticed() {
    List<String> trace =
        List.of(
            "1 openat(AT_FDCWD, \"/d/studio.db\", O_RDWR) = 3",
            " > /usr/lib/libc.so.6(open64+0x1) [0x1]",
            " > /d/sqlite-3-libsqlitejdbc.so(x) [0x2]",
            "1 openat(AT_FDCWD, \"/d/studio.db-wal\", O_RDONLY) = 4",
            " > /usr/lib/jvm/lib/libnio.so(Java_sun_nio_fs_open) [0x2]",
            "1 openat(AT_FDCWD, \"/d/other\", O_RDONLY) = 5");
    assertThat(strange(trace)).singleElement().asString().contains("studio.db-wal");
  }

  @Test
  void backupRestoreImportAndInspectionLeaveTheBooksToSqlite() throws Exception {
    assumeTrue(canTrace(), "strace with call stacks");
    Path data = home.resolve("studio");
    Path all = home.resolve("all.zip");
    Wiring.open(data, "", Wiring.systemClock()).close();
    String folder = data.toString();
    String backup = home.resolve("b.zip").toString();
    List<List<String>> commands =
        List.of(
            List.of("inspect", "--data", folder),
            List.of("backup", "--data", folder, "--to", backup),
            List.of("restore", backup, "--data", folder),
            List.of("export", "--data", folder, "--to", all.toString()),
            List.of("import", all.toString(), "--data", home.resolve("other").toString()));
    for (List<String> command : commands) {
      Process process = traced(command);
      try {
        assertThat(process.waitFor(180, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(Files.readString(said())).isZero();
      } finally {
        end(process);
      }
      assertThatOnlySqliteOpened(command);
    }
  }

  @Test
  void aStudioThatServesPagesAndBacksItselfUpLeavesTheBooksToSqlite() throws Exception {
    assumeTrue(canTrace(), "strace with call stacks");
    Path data = home.resolve("studio");
    List<String> command = List.of("--port", "0", "--no-browser", "--data", data.toString());
    Process process = traced(command);
    try {
      String address = await(() -> DataFolder.addressIn(data));
      for (String page : List.of("", "stockroom", "settings", "history")) {
        HttpResponse<String> answer =
            HttpClient.newHttpClient()
                .send(
                    HttpRequest.newBuilder(URI.create(address + page)).build(),
                    HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(page).isEqualTo(200);
      }
      Backups backups = new Backups(new StudioFolder(data));
      await(() -> backups.newest().map(Backups.Found::name).orElse(""));
    } finally {
      end(process);
    }
    assertThatOnlySqliteOpened(command);
  }

  private static String await(Supplier<String> something) throws InterruptedException {
    for (int i = 0; i < 1200; i++) {
      String found = something.get();
      if (!found.isEmpty()) {
        return found;
      }
      Thread.sleep(100);
    }
    throw new IllegalStateException("nothing came within two minutes");
  }

  /** Ends the traced program first; a tracer that goes first would leave it running. */
  private static void end(Process process) throws InterruptedException {
    process.descendants().forEach(ProcessHandle::destroy);
    process.waitFor(30, TimeUnit.SECONDS);
    process.descendants().forEach(ProcessHandle::destroyForcibly);
    process.destroyForcibly();
  }

  private void assertThatOnlySqliteOpened(List<String> command) throws IOException {
    List<String> trace = Files.readAllLines(home.resolve("trace.txt"), StandardCharsets.UTF_8);
    String what = String.join(" ", command);
    assertThat(trace.stream().filter(OnlySqliteOpensTheBooksTest::opens)).as(what).isNotEmpty();
    assertThat(strange(trace)).as(what).isEmpty();
  }

  private Path said() {
    return home.resolve("said.txt");
  }

  private boolean canTrace() {
    try {
      Path to = home.resolve("try.txt");
      Process strace = new ProcessBuilder("strace", "-k", "-o", to.toString(), "true").start();
      return strace.waitFor(20, TimeUnit.SECONDS) && strace.exitValue() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private Process traced(List<String> words) throws IOException {
    Path to = home.resolve("trace.txt");
    List<String> command = new ArrayList<>(List.of("strace", "-f", "-k", "-o", to.toString()));
    command.addAll(List.of("-e", "trace=open,openat,openat2"));
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-cp"));
    command.add(System.getProperty("java.class.path"));
    command.add("pourwright.main.Main");
    command.addAll(words);
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(said().toFile())
        .start();
  }
}
