package pourwright.label;

import java.util.ArrayList;
import java.util.List;

/** What carries the label; stone sheds stickers. */
public enum Carrier {
  /** A sticker on a smooth, sealed face. */
  STICKER("sticker"),
  /** A tag tied to the vessel (Regulation (EC) 1272/2008 Annex I 1.5.1). */
  TAG("tag"),
  /** A disc under the base. */
  BASE("base"),
  /** The box. */
  BOX("box"),
  /** A band around the vessel. */
  BAND("band");

  private final String word;

  Carrier(String word) {
    this.word = word;
  }

  /** The word for it. */
  public String word() {
    return word;
  }

  /**
   * What speaks against a label of that size on this carrier, in words; empty when nothing does.
   *
   * @param widthMm of the label
   * @param heightMm of the label
   * @param least for the package
   * @param classified true when the mixture is classified, so that the least sizes are law
   */
  public List<String> findings(
      double widthMm, double heightMm, LabelMinimum least, boolean classified) {
    List<String> findings = new ArrayList<>();
    double longSide = Math.max(widthMm, heightMm);
    double shortSide = Math.min(widthMm, heightMm);
    boolean small = shortSide < least.labelWidthMm() || longSide < least.labelHeightMm();
    if (classified && small) {
      findings.add(
          "the label is "
              + size(widthMm, heightMm)
              + " mm; for this package it should be at least "
              + size(least.labelWidthMm(), least.labelHeightMm())
              + " mm where possible: use a tag, a band or the box, or fold it out");
    }
    if (this == STICKER) {
      findings.add("stone sheds stickers: only on a sealed, smooth face, tried for a week first");
    }
    if (this == BASE && classified) {
      findings.add(
          "under the base it cannot be read when the candle stands: signal word, pictograms and"
              + " statements belong on a tag, a band or the box as well");
    }
    return findings;
  }

  private static String size(double width, double height) {
    return Amounts.plain(width) + " × " + Amounts.plain(height);
  }
}
