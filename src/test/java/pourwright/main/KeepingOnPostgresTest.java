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
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.store.Postgres;
import pourwright.work.Act;

/** A studio on a PostgreSQL server is backed up, restored, and never changed without a copy. */
class KeepingOnPostgresTest {
  @TempDir Path home;
  private final ByteArrayOutputStream said = new ByteArrayOutputStream();

  private int run(Object... words) throws IOException {
    said.reset();
    PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
    return Main.run(
        Stream.of(words).map(Object::toString).toArray(String[]::new),
        new Machine(Map.of(), "Linux", home),
        new ByteArrayInputStream(new byte[0]),
        out,
        out);
  }

  private String words() {
    return said.toString(StandardCharsets.UTF_8);
  }

  @Test
  void aBackupGoesIntoAnEmptyDatabaseAndIsRefusedByAFullOne() throws Exception {
    try (Postgres server = Postgres.start()) {
      String from = server.freshDatabase();
      Path data = home.resolve("data");
      try (Wiring wiring = Wiring.open(data, from, Wiring.systemClock())) {
        wiring.studio().saveSetting.run(Act.of("MB", "name"), "studio.name", "Tidewater");
      }
      Path zip = home.resolve("b.zip");
      assertThat(run("backup", "--data", data, "--db", from, "--to", zip)).as(words()).isZero();
      assertThat(words()).contains("read once through");
      String to = server.freshDatabase();
      assertThat(run("restore", zip, "--data", data, "--db", to)).as(words()).isZero();
      try (Wiring wiring = Wiring.open(data, to, Wiring.systemClock())) {
        assertThat(wiring.name()).isEqualTo("Tidewater");
      }
      assertThat(run("restore", zip, "--data", data, "--db", to)).isEqualTo(2);
      assertThat(words()).contains("not empty");
      assertThat(run("backup", "--data", data, "--db", from)).as(words()).isZero();
      try (Stream<Path> files = Files.list(data.resolve("backups"))) {
        assertThat(files).hasSize(1);
      }
    }
  }

  @Test
  void anOlderDatabaseIsLeftAsItIsUntilSheSaysThatThereIsACopy() throws Exception {
    try (Postgres server = Postgres.start()) {
      String url = server.freshDatabase();
      Path data = home.resolve("data");
      sql(url, "DELETE FROM schema_history WHERE CAST(version AS BIGINT) > 3");
      assertThat(run("backup", "--data", data, "--db", url, "--to", home.resolve("b.zip")))
          .isEqualTo(2);
      assertThat(words()).contains("older Pourwright").contains("--copy-made");
    }
  }

  private static void sql(String url, String text) throws SQLException {
    try (Connection connection = DriverManager.getConnection(url);
        Statement statement = connection.createStatement()) {
      statement.execute(text);
    }
  }
}
