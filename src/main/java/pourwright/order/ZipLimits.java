package pourwright.order;

import java.io.IOException;
import java.io.InputStream;
import java.util.Collections;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/**
 * Looks through a zip before anything else opens it: at most 2,000 entries, 1 GB unpacked, 100 to 1
 * beyond 100 KB, no name that leads elsewhere or stands twice.
 */
final class ZipLimits {
  private static final int ENTRIES_MAX = 2_000;
  private static final long TOTAL_MAX = 1L << 30;
  private static final long RATIO_FREE = 100_000;
  private static final long RATIO_MAX = 100;

  private ZipLimits() {}

  /** Checks and gives the names of all entries. */
  static Set<String> check(byte[] bytes) throws Stop {
    Set<String> names = new HashSet<>();
    byte[] buffer = new byte[1 << 16];
    long total = 0;
    try (SeekableInMemoryByteChannel channel = new SeekableInMemoryByteChannel(bytes);
        ZipFile zip = ZipFile.builder().setSeekableByteChannel(channel).get()) {
      for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
        checkName(entry.getName(), names);
        try (InputStream in = zip.getInputStream(entry)) {
          for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
            total += read;
            if (total > TOTAL_MAX || (total > RATIO_FREE && total > RATIO_MAX * bytes.length)) {
              throw Stop.unreadable(
                  "the workbook unpacks to far more than it should", "save it again, or as CSV");
            }
          }
        }
      }
    } catch (IOException | IllegalArgumentException e) {
      throw Stop.unreadable("the workbook is damaged", "save it again, or as CSV");
    }
    if (names.isEmpty()) {
      throw Stop.unreadable("the workbook is damaged", "save it again, or as CSV");
    }
    return names;
  }

  private static void checkName(String name, Set<String> names) throws Stop {
    boolean leads =
        name.contains("..")
            || name.startsWith("/")
            || name.startsWith("\\")
            || name.matches("(?s)[A-Za-z]:.*");
    if (leads || !names.add(name.toLowerCase(Locale.ROOT)) || names.size() > ENTRIES_MAX) {
      throw Stop.unreadable(
          "the workbook holds parts that no workbook has", "save it again, or as CSV");
    }
  }
}
