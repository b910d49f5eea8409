package pourwright.stock;

/** What a material is counted in: whole numbers of a unit too small for any workshop scale. */
public enum UnitKind {
  /** Mass, in micrograms. */
  MASS("µg"),
  /** Volume, in nanolitres. */
  VOLUME("nl"),
  /** Pieces, in ones: wicks, tins, boxes. */
  COUNT("pieces");

  private final String smallUnit;

  UnitKind(String smallUnit) {
    this.smallUnit = smallUnit;
  }

  /** The small unit's sign. */
  public String smallUnit() {
    return smallUnit;
  }
}
