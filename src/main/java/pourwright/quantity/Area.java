package pourwright.quantity;

/**
 * An area as a whole number of square micrometres.
 *
 * @param squareMicrometres not negative but for differences
 */
public record Area(long squareMicrometres) implements Comparable<Area> {

  /** None. */
  public static final Area ZERO = new Area(0);

  /** The nearest whole amount to a finite number of square millimetres. */
  public static Area ofSquareMillimetres(double squareMillimetres) {
    Check.between("area_mm2", squareMillimetres, -9.0e18 / 1e6, 9.0e18 / 1e6);
    return new Area(Math.round(squareMillimetres * 1e6));
  }

  /** Square millimetres, for kernels and display. */
  public double squareMillimetres() {
    return squareMicrometres / 1e6;
  }

  /** The sum, exact. */
  public Area plus(Area other) {
    return new Area(Math.addExact(squareMicrometres, other.squareMicrometres));
  }

  /** The difference, exact. */
  public Area minus(Area other) {
    return new Area(Math.subtractExact(squareMicrometres, other.squareMicrometres));
  }

  @Override
  public int compareTo(Area other) {
    return Long.compare(squareMicrometres, other.squareMicrometres);
  }
}
