package pourwright.page;

import java.io.InputStream;
import java.util.Optional;
import pourwright.work.AttachmentFiles;

/** No attached files. */
final class NoFiles implements AttachmentFiles {
  @Override
  public Kept keep(InputStream bytes) {
    throw new UnsupportedOperationException("this test keeps no files");
  }

  @Override
  public Optional<InputStream> open(String sha256) {
    return Optional.empty();
  }
}
