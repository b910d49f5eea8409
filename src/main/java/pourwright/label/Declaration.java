package pourwright.label;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import pourwright.quantity.Check;

/**
 * The declaration of net contents in both systems, never more than there is: each is rounded down,
 * because the larger of the two is the one that is enforced. Conversion factors of 16 CFR 500.19;
 * letter heights of 16 CFR 500.21(b) by the area of the principal display panel.
 *
 * @param textUs for a label in the United States
 * @param textMetric for any other
 * @param typeHeightMm least height of the letters in the United States
 * @param typeHeightEuropeMm least height of the figures by Directive 76/211/EEC (from memory)
 * @param panelMm2 area of the panel
 */
public record Declaration(
    String textUs,
    String textMetric,
    double typeHeightMm,
    double typeHeightEuropeMm,
    double panelMm2) {
  private static final double OUNCES_IN_A_GRAM = 0.0352740;
  private static final double SQUARE_MM_IN_A_SQUARE_INCH = 645.16;
  private static final double MOLDED_IN_MORE_MM = 1.6;
  private static final double HAIR = 1e-9;

  /**
   * Declares a net mass.
   *
   * @param netG wax, fragrance and wick, without vessel, lid, label and wick tab; greater than 0
   * @param panel what the buyer sees first
   * @param moldedIn true when the letters are molded or embossed into the surface
   */
  public static Declaration of(double netG, Panel panel, boolean moldedIn) {
    Check.positive("net_g", netG);
    String metric = metric(netG);
    double height = typeHeight(panel.areaMm2()) + (moldedIn ? MOLDED_IN_MORE_MM : 0);
    return new Declaration(
        "NET WT " + avoirdupois(netG) + " (" + metric + ")",
        metric,
        height,
        typeHeightEurope(netG),
        panel.areaMm2());
  }

  /** Ounces below a pound, then whole pounds and ounces; two decimals at most, rounded down. */
  static String avoirdupois(double netG) {
    double hundredths = Math.floor(netG * OUNCES_IN_A_GRAM * 100 * (1 + HAIR));
    BigDecimal ounces = BigDecimal.valueOf(hundredths).movePointLeft(2);
    BigDecimal sixteen = BigDecimal.valueOf(16);
    if (ounces.compareTo(sixteen) < 0) {
      return text(ounces) + " OZ";
    }
    BigDecimal[] parts = ounces.divideAndRemainder(sixteen);
    String pounds = text(parts[0]) + " LB";
    return parts[1].signum() == 0 ? pounds : pounds + " " + text(parts[1]) + " OZ";
  }

  /** Three figures, rounded down; kilograms from 1,000 g. */
  static String metric(double netG) {
    boolean kilograms = netG * (1 + HAIR) >= 1000;
    double value = (kilograms ? netG / 1000 : netG) * (1 + HAIR);
    MathContext threeFigures = new MathContext(3, RoundingMode.DOWN);
    BigDecimal rounded = BigDecimal.valueOf(value).round(threeFigures);
    return text(rounded) + (kilograms ? " kg" : " g");
  }

  private static String text(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  /** Least height of letters for a panel, mm. */
  static double typeHeight(double areaMm2) {
    double squareInches = areaMm2 / SQUARE_MM_IN_A_SQUARE_INCH;
    if (squareInches <= 5) {
      return 1.6;
    }
    if (squareInches <= 25) {
      return 3.2;
    }
    if (squareInches <= 100) {
      return 4.8;
    }
    return squareInches <= 400 ? 6.4 : 12.7;
  }

  private static double typeHeightEurope(double netG) {
    if (netG <= 50) {
      return 2;
    }
    if (netG <= 200) {
      return 3;
    }
    return netG <= 1000 ? 4 : 6;
  }
}
