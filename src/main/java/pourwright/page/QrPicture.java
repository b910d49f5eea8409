package pourwright.page;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/** A plain address as a QR code (ISO/IEC 18004), drawn as SVG for the screen. */
final class QrPicture {
  /** The light border that the standard asks for, modules. */
  private static final int QUIET = 4;

  private QrPicture() {}

  /** The drawing, dark on white in both looks, since readers want it so. */
  static String of(String address, String title) {
    ByteMatrix modules;
    try {
      modules = Encoder.encode(address, ErrorCorrectionLevel.M).getMatrix();
    } catch (WriterException e) {
      throw new IllegalArgumentException("too long for a QR code: " + address, e);
    }
    int side = modules.getWidth() + 2 * QUIET;
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < modules.getHeight(); y++) {
      for (int x = 0; x < modules.getWidth(); x++) {
        if (modules.get(x, y) == 1) {
          path.append('M').append(x + QUIET).append(' ').append(y + QUIET).append("h1v1h-1z");
        }
      }
    }
    return "<svg class=\"qr\" role=\"img\" viewBox=\"0 0 "
        + side
        + " "
        + side
        + "\"><title>"
        + title
        + "</title><rect class=\"qr-paper\" width=\""
        + side
        + "\" height=\""
        + side
        + "\"/><path class=\"qr-ink\" d=\""
        + path
        + "\"/></svg>";
  }
}
