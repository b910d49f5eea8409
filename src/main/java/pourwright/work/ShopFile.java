package pourwright.work;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pourwright.card.CandleDesign;
import pourwright.order.DateOrder;
import pourwright.order.DesignNames;
import pourwright.order.ImportChoices;
import pourwright.order.ImportField;
import pourwright.order.OrderFile;
import pourwright.order.OrderImport;

/**
 * What was said once about the shop's order file, so that the next one is read without a word: its
 * columns and how it is written, and what the shop calls each candle.
 *
 * @param said column by field, and how the file is written
 * @param names the shop's name of a candle to its code
 */
public record ShopFile(Map<String, String> said, Map<String, String> names) {
  private static final String SAID = "orders.file";
  private static final String NAMES = "orders.names";

  /** As it was kept. */
  public static ShopFile of(Books books) {
    return new ShopFile(
        pairs(books.settings().value(SAID).orElse("")),
        pairs(books.settings().value(NAMES).orElse("")));
  }

  /** The shop's names as they are typed, one a line: {@code Rain, large = bollard-rain}. */
  public String namesText() {
    return text(names);
  }

  /** Lines that are no {@code shop's name = code} of a candle that there is. */
  public static List<String> wrongNames(Books books, String typed) {
    List<String> wrong = new ArrayList<>();
    for (String line : typed.split("\\R", -1)) {
      String code = line.substring(line.lastIndexOf('=') + 1).strip();
      boolean pair = line.lastIndexOf('=') > 0 && !pairs(line).isEmpty();
      if (!line.isBlank() && (!pair || books.cards().current(Drawers.CANDLE, code).isEmpty())) {
        wrong.add(line.strip());
      }
    }
    return wrong;
  }

  /** The same with other names. */
  public ShopFile named(String typed) {
    return new ShopFile(said, pairs(typed));
  }

  /**
   * Reads a file. Where nothing is said about it, it is read by what was said of the last one, if
   * that fits it.
   */
  public OrderImport read(Books books, byte[] file, ImportChoices choices) {
    DesignNames known = DesignNames.of(Drawers.book(books).all(CandleDesign.class), names);
    boolean silent = choices.equals(ImportChoices.detect(choices.today(), choices.zone()));
    if (silent && !said.isEmpty()) {
      OrderImport asBefore =
          OrderFile.read(file, known, choices(said, choices.today(), choices.zone()));
      if (asBefore instanceof OrderImport.Ready || asBefore instanceof OrderImport.Bad) {
        return asBefore;
      }
    }
    return OrderFile.read(file, known, choices);
  }

  /** Keeps what was said of a file that was taken, for the next one; silence changes nothing. */
  public void keep(Studio studio, Act act, ImportChoices choices) {
    ShopFile before = studio.look(ShopFile::of);
    Map<String, String> now = said(choices);
    if (!now.isEmpty() && !now.equals(before.said)) {
      save(studio, act, SAID, text(now));
    }
    if (!names.equals(before.names)) {
      save(studio, act, NAMES, text(names));
    }
  }

  private static void save(Studio studio, Act act, String key, String value) {
    studio.saveSetting.run(Act.of(act.by(), act.requestKey() + "-" + key), key, value).made();
  }

  private static Map<String, String> said(ImportChoices choices) {
    Map<String, String> said = new LinkedHashMap<>();
    choices.map().forEach((field, column) -> said.put(field.name(), column));
    Character delimiter = choices.delimiter();
    Character decimal = choices.decimal();
    DateOrder dates = choices.dates();
    String encoding = choices.encoding();
    if (delimiter != null) {
      said.put("delimiter", Integer.toString(delimiter));
    }
    if (decimal != null) {
      said.put("decimal", decimal.toString());
    }
    if (dates != null) {
      said.put("dates", dates.words());
    }
    if (encoding != null) {
      said.put("encoding", encoding);
    }
    return said;
  }

  private static ImportChoices choices(Map<String, String> said, LocalDate today, ZoneId zone) {
    Map<ImportField, String> map = new EnumMap<>(ImportField.class);
    for (ImportField field : ImportField.values()) {
      String column = said.get(field.name());
      if (column != null) {
        map.put(field, column);
      }
    }
    String delimiter = said.get("delimiter");
    String decimal = said.get("decimal");
    return new ImportChoices(
        map,
        delimiter == null ? null : (char) Integer.parseInt(delimiter),
        decimal == null ? null : decimal.charAt(0),
        DateOrder.of(said.getOrDefault("dates", "")),
        said.get("encoding"),
        null,
        today,
        zone);
  }

  private static Map<String, String> pairs(String text) {
    Map<String, String> pairs = new LinkedHashMap<>();
    for (String line : text.split("\\R", -1)) {
      int at = line.lastIndexOf('=');
      if (at > 0 && at < line.length() - 1) {
        pairs.put(line.substring(0, at).strip(), line.substring(at + 1).strip());
      }
    }
    return pairs;
  }

  private static String text(Map<String, String> pairs) {
    List<String> lines = new ArrayList<>();
    pairs.forEach((key, value) -> lines.add(key + " = " + value));
    return String.join("\n", lines);
  }
}
