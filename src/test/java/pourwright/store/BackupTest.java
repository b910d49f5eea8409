package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A backup is restored in a test, or it is none. */
class BackupTest {
  private static final Instant NOW = Instant.parse("2026-03-02T09:00:00Z");

  @TempDir Path corner;

  static Map<String, List<Map<String, Object>>> everything(Store store) {
    return store.look(
        h -> {
          Map<String, List<Map<String, Object>>> all = new TreeMap<>();
          List<Tables.Table> tables = new ArrayList<>(Tables.FACTS);
          tables.addAll(Tables.KEPT);
          for (Tables.Table table : tables) {
            all.put(
                table.name(),
                h.createQuery("SELECT * FROM " + table.name() + " ORDER BY " + table.order())
                    .mapToMap()
                    .list());
          }
          return all;
        });
  }

  private StudioFolder filled(String name) {
    StudioFolder folder = new StudioFolder(corner.resolve(name));
    try (Bench bench = new Bench(SqliteStore.open(folder), folder.attachments())) {
      Filled.fill(bench);
    }
    return folder;
  }

  private static Path backup(StudioFolder folder) {
    try (SqliteStore store = SqliteStore.open(folder)) {
      return Backup.write(store, folder, null, NOW, "test");
    }
  }

  private static Map<String, List<Map<String, Object>>> everything(StudioFolder folder) {
    try (SqliteStore store = SqliteStore.open(folder)) {
      return everything(store);
    }
  }

  @Test
  void whatWasBackedUpComesBackEqualAndWithItsFiles() throws IOException {
    StudioFolder first = filled("first");
    Path backup = backup(first);
    StudioFolder second = new StudioFolder(corner.resolve("second"));
    Restore.Restored restored = Restore.from(backup, second, NOW, "test");
    assertThat(restored.before()).isNull();
    assertThat(everything(second)).isEqualTo(everything(first));
    try (SqliteStore store = SqliteStore.open(second)) {
      Inspect.Findings findings = Inspect.of(store, second);
      assertThat(findings.unsound()).containsExactly("There is no backup yet.");
      assertThat(findings.sound()).anyMatch(s -> s.contains("1 attached files are there"));
    }
  }

  @Test
  void whatWasThereBeforeIsKeptAsABackupOfItsOwn() {
    StudioFolder first = filled("first");
    Path backup = backup(first);
    StudioFolder other = new StudioFolder(corner.resolve("other"));
    try (Bench bench = new Bench(SqliteStore.open(other), other.attachments())) {
      bench.lot("soft-wax", "W-9", 77);
    }
    Map<String, List<Map<String, Object>>> before = everything(other);
    Restore.Restored restored = Restore.from(backup, other, NOW, "test");
    assertThat(everything(other)).isEqualTo(everything(first));
    StudioFolder again = new StudioFolder(corner.resolve("again"));
    Restore.from(java.util.Objects.requireNonNull(restored.before()), again, NOW, "test");
    assertThat(everything(again)).isEqualTo(before);
  }

  @Test
  void aBackupThatWasTornOrChangedAnywhereIsRefusedAndNothingIsTouched() throws IOException {
    Path backup = backup(filled("first"));
    byte[] whole = Files.readAllBytes(backup);
    StudioFolder other = filled("other");
    Map<String, List<Map<String, Object>>> before = everything(other);
    Path broken = corner.resolve("broken.zip");
    for (int at = 0; at < whole.length; at += 4096) {
      byte[] flipped = whole.clone();
      flipped[Math.min(whole.length - 1, at + 100)] ^= 0x10;
      byte[] torn = java.util.Arrays.copyOf(whole, at);
      for (byte[] bytes : List.of(flipped, torn)) {
        Files.write(broken, bytes);
        try {
          ZipIn.checked(broken, Backup.FORMAT).close();
          // A change in what a zip does not use (a date, a comment) harms nothing.
          assertThat(bytes).hasSameSizeAs(whole);
          StudioFolder third = new StudioFolder(corner.resolve("third" + at));
          Restore.from(broken, third, NOW, "test");
          assertThat(everything(third))
              .isEqualTo(everything(new StudioFolder(corner.resolve("first"))));
        } catch (StoreTrouble e) {
          assertThat(e.kind()).isIn(StoreTrouble.Kind.DAMAGED, StoreTrouble.Kind.NEWER);
        }
      }
    }
    Files.write(broken, java.util.Arrays.copyOf(whole, whole.length / 2));
    assertThatThrownBy(() -> Restore.from(broken, other, NOW, "test"))
        .isInstanceOf(StoreTrouble.class);
    assertThat(everything(other)).isEqualTo(before);
  }

  @Test
  void aDatabaseWithAForeignTriggerIsNotLetIn() throws Exception {
    StudioFolder first = filled("first");
    try (SqliteStore store = SqliteStore.open(first)) {
      store.write(h -> h.execute("CREATE TRIGGER sly AFTER INSERT ON deed BEGIN SELECT 1; END"));
    }
    Path backup = backup(first);
    StudioFolder second = new StudioFolder(corner.resolve("second"));
    assertThatThrownBy(() -> Restore.from(backup, second, NOW, "test"))
        .hasMessageContaining("not those of Pourwright");
    assertThat(second.hasStudio()).isFalse();
  }

  @Test
  void aMissingAttachmentStopsTheBackupAndLeavesNoFileOfItsName() throws IOException {
    StudioFolder first = filled("first");
    try (Stream<Path> files = Files.walk(first.attachments())) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.delete(file);
      }
    }
    assertThatThrownBy(() -> backup(first)).hasMessageContaining("attached file is missing");
    try (Stream<Path> files = Files.list(first.backups())) {
      assertThat(files).isEmpty();
    }
  }

  @Test
  void backupsAndBooksAreReadableByTheirOwnerAlone() throws IOException {
    StudioFolder first = filled("first");
    Path backup = backup(first);
    assertThat(Files.getPosixFilePermissions(backup))
        .isEqualTo(PosixFilePermissions.fromString("rw-------"));
    assertThat(Files.getPosixFilePermissions(first.database()))
        .isEqualTo(PosixFilePermissions.fromString("rw-------"));
    assertThat(Files.getPosixFilePermissions(first.root()))
        .isEqualTo(PosixFilePermissions.fromString("rwx------"));
  }
}
