package pourwright.page.press;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import pourwright.hazard.Classification;
import pourwright.label.Carrier;
import pourwright.label.LabelMinimum;
import pourwright.label.LabelPress;
import pourwright.label.LabelRequest;
import pourwright.label.Language;
import pourwright.label.Listing;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.quantity.OutOfRange;
import pourwright.work.Act;
import pourwright.work.Books;
import pourwright.work.BurnTest;
import pourwright.work.CandleLabel;
import pourwright.work.Deed;
import pourwright.work.LabelPrinter;
import pourwright.work.Learner;
import pourwright.work.Outcome;
import pourwright.work.PrintForSale;
import pourwright.work.Reading;
import pourwright.work.Subject;
import pourwright.work.TestedFacts;

/** One candle at the press: what it is and why, its label true to size, sheets to print. */
final class CandleDesk {
  private static final int DOTS_PER_INCH = 300;

  private final Desk desk;
  private final LabelPrinter printer;

  CandleDesk(Desk desk, LabelPrinter printer) {
    this.desk = desk;
    this.printer = printer;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/press/candle/{code}", this::show);
    routes.post("/press/candle/{code}/measured", this::measure);
    routes.get("/press/candle/{code}/labels.pdf", http -> signed(http, this::pdf));
    routes.get("/press/candle/{code}/label.svg", http -> signed(http, this::svg));
    routes.get("/press/candle/{code}/label.png", http -> signed(http, this::png));
    routes.post("/press/candle/{code}/print", this::sign);
  }

  private void show(Context http) {
    LabelShown shown = LabelShown.asked(desk, http);
    LabelLayout layout = shown.layout();
    LabelPrinter.Preview preview =
        printer.preview(shown.text(), layout.widthMm(), layout.heightMm());
    PressPages.CandlePage page = page(shown, preview);
    if (shown.form().ok()) {
      Show.page(http, "press/candle.jte", page);
    } else {
      Show.again(http, "press/candle.jte", page);
    }
  }

  private PressPages.CandlePage page(LabelShown shown, LabelPrinter.Preview preview) {
    LabelLayout layout = shown.layout();
    CandleLabel label = shown.label();
    LabelRequest request = shown.request();
    Classification found = label.classification();
    List<String> against = new ArrayList<>(label.gate().reasons());
    LabelPress.missing(request).forEach(m -> against.add("missing: " + m));
    String path = "/press/candle/" + label.candle().design().code();
    String query = LabelLayout.query(shown.form());
    List<String> findings =
        new ArrayList<>(
            layout
                .carrier()
                .findings(
                    layout.widthMm(),
                    layout.heightMm(),
                    LabelMinimum.of(request.capacityMl()),
                    !found.isUnclassified()));
    if (!preview.smaller().isEmpty()) {
      findings.add(0, preview.smaller());
    }
    return new PressPages.CandlePage(
        label.candle().design().code(),
        label.candle().design().name(),
        CandleWords.words(found),
        CandleWords.statements(found),
        found.reasons().stream().map(CandleWords::finding).toList(),
        CandleWords.steps(label.blend()),
        CandleWords.narrower(label),
        CandleWords.highest(label),
        found.warnings(),
        label.sheets(),
        against,
        findings,
        preview.sizes(),
        preview.svg(),
        preview.trouble(),
        new PressPages.Files(
            path + "/labels.pdf" + query, path + "/label.svg" + query, path + "/label.png" + query),
        "/press/folder/" + label.candle().design().code() + query,
        listings(request, layout),
        measured(label),
        shown.form(),
        languages(),
        destinations(),
        carriers());
  }

  private static Map<String, String> languages() {
    Map<String, String> languages = new LinkedHashMap<>();
    for (Language language : Language.all()) {
      Locale locale = Locale.forLanguageTag(language.code());
      languages.put(language.code(), locale.getDisplayLanguage(Locale.ENGLISH));
    }
    return languages;
  }

  private static Map<String, String> destinations() {
    Map<String, String> destinations = new LinkedHashMap<>();
    destinations.put("eu", "European Union, Great Britain");
    destinations.put("us", "United States");
    return destinations;
  }

  private static List<PressPages.Listed> listings(LabelRequest request, LabelLayout layout) {
    List<Language> languages =
        layout.languages().isEmpty() ? List.of(Language.ENGLISH) : layout.languages();
    return languages.stream()
        .map(l -> new PressPages.Listed(l.code(), Listing.of(request, l)))
        .toList();
  }

  /** The newest passed test of the candle, for what a label may say of it. */
  private PressPages.@Nullable Measured measured(CandleLabel label) {
    return desk.studio()
        .look(
            books -> {
              List<BurnTest> passed =
                  new TestedFacts(books)
                      .passed(label.candle().design().code(), label.testedVersion());
              if (passed.isEmpty()) {
                return null;
              }
              Subject test = Subject.of(Subject.Kind.BURN_TEST, passed.get(0).id());
              return new PressPages.Measured(
                  passed.get(0).id(),
                  reading(books, test, TestedFacts.TRIM),
                  reading(books, test, TestedFacts.LEFT));
            });
  }

  private static String reading(Books books, Subject test, String quantity) {
    return books
        .readings()
        .newest(test, quantity)
        .map(r -> String.format(Locale.ROOT, "%.1f", r.value()).replace(".0", ""))
        .orElse("");
  }

  /** What was measured in the test beside the looks: how short the wick, how much wax was left. */
  private void measure(Context http) {
    String code = http.pathParam("code");
    LabelShown shown = LabelShown.asked(desk, http);
    PressPages.Measured measured = measured(shown.label());
    Form form = Form.of(http);
    List<Reading> readings = new ArrayList<>();
    Optional<Act> act = form.act(http, "");
    if (measured != null) {
      Subject test = Subject.of(Subject.Kind.BURN_TEST, measured.test());
      for (String quantity : List.of(TestedFacts.TRIM, TestedFacts.LEFT)) {
        form.readIfThere(quantity, "millimetres", text -> millimetres(quantity, text))
            .ifPresent(mm -> readings.add(Reading.fresh(test, quantity, mm, desk.studio().now())));
      }
    }
    if (!form.ok() || act.isEmpty() || readings.isEmpty()) {
      String trouble =
          form.complaints().isEmpty() ? "Nothing was given." : form.complaints().get(0);
      Show.done(http, Said.refused(trouble, "Give millimetres."), "/press/candle/" + code);
      return;
    }
    desk.studio().recordReading.run(act.get(), readings);
    Show.done(
        http, Said.done("Kept with the burn test; the label says it."), "/press/candle/" + code);
  }

  private static double millimetres(String field, String text) {
    double value = Double.parseDouble(text.replace(',', '.'));
    if (!(value > 0 && value <= 100)) {
      throw new OutOfRange(field, text + " mm cannot be", "give 1 to 100 mm");
    }
    return value;
  }

  private static Map<String, String> carriers() {
    Map<String, String> carriers = new LinkedHashMap<>();
    for (Carrier carrier : Carrier.values()) {
      carriers.put(carrier.word(), carrier.word());
    }
    return carriers;
  }

  /** Test labels come at once; labels for sale once somebody has signed for them. */
  private void signed(Context http, java.util.function.BiConsumer<Context, LabelShown> file) {
    LabelShown shown = LabelShown.asked(desk, http);
    makerOnly(http, shown);
    String code = http.pathParam("code");
    String deed = http.queryParam("printed");
    boolean signed =
        deed != null
            && deed.matches("\\d{1,18}")
            && desk.studio()
                .<Boolean>look(b -> PrintForSale.signed(b, Long.parseLong(deed), code, desk.now()));
    if (forSale(shown) && !signed) {
      String path = http.path();
      String name = path.substring(path.lastIndexOf('/') + 1);
      Show.page(http, "press/print.jte", printPage(shown, code, name, Form.blank()));
      return;
    }
    file.accept(http, shown);
  }

  private static PressPages.PrintPage printPage(
      LabelShown shown, String code, String file, Form form) {
    String root = "/press/candle/" + code;
    String query = LabelLayout.query(shown.form());
    return new PressPages.PrintPage(
        shown.label().candle().design().name(), root + "/print" + query, file, root + query, form);
  }

  private void sign(Context http) {
    LabelShown shown = LabelShown.asked(desk, http);
    String code = http.pathParam("code");
    Form form = Form.of(http);
    List<String> files = List.of("labels.pdf", "label.svg", "label.png");
    String file = form.choice("file", "what is printed", files).orElse("labels.pdf");
    String name = form.text("printed_by", "your name in full");
    String why = form.text("printed_why", "what it is for");
    Optional<Act> act = form.act(http, "");
    if (form.ok() && act.isPresent()) {
      Outcome<Deed> outcome = desk.studio().printForSale.run(act.get(), code, name, why);
      if (outcome instanceof Outcome.Done<Deed> done) {
        String query = LabelLayout.query(shown.form());
        String more = (query.isEmpty() ? "?" : query + "&") + "printed=" + done.deed().id();
        http.redirect("/press/candle/" + code + "/" + file + more, HttpStatus.SEE_OTHER);
        return;
      }
      Outcome.Refused<Deed> refused = (Outcome.Refused<Deed>) outcome;
      form.complain("printed_by", refused.sentence() + ": " + refused.hint() + ".");
    }
    Show.again(http, "press/print.jte", printPage(shown, code, file, form));
  }

  private void pdf(Context http, LabelShown shown) {
    LabelLayout layout = shown.layout();
    byte[] pdf =
        fitting(
            () ->
                printer.sheets(Collections.nCopies(layout.copies(), shown.text()), layout.stock()));
    Show.inline(http, pdf, "application/pdf", "labels-" + http.pathParam("code") + ".pdf");
  }

  private void svg(Context http, LabelShown shown) {
    LabelPrinter.Preview preview =
        printer.preview(shown.text(), shown.layout().widthMm(), shown.layout().heightMm());
    if (preview.svg().isEmpty()) {
      throw new TurnedAway(409, preview.trouble(), "Choose another size and try again.");
    }
    Show.file(
        http,
        preview.svg().getBytes(StandardCharsets.UTF_8),
        "image/svg+xml",
        "label-" + http.pathParam("code") + ".svg");
  }

  private void png(Context http, LabelShown shown) {
    LabelLayout layout = shown.layout();
    byte[] png =
        fitting(
            () -> printer.png(shown.text(), layout.widthMm(), layout.heightMm(), DOTS_PER_INCH));
    Show.file(http, png, "image/png", "label-" + http.pathParam("code") + ".png");
  }

  /** A learner prints test labels; labels for sale are a maker's. */
  private void makerOnly(Context http, LabelShown shown) {
    String hand = Show.initials(http);
    if (forSale(shown) && desk.studio().<Boolean>look(books -> Learner.is(books, hand))) {
      throw new TurnedAway(
          403,
          hand + " is a learner, who does not print for sale",
          "A maker does it, under her own initials.");
    }
  }

  private static boolean forSale(LabelShown shown) {
    return shown.label().gate().isOpen() && LabelPress.missing(shown.request()).isEmpty();
  }

  private static byte[] fitting(Supplier<byte[]> printing) {
    try {
      return printing.get();
    } catch (OutOfRange e) {
      throw new TurnedAway(409, e.sentence(), e.hint());
    }
  }
}
