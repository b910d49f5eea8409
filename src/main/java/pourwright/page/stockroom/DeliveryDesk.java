package pourwright.page.stockroom;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.FileKind;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;
import pourwright.stock.Shelf;
import pourwright.work.Act;
import pourwright.work.AttachFile;
import pourwright.work.CsvRows;
import pourwright.work.Delivery;
import pourwright.work.Drawers;
import pourwright.work.Outcome;
import pourwright.work.PriceText;
import pourwright.work.ReceiveDelivery;
import pourwright.work.Subject;

/** A whole delivery from typed lines or a file, with what the paper says of tax and shipping. */
public final class DeliveryDesk {
  private static final Map<String, List<String>> USUAL = usual();
  private final Desk desk;

  DeliveryDesk(Desk desk) {
    this.desk = desk;
  }

  private static Map<String, List<String>> usual() {
    Map<String, List<String>> usual = new LinkedHashMap<>();
    usual.put("material", List.of("material", "item", "article", "product", "name", "artikel"));
    usual.put("amount", List.of("amount", "size", "weight", "quantity", "menge", "inhalt"));
    usual.put("packs", List.of("packs", "count", "pieces", "qty", "anzahl"));
    usual.put("price", List.of("price", "total", "line total", "preis", "summe"));
    usual.put("lot", List.of("lot", "batch", "lot code", "charge"));
    usual.put("expires", List.of("expires", "expiry", "until", "best before", "haltbar bis"));
    return usual;
  }

  /**
   * The page.
   *
   * @param rows what was read, shown before it is taken in
   */
  public record DeliveryPage(
      Form form, Map<String, String> share, Map<String, String> tax, List<Row> rows) {}

  /** A line as it was read. */
  public record Row(String material, String amount, String lot, String until, String cost) {}

  void addTo(RoutesConfig routes) {
    routes.get(
        "/stockroom/delivery",
        http -> Show.page(http, "stockroom/delivery.jte", page(Form.blank(), List.of())));
    routes.post("/stockroom/delivery", this::post);
  }

  private static DeliveryPage page(Form form, List<Row> rows) {
    Map<String, String> share = new LinkedHashMap<>();
    share.put("value", "by value");
    share.put("weight", "by weight");
    Map<String, String> tax = new LinkedHashMap<>();
    tax.put("as-typed", "leave prices as they are");
    tax.put("add", "add tax: I pay it");
    tax.put("take-out", "take tax out: I get it back");
    return new DeliveryPage(form, share, tax, rows);
  }

  private Delivery.Words words() {
    return desk.studio()
        .look(
            books ->
                new Delivery.Words(
                    desk.locale(),
                    books.settings().value("currency").orElse("EUR"),
                    List.copyOf(Drawers.materials(books).all())));
  }

  private void post(Context http) throws IOException {
    Form form = Form.of(http);
    Delivery.Words words = words();
    Optional<Delivery> delivery = delivery(http, form, words);
    Optional<Delivery.Terms> terms = terms(form, words);
    Optional<LocalDate> day = form.readIfThere("came", "a day", LocalDate::parse);
    List<Row> rows = rows(form, delivery, terms, words);
    boolean look = form.value("do").equals("look");
    if (!form.ok() || look || delivery.isEmpty() || terms.isEmpty()) {
      answer(http, form, rows);
      return;
    }
    Optional<Act> act = form.act(http, form.optionalText("note"));
    if (act.isEmpty()) {
      answer(http, form, rows);
      return;
    }
    String supplier = form.optionalText("supplier");
    Outcome<List<Shelf>> outcome =
        desk.studio()
            .receiveDelivery
            .run(
                act.get(),
                new ReceiveDelivery.Request(
                    delivery.get(),
                    terms.get(),
                    supplier.isEmpty() ? null : supplier,
                    day.orElse(null)));
    if (outcome instanceof Outcome.Refused<List<Shelf>> refused) {
      form.complain("lines", refused.sentence() + ": " + refused.hint() + ".");
      answer(http, form, rows);
      return;
    }
    boolean kept = keepPaper(http, act.get(), outcome.made());
    Show.done(
        http,
        Said.done(
            Counted.of(outcome.made().size(), "lot is in.", "lots are in.")
                + (kept ? " The paper is kept with each of them." : "")),
        "/stockroom");
  }

  private static void answer(Context http, Form form, List<Row> rows) {
    if (form.ok()) {
      Show.page(http, "stockroom/delivery.jte", page(form, rows));
    } else {
      Show.again(http, "stockroom/delivery.jte", page(form, rows));
    }
  }

  /** From the file, where one was chosen, else from the typed lines. */
  private static Optional<Delivery> delivery(Context http, Form form, Delivery.Words words)
      throws IOException {
    UploadedFile file = http.uploadedFile("table");
    Delivery.Read read;
    if (file != null && file.size() > 0) {
      try (InputStream in = file.content()) {
        CsvRows rows = CsvRows.read(in.readAllBytes());
        Map<String, String> mapping = rows.mapping(USUAL, Map.of());
        if (!mapping.keySet().containsAll(List.of("material", "amount"))) {
          form.complain(
              "table",
              "The file needs a column material and a column amount; it has "
                  + String.join(", ", rows.head())
                  + ".");
          return Optional.empty();
        }
        read = Delivery.table(rows.byField(mapping), words);
      } catch (OutOfRange e) {
        form.complain("table", e.sentence() + ": " + e.hint() + ".");
        return Optional.empty();
      }
    } else {
      read = Delivery.typed(form.value("lines"), words);
    }
    if (!read.wrong().isEmpty()) {
      StringBuilder said = new StringBuilder();
      read.wrong()
          .forEach(
              w ->
                  said.append("Line ")
                      .append(w.line())
                      .append(": ")
                      .append(w.sentence())
                      .append(". "));
      form.complain(file != null && file.size() > 0 ? "table" : "lines", said.toString().strip());
      return Optional.empty();
    }
    return Optional.of(read.delivery());
  }

  private Optional<Delivery.Terms> terms(Form form, Delivery.Words words) {
    Optional<Long> shipping =
        form.readIfThere(
            "shipping", "an amount", t -> PriceText.minor(t, desk.locale(), words.currency()));
    Optional<Double> percent = form.readIfThere("taxrate", "per cent", Double::valueOf);
    Delivery.Tax tax =
        switch (form.value("tax")) {
          case "add" -> Delivery.Tax.ADD;
          case "take-out" -> Delivery.Tax.TAKE_OUT;
          default -> Delivery.Tax.AS_TYPED;
        };
    if (tax != Delivery.Tax.AS_TYPED && percent.isEmpty()) {
      form.complain("taxrate", "Please give the tax in per cent.");
    }
    if (!form.ok()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new Delivery.Terms(
              shipping.orElse(0L),
              form.value("share").equals("weight"),
              tax,
              percent.orElse(0.0) / 100));
    } catch (OutOfRange e) {
      form.complain("shipping", e.sentence() + ": " + e.hint() + ".");
      return Optional.empty();
    }
  }

  private List<Row> rows(
      Form form,
      Optional<Delivery> delivery,
      Optional<Delivery.Terms> terms,
      Delivery.Words words) {
    if (delivery.isEmpty() || terms.isEmpty()) {
      return List.of();
    }
    List<Row> rows = new ArrayList<>();
    try {
      List<Optional<Long>> costs = delivery.get().costs(terms.get());
      for (int i = 0; i < costs.size(); i++) {
        Delivery.Line line = delivery.get().lines().get(i);
        LocalDate until = line.expires();
        rows.add(
            new Row(
                line.material().name(),
                StockWords.amount(line.amount(), desk.locale()),
                line.lot().isEmpty() ? "one of our own" : line.lot(),
                until == null ? "not printed" : desk.day(until),
                costs
                    .get(i)
                    .map(c -> new pourwright.quantity.Money(c, words.currency()))
                    .map(m -> m.amount() + " " + words.currency())
                    .orElse("no price")));
      }
    } catch (OutOfRange e) {
      form.complain("shipping", e.sentence() + ": " + e.hint() + ".");
    }
    return rows;
  }

  /** A photo or PDF of the delivery note stays with every lot of it. */
  private boolean keepPaper(Context http, Act act, List<Shelf> lots) throws IOException {
    UploadedFile file = http.uploadedFile("paper");
    if (file == null || file.size() == 0) {
      return false;
    }
    byte[] bytes;
    try (InputStream in = file.content()) {
      bytes = in.readAllBytes();
    }
    Optional<FileKind> kind = FileKind.of(bytes);
    if (kind.isEmpty()) {
      return false;
    }
    byte[] clean = kind.get().cleaned(bytes);
    String name = file.filename().replaceAll("[\\p{Cntrl}/\\\\]", "_").strip();
    for (Shelf shelf : lots) {
      desk.studio()
          .attachFile
          .run(
              Act.of(act.by(), act.requestKey() + "-paper-" + shelf.lot().id()),
              new AttachFile.Request(
                  Subject.of(Subject.Kind.LOT, shelf.lot().id()), kind.get().type(), name),
              new ByteArrayInputStream(clean));
    }
    return true;
  }
}
