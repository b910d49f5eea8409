package pourwright.sheet.label;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pourwright.label.LabelText;
import pourwright.label.Symbol;
import pourwright.label.Symbols;

/**
 * One label set into its size: as large as it fits, never smaller than the least sizes.
 *
 * @param widthMm of the label
 * @param heightMm of the label
 * @param items in the order of painting
 * @param bodyMm font size of the text, mm
 * @param pictogramMm side of the hazard squares, 0 without any
 * @param neededMm height that the text needs at the least sizes
 */
record LabelSetting(
    double widthMm,
    double heightMm,
    List<Item> items,
    double bodyMm,
    double pictogramMm,
    double neededMm) {
  private static final double EDGE = 2.5;

  /** Rounding in the file must not make a sign smaller than its least size. */
  private static final double HAIR = 0.02;

  private static final double LINE = 1.2;
  private static final double SIGN_MM = 7;
  private static final double QR_MM = 15;
  private static final double[] SCALES = {1.6, 1.45, 1.3, 1.2, 1.1, 1.05, 1.0};

  /** True when everything stands within the label. */
  boolean fits() {
    return neededMm <= heightMm + 1e-6;
  }

  /** Sets a label at the largest scale that fits, at the least one otherwise. */
  static LabelSetting of(LabelText label, double widthMm, double heightMm) {
    double wanted = label.minimum().pictogramWantedMm();
    LabelSetting last = null;
    for (double side : new double[] {wanted, label.minimum().pictogramMm()}) {
      for (double scale : SCALES) {
        last = new Setter(label, widthMm, heightMm, scale, side).set();
        if (last.fits()) {
          return last;
        }
      }
    }
    return last == null ? new Setter(label, widthMm, heightMm, 1, wanted).set() : last;
  }

  /** Does the placing for one scale. */
  private static final class Setter {
    private final LabelText label;
    private final double width;
    private final double height;
    private final double body;
    private final double side;
    private final List<Item> items = new ArrayList<>();
    private double y = EDGE;
    private double besideX;
    private double besideUntil;

    Setter(LabelText label, double width, double height, double scale, double side) {
      this.label = label;
      this.width = width;
      this.height = height;
      this.side = side;
      this.body = scale * label.minimum().xHeightMm() / LabelFonts.shared().xHeight();
    }

    LabelSetting set() {
      banner();
      title();
      pictograms();
      if (!label.signalWord().isEmpty()) {
        paragraph(label.signalWord(), body * 1.35, true);
      }
      label.paragraphs().forEach(p -> paragraph(p, body, false));
      y = Math.max(y, besideUntil);
      double footer = footerHeight();
      double needed = y + footer + EDGE;
      footer(Math.max(y, height - EDGE - footer));
      boolean any = !label.pictograms().isEmpty();
      return new LabelSetting(width, height, items, body, any ? side : 0, needed);
    }

    private void banner() {
      if (label.banner().isEmpty()) {
        return;
      }
      List<String> lines = wrap(label.banner(), body * 1.2, true, width - 2 * EDGE);
      double high = lines.size() * body * 1.2 * LINE + 1.6;
      items.add(new Item.Bar(0, 0, width, high));
      double line = 0.8;
      for (String text : lines) {
        line += body * 1.2;
        items.add(new Item.Words(EDGE, line, body * 1.2, true, true, text));
        line += body * 1.2 * (LINE - 1);
      }
      y = high + 1;
    }

    private void title() {
      paragraph(label.title(), body * 1.9, true);
      if (!label.subtitle().isBlank()) {
        paragraph(label.subtitle(), body * 1.2, false);
      }
    }

    private void pictograms() {
      double box = (side + HAIR) * Math.sqrt(2);
      double x = EDGE;
      double top = y;
      for (String code : label.pictograms()) {
        Symbol symbol = Symbols.of(code);
        if (symbol == null) {
          continue;
        }
        if (x > EDGE && x + box > width - EDGE) {
          x = EDGE;
          top += box + 0.5;
        }
        items.add(new Item.Sign(x, top, box, symbol));
        x += box + 0.5;
        besideUntil = top + box;
      }
      boolean oneRow = top == y;
      boolean roomBeside = oneRow && width - EDGE - x > 14;
      if (!label.pictograms().isEmpty() && roomBeside) {
        besideX = x + 0.8;
      } else if (!label.pictograms().isEmpty()) {
        y = besideUntil + 0.5;
        besideUntil = 0;
      }
    }

    private void paragraph(String text, double size, boolean strong) {
      String rest = text;
      while (!rest.isEmpty()) {
        boolean beside = y < besideUntil;
        double left = beside ? besideX : EDGE;
        String line = wrap(rest, size, strong, width - EDGE - left).get(0);
        y += size;
        items.add(new Item.Words(left, y, size, strong, false, line));
        y += size * (LINE - 1);
        rest = rest.substring(line.length()).strip();
      }
      y += size * 0.25;
    }

    private double footerHeight() {
      double maker = maker().size() * body * LINE;
      double left = SIGN_MM + 1 + maker;
      return Math.max(left, QR_MM) + netSize() * LINE + 1;
    }

    private double netSize() {
      return Math.max(body, label.netHeightMm() / LabelFonts.shared().capHeight());
    }

    private void footer(double top) {
      double x = EDGE;
      for (String name : label.symbols()) {
        Symbol symbol = Symbols.of(name);
        if (symbol != null) {
          items.add(new Item.Sign(x, top, SIGN_MM, symbol));
          x += SIGN_MM + 0.6;
        }
      }
      double line = top + SIGN_MM + 1;
      for (String text : maker()) {
        line += body;
        items.add(new Item.Words(EDGE, line, body, false, false, text));
        line += body * (LINE - 1);
      }
      items.add(new Item.Code(width - EDGE - QR_MM + 1, top, QR_MM, code(label.link())));
      double base = top + footerHeight() - 1;
      items.add(new Item.Words(EDGE, base, netSize(), true, false, label.netContents()));
      double mark = LabelFonts.shared().width(label.mark(), false, body);
      items.add(new Item.Words(width - EDGE - mark, base, body, false, false, label.mark()));
    }

    /** Who answers for it, beside the code: a line too long is broken, never cut. */
    private List<String> maker() {
      double room = width - 2 * EDGE - QR_MM;
      List<String> lines = new ArrayList<>();
      for (String text : label.maker()) {
        boolean whole = LabelFonts.shared().width(text, false, body) <= room;
        for (String part : whole ? List.of(text) : List.of(text.split(" · ", -1))) {
          lines.addAll(wrap(part, body, false, room));
        }
      }
      return lines;
    }
  }

  static BitMatrix code(String link) {
    try {
      return new QRCodeWriter()
          .encode(
              link.isEmpty() ? " " : link,
              BarcodeFormat.QR_CODE,
              0,
              0,
              Map.of(
                  EncodeHintType.MARGIN,
                  4,
                  EncodeHintType.ERROR_CORRECTION,
                  ErrorCorrectionLevel.M));
    } catch (WriterException e) {
      throw new IllegalStateException("the address is too long for a QR code: " + link, e);
    }
  }

  /** Lines of a text for a width; a word wider than the line is broken. */
  static List<String> wrap(String text, double sizeMm, boolean strong, double roomMm) {
    LabelFonts fonts = LabelFonts.shared();
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (fonts.width(longer, strong, sizeMm) <= roomMm) {
        line.setLength(0);
        line.append(longer);
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line.toString());
      }
      String rest = word;
      while (rest.length() > 1 && fonts.width(rest, strong, sizeMm) > roomMm) {
        int end = rest.length();
        while (end > 1 && fonts.width(rest.substring(0, end), strong, sizeMm) > roomMm) {
          end--;
        }
        lines.add(rest.substring(0, end));
        rest = rest.substring(end);
      }
      line.setLength(0);
      line.append(rest);
    }
    if (!line.isEmpty() || lines.isEmpty()) {
      lines.add(line.toString());
    }
    return lines;
  }
}
