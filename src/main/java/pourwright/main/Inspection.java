package pourwright.main;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import pourwright.cli.ExitCode;

/** {@code inspect}: is this installation sound, is this data folder sound, in plain words. */
final class Inspection {
  private static final long MEGABYTE = 1024L * 1024;
  private static final long ROOM_MIN_MB = 500;

  private final Settings settings;
  private final PrintWriter out;
  private final List<String> findings = new ArrayList<>();

  Inspection(Settings settings, PrintWriter out) {
    this.settings = settings;
    this.out = out;
  }

  int run() {
    for (String line : Commands.version()) {
      out.println(line);
    }
    Path folder = settings.data();
    String db = settings.value(Settings.Key.DB);
    out.println("data folder " + folder);
    if (db.isEmpty() && !Wiring.hasStudio(folder)) {
      out.println("There is no studio in it yet; the first start makes one.");
      return ExitCode.OK;
    }
    try (DataFolder held = DataFolder.hold(folder);
        Wiring wiring = Wiring.open(held.path(), db, Wiring.systemClock())) {
      out.println(wiring.store().describe());
      findings.addAll(wiring.unsound());
      long wrong = wiring.store().keptRowsWrong();
      if (wrong > 0) {
        findings.add(wrong + " rows kept for speed disagree with the ledger");
      }
    }
    lookAround(folder);
    findings.forEach(f -> out.println("not as it should be: " + f));
    out.println(findings.isEmpty() ? "All sound." : findings.size() + " findings.");
    return findings.isEmpty() ? ExitCode.OK : ExitCode.DAMAGED;
  }

  private void lookAround(Path folder) {
    try {
      long free = Files.getFileStore(folder).getUsableSpace() / MEGABYTE;
      out.println(free + " MB free on the disk");
      if (free < ROOM_MIN_MB) {
        findings.add("less than " + ROOM_MIN_MB + " MB are free");
      }
      if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
        openToOthers(folder);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot look into " + folder, e);
    }
  }

  private void openToOthers(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        String rights = PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
        boolean data = String.valueOf(file.getFileName()).matches("studio\\.db.*|secrets\\.json");
        if (data && !rights.endsWith("------")) {
          findings.add(file.getFileName() + " can be read by others (" + rights + ")");
        }
      }
    }
  }
}
