package pourwright.heat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The two precisions are one text. */
class SweepTextTest {
  private static final Path ROOM = Path.of("src/main/java/pourwright/heat");

  private static String code(String file) throws IOException {
    String text = Files.readString(ROOM.resolve(file));
    return text.replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("\\s+", "");
  }

  @Test
  void theSinglePrecisionSweepIsTheDoubleOneInAnotherType() throws IOException {
    String single = code("Sweep64.java").replace("double", "float").replace("Sweep64", "Sweep32");
    assertThat(code("Sweep32.java")).isEqualTo(single);
  }
}
