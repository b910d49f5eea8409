package pourwright.sheet.label;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import pourwright.label.LabelStock;
import pourwright.label.LabelText;

/** One label as a picture, at the dots per inch asked for. */
public final class LabelPng {
  private LabelPng() {}

  /**
   * The label as PNG.
   *
   * @throws LabelTooSmall when the text does not fit at the least sizes
   */
  public static byte[] of(LabelText label, double widthMm, double heightMm, int dotsPerInch) {
    byte[] pdf = LabelPdf.sheets(List.of(label), LabelStock.single(widthMm, heightMm));
    try (PDDocument document = Loader.loadPDF(pdf);
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      BufferedImage image =
          new PDFRenderer(document).renderImageWithDPI(0, dotsPerInch, ImageType.RGB);
      ImageIO.write(image, "png", out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
