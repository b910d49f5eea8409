package pourwright.hazard;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What only a liquid can be: flammable by its flash point, and a hazard when breathed in. */
final class Liquids {
  private static final double BOILS_LOW_C = 35;
  private static final double FLASH_LOW_C = 23;
  private static final double FLASH_HIGH_C = 60;
  private static final double FLASH_HAZCOM_C = 93;
  private static final double THIN_MM2_PER_S = 20.5;
  private static final Finding.Rule FLASH =
      new Finding.Rule("Annex I Table 2.6.1", "Regulation (EC) 1272/2008", "from memory");

  private Liquids() {}

  static @Nullable Finding flammable(
      Mixture mixture, Composition composition, List<String> warnings) {
    if (mixture.form() == Form.SOLID) {
      return null;
    }
    Double flash = mixture.tested().flashPointC();
    if (flash == null) {
      boolean burns =
          composition.substances().stream()
              .flatMap(i -> i.classes().stream())
              .anyMatch(c -> c.kind() == HazardKind.FLAM_LIQ);
      if (burns) {
        warnings.add(
            "the flash point of the liquid is not given, so flammability is not judged; it cannot"
                + " be worked out from the substances");
      }
      return null;
    }
    String category = category(mixture, flash, warnings);
    HazardClass result = category.isEmpty() ? null : HazardClass.of(HazardKind.FLAM_LIQ, category);
    double limit = flash < FLASH_LOW_C ? FLASH_LOW_C : FLASH_HIGH_C;
    return new Finding(
        "flammable liquid",
        result,
        List.of(),
        flash,
        limit,
        "",
        FLASH,
        (result == null ? "no flammable liquid" : result.code())
            + ": flash point "
            + Percent.plain(flash)
            + " °C, closed cup");
  }

  private static String category(Mixture mixture, double flash, List<String> warnings) {
    if (flash < FLASH_LOW_C) {
      Double boils = mixture.tested().boilingPointC();
      if (boils == null) {
        warnings.add("where boiling begins is not given, so the stricter category 1 was taken");
      }
      return boils == null || boils <= BOILS_LOW_C ? "1" : "2";
    }
    if (flash <= FLASH_HIGH_C) {
      return "3";
    }
    return mixture.regime() != Regime.CLP && flash <= FLASH_HAZCOM_C ? "4" : "";
  }

  static @Nullable Finding aspiration(
      Mixture mixture, Composition composition, List<String> warnings) {
    Double thickness = mixture.tested().viscosityMm2PerS();
    boolean thick = thickness != null && thickness > THIN_MM2_PER_S;
    if (mixture.form() == Form.SOLID || thick) {
      return null;
    }
    Finding finding = Sums.judge(mixture.regime(), List.of("aspiration"), composition, warnings);
    if (finding != null && finding.result() != null && thickness == null) {
      warnings.add(
          "the viscosity at 40 °C is not given, so the liquid is taken as thin; above 20.5 mm²/s it"
              + " would not be Asp. Tox. 1");
    }
    return finding;
  }
}
