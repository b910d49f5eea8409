package pourwright.quantity;

/** Range checks that return the checked value, so that a constructor reads as one line a field. */
public final class Check {
  private Check() {}

  /** Any finite number. */
  public static double finite(String field, double value) {
    if (!Double.isFinite(value)) {
      throw new OutOfRange(field, field + " is not a finite number", "give a plain number");
    }
    return value;
  }

  /** A finite number greater than zero. */
  public static double positive(String field, double value) {
    finite(field, value);
    if (value <= 0) {
      throw new OutOfRange(
          field, field + " is " + value + " and must be greater than 0", "give a positive number");
    }
    return value;
  }

  /** A finite number of zero or more. */
  public static double notNegative(String field, double value) {
    finite(field, value);
    if (value < 0) {
      throw new OutOfRange(
          field, field + " is " + value + " and must not be below 0", "give 0 or more");
    }
    return value;
  }

  /** A finite number from {@code low} to {@code high}, both allowed. */
  public static double between(String field, double value, double low, double high) {
    finite(field, value);
    if (value < low || value > high) {
      throw new OutOfRange(
          field,
          field + " is " + value + " and must be from " + low + " to " + high,
          "check the unit: the field's name says which");
    }
    return value;
  }

  /** A fraction from 0 to 1, both allowed. */
  public static double fraction(String field, double value) {
    return between(field, value, 0, 1);
  }
}
