package pourwright.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * A unit with its exact factor to the whole small unit of its {@link Dimension}. Factors are
 * fractions of two decimals, so that none is rounded.
 *
 * <p>Source: NIST Handbook 44 (2024), Appendix C, and NIST Special Publication 811 (2008), Appendix
 * B.8: the inch is 25.4 mm, the avoirdupois pound 453.59237 g, the US gallon 231 cubic inches, all
 * exactly. Imperial gallon: 4.54609 l exactly (UK Units of Measurement Regulations 1995).
 */
public enum Unit {
  MICROGRAM(Dimension.MASS, "1", "1", "µg", "ug", "mcg"),
  MILLIGRAM(Dimension.MASS, "1e3", "1", "mg"),
  GRAM(Dimension.MASS, "1e6", "1", "g", "gram", "grams"),
  KILOGRAM(Dimension.MASS, "1e9", "1", "kg", "kilo", "kilos", "kilogram", "kilograms"),
  TONNE(Dimension.MASS, "1e12", "1", "t", "tonne", "tonnes"),
  OUNCE(Dimension.MASS, "453592370", "16", "oz", "oz.", "ounce", "ounces"),
  POUND(Dimension.MASS, "453592370", "1", "lb", "lbs", "lb.", "lbs.", "pound", "pounds"),
  MICROLITRE(Dimension.VOLUME, "1e3", "1", "µl", "ul", "mm3", "mm³"),
  MILLILITRE(Dimension.VOLUME, "1e6", "1", "ml", "mL", "cc", "cm3", "cm³"),
  CENTILITRE(Dimension.VOLUME, "1e7", "1", "cl", "cL"),
  DECILITRE(Dimension.VOLUME, "1e8", "1", "dl", "dL"),
  LITRE(Dimension.VOLUME, "1e9", "1", "l", "L", "litre", "litres", "liter", "liters", "dm3", "dm³"),
  CUBIC_METRE(Dimension.VOLUME, "1e12", "1", "m3", "m³"),
  TEASPOON(Dimension.VOLUME, "3785411784", "768", "tsp", "teaspoon", "teaspoons"),
  TABLESPOON(Dimension.VOLUME, "3785411784", "256", "tbsp", "tablespoon", "tablespoons"),
  US_FLUID_OUNCE(Dimension.VOLUME, "3785411784", "128", "US fl oz", "US fluid ounces"),
  US_CUP(Dimension.VOLUME, "3785411784", "16", "US cup", "US cups"),
  US_PINT(Dimension.VOLUME, "3785411784", "8", "US pt", "US pint", "US pints"),
  US_QUART(Dimension.VOLUME, "3785411784", "4", "US qt", "US quart", "US quarts"),
  US_GALLON(Dimension.VOLUME, "3785411784", "1", "US gal", "US gallon", "US gallons"),
  METRIC_CUP(Dimension.VOLUME, "25e7", "1", "metric cup", "metric cups"),
  IMPERIAL_FLUID_OUNCE(Dimension.VOLUME, "4546090000", "160", "imp fl oz", "imp fluid ounces"),
  IMPERIAL_PINT(Dimension.VOLUME, "4546090000", "8", "imp pt", "imp pint", "imp pints"),
  IMPERIAL_QUART(Dimension.VOLUME, "4546090000", "4", "imp qt", "imp quart", "imp quarts"),
  IMPERIAL_GALLON(Dimension.VOLUME, "4546090000", "1", "imp gal", "imp gallon", "imp gallons"),
  CUBIC_INCH(Dimension.VOLUME, "16387064", "1", "in3", "in³", "cu in"),
  CUBIC_FOOT(Dimension.VOLUME, "28316846592", "1", "ft3", "ft³", "cu ft"),
  MICROMETRE(Dimension.LENGTH, "1e3", "1", "µm", "um"),
  MILLIMETRE(Dimension.LENGTH, "1e6", "1", "mm"),
  CENTIMETRE(Dimension.LENGTH, "1e7", "1", "cm"),
  METRE(Dimension.LENGTH, "1e9", "1", "m", "metre", "metres", "meter", "meters"),
  INCH(Dimension.LENGTH, "254e5", "1", "in", "in.", "inch", "inches", "\"", "″", "”"),
  FOOT(Dimension.LENGTH, "3048e5", "1", "ft", "ft.", "foot", "feet", "′"),
  YARD(Dimension.LENGTH, "9144e5", "1", "yd", "yard", "yards"),
  SQUARE_MILLIMETRE(Dimension.AREA, "1e6", "1", "mm2", "mm²"),
  SQUARE_CENTIMETRE(Dimension.AREA, "1e8", "1", "cm2", "cm²"),
  SQUARE_METRE(Dimension.AREA, "1e12", "1", "m2", "m²"),
  SQUARE_INCH(Dimension.AREA, "64516e4", "1", "in2", "in²", "sq in"),
  SQUARE_FOOT(Dimension.AREA, "9290304e4", "1", "ft2", "ft²", "sq ft"),
  KELVIN(Dimension.TEMPERATURE, "1e6", "1", "K"),
  CELSIUS(Dimension.TEMPERATURE, "1e6", "1", "°C", "C", "c", "º C", "ºC", "° C", "℃", "deg C"),
  FAHRENHEIT(Dimension.TEMPERATURE, "5e6", "9", "°F", "F", "f", "º F", "ºF", "° F", "℉", "deg F"),
  GRAM_PER_MILLILITRE(
      Dimension.DENSITY, "1e6", "1", "g/ml", "g/mL", "g/cm3", "g/cm³", "kg/l", "kg/L", "g/cc"),
  KILOGRAM_PER_CUBIC_METRE(Dimension.DENSITY, "1e3", "1", "kg/m3", "kg/m³", "g/l", "g/L"),
  POUND_PER_CUBIC_FOOT(Dimension.DENSITY, "453592370", "28316.846592", "lb/ft3", "lb/ft³"),
  POUND_PER_US_GALLON(Dimension.DENSITY, "453592370", "3785.411784", "lb/US gal"),
  SECOND(Dimension.TIME, "1e3", "1", "s", "sec", "secs", "second", "seconds"),
  MINUTE(Dimension.TIME, "6e4", "1", "min", "mins", "minute", "minutes"),
  HOUR(Dimension.TIME, "36e5", "1", "h", "hr", "hrs", "hour", "hours"),
  DAY(Dimension.TIME, "864e5", "1", "d", "day", "days"),
  WEEK(Dimension.TIME, "6048e5", "1", "wk", "week", "weeks");

  private final Dimension dimension;
  private final BigDecimal over;
  private final BigDecimal under;
  private final List<String> symbols;

  Unit(Dimension dimension, String over, String under, String... symbols) {
    this.dimension = dimension;
    this.over = new BigDecimal(over);
    this.under = new BigDecimal(under);
    this.symbols = List.of(symbols);
  }

  /** What the unit measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** How the unit is shown. */
  public String symbol() {
    return symbols.get(0);
  }

  /** All the ways it may be written. */
  List<String> symbols() {
    return symbols;
  }

  /** Added to a reading to count from absolute zero. */
  private BigDecimal zero() {
    return switch (this) {
      case CELSIUS -> new BigDecimal("273.15");
      case FAHRENHEIT -> new BigDecimal("459.67");
      default -> BigDecimal.ZERO;
    };
  }

  /**
   * The nearest whole amount to {@code numerator/denominator} of this unit, halves to even.
   *
   * @throws OutOfRange when the amount is too large to be counted
   */
  public long amountOf(BigDecimal numerator, BigDecimal denominator) {
    BigDecimal counted = numerator.add(zero().multiply(denominator)).multiply(over);
    BigDecimal whole = counted.divide(under.multiply(denominator), 0, RoundingMode.HALF_EVEN);
    if (whole.precision() > 18) {
      throw new OutOfRange("amount", "the amount is too large", "check the number and the unit");
    }
    return whole.longValueExact();
  }

  /** The nearest whole amount to a number of this unit, halves to even. */
  public long amountOf(BigDecimal value) {
    return amountOf(value, BigDecimal.ONE);
  }

  /** An amount in this unit, rounded half to even to a number of decimals. */
  public BigDecimal valueOf(long amount, int decimals) {
    BigDecimal offset = zero();
    if (offset.signum() == 0) {
      return BigDecimal.valueOf(amount)
          .multiply(under)
          .divide(over, decimals, RoundingMode.HALF_EVEN);
    }
    return BigDecimal.valueOf(amount)
        .multiply(under)
        .subtract(offset.multiply(over))
        .divide(over, decimals, RoundingMode.HALF_EVEN);
  }

  /** The fewest decimals that give the amount back exactly when they are read again. */
  public BigDecimal shortestValueOf(long amount) {
    for (int decimals = 0; ; decimals++) {
      BigDecimal value = valueOf(amount, decimals);
      if (amountOf(value) == amount) {
        return value;
      }
    }
  }

  /** An amount in this unit as a double, for kernels. */
  public double approximate(long amount) {
    return valueOf(amount, 15).doubleValue();
  }
}
