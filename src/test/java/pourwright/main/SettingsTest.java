package pourwright.main;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A flag goes before the environment, that before the settings file, that before the default. */
class SettingsTest {
  /** Where a value is given for one setting, and what must come of it. */
  record Row(Settings.Key key, boolean flag, boolean variable, boolean file) {
    Settings.From expected() {
      return flag
          ? Settings.From.FLAG
          : variable
              ? Settings.From.ENVIRONMENT
              : file ? Settings.From.FILE : Settings.From.DEFAULT;
    }
  }

  static List<Row> everySettingInEveryCombination() {
    List<Row> rows = new ArrayList<>();
    for (Settings.Key key : Settings.Key.values()) {
      for (int bits = 0; bits < 8; bits++) {
        rows.add(new Row(key, (bits & 4) != 0, (bits & 2) != 0, (bits & 1) != 0));
      }
    }
    return rows;
  }

  @ParameterizedTest
  @MethodSource("everySettingInEveryCombination")
  void theNearestWordCountsAndSaysWhereItIsFrom(Row row, @TempDir Path home) throws IOException {
    Map<String, String> environment = new HashMap<>();
    Map<String, String> flags = new HashMap<>();
    if (row.flag()) {
      flags.put(row.key().word, "from-flag");
    }
    if (row.variable()) {
      environment.put(row.key().variable, "from-environment");
    }
    if (row.file()) {
      Path file = home.resolve(".config/pourwright/settings.properties");
      Files.createDirectories(file.getParent());
      Files.writeString(file, row.key().word + " = from-file\n");
    }
    Settings settings = new Settings(flags, new Machine(environment, "Linux", home));
    Settings.Setting setting = settings.of(row.key());
    assertThat(setting.from()).isEqualTo(row.expected());
    switch (row.expected()) {
      case FLAG -> assertThat(setting.value()).isEqualTo("from-flag");
      case ENVIRONMENT -> assertThat(setting.value()).isEqualTo("from-environment");
      case FILE -> assertThat(setting.value()).isEqualTo("from-file");
      case DEFAULT -> assertThat(setting.value()).doesNotStartWith("from-");
    }
  }

  @Test
  void dataLieWhereTheyUsuallyDoOnEachSystem(@TempDir Path home) {
    assertThat(new Machine(Map.of(), "Linux", home).usualDataFolder())
        .isEqualTo(home.resolve(".local/share/pourwright"));
    assertThat(new Machine(Map.of("XDG_DATA_HOME", "/data/here"), "Linux", home).usualDataFolder())
        .isEqualTo(Path.of("/data/here/pourwright"));
    assertThat(new Machine(Map.of("XDG_DATA_HOME", "rel"), "Linux", home).usualDataFolder())
        .isEqualTo(home.resolve(".local/share/pourwright"));
    assertThat(new Machine(Map.of(), "Mac OS X", home).usualDataFolder())
        .isEqualTo(home.resolve("Library/Application Support/Pourwright"));
    assertThat(
            new Machine(Map.of("LOCALAPPDATA", "/c/Local"), "Windows 11", home).usualDataFolder())
        .isEqualTo(Path.of("/c/Local/Pourwright"));
  }

  @Test
  void aPortThatIsNoneIsRefusedInASentence(@TempDir Path home) {
    for (String port : List.of("wick", "-1", "65536", "1.5")) {
      Settings settings = new Settings(Map.of("port", port), new Machine(Map.of(), "Linux", home));
      assertThatThrownBy(settings::port).isInstanceOf(BadSetting.class).hasMessageContaining(port);
    }
  }
}
