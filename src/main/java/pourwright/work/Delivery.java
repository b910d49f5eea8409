package pourwright.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import pourwright.cost.Shares;
import pourwright.material.Material;
import pourwright.material.UnitKind;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.QuantityText;
import pourwright.quantity.Unit;
import pourwright.stock.Amount;

/**
 * A delivery as it is typed or stands in a file: line by line what came, and what each line cost
 * with its part of tax and shipping.
 *
 * @param lines what came
 */
public record Delivery(List<Line> lines) {
  private static final Pattern PACKS = Pattern.compile("^([0-9]{1,4})\\s*[x×]\\s+(.*)$");
  private static final Pattern AMOUNT =
      Pattern.compile(
          "^([0-9][0-9.,' ]*(?:\\s*(?:kg|g|mg|lb|lbs|oz|l|ml|cl|fl oz|gal|pcs|pieces|pc)\\b\\.?)?"
              + "(?:\\s+[0-9.]+\\s*oz\\b)?)\\s*(?:of\\s+)?(.*)$",
          Pattern.CASE_INSENSITIVE);

  /** Keeps its own copy. */
  public Delivery {
    lines = List.copyOf(lines);
  }

  /**
   * A line.
   *
   * @param number where it stands, from 1
   * @param material what it is
   * @param amount all packs together
   * @param priceMinor price of the line as it was typed, null where none was
   * @param lot code on the pack, or an empty string
   * @param expires last good day as printed, if it was
   */
  public record Line(
      int number,
      Material material,
      Amount amount,
      @Nullable Long priceMinor,
      String lot,
      @Nullable LocalDate expires) {}

  /** How tax is to be dealt with. */
  public enum Tax {
    /** Prices stay as they were typed. */
    AS_TYPED,
    /** Tax is added: it is paid and not got back. */
    ADD,
    /** Tax is in the prices and is got back: taken out. */
    TAKE_OUT
  }

  /**
   * What is shared over the lines.
   *
   * @param shippingMinor shipping of it all, cents
   * @param byWeight by weight; else by value
   * @param tax what happens to tax
   * @param taxFraction 0.19 for 19 %
   */
  public record Terms(long shippingMinor, boolean byWeight, Tax tax, double taxFraction) {
    /** Checks the ranges. */
    public Terms {
      pourwright.quantity.Check.notNegative("shipping", shippingMinor);
      pourwright.quantity.Check.between("tax", taxFraction, 0, 1);
    }
  }

  /** Something that could not be read, with the line it stands in. */
  public record Wrong(int line, String sentence) {}

  /** What came of reading: the delivery, or every line that could not be read. */
  public record Read(Delivery delivery, List<Wrong> wrong) {
    /** Keeps its own copy. */
    public Read {
      wrong = List.copyOf(wrong);
    }
  }

  /** How numbers and money are written, and which materials there are. */
  public record Words(Locale locale, String currency, List<Material> materials) {
    /** Keeps its own copy. */
    public Words {
      materials = List.copyOf(materials);
    }
  }

  /**
   * Reads typed lines such as {@code 2 x 5 kg Soft plant wax A, 96.40, lot W-77, until 2027-05-01}.
   */
  public static Read typed(String text, Words words) {
    List<Line> lines = new ArrayList<>();
    List<Wrong> wrong = new ArrayList<>();
    int number = 0;
    for (String line : text.split("\\R", -1)) {
      number++;
      if (!line.isBlank()) {
        try {
          lines.add(line(number, line.strip(), words));
        } catch (OutOfRange e) {
          wrong.add(new Wrong(number, e.sentence() + ": " + e.hint()));
        }
      }
    }
    if (lines.isEmpty() && wrong.isEmpty()) {
      wrong.add(new Wrong(1, "nothing is written down: give one line for each thing that came"));
    }
    return new Read(new Delivery(lines), wrong);
  }

  private static Line line(int number, String text, Words words) {
    String[] parts = text.split(",(?=\\s)", -1);
    String head = parts[0].strip();
    long packs = 1;
    Matcher packed = PACKS.matcher(head);
    if (packed.matches()) {
      packs = Long.parseLong(packed.group(1));
      head = packed.group(2).strip();
    }
    Matcher amount = AMOUNT.matcher(head);
    if (!amount.matches() || amount.group(2).isBlank()) {
      throw new OutOfRange(
          "line",
          "'" + text + "' does not begin with an amount and a material",
          "write it as 5 kg Soft plant wax A");
    }
    Material material = material(amount.group(2).strip(), words);
    Amount each = amount(amount.group(1).strip(), material, words.locale());
    Long price = null;
    String lot = "";
    LocalDate expires = null;
    for (int i = 1; i < parts.length; i++) {
      String part = parts[i].strip();
      String lower = part.toLowerCase(Locale.ROOT);
      if (lower.startsWith("lot ") || lower.startsWith("batch ")) {
        lot = part.substring(part.indexOf(' ') + 1).strip();
      } else if (lower.startsWith("until ") || lower.startsWith("exp ")) {
        expires = day(part.substring(part.indexOf(' ') + 1).strip());
      } else if (!part.isEmpty()) {
        price = PriceText.minor(part, words.locale(), words.currency());
      }
    }
    return new Line(
        number,
        material,
        new Amount(each.kind(), Math.multiplyExact(each.units(), packs)),
        price,
        lot,
        expires);
  }

  /** Reads a table; the columns are named by their field, see {@link #FIELDS}. */
  public static Read table(List<Map<String, String>> rows, Words words) {
    List<Line> lines = new ArrayList<>();
    List<Wrong> wrong = new ArrayList<>();
    int number = 1;
    for (Map<String, String> row : rows) {
      number++;
      try {
        lines.add(row(number, row, words));
      } catch (OutOfRange e) {
        wrong.add(new Wrong(number, e.sentence() + ": " + e.hint()));
      }
    }
    if (lines.isEmpty() && wrong.isEmpty()) {
      wrong.add(new Wrong(1, "the file has no lines below its head"));
    }
    return new Read(new Delivery(lines), wrong);
  }

  /** What a column of a file can mean: the first two must be there. */
  public static final List<String> FIELDS =
      List.of("material", "amount", "packs", "price", "lot", "expires");

  private static Line row(int number, Map<String, String> row, Words words) {
    Material material = material(row.getOrDefault("material", "").strip(), words);
    Amount each = amount(row.getOrDefault("amount", "").strip(), material, words.locale());
    String packs = row.getOrDefault("packs", "").strip();
    if (!packs.isEmpty() && !packs.matches("[1-9][0-9]{0,3}")) {
      throw new OutOfRange("packs", "'" + packs + "' packs", "give a whole number such as 2");
    }
    String price = row.getOrDefault("price", "").strip();
    String expires = row.getOrDefault("expires", "").strip();
    return new Line(
        number,
        material,
        new Amount(
            each.kind(),
            Math.multiplyExact(each.units(), packs.isEmpty() ? 1 : Long.parseLong(packs))),
        price.isEmpty() ? null : (Long) PriceText.minor(price, words.locale(), words.currency()),
        row.getOrDefault("lot", "").strip(),
        expires.isEmpty() ? null : day(expires));
  }

  private static LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (java.time.format.DateTimeParseException e) {
      throw new OutOfRange("day", "'" + text + "' is not a day", "write it as 2027-05-31");
    }
  }

  /** Reads an amount of a material; without a unit it is in the usual one of its kind. */
  public static Amount amount(String text, Material material, Locale locale) {
    Amount amount =
        switch (material.unit()) {
          case MASS -> Amount.of(QuantityText.in(locale).mass(text, Unit.GRAM));
          case VOLUME ->
              new Amount(
                  UnitKind.VOLUME,
                  QuantityText.in(locale).volume(text, Unit.MILLILITRE).nanolitres());
          case COUNT -> pieces(text);
        };
    if (!amount.isPositive()) {
      throw new OutOfRange("amount", text + " came", "give what came in, above zero");
    }
    return amount;
  }

  private static Amount pieces(String text) {
    String plain = text.replaceAll("(?i)\\s*(pcs|pieces|pc)\\.?$", "").strip();
    if (!plain.matches("[0-9]{1,9}")) {
      throw new OutOfRange(
          "amount", "'" + text + "' is not a whole number of pieces", "it is counted: write 24");
    }
    return Amount.ofPieces(Long.parseLong(plain));
  }

  /** The material of a code or a name, or the only one whose name has all of the words. */
  private static Material material(String text, Words words) {
    String wanted = text.toLowerCase(Locale.ROOT);
    List<Material> exact =
        words.materials().stream()
            .filter(
                m -> m.code().equals(wanted) || m.name().toLowerCase(Locale.ROOT).equals(wanted))
            .toList();
    if (!exact.isEmpty()) {
      return exact.get(0);
    }
    List<Material> close =
        words.materials().stream()
            .filter(m -> has((m.name() + " " + m.code()).toLowerCase(Locale.ROOT), wanted))
            .toList();
    if (close.size() == 1) {
      return close.get(0);
    }
    throw new OutOfRange(
        "material",
        close.isEmpty()
            ? "there is no material '" + text + "'"
            : "'" + text + "' may be " + names(close),
        close.isEmpty() ? "write it down on the drawing board first" : "write its whole name");
  }

  private static boolean has(String name, String wanted) {
    return !wanted.isBlank()
        && java.util.Arrays.stream(wanted.split("\\s+")).allMatch(name::contains);
  }

  private static String names(List<Material> materials) {
    return String.join(" or ", materials.stream().limit(4).map(Material::name).toList());
  }

  /**
   * What each line cost in cents, with its part of tax and shipping; empty where a line has no
   * price. Shipping is shared to the cent.
   *
   * @throws OutOfRange when shipping cannot be shared so
   */
  public List<Optional<Long>> costs(Terms terms) {
    List<Optional<Long>> net = new ArrayList<>();
    List<Double> weights = new ArrayList<>();
    for (Line line : lines) {
      Long price = line.priceMinor();
      net.add(price == null ? Optional.empty() : Optional.of(taxed(price, terms)));
      double weight = line.amount().kind() == UnitKind.COUNT ? 0 : line.amount().inUsualUnit();
      weights.add(terms.byWeight() ? weight : price == null ? 0.0 : (double) price);
    }
    long shipping = taxed(terms.shippingMinor(), terms);
    if (shipping == 0) {
      return net;
    }
    if (weights.stream().allMatch(w -> w == 0)) {
      throw new OutOfRange(
          "shipping",
          terms.byWeight()
              ? "shipping cannot be shared by weight: nothing here is weighed"
              : "shipping cannot be shared by value: no line has a price",
          "share it the other way, or leave it out");
    }
    List<Long> shares = Shares.of(shipping, weights);
    List<Optional<Long>> costs = new ArrayList<>();
    for (int i = 0; i < net.size(); i++) {
      long share = shares.get(i);
      Optional<Long> price = net.get(i);
      costs.add(price.isEmpty() && share == 0 ? price : Optional.of(price.orElse(0L) + share));
    }
    return costs;
  }

  private static long taxed(long minor, Terms terms) {
    return switch (terms.tax()) {
      case AS_TYPED -> minor;
      case ADD -> Math.round(minor * (1 + terms.taxFraction()));
      case TAKE_OUT -> Math.round(minor / (1 + terms.taxFraction()));
    };
  }
}
