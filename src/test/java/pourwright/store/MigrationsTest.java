package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Steps of the database: never edited once shipped, never taken without a checked copy first. */
class MigrationsTest {
  @TempDir Path corner;

  /** One line a shipped file: append; never change a line that has been released. */
  private static final Map<String, String> SHIPPED =
      Map.ofEntries(
          Map.entry("common/V0001__books.sql", "e40a20ef394d0cce"),
          Map.entry("common/V0002__shelf_and_desk.sql", "6014d1a63cea776c"),
          Map.entry("postgresql/V0003__guards.sql", "4086c2dc545a8144"),
          Map.entry("sqlite/V0003__guards.sql", "dfb9866da2b5e74d"),
          Map.entry("postgresql/V0004__still_open.sql", "9321ab9a73ff000a"),
          Map.entry("sqlite/V0004__still_open.sql", "3cc5ae4ae0e043d5"),
          Map.entry("postgresql/V0010__scarce_facts.sql", "128cf7bc1a6ebc49"),
          Map.entry("sqlite/V0010__scarce_facts.sql", "f69e5597b45edd20"),
          Map.entry("postgresql/V0029__money.sql", "7ff1f58349a09a20"),
          Map.entry("sqlite/V0029__money.sql", "aef941901dbfd55d"),
          Map.entry("postgresql/V0030__after_sale.sql", "06a70b1bf61e9060"),
          Map.entry("sqlite/V0030__after_sale.sql", "79be0a34bc5f0ff4"),
          Map.entry("postgresql/V0065__carried.sql", "63731f5514c05b7a"),
          Map.entry("sqlite/V0065__carried.sql", "25f37134b4c85141"),
          Map.entry("postgresql/V0055__poured.sql", "9937d67808b17dfb"),
          Map.entry("sqlite/V0055__poured.sql", "f49842a26085bbb0"),
          Map.entry("postgresql/V0070__step_clock.sql", "333f1025d85f29c7"),
          Map.entry("sqlite/V0070__step_clock.sql", "eefc409007745d95"),
          Map.entry("postgresql/V0075__draft.sql", "d9e9c8a3d1256be4"),
          Map.entry("sqlite/V0075__draft.sql", "f19c53d54cf0c689"));

  private static Map<String, String> onDisk() throws IOException {
    Path root = Path.of("src/main/resources/db/migration");
    Map<String, String> hashes = new TreeMap<>();
    try (Stream<Path> files = Files.walk(root)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".sql")).toList()) {
        hashes.put(root.relativize(file).toString(), HashedFiles.sha256(file).substring(0, 16));
      }
    }
    return hashes;
  }

  @Test
  void shippedStepsAreNeverEdited() throws IOException {
    assertThat(onDisk()).containsExactlyInAnyOrderEntriesOf(SHIPPED);
  }

  private static void sql(Path file, String... statements) throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      for (String one : statements) {
        statement.execute(one);
      }
    }
  }

  @Test
  void aNewerDatabaseIsRefusedAndLeftAlone() throws SQLException {
    StudioFolder folder = new StudioFolder(corner);
    SqliteStore.open(folder).close();
    sql(folder.database(), "PRAGMA user_version = 99");
    assertThatThrownBy(() -> SqliteStore.open(folder))
        .isInstanceOfSatisfying(
            StoreTrouble.class, t -> assertThat(t.kind().exitCode()).isEqualTo(12));
  }

  @Test
  void aDatabaseOfAnotherProgramIsRefused() throws Exception {
    StudioFolder folder = new StudioFolder(corner);
    folder.prepare();
    sql(folder.database(), "CREATE TABLE theirs (x)", "PRAGMA application_id = 7");
    assertThatThrownBy(() -> SqliteStore.open(folder))
        .isInstanceOfSatisfying(
            StoreTrouble.class, t -> assertThat(t.kind().exitCode()).isEqualTo(13));
  }

  @Test
  void anOlderDatabaseIsCopiedAndCheckedBeforeAStepIsTaken() throws Exception {
    StudioFolder folder = new StudioFolder(corner);
    try (Bench bench = new Bench(SqliteStore.open(folder), folder.attachments())) {
      Filled.fill(bench);
    }
    sql(
        folder.database(),
        "PRAGMA user_version = 2",
        "DELETE FROM schema_history WHERE version > '0002'",
        "DROP TABLE batch_carry",
        "DROP TABLE draft",
        "DROP TABLE money",
        "DROP TABLE after_sale",
        "DROP TABLE still_open",
        "ALTER TABLE batch_step DROP COLUMN at_ms",
        "DROP INDEX piece_now_latest",
        "DROP INDEX piece_event_scrapped",
        "DROP INDEX piece_event_graded",
        "DROP INDEX piece_event_poured",
        "DROP TRIGGER movement_balance");
    dropGuards(folder.database());
    try (SqliteStore store = SqliteStore.open(folder)) {
      assertThat(store.unsound()).isEmpty();
      assertThat(store.keptRowsWrong()).isZero();
    }
    try (Stream<Path> copies = Files.list(folder.backups())) {
      Path copy =
          copies.filter(f -> f.toString().contains("before-step")).findFirst().orElseThrow();
      assertThat(SqliteCopy.check(copy)).isEmpty();
    }
  }

  private static void dropGuards(Path file) throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      java.util.List<String> names = new java.util.ArrayList<>();
      try (var rows =
          statement.executeQuery("SELECT name FROM sqlite_schema WHERE type = 'trigger'")) {
        while (rows.next()) {
          names.add(rows.getString(1));
        }
      }
      for (String name : names) {
        statement.execute("DROP TRIGGER " + name);
      }
    }
  }

  @Test
  void aMakingThatWasCutShortIsTakenUpAgain() throws Exception {
    StudioFolder folder = new StudioFolder(corner);
    folder.prepare();
    SqliteStore.open(folder).close();
    sql(folder.database(), "PRAGMA user_version = 0");
    sql(folder.database(), "PRAGMA application_id = 0");
    try (SqliteStore store = SqliteStore.open(folder)) {
      assertThat(store.unsound()).isEmpty();
    }
  }

  @Test
  void aDamagedFileIsSaidToBeDamaged() throws IOException {
    StudioFolder folder = new StudioFolder(corner);
    folder.prepare();
    Files.write(
        folder.database(), "this is not a database at all, really".repeat(50).getBytes("UTF-8"));
    assertThatThrownBy(() -> SqliteStore.open(folder))
        .isInstanceOfSatisfying(
            StoreTrouble.class, t -> assertThat(t.kind()).isEqualTo(StoreTrouble.Kind.DAMAGED));
  }
}
