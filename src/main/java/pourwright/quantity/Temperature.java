package pourwright.quantity;

/**
 * A temperature as a whole number of microkelvins above absolute zero, in which every tenth of a
 * degree Celsius is whole.
 *
 * @param microkelvin zero or more
 */
public record Temperature(long microkelvin) implements Comparable<Temperature> {
  private static final long ICE = 273_150_000L;

  /** Refuses what is colder than absolute zero. */
  public Temperature {
    if (microkelvin < 0) {
      throw new OutOfRange(
          "temperature",
          "the temperature is below absolute zero",
          "check the sign and whether it is °C or °F");
    }
  }

  /** The nearest temperature to a finite number of degrees Celsius. */
  public static Temperature ofCelsius(double celsius) {
    Check.between("temperature_c", celsius, -273.15, 1e6);
    return new Temperature(Math.round(celsius * 1e6) + ICE);
  }

  /** Degrees Celsius, for kernels and display. */
  public double celsius() {
    return (microkelvin - ICE) / 1e6;
  }

  /** Kelvin, for kernels. */
  public double kelvin() {
    return microkelvin / 1e6;
  }

  @Override
  public int compareTo(Temperature other) {
    return Long.compare(microkelvin, other.microkelvin);
  }
}
