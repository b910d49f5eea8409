package pourwright.page.board;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.quantity.Dimension;
import pourwright.quantity.Length;
import pourwright.quantity.NumberText;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.QuantityText;
import pourwright.quantity.Unit;
import pourwright.quantity.Volume;

/** Reads and writes lengths, volumes and plain numbers as people of the studio do. */
public final class Lengths {
  private final Desk desk;
  private final QuantityText quantities;
  private final NumberText numbers;

  /** The studio's way of writing. */
  public Lengths(Desk desk) {
    this.desk = desk;
    this.quantities = desk.quantities();
    this.numbers = NumberText.in(desk.locale());
  }

  /** A length in millimetres that must be there. */
  public Optional<Double> read(Form form, String field, String what) {
    return form.read(field, what, this::millimetres);
  }

  /** A length in millimetres that may be left out. */
  public Optional<Double> readIfThere(Form form, String field, String what) {
    return form.readIfThere(field, what, this::millimetres);
  }

  private Double millimetres(String text) {
    return quantities.length(text, Unit.MILLIMETRE).millimetres();
  }

  /** A plain number that must be there. */
  public Optional<Double> readNumber(Form form, String field, String what) {
    return form.read(field, what, text -> numbers.decimal(text).doubleValue());
  }

  /** A plain number that may be left out. */
  public Optional<Double> readNumberIfThere(Form form, String field, String what) {
    return form.readIfThere(field, what, text -> numbers.decimal(text).doubleValue());
  }

  /** A temperature as a form starts with it, in her unit. */
  public String celsius(double celsius) {
    return number(desk.units().celsiusInHers(celsius));
  }

  /** A mass in grams that must be there. */
  public Optional<Double> readGrams(Form form, String field, String what) {
    return form.read(field, what, text -> desk.units().grams(text));
  }

  /** A temperature in °C that must be there. */
  public Optional<Double> readCelsius(Form form, String field, String what) {
    return form.read(field, what, text -> desk.units().celsius(text));
  }

  /** Corners, one a line, x and y in millimetres. */
  public List<List<Double>> points(Form form, String field) {
    List<List<Double>> points = new ArrayList<>();
    String text = form.text(field, "the points, one a line");
    int line = 0;
    for (String row : text.split("\\R", -1)) {
      line++;
      if (row.isBlank()) {
        continue;
      }
      String[] pair = row.strip().split("[;\\s]+", -1);
      try {
        if (pair.length != 2) {
          throw new OutOfRange("points", "two numbers are needed", "write x and y");
        }
        points.add(
            List.of(
                numbers.decimal(pair[0]).doubleValue(), numbers.decimal(pair[1]).doubleValue()));
      } catch (OutOfRange e) {
        form.complain(field, "Line " + line + ": " + e.sentence() + ".");
      }
    }
    return points;
  }

  /** Points as they are read again: one a line, x and y in millimetres. */
  public String points(List<List<Double>> pointsMm) {
    return pointsMm.stream()
        .map(p -> number(p.get(0)) + " " + number(p.get(1)))
        .collect(Collectors.joining("\n"));
  }

  /** A length as she reads it. */
  public String write(double millimetres) {
    long amount = Length.ofMillimetres(millimetres).nanometres();
    return quantities.write(amount, Unit.MILLIMETRE);
  }

  /** A length to a tenth of a millimetre, for drawings. */
  public String rough(double millimetres) {
    long amount = Length.ofMillimetres(millimetres).nanometres();
    String text = quantities.write(amount, Unit.MILLIMETRE, new BigDecimal("0.1"));
    return text.replaceFirst("[.,]0 mm", "").replace(" mm", "");
  }

  /** A volume to a tenth of a millilitre. */
  public String millilitres(double millilitres) {
    long amount = Volume.ofMillilitres(millilitres).nanolitres();
    return quantities.write(amount, Unit.MILLILITRE, new BigDecimal("0.1"));
  }

  /** Grams at a scale's step. */
  public String grams(double grams, double step) {
    BigDecimal resolution = BigDecimal.valueOf(step).stripTrailingZeros();
    long amount = pourwright.quantity.Mass.ofGrams(grams).micrograms();
    return quantities.write(amount, Unit.GRAM, resolution);
  }

  /** A number with as many digits as it has. */
  public String number(double value) {
    return numbers.write(BigDecimal.valueOf(value).stripTrailingZeros());
  }

  /** A number with some decimals. */
  public String number(double value, int decimals) {
    return numbers.write(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN));
  }

  /** A share as percent with its sign of doubt: ±3 %. */
  public static String plusMinus(double relative) {
    double percent = 100 * relative;
    return String.format(Locale.ROOT, percent < 2 ? "±%.1f %%" : "±%.0f %%", percent);
  }

  /** Words for a dimension's example, for hints. */
  public static String example(Dimension dimension) {
    return dimension.example();
  }
}
