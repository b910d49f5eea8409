package pourwright.hazard;

/** A way into the body, with the unit of its acute toxicity estimate. */
enum Exposure {
  ORAL("oral", "oral", "mg/kg", 5000),
  DERMAL("dermal", "dermal", "mg/kg", 5000),
  VAPOUR("vapour", "inhalation", "mg/l", 20),
  DUST_MIST("dust_mist", "inhalation", "mg/l", 5);

  private final String code;
  private final String route;
  private final String unit;
  private final double noEffect;

  Exposure(String code, String route, String unit, double noEffect) {
    this.code = code;
    this.route = route;
    this.unit = unit;
    this.noEffect = noEffect;
  }

  String code() {
    return code;
  }

  String route() {
    return route;
  }

  String unit() {
    return unit;
  }

  /**
   * An estimate at or above this for mouth and skin, or above it for breathing, is a test without
   * effect.
   */
  boolean isWithoutEffect(double estimate) {
    return "mg/kg".equals(unit) ? estimate >= noEffect : estimate > noEffect;
  }
}
