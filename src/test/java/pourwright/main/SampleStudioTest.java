package pourwright.main;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sample studio is there whole or not at all, also when its making is killed. */
class SampleStudioTest {
  @Test
  void aMakingThatWasKilledLeavesNoStudioAndTheNextOneIsWhole(@TempDir Path corner)
      throws Exception {
    Path folder = corner.resolve("sample");
    Path half = corner.resolve("sample.being-made");
    Process making =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "demo",
                "--years",
                "2",
                "--data",
                folder.toString())
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    Instant patience = Instant.now().plus(Duration.ofSeconds(60));
    while (!Files.exists(half.resolve("studio.db")) && Instant.now().isBefore(patience)) {
      Thread.sleep(20);
    }
    Thread.sleep(300);
    making.destroyForcibly();
    assertThat(making.waitFor(20, TimeUnit.SECONDS)).isTrue();
    assertThat(making.exitValue()).as("killed while it was making").isEqualTo(137);
    assertThat(half).isDirectory();
    assertThat(Wiring.hasStudio(folder)).isFalse();

    StringWriter said = new StringWriter();
    int code = SampleStudio.demo(folder, 1, 17, new PrintWriter(said), new PrintWriter(said));
    assertThat(code).as(said.toString()).isZero();
    assertThat(said.toString())
        .contains("whose making was cut short was in the way and is removed");
    assertThat(half).doesNotExist();
    try (Wiring wiring = Wiring.open(folder, "", Wiring.systemClock())) {
      assertThat(wiring.name()).isEqualTo(SampleStudio.NAME);
      assertThat(wiring.unsound()).isEmpty();
    }
  }
}
