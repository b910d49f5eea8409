package pourwright.sheet.label;

import com.google.zxing.common.BitMatrix;
import java.util.Locale;
import pourwright.label.LabelText;
import pourwright.label.Symbol;

/** One label as SVG, true to size: its width and height are in millimetres. */
public final class LabelSvg {
  private LabelSvg() {}

  /**
   * The label as a document of its own or to be put into a page.
   *
   * @throws LabelTooSmall when the text does not fit at the least sizes
   */
  public static String of(LabelText label, double widthMm, double heightMm) {
    LabelSetting setting = LabelTooSmall.checked(label, widthMm, heightMm);
    StringBuilder svg = new StringBuilder();
    svg.append(
        String.format(
            Locale.ROOT,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$.1fmm\" height=\"%2$.1fmm\""
                + " viewBox=\"0 0 %1$.1f %2$.1f\" role=\"img\" aria-label=\"Label\">"
                + "<rect width=\"%1$.1f\" height=\"%2$.1f\" fill=\"#ffffff\"/>",
            widthMm,
            heightMm));
    setting.items().forEach(item -> append(svg, item));
    return svg.append("</svg>").toString();
  }

  private static void append(StringBuilder svg, Item item) {
    if (item instanceof Item.Words words) {
      svg.append(
          String.format(
              Locale.ROOT,
              "<text x=\"%.3f\" y=\"%.3f\" font-size=\"%.3f\" textLength=\"%.3f\""
                  + " lengthAdjust=\"spacingAndGlyphs\" font-family=\"DejaVu Sans Condensed,"
                  + " sans-serif\" font-weight=\"%s\" fill=\"%s\">%s</text>",
              words.x(),
              words.y(),
              words.sizeMm(),
              LabelFonts.shared().width(words.text(), words.strong(), words.sizeMm()),
              words.strong() ? "700" : "400",
              words.white() ? "#ffffff" : "#000000",
              escaped(words.text())));
    } else if (item instanceof Item.Sign sign) {
      svg.append(
          String.format(
              Locale.ROOT,
              "<g transform=\"translate(%.3f %.3f) scale(%.5f)\">",
              sign.x(),
              sign.y(),
              sign.boxMm() / 100));
      sign.symbol().layers().forEach(l -> svg.append(Symbol.svg(l)));
      svg.append("</g>");
    } else if (item instanceof Item.Code code) {
      append(svg, code);
    } else if (item instanceof Item.Bar bar) {
      svg.append(
          String.format(
              Locale.ROOT,
              "<rect x=\"%.3f\" y=\"%.3f\" width=\"%.3f\" height=\"%.3f\" fill=\"#000000\"/>",
              bar.x(),
              bar.y(),
              bar.widthMm(),
              bar.heightMm()));
    }
  }

  private static void append(StringBuilder svg, Item.Code code) {
    BitMatrix modules = code.modules();
    double module = code.sideMm() / modules.getWidth();
    svg.append("<path fill=\"#000000\" d=\"");
    for (int row = 0; row < modules.getHeight(); row++) {
      for (int column = 0; column < modules.getWidth(); column++) {
        if (modules.get(column, row)) {
          svg.append(
              String.format(
                  Locale.ROOT,
                  "M%.3f %.3fh%.3fv%.3fh-%.3fz",
                  code.x() + column * module,
                  code.y() + row * module,
                  module,
                  module,
                  module));
        }
      }
    }
    svg.append("\"/>");
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
