package pourwright.work;

import java.io.IOException;
import java.util.Locale;
import java.util.Optional;

/**
 * The books cannot be read or written now: not a person's mistake but the disk's or the database's.
 * Nothing of what was asked for has been written; everything acknowledged before is safe.
 */
public class BooksUnavailable extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final boolean disk;
  private final String hint;

  /**
   * @param disk whether the disk is full or does not take the write
   * @param message what happened, a sentence
   * @param hint what to do
   */
  public BooksUnavailable(boolean disk, String message, String hint) {
    super(message);
    this.disk = disk;
    this.hint = hint;
  }

  /**
   * @param cause what was thrown below
   */
  public BooksUnavailable(boolean disk, String message, String hint, Throwable cause) {
    super(message, cause);
    this.disk = disk;
    this.hint = hint;
  }

  /** Whether the disk is full or does not take the write. */
  public boolean disk() {
    return disk;
  }

  /** What happened, never null. */
  public String sentence() {
    return String.valueOf(getMessage());
  }

  /** What to do. */
  public String hint() {
    return hint;
  }

  /** What was thrown, where it says that the books or the disk are not available. */
  public static Optional<BooksUnavailable> in(Throwable thrown) {
    Throwable at = thrown;
    for (int depth = 0; at != null && depth < 20; depth++, at = at.getCause()) {
      if (at instanceof BooksUnavailable unavailable) {
        return Optional.of(unavailable);
      }
      if (at instanceof IOException && full(String.valueOf(at.getMessage()))) {
        return Optional.of(
            new BooksUnavailable(
                true,
                "the disk is full; nothing of this was saved",
                "free some space and do it again; everything saved before is safe",
                thrown));
      }
    }
    return Optional.empty();
  }

  /** The words in which an operating system says that nothing more fits. */
  private static boolean full(String message) {
    String text = message.toLowerCase(Locale.ROOT);
    return text.contains("no space left")
        || text.contains("not enough space")
        || text.contains("disk quota")
        || text.contains("read-only file system");
  }
}
