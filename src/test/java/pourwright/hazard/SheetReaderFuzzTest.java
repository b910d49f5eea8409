package pourwright.hazard;

import com.code_intelligence.jazzer.junit.FuzzTest;
import org.junit.jupiter.api.Tag;

/**
 * Any text at all: no crash, and every number of the result stands in the text. Fuzzes when {@code
 * JAZZER_FUZZ=1} is set; otherwise runs the texts kept beside it.
 */
@Tag("long")
class SheetReaderFuzzTest {
  @FuzzTest(maxDuration = "5m")
  void anyTextIsReadOrRefusedInWords(byte[] text) {
    SheetReaderTest.holds(new String(text, java.nio.charset.StandardCharsets.UTF_8));
  }
}
