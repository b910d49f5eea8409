package pourwright.material;

/** How a material is counted in stock, and the whole small unit its amounts are kept in. */
public enum UnitKind {
  /** By mass; amounts are whole micrograms. */
  MASS("g", 1_000_000),
  /** By volume; amounts are whole nanolitres. */
  VOLUME("ml", 1_000_000),
  /** By the piece; amounts are whole pieces. */
  COUNT("pcs", 1);

  private final String unit;
  private final long small;

  UnitKind(String unit, long small) {
    this.unit = unit;
    this.small = small;
  }

  /** The unit a person reads: g, ml or pcs. */
  public String unit() {
    return unit;
  }

  /** How many of the small units are in one of the unit a person reads. */
  public long smallUnitsPerUnit() {
    return small;
  }

  /**
   * The nearest whole amount in the small unit; pieces are rounded up, since half a wick is none.
   */
  public long toSmall(double amount) {
    return this == COUNT ? (long) Math.ceil(amount - 1e-9) : Math.round(amount * small);
  }

  /** The amount in the unit a person reads. */
  public double fromSmall(long amount) {
    return (double) amount / small;
  }
}
