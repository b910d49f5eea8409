package pourwright.sheet.label;

import com.google.zxing.common.BitMatrix;
import pourwright.label.Symbol;

/** Something placed on a label; millimetres from its top left corner, y downwards. */
sealed interface Item {
  /** A run of words with its base line at {@code y}. */
  record Words(double x, double y, double sizeMm, boolean strong, boolean white, String text)
      implements Item {}

  /** A sign in a square box. */
  record Sign(double x, double y, double boxMm, Symbol symbol) implements Item {}

  /** A QR code with its quiet zone. */
  record Code(double x, double y, double sideMm, BitMatrix modules) implements Item {}

  /** A black bar. */
  record Bar(double x, double y, double widthMm, double heightMm) implements Item {}
}
