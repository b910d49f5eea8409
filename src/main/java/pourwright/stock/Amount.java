package pourwright.stock;

import pourwright.material.UnitKind;
import pourwright.quantity.Check;
import pourwright.quantity.Mass;

/**
 * How much of a material: a whole number of the small unit of its kind, so that a ledger's sums are
 * exact. Amounts of different kinds are never added.
 *
 * @param kind what is counted
 * @param units micrograms, nanolitres or pieces; negative for a movement out of stock
 */
public record Amount(UnitKind kind, long units) implements Comparable<Amount> {

  /** Nothing of a kind. */
  public static Amount none(UnitKind kind) {
    return new Amount(kind, 0);
  }

  /** The nearest amount to a number of grams. */
  public static Amount ofGrams(double grams) {
    return of(Mass.ofGrams(grams));
  }

  /** A mass as an amount. */
  public static Amount of(Mass mass) {
    return new Amount(UnitKind.MASS, mass.micrograms());
  }

  /** The nearest amount to a number of millilitres. */
  public static Amount ofMillilitres(double millilitres) {
    Check.between("volume_ml", millilitres, -9.0e12, 9.0e12);
    return new Amount(UnitKind.VOLUME, Math.round(millilitres * 1e6));
  }

  /** So many pieces. */
  public static Amount ofPieces(long pieces) {
    return new Amount(UnitKind.COUNT, pieces);
  }

  /** Grams, millilitres or pieces, for display and for the craft. */
  public double inUsualUnit() {
    return kind.fromSmall(units);
  }

  /** The usual unit's sign: g, ml or pcs. */
  public String usualUnit() {
    return kind.unit();
  }

  /** The mass, when this is one. */
  public Mass mass() {
    if (kind != UnitKind.MASS) {
      throw new IllegalStateException("an amount in " + kind.unit() + " is not a mass");
    }
    return new Mass(units);
  }

  /** The sum, exact. */
  public Amount plus(Amount other) {
    return new Amount(same(other), Math.addExact(units, other.units));
  }

  /** The difference, exact. */
  public Amount minus(Amount other) {
    return new Amount(same(other), Math.subtractExact(units, other.units));
  }

  /** The same amount the other way. */
  public Amount negated() {
    return new Amount(kind, Math.negateExact(units));
  }

  /** The smaller of the two. */
  public Amount min(Amount other) {
    same(other);
    return units <= other.units ? this : other;
  }

  /** True above zero. */
  public boolean isPositive() {
    return units > 0;
  }

  /** True below zero. */
  public boolean isNegative() {
    return units < 0;
  }

  /** True at zero. */
  public boolean isNone() {
    return units == 0;
  }

  @Override
  public int compareTo(Amount other) {
    same(other);
    return Long.compare(units, other.units);
  }

  private UnitKind same(Amount other) {
    if (kind != other.kind) {
      throw new IllegalArgumentException(
          "an amount in " + kind.unit() + " and one in " + other.kind.unit());
    }
    return kind;
  }
}
