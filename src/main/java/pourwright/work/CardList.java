package pourwright.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.card.MixCard;
import pourwright.card.PourCard;
import pourwright.material.Material;
import pourwright.material.MaterialBook;
import pourwright.material.MaterialKind;
import pourwright.material.ShelfLife;
import pourwright.pour.Dose.LoadOf;
import pourwright.quantity.NumberText;
import pourwright.quantity.OutOfRange;

/** Materials, mix cards and pour cards as rows of a spreadsheet, read one row at a time. */
public final class CardList {
  /** What a list holds. */
  public enum What {
    /** Materials with their shelf lives. */
    MATERIALS("materials", List.of("name", "kind"), List.of("code", "closed", "opened", "note")),
    /** Mix cards. */
    MIXES(
        "mix cards",
        List.of("name", "powder", "powder parts", "water parts"),
        List.of("code", "by", "additions", "times", "note")),
    /** Pour cards. */
    POURS(
        "pour cards",
        List.of("name", "waxes", "add from", "add to", "pour from", "pour to", "rest days"),
        List.of("code", "fragrances", "load", "of", "note"));

    private final String words;
    private final List<String> needed;
    private final List<String> more;

    What(String words, List<String> needed, List<String> more) {
      this.words = words;
      this.needed = needed;
      this.more = more;
    }

    /** The words a person reads. */
    public String words() {
      return words;
    }

    /** Fields without which there is no row. */
    public List<String> needed() {
      return needed;
    }

    /** All fields. */
    public List<String> fields() {
      List<String> all = new ArrayList<>(needed);
      all.addAll(more);
      return all;
    }
  }

  private static final Map<String, List<String>> USUAL =
      Map.ofEntries(
          Map.entry("name", List.of("name", "material", "item", "title")),
          Map.entry("kind", List.of("kind", "type", "category")),
          Map.entry("code", List.of("code", "id", "sku", "short name")),
          Map.entry("closed", List.of("closed", "shelf life", "keeps closed", "closed days")),
          Map.entry("opened", List.of("opened", "keeps opened", "opened days")),
          Map.entry("note", List.of("note", "notes", "remark")),
          Map.entry("powder", List.of("powder", "binder", "cement")),
          Map.entry("powder parts", List.of("powder parts", "parts powder")),
          Map.entry("water parts", List.of("water parts", "parts water", "water")),
          Map.entry("by", List.of("by", "measured by")),
          Map.entry("additions", List.of("additions", "additives", "sand and colour")),
          Map.entry("times", List.of("times", "setting")),
          Map.entry("waxes", List.of("waxes", "wax", "blend")),
          Map.entry("fragrances", List.of("fragrances", "fragrance", "scent")),
          Map.entry("load", List.of("load", "load %", "fragrance load")),
          Map.entry("of", List.of("of", "load of")),
          Map.entry("add from", List.of("add from", "add from c")),
          Map.entry("add to", List.of("add to", "add to c")),
          Map.entry("pour from", List.of("pour from", "pour from c")),
          Map.entry("pour to", List.of("pour to", "pour to c")),
          Map.entry("rest days", List.of("rest days", "rest")));

  private final MaterialBook materials;
  private final NumberText numbers;

  /**
   * @param materials to look names up in
   * @param locale how numbers are written
   */
  public CardList(MaterialBook materials, Locale locale) {
    this.materials = materials;
    this.numbers = NumberText.in(locale);
  }

  /** Column names that are taken for a field where nobody has said otherwise. */
  public static Map<String, List<String>> usual(What what) {
    Map<String, List<String>> usual = new LinkedHashMap<>();
    what.fields().forEach(f -> usual.put(f, USUAL.getOrDefault(f, List.of(f))));
    return usual;
  }

  private static String text(Map<String, String> row, String field) {
    return row.getOrDefault(field, "").strip();
  }

  private static String needed(Map<String, String> row, String field) {
    String text = text(row, field);
    if (text.isEmpty()) {
      throw new OutOfRange(field, "there is no " + field, "fill the cell, or take the row out");
    }
    return text;
  }

  private double number(Map<String, String> row, String field) {
    return numbers.decimal(needed(row, field)).doubleValue();
  }

  private static String code(Map<String, String> row) {
    String said = text(row, "code");
    String code =
        (said.isEmpty() ? needed(row, "name") : said)
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-+|-+$", "");
    return Material.checkCode("code", code.substring(0, Math.min(60, code.length())));
  }

  private static @org.jspecify.annotations.Nullable String note(Map<String, String> row) {
    String note = text(row, "note");
    return note.isEmpty() ? null : note;
  }

  /** A material; what is known of one of that code stays. */
  public Material material(Map<String, String> row) {
    String code = code(row);
    MaterialKind kind = MaterialKind.of(needed(row, "kind"));
    Optional<Material> before = materials.find(code);
    if (before.isPresent() && before.get().kind() != kind) {
      throw new OutOfRange(
          "kind",
          code + " is " + before.get().kind().words() + " so far",
          "give it another code if it is another thing");
    }
    ShelfLife life = before.map(Material::shelfLife).orElse(ShelfLife.KEEPS);
    Integer closed = days(row, "closed");
    Integer opened = days(row, "opened");
    return new Material(
        code,
        needed(row, "name"),
        kind,
        before.map(Material::unit).orElse(kind.usualUnit()),
        before.map(Material::properties).orElse(Map.of()),
        new ShelfLife(
            closed == null ? life.closedDays() : closed,
            opened == null ? life.openedDays() : opened),
        note(row) == null ? before.map(Material::note).orElse(null) : note(row));
  }

  private static @org.jspecify.annotations.Nullable Integer days(
      Map<String, String> row, String field) {
    String text = text(row, field).replaceAll("(?i)\\s*(days|d)$", "");
    if (text.isEmpty()) {
      return null;
    }
    if (!text.matches("[1-9][0-9]{0,4}")) {
      throw new OutOfRange(field, "'" + text + "' is no number of days", "write 60, or nothing");
    }
    return Integer.valueOf(text);
  }

  /** A mix card with the house's losses and times. */
  public MixCard mix(Map<String, String> row) {
    String code = code(row);
    String by = text(row, "by").toLowerCase(Locale.ROOT);
    if (!List.of("", "mass", "volume").contains(by)) {
      throw new OutOfRange("by", "'" + by + "'", "write mass or volume");
    }
    String times = text(row, "times").toLowerCase(Locale.ROOT);
    if (!List.of("", "rapid", "portland").contains(times)) {
      throw new OutOfRange("times", "'" + times + "'", "write rapid or portland");
    }
    List<MixCard.Part> parts = new ArrayList<>();
    parts(text(row, "additions")).forEach((m, n) -> parts.add(new MixCard.Part(m, n)));
    return new MixCard(
        code,
        needed(row, "name"),
        find(needed(row, "powder")).code(),
        new MixCard.Ratio(
            by.equals("volume") ? MixCard.By.VOLUME : MixCard.By.MASS,
            number(row, "powder parts"),
            number(row, "water parts")),
        parts,
        MixCard.Losses.HOUSE,
        times.equals("rapid") ? MixCard.Times.RAPID : MixCard.Times.PORTLAND,
        code,
        note(row));
  }

  /** A pour card with the house's losses. */
  public PourCard pour(Map<String, String> row) {
    String code = code(row);
    List<PourCard.Part> waxes = new ArrayList<>();
    parts(needed(row, "waxes")).forEach((m, n) -> waxes.add(new PourCard.Part(m, n)));
    List<PourCard.Part> scents = new ArrayList<>();
    parts(text(row, "fragrances")).forEach((m, n) -> scents.add(new PourCard.Part(m, n)));
    String of = text(row, "of").toLowerCase(Locale.ROOT);
    if (!scents.isEmpty() && !List.of("total", "wax").contains(of)) {
      throw new OutOfRange("of", "it is not said what the load is of", "write total or wax");
    }
    String load = text(row, "load").replace("%", "").strip();
    return new PourCard(
        code,
        needed(row, "name"),
        waxes,
        scents,
        load.isEmpty() ? 0 : numbers.decimal(load).doubleValue() / 100,
        of.equals("wax") ? LoadOf.WAX : LoadOf.TOTAL,
        List.of(),
        new PourCard.Temperatures(
            number(row, "add from"),
            number(row, "add to"),
            number(row, "pour from"),
            number(row, "pour to")),
        PourCard.Losses.HOUSE,
        number(row, "rest days"),
        code,
        note(row));
  }

  /** Parts such as {@code Soft plant wax A 4; Blend B 1}; a part without a number counts 1. */
  private Map<String, Double> parts(String text) {
    Map<String, Double> parts = new LinkedHashMap<>();
    for (String one : text.split(";", -1)) {
      String part = one.strip();
      if (part.isEmpty()) {
        continue;
      }
      int at = part.lastIndexOf(' ');
      String tail = at < 0 ? "" : part.substring(at + 1);
      boolean number = tail.matches("[0-9][0-9.,]*");
      Material material = find(number ? part.substring(0, at).strip() : part);
      parts.put(material.code(), number ? numbers.decimal(tail).doubleValue() : 1.0);
    }
    return parts;
  }

  private Material find(String text) {
    String wanted = text.toLowerCase(Locale.ROOT);
    return materials.all().stream()
        .filter(m -> m.code().equals(wanted) || m.name().toLowerCase(Locale.ROOT).equals(wanted))
        .findFirst()
        .orElseThrow(
            () ->
                new OutOfRange(
                    "material",
                    "there is no material '" + text + "'",
                    "import the materials first, or write its whole name"));
  }
}
