package pourwright.cli;

import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code pourwright} itself: starts the studio. */
@Command(
    name = "pourwright",
    mixinStandardHelpOptions = true,
    description = {
      "Starts the studio and opens it in a browser.",
      "",
      "Pourwright does the arithmetic, the physics, the planning and the record-keeping of a studio"
          + " that casts vessels and pours candles.",
      ""
    },
    footer = {"", "'pourwright compute --list' names the headless computations."},
    exitCodeListHeading = "%nExit codes:%n")
final class StudioCommand implements Callable<Integer> {
  private final Doors doors;

  @Mixin private final Where where = new Where();

  @Option(
      names = "--port",
      paramLabel = "N",
      description = "The port; 0 for any. If it is taken the next nine are tried.")
  private @Nullable String port;

  @Option(
      names = "--no-port-probing",
      description = "Ends with code 11 if the port is taken, instead of trying the next ones.")
  private boolean noProbing;

  @Option(
      names = "--listen",
      paramLabel = "ADDRESS",
      description = "Lets other devices in, as with 0.0.0.0. Refused while no passphrase is set.")
  private @Nullable String listen;

  @Option(
      names = "--name",
      paramLabel = "HOST",
      description = "A further name this machine has on your network.")
  private @Nullable String hostName;

  @Option(names = "--no-browser", description = "Does not open a browser.")
  private boolean noBrowser;

  @Option(
      names = "--copy-made",
      description = "Says that a copy of an older PostgreSQL database exists; it is then changed.")
  private boolean copyMade;

  @Option(names = "--sample", description = "Opens the sample studio, in a folder of its own.")
  private boolean sample;

  @Option(names = "--paths", description = "Prints where everything lies, and ends.")
  private boolean paths;

  StudioCommand(Doors doors) {
    this.doors = doors;
  }

  @Override
  public Integer call() {
    Map<String, String> given = where.given();
    Where.put(given, "port", port);
    Where.put(given, "listen", listen);
    Where.put(given, "name", hostName);
    Where.put(given, "browser", noBrowser ? "no" : null);
    Where.put(given, "probing", noProbing ? "no" : null);
    Where.put(given, "copy-made", copyMade ? "yes" : null);
    Doors.Flags flags = new Doors.Flags(given);
    return paths ? doors.paths(flags) : doors.start(flags, sample);
  }
}
