package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which backups there are, when one is due, which are let go. The numbers kept are house. */
class BackupsTest {
  private static final Instant NOW = Instant.parse("2026-03-02T09:00:00Z");

  @TempDir private Path corner = Path.of("");

  private Backups with(String... names) throws IOException {
    StudioFolder folder = new StudioFolder(corner);
    folder.prepare();
    for (String name : names) {
      Files.writeString(folder.backups().resolve(name), "x");
    }
    return new Backups(folder);
  }

  private static Backups.Found automatic(Instant at) {
    return new Backups.Found(Path.of("auto-" + Backup.stamp(at) + ".zip"), at);
  }

  @Test
  void aBackupIsDueWhenThereIsNoneOrTheNewestIsADayOldOrFromTheFuture() throws IOException {
    assertThat(with().due(NOW)).isTrue();
    Backups backups =
        with("auto-2026-03-01T08-59-00.zip", "before-restore-2026-03-02T08-00-00Z.zip");
    assertThat(backups.due(NOW)).isTrue();
    assertThat(with("backup-2026-03-01T09-01-00.zip", "notes.txt").due(NOW)).isFalse();
    assertThat(with("backup-2031-01-01T00-00-00.zip").due(NOW)).isTrue();
    assertThat(backups.all()).hasSize(4);
    assertThat(backups.all().get(0).name()).isEqualTo("backup-2031-01-01T00-00-00.zip");
  }

  @Test
  void twoYearsOfDaysLeaveTheNewestTheDaysAndTheMonths() {
    List<Backups.Found> all = new ArrayList<>();
    for (int day = 0; day < 730; day++) {
      all.add(automatic(NOW.minus(Duration.ofDays(day))));
    }
    Instant asked = NOW.minus(Duration.ofDays(400));
    all.add(new Backups.Found(Path.of("backup-" + Backup.stamp(asked) + ".zip"), asked));
    all.sort(Comparator.comparing(Backups.Found::at).reversed());
    List<Backups.Found> kept = new ArrayList<>(all);
    kept.removeAll(Backups.surplus(all));
    // 24 days from 2 March reach 7 February: March and February, then the ends of ten more months.
    assertThat(kept).hasSize(24 + 10 + 1).contains(all.get(0));
    assertThat(kept).anyMatch(f -> f.name().startsWith("backup-"));
    assertThat(kept).anyMatch(f -> f.name().startsWith("auto-2025-04-30"));
    assertThat(kept).noneMatch(f -> f.name().startsWith("auto-2025-03"));
  }

  @Test
  void aDayOfManyImportsDoesNotPushOutTheDaysBefore() {
    List<Backups.Found> all = new ArrayList<>();
    for (int hour = 0; hour < 60; hour++) {
      all.add(automatic(NOW.minus(Duration.ofMinutes(hour))));
    }
    for (int day = 1; day <= 20; day++) {
      all.add(automatic(NOW.minus(Duration.ofDays(day))));
    }
    List<Backups.Found> kept = new ArrayList<>(all);
    kept.removeAll(Backups.surplus(all));
    assertThat(kept).hasSize(24 + 13).contains(automatic(NOW.minus(Duration.ofDays(13))));
    assertThat(kept).doesNotContain(automatic(NOW.minus(Duration.ofDays(14))));
  }
}
