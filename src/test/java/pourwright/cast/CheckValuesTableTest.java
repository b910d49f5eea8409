package pourwright.cast;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

/** The table of check values names each one, its source, and a test that is there. */
class CheckValuesTableTest {
  private static final int NUMBERED = 67;
  private static final Pattern ROW =
      Pattern.compile("\\| ([\\d.]+) \\| ([^|]+) \\| ([^|]+) \\| `([\\w.]+)#(\\w+)` \\|");

  private record Row(String number, String value, String source, String test, String method) {}

  private static List<Row> rows() throws IOException {
    List<Row> rows = new ArrayList<>();
    for (String line : Files.readAllLines(Path.of("docs/models/check-values-casting.md"))) {
      Matcher row = ROW.matcher(line);
      if (row.matches()) {
        rows.add(new Row(row.group(1), row.group(2), row.group(3), row.group(4), row.group(5)));
      } else {
        assertThat(line).as("a row that is not read").doesNotContain("Test#");
      }
    }
    return rows;
  }

  @Test
  void everyNumberOfTheListIsInTheTable() throws IOException {
    TreeSet<Integer> numbers = new TreeSet<>();
    rows().stream()
        .map(Row::number)
        .filter(n -> n.matches("\\d+"))
        .forEach(n -> assertThat(numbers.add(Integer.valueOf(n))).as("twice: " + n).isTrue());
    assertThat(numbers)
        .containsExactlyElementsOf(IntStream.rangeClosed(1, NUMBERED).boxed().toList());
  }

  @Test
  void everyTestOfTheTableIsThereAndSaysWhatItRestsOn() throws Exception {
    for (Row row : rows()) {
      assertThat(row.value()).isNotBlank();
      assertThat(row.source()).isNotBlank();
      Class<?> test = Class.forName("pourwright." + row.test());
      List<Method> methods =
          Arrays.stream(test.getDeclaredMethods())
              .filter(m -> m.getName().equals(row.method()))
              .filter(CheckValuesTableTest::runs)
              .toList();
      assertThat(methods).as(row.number() + ": " + row.test() + "#" + row.method()).hasSize(1);
      Path file = Path.of("src/test/java/pourwright", row.test().replace('.', '/') + ".java");
      String source = Files.readString(file);
      String before = source.substring(0, source.indexOf("void " + row.method() + "("));
      String last = before.substring(before.lastIndexOf("\n  }\n") + 1);
      assertThat(last).as(row.method() + " has its source above it").contains("/**");
    }
  }

  private static boolean runs(Method method) {
    return method.isAnnotationPresent(Test.class)
        || method.isAnnotationPresent(ParameterizedTest.class);
  }
}
