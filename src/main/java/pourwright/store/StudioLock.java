package pourwright.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/**
 * Says that one program has the studio open. The lock is on a file of its own, never on the
 * database; the operating system lets go of it when the process dies, however it dies.
 */
public final class StudioLock implements AutoCloseable {
  private final FileChannel channel;
  private final FileLock lock;

  private StudioLock(FileChannel channel, FileLock lock) {
    this.channel = channel;
    this.lock = lock;
  }

  /**
   * Takes the lock.
   *
   * @throws StoreTrouble of kind LOCKED when another program has it, with what that one says
   * @throws IOException when the folder cannot be written to
   */
  public static StudioLock take(DataFolder folder) throws IOException {
    FileChannel channel =
        FileChannel.open(
            folder.lock(),
            StandardOpenOption.CREATE,
            StandardOpenOption.READ,
            StandardOpenOption.WRITE);
    DataFolder.own(folder.lock(), "rw-------");
    FileLock lock = tryLock(channel);
    if (lock == null) {
      channel.close();
      throw new StoreTrouble(
          StoreTrouble.Kind.LOCKED,
          "this studio is open already" + said(folder.lock()),
          "use the one that is open, or close it first");
    }
    StudioLock taken = new StudioLock(channel, lock);
    taken.say("");
    return taken;
  }

  private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
    try {
      return channel.tryLock();
    } catch (OverlappingFileLockException e) {
      return null;
    }
  }

  private static String said(Path file) throws IOException {
    String text = Files.readString(file).strip();
    return text.isEmpty() ? "" : " (" + text.replace("\n", ", ") + ")";
  }

  /** Writes down where this studio can be found, for whoever comes second. */
  public void say(String url) throws IOException {
    String text = "process " + ProcessHandle.current().pid() + (url.isEmpty() ? "" : "\n" + url);
    channel.truncate(0);
    channel.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8)), 0);
    channel.force(true);
  }

  @Override
  public void close() throws IOException {
    channel.truncate(0);
    lock.release();
    channel.close();
  }
}
