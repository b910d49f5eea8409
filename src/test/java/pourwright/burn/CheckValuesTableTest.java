package pourwright.burn;

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
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

/**
 * The table of check values has every row of the handbook, its source, and a test that is there.
 */
class CheckValuesTableTest {
  private static final int NUMBERED = 38;
  private static final Pattern ROW =
      Pattern.compile("\\| ([\\d.]+) \\| ([^|]+) \\| ([^|]+) \\| ([^|]+) \\|");
  private static final Pattern TEST = Pattern.compile("`([\\w.]+)#(\\w+)`");
  private static final String NONE = "no formula of ours";

  private record Row(String number, String source, String test) {}

  private static List<Row> rows() throws IOException {
    List<Row> rows = new ArrayList<>();
    for (String line : Files.readAllLines(Path.of("docs/models/check-values-burning.md"))) {
      Matcher row = ROW.matcher(line);
      if (row.matches()) {
        rows.add(new Row(row.group(1), row.group(3), row.group(4)));
      } else {
        assertThat(line).as("a row that is not read").doesNotContain("Test#", "Properties#");
      }
    }
    return rows;
  }

  @Test
  void everyRowOfTheHandbookIsInTheTable() throws IOException {
    TreeSet<Integer> numbers = new TreeSet<>();
    rows().stream()
        .map(Row::number)
        .filter(n -> n.matches("\\d+") && Integer.parseInt(n) <= NUMBERED)
        .forEach(n -> numbers.add(Integer.valueOf(n)));
    assertThat(numbers)
        .containsExactlyElementsOf(IntStream.rangeClosed(1, NUMBERED).boxed().toList());
  }

  @Test
  void everyTestOfTheTableIsThere() throws Exception {
    int held = 0;
    for (Row row : rows()) {
      assertThat(row.source()).isNotBlank();
      Matcher test = TEST.matcher(row.test());
      if (!test.matches()) {
        assertThat(row.test()).as(row.number()).startsWith(NONE);
        continue;
      }
      held++;
      Class<?> type = Class.forName("pourwright." + test.group(1));
      List<Method> methods =
          Arrays.stream(type.getDeclaredMethods())
              .filter(m -> m.getName().equals(test.group(2)))
              .filter(CheckValuesTableTest::runs)
              .toList();
      assertThat(methods).as(row.number() + ": " + row.test()).hasSize(1);
    }
    assertThat(held).isGreaterThanOrEqualTo(40);
  }

  private static boolean runs(Method method) {
    return method.isAnnotationPresent(Test.class)
        || method.isAnnotationPresent(ParameterizedTest.class)
        || method.isAnnotationPresent(Property.class);
  }
}
