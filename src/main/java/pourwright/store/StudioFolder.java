package pourwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;

/**
 * The studio's folder: everything that is hers is in it. The database file is named here but only
 * ever opened by SQLite; opening it with anything else would drop SQLite's own locks.
 *
 * @param root the folder
 */
public record StudioFolder(Path root) {

  /** The database. */
  public Path database() {
    return root.resolve("studio.db");
  }

  /** Attached files by their hash. */
  public Path attachments() {
    return root.resolve("attachments");
  }

  /** Backups, and copies taken before a migration. */
  public Path backups() {
    return root.resolve("backups");
  }

  /** True when a studio was begun here. */
  public boolean hasStudio() {
    return Files.exists(database());
  }

  /**
   * Makes the folders, readable by their owner alone.
   *
   * @throws IOException when the disk does not take them
   */
  public void prepare() throws IOException {
    for (Path folder : java.util.List.of(root, attachments(), backups())) {
      Files.createDirectories(folder);
      own(folder, "rwx------");
    }
  }

  /**
   * Takes a file's or folder's rights away from everybody but its owner, where there are rights.
   */
  static void own(Path path, String rights) throws IOException {
    if (Files.getFileStore(path).supportsFileAttributeView("posix")) {
      Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(rights));
    }
  }

  /**
   * Moves everything of a closed studio to where it shall be, on the same disk: the files first,
   * forced to the disk, and the database last. A studio is there only when all of it is.
   *
   * @throws IOException when the disk does not take it, or the studio was not closed
   */
  public void moveInto(StudioFolder target) throws IOException {
    if (Files.exists(root.resolve(database().getFileName() + "-wal"))) {
      throw new IOException("the studio in " + root + " was not closed");
    }
    java.util.List<Path> all;
    try (java.util.stream.Stream<Path> files = Files.walk(root)) {
      all = files.filter(Files::isRegularFile).filter(f -> !f.equals(database())).toList();
    }
    target.prepare();
    for (Path file : all) {
      Path place = target.root().resolve(root.relativize(file).toString());
      Path above = place.getParent();
      if (above != null) {
        Files.createDirectories(above);
      }
      Files.move(file, place, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
      SqliteCopy.forceFolderOf(place);
    }
    Files.move(database(), target.database(), java.nio.file.StandardCopyOption.ATOMIC_MOVE);
    SqliteCopy.force(target.root());
  }

  /** Removes a studio's folder with all that is in it. */
  public void remove() throws IOException {
    java.util.List<Path> all;
    try (java.util.stream.Stream<Path> files = Files.walk(root)) {
      all = files.sorted(java.util.Comparator.reverseOrder()).toList();
    }
    for (Path file : all) {
      Files.delete(file);
    }
  }

  /** Keeps the database and what SQLite lays beside it for the owner alone; opens none of them. */
  void ownDatabase() throws IOException {
    for (String end : java.util.List.of("", "-wal", "-shm")) {
      Path file = root.resolve(database().getFileName() + end);
      if (Files.exists(file)) {
        own(file, "rw-------");
      }
    }
  }
}
