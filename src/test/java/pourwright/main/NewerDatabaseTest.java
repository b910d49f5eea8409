package pourwright.main;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import pourwright.store.StudioFolder;

/**
 * Goal G23: a studio of a newer program is not opened by this one, and nothing of it is touched.
 */
@DisplayName("G23 plain errors: a newer database")
class NewerDatabaseTest {
  @Test
  @Timeout(value = 60, unit = TimeUnit.SECONDS)
  @DisplayName("G23 the start says what happened, what is safe and what to do, and ends with 12")
  void theStartRefusesPlainly(@TempDir Path home) throws SQLException, IOException {
    Path data = home.resolve("studio");
    Wiring.open(data, "", Wiring.systemClock()).close();
    Path file = new StudioFolder(data).database();
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      statement.execute("PRAGMA user_version = 9999");
    }
    byte[] before = Files.readAllBytes(file);
    ByteArrayOutputStream complained = new ByteArrayOutputStream();
    int code;
    try (PrintStream out =
            new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(complained, true, StandardCharsets.UTF_8)) {
      code =
          Main.run(
              new String[] {"--data", data.toString(), "--port", "0", "--no-browser"},
              new Machine(Map.of(), "Linux", home),
              new ByteArrayInputStream(new byte[0]),
              out,
              err);
    }
    assertThat(code).isEqualTo(12);
    assertThat(complained.toString(StandardCharsets.UTF_8))
        .contains("newer Pourwright", "use the newer program", "nothing was changed")
        .doesNotContain("\tat ", "Exception");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }
}
