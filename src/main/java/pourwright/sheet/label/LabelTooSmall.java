package pourwright.sheet.label;

import java.util.Locale;
import pourwright.label.LabelText;

/**
 * The text of a label does not fit at the least sizes: says how high the label would have to be.
 */
public final class LabelTooSmall extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private LabelTooSmall(String sentence) {
    super(sentence);
  }

  static LabelSetting checked(LabelText label, double widthMm, double heightMm) {
    LabelSetting setting = LabelSetting.of(label, widthMm, heightMm);
    if (!setting.fits()) {
      throw new LabelTooSmall(
          String.format(
              Locale.ROOT,
              "at the least letter height the text needs %.0f mm of height at %.0f mm of width and"
                  + " the label has %.0f: take a larger label, a tag or the box, or fewer languages",
              Math.ceil(setting.neededMm()),
              widthMm,
              heightMm));
    }
    return setting;
  }
}
