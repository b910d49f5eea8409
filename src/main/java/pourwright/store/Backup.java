package pourwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;

/**
 * Backups of a studio that is kept in one file: a copy made by SQLite itself while the studio works
 * on, checked, with every attached file and a list of contents, in one zip.
 */
public final class Backup {
  /** What a backup's list of contents calls it. */
  public static final String FORMAT = "pourwright-backup";

  static final String DATABASE = "studio.db";
  private static final DateTimeFormatter NAME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH-mm-ss").withZone(ZoneOffset.UTC);

  private Backup() {}

  /**
   * Writes a backup and reads it once through.
   *
   * @param store an open studio
   * @param folder its folder
   * @param target where; null for the backups of the folder
   * @param now the moment
   * @param program this program's version
   * @return the backup's file
   * @throws StoreTrouble when the copy is not sound or the disk does not take it; no file of the
   *     backup's name is left then
   */
  public static Path write(
      SqliteStore store,
      StudioFolder folder,
      @org.jspecify.annotations.Nullable Path target,
      Instant now,
      String program) {
    Path file = target == null ? folder.backups().resolve("backup-" + stamp(now) + ".zip") : target;
    try {
      folder.prepare();
      Path scratch = Files.createTempDirectory(folder.backups(), ".scratch-");
      try {
        Path copy = scratch.resolve("copy.sqlite");
        store.copyInto(copy);
        zip(file, copy, folder, now, program);
      } finally {
        clear(scratch);
      }
      verify(file);
      return file;
    } catch (IOException e) {
      throw new StoreTrouble(
          StoreTrouble.Kind.DISK,
          "the backup could not be written: " + e.getMessage(),
          "free some space or choose another place; the studio itself is untouched",
          e);
    }
  }

  /** The moment as it stands in a backup's name, in UTC. */
  static String stamp(Instant moment) {
    return NAME.format(moment);
  }

  /** One that cannot be read again is no backup and does not keep the name of one. */
  private static void verify(Path file) throws IOException {
    try {
      ZipIn.checked(file, FORMAT).close();
    } catch (StoreTrouble e) {
      Files.deleteIfExists(file);
      throw e;
    }
  }

  private static void zip(Path file, Path copy, StudioFolder folder, Instant now, String program)
      throws IOException {
    Copied copied = Copied.of(copy);
    HashedFiles files = new HashedFiles(folder);
    try (ZipOut zip = new ZipOut(file)) {
      zip.add(DATABASE, copy);
      for (String hash : copied.hashes()) {
        Path attached = files.place(hash);
        if (!Files.exists(attached) || !HashedFiles.sha256(attached).equals(hash)) {
          throw new StoreTrouble(
              StoreTrouble.Kind.DAMAGED,
              "an attached file is missing or was changed: " + hash.substring(0, 12),
              "run 'inspect' to see which, and restore it from an older backup");
        }
        zip.add("attachments/" + hash, attached);
      }
      zip.finish(
          new Manifest(
              FORMAT, 1, program, Migrations.NEWEST, now.toString(), copied.rows(), zip.members()));
    }
  }

  /** What stands in a copy of the database. */
  record Copied(Map<String, Long> rows, List<String> hashes) {
    static Copied of(Path copy) {
      try (java.sql.Connection connection =
          org.sqlite.JDBC.createConnection(
              "jdbc:sqlite:" + copy.toAbsolutePath(), new java.util.Properties())) {
        return org.jdbi.v3.core.Jdbi.create(connection)
            .withHandle(h -> new Copied(Tables.counts(h), new AttachmentSql(h).hashes()));
      } catch (java.sql.SQLException e) {
        throw StoreTrouble.of(e);
      }
    }
  }

  static void clear(Path folder) throws IOException {
    try (java.util.stream.Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
