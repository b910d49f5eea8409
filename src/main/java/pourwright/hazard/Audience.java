package pourwright.hazard;

/** Who gets the mixture. */
public enum Audience {
  /** Anyone who walks in. */
  PUBLIC,
  /** Workshops and shops only. */
  TRADE
}
