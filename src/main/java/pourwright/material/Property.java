package pourwright.material;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * The properties of materials that calculators ask for, each with its unit in its name and the
 * range in which it can be true at all. A maker may write down others; their names must end in a
 * unit that is known here.
 */
public enum Property {
  /** Density of the particles without the air between them. */
  PARTICLE_DENSITY_G_PER_ML(0.05, 12),
  /** Density as scooped, air included. */
  BULK_DENSITY_G_PER_ML(0.02, 6),
  /** Density of a liquid, or of a melt at pouring heat. */
  DENSITY_G_PER_ML(0.4, 4),
  /** Density of a wax once set. */
  SET_DENSITY_G_PER_ML(0.6, 1.3),
  /** Density of a wax as it is poured. */
  HOT_DENSITY_G_PER_ML(0.5, 1.3),
  /** Share of a powder that is cement. */
  CEMENT_FRACTION(0, 1),
  /** Share of a liquid colour or latex that is not water. */
  SOLIDS_FRACTION(0, 1),
  /** Most pigment to the cement. */
  PIGMENT_MAX_OF_CEMENT_FRACTION(0, 1),
  /** Least water to the powder, by mass. */
  WATER_TO_POWDER_LOW(0, 3),
  /** Most water to the powder, by mass. */
  WATER_TO_POWDER_HIGH(0, 3),
  /** How long a mix can be poured, at 20 °C. */
  POT_LIFE_MIN(0.5, 1440),
  /** Flash point, closed cup where the sheet says so. */
  FLASH_POINT_C(-40, 400),
  /** Most of a fragrance in the whole candle, from its certificate. */
  FRAGRANCE_MAX_OF_TOTAL_FRACTION(0, 1),
  /** Legal or standard limit of a fragrance in the whole candle, as its certificate states it. */
  FRAGRANCE_LEGAL_MAX_OF_TOTAL_FRACTION(0, 1),
  /** Most fragrance a wax holds, on the total. */
  FRAGRANCE_HELD_OF_TOTAL_FRACTION(0, 1),
  /** Where a wax begins to melt. */
  MELT_FROM_C(20, 120),
  /** Where a wax is all liquid. */
  MELT_TO_C(20, 130),
  /** Heat of melting. */
  LATENT_J_PER_KG(1e4, 4e5),
  /** Conductivity of the solid. */
  CONDUCTIVITY_SOLID_W_PER_M_K(0.01, 10),
  /** Conductivity of the liquid. */
  CONDUCTIVITY_LIQUID_W_PER_M_K(0.01, 10),
  /** Heat capacity of the solid. */
  HEAT_CAPACITY_SOLID_J_PER_KG_K(100, 6000),
  /** Heat capacity of the liquid. */
  HEAT_CAPACITY_LIQUID_J_PER_KG_K(100, 6000),
  /** Heat given off when burnt, water as vapour. */
  HEAT_OF_COMBUSTION_J_PER_KG(1e7, 6e7),
  /** Conductivity of a hardened mix. */
  CONDUCTIVITY_W_PER_M_K(0.05, 5),
  /** Density of a hardened, dry mix. */
  HARDENED_DENSITY_KG_PER_M3(200, 4000),
  /** Heat capacity of a hardened, dry mix. */
  HEAT_CAPACITY_J_PER_KG_K(300, 2500),
  /** Share of black-body radiation given off. */
  EMISSIVITY(0, 1),
  /** Lowest temperature for stirring the fragrance in. */
  ADD_FRAGRANCE_FROM_C(30, 120),
  /** Highest temperature for stirring the fragrance in. */
  ADD_FRAGRANCE_TO_C(30, 130),
  /** Lowest pouring temperature. */
  POUR_FROM_C(25, 120),
  /** Highest pouring temperature. */
  POUR_TO_C(25, 130),
  /** Rest of a candle of this wax before test or sale. */
  REST_D(0, 60),
  /** Measured burn rate of a wick. */
  BURN_RATE_G_PER_H(0.2, 40),
  /** Length of a wick as bought. */
  LENGTH_MM(5, 1000),
  /** Height of a tab's neck: the wax left at the end. */
  NECK_HEIGHT_MM(0, 30),
  /** Diameter of a tab or sticker. */
  DIAMETER_MM(2, 100),
  /** Mass of one piece. */
  PIECE_MASS_G(0.001, 20000),
  /** Area covered by a litre of sealer in one coat. */
  COVERAGE_M2_PER_L(0.5, 40),
  /** Coats of a sealer. */
  COATS_COUNT(1, 10),
  /** Until a coat may be touched. */
  TOUCH_DRY_H(0, 240),
  /** Earliest next coat. */
  RECOAT_FROM_H(0, 240),
  /** Latest next coat. */
  RECOAT_TO_H(0, 720),
  /** Until a coat has its full strength. */
  FULL_DRY_D(0, 60),
  /** Where a sealer or sticker softens. */
  SOFTENS_C(20, 400),
  /** Part B to one part A by mass, of a two-part rubber. */
  B_TO_A_BY_MASS(0, 20),
  /** What a volume shrinks on setting, as a share of a length. */
  SHRINKAGE_FRACTION(0, 0.1);

  private static final List<String> UNITS =
      List.of(
          "_g_per_ml",
          "_kg_per_m3",
          "_g_per_h",
          "_w_per_m_k",
          "_j_per_kg_k",
          "_j_per_kg",
          "_m2_per_l",
          "_fraction",
          "_c",
          "_g",
          "_ml",
          "_mm",
          "_min",
          "_h",
          "_d",
          "_count");

  private final double low;
  private final double high;

  Property(double low, double high) {
    this.low = low;
    this.high = high;
  }

  /** The name as it is written in files, pages and headless documents. */
  public String written() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }

  /** Finds the property of that written name. */
  public static Optional<Property> named(String written) {
    return Arrays.stream(values()).filter(p -> p.written().equals(written)).findFirst();
  }

  /**
   * Checks a value against the range of its property; a name that is not known must end in a unit.
   *
   * @throws OutOfRange when the value cannot be, or the name says no unit
   */
  public static double check(String written, double value) {
    Optional<Property> known = named(written);
    if (known.isPresent()) {
      return Check.between(written, value, known.get().low, known.get().high);
    }
    if (UNITS.stream().noneMatch(written::endsWith) || !written.matches("[a-z][a-z0-9_]*")) {
      throw new OutOfRange(
          written,
          "'" + written + "' does not end in a unit",
          "write for instance particle_density_g_per_ml");
    }
    return Check.finite(written, value);
  }
}
