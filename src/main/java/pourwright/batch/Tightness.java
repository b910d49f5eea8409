package pourwright.batch;

/** What a vessel has been proved to hold, in rising order. */
public enum Tightness {
  /** Nothing proved. */
  NONE,
  /** Water for a day. */
  WATER,
  /** Scented wax at the highest load and pour temperature, looked at again after weeks. */
  WAX
}
