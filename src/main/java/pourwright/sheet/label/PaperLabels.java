package pourwright.sheet.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pourwright.label.LabelMinimum;
import pourwright.label.LabelStock;
import pourwright.label.LabelText;
import pourwright.quantity.OutOfRange;
import pourwright.work.LabelPrinter;

/** The printer of labels: SVG for the screen, PDF for paper, PNG for elsewhere. */
public final class PaperLabels implements LabelPrinter {
  @Override
  public Preview preview(LabelText label, double widthMm, double heightMm) {
    try {
      LabelSetting setting = LabelTooSmall.checked(label, widthMm, heightMm);
      return new Preview(
          LabelSvg.of(label, widthMm, heightMm),
          "",
          sizes(label, setting),
          smaller(label, setting));
    } catch (LabelTooSmall e) {
      return new Preview("", String.valueOf(e.getMessage()), List.of(), "");
    }
  }

  private static List<String> sizes(LabelText label, LabelSetting setting) {
    LabelMinimum least = label.minimum();
    List<String> sizes = new ArrayList<>();
    double letters = setting.bodyMm() * LabelFonts.shared().xHeight();
    sizes.add(of("a small x", letters, least.xHeightMm(), ""));
    if (setting.pictogramMm() > 0) {
      sizes.add(
          of(
              "side of a hazard sign",
              setting.pictogramMm(),
              least.pictogramMm(),
              least.pictogramWantedMm() > least.pictogramMm()
                  ? String.format(
                      Locale.ROOT, ", %.0f mm where possible", least.pictogramWantedMm())
                  : ""));
    }
    double net = Math.max(setting.bodyMm() * LabelFonts.shared().capHeight(), label.netHeightMm());
    sizes.add(of("letters of the net contents", net, label.netHeightMm(), ""));
    return sizes;
  }

  private static String of(String what, double set, double least, String more) {
    return String.format(Locale.ROOT, "%s: %.1f mm (at least %.1f mm%s)", what, set, least, more);
  }

  /** Hazard signs that fell to their least size: never without saying so. */
  private static String smaller(LabelText label, LabelSetting setting) {
    double wanted = label.minimum().pictogramWantedMm();
    if (setting.pictogramMm() <= 0 || setting.pictogramMm() >= wanted) {
      return "";
    }
    return String.format(
        Locale.ROOT,
        "the hazard signs had to be set at %.0f mm, %.0f mm are asked for where possible: take a"
            + " larger label, a tag or fewer languages",
        setting.pictogramMm(),
        wanted);
  }

  @Override
  public byte[] sheets(List<LabelText> labels, LabelStock stock) {
    try {
      return LabelPdf.sheets(labels, stock);
    } catch (LabelTooSmall e) {
      throw tooSmall(e);
    }
  }

  @Override
  public byte[] png(LabelText label, double widthMm, double heightMm, int dotsPerInch) {
    try {
      return LabelPng.of(label, widthMm, heightMm, dotsPerInch);
    } catch (LabelTooSmall e) {
      throw tooSmall(e);
    }
  }

  private static OutOfRange tooSmall(LabelTooSmall e) {
    return new OutOfRange(
        "label_height_mm", String.valueOf(e.getMessage()), "choose another size and try again");
  }
}
