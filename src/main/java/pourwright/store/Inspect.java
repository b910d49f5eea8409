package pourwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Whether a studio's folder and books are sound, in plain words. */
public final class Inspect {
  private static final long WAL_MAX = 64_000_000;
  private final List<String> sound = new ArrayList<>();
  private final List<String> unsound = new ArrayList<>();

  private Inspect() {}

  /**
   * What was found.
   *
   * @param sound sentences about what is as it should be
   * @param unsound sentences about what is not; empty when all is well
   */
  public record Findings(List<String> sound, List<String> unsound) {
    /** True when nothing is wrong. */
    public boolean isSound() {
      return unsound.isEmpty();
    }
  }

  /** Looks at an open studio, its folder and its attached files. Changes nothing. */
  public static Findings of(Store store, StudioFolder folder) {
    Inspect inspect = new Inspect();
    try {
      inspect.folder(folder);
      inspect.books(store);
      inspect.attached(store, new HashedFiles(folder));
      inspect.backups(folder);
    } catch (IOException e) {
      inspect.unsound.add("The folder cannot be read: " + e.getMessage() + ".");
    }
    return new Findings(List.copyOf(inspect.sound), List.copyOf(inspect.unsound));
  }

  private void say(boolean good, String yes, String no) {
    if (good) {
      sound.add(yes);
    } else {
      unsound.add(no);
    }
  }

  private void folder(StudioFolder folder) throws IOException {
    say(
        Files.isWritable(folder.root()),
        "The data folder " + folder.root() + " can be written to.",
        "The data folder " + folder.root() + " cannot be written to.");
    if (Files.getFileStore(folder.root()).supportsFileAttributeView("posix")) {
      Set<PosixFilePermission> rights = Files.getPosixFilePermissions(folder.root());
      say(
          rights.equals(PosixFilePermissions.fromString("rwx------")),
          "Only its owner can read it.",
          "Others on this machine can read it (" + PosixFilePermissions.toString(rights) + ").");
    }
    long free = Files.getFileStore(folder.root()).getUsableSpace();
    say(
        free > 500_000_000,
        "There are " + free / 1_000_000 + " MB free.",
        "Only " + free / 1_000_000 + " MB are free.");
    Path wal = folder.root().resolve("studio.db-wal");
    if (Files.exists(wal)) {
      say(
          Files.size(wal) < WAL_MAX,
          "What was written last is folded in often enough.",
          "What was written last has grown to " + Files.size(wal) / 1_000_000 + " MB unfolded.");
    }
  }

  private void books(Store store) {
    List<String> findings = store.unsound();
    sound.add("The books are kept in " + store.describe() + ".");
    say(
        findings.isEmpty(),
        "The database is whole.",
        "The database is not whole: " + String.join("; ", findings) + ".");
    long wrong = store.keptRowsWrong();
    say(
        wrong == 0,
        "What is kept for speed agrees with the ledger.",
        wrong + " rows that are kept for speed disagree with the ledger; they can be rebuilt.");
    Map<String, Long> rows = store.look(Tables::counts);
    sound.add(
        "There are "
            + rows.get("deed")
            + " deeds, "
            + rows.get("lot")
            + " lots, "
            + rows.get("movement")
            + " movements and "
            + rows.get("piece")
            + " pieces.");
  }

  private void attached(Store store, HashedFiles files) throws IOException {
    List<String> hashes = store.look(h -> new AttachmentSql(h).hashes());
    int wrong = 0;
    for (String hash : hashes) {
      Path place = files.place(hash);
      if (!Files.exists(place)) {
        unsound.add("The attached file " + hash.substring(0, 12) + " is missing.");
        wrong++;
      } else if (!HashedFiles.sha256(place).equals(hash)) {
        unsound.add("The attached file " + hash.substring(0, 12) + " was changed.");
        wrong++;
      }
    }
    if (wrong == 0) {
      sound.add("All " + hashes.size() + " attached files are there and unchanged.");
    }
  }

  private void backups(StudioFolder folder) throws IOException {
    List<Backups.Found> all = new Backups(folder).all();
    say(
        !all.isEmpty(),
        "The newest backup is " + (all.isEmpty() ? "" : all.get(0).name()) + ".",
        "There is no backup yet.");
  }
}
