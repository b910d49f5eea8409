package pourwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Map;
import javax.measure.MetricPrefix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tech.units.indriya.unit.Units;

class UnitTest {

  /** Printed factors: NIST Special Publication 811 (2008), Appendix B.8; seven figures. */
  @ParameterizedTest
  @CsvSource({
    "OUNCE, GRAM, 28.34952",
    "POUND, KILOGRAM, 0.4535924",
    "US_GALLON, LITRE, 3.785412",
    "US_FLUID_OUNCE, MILLILITRE, 29.57353",
    "US_CUP, LITRE, 0.2365882",
    "US_PINT, LITRE, 0.4731765",
    "US_QUART, LITRE, 0.9463529",
    "TABLESPOON, MILLILITRE, 14.78676",
    "TEASPOON, MILLILITRE, 4.928922",
    "CUBIC_INCH, MILLILITRE, 16.38706",
    "CUBIC_FOOT, LITRE, 28.31685",
    "IMPERIAL_GALLON, LITRE, 4.54609",
    "IMPERIAL_FLUID_OUNCE, MILLILITRE, 28.41306",
    "INCH, MILLIMETRE, 25.4",
    "FOOT, METRE, 0.3048",
    "YARD, METRE, 0.9144",
    "SQUARE_FOOT, SQUARE_METRE, 0.09290304",
    "SQUARE_INCH, SQUARE_MILLIMETRE, 645.16",
    "POUND_PER_CUBIC_FOOT, KILOGRAM_PER_CUBIC_METRE, 16.01846",
    "POUND_PER_US_GALLON, KILOGRAM_PER_CUBIC_METRE, 119.8264",
  })
  void factorsAreThoseOfTheTable(Unit from, Unit to, double factor) {
    long amount = from.amountOf(new BigDecimal("1000"));
    assertThat(to.approximate(amount) / 1000).isCloseTo(factor, within(5.1e-7 * factor));
  }

  /** The same conversions through an independent library of units. */
  @ParameterizedTest
  @EnumSource
  void conversionsAgreeWithAUnitsLibrary(Unit unit) {
    double small = toSi(unit).convert(123.456) * smallIn(unit.dimension());
    long ours = unit.amountOf(new BigDecimal("123.456"));
    assertThat((double) ours).isCloseTo(small, within(Math.max(0.5001, Math.abs(small) * 1e-14)));
  }

  private static double smallIn(Dimension dimension) {
    return Map.of(
            Dimension.MASS, 1e9,
            Dimension.VOLUME, 1e12,
            Dimension.LENGTH, 1e9,
            Dimension.AREA, 1e12,
            Dimension.TEMPERATURE, 1e6,
            Dimension.DENSITY, 1e3,
            Dimension.TIME, 1e3)
        .getOrDefault(dimension, Double.NaN);
  }

  private static javax.measure.UnitConverter toSi(Unit unit) {
    javax.measure.Unit<?> inch = Units.METRE.multiply(254).divide(10000);
    javax.measure.Unit<?> pound = Units.KILOGRAM.multiply(45359237).divide(100000000);
    javax.measure.Unit<?> gallon = inch.pow(3).multiply(231);
    javax.measure.Unit<?> imperial =
        MetricPrefix.DECI(Units.METRE).pow(3).multiply(454609).divide(100000);
    javax.measure.Unit<?> theirs =
        switch (unit) {
          case MICROGRAM -> MetricPrefix.MICRO(Units.GRAM);
          case MILLIGRAM -> MetricPrefix.MILLI(Units.GRAM);
          case GRAM -> Units.GRAM;
          case KILOGRAM -> Units.KILOGRAM;
          case TONNE -> Units.KILOGRAM.multiply(1000);
          case OUNCE -> pound.divide(16);
          case POUND -> pound;
          case MICROLITRE -> MetricPrefix.MILLI(Units.METRE).pow(3);
          case MILLILITRE -> MetricPrefix.CENTI(Units.METRE).pow(3);
          case CENTILITRE -> MetricPrefix.CENTI(Units.METRE).pow(3).multiply(10);
          case DECILITRE -> MetricPrefix.CENTI(Units.METRE).pow(3).multiply(100);
          case LITRE -> MetricPrefix.DECI(Units.METRE).pow(3);
          case CUBIC_METRE -> Units.CUBIC_METRE;
          case TEASPOON -> gallon.divide(768);
          case TABLESPOON -> gallon.divide(256);
          case US_FLUID_OUNCE -> gallon.divide(128);
          case US_CUP -> gallon.divide(16);
          case US_PINT -> gallon.divide(8);
          case US_QUART -> gallon.divide(4);
          case US_GALLON -> gallon;
          case METRIC_CUP -> MetricPrefix.CENTI(Units.METRE).pow(3).multiply(250);
          case IMPERIAL_FLUID_OUNCE -> imperial.divide(160);
          case IMPERIAL_PINT -> imperial.divide(8);
          case IMPERIAL_QUART -> imperial.divide(4);
          case IMPERIAL_GALLON -> imperial;
          case CUBIC_INCH -> inch.pow(3);
          case CUBIC_FOOT -> inch.multiply(12).pow(3);
          case MICROMETRE -> MetricPrefix.MICRO(Units.METRE);
          case MILLIMETRE -> MetricPrefix.MILLI(Units.METRE);
          case CENTIMETRE -> MetricPrefix.CENTI(Units.METRE);
          case METRE -> Units.METRE;
          case INCH -> inch;
          case FOOT -> inch.multiply(12);
          case YARD -> inch.multiply(36);
          case SQUARE_MILLIMETRE -> MetricPrefix.MILLI(Units.METRE).pow(2);
          case SQUARE_CENTIMETRE -> MetricPrefix.CENTI(Units.METRE).pow(2);
          case SQUARE_METRE -> Units.SQUARE_METRE;
          case SQUARE_INCH -> inch.pow(2);
          case SQUARE_FOOT -> inch.multiply(12).pow(2);
          case KELVIN -> Units.KELVIN;
          case CELSIUS -> Units.CELSIUS;
          case FAHRENHEIT -> Units.KELVIN.multiply(5).divide(9).shift(new BigDecimal("459.67"));
          case GRAM_PER_MILLILITRE -> Units.GRAM.divide(MetricPrefix.CENTI(Units.METRE).pow(3));
          case KILOGRAM_PER_CUBIC_METRE -> Units.KILOGRAM.divide(Units.CUBIC_METRE);
          case POUND_PER_CUBIC_FOOT -> pound.divide(inch.multiply(12).pow(3));
          case POUND_PER_US_GALLON -> pound.divide(gallon);
          case SECOND -> Units.SECOND;
          case MINUTE -> Units.MINUTE;
          case HOUR -> Units.HOUR;
          case DAY -> Units.DAY;
          case WEEK -> Units.WEEK;
        };
    return converter(theirs);
  }

  private static javax.measure.UnitConverter converter(javax.measure.Unit<?> unit) {
    try {
      return unit.getConverterToAny(unit.getSystemUnit());
    } catch (javax.measure.IncommensurableException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void volumesAndMassesOfADensity() {
    Density wax = Density.ofGramsPerMillilitre(0.86);
    assertThat(wax.of(Volume.ofMillilitres(200))).isEqualTo(Mass.ofGrams(172));
    assertThat(wax.of(Mass.ofGrams(172))).isEqualTo(Volume.ofMillilitres(200));
  }

  @Test
  void temperaturesAreWholeInTenthsOfACelsiusDegree() {
    assertThat(Temperature.ofCelsius(71.1).celsius()).isEqualTo(71.1);
    assertThat(Temperature.ofCelsius(0).kelvin()).isEqualTo(273.15);
  }
}
