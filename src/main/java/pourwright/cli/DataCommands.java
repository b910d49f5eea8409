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
        new Demo(doors),
        new Backup(doors),
        new Restore(doors),
        new Export(doors),
        new Import(doors),
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

    Plan(Doors doors) {
      this.doors = doors;
    }

    @Override
    public Integer call() {
      return doors.plan(where.flags(), new Doors.PlanWish(orders, reading, pdf, paper, json));
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

  @Command(name = "backup", description = "Writes a verified backup; the studio may be running.")
  static final class Backup implements Callable<Integer> {
    private final Doors doors;
    @Mixin private final Where where = new Where();

    @Parameters(paramLabel = "FILE", description = "The zip file to write.")
    private Path target = Path.of("");

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
      description = "Puts a backup in place; what was there is kept as a backup beside it.")
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

  @Command(name = "export", description = "Writes every table as CSV into a folder.")
  static final class Export implements Callable<Integer> {
    private final Doors doors;
    @Mixin private final Where where = new Where();

    @Parameters(paramLabel = "DIR", description = "The folder to write into; made if missing.")
    private Path target = Path.of("");

    @Option(
        names = "--for",
        paramLabel = "PROFILE",
        defaultValue = "spreadsheet",
        description = "spreadsheet (text that looks like a formula is made harmless) or data.")
    private String profile = "spreadsheet";

    Export(Doors doors) {
      this.doors = doors;
    }

    @Override
    public Integer call() {
      return doors.export(where.flags(), target, profile);
    }
  }

  @Command(name = "import", description = "Reads an order file into the order book.")
  static final class Import implements Callable<Integer> {
    private final Doors doors;
    @Mixin private final Where where = new Where();

    @Parameters(paramLabel = "FILE", description = "A CSV or XLSX file of orders.")
    private Path source = Path.of("");

    @Mixin private final Reading reading = new Reading();

    Import(Doors doors) {
      this.doors = doors;
    }

    @Override
    public Integer call() {
      return doors.importOrders(where.flags(), source, reading);
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

  @Command(name = "bench", description = "Measures: pages, burn, psplib or store.")
  static final class Bench implements Callable<Integer> {
    private final Doors doors;
    @Mixin private final Where where = new Where();

    @Parameters(index = "0", paramLabel = "WHICH", description = "pages, burn, psplib or store.")
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
