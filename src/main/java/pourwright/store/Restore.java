package pourwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Properties;
import java.util.TreeSet;
import org.jdbi.v3.core.Jdbi;
import org.sqlite.JDBC;

/**
 * Puts a backup in the place of a studio. Everything in it is checked in a corner first; what was
 * there before is kept as a backup of its own. Nobody else may have the studio open.
 */
public final class Restore {
  private Restore() {}

  /**
   * What was done.
   *
   * @param from what the backup's list of contents says
   * @param before what was there: a backup, or, where it was too damaged for one, a folder with its
   *     database files as they were; null when nothing was there
   */
  public record Restored(Manifest from, @org.jspecify.annotations.Nullable Path before) {}

  /**
   * Restores.
   *
   * @throws StoreTrouble when the backup is not sound, was written by a newer program, or the disk
   *     does not take it; the studio is then as it was
   */
  public static Restored from(Path backup, StudioFolder folder, Instant now, String program) {
    try (ZipIn zip = ZipIn.checked(backup, Backup.FORMAT)) {
      folder.prepare();
      Path scratch = Files.createTempDirectory(folder.root(), ".restore-");
      try {
        Path copy = scratch.resolve("copy.sqlite");
        zip.read(Backup.DATABASE, copy);
        checkCopy(copy, scratch);
        Path before = keepBefore(folder, now, program);
        placeAttachments(zip, folder);
        place(copy, folder);
        return new Restored(zip.manifest(), before);
      } finally {
        Backup.clear(scratch);
      }
    } catch (IOException e) {
      throw new StoreTrouble(
          StoreTrouble.Kind.DISK,
          "the backup could not be restored: " + e.getMessage(),
          "free some space and try again; the studio is as it was",
          e);
    }
  }

  private static void checkCopy(Path copy, Path scratch) {
    try {
      List<String> findings = SqliteCopy.check(copy);
      if (!findings.isEmpty()) {
        throw unsound(String.join("; ", findings));
      }
      if (Migrations.NEWEST != stepOf(copy)) {
        return; // an older one; its step's own program wrote it, and opening it takes the steps
      }
      StudioFolder fresh = new StudioFolder(scratch.resolve("fresh"));
      SqliteStore.open(fresh).close();
      if (!schema(copy).equals(schema(fresh.database()))) {
        throw unsound("its tables or triggers are not those of Pourwright");
      }
    } catch (SQLException e) {
      throw StoreTrouble.of(e);
    }
  }

  private static StoreTrouble unsound(String what) {
    return new StoreTrouble(
        StoreTrouble.Kind.DAMAGED,
        "the database in this backup is not sound: " + what,
        "use another backup; nothing was changed");
  }

  private static long stepOf(Path file) throws SQLException {
    try (Connection connection = connect(file)) {
      long application = Long.parseLong(Sqlite.pragma(connection, "application_id"));
      if (application != Sqlite.APPLICATION_ID) {
        throw unsound("it belongs to another program");
      }
      return Long.parseLong(Sqlite.pragma(connection, "user_version"));
    }
  }

  private static TreeSet<String> schema(Path file) throws SQLException {
    try (Connection connection = connect(file)) {
      return Jdbi.create(connection)
          .withHandle(
              h ->
                  new TreeSet<>(
                      h.createQuery(
                              "SELECT type || ' ' || name || ' ' || COALESCE(sql, '')"
                                  + " FROM sqlite_schema WHERE name NOT LIKE 'sqlite_stat%'")
                          .mapTo(String.class)
                          .list()));
    }
  }

  private static Connection connect(Path file) throws SQLException {
    Properties properties = new Properties();
    properties.setProperty("open_mode", "1");
    return JDBC.createConnection("jdbc:sqlite:" + file.toAbsolutePath(), properties);
  }

  private static @org.jspecify.annotations.Nullable Path keepBefore(
      StudioFolder folder, Instant now, String program) {
    if (!folder.hasStudio()) {
      return null;
    }
    String name = "before-restore-" + now.toString().replaceAll("[:.]", "-");
    try (SqliteStore store = SqliteStore.open(folder)) {
      return Backup.write(store, folder, folder.backups().resolve(name + ".zip"), now, program);
    } catch (StoreTrouble e) {
      if (e.kind() != StoreTrouble.Kind.DAMAGED && e.kind() != StoreTrouble.Kind.NEWER) {
        throw e;
      }
      return keepAsItIs(folder, folder.backups().resolve(name));
    }
  }

  /** A studio that cannot be opened is closed: its files are copied like any others. */
  private static Path keepAsItIs(StudioFolder folder, Path aside) {
    try {
      Files.createDirectories(aside);
      StudioFolder.own(aside, "rwx------");
      String name = String.valueOf(folder.database().getFileName());
      for (String end : List.of("", "-wal", "-shm")) {
        Path file = folder.root().resolve(name + end);
        if (Files.exists(file)) {
          Path kept = aside.resolve(name + end);
          Files.copy(file, kept, StandardCopyOption.REPLACE_EXISTING);
          StudioFolder.own(kept, "rw-------");
          SqliteCopy.force(kept);
        }
      }
      SqliteCopy.force(aside);
      return aside;
    } catch (IOException e) {
      throw new StoreTrouble(
          StoreTrouble.Kind.DISK,
          "what is in the folder could not be kept: " + e.getMessage(),
          "free some space and try again; nothing was changed",
          e);
    }
  }

  private static void placeAttachments(ZipIn zip, StudioFolder folder) throws IOException {
    HashedFiles files = new HashedFiles(folder);
    for (Manifest.Member member : zip.manifest().members()) {
      if (member.name().startsWith("attachments/")) {
        try (InputStream in = zip.open(member.name())) {
          files.keep(in);
        }
      }
    }
  }

  /** The studio's database is closed here: its file is a file like any other. */
  private static void place(Path copy, StudioFolder folder) throws IOException {
    StudioFolder.own(copy, "rw-------");
    SqliteCopy.force(copy);
    String name = String.valueOf(folder.database().getFileName());
    Files.deleteIfExists(folder.root().resolve(name + "-wal"));
    Files.deleteIfExists(folder.root().resolve(name + "-shm"));
    Files.move(
        copy,
        folder.database(),
        StandardCopyOption.ATOMIC_MOVE,
        StandardCopyOption.REPLACE_EXISTING);
    SqliteCopy.force(folder.root());
  }
}
