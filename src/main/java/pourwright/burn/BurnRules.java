package pourwright.burn;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pourwright.quantity.OutOfRange;

/**
 * A set of limits that a burn test is judged by.
 *
 * @param id such as {@code house}
 * @param samplesMin how many samples a pass needs
 * @param limits each with its source
 */
public record BurnRules(String id, int samplesMin, List<Limit> limits) {
  private static final String FILE = "/data/burn_rules.csv";
  private static final int COLUMNS = 8;

  /** The house's limits for one candle: a check burn. */
  public static final String CHECK = "house-check";

  /** Copies the list. */
  public BurnRules {
    limits = List.copyOf(limits);
  }

  /** How readings are held against a limit. */
  public enum Kind {
    /** Every reading at or under the limit. */
    AT_MOST,
    /** The mean of all readings of all samples at or under the limit. */
    MEAN_AT_MOST,
    /** Must not be noted at all. */
    NEVER
  }

  /**
   * One limit.
   *
   * @param rule its short name
   * @param reading the name of what is read, of {@link Reading#NAMES}
   * @param limit in the reading's unit; 0 for {@link Kind#NEVER}
   * @param needed true when a sample without such a reading is not enough evidence
   * @param words what it asks, in a sentence
   * @param source where the limit comes from
   */
  public record Limit(
      String rule,
      String reading,
      Kind kind,
      double limit,
      boolean needed,
      String words,
      String source) {

    /** Checks that the reading exists. */
    public Limit {
      if (!Reading.NAMES.contains(reading)) {
        throw new OutOfRange(
            "reading", "'" + reading + "' is not read in a test", "known: " + Reading.NAMES);
      }
    }
  }

  /** Names of the sets that come with the program. */
  public static List<String> known() {
    return List.copyOf(Known.SETS.keySet());
  }

  /**
   * A set that comes with the program.
   *
   * @throws OutOfRange when there is none of that name
   */
  public static BurnRules named(String id) {
    BurnRules found = Known.SETS.get(id);
    if (found == null) {
      throw new OutOfRange("rules", "'" + id + "' is not a set of rules", "known: " + known());
    }
    return found;
  }

  /** Read once, when first asked for. */
  private static final class Known {
    static final Map<String, BurnRules> SETS = read();

    /** The number of samples in the standards is not verified; the house asks for three. */
    private static int samplesMin(String id) {
      return id.equals("house") ? 3 : 1;
    }

    private static Map<String, BurnRules> read() {
      Map<String, List<Limit>> limits = new LinkedHashMap<>();
      try (InputStream in = BurnRules.class.getResourceAsStream(FILE)) {
        if (in == null) {
          throw new IllegalStateException(FILE + " is missing from the program");
        }
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
        int number = 0;
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
          number++;
          if (!line.startsWith("#") && !line.isBlank()) {
            List<String> cells = cells(line, number);
            limits.computeIfAbsent(cells.get(0), k -> new ArrayList<>()).add(limit(cells));
          }
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      Map<String, BurnRules> sets = new LinkedHashMap<>();
      limits.forEach((id, list) -> sets.put(id, new BurnRules(id, samplesMin(id), list)));
      // one candle of a new lot, or of every so many pours, by the limits of the house
      sets.put(CHECK, new BurnRules(CHECK, 1, limits.getOrDefault("house", List.of())));
      return sets;
    }

    private static Limit limit(List<String> cells) {
      String number = cells.get(4);
      return new Limit(
          cells.get(1),
          cells.get(2),
          Kind.valueOf(cells.get(3).toUpperCase(java.util.Locale.ROOT)),
          number.isEmpty() ? 0 : Double.parseDouble(number),
          cells.get(5).equals("yes"),
          cells.get(6),
          cells.get(7));
    }

    /** Cells of a line; commas within quotes belong to the cell. */
    private static List<String> cells(String line, int number) {
      List<String> cells = new ArrayList<>();
      StringBuilder cell = new StringBuilder();
      boolean quoted = false;
      for (char c : line.toCharArray()) {
        if (c == '"') {
          quoted = !quoted;
        } else if (c == ',' && !quoted) {
          cells.add(cell.toString());
          cell.setLength(0);
        } else {
          cell.append(c);
        }
      }
      cells.add(cell.toString());
      if (cells.size() != COLUMNS || quoted) {
        throw new IllegalStateException(FILE + ", line " + number + ": not " + COLUMNS + " cells");
      }
      return cells;
    }
  }
}
