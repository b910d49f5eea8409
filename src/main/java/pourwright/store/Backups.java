package pourwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The backups in a studio's folder: which there are, whether one is due, and which of those that
 * were made without being asked for are let go. A backup that somebody asked for, and one of the
 * state before a restore, is never let go.
 */
public final class Backups {
  /** The longest a studio that is open goes without a backup; house. */
  public static final Duration EVERY = Duration.ofHours(24);

  /** How many of the newest are kept; house. */
  public static final int NEWEST_KEPT = 24;

  /** Of how many days the last one is kept; house. */
  public static final int DAYS_KEPT = 14;

  /** Of how many months the last one is kept; house. */
  public static final int MONTHS_KEPT = 12;

  private static final String AUTOMATIC = "auto-";
  private static final Duration CLOCK_SLIP = Duration.ofHours(1);
  private static final Pattern NAME =
      Pattern.compile(
          "(auto|backup|before-restore)-(\\d{4}-\\d\\d-\\d\\d)T(\\d\\d)-(\\d\\d)-(\\d\\d).*\\.zip");

  private final StudioFolder folder;

  /** The backups of a folder. */
  public Backups(StudioFolder folder) {
    this.folder = folder;
  }

  /**
   * One backup.
   *
   * @param file where it is
   * @param at when it was made, by its name
   */
  public record Found(Path file, Instant at) {
    /** Its file name. */
    public String name() {
      return String.valueOf(file.getFileName());
    }

    boolean automatic() {
      return name().startsWith(AUTOMATIC);
    }

    /** False for the state before a restore, which is no longer the studio's. */
    boolean ofToday() {
      return automatic() || name().startsWith("backup-");
    }
  }

  /** All of them, the newest first; whatever else lies in the folder is passed over. */
  public List<Found> all() {
    if (!Files.isDirectory(folder.backups())) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder.backups())) {
      return files
          .flatMap(f -> found(f).stream())
          .sorted(Comparator.comparing(Found::at).reversed())
          .toList();
    } catch (IOException e) {
      throw disk("the backups cannot be looked at", e);
    }
  }

  private static Optional<Found> found(Path file) {
    Matcher name = NAME.matcher(String.valueOf(file.getFileName()));
    if (!name.matches()) {
      return Optional.empty();
    }
    try {
      String time = name.group(2) + "T" + name.group(3) + ":" + name.group(4) + ":" + name.group(5);
      return Optional.of(new Found(file, LocalDateTime.parse(time).toInstant(ZoneOffset.UTC)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** The newest of the studio as it has been since the last restore. */
  public Optional<Found> newest() {
    return all().stream().filter(Found::ofToday).findFirst();
  }

  /**
   * True when the newest is more than 24 hours old, when there is none, and when it claims to be
   * from the future, as after a clock that was wrong.
   */
  public boolean due(Instant now) {
    return newest()
        .map(n -> n.at().plus(EVERY).isBefore(now) || n.at().isAfter(now.plus(CLOCK_SLIP)))
        .orElse(true);
  }

  /**
   * Makes a backup without being asked for one, reads it once through, and lets go of those that
   * are too many.
   *
   * @return its file
   * @throws StoreTrouble as {@link Backup#write} does; no older backup is let go then
   */
  public Path make(SqliteStore store, Instant now, String program) {
    Path file = folder.backups().resolve(AUTOMATIC + Backup.stamp(now) + ".zip");
    Backup.write(store, folder, file, now, program);
    try {
      for (Found surplus : surplus(all())) {
        Files.deleteIfExists(surplus.file());
      }
      return file;
    } catch (IOException e) {
      throw disk("an old backup could not be let go", e);
    }
  }

  /** Those automatic ones that are neither among the newest nor the last of a kept day or month. */
  static List<Found> surplus(List<Found> newestFirst) {
    List<Found> surplus = new ArrayList<>();
    Set<LocalDate> days = new HashSet<>();
    Set<YearMonth> months = new HashSet<>();
    int kept = 0;
    for (Found found : newestFirst) {
      if (found.automatic()) {
        LocalDate day = LocalDate.ofInstant(found.at(), ZoneOffset.UTC);
        boolean keep = kept < NEWEST_KEPT;
        keep |= days.size() < DAYS_KEPT && !days.contains(day);
        keep |= months.size() < MONTHS_KEPT && !months.contains(YearMonth.from(day));
        days.add(day);
        months.add(YearMonth.from(day));
        kept++;
        if (!keep) {
          surplus.add(found);
        }
      }
    }
    return surplus;
  }

  private static StoreTrouble disk(String what, IOException e) {
    return new StoreTrouble(
        StoreTrouble.Kind.DISK,
        what + ": " + e.getMessage(),
        "look at the rights and the space of the backups folder",
        e);
  }
}
