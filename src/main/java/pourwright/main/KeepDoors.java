package pourwright.main;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.cli.ExitCode;
import pourwright.store.Archive;
import pourwright.store.Backup;
import pourwright.store.HashedFiles;
import pourwright.store.Import;
import pourwright.store.Manifest;
import pourwright.store.Restore;
import pourwright.store.SqliteStore;
import pourwright.store.StudioFolder;

/** Keeping one's data without pages: backup and restore, export and the archive's way back in. */
final class KeepDoors {
  private final Path data;
  private final String db;
  private final Clock clock;
  private final PrintWriter out;
  private final PrintWriter err;

  KeepDoors(Path data, String db, Clock clock, PrintWriter out, PrintWriter err) {
    this.data = data;
    this.db = db;
    this.clock = clock;
    this.out = out;
    this.err = err;
  }

  /** Whether a file is to be read as an archive; a damaged zip is, a workbook is not. */
  static boolean isArchive(Path file) {
    return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(".zip")
        || Import.isArchive(file);
  }

  /** The database is read through SQLite alone, so another Pourwright may have it open. */
  int backup(@Nullable Path wish) {
    if (!db.isEmpty()) {
      return backupOfServer(wish);
    }
    boolean intoFolder = wish != null && Files.isDirectory(wish);
    Path target = intoFolder ? null : wish;
    if (!studioIsThere() || !mayWrite(target)) {
      return ExitCode.USAGE;
    }
    try (Wiring wiring = Wiring.open(data, db, clock)) {
      SqliteStore store = wiring.file().orElseThrow();
      Path file = intoFolder && wish != null ? wish.resolve(nameOfToday()) : target;
      if (!mayWrite(file)) {
        return ExitCode.USAGE;
      }
      StudioFolder folder = new StudioFolder(data);
      Path made = Backup.write(store, folder, file, clock.instant(), Commands.program());
      return done("The backup is in " + made.toAbsolutePath() + "; it was read once through.");
    }
  }

  /** Of a PostgreSQL database: an archive of everything, read once through. */
  private int backupOfServer(@Nullable Path wish) {
    Path folder = wish == null ? new StudioFolder(data).backups() : wish;
    boolean named = wish != null && !Files.isDirectory(wish);
    Path target = named ? folder : folder.resolve(nameOfToday());
    if (wish == null) {
      try {
        new StudioFolder(data).prepare();
      } catch (java.io.IOException e) {
        throw new java.io.UncheckedIOException("cannot write into " + data, e);
      }
    }
    int code = export(target, "data");
    if (code == ExitCode.OK) {
      Import.check(target);
      out.println("It was read once through; 'restore' puts it into an empty database.");
      out.flush();
    }
    return code;
  }

  private String nameOfToday() {
    String now = clock.instant().truncatedTo(java.time.temporal.ChronoUnit.SECONDS).toString();
    return "pourwright-" + now.replace(":", "-").replace("Z", "") + ".zip";
  }

  int restore(Path source) {
    if (!isFile(source)) {
      return ExitCode.USAGE;
    }
    if (!db.isEmpty()) {
      return importArchive(source);
    }
    try (DataFolder held = DataFolder.hold(data)) {
      Restore.Restored restored =
          Restore.from(source, new StudioFolder(held.path()), clock.instant(), Commands.program());
      Optional.ofNullable(restored.before())
          .ifPresent(before -> out.println("What was there is kept in " + before));
      return done("The backup of " + restored.from().madeAt() + " is in place in " + data + ".");
    }
  }

  int export(Path target, String word) {
    Archive.Profile profile;
    switch (word) {
      case "data" -> profile = Archive.Profile.DATA;
      case "spreadsheet" -> profile = Archive.Profile.SPREADSHEET;
      default -> {
        return refuse("'" + word + "' is no profile; say data or spreadsheet");
      }
    }
    if (!studioIsThere() || !mayWrite(target)) {
      return ExitCode.USAGE;
    }
    try (Wiring wiring = Wiring.open(data, db, clock)) {
      Manifest manifest =
          Archive.write(
              wiring.store(),
              new HashedFiles(new StudioFolder(data)),
              target,
              profile,
              new Archive.Made(clock.instant(), Commands.program()));
      return done(
          rows(manifest) + " rows are in " + target.toAbsolutePath() + ", written for " + word);
    }
  }

  /** Into a studio in which nothing was done; the archive is checked before one is begun. */
  int importArchive(Path source) {
    if (!isFile(source)) {
      return ExitCode.USAGE;
    }
    Import.check(source);
    try (DataFolder held = DataFolder.hold(data);
        Wiring wiring = Wiring.open(held.path(), db, clock)) {
      Manifest manifest =
          Import.from(source, wiring.store(), new HashedFiles(new StudioFolder(held.path())));
      return done(rows(manifest) + " rows were taken in from " + source);
    }
  }

  private static long rows(Manifest manifest) {
    return manifest.rows().values().stream().mapToLong(Long::longValue).sum();
  }

  private boolean studioIsThere() {
    if (db.isEmpty() && !Wiring.hasStudio(data)) {
      refuse("there is no studio in " + data + "; say with --data where it is");
      return false;
    }
    return true;
  }

  private boolean isFile(Path source) {
    if (!Files.isRegularFile(source)) {
      refuse("there is no file " + source);
      return false;
    }
    return true;
  }

  private boolean mayWrite(@Nullable Path target) {
    if (target == null) {
      return true;
    }
    if (Files.exists(target)) {
      refuse(target + " is there already and is not replaced; choose another name");
      return false;
    }
    Path folder = target.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      refuse("there is no folder " + folder + " to write into");
      return false;
    }
    return true;
  }

  private int refuse(String sentence) {
    err.println("pourwright: " + sentence);
    return ExitCode.USAGE;
  }

  private int done(String sentence) {
    out.println(sentence);
    out.flush();
    return ExitCode.OK;
  }
}
