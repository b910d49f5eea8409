package pourwright.cast;

/**
 * What can be wrong with a casting, with its usual causes and what helps. In our own words; where a
 * published source stands behind it, it is named.
 */
public enum Defect {
  /** Source: Portland Cement Association; ACI 309.2R. */
  BUG_HOLES(
      "bug holes",
      "air held against the mold: a stiff or sticky mix, a fast pour, too much release",
      "pour in a thin stream from one point, tap in lifts, brush a face coat, thin the release"),
  /** Source: ACI 309.2R, from memory. */
  HONEYCOMB(
      "honeycomb",
      "a dry mix, sand too coarse for the wall, not packed",
      "finer sand, more paste, tamp"),
  /** Source: Uno (1998); NRMCA CIP 5. */
  CRACK(
      "crack",
      "a surface that dried before it set, a core that holds against shrinkage, or cooling fast",
      "cover at once, cool water, a softer core, fibre"),
  /** From memory. */
  CURL("curl", "one face dried faster than the other", "dry both faces alike, turn it"),
  /** Source: trade press on masonry, three conditions. */
  EFFLORESCENCE(
      "white bloom",
      "moisture carried lime to the face",
      "less water, dry evenly, brush it off dry and early"),
  /** From memory. */
  STREAK(
      "colour streak",
      "colour or water not mixed through, release unevenly thick",
      "stir the colour into the water first, mix longer"),
  /** From memory. */
  SOFT_CORNER(
      "soft corner",
      "too much water, demolded too early, or dried before it hardened",
      "less water, wait longer, keep it damp"),
  /** Source: NIST on joined pores, water to cement of 0.6 and more. */
  LEAK("leak", "joined pores or a hidden crack, no sealer", "less water, harden longer, seal"),
  /** From memory. */
  CHIP("chip", "demolded too early, or a sharp edge", "wait longer, round the edge to 1 or 2 mm");

  private final String words;
  private final String causes;
  private final String remedy;

  Defect(String words, String causes, String remedy) {
    this.words = words;
    this.causes = causes;
    this.remedy = remedy;
  }

  /** The name at the bench. */
  public String words() {
    return words;
  }

  /** What usually brings it about. */
  public String causes() {
    return causes;
  }

  /** What usually helps. */
  public String remedy() {
    return remedy;
  }

  /** Name of its reading: how many pieces had it. */
  public String reading() {
    return "defect_" + name().toLowerCase(java.util.Locale.ROOT) + "_count";
  }
}
