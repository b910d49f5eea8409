package pourwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the commands open: implemented where the program is wired together. Each returns an exit
 * code.
 */
public interface Doors {
  /**
   * Settings given as flags, by the setting's name; what is not there comes from the environment,
   * the settings file or the default.
   */
  record Flags(Map<String, String> given) {}

  /** The names of the commands behind which there is something. */
  Set<String> open();

  /** Starts the studio and serves pages until the process is stopped. */
  int start(Flags flags, boolean sample);

  /** Prints where everything lies. */
  int paths(Flags flags);

  /** Prints every setting with its value and where that came from. */
  int settings(Flags flags);

  /** Sets the passphrase for other devices, read from the terminal or standard input. */
  int passphrase(Flags flags);

  /**
   * The main job without pages.
   *
   * @param orders the order file
   * @param reading what was said about how to read it
   * @param pdf where the sheets go, if anywhere
   * @param paper a4 or letter
   * @param json whether the plan is printed as JSON
   * @param alone only the file's lines, not what is open in the order book
   * @param seconds how long the solver may search; 0: the forward rule in a fixed number of orders
   */
  record PlanWish(
      Path orders,
      Reading reading,
      @org.jspecify.annotations.Nullable Path pdf,
      String paper,
      boolean json,
      boolean alone,
      int seconds) {}

  /** Reads an order file, plans, prints the plan and writes the sheets. */
  default int plan(Flags flags, PlanWish wish) {
    throw new UnsupportedOperationException();
  }

  /**
   * A wish for so many of a candle.
   *
   * @param candle its code
   * @param count how many
   * @param day a parcel day as 2026-05-20, or an empty string
   * @param seconds how long the solver may search; 0: the quick order of work only
   * @param json whether the answer is printed as JSON
   */
  record PromiseWish(String candle, int count, String day, int seconds, boolean json) {}

  /** Says when a wish can leave, and nothing of the kind where it is not proved for sale. */
  default int promise(Flags flags, PromiseWish wish) {
    throw new UnsupportedOperationException();
  }

  /** Makes the sample studio of so many years in the data folder. */
  default int demo(Flags flags, int years, long seed) {
    throw new UnsupportedOperationException();
  }

  /**
   * Writes a verified backup; the studio may be running.
   *
   * @param target the zip to write; null for one with the date in its name beside the data
   */
  default int backup(Flags flags, @org.jspecify.annotations.Nullable Path target) {
    throw new UnsupportedOperationException();
  }

  /** Puts a backup in place of what the data folder holds, which is kept as a backup itself. */
  default int restore(Flags flags, Path source) {
    throw new UnsupportedOperationException();
  }

  /**
   * Writes everything in open formats into one zip; the studio may be running.
   *
   * @param target the zip to write
   * @param profile data or spreadsheet
   */
  default int export(Flags flags, Path target, String profile) {
    throw new UnsupportedOperationException();
  }

  /**
   * Books of account of a period.
   *
   * @param from first day, or an empty string for the first day of this year
   * @param until last day, or an empty string for today
   * @param format journal, xlsx or csv
   * @param table which table, for csv
   * @param target the file to write; null for standard output
   */
  record BooksWish(
      String from,
      String until,
      String format,
      String table,
      @org.jspecify.annotations.Nullable Path target) {}

  /** Writes the books of account of a period. */
  default int books(Flags flags, BooksWish wish) {
    throw new UnsupportedOperationException();
  }

  /**
   * Reads an order file into the order book, or an archive into an empty studio; all or nothing.
   */
  default int importFile(Flags flags, Path source, Reading reading) {
    throw new UnsupportedOperationException();
  }

  /** Says in plain words whether installation and data folder are sound. */
  int inspect(Flags flags);

  /** Runs one of the benchmarks and prints its table. */
  int bench(Flags flags, String which, List<String> more);
}
