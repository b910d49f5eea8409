package pourwright.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToIntFunction;
import picocli.CommandLine;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.ParameterException;

/** The commands, ready to be given the words of the command line. */
public final class CommandTree {
  private final CommandLine line;

  /**
   * The tree.
   *
   * @param doors what the commands open
   * @param version the lines of {@code --version}
   * @param out where answers go
   * @param err where complaints go
   * @param trouble says what went wrong behind a door and which exit code that is
   */
  public CommandTree(
      Doors doors,
      IVersionProvider version,
      PrintWriter out,
      PrintWriter err,
      ToIntFunction<Exception> trouble) {
    line = new CommandLine(new StudioCommand(doors));
    for (Object command : DataCommands.all(doors)) {
      CommandLine sub = new CommandLine(command);
      sub.getCommandSpec().mixinStandardHelpOptions(true);
      if (doors.open().contains(sub.getCommandName())) {
        line.addSubcommand(sub);
      }
    }
    line.getCommandSpec().versionProvider(version);
    line.getSubcommands().values().forEach(s -> s.getCommandSpec().versionProvider(version));
    line.setOut(out).setErr(err);
    line.getCommandSpec().usageMessage().exitCodeList(meanings());
    line.setParameterExceptionHandler(this::refuse);
    line.setExecutionExceptionHandler((e, command, parsed) -> trouble.applyAsInt(e));
    subcommand("bench").setUnmatchedOptionsArePositionalParams(true);
    line.setUsageHelpAutoWidth(true);
  }

  private static Map<String, String> meanings() {
    Map<String, String> meanings = new LinkedHashMap<>();
    Arrays.stream(ExitCode.MEANINGS)
        .forEach(
            m -> meanings.put(m.substring(0, m.indexOf(':')), m.substring(m.indexOf(':') + 1)));
    return meanings;
  }

  private int refuse(ParameterException e, String[] words) {
    PrintWriter err = e.getCommandLine().getErr();
    err.println("pourwright: " + e.getMessage());
    err.println(
        "Try 'pourwright" + nameOf(e.getCommandLine()) + " --help' for what it understands.");
    err.flush();
    return ExitCode.USAGE;
  }

  private CommandLine subcommand(String name) {
    return java.util.Objects.requireNonNull(line.getSubcommands().get(name));
  }

  private static String nameOf(CommandLine command) {
    return command.getParent() == null ? "" : " " + command.getCommandName();
  }

  /** Runs with these words; returns the exit code. */
  public int run(String[] words) {
    return line.execute(words);
  }
}
