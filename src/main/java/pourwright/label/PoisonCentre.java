package pourwright.label;

import pourwright.hazard.Classification;

/**
 * Whether a mixture needs a notification to poison centres and a UFI on its label: when it is
 * classified for health or physical hazards (Regulation (EC) 1272/2008 Article 45 and Annex VIII).
 */
public final class PoisonCentre {
  private PoisonCentre() {}

  /** True when a UFI belongs on the label. */
  public static boolean asksForUfi(Classification found) {
    return found.hasHealthOrPhysicalHazard();
  }
}
