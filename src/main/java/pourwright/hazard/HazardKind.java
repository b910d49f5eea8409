package pourwright.hazard;

import java.util.List;

/** A hazard class without its category, in the short form of the classification tables. */
public enum HazardKind {
  ACUTE_TOX("Acute Tox.", "1 2 3 4"),
  SKIN_CORR("Skin Corr.", "1 1A 1B 1C"),
  SKIN_IRRIT("Skin Irrit.", "2"),
  EYE_DAM("Eye Dam.", "1"),
  EYE_IRRIT("Eye Irrit.", "2"),
  RESP_SENS("Resp. Sens.", "1 1A 1B"),
  SKIN_SENS("Skin Sens.", "1 1A 1B"),
  MUTA("Muta.", "1A 1B 2"),
  CARC("Carc.", "1A 1B 2"),
  REPR("Repr.", "1A 1B 2"),
  LACT("Lact.", ""),
  STOT_SE("STOT SE", "1 2 3"),
  STOT_RE("STOT RE", "1 2"),
  ASP_TOX("Asp. Tox.", "1"),
  FLAM_LIQ("Flam. Liq.", "1 2 3 4"),
  AQUATIC_ACUTE("Aquatic Acute", "1 2 3"),
  AQUATIC_CHRONIC("Aquatic Chronic", "1 2 3 4"),
  ED_HH("ED HH", "1 2"),
  ED_ENV("ED ENV", "1 2"),
  PBT("PBT", ""),
  VPVB("vPvB", ""),
  PMT("PMT", ""),
  VPVM("vPvM", ""),
  FLAM_SOL("Flam. Sol.", "1 2"),
  OX_LIQ("Ox. Liq.", "1 2 3"),
  OX_SOL("Ox. Sol.", "1 2 3"),
  SELF_HEAT("Self-heat.", "1 2"),
  MET_CORR("Met. Corr.", "1"),
  OZONE("Ozone", "1");

  private final String label;
  private final List<String> categories;

  HazardKind(String label, String categories) {
    this.label = label;
    this.categories = categories.isEmpty() ? List.of("") : List.of(categories.split(" ", -1));
  }

  /** The short form, for example {@code Skin Sens.}. */
  public String label() {
    return label;
  }

  /** The categories in use, the most severe numbering first; one empty text where there is none. */
  public List<String> categories() {
    return categories;
  }

  /** True for the properties of a whole mixture that only a test can tell. */
  public boolean isOnlyTested() {
    return ordinal() >= FLAM_SOL.ordinal() || this == FLAM_LIQ;
  }
}
