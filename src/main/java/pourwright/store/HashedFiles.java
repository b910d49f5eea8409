package pourwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import pourwright.work.AttachmentFiles;

/**
 * Attached files in a folder, each under the SHA-256 of its bytes, two letters a shelf: {@code
 * ab/abcdef…}. A file is written under another name, forced to the disk and then moved into place.
 */
public final class HashedFiles implements AttachmentFiles {
  private final Path folder;

  /** Files in the attachments of a studio's folder. */
  public HashedFiles(StudioFolder folder) {
    this(folder.attachments());
  }

  HashedFiles(Path folder) {
    this.folder = folder;
  }

  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  static String sha256(Path file) throws IOException {
    MessageDigest digest = sha256();
    try (InputStream in = Files.newInputStream(file)) {
      byte[] buffer = new byte[64 * 1024];
      for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
        digest.update(buffer, 0, n);
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  @Override
  public Kept keep(InputStream bytes) throws IOException {
    Files.createDirectories(folder);
    Path fresh = Files.createTempFile(folder, ".fresh-", "");
    try {
      MessageDigest digest = sha256();
      long size;
      try (OutputStream out = new DigestOutputStream(Files.newOutputStream(fresh), digest)) {
        size = bytes.transferTo(out);
      }
      String hash = HexFormat.of().formatHex(digest.digest());
      Path place = place(hash);
      if (!Files.exists(place)) {
        StudioFolder.own(fresh, "rw-------");
        SqliteCopy.force(fresh);
        Path shelf = folder.resolve(hash.substring(0, 2));
        Files.createDirectories(shelf);
        StudioFolder.own(shelf, "rwx------");
        move(fresh, place);
        SqliteCopy.force(shelf);
        SqliteCopy.force(folder);
      }
      return new Kept(hash, size);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (FileAlreadyExistsException e) {
      // Somebody kept the same bytes in the same moment.
    }
  }

  Path place(String hash) {
    if (!hash.matches("[0-9a-f]{64}")) {
      throw new IllegalArgumentException("not a hash: " + hash);
    }
    return folder.resolve(hash.substring(0, 2)).resolve(hash);
  }

  @Override
  public Optional<InputStream> open(String sha256) throws IOException {
    Path place = place(sha256);
    return Files.exists(place) ? Optional.of(Files.newInputStream(place)) : Optional.empty();
  }
}
