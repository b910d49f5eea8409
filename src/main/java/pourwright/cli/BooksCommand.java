package pourwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The books of account as a file. */
@Command(
    name = "books",
    description =
        "Writes what was sold and bought, what stock is worth and what the sold goods had cost: a"
            + " plain-text journal of double entries, a workbook, or one table. Not tax advice.",
    footer = {
      "",
      "Examples:",
      "  pourwright books --from 2026-01-01 --until 2026-12-31 > 2026.journal",
      "  pourwright books --format xlsx --to 2026.xlsx",
      "  pourwright books --format csv --table sales"
    })
final class BooksCommand implements Callable<Integer> {
  private final Doors doors;
  @Mixin private final Where where = new Where();

  @Option(
      names = "--from",
      paramLabel = "DAY",
      defaultValue = "",
      description = "The first day, as 2026-01-31; the first of this year if not given.")
  private String from = "";

  @Option(
      names = "--until",
      paramLabel = "DAY",
      defaultValue = "",
      description = "The last day; today if not given.")
  private String until = "";

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "journal",
      description = "journal (if not given), xlsx or csv.")
  private String format = "journal";

  @Option(
      names = "--table",
      paramLabel = "TABLE",
      defaultValue = "sales",
      description =
          "For csv: overview, sales (if not given), purchases, stock, months or accounts.")
  private String table = "sales";

  @Option(
      names = "--to",
      paramLabel = "FILE",
      description = "The file to write; one that is there is not replaced. Else it is printed.")
  private @Nullable Path target;

  BooksCommand(Doors doors) {
    this.doors = doors;
  }

  @Override
  public Integer call() {
    return doors.books(where.flags(), new Doors.BooksWish(from, until, format, table, target));
  }
}
