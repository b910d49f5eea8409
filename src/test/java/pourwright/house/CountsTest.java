package pourwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * No count is glued to a word for many ("1 casts") or to the end of an ordinal ("2th pour"): what a
 * page or a paper says is counted by {@link pourwright.quantity.Counted}.
 */
class CountsTest {
  private static final String MANY =
      "(?:[a-z]+ )?(?:pieces|candles|casts|castings|pours|lots|lines|batches|seats|kits|molds|tests"
          + "|readings|wicks|coats|vessels|packages|substances|lives|times|days|st|nd|rd|th)\\b";

  /** A constant of the house is never one, and a range or a measured figure is no count. */
  private static final Pattern GLUED =
      Pattern.compile(
          "(?<left>[\\w.()]+)\\s*\\+\\s*\"(?: |(?=(?:st|nd|rd|th)\\b))(?!than )" + MANY);

  private static final Pattern NO_COUNT =
      Pattern.compile("(?:\\w+\\.)?[A-Z_]+(?:\\.toDays\\(\\))?|0\\)|toDays");

  private static final Pattern FORMATTED = Pattern.compile("%d " + MANY);
  private static final Pattern ON_A_PAGE = Pattern.compile("\\$\\{(?!Counted)[^}]*} " + MANY);

  @Test
  void oneIsNotSaidAsManyAnywhere() throws IOException {
    List<String> found = new ArrayList<>();
    for (String room : List.of("page", "work", "sheet", "burn", "cast", "order", "pour", "wick")) {
      look(Path.of("src/main/java/pourwright", room), found);
    }
    look(Path.of("src/main/jte"), found);
    assertThat(found).isEmpty();
  }

  @Test
  void whatIsGluedIsSeen() {
    assertThat(glued("said(casts.size() + \" casts begun\")")).isNotEmpty();
    assertThat(glued("rule.every()\n  + \"th pour\"")).isNotEmpty();
    assertThat(glued("<p>${page.count()} more lines</p>")).isNotEmpty();
    assertThat(glued("format(\"%d candles rest\", n)")).isNotEmpty();
    assertThat(glued("\"more than \" + LINES_MAX + \" lines\"")).isEmpty();
    assertThat(glued("${Counted.of(n, \"line\", \"lines\")}")).isEmpty();
  }

  private static void look(Path folder, List<String> found) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(f -> f.toString().matches(".*\\.(java|jte)")).toList()) {
        glued(Files.readString(file)).forEach(said -> found.add(file + ": " + said));
      }
    }
  }

  private static List<String> glued(String source) {
    List<String> found = new ArrayList<>();
    Matcher joined = GLUED.matcher(source);
    while (joined.find()) {
      if (!NO_COUNT.matcher(joined.group("left")).matches()) {
        found.add(joined.group());
      }
    }
    for (Pattern pattern : List.of(FORMATTED, ON_A_PAGE)) {
      pattern.matcher(source).results().forEach(m -> found.add(m.group()));
    }
    return found;
  }
}
