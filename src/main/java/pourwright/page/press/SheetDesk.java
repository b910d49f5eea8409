package pourwright.page.press;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.hazard.HazardClass;
import pourwright.hazard.HazardSheet;
import pourwright.hazard.SheetLine;
import pourwright.hazard.SheetReader;
import pourwright.hazard.SheetTable;
import pourwright.material.Material;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;
import pourwright.work.Act;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.SaveCard;

/** A material's safety data sheet: pasted, read line by line, looked at, kept. */
final class SheetDesk {
  private static final int TABLE_BYTES_MAX = 15_000;
  private static final SheetReader.Result NOTHING = new SheetReader.Result(List.of(), List.of());

  private final Desk desk;

  SheetDesk(Desk desk) {
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/press/sheet/{material}", this::show);
    routes.post("/press/sheet/{material}", this::read);
    routes.post("/press/sheet/{material}/table", this::table);
  }

  private Material material(Context http) {
    return desk.studio()
        .look(Drawers::materials)
        .find(http.pathParam("material"))
        .orElseThrow(
            () -> new TurnedAway(404, "There is no such material", "Look it up in the stockroom."));
  }

  private Optional<CardVersion<HazardSheet>> standing(Material material) {
    return desk.studio().look(books -> books.cards().current(Drawers.SHEET, material.code()));
  }

  private void show(Context http) {
    Material material = material(http);
    Optional<CardVersion<HazardSheet>> standing = standing(material);
    Form form =
        Form.startingFrom(
            Map.of(
                "text", standing.map(v -> v.body().text()).orElse(""),
                "revision", standing.map(v -> v.body().revision()).orElse(""),
                "rest", standing.map(v -> v.body().restIsHarmless() ? "yes" : "").orElse("yes"),
                "version", standing.map(v -> Integer.toString(v.version())).orElse("0")));
    Show.page(http, "press/sheet.jte", page(material, form, NOTHING));
  }

  private PressPages.SheetPage page(Material material, Form form, SheetReader.Result read) {
    String standing =
        standing(material)
            .map(
                v ->
                    "In the books: sheet "
                        + v.body().revision()
                        + ", "
                        + Counted.of(v.body().lines().size(), "substance", "substances")
                        + ", written down by "
                        + v.by()
                        + " on "
                        + desk.dayAndTime(v.at()))
            .orElse("");
    return new PressPages.SheetPage(
        material.code(),
        material.name(),
        form,
        read.lines().stream().map(SheetDesk::row).toList(),
        read.unread(),
        standing,
        read.lines().stream().anyMatch(l -> !l.isClear()));
  }

  private static PressPages.Read row(SheetLine line) {
    List<String> more = new ArrayList<>();
    line.limits().forEach((c, limit) -> more.add(c.code() + " from " + limit + " %"));
    if (!line.acuteMText().isEmpty()) {
      more.add("M acute " + line.acuteMText());
    }
    if (!line.chronicMText().isEmpty()) {
      more.add("M chronic " + line.chronicMText());
    }
    if (!line.oralText().isEmpty()) {
      more.add("oral " + line.oralText() + " mg/kg");
    }
    if (!line.dermalText().isEmpty()) {
      more.add("dermal " + line.dermalText() + " mg/kg");
    }
    String share =
        line.highText().isEmpty()
            ? "?"
            : (line.lowText().isEmpty() ? "" : line.lowText() + " to ") + line.highText() + " %";
    List<String> classes = line.classes().stream().sorted().map(HazardClass::fullCode).toList();
    return new PressPages.Read(
        line.name(),
        line.cas().isEmpty() ? "no CAS" : line.cas(),
        share,
        classes.isEmpty() ? "none" : String.join(", ", classes),
        String.join(", ", more),
        line.doubts());
  }

  private void read(Context http) {
    Material material = material(http);
    Form form = Form.of(http);
    if (form.value("step").equals("add")) {
      form = withSubstance(form);
    }
    SheetReader.Result read = NOTHING;
    try {
      read = SheetReader.read(form.optionalText("text"));
    } catch (OutOfRange e) {
      form.complain("text", e.sentence() + ": " + e.hint() + ".");
    }
    if (!form.value("step").equals("keep")) {
      if (form.ok() && form.value("text").isBlank()) {
        form.complain(
            "text", "Nothing is there to be read. Paste section 3 or type one substance below.");
      }
      if (form.ok()) {
        Show.page(http, "press/sheet.jte", page(material, form, read));
      } else {
        Show.again(http, "press/sheet.jte", page(material, form, read));
      }
      return;
    }
    String revision = form.text("revision", "the date or number of the sheet");
    boolean doubtful = read.lines().stream().anyMatch(l -> !l.isClear());
    if (doubtful && !form.ticked("looked")) {
      form.complain(
          "looked", "Some lines are doubtful: look at them and tick the box, or correct.");
    }
    if (read.lines().isEmpty() && !form.ticked("none")) {
      form.complain("none", "No substance was read. Tick the box if section 3 really lists none.");
    }
    Optional<HazardSheet> sheet = sheet(material, form, read, revision);
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty() || sheet.isEmpty()) {
      Show.again(http, "press/sheet.jte", page(material, form, read));
      return;
    }
    keep(http, material, form, sheet.get(), act.get());
  }

  /** The form with one line more in its text and the fields of the substance empty again. */
  private static Form withSubstance(Form form) {
    Map<SheetTable.Column, String> fields = new EnumMap<>(SheetTable.Column.class);
    for (SheetTable.Column column : SheetTable.Column.values()) {
      fields.put(column, form.optionalText("one_" + column.name().toLowerCase(Locale.ROOT)));
    }
    try {
      String line = SheetTable.line(fields);
      String text = form.value("text").stripTrailing();
      Form more = form.with("text", text.isEmpty() ? line : text + "\n" + line);
      for (SheetTable.Column column : SheetTable.Column.values()) {
        more = more.with("one_" + column.name().toLowerCase(Locale.ROOT), "");
      }
      return more;
    } catch (OutOfRange e) {
      return form.complain("one_name", "Type the substance's name or CAS number, and its share.");
    }
  }

  private static Optional<HazardSheet> sheet(
      Material material, Form form, SheetReader.Result read, String revision) {
    try {
      return Optional.of(
          HazardSheet.of(material.code(), revision, read.lines(), form.ticked("rest")));
    } catch (OutOfRange e) {
      form.complain("text", e.sentence() + ": " + e.hint() + ".");
      return Optional.empty();
    }
  }

  private void keep(Context http, Material material, Form form, HazardSheet sheet, Act act) {
    int version =
        form.value("version").matches("[0-9]{1,6}") ? Integer.parseInt(form.value("version")) : 0;
    SaveCard.Saving<HazardSheet> saving =
        desk.studio()
            .saveCard
            .run(act, SaveCard.Request.of(Drawers.SHEET, material.code(), version, sheet));
    if (saving instanceof SaveCard.Saving.Saved<HazardSheet> saved) {
      Show.done(
          http,
          Said.done(
              "The sheet of " + material.name() + " is kept. Labels made from now on stand on it."),
          saved.version().version() > 1 ? "/press/reprint/" + material.code() : "/press");
      return;
    }
    Show.done(
        http,
        Said.refused(
            "Somebody else wrote this sheet down in the meantime; yours was not kept.",
            "Look at what is there now and read yours again."),
        "/press/sheet/" + material.code());
  }

  /** A composition as CSV: its columns are told, then it is read like a pasted sheet. */
  private void table(Context http) {
    Material material = material(http);
    Form form = withFile(http, Form.of(http));
    Optional<SheetTable> table = form.read("table", "a table", SheetTable::read);
    if (table.isEmpty()) {
      Show.again(http, "press/sheet.jte", page(material, form.with("text", ""), NOTHING));
      return;
    }
    if (form.value("step").equals("take")) {
      Map<SheetTable.Column, Integer> mapped = new EnumMap<>(SheetTable.Column.class);
      for (SheetTable.Column column : SheetTable.Column.values()) {
        form.readIfThere(field(column), "a column", Integer::valueOf)
            .ifPresent(at -> mapped.put(column, at));
      }
      Optional<String> text = form.read("table", "a table", t -> table.get().text(mapped));
      if (text.isPresent() && form.ok()) {
        Form read = form.with("text", text.get()).with("rest", "yes");
        Show.page(http, "press/sheet.jte", page(material, read, SheetReader.read(text.get())));
        return;
      }
      Show.again(http, "press/table.jte", tablePage(material, form, table.get()));
      return;
    }
    Form guessed = form;
    for (Map.Entry<SheetTable.Column, Integer> guess : table.get().guess().entrySet()) {
      guessed = guessed.with(field(guess.getKey()), Integer.toString(guess.getValue()));
    }
    Show.page(http, "press/table.jte", tablePage(material, guessed, table.get()));
  }

  private static Form withFile(Context http, Form form) {
    UploadedFile file = http.uploadedFile("file");
    if (file == null || file.size() == 0) {
      return form;
    }
    try (InputStream in = file.content()) {
      byte[] bytes = in.readNBytes(TABLE_BYTES_MAX);
      return form.with("table", new String(bytes, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String field(SheetTable.Column column) {
    return "col_" + column.name().toLowerCase(Locale.ROOT);
  }

  private static PressPages.TablePage tablePage(Material material, Form form, SheetTable table) {
    Map<String, String> columns = new LinkedHashMap<>();
    columns.put("", "not there");
    for (int i = 0; i < table.header().size(); i++) {
      String name = table.header().get(i);
      columns.put(Integer.toString(i), name.isEmpty() ? "column " + (i + 1) : name);
    }
    Map<String, String> fields = new LinkedHashMap<>();
    for (SheetTable.Column column : SheetTable.Column.values()) {
      fields.put(field(column), column.words());
    }
    List<List<String>> first = new ArrayList<>();
    first.add(table.header());
    table.rows().stream().limit(3).forEach(first::add);
    return new PressPages.TablePage(material.code(), material.name(), form, columns, fields, first);
  }
}
