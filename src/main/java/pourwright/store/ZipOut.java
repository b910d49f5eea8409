package pourwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A zip that is written under another name, hashed part by part, forced to the disk and only then
 * given its own name: a half-written one is never taken for a good one.
 */
final class ZipOut implements AutoCloseable {
  private final Path target;
  private final Path fresh;
  private final OutputStream raw;
  private final ZipOutputStream zip;
  private final List<Manifest.Member> members = new ArrayList<>();
  private boolean open = true;

  ZipOut(Path target) throws IOException {
    this.target = target.toAbsolutePath();
    this.fresh = this.target.resolveSibling(".fresh-" + this.target.getFileName());
    this.raw = Files.newOutputStream(fresh);
    this.zip = new ZipOutputStream(raw, StandardCharsets.UTF_8);
    StudioFolder.own(fresh, "rw-------");
  }

  /** Writes a part. */
  interface Part {
    /** Writes its bytes and leaves the stream open. */
    void to(OutputStream out) throws IOException;
  }

  /** Adds a part. */
  void add(String name, Part part) throws IOException {
    MessageDigest digest = HashedFiles.sha256();
    ZipEntry entry = new ZipEntry(name);
    entry.setTime(0);
    zip.putNextEntry(entry);
    DigestOutputStream out = new DigestOutputStream(zip, digest);
    Counting counting = new Counting(out);
    part.to(counting);
    counting.flush();
    zip.closeEntry();
    members.add(
        new Manifest.Member(name, counting.bytes, HexFormat.of().formatHex(digest.digest())));
  }

  /** Adds a finished file. */
  void add(String name, Path file) throws IOException {
    add(
        name,
        out -> {
          try (InputStream in = Files.newInputStream(file)) {
            in.transferTo(out);
          }
        });
  }

  List<Manifest.Member> members() {
    return List.copyOf(members);
  }

  /** Adds the manifest, forces everything to the disk and gives the file its name. */
  void finish(Manifest manifest) throws IOException {
    zip.putNextEntry(new ZipEntry(Manifest.NAME));
    zip.write(manifest.json().getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
    zip.close();
    open = false;
    SqliteCopy.force(fresh);
    Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    SqliteCopy.forceFolderOf(target);
  }

  @Override
  public void close() throws IOException {
    try {
      if (open) {
        zip.close();
      }
    } finally {
      // On a full disk the zip cannot end itself; the file below is let go of all the same.
      raw.close();
      Files.deleteIfExists(fresh);
    }
  }

  /** Counts what goes through. */
  private static final class Counting extends OutputStream {
    private final OutputStream out;
    private long bytes;

    Counting(OutputStream out) {
      this.out = out;
    }

    @Override
    public void write(int b) throws IOException {
      out.write(b);
      bytes++;
    }

    @Override
    public void write(byte[] b, int off, int len) throws IOException {
      out.write(b, off, len);
      bytes += len;
    }

    @Override
    public void flush() throws IOException {
      out.flush();
    }
  }
}
