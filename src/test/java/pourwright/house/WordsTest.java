package pourwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Words that the house does not use, and addresses that no file may carry. */
class WordsTest {
  private static final List<Path> TEXTS =
      List.of(
          Path.of("src"),
          Path.of("docs"),
          Path.of("dev"),
          Path.of("README.md"),
          Path.of("pom.xml"),
          Path.of("pourwright"),
          Path.of("check"),
          Path.of("mvnw"),
          Path.of(".ci"));

  /** Addresses of package registries; the parts are joined so that this file does not name them. */
  private static final Pattern REGISTRY =
      Pattern.compile(
          "repo1?\\." + "maven|registry\\." + "npmjs|deb\\." + "debian|py" + "pi\\.org",
          Pattern.CASE_INSENSITIVE);

  /** 'Cure' means four things: harden, dry, full-dry and rest say which. */
  private static final Pattern CURE =
      Pattern.compile("\\bcur(e|es|ed|ing)\\b", Pattern.CASE_INSENSITIVE);

  /** Nothing the program shows promises what only tests and authorities can say. */
  private static final Pattern PROMISE =
      Pattern.compile("\\b(is|are) (safe|compliant)\\b|fully compliant", Pattern.CASE_INSENSITIVE);

  @Test
  void noFileNamesAPackageRegistry() throws IOException {
    assertThat(find(REGISTRY, TEXTS)).isEmpty();
  }

  @Test
  void pagesSayHardenDryOrRestAndNeverCure() throws IOException {
    assertThat(find(CURE, List.of(Path.of("src/main/jte")))).isEmpty();
  }

  @Test
  void pagesNeverPromiseSafetyOrCompliance() throws IOException {
    assertThat(find(PROMISE, List.of(Path.of("src/main/jte")))).isEmpty();
  }

  @Test
  void theWordTestsNoticeBadText() {
    assertThat(REGISTRY.matcher("https://repo." + "maven.example").find()).isTrue();
    assertThat(CURE.matcher("Let it cure for a day").find()).isTrue();
    assertThat(CURE.matcher("secure the lid").find()).isFalse();
    assertThat(PROMISE.matcher("This candle is safe.").find()).isTrue();
  }

  private static List<String> find(Pattern pattern, List<Path> roots) throws IOException {
    List<String> found = new ArrayList<>();
    for (Path root : roots) {
      if (!Files.exists(root)) {
        continue;
      }
      try (Stream<Path> files = Files.walk(root)) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          Matcher matcher = pattern.matcher(textOf(file));
          if (matcher.find()) {
            found.add(file + ": " + matcher.group());
          }
        }
      }
    }
    return found;
  }

  /** The file's text; an image or another file that is no UTF-8 text has none. */
  private static String textOf(Path file) throws IOException {
    try {
      return Files.readString(file);
    } catch (MalformedInputException e) {
      return "";
    }
  }
}
