package pourwright.pour;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

/** The table of check values of pouring names tests that are there and say what they rest on. */
class CheckValuesPouringTest {
  private static final Pattern ROW =
      Pattern.compile("\\| ([^|]+) \\| ([^|]+) \\| ([^|]+) \\| `([\\w.]+)#(\\w+)` \\|");

  @Test
  void everyTestOfTheTableIsThereAndSaysWhatItRestsOn() throws Exception {
    int rows = 0;
    for (String line : Files.readAllLines(Path.of("docs/models/check-values-pouring.md"))) {
      Matcher row = ROW.matcher(line);
      if (!row.matches()) {
        assertThat(line).as("a row that is not read").doesNotContain("Test#");
        continue;
      }
      rows++;
      String method = row.group(5);
      Class<?> test = Class.forName("pourwright." + row.group(4));
      assertThat(test.getDeclaredMethods())
          .as(row.group(4) + "#" + method)
          .filteredOn(m -> m.getName().equals(method))
          .filteredOn(
              m ->
                  Arrays.stream(m.getAnnotations())
                      .anyMatch(a -> a instanceof Test || a instanceof ParameterizedTest))
          .hasSize(1);
      Path file = Path.of("src/test/java/pourwright", row.group(4).replace('.', '/') + ".java");
      String source = Files.readString(file);
      String before = source.substring(0, source.indexOf("void " + method + "("));
      String last = before.substring(before.lastIndexOf("\n  }\n") + 1);
      assertThat(last).as(method + " has its source above it").contains("/**");
    }
    assertThat(rows).isEqualTo(13);
  }
}
