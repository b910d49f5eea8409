package pourwright.heat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The two precisions are one text. */
class SweepTextTest {
  private static final Path ROOM = Path.of("src/main/java/pourwright/heat");

  private static String code(String file) throws IOException {
    String text = Files.readString(ROOM.resolve(file));
    return text.replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("\\s+", "");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Sweep", "ExplicitSweep"})
  void theSinglePrecisionSweepIsTheDoubleOneInAnotherType(String sweep) throws IOException {
    String single =
        code(sweep + "64.java").replace("double", "float").replace(sweep + "64", sweep + "32");
    assertThat(code(sweep + "32.java")).isEqualTo(single);
  }
}
