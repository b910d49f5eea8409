package pourwright.work;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/** Where attached files are kept, each under the SHA-256 of its bytes. */
public interface AttachmentFiles {

  /** A file that was put away. */
  record Kept(String sha256, long bytes) {}

  /**
   * Puts a file away; on the disk when this returns. The same bytes are kept once.
   *
   * @throws IOException when the disk does not take it
   */
  Kept keep(InputStream bytes) throws IOException;

  /**
   * Opens a kept file; empty when there is none.
   *
   * @throws IOException when it cannot be read
   */
  Optional<InputStream> open(String sha256) throws IOException;
}
