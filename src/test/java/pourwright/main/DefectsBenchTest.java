package pourwright.main;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class DefectsBenchTest {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  private int bench(String... words) throws IOException {
    PrintStream printed = new PrintStream(out, true, StandardCharsets.UTF_8);
    return Benches.run(words, printed, printed);
  }

  @Test
  void theBenchPrintsWhatWasFoundAndWhatWasInvented() throws IOException {
    int code = bench("defects", "--seeds", "60");
    assertThat(out.toString(StandardCharsets.UTF_8))
        .containsPattern("planted odds of 4: found in \\d+ of 60 \\(at least 90 %\\)")
        .containsPattern("no cause: a finding in \\d+ of 60 \\(at most 3\\)");
    assertThat(code).isZero();
  }

  @Test
  void whatItDoesNotUnderstandIsRefused() throws IOException {
    assertThat(bench("defects", "--seeds", "none")).isEqualTo(2);
    assertThat(out.toString(StandardCharsets.UTF_8)).contains("--seeds none").contains("1000");
  }
}
