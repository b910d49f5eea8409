package pourwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.jdbi.v3.core.HandleCallback;
import org.jdbi.v3.core.Jdbi;
import org.sqlite.SQLiteDataSource;
import pourwright.work.UnitOfWork;

/** The studio's database as one SQLite file: one connection that writes, a few that read. */
public final class SqliteStore implements Store {
  private static final int READERS = 4;
  private final Path file;
  private final Sqlite sqlite;
  private final Lanes writer;
  private final Lanes readers;
  private final Transactions transactions;

  private SqliteStore(Path file, Sqlite sqlite, Lanes writer, Lanes readers) {
    this.file = file;
    this.sqlite = sqlite;
    this.writer = writer;
    this.readers = readers;
    this.transactions = new Transactions(Jdbi.create(readers), Jdbi.create(writer), "");
  }

  /**
   * Opens a studio's database, making it when there is none and bringing an older one up to date
   * after a checked copy of it was laid into the backups.
   *
   * @throws StoreTrouble when it is newer than this program, damaged, not one of ours, or the disk
   *     does not take it
   */
  public static SqliteStore open(StudioFolder folder) {
    try {
      folder.prepare();
      SqliteStore store = open(folder.database(), folder.backups(), "FULL");
      folder.ownDatabase();
      return store;
    } catch (IOException e) {
      throw new StoreTrouble(
          StoreTrouble.Kind.DISK,
          "the data folder " + folder.root() + " cannot be used: " + e.getMessage(),
          "choose another folder with --data, or give this account the right to write there",
          e);
    }
  }

  /** For the negative control of the power-cut replay only. */
  static SqliteStore openWith(StudioFolder folder, String synchronous) throws IOException {
    folder.prepare();
    return open(folder.database(), folder.backups(), synchronous);
  }

  private static SqliteStore open(Path file, Path backups, String synchronous) {
    Sqlite sqlite = new Sqlite(file, synchronous);
    boolean existed = Files.exists(file);
    Connection writer = null;
    List<Connection> readers = new ArrayList<>();
    try {
      writer = sqlite.writer();
      if (bringUpToDate(writer, file, backups, existed)) {
        writer.close();
        writer = sqlite.writer();
      }
      sqlite.verify(writer, false);
      for (int i = 0; i < READERS; i++) {
        Connection reader = sqlite.reader();
        readers.add(reader);
        sqlite.verify(reader, true);
      }
      return new SqliteStore(
          file, sqlite, new Lanes(List.of(writer)), new Lanes(List.copyOf(readers)));
    } catch (SQLException | RuntimeException e) {
      readers.forEach(SqliteStore::closeQuietly);
      if (writer != null) {
        closeQuietly(writer);
      }
      throw StoreTrouble.of(e);
    }
  }

  private static void closeQuietly(Connection connection) {
    try {
      connection.close();
    } catch (SQLException e) {
      // The first trouble is the one that is told.
    }
  }

  /** True when steps were taken. */
  private static boolean bringUpToDate(Connection writer, Path file, Path backups, boolean existed)
      throws SQLException {
    long step = Long.parseLong(Sqlite.pragma(writer, "user_version"));
    if (existed) {
      refuseForeign(writer, step);
    }
    if (step == Migrations.NEWEST) {
      return false;
    }
    if (existed && !Sqlite.one(writer, "SELECT name FROM sqlite_schema LIMIT 1").isEmpty()) {
      Path copy = backups.resolve("before-step-" + Migrations.NEWEST + "-" + stamp() + ".db");
      SqliteCopy.into(writer, copy);
    }
    layHistory(writer);
    SQLiteDataSource database = new SQLiteDataSource();
    database.setUrl("jdbc:sqlite:" + file.toAbsolutePath());
    database.setEnforceForeignKeys(true);
    database.setSynchronous("FULL");
    database.setBusyTimeout(5000);
    Migrations.onSqlite(database);
    return true;
  }

  private static String stamp() {
    return java.time.Instant.now().toString().replaceAll("[:.]", "-");
  }

  private static void refuseForeign(Connection writer, long step) throws SQLException {
    long application = Long.parseLong(Sqlite.pragma(writer, "application_id"));
    boolean ours =
        application == Sqlite.APPLICATION_ID
            || (application == 0 && step == 0 && isEmptyOrBegun(writer));
    if (!ours) {
      throw new StoreTrouble(
          StoreTrouble.Kind.DAMAGED,
          "studio.db is a database of another program",
          "choose another folder with --data");
    }
    if (step > Migrations.NEWEST) {
      throw new StoreTrouble(
          StoreTrouble.Kind.NEWER,
          "this studio was last opened by a newer Pourwright (step "
              + step
              + ", this one knows "
              + Migrations.NEWEST
              + ")",
          "use the newer program; nothing was changed");
    }
  }

  /** True for a file without tables, and for one whose making was cut short. */
  private static boolean isEmptyOrBegun(Connection writer) throws SQLException {
    return Sqlite.one(writer, "SELECT name FROM sqlite_schema LIMIT 1").isEmpty()
        || !Sqlite.one(writer, "SELECT 1 FROM sqlite_schema WHERE name = 'schema_history'")
            .isEmpty();
  }

  /** Lays the table of steps ourselves, so that it keeps its types as all others do. */
  private static void layHistory(Connection writer) throws SQLException {
    try (Statement statement = writer.createStatement()) {
      statement.execute(
          """
          CREATE TABLE IF NOT EXISTS schema_history (
            installed_rank INTEGER NOT NULL PRIMARY KEY CHECK (installed_rank > 0),
            version TEXT,
            description TEXT NOT NULL,
            type TEXT NOT NULL,
            script TEXT NOT NULL,
            checksum INTEGER,
            installed_by TEXT NOT NULL,
            installed_on TEXT NOT NULL DEFAULT (strftime('%Y-%m-%d %H:%M:%f', 'now')),
            execution_time INTEGER NOT NULL,
            success INTEGER NOT NULL CHECK (success IN (0, 1))
          ) STRICT
          """);
    }
  }

  @Override
  public UnitOfWork unitOfWork() {
    return transactions;
  }

  @Override
  public <T> T look(HandleCallback<T, RuntimeException> reading) {
    return transactions.reading(reading);
  }

  @Override
  public <T> T write(HandleCallback<T, RuntimeException> writing) {
    return transactions.writing(writing);
  }

  @Override
  public boolean isSqlite() {
    return true;
  }

  /** Every connection with true for those that only read; for the assertion of the settings. */
  java.util.Map<Connection, Boolean> connections() {
    java.util.Map<Connection, Boolean> all = new java.util.LinkedHashMap<>();
    writer.all().forEach(c -> all.put(c, false));
    readers.all().forEach(c -> all.put(c, true));
    return all;
  }

  Sqlite sqlite() {
    return sqlite;
  }

  /** Lets every statement of a look be heard; for tests that bound how many a page asks. */
  public void listen(Consumer<String> ear) {
    transactions.listen(ear);
  }

  /** Lays a checked copy of the database into a new file, by SQL and not by copying bytes. */
  void copyInto(Path target) {
    transactions.outside(connection -> SqliteCopy.into(connection, target));
  }

  /** Folds the write-ahead file back into the database; for quiet moments. */
  public void tidy() {
    transactions.outside(
        connection -> {
          try (Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA wal_checkpoint(TRUNCATE)");
          }
        });
  }

  @Override
  public List<String> unsound() {
    return transactions.reading(handle -> SqliteCopy.findings(handle.getConnection()));
  }

  @Override
  public String describe() {
    return "SQLite "
        + look(h -> h.createQuery("SELECT sqlite_version()").mapTo(String.class).one())
        + ", "
        + file.getFileName();
  }

  @Override
  public void close() {
    try {
      transactions.outside(
          connection -> {
            try (Statement statement = connection.createStatement()) {
              statement.execute("PRAGMA optimize");
            }
          });
    } catch (StoreTrouble e) {
      // Only the planner's statistics are missing then; a full disk must not keep a studio open.
    } finally {
      try {
        readers.close();
        writer.close();
      } catch (SQLException e) {
        throw StoreTrouble.of(e);
      }
    }
  }
}
