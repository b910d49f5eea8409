package pourwright.page.press;

import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Mark;
import pourwright.label.Carrier;
import pourwright.label.LabelStock;
import pourwright.label.Language;
import pourwright.label.Ufi;
import pourwright.page.Form;
import pourwright.quantity.OutOfRange;
import pourwright.work.IssuedFolder;

/** How a label is to be set and printed, as a form says it. */
record LabelLayout(
    double widthMm,
    double heightMm,
    @Nullable Mark mark,
    String destination,
    List<Language> languages,
    Carrier carrier,
    String ufi,
    int copies,
    LabelStock stock) {
  private static final double USUAL_MM = 74;

  /** The form as asked for in the address, with what the house usually takes. */
  static Form asked(Context http, Optional<IssuedFolder.Label> last) {
    if (http.queryParam("width") != null) {
      return Form.asked(http);
    }
    Map<String, List<String>> usual = new LinkedHashMap<>();
    usual.put("width", List.of(last.map(l -> plain(l.widthMm())).orElse("74")));
    usual.put("height", List.of(last.map(l -> plain(l.heightMm())).orElse("105")));
    usual.put("to", List.of(last.map(IssuedFolder.Label::destination).orElse("eu")));
    usual.put("language", last.map(IssuedFolder.Label::languages).orElse(List.of("en")));
    usual.put("carrier", List.of(last.map(IssuedFolder.Label::carrier).orElse("tag")));
    usual.put("ufi", List.of(last.map(IssuedFolder.Label::ufi).orElse("")));
    usual.put("mark", List.of(Optional.ofNullable(http.queryParam("mark")).orElse("")));
    usual.put("copies", List.of("1"));
    usual.put("paper", List.of("single"));
    usual.put("columns", List.of("2"));
    usual.put("rows", List.of("2"));
    usual.put("left", List.of("10"));
    usual.put("top", List.of("10"));
    usual.put("gap", List.of("4"));
    return Form.startingWith(usual);
  }

  private static String plain(double mm) {
    return mm == Math.rint(mm) ? Long.toString(Math.round(mm)) : Double.toString(mm);
  }

  /** Reads the form; complaints stand in it. */
  static LabelLayout of(Form form) {
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
    int copies =
        form.value("copies").isEmpty() ? 1 : form.count("copies", "how many", 1, 500).orElse(1);
    Optional<Mark> mark =
        form.optionalText("mark").isEmpty()
            ? Optional.empty()
            : form.readIfThere("mark", "a mark", Mark::read);
    return new LabelLayout(
        width,
        height,
        mark.orElse(null),
        form.value("to").equals("us") ? "us" : "eu",
        languages,
        carrier,
        ufi(form),
        copies,
        stock(form, width, height));
  }

  /** A UFI with a wrong character is not printed. */
  private static String ufi(Form form) {
    String typed = form.optionalText("ufi");
    return typed.isEmpty()
        ? ""
        : form.readIfThere("ufi", "a UFI", Ufi::read).map(Ufi::text).orElse("");
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
    Function<String, Double> reader =
        text -> {
          double value = Double.parseDouble(text.replace(',', '.'));
          if (!(value >= low && value <= high)) {
            throw new OutOfRange(
                field, text + " mm is not a side of a label", "from " + low + " to " + high);
          }
          return value;
        };
    return form.read(field, "millimetres", reader).orElse(USUAL_MM);
  }

  /** The mark in words, or an empty string. */
  String markText() {
    return mark == null ? "" : mark.text();
  }

  /** As a proof folder keeps it. */
  IssuedFolder.Label kept() {
    return new IssuedFolder.Label(
        widthMm,
        heightMm,
        destination,
        languages.stream().map(Language::code).toList(),
        carrier.word(),
        ufi,
        markText());
  }

  /** As the end of an address, with a question mark before it. */
  static String query(Form form) {
    List<String> parts = new ArrayList<>();
    for (String field :
        List.of(
            "width",
            "height",
            "to",
            "language",
            "carrier",
            "ufi",
            "mark",
            "copies",
            "paper",
            "columns",
            "rows",
            "left",
            "top",
            "gap")) {
      for (String value : form.values(field)) {
        parts.add(field + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8));
      }
    }
    return parts.isEmpty() ? "" : "?" + String.join("&", parts);
  }
}
