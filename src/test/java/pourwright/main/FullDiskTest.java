package pourwright.main;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.work.Act;

/**
 * A disk that is full: code 14, nothing half-written, and all is well once there is space again.
 */
@Tag("long")
class FullDiskTest {
  @TempDir private Path home = Path.of("");
  private Path small = Path.of("");
  private boolean mounted;

  @BeforeEach
  void mountASmallDisk() throws Exception {
    small = Files.createDirectory(home.resolve("small"));
    mounted = call("mount", "-t", "tmpfs", "-o", "size=6m", "tmpfs", small.toString());
    assumeTrue(mounted, "may mount a small disk");
  }

  @AfterEach
  void unmountIt() throws Exception {
    if (mounted) {
      assertThat(call("umount", small.toString())).isTrue();
    }
  }

  private static boolean call(String... words) throws InterruptedException {
    try {
      Process process = new ProcessBuilder(List.of(words)).start();
      return process.waitFor(20, TimeUnit.SECONDS) && process.exitValue() == 0;
    } catch (IOException e) {
      return false;
    }
  }

  private int run(Object... words) throws IOException {
    PrintStream nobody = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
    return Main.run(
        Stream.of(words).map(Object::toString).toArray(String[]::new),
        new Machine(Map.of(), "Linux", home),
        new ByteArrayInputStream(new byte[0]),
        nobody,
        nobody);
  }

  private Path fill() throws IOException {
    Path ballast = small.resolve("ballast");
    try (OutputStream out = Files.newOutputStream(ballast)) {
      byte[] block = new byte[4096];
      while (true) {
        out.write(block);
      }
    } catch (IOException full) {
      assertThat(full).hasMessageContaining("No space left");
    }
    return ballast;
  }

  private static String nameIn(Path data) {
    try (Wiring wiring = Wiring.open(data, "", Wiring.systemClock())) {
      return wiring.name();
    }
  }

  private static void name(Path data, String name) {
    try (Wiring wiring = Wiring.open(data, "", Wiring.systemClock())) {
      wiring.studio().saveSetting.run(Act.of("MB", "name-" + name), "studio.name", name);
    }
  }

  @Test
  void aBackupOrExportThatDoesNotFitIsFourteenAndLeavesNothing() throws IOException {
    Path data = home.resolve("studio");
    name(data, "Tidewater");
    Path ballast = fill();
    assertThat(run("backup", "--data", data, "--to", small.resolve("b.zip"))).isEqualTo(14);
    assertThat(run("export", "--data", data, "--to", small.resolve("e.zip"))).isEqualTo(14);
    try (Stream<Path> files = Files.list(small)) {
      assertThat(files).containsExactly(ballast);
    }
    assertThat(run("inspect", "--data", data)).isZero();
  }

  @Test
  void aStudioOnAFullDiskCanNeitherBeBackedUpNorReplacedAndIsWholeAfterwards() throws IOException {
    Path other = home.resolve("other");
    name(other, "Otherwise");
    Path zip = home.resolve("other.zip");
    assertThat(run("backup", "--data", other, "--to", zip)).isZero();
    Path data = small.resolve("studio");
    name(data, "Tidewater");
    Path ballast = fill();
    assertThat(run("backup", "--data", data)).isEqualTo(14);
    assertThat(run("restore", zip, "--data", data)).isEqualTo(14);
    Files.delete(ballast);
    assertThat(nameIn(data)).isEqualTo("Tidewater");
    try (Wiring wiring = Wiring.open(data, "", Wiring.systemClock())) {
      assertThat(wiring.unsound()).isEmpty();
    }
    assertThat(run("restore", zip, "--data", data)).isZero();
    assertThat(nameIn(data)).isEqualTo("Otherwise");
  }
}
