package pourwright.main;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.store.StoreTrouble;

/**
 * A data folder held by one Pourwright at a time. The lock is a file of its own, never the
 * database; the operating system lets go of it when the process ends, however it ends.
 */
final class DataFolder implements AutoCloseable {
  private static final String LOCK = "pourwright.lock";
  private static final String RUNNING = "running-at.txt";

  private final Path folder;
  private @Nullable FileChannel channel;

  private DataFolder(Path folder, FileChannel channel) {
    this.folder = folder;
    this.channel = channel;
  }

  /** Takes the folder, making it if it is not there; nothing when another process has it. */
  static Optional<DataFolder> take(Path folder) {
    try {
      make(folder);
      FileChannel channel =
          FileChannel.open(
              folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      FileLock lock = tryLock(channel);
      if (lock == null) {
        channel.close();
        return Optional.empty();
      }
      return Optional.of(new DataFolder(folder, channel));
    } catch (IOException e) {
      throw new StoreTrouble(
          StoreTrouble.Kind.DISK,
          "the data folder " + folder + " cannot be used: " + e.getMessage(),
          "choose another with --data, or give this account the right to write there",
          e);
    }
  }

  /** Takes the folder for a command that must have it alone; throws when another process has it. */
  static DataFolder hold(Path folder) {
    return take(folder).orElseThrow(() -> new FolderTaken(folder, addressIn(folder)));
  }

  private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
    try {
      return channel.tryLock();
    } catch (OverlappingFileLockException e) {
      return null;
    }
  }

  private static void make(Path folder) throws IOException {
    boolean posix = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
    if (!Files.isDirectory(folder)) {
      Files.createDirectories(folder);
      if (posix) {
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
      }
    }
  }

  /** Tells others where this studio can be seen. */
  void runningAt(String address) {
    try {
      Files.writeString(folder.resolve(RUNNING), address + "\n", StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write into the data folder " + folder, e);
    }
  }

  /** Where the Pourwright that holds a folder can be seen, or an empty string. */
  static String addressIn(Path folder) {
    try {
      Path file = folder.resolve(RUNNING);
      return Files.isRegularFile(file)
          ? Files.readString(file, StandardCharsets.UTF_8).strip()
          : "";
    } catch (IOException e) {
      return "";
    }
  }

  Path path() {
    return folder;
  }

  @Override
  public void close() {
    FileChannel held = channel;
    channel = null;
    if (held == null) {
      return;
    }
    try {
      Files.deleteIfExists(folder.resolve(RUNNING));
      held.close();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot let go of the data folder " + folder, e);
    }
  }
}
