package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import pourwright.main.Main;

/** The program itself in a process of its own, to be killed. */
public final class RunningProgram {
  private static final Duration PATIENCE = Duration.ofSeconds(300);
  private static final int KILLED = 128 + 9;

  private final Process process;
  private final Path said;

  private RunningProgram(Process process, Path said) {
    this.process = process;
    this.said = said;
  }

  /** Starts it on the studio in this folder; port 0 takes any. */
  public static RunningProgram start(Path data, int port, Path said) throws IOException {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx256m"));
    Optional.ofNullable(System.getProperty("pourwright.templates"))
        .ifPresent(t -> words.add("-Dpourwright.templates=" + t));
    words.addAll(List.of("-cp", System.getProperty("java.class.path")));
    words.addAll(List.of(Main.class.getName(), "--no-browser"));
    words.addAll(List.of("--port", String.valueOf(port), "--data", data.toString()));
    Files.deleteIfExists(said);
    ProcessBuilder builder = new ProcessBuilder(words).redirectErrorStream(true);
    return new RunningProgram(builder.redirectOutput(said.toFile()).start(), said);
  }

  /** The port it answers on, as it says. */
  public int awaitPort() throws IOException, InterruptedException {
    Instant patience = Instant.now().plus(PATIENCE);
    while (process.isAlive() && Instant.now().isBefore(patience)) {
      String text = Files.readString(said, StandardCharsets.UTF_8);
      int at = text.indexOf("http://localhost:");
      int end = at < 0 ? -1 : text.indexOf('/', at + 17);
      if (end > 0) {
        return Integer.parseInt(text.substring(at + 17, end));
      }
      Thread.sleep(10);
    }
    throw new AssertionError(
        "the program did not start: " + Files.readString(said, StandardCharsets.UTF_8));
  }

  /** Whether it runs. */
  public boolean isAlive() {
    return process.isAlive();
  }

  /** Ends it with SIGKILL. */
  public void kill() {
    process.destroyForcibly();
  }

  /** Waits for its end, which must have been the kill. */
  public void assertKilled() throws IOException, InterruptedException {
    assertThat(process.waitFor(20, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue())
        .as("killed, not ended: %s", Files.readString(said, StandardCharsets.UTF_8))
        .isEqualTo(KILLED);
  }
}
