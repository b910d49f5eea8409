package pourwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The commands that work on a data folder. */
final class DataCommands {
  private DataCommands() {}

  static List<Object> all(Doors doors) {
    return List.of(
        new Plan(doors),
        new PromiseCommand(doors),
        new Demo(doors),
        new Backup(doors),
        new Restore(doors),
        new Export(doors),
        new Import(doors),
        new BooksCommand(doors),
        new Inspect(doors),
        new Bench(doors),
        new Passphrase(doors),
        new Settings(doors));
  }

  @Command(
      name = "plan",
      description =
          "Plans an order file: amounts, lots to draw, an order of work, sheets as a PDF.")
  static final class Plan implements Callable<Integer> {
    private final Doors doors;
    @Mixin private final Where where = new Where();

    @Option(
        names = "--orders",
        required = true,
        paramLabel = "FILE",
        description = "A CSV or XLSX file.")
    private Path orders = Path.of("");

    @Mixin private final Reading reading = new Reading();

    @Option(
        names = "--paper",
        paramLabel = "SIZE",
        defaultValue = "a4",
        description = "a4 or letter; a4 if not given.")
    private String paper = "a4";

    @Option(names = "--pdf", paramLabel = "OUT", description = "Writes the sheets here.")
    private @Nullable Path pdf;

    @Option(names = "--json", description = "Prints the plan as JSON.")
    private boolean json;

    @Option(
        names = "--alone",
        description = "Plans the file's lines only, not what is open in the order book.")
    private boolean alone;

    @Option(
        names = "--seconds",
        paramLabel = "N",
        defaultValue = "0",
        description =
            "Lets the solver search for so long, up to 600, and says how near to the best the plan"
                + " is. 0 if not given: the forward rule in a fixed number of orders, so that the"
                + " same file and data give the same plan.")
    private int seconds;

    Plan(Doors doors) {
      this.doors = doors;
    }

    @Override
    public Integer call() {
      return doors.plan(
          where.flags(),
          new Doors.PlanWish(
              orders, reading, pdf, paper, json, alone, Math.min(600, Math.max(0, seconds))));
    }
  }

  @Command(name = "demo", description = "Makes the sample studio in a data folder.")
  static final class Demo implements Callable<Integer> {
    private final Doors doors;
    @Mixin private final Where where = new Where();

    @Option(
        names = "--years",
        paramLabel = "N",
        defaultValue = "2",
        description = "Years of history, 1 to 5; 2 if not given.")
    private int years;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "17", hidden = true)
    private long seed;

    Demo(Doors doors) {
      this.doors = doors;
    }

    @Override
    public Integer call() {
      return doors.demo(where.flags(), years, seed);
    }
  }

  @Command(
      name = "backup",
      description = "Writes a backup and reads it once through; the studio may be running.",
      footer = {
        "",
        "Examples:",
        "  pourwright backup",
        "  pourwright backup --data DIR --to /media/stick/studio.zip"
      })
  static final class Backup implements Callable<Integer> {
    private final Doors doors;
    @Mixin private final Where where = new Where();

    @Option(
        names = "--to",
        paramLabel = "FILE",
        description =
            "The zip file to write, or a folder to write it into; if not given, the backups of the"
                + " data folder. A file that is there already is not replaced.")
    private @Nullable Path target;

    Backup(Doors doors) {
      this.doors = doors;
    }

    @Override
    public Integer call() {
      return doors.backup(where.flags(), target);
    }
  }

  @Command(
      name = "restore",
      description = "Checks a backup and puts it in place; what was there is kept beside it.",
      footer = {"", "Example:", "  pourwright restore studio.zip --data DIR"})
  static final class Restore implements Callable<Integer> {
    private final Doors doors;
    @Mixin private final Where where = new Where();

    @Parameters(paramLabel = "FILE", description = "The zip file of a backup.")
    private Path source = Path.of("");

    Restore(Doors doors) {
      this.doors = doors;
    }

    @Override
    public Integer call() {
      return doors.restore(where.flags(), source);
    }
  }

  @Command(
      name = "export",
      description =
          "Writes every table as CSV and as JSON lines, with the attached files, into one zip; the"
              + " studio may be running.",
      footer = {
        "",
        "Examples:",
        "  pourwright export --data DIR --to everything.zip",
        "  pourwright export --data DIR --to tables.zip --profile spreadsheet"
      })
  static final class Export implements Callable<Integer> {
    private final Doors doors;
    @Mixin private final Where where = new Where();

    @Option(
        names = "--to",
        required = true,
        paramLabel = "FILE",
        description = "The zip file to write. One that is there already is not replaced.")
    private Path target = Path.of("");

    @Option(
        names = "--profile",
        paramLabel = "PROFILE",
        defaultValue = "data",
        description =
            "data (nothing is changed; if not given) or spreadsheet (in the CSV files, text that"
                + " looks like a formula is made harmless).")
    private String profile = "data";

    Export(Doors doors) {
      this.doors = doors;
    }

    @Override
    public Integer call() {
      return doors.export(where.flags(), target, profile);
    }
  }

  @Command(
      name = "import",
      description =
          "Reads an order file into the order book, or an archive that 'export' wrote into an empty"
              + " studio: all of it or nothing.",
      footer = {
        "",
        "Examples:",
        "  pourwright import orders.csv --data DIR --dates d/m/y",
        "  pourwright import everything.zip --data NEWDIR"
      })
  static final class Import implements Callable<Integer> {
    private final Doors doors;
    @Mixin private final Where where = new Where();

    @Parameters(
        paramLabel = "FILE",
        description = "A CSV or XLSX file of orders, or the zip file of an archive.")
    private Path source = Path.of("");

    @Mixin private final Reading reading = new Reading();

    Import(Doors doors) {
      this.doors = doors;
    }

    @Override
    public Integer call() {
      return doors.importFile(where.flags(), source, reading);
    }
  }

  @Command(name = "inspect", description = "Says whether installation and data are sound.")
  static final class Inspect implements Callable<Integer> {
    private final Doors doors;
    @Mixin private final Where where = new Where();

    Inspect(Doors doors) {
      this.doors = doors;
    }

    @Override
    public Integer call() {
      return doors.inspect(where.flags());
    }
  }

  @Command(name = "bench", description = "Measures: pages, burn, psplib, wicks, defects or store.")
  static final class Bench implements Callable<Integer> {
    private final Doors doors;
    @Mixin private final Where where = new Where();

    @Parameters(
        index = "0",
        paramLabel = "WHICH",
        description = "pages, burn, psplib, studios, defects or store.")
    private String which = "";

    @Parameters(index = "1..*", paramLabel = "MORE", description = "What the benchmark takes.")
    private List<String> more = List.of();

    Bench(Doors doors) {
      this.doors = doors;
    }

    @Override
    public Integer call() {
      return doors.bench(where.flags(), which, more);
    }
  }

  @Command(
      name = "passphrase",
      description = "Sets the passphrase that other devices sign in with; signs all of them out.")
  static final class Passphrase implements Callable<Integer> {
    private final Doors doors;
    @Mixin private final Where where = new Where();

    Passphrase(Doors doors) {
      this.doors = doors;
    }

    @Override
    public Integer call() {
      return doors.passphrase(where.flags());
    }
  }

  @Command(name = "settings", description = "Prints every setting and where it comes from.")
  static final class Settings implements Callable<Integer> {
    private final Doors doors;
    @Mixin private final Where where = new Where();

    Settings(Doors doors) {
      this.doors = doors;
    }

    @Override
    public Integer call() {
      return doors.settings(where.flags());
    }
  }
}
