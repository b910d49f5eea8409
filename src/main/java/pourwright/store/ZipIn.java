package pourwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** A backup or archive that is read: every hash is checked before anything of it is used. */
final class ZipIn implements AutoCloseable {
  private static final long MANIFEST_MAX = 64_000_000;
  private final ZipFile zip;
  private final Manifest manifest;

  private ZipIn(ZipFile zip, Manifest manifest) {
    this.zip = zip;
    this.manifest = manifest;
  }

  /**
   * Opens a zip and checks all of it.
   *
   * @param format what it must be
   * @throws StoreTrouble when it is not that, is newer than this program, or a hash is wrong
   */
  static ZipIn checked(Path file, String format) {
    ZipFile zip = null;
    try {
      zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8);
      ZipIn in = new ZipIn(zip, manifest(zip));
      in.check(format);
      return in;
    } catch (IOException e) {
      close(zip);
      throw new StoreTrouble(
          StoreTrouble.Kind.DAMAGED,
          file.getFileName() + " cannot be read: " + e.getMessage(),
          "use another backup; nothing was changed",
          e);
    } catch (StoreTrouble e) {
      close(zip);
      throw e;
    }
  }

  private static void close(@org.jspecify.annotations.Nullable ZipFile zip) {
    try {
      if (zip != null) {
        zip.close();
      }
    } catch (IOException e) {
      // The first trouble is the one that is told.
    }
  }

  private static Manifest manifest(ZipFile zip) throws IOException {
    ZipEntry entry = zip.getEntry(Manifest.NAME);
    if (entry == null || entry.getSize() > MANIFEST_MAX) {
      throw damaged("it has no list of contents");
    }
    try (InputStream in = zip.getInputStream(entry)) {
      return Manifest.read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
  }

  private static StoreTrouble damaged(String what) {
    return new StoreTrouble(
        StoreTrouble.Kind.DAMAGED,
        "this file is not sound: " + what,
        "use another backup; nothing was changed");
  }

  private void check(String format) throws IOException {
    if (!manifest.format().equals(format)) {
      throw new StoreTrouble(
          StoreTrouble.Kind.REFUSED,
          "this is a " + manifest.format() + " and a " + format + " is needed",
          "use 'restore' for backups and 'import' for archives");
    }
    if (manifest.step() > Migrations.NEWEST || manifest.formatVersion() > 1) {
      throw new StoreTrouble(
          StoreTrouble.Kind.NEWER,
          "this file was written by a newer Pourwright (" + manifest.program() + ")",
          "use the newer program; nothing was changed");
    }
    Set<String> names = new HashSet<>();
    for (Manifest.Member member : manifest.members()) {
      if (!names.add(member.name())) {
        throw damaged(member.name() + " stands in it twice");
      }
      read(member.name(), null);
    }
    zip.stream()
        .map(ZipEntry::getName)
        .filter(n -> !n.equals(Manifest.NAME) && !names.contains(n))
        .findAny()
        .ifPresent(
            n -> {
              throw damaged(n + " is in it and not in its list of contents");
            });
  }

  Manifest manifest() {
    return manifest;
  }

  /** Opens a part; its hash was checked when the zip was opened. */
  InputStream open(String name) throws IOException {
    ZipEntry entry = zip.getEntry(name);
    if (entry == null) {
      throw damaged(name + " is missing");
    }
    return zip.getInputStream(entry);
  }

  /** Writes a part into a file and checks its hash on the way; null only checks. */
  void read(String name, @org.jspecify.annotations.Nullable Path target) throws IOException {
    Manifest.Member member =
        manifest.members().stream()
            .filter(m -> m.name().equals(name))
            .findFirst()
            .orElseThrow(() -> damaged(name + " is not in its list of contents"));
    MessageDigest digest = HashedFiles.sha256();
    try (InputStream in = new DigestInputStream(open(name), digest);
        OutputStream out =
            target == null ? OutputStream.nullOutputStream() : Files.newOutputStream(target)) {
      long bytes = in.transferTo(out);
      if (bytes != member.bytes()) {
        throw damaged(name + " has another length than its list of contents says");
      }
    }
    if (!HexFormat.of().formatHex(digest.digest()).equals(member.sha256())) {
      throw damaged(name + " was changed since it was written");
    }
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}
