package pourwright.page.press;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Mark;
import pourwright.hazard.Blend;
import pourwright.hazard.Classification;
import pourwright.label.Carrier;
import pourwright.label.LabelMinimum;
import pourwright.label.LabelPress;
import pourwright.label.LabelRequest;
import pourwright.label.LabelStock;
import pourwright.label.LabelText;
import pourwright.label.Language;
import pourwright.label.Listing;
import pourwright.label.Panel;
import pourwright.label.Texts;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.quantity.OutOfRange;
import pourwright.work.Books;
import pourwright.work.CandleLabel;
import pourwright.work.LabelPrinter;
import pourwright.work.LabelReader;

/** One candle at the press: what it is and why, its label true to size, sheets to print. */
final class CandleDesk {
  private static final double HIGHEST_LOAD = 0.15;

  private final Desk desk;
  private final LabelPrinter printer;

  CandleDesk(Desk desk, LabelPrinter printer) {
    this.desk = desk;
    this.printer = printer;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/press/candle/{code}", this::show);
    routes.get("/press/candle/{code}/labels.pdf", this::pdf);
  }

  /** What a classification is in a few codes. */
  static String words(Classification found) {
    List<String> codes = new ArrayList<>(found.statements());
    codes.addAll(found.supplemental());
    String word = found.signalWord();
    return codes.isEmpty()
        ? "not classified"
        : (word == null ? "" : word + ": ") + String.join(", ", codes);
  }

  private record Wanted(
      double widthMm,
      double heightMm,
      String mark,
      String destination,
      List<Language> languages,
      Carrier carrier,
      String ufi,
      int copies,
      LabelStock stock) {}

  private static Wanted wanted(Form form) {
    double width = number(form, "width", 20, 400);
    double height = number(form, "height", 20, 400);
    List<Language> languages = new ArrayList<>();
    for (String code : form.values("language")) {
      form.readIfThere("language", "a language", text -> new Language(code))
          .ifPresent(languages::add);
    }
    Carrier carrier = Carrier.TAG;
    for (Carrier each : Carrier.values()) {
      carrier = each.word().equals(form.value("carrier")) ? each : carrier;
    }
    int copies = form.count("copies", "how many", 1, 500).orElse(1);
    return new Wanted(
        width,
        height,
        form.optionalText("mark"),
        form.value("to").equals("us") ? "us" : "eu",
        languages,
        carrier,
        form.optionalText("ufi"),
        copies,
        stock(form, width, height));
  }

  /** The paper: one label a page, or rows and columns on A4 or letter. */
  private static LabelStock stock(Form form, double width, double height) {
    String paper = form.value("paper");
    if (!paper.equals("a4") && !paper.equals("letter")) {
      return LabelStock.single(width, height);
    }
    boolean a4 = paper.equals("a4");
    try {
      return new LabelStock(
          a4 ? 210 : 215.9,
          a4 ? 297 : 279.4,
          form.count("columns", "how many columns", 1, 20).orElse(1),
          form.count("rows", "how many rows", 1, 30).orElse(1),
          number(form, "left", 0, 100),
          number(form, "top", 0, 100),
          width,
          height,
          number(form, "gap", 0, 50));
    } catch (OutOfRange e) {
      form.complain(e.field(), e.sentence() + ": " + e.hint() + ".");
      return LabelStock.single(width, height);
    }
  }

  private static double number(Form form, String field, double low, double high) {
    return form.read(
            field,
            "millimetres",
            text -> {
              double value = Double.parseDouble(text.replace(',', '.'));
              if (!(value >= low && value <= high)) {
                throw new OutOfRange(
                    field, text + " mm is not a side of a label", "from " + low + " to " + high);
              }
              return value;
            })
        .orElse(74.0);
  }

  /** The form as asked for in the address, with what the house usually takes. */
  private static Form form(Context http) {
    if (http.queryParam("width") == null) {
      return Form.startingFrom(
          Map.ofEntries(
              Map.entry("width", "74"),
              Map.entry("height", "105"),
              Map.entry("to", "eu"),
              Map.entry("language", "en"),
              Map.entry("carrier", "tag"),
              Map.entry("copies", "1"),
              Map.entry("paper", "single"),
              Map.entry("columns", "2"),
              Map.entry("rows", "2"),
              Map.entry("left", "10"),
              Map.entry("top", "10"),
              Map.entry("gap", "4")));
    }
    return Form.asked(http);
  }

  private CandleLabel candle(Context http, @Nullable Mark mark) {
    String code = http.pathParam("code");
    try {
      return desk.studio()
          .look(books -> new LabelReader(books).candle(code, mark))
          .orElseThrow(
              () -> new TurnedAway(404, "There is no such candle", "Look it up on the board."));
    } catch (OutOfRange e) {
      throw new TurnedAway(409, e.sentence(), e.hint());
    }
  }

  private static @Nullable Mark mark(Form form, String text) {
    if (text.isEmpty()) {
      return null;
    }
    Optional<Mark> read = form.readIfThere("mark", "a mark", Mark::read);
    return read.orElse(null);
  }

  private LabelRequest request(CandleLabel label, Wanted wanted, String link) {
    return desk.studio().look(books -> request(books, label, wanted, link));
  }

  private static LabelRequest request(Books books, CandleLabel label, Wanted wanted, String link) {
    List<String> scents =
        label.candle().pour().fragrances().stream().map(f -> f.material().name()).toList();
    return new LabelRequest(
        label.candle().design().name(),
        String.join(", ", scents),
        label.classification(),
        label.candle().netG().low(),
        new Panel.OtherShape(label.candle().vessel().outsideM2() * 1e6),
        label.candle().vessel().holdsMl().value(),
        PressPlace.makerOf(books),
        wanted.mark(),
        link,
        label.burn(),
        wanted.languages(),
        wanted.destination(),
        wanted.ufi());
  }

  private static String link(Context http, String mark) {
    String base = http.scheme() + "://" + http.host();
    return mark.isEmpty() ? base : base + "/m/" + mark.replaceAll("[^A-Za-z0-9*]", "");
  }

  private void show(Context http) {
    Form form = form(http);
    Wanted wanted = wanted(form);
    CandleLabel label = candle(http, mark(form, wanted.mark()));
    LabelRequest request = request(label, wanted, link(http, wanted.mark()));
    LabelText text = LabelPress.text(request, label.gate());
    LabelPrinter.Preview preview = printer.preview(text, wanted.widthMm(), wanted.heightMm());
    PressPages.CandlePage page =
        page(
            new Asked(form, wanted, label, request),
            preview,
            Optional.ofNullable(http.queryString()).orElse(""));
    if (form.ok()) {
      Show.page(http, "press/candle.jte", page);
    } else {
      Show.again(http, "press/candle.jte", page);
    }
  }

  /** What was asked for and what it is made from. */
  private record Asked(Form form, Wanted wanted, CandleLabel label, LabelRequest request) {}

  private static PressPages.CandlePage page(
      Asked asked, LabelPrinter.Preview preview, String query) {
    Form form = asked.form();
    Wanted wanted = asked.wanted();
    CandleLabel label = asked.label();
    LabelRequest request = asked.request();
    Classification found = label.classification();
    List<String> against = new ArrayList<>(label.gate().reasons());
    LabelPress.missing(request).forEach(m -> against.add("missing: " + m));
    Language language = wanted.languages().isEmpty() ? Language.ENGLISH : wanted.languages().get(0);
    return new PressPages.CandlePage(
        label.candle().design().code(),
        label.candle().design().name(),
        words(found),
        statements(found),
        found.reasons().stream().map(CandleDesk::finding).toList(),
        steps(label.blend()),
        highest(label),
        found.warnings(),
        label.sheets(),
        against,
        wanted
            .carrier()
            .findings(
                wanted.widthMm(),
                wanted.heightMm(),
                LabelMinimum.of(request.capacityMl()),
                !found.isUnclassified()),
        preview.svg(),
        preview.trouble(),
        "/press/candle/"
            + label.candle().design().code()
            + "/labels.pdf"
            + (query.isEmpty() ? "" : "?" + query),
        Listing.of(request, language),
        form,
        Map.of("eu", "European Union, Great Britain", "us", "United States"),
        carriers());
  }

  private static Map<String, String> carriers() {
    Map<String, String> carriers = new LinkedHashMap<>();
    for (Carrier carrier : Carrier.values()) {
      carriers.put(carrier.word(), carrier.word());
    }
    return carriers;
  }

  private static List<String> statements(Classification found) {
    List<String> texts = new ArrayList<>();
    String names = String.join(", ", found.namedSubstances());
    for (String code : found.statements()) {
      texts.add(code + " " + Texts.of(code, Language.ENGLISH));
    }
    for (String code : found.supplemental()) {
      texts.add(code + " " + Texts.of(code, Language.ENGLISH).replace("{names}", names));
    }
    for (String code : found.precautionary()) {
      texts.add(code + " " + Texts.of(code, Language.ENGLISH));
    }
    return texts;
  }

  private static PressPages.Finding finding(pourwright.hazard.Finding finding) {
    return new PressPages.Finding(
        finding.sentence(),
        finding.distance(),
        finding.rule().source()
            + ", "
            + finding.rule().clause()
            + " ("
            + finding.rule().confidence()
            + ")");
  }

  private static List<String> steps(Blend blend) {
    if (blend.oil().isEmpty()) {
      return List.of();
    }
    List<String> steps = new ArrayList<>();
    for (Blend.Step step : blend.steps(HIGHEST_LOAD)) {
      String added = step.added().isEmpty() ? "" : " comes " + String.join(", ", step.added());
      String dropped = step.dropped().isEmpty() ? "" : " goes " + String.join(", ", step.dropped());
      steps.add(
          "from " + percent(step.fromLoad()) + added + (added.isEmpty() ? "" : ";") + dropped);
    }
    return steps;
  }

  private static String highest(CandleLabel label) {
    if (label.blend().oil().isEmpty()) {
      return "";
    }
    double highest = label.blend().highestLoadLike(label.loadOfTotal(), HIGHEST_LOAD);
    return "The load is "
        + percent(label.loadOfTotal())
        + " of the total. Up to "
        + percent(highest)
        + " no class changes"
        + (highest >= HIGHEST_LOAD ? " (looked at up to there)." : ".");
  }

  private static String percent(double fraction) {
    return String.format(Locale.ROOT, "%.2f %%", fraction * 100);
  }

  private void pdf(Context http) {
    Form form = form(http);
    Wanted wanted = wanted(form);
    CandleLabel label = candle(http, mark(form, wanted.mark()));
    LabelRequest request = request(label, wanted, link(http, wanted.mark()));
    LabelText text = LabelPress.text(request, label.gate());
    byte[] pdf;
    try {
      pdf = printer.sheets(Collections.nCopies(wanted.copies(), text), wanted.stock());
    } catch (OutOfRange e) {
      throw new TurnedAway(409, e.sentence(), e.hint());
    }
    Show.inline(http, pdf, "application/pdf", "labels-" + http.pathParam("code") + ".pdf");
  }
}
