package pourwright.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Properties;
import org.sqlite.JDBC;

/**
 * How SQLite is opened, and what is asserted of every connection. What the settings are for is in
 * docs/decisions/0011-sqlite-settings.md.
 */
final class Sqlite {
  /** 'PWrt'. */
  static final long APPLICATION_ID = 1_347_908_212;

  /** The oldest library without the race between a checkpoint and a second connection. */
  static final int[] OLDEST = {3, 51, 3};

  private static final Map<String, String> COMMON = common();
  private final String url;
  private final String synchronous;

  Sqlite(Path file) {
    this(file, "FULL");
  }

  /** For the negative control of the power-cut replay: with anything but FULL, writes are lost. */
  Sqlite(Path file, String synchronous) {
    this.url = "jdbc:sqlite:" + file.toAbsolutePath();
    this.synchronous = synchronous;
  }

  private static Map<String, String> common() {
    Map<String, String> pragmas = new LinkedHashMap<>();
    pragmas.put("busy_timeout", "5000");
    pragmas.put("foreign_keys", "1");
    pragmas.put("trusted_schema", "0");
    pragmas.put("cell_size_check", "1");
    pragmas.put("mmap_size", "0");
    pragmas.put("recursive_triggers", "0");
    pragmas.put("temp_store", "2");
    pragmas.put("wal_autocheckpoint", "1000");
    return pragmas;
  }

  /** Opens the one connection that writes. */
  Connection writer() throws SQLException {
    return open("IMMEDIATE", "journal_mode = WAL");
  }

  /** Opens a connection that cannot write. */
  Connection reader() throws SQLException {
    return open("DEFERRED", "query_only = 1");
  }

  /** Opens a connection with its settings, or none: one that fails half-way is closed again. */
  private Connection open(String transactionMode, String own) throws SQLException {
    Properties properties = new Properties();
    properties.setProperty("transaction_mode", transactionMode);
    Connection connection = JDBC.createConnection(url, properties);
    try (Statement statement = connection.createStatement()) {
      for (Map.Entry<String, String> pragma : COMMON.entrySet()) {
        statement.execute("PRAGMA " + pragma.getKey() + " = " + pragma.getValue());
      }
      statement.execute("PRAGMA synchronous = " + synchronous);
      statement.execute("PRAGMA fullfsync = 1");
      statement.execute("PRAGMA " + own);
      return connection;
    } catch (SQLException e) {
      connection.close();
      throw e;
    }
  }

  /**
   * Reads every setting back.
   *
   * @throws StoreTrouble when one is not as it must be
   */
  void verify(Connection connection, boolean reader) throws SQLException {
    for (Map.Entry<String, String> pragma : COMMON.entrySet()) {
      expect(connection, pragma.getKey(), pragma.getValue());
    }
    expect(connection, "journal_mode", "wal");
    expect(connection, "synchronous", synchronous.equals("FULL") ? "2" : "1");
    expect(connection, "query_only", reader ? "1" : "0");
    String version = one(connection, "SELECT sqlite_version()");
    if (!isNewEnough(version)) {
      throw new StoreTrouble(
          StoreTrouble.Kind.OTHER,
          "the SQLite library is " + version + ", at least 3.51.3 is needed",
          "install Pourwright anew; its own library was replaced by an older one");
    }
  }

  static boolean isNewEnough(String version) {
    String[] parts = version.split("\\.", -1);
    for (int i = 0; i < OLDEST.length; i++) {
      int part = i < parts.length ? Integer.parseInt(parts[i]) : 0;
      if (part != OLDEST[i]) {
        return part > OLDEST[i];
      }
    }
    return true;
  }

  private static void expect(Connection connection, String pragma, String wanted)
      throws SQLException {
    String found = pragma(connection, pragma);
    if (!found.equals(wanted)) {
      throw new StoreTrouble(
          StoreTrouble.Kind.OTHER,
          "the database setting " + pragma + " is " + found + " and must be " + wanted,
          "this is a fault of the installation; do not work with it");
    }
  }

  static String pragma(Connection connection, String name) throws SQLException {
    return one(connection, "PRAGMA " + name);
  }

  static String one(Connection connection, String sql) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery(sql)) {
      return row.next() ? String.valueOf(row.getString(1)) : "";
    }
  }
}
