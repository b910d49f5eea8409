package pourwright.page.stockroom;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.quantity.OutOfRange;
import pourwright.work.Act;
import pourwright.work.CardList;
import pourwright.work.CsvRows;
import pourwright.work.ImportCards;
import pourwright.work.Outcome;

/** Materials, mix cards and pour cards from a spreadsheet: mapped, looked at, taken in. */
public final class ListDesk {
  private static final String PATH = "/stockroom/list";
  private final Desk desk;

  ListDesk(Desk desk) {
    this.desk = desk;
  }

  /**
   * The page: finished strings.
   *
   * @param whats what a list may hold
   * @param fields fields to be mapped, with whether each must be there
   * @param columns columns of the file
   * @param rows what would become of each row
   * @param summary how many are new, changed, the same or wrong; empty before anything was read
   */
  public record ListPage(
      Form form,
      Map<String, String> whats,
      Map<String, String> fields,
      Map<String, String> columns,
      List<Row> rows,
      String summary) {}

  /** A row. */
  public record Row(String line, String name, String fate, String sentence, boolean wrong) {}

  void addTo(RoutesConfig routes) {
    routes.get(
        PATH,
        http ->
            Show.page(http, "stockroom/list.jte", page(Form.blank(), null, Map.of(), List.of())));
    routes.post(PATH, this::post);
  }

  private static Map<String, String> whats() {
    Map<String, String> whats = new LinkedHashMap<>();
    for (CardList.What what : CardList.What.values()) {
      whats.put(what.name().toLowerCase(Locale.ROOT), what.words());
    }
    return whats;
  }

  private static ListPage page(
      Form form,
      CardList.@org.jspecify.annotations.Nullable What what,
      Map<String, String> columns,
      List<ImportCards.Row> rows) {
    Map<String, String> fields = new LinkedHashMap<>();
    if (what != null && !columns.isEmpty()) {
      what.fields().forEach(f -> fields.put(f, what.needed().contains(f) ? "needed" : ""));
    }
    List<Row> shown =
        rows.stream()
            .map(
                r ->
                    new Row(
                        "" + r.line(),
                        r.name(),
                        r.fate().words(),
                        r.sentence(),
                        r.fate() == ImportCards.Fate.WRONG))
            .toList();
    return new ListPage(form, whats(), fields, columns, shown, summary(rows));
  }

  private static String summary(List<ImportCards.Row> rows) {
    List<String> words = new ArrayList<>();
    for (ImportCards.Fate fate : ImportCards.Fate.values()) {
      long count = rows.stream().filter(r -> r.fate() == fate).count();
      if (count > 0) {
        words.add(count + " " + fate.words());
      }
    }
    return String.join(", ", words);
  }

  private void post(Context http) throws IOException {
    String text = text(http);
    Map<String, String> typed = new LinkedHashMap<>();
    http.formParamMap()
        .forEach(
            (field, values) -> values.stream().findFirst().ifPresent(v -> typed.put(field, v)));
    typed.put("text", text);
    Form form = Form.startingFrom(typed);
    Optional<String> chosen =
        form.choice("what", "what the list holds", List.copyOf(whats().keySet()));
    CsvRows rows = null;
    try {
      rows = CsvRows.read(text.getBytes(StandardCharsets.UTF_8));
    } catch (OutOfRange e) {
      form.complain("text", e.sentence() + ": " + e.hint() + ".");
    }
    if (chosen.isEmpty() || rows == null) {
      Show.again(http, "stockroom/list.jte", page(form, null, Map.of(), List.of()));
      return;
    }
    CardList.What what = CardList.What.valueOf(chosen.get().toUpperCase(Locale.ROOT));
    Map<String, String> said = new LinkedHashMap<>();
    what.fields().stream()
        .filter(f -> typed.containsKey(field(f)))
        .forEach(f -> said.put(f, typed.getOrDefault(field(f), "")));
    Map<String, String> mapping = rows.mapping(CardList.usual(what), said);
    mapping.forEach((f, column) -> typed.put(field(f), column));
    Form mapped = Form.startingFrom(typed);
    Map<String, String> columns = new LinkedHashMap<>();
    columns.put("", "not in the file");
    rows.head().forEach(h -> columns.put(h, h));
    what.needed().stream()
        .filter(f -> !mapping.containsKey(f))
        .forEach(f -> mapped.complain(field(f), "Please say which column is " + f + "."));
    if (!mapped.ok()) {
      Show.again(http, "stockroom/list.jte", page(mapped, what, columns, List.of()));
      return;
    }
    List<Map<String, String>> byField = rows.byField(mapping);
    List<ImportCards.Row> fates = desk.studio().importCards.look(what, byField, desk.locale());
    if (!"take".equals(typed.get("do"))) {
      Show.page(http, "stockroom/list.jte", page(mapped, what, columns, fates));
      return;
    }
    Optional<Act> act = mapped.act(http, "");
    if (act.isEmpty()) {
      Show.again(http, "stockroom/list.jte", page(mapped, what, columns, fates));
      return;
    }
    Outcome<List<ImportCards.Row>> outcome =
        desk.studio().importCards.run(act.get(), what, byField, desk.locale());
    if (outcome instanceof Outcome.Refused<List<ImportCards.Row>> refused) {
      mapped.complain("text", refused.sentence() + ": " + refused.hint() + ".");
      Show.again(http, "stockroom/list.jte", page(mapped, what, columns, fates));
      return;
    }
    Show.done(http, Said.done(summary(fates) + "."), "/stockroom");
  }

  /** The name of a field's choice in the form. */
  public static String field(String field) {
    return "map-" + field.replace(' ', '-');
  }

  private static String text(Context http) throws IOException {
    UploadedFile file = http.uploadedFile("file");
    if (file == null || file.size() == 0) {
      return Optional.ofNullable(http.formParam("text")).orElse("");
    }
    try (InputStream in = file.content()) {
      byte[] bytes = in.readAllBytes();
      String utf = new String(bytes, StandardCharsets.UTF_8);
      return utf.contains("\uFFFD")
          ? new String(bytes, java.nio.charset.Charset.forName("windows-1252"))
          : utf;
    }
  }
}
