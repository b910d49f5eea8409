package pourwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** House-keeping as a test: files one can read in a sitting, and words that must not land. */
class TidyTest {
  private static final int LINES_MAX = 400;
  private static final List<String> NOT_IN_MAIN =
      List.of("FIX" + "ME", "TO" + "DO", "printStack" + "Trace(", "System." + "out.print");

  static List<String> findings(String name, String text) {
    List<String> findings = new ArrayList<>();
    long lines = text.lines().count();
    if (lines > LINES_MAX) {
      findings.add(name + ": " + lines + " lines, at most " + LINES_MAX);
    }
    for (String word : NOT_IN_MAIN) {
      if (text.contains(word)) {
        findings.add(name + ": contains " + word);
      }
    }
    return findings;
  }

  @Test
  void everyMainFileIsTidy() throws IOException {
    List<String> findings = new ArrayList<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      files
          .filter(f -> f.toString().endsWith(".java"))
          .forEach(f -> findings.addAll(findings(f.toString(), read(f))));
    }
    assertThat(findings).isEmpty();
  }

  @Test
  void everyRoomHasASignOnItsDoor() throws IOException {
    List<Path> bare = new ArrayList<>();
    try (Stream<Path> folders = Files.walk(Path.of("src/main/java/pourwright"))) {
      folders
          .filter(Files::isDirectory)
          .filter(d -> !d.endsWith("pourwright"))
          .filter(d -> !read(d.resolve("package-info.java")).startsWith("/**"))
          .forEach(bare::add);
    }
    assertThat(bare).isEmpty();
  }

  @Test
  void theTidyTestNoticesBadText() {
    assertThat(findings("Long", "x\n".repeat(LINES_MAX + 1))).hasSize(1);
    assertThat(findings("Words", "// FIX" + "ME later")).hasSize(1);
    assertThat(findings("Fine", "class Fine {}")).isEmpty();
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
