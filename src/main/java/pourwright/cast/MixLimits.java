package pourwright.cast;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pourwright.quantity.Check;

/** What the trade would say about a mix, as sentences; an empty list when nothing is to be said. */
public final class MixLimits {
  /** Most dry pigment to the cement. Source: ASTM C979, the prescribed dose at most. */
  public static final double PIGMENT_OF_CEMENT = 0.10;

  /** Most polymer solids to the cement. Source: ACI 548.3R, 10 to 20 % is common. */
  public static final double POLYMER_OF_CEMENT = 0.20;

  /** Least and most water to the cement. House, after the handbooks of the trade. */
  private static final double WATER_OF_CEMENT_LOW = 0.20;

  private static final double WATER_OF_CEMENT_HIGH = 1.0;

  /** Pores of a portland paste stay joined from here. Source: Bentz and Garboczi, NIST. */
  private static final double PORES_STAY_JOINED = 0.60;

  private MixLimits() {}

  /** Most dry pigment for so much cement, in g. Source: ASTM C979. */
  public static double pigmentMostG(double cementG) {
    return PIGMENT_OF_CEMENT * Check.notNegative("cement_g", cementG);
  }

  /** All warnings for a mix and the amounts made of it. */
  public static List<String> warnings(Mix mix, MixAmounts amounts) {
    List<String> said = new ArrayList<>();
    pigment(mix, amounts, said);
    polymer(mix, amounts, said);
    water(mix, said);
    return said;
  }

  private static void pigment(Mix mix, MixAmounts amounts, List<String> said) {
    double perPowder = mix.pigmentPerPowder();
    if (perPowder == 0) {
      return;
    }
    Double cement = mix.powder().cementFraction();
    if (cement == null) {
      said.add(
          "The pigment limit is on the cement, and how much of this powder is cement is not known:"
              + " read it on the powder's sheet.");
    } else if (cement == 0) {
      said.add("This powder holds no cement; the pigment's limit is the supplier's to say.");
    } else if (amounts.of(mix, Addition.Kind.PIGMENT)
        > pigmentMostG(cement * amounts.powderG()) * (1 + 1e-9)) {
      said.add(
          String.format(
              Locale.ROOT,
              "Pigment is %.1f %% of the cement; at most %.0f %% is usual (ASTM C979).",
              100 * perPowder / cement,
              100 * PIGMENT_OF_CEMENT));
    }
  }

  private static void polymer(Mix mix, MixAmounts amounts, List<String> said) {
    LiquidColour liquid = mix.liquid();
    Double cement = mix.powder().cementFraction();
    double solids = liquid == null ? 0 : amounts.liquidG() * liquid.solidsFraction();
    double along = mix.additions().stream().mapToDouble(Addition::polymerPerPowder).sum();
    double base = cement == null || cement == 0 ? 1 : cement;
    double share = (solids / amounts.powderG() + along) / base;
    if (share > POLYMER_OF_CEMENT) {
      said.add(
          String.format(
              Locale.ROOT,
              "The liquid colour's solids are %.0f %% of the %s; 10 to 20 %% is common, more"
                  + " softens the casting.",
              100 * share,
              cement == null || cement == 0 ? "powder" : "cement"));
    }
  }

  private static void water(Mix mix, List<String> said) {
    double ratio = mix.waterToPowder();
    Double low = mix.powder().waterLow();
    Double high = mix.powder().waterHigh();
    if (low != null && ratio < low * (1 - 1e-9)) {
      said.add(outside(ratio, "less", low));
    }
    if (high != null && ratio > high * (1 + 1e-9)) {
      said.add(outside(ratio, "more", high));
    }
    Double ofCement = mix.waterToCement();
    if (ofCement == null) {
      return;
    }
    if (ofCement < WATER_OF_CEMENT_LOW || ofCement > WATER_OF_CEMENT_HIGH) {
      said.add(
          String.format(
              Locale.ROOT,
              "Water is %.2f of the cement; from %.2f to %.2f is usual.",
              ofCement,
              WATER_OF_CEMENT_LOW,
              WATER_OF_CEMENT_HIGH));
    } else if (ofCement >= PORES_STAY_JOINED) {
      said.add(
          String.format(
              Locale.ROOT,
              "Water is %.2f of the cement: from 0.60 on the pores of a portland casting stay joined"
                  + " and it leaks without a sealer.",
              ofCement));
    }
  }

  private static String outside(double ratio, String which, double limit) {
    return String.format(
        Locale.ROOT,
        "Water is %.3f of the powder, %s than the %.3f of the powder's sheet.",
        ratio,
        which,
        limit);
  }
}
