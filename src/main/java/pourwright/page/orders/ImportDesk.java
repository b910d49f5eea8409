package pourwright.page.orders;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.order.DateOrder;
import pourwright.order.ImportChoices;
import pourwright.order.ImportField;
import pourwright.order.OrderImport;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.Token;
import pourwright.work.AcceptOrders;
import pourwright.work.Act;
import pourwright.work.Books;
import pourwright.work.Outcome;
import pourwright.work.ShopFile;

/** Reading an order file: choose it, look at how it is read, take all of it or nothing. */
final class ImportDesk {
  private static final String TEMPLATE = "orders/import.jte";
  private static final String PATH = "/orders/import";
  private static final String NAMES = "names";
  private static final int KEPT_MAX = 8;

  private final Desk desk;
  private final Map<String, Kept> kept =
      new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Kept> eldest) {
          return size() > KEPT_MAX;
        }
      };

  /** A file between its dry run and its being taken. */
  private record Kept(String name, byte[] bytes) {}

  ImportDesk(Desk desk) {
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get(
        PATH,
        http -> {
          String names = desk.studio().look(ShopFile::of).namesText();
          Show.page(http, TEMPLATE, blank(Form.startingFrom(Map.of(NAMES, names))));
        });
    routes.post(PATH, this::look);
    routes.post("/orders/import/take", this::take);
  }

  private void look(Context http) throws IOException {
    Form form = Form.of(http);
    String key = form.value("kept");
    UploadedFile chosen = http.uploadedFile("file");
    if (chosen != null && chosen.size() > 0) {
      key = Token.random();
      try (InputStream in = chosen.content()) {
        keep(key, new Kept(chosen.filename(), in.readAllBytes()));
      }
    }
    Kept file = kept(key);
    if (file == null) {
      form.complain("file", "Please choose the shop's file.");
      Show.again(http, TEMPLATE, blank(form));
      return;
    }
    Optional<ImportChoices> choices = choices(form);
    if (choices.isEmpty()) {
      Show.again(http, TEMPLATE, blank(form));
      return;
    }
    OrderImport outcome = read(file, form, choices.get());
    if (outcome instanceof OrderImport.Ready ready) {
      var changes = desk.studio().acceptOrders.preview(ready);
      var already = desk.studio().acceptOrders.already(changes);
      Show.page(http, TEMPLATE, ImportPage.ready(form, key, file.name(), ready, changes, already));
    } else {
      Show.again(http, TEMPLATE, ImportPage.of(form, key, file.name(), outcome));
    }
  }

  private static ImportPage blank(Form form) {
    return new ImportPage(form, "", "", "", List.of(), List.of(), List.of(), false);
  }

  private void keep(String key, Kept file) {
    synchronized (kept) {
      kept.put(key, file);
    }
  }

  private @Nullable Kept kept(String key) {
    synchronized (kept) {
      return kept.get(key);
    }
  }

  /** As it is read by what is said now, and by what was said of the last file. */
  private OrderImport read(Kept file, Form form, ImportChoices choices) {
    return desk.studio().look(books -> shop(books, form).read(books, file.bytes(), choices));
  }

  private static ShopFile shop(Books books, Form form) {
    ShopFile kept = ShopFile.of(books);
    return form.fields().contains(NAMES) ? kept.named(form.value(NAMES)) : kept;
  }

  /** What was said about the file; nothing when a column stands for two fields or the like. */
  private Optional<ImportChoices> choices(Form form) {
    Map<ImportField, String> map = new EnumMap<>(ImportField.class);
    for (ImportField field : ImportField.values()) {
      String column = form.optionalText("col-" + field.word());
      if (!column.isEmpty()) {
        map.put(field, column);
      }
    }
    Optional<Character> delimiter =
        form.readIfThere("delimiter", "a delimiter", ImportChoices::delimiterNamed);
    String decimal = form.optionalText("decimal");
    if (!decimal.isEmpty() && !decimal.equals(".") && !decimal.equals(",")) {
      form.complain("decimal", "The decimal mark is . or ,");
    }
    List<String> wrong = desk.studio().look(books -> ShopFile.wrongNames(books, form.value(NAMES)));
    if (!wrong.isEmpty()) {
      form.complain(
          NAMES,
          "'" + wrong.get(0) + "' is not the shop's name, =, and the code of one of your candles.");
    }
    if (!form.ok()) {
      return Optional.empty();
    }
    String encoding = form.optionalText("encoding");
    String sheet = form.optionalText("sheet");
    return Optional.of(
        new ImportChoices(
            map,
            delimiter.orElse(null),
            decimal.isEmpty() ? null : decimal.charAt(0),
            DateOrder.of(form.optionalText("dates")),
            encoding.isEmpty() ? null : encoding,
            sheet.isEmpty() ? null : sheet,
            desk.today(),
            desk.zone()));
  }

  private void take(Context http) {
    Form form = Form.of(http);
    Kept file = kept(form.value("kept"));
    Optional<ImportChoices> choices = choices(form);
    Optional<Act> act = form.act(http, "");
    if (file == null) {
      Show.done(
          http,
          Said.refused("The file is not at hand any more.", "Please choose it once more."),
          PATH);
      return;
    }
    if (choices.isEmpty() || act.isEmpty()) {
      Show.again(http, TEMPLATE, blank(form));
      return;
    }
    OrderImport outcome = read(file, form, choices.get());
    if (!(outcome instanceof OrderImport.Ready ready)) {
      Show.again(http, TEMPLATE, ImportPage.of(form, form.value("kept"), file.name(), outcome));
      return;
    }
    desk.studio().copyFirst();
    Outcome<AcceptOrders.Accepted> accepted =
        desk.studio().acceptOrders.run(act.get(), file.name(), ready);
    if (accepted instanceof Outcome.Refused<AcceptOrders.Accepted> refused) {
      Show.done(http, Said.refused(refused), PATH);
      return;
    }
    ShopFile shop = desk.studio().look(books -> shop(books, form));
    shop.keep(desk.studio(), act.get(), choices.get());
    Show.done(http, Said.done(file.name() + " is in the book, all of it."), "/orders");
  }
}
