package pourwright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** When can it leave, without pages. */
@Command(
    name = "promise",
    description =
        "Says when so many of a candle can leave beside all open orders, what holds the date, and"
            + " what would make it earlier. No date is promised for a candle that is not proved"
            + " for sale: then it says what is missing, and apart from that when the making could"
            + " be done if the tests pass.",
    footer = {
      "",
      "Examples:",
      "  pourwright promise --candle cog-fig --count 6",
      "  pourwright promise --candle cog-fig --count 6 --day 2026-05-20 --json"
    })
final class PromiseCommand implements Callable<Integer> {
  private final Doors doors;
  @Mixin private final Where where = new Where();

  @Option(
      names = "--candle",
      required = true,
      paramLabel = "CODE",
      description = "Which candle, by its code.")
  private String candle = "";

  @Option(
      names = "--count",
      paramLabel = "N",
      defaultValue = "1",
      description = "How many, 1 to 500; 1 if not given.")
  private int count = 1;

  @Option(
      names = "--day",
      paramLabel = "DAY",
      defaultValue = "",
      description = "A parcel day, as 2026-05-20: says the last day to cast for it.")
  private String day = "";

  @Option(
      names = "--seconds",
      paramLabel = "N",
      defaultValue = "20",
      description = "How long the solver may search, up to 600; 0: the quick order of work only.")
  private int seconds = 20;

  @Option(names = "--json", description = "Prints the answer as JSON.")
  private boolean json;

  PromiseCommand(Doors doors) {
    this.doors = doors;
  }

  @Override
  public Integer call() {
    return doors.promise(
        where.flags(),
        new Doors.PromiseWish(candle, count, day, Math.min(600, Math.max(0, seconds)), json));
  }
}
