package pourwright.sheet.label;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The two cuts that labels are set in, with their measures. */
final class LabelFonts {
  /** Path of the upright cut beside the program. */
  static final String REGULAR = "/fonts/DejaVuSansCondensed.ttf";

  /** Path of the bold cut. */
  static final String BOLD = "/fonts/DejaVuSansCondensed-Bold.ttf";

  private static final LabelFonts SHARED = new LabelFonts();

  private final TrueTypeFont regular = read(REGULAR);
  private final TrueTypeFont bold = read(BOLD);

  private LabelFonts() {}

  static LabelFonts shared() {
    return SHARED;
  }

  private static TrueTypeFont read(String path) {
    try (InputStream in = open(path)) {
      return new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static InputStream open(String path) {
    InputStream in = LabelFonts.class.getResourceAsStream(path);
    if (in == null) {
      throw new IllegalStateException("the font " + path + " is missing");
    }
    return in;
  }

  /** Width of a text, mm, for a font size in mm. */
  synchronized double width(String text, boolean strong, double sizeMm) {
    TrueTypeFont font = strong ? bold : regular;
    try {
      double units = 0;
      for (int i = 0; i < text.length(); ) {
        int point = text.codePointAt(i);
        units += font.getAdvanceWidth(font.getUnicodeCmapLookup().getGlyphId(point));
        i += Character.charCount(point);
      }
      return units / font.getUnitsPerEm() * sizeMm;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Height of a small x over the font size. */
  synchronized double xHeight() {
    return measure(true);
  }

  /** Height of a capital over the font size. */
  synchronized double capHeight() {
    return measure(false);
  }

  private double measure(boolean small) {
    try {
      int glyph = regular.getUnicodeCmapLookup().getGlyphId(small ? 'x' : 'H');
      double top = regular.getGlyph().getGlyph(glyph).getBoundingBox().getUpperRightY();
      return top / regular.getUnitsPerEm();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
