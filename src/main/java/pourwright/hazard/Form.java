package pourwright.hazard;

/** What the mixture is as supplied, at room temperature. */
public enum Form {
  /** A candle or a wax melt. */
  SOLID,
  /** A fragrance oil or a liquid blend. */
  LIQUID
}
