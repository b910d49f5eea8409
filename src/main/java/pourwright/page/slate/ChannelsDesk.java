package pourwright.page.slate;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.cost.Parcel;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.quantity.NumberText;
import pourwright.quantity.OutOfRange;
import pourwright.work.Act;
import pourwright.work.SlateBook;

/** The terms of each channel, and what a parcel is charged as. */
public final class ChannelsDesk {
  private static final String PATH = "/slate/channels";
  private static final double PERCENT = 100;
  private final Desk desk;

  ChannelsDesk(Desk desk) {
    this.desk = desk;
  }

  /**
   * The page.
   *
   * @param channels each with its fields' head
   * @param parcel what a parcel is charged as, empty where nobody asked
   */
  public record ChannelsPage(Form form, Map<String, String> channels, List<String> parcel) {}

  void addTo(RoutesConfig routes) {
    routes.get(PATH, this::show);
    routes.post(PATH, this::save);
  }

  private List<SlateBook.Terms> terms() {
    return desk.studio().look(books -> new SlateBook(books).terms());
  }

  private Map<String, String> channels() {
    Map<String, String> channels = new LinkedHashMap<>();
    terms().forEach(t -> channels.put(t.key(), t.name()));
    return channels;
  }

  private Form standing(Map<String, List<String>> asked) {
    Map<String, String> values = new LinkedHashMap<>();
    for (SlateBook.Terms t : terms()) {
      values.put(t.key() + "-fee", number(PERCENT * t.channel().feeFraction()));
      values.put(t.key() + "-fixed", number(t.channel().feeFixed()));
      values.put(t.key() + "-postage", number(t.channel().postage()));
      values.put(t.key() + "-share", number(PERCENT * t.ofShopPrice()));
    }
    values.put("divisor", "5000");
    asked.forEach((field, text) -> values.put(field, text.isEmpty() ? "" : text.get(0)));
    return Form.startingFrom(values);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value).replaceFirst("\\.?0+$", "");
  }

  private void show(Context http) {
    Form form = standing(http.queryParamMap());
    List<String> parcel = http.queryParam("kg") == null ? List.of() : parcel(form);
    ChannelsPage page = new ChannelsPage(form, channels(), parcel);
    if (form.ok()) {
      Show.page(http, "slate/channels.jte", page);
    } else {
      Show.again(http, "slate/channels.jte", page);
    }
  }

  private Optional<Double> read(Form form, String field, String what) {
    NumberText numbers = NumberText.in(desk.locale());
    Optional<Double> value = form.read(field, what, text -> numbers.decimal(text).doubleValue());
    if (value.isPresent() && value.get() < 0) {
      form.complain(field, "Please give 0 or more.");
      return Optional.empty();
    }
    return value;
  }

  /** The larger of weight and size, and its postage by the table that was typed. */
  private List<String> parcel(Form form) {
    Optional<Double> length = read(form, "length", "a length");
    Optional<Double> width = read(form, "width", "a width");
    Optional<Double> height = read(form, "height", "a height");
    Optional<Double> kg = read(form, "kg", "a weight");
    Optional<Double> divisor = read(form, "divisor", "a divisor");
    if (length.isEmpty()
        || width.isEmpty()
        || height.isEmpty()
        || kg.isEmpty()
        || divisor.isEmpty()) {
      return List.of();
    }
    try {
      double[] sides = {length.get(), width.get(), height.get()};
      double charged = Parcel.kilograms(sides, kg.get(), divisor.get());
      List<String> said = new ArrayList<>();
      said.add(
          String.format(
              Locale.ROOT,
              "It weighs %.2f kg, by its size %.2f kg: charged as %.2f kg.",
              kg.get(),
              sides[0] * sides[1] * sides[2] / divisor.get(),
              charged));
      List<Parcel.Rate> rates = rates(form);
      if (!rates.isEmpty()) {
        said.add(String.format(Locale.ROOT, "Postage %.2f.", Parcel.postage(charged, rates)));
      }
      return said;
    } catch (OutOfRange e) {
      form.complain("kg", e.sentence() + ": " + e.hint() + ".");
      return List.of();
    }
  }

  private List<Parcel.Rate> rates(Form form) {
    NumberText numbers = NumberText.in(desk.locale());
    List<Parcel.Rate> rates = new ArrayList<>();
    for (String line : form.value("rates").split("\\R", -1)) {
      String[] words = line.strip().split("\\s+", -1);
      if (words.length == 2) {
        rates.add(
            new Parcel.Rate(
                numbers.decimal(words[0]).doubleValue(), numbers.decimal(words[1]).doubleValue()));
      } else if (!line.isBlank()) {
        throw new OutOfRange(
            "rates", "'" + line.strip() + "' is no line of the table", "write: 2 4.90");
      }
    }
    rates.sort(java.util.Comparator.comparingDouble(Parcel.Rate::upTo));
    return rates;
  }

  private void save(Context http) {
    Form form = Form.of(http);
    Map<String, Double> changed = new LinkedHashMap<>();
    for (String key : channels().keySet()) {
      for (String field : List.of("fee", "fixed", "postage", "share")) {
        String name = key + "-" + field;
        boolean share = field.equals("fee") || field.equals("share");
        Optional<Double> value = read(form, name, "a number");
        if (value.isPresent() && field.equals("fee") && value.get() > 90) {
          form.complain(name, "Please give a fee up to 90 per cent.");
        }
        value.ifPresent(
            v -> changed.put("slate.channel." + key + "." + field, share ? v / PERCENT : v));
      }
    }
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty()) {
      Show.again(http, "slate/channels.jte", new ChannelsPage(form, channels(), List.of()));
      return;
    }
    Map<String, String> before = desk.studio().look(books -> books.settings().all());
    changed.forEach(
        (key, value) -> {
          String text = String.valueOf(value);
          if (!text.equals(before.get(key))) {
            Act each = Act.of(act.get().by(), act.get().requestKey() + "-" + key);
            desk.studio().saveSetting.run(each, key, text);
          }
        });
    Show.done(http, Said.done("The terms are saved."), PATH);
  }
}
