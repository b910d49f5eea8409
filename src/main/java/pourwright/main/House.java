package pourwright.main;

import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.cli.Doors;
import pourwright.cli.ExitCode;
import pourwright.page.guard.Passphrase;
import pourwright.page.guard.SecretsFile;
import pourwright.page.guard.Sessions;

/** Opens what the commands ask for: start, settings, paths, passphrase. */
final class House {
  private final Machine machine;
  private final InputStream in;
  private final PrintWriter out;
  private final PrintWriter err;

  House(Machine machine, InputStream in, PrintWriter out, PrintWriter err) {
    this.machine = machine;
    this.in = in;
    this.out = out;
    this.err = err;
  }

  Settings settings(Doors.Flags flags) {
    return new Settings(flags.given(), machine);
  }

  int start(Doors.Flags flags, boolean sample) {
    try {
      return new Launch(settings(flags), machine, out).run(sample);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return ExitCode.OK;
    }
  }

  int paths(Doors.Flags flags) {
    Settings settings = settings(flags);
    out.println("data      " + settings.data());
    out.println("sample    " + machine.sampleFolder());
    out.println("settings  " + settings.file());
    out.println("backups   " + settings.data().resolve("backups"));
    out.println("log       " + settings.data().resolve("pourwright.log"));
    return ExitCode.OK;
  }

  int printSettings(Doors.Flags flags) {
    for (Settings.Setting setting : settings(flags).all()) {
      String shown = setting.value().isEmpty() ? "(none)" : masked(setting.value());
      out.printf("%-8s  %-40s  %s%n", setting.name(), shown, setting.from());
    }
    return ExitCode.OK;
  }

  /** A password inside a database address is nobody's business. */
  private static String masked(String value) {
    return value
        .replaceAll("(?<=://)([^:/@]+):[^@]+@", "$1:***@")
        .replaceAll("(?i)(password=)[^&]*", "$1***");
  }

  int passphrase(Doors.Flags flags) {
    try (DataFolder held = DataFolder.hold(settings(flags).data())) {
      SecretsFile secrets = new SecretsFile(held.path());
      String wish = ask();
      Optional<String> complaint = Passphrase.complaint(wish);
      if (complaint.isPresent()) {
        err.println("pourwright: " + complaint.get());
        return ExitCode.USAGE;
      }
      new Passphrase(secrets).set(wish);
      new Sessions(secrets).endAll();
      out.println("The passphrase is set. Start with --listen 0.0.0.0 to let other devices in.");
      return ExitCode.OK;
    }
  }

  private String ask() {
    Console console = System.console();
    char @Nullable [] typed =
        console == null ? null : console.readPassword("Passphrase for other devices: ");
    if (typed != null) {
      return new String(typed);
    }
    try {
      String line =
          new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).readLine();
      return line == null ? "" : line;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
