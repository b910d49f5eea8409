package pourwright.sheet.label;

import com.google.zxing.common.BitMatrix;
import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.util.Matrix;
import pourwright.label.LabelStock;
import pourwright.label.LabelText;
import pourwright.label.Symbol;

/** Sheets of labels as PDF: fonts embedded, signs as paths, sizes as they are in millimetres. */
public final class LabelPdf {
  private static final double POINTS = 72 / 25.4;

  private final PDDocument document;
  private final PDType0Font regular;
  private final PDType0Font bold;

  private LabelPdf(PDDocument document) throws IOException {
    this.document = document;
    this.regular = font(LabelFonts.REGULAR);
    this.bold = font(LabelFonts.BOLD);
  }

  private PDType0Font font(String path) throws IOException {
    try (InputStream in = LabelFonts.open(path)) {
      return PDType0Font.load(document, in, true);
    }
  }

  /**
   * The labels one after the other on as many pages as they need.
   *
   * @throws LabelTooSmall when the text does not fit at the least sizes
   */
  public static byte[] sheets(List<LabelText> labels, LabelStock stock) {
    try (PDDocument document = new PDDocument();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      new LabelPdf(document).draw(labels, stock);
      document.getDocumentInformation().setTitle("Labels");
      document.save(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void draw(List<LabelText> labels, LabelStock stock) throws IOException {
    List<LabelStock.Spot> spots = stock.spots();
    for (int first = 0; first < labels.size(); first += spots.size()) {
      PDPage page =
          new PDPage(
              new PDRectangle(
                  (float) (stock.pageWidthMm() * POINTS), (float) (stock.pageHeightMm() * POINTS)));
      document.addPage(page);
      try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
        for (int i = 0; i < spots.size() && first + i < labels.size(); i++) {
          LabelText label = labels.get(first + i);
          LabelSetting setting =
              LabelTooSmall.checked(label, stock.labelWidthMm(), stock.labelHeightMm());
          draw(stream, setting, spots.get(i), stock);
        }
      }
    }
  }

  private void draw(
      PDPageContentStream stream, LabelSetting setting, LabelStock.Spot spot, LabelStock stock)
      throws IOException {
    stream.saveGraphicsState();
    // millimetres from the label's top left corner, y downwards
    stream.transform(
        new Matrix(
            (float) POINTS,
            0,
            0,
            (float) -POINTS,
            (float) (spot.xMm() * POINTS),
            (float) ((stock.pageHeightMm() - spot.yMm()) * POINTS)));
    if (stock.columns() * stock.rows() > 1) {
      outline(stream, setting);
    }
    for (Item item : setting.items()) {
      draw(stream, item);
    }
    stream.restoreGraphicsState();
  }

  private static void outline(PDPageContentStream stream, LabelSetting setting) throws IOException {
    stream.setStrokingColor(new Color(0xBB, 0xBB, 0xBB));
    stream.setLineWidth(0.1f);
    stream.addRect(0, 0, (float) setting.widthMm(), (float) setting.heightMm());
    stream.stroke();
  }

  private void draw(PDPageContentStream stream, Item item) throws IOException {
    if (item instanceof Item.Words words) {
      words(stream, words);
    } else if (item instanceof Item.Sign sign) {
      sign(stream, sign);
    } else if (item instanceof Item.Code code) {
      code(stream, code);
    } else if (item instanceof Item.Bar bar) {
      stream.setNonStrokingColor(Color.BLACK);
      stream.addRect(
          (float) bar.x(), (float) bar.y(), (float) bar.widthMm(), (float) bar.heightMm());
      stream.fill();
    }
  }

  private void words(PDPageContentStream stream, Item.Words words) throws IOException {
    stream.beginText();
    stream.setNonStrokingColor(words.white() ? Color.WHITE : Color.BLACK);
    stream.setFont(words.strong() ? bold : regular, (float) words.sizeMm());
    stream.setTextMatrix(new Matrix(1, 0, 0, -1, (float) words.x(), (float) words.y()));
    stream.showText(words.text());
    stream.endText();
  }

  private static void sign(PDPageContentStream stream, Item.Sign sign) throws IOException {
    stream.saveGraphicsState();
    float scale = (float) (sign.boxMm() / 100);
    stream.transform(new Matrix(scale, 0, 0, scale, (float) sign.x(), (float) sign.y()));
    stream.setLineCapStyle(1);
    stream.setLineJoinStyle(1);
    for (Symbol.Layer layer : sign.symbol().layers()) {
      for (PathReader.Step step : PathReader.steps(layer.path())) {
        step(stream, step);
      }
      Color colour = Color.decode(layer.colour());
      if (layer.strokeWidth() > 0) {
        stream.setStrokingColor(colour);
        stream.setLineWidth((float) layer.strokeWidth());
        stream.stroke();
      } else {
        stream.setNonStrokingColor(colour);
        stream.fill();
      }
    }
    stream.restoreGraphicsState();
  }

  private static void step(PDPageContentStream stream, PathReader.Step step) throws IOException {
    double[] p = step.xy();
    switch (step.letter()) {
      case 'M' -> stream.moveTo((float) p[0], (float) p[1]);
      case 'L' -> stream.lineTo((float) p[0], (float) p[1]);
      case 'C' ->
          stream.curveTo(
              (float) p[0], (float) p[1], (float) p[2], (float) p[3], (float) p[4], (float) p[5]);
      default -> stream.closePath();
    }
  }

  private static void code(PDPageContentStream stream, Item.Code code) throws IOException {
    BitMatrix modules = code.modules();
    double module = code.sideMm() / modules.getWidth();
    stream.setNonStrokingColor(Color.BLACK);
    for (int row = 0; row < modules.getHeight(); row++) {
      for (int column = 0; column < modules.getWidth(); column++) {
        if (modules.get(column, row)) {
          stream.addRect(
              (float) (code.x() + column * module),
              (float) (code.y() + row * module),
              (float) module,
              (float) module);
        }
      }
    }
    stream.fill();
  }
}
