package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The settings that durability stands on, read back from every connection. */
class SqliteSettingsTest {
  @TempDir Path corner;

  private static final Map<String, String> EVERYWHERE =
      Map.of(
          "journal_mode", "wal",
          "synchronous", "2",
          "foreign_keys", "1",
          "busy_timeout", "5000",
          "trusted_schema", "0",
          "cell_size_check", "1",
          "mmap_size", "0",
          "application_id", Long.toString(Sqlite.APPLICATION_ID),
          "user_version", Integer.toString(Migrations.NEWEST));

  @Test
  void everyConnectionHasEverySetting() throws SQLException {
    try (SqliteStore store = SqliteStore.open(new StudioFolder(corner))) {
      assertThat(store.connections()).hasSize(5);
      for (Map.Entry<Connection, Boolean> one : store.connections().entrySet()) {
        for (Map.Entry<String, String> setting : EVERYWHERE.entrySet()) {
          assertThat(Sqlite.pragma(one.getKey(), setting.getKey()))
              .as(setting.getKey())
              .isEqualTo(setting.getValue());
        }
        assertThat(Sqlite.pragma(one.getKey(), "query_only")).isEqualTo(one.getValue() ? "1" : "0");
        assertThat(Sqlite.isNewEnough(Sqlite.one(one.getKey(), "SELECT sqlite_version()")))
            .isTrue();
      }
    }
  }

  @Test
  void aSettingThatIsNotAsItMustBeStopsTheStart() throws SQLException {
    Sqlite sqlite = new Sqlite(corner.resolve("x.db"));
    for (String spoilt :
        List.of(
            "synchronous = NORMAL",
            "foreign_keys = 0",
            "trusted_schema = 1",
            "busy_timeout = 1",
            "query_only = 1",
            "journal_mode = DELETE")) {
      try (Connection connection = sqlite.writer();
          Statement statement = connection.createStatement()) {
        sqlite.verify(connection, false);
        statement.execute("PRAGMA " + spoilt);
        assertThatThrownBy(() -> sqlite.verify(connection, false))
            .as(spoilt)
            .isInstanceOf(StoreTrouble.class)
            .hasMessageContaining(spoilt.substring(0, spoilt.indexOf(' ')));
      }
    }
  }

  @Test
  void aReaderCannotWrite() throws SQLException {
    try (SqliteStore store = SqliteStore.open(new StudioFolder(corner))) {
      assertThatThrownBy(() -> store.look(h -> h.execute("DELETE FROM customer")))
          .isInstanceOf(StoreTrouble.class);
    }
  }

  @Test
  void theLibraryMustBeNewerThanTheCheckpointRace() {
    assertThat(Sqlite.isNewEnough("3.51.2")).isFalse();
    assertThat(Sqlite.isNewEnough("3.51.3")).isTrue();
    assertThat(Sqlite.isNewEnough("3.54.1")).isTrue();
    assertThat(Sqlite.isNewEnough("4.0.0")).isTrue();
    assertThat(Sqlite.isNewEnough("3.9.9")).isFalse();
  }

  @Test
  void everyTableKeepsItsTypesAndHasItsChecks() {
    try (SqliteStore store = SqliteStore.open(new StudioFolder(corner))) {
      List<String> loose =
          store.look(
              h ->
                  h.createQuery(
                          "SELECT name FROM pragma_table_list WHERE schema = 'main'"
                              + " AND type = 'table' AND strict = 0"
                              + " AND name NOT LIKE 'sqlite_%'")
                      .mapTo(String.class)
                      .list());
      assertThat(loose).isEmpty();
      List<String> bare =
          store.look(
              h ->
                  h.createQuery(
                          "SELECT name FROM sqlite_schema WHERE type = 'table'"
                              + " AND name NOT LIKE 'sqlite_%'"
                              + " AND sql NOT LIKE '%CHECK (%' AND sql NOT LIKE '%REFERENCES%'")
                      .mapTo(String.class)
                      .list());
      assertThat(bare).isEmpty();
    }
  }

  @Test
  void everyTableOfTheLedgerRefusesAnEditAndADelete() {
    try (SqliteStore store = SqliteStore.open(new StudioFolder(corner))) {
      List<String> triggers =
          store.look(
              h ->
                  h.createQuery("SELECT name FROM sqlite_schema WHERE type = 'trigger'")
                      .mapTo(String.class)
                      .list());
      for (String table : Tables.names(Tables.FACTS)) {
        if (!table.equals("customer")) {
          assertThat(triggers).contains(table + "_no_update", table + "_no_delete");
        }
      }
    }
  }
}
