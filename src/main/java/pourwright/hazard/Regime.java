package pourwright.hazard;

/** The rules by which a mixture is classified. */
public enum Regime {
  /** Regulation (EC) 1272/2008, European Union and Great Britain. */
  CLP("clp"),
  /** UN GHS; where it offers a choice of limits, the figure that the European rules chose. */
  GHS("ghs"),
  /** 29 CFR 1910.1200, workplaces in the United States: no aquatic classes. */
  HAZCOM("hazcom");

  private final String code;

  Regime(String code) {
    this.code = code;
  }

  /** The word used in headless documents. */
  public String code() {
    return code;
  }

  /** The regime of that word; one of {@code clp}, {@code ghs}, {@code hazcom}. */
  public static Regime of(String code) {
    for (Regime regime : values()) {
      if (regime.code.equals(code)) {
        return regime;
      }
    }
    throw new pourwright.quantity.OutOfRange(
        "regime", "'" + code + "' is not a regime", "use clp, ghs or hazcom");
  }
}
