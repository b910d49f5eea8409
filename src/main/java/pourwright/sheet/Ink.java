package pourwright.sheet;

import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.multipdf.LayerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.util.Matrix;
import org.jspecify.annotations.Nullable;

/** A pen on paper: millimetres from the top left corner, two embedded faces, four colours. */
final class Ink implements AutoCloseable {
  /** Text and outlines. */
  static final Color SLATE = new Color(0x2b, 0x34, 0x3a);

  /** What stands back: rules, captions. */
  static final Color DUST = new Color(0x74, 0x7d, 0x82);

  /** A cast slab: light areas. */
  static final Color SLAB = new Color(0xec, 0xeb, 0xe7);

  /** The one warm colour. */
  static final Color EMBER = new Color(0xb8, 0x55, 0x1f);

  /** Wax. */
  static final Color WAX = new Color(0xf3, 0xe3, 0xc7);

  private static final double POINTS_PER_MM = 72 / 25.4;

  private final PDDocument document = new PDDocument();
  private final PDType0Font plain;
  private final PDType0Font bold;
  private final Paper paper;
  private @Nullable PDPageContentStream stream;

  Ink(Paper paper) {
    this.paper = paper;
    this.plain = font("/fonts/DejaVuSansCondensed.ttf");
    this.bold = font("/fonts/DejaVuSansCondensed-Bold.ttf");
  }

  private PDType0Font font(String name) {
    try (InputStream in = Ink.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the font " + name + " is missing from the program");
      }
      return PDType0Font.load(document, in, true);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Paper paper() {
    return paper;
  }

  int pages() {
    return document.getNumberOfPages();
  }

  void title(String title) {
    document.getDocumentInformation().setTitle(title);
    document.getDocumentInformation().setCreator("Pourwright");
  }

  /** Turns to a new page. */
  void page() {
    run(
        () -> {
          closeStream();
          PDPage page =
              new PDPage(new PDRectangle(points(paper.widthMm()), points(paper.heightMm())));
          document.addPage(page);
          stream = new PDPageContentStream(document, page);
        });
  }

  /** Goes back to a page to add to it; pages count from 0. */
  void onPage(int number) {
    run(
        () -> {
          closeStream();
          stream =
              new PDPageContentStream(document, document.getPage(number), AppendMode.APPEND, true);
        });
  }

  private void closeStream() throws IOException {
    if (stream != null) {
      stream.close();
      stream = null;
    }
  }

  private PDPageContentStream out() {
    if (stream == null) {
      throw new IllegalStateException("no page is open");
    }
    return stream;
  }

  private static float points(double mm) {
    return (float) (mm * POINTS_PER_MM);
  }

  private float up(double yMm) {
    return points(paper.heightMm() - yMm);
  }

  /** A way of writing: size in points, face, colour. */
  record Pen(double size, boolean isBold, Color color) {
    static final Pen BODY = new Pen(9, false, SLATE);
    static final Pen STRONG = new Pen(9, true, SLATE);
    static final Pen SMALL = new Pen(7.5, false, DUST);
    static final Pen HEAD = new Pen(16, true, SLATE);
    static final Pen NUMERAL = new Pen(23, true, SLATE);
    static final Pen WARM = new Pen(9, true, EMBER);
  }

  /** Width of a text, in mm. */
  double width(String text, Pen pen) {
    try {
      return face(pen).getStringWidth(known(text, pen)) / 1000 * pen.size() / POINTS_PER_MM;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private PDType0Font face(Pen pen) {
    return pen.isBold() ? bold : plain;
  }

  /** The text with what the face cannot draw as a question mark. */
  private String known(String text, Pen pen) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              String one = new String(Character.toChars(c));
              try {
                face(pen).encode(one);
                out.append(Character.isISOControl(c) ? " " : one);
              } catch (IllegalArgumentException e) {
                out.append('?');
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            });
    return out.toString();
  }

  /** Writes from a point on the base line to the right. */
  void text(double xMm, double yMm, String text, Pen pen) {
    run(
        () -> {
          out().beginText();
          out().setFont(face(pen), (float) pen.size());
          out().setNonStrokingColor(pen.color());
          out().newLineAtOffset(points(xMm), up(yMm));
          out().showText(known(text, pen));
          out().endText();
        });
  }

  /** Writes so that the text ends at a point. */
  void right(double xMm, double yMm, String text, Pen pen) {
    text(xMm - width(text, pen), yMm, text, pen);
  }

  /** Writes no wider than given; what does not fit ends in three dots. */
  void within(double xMm, double yMm, double widthMm, String text, Pen pen) {
    String shown = text;
    while (shown.length() > 1
        && width(shown + (shown.equals(text) ? "" : "\u2026"), pen) > widthMm) {
      shown = shown.substring(0, shown.length() - 1);
    }
    text(xMm, yMm, shown.equals(text) ? text : shown.stripTrailing() + "\u2026", pen);
  }

  /**
   * Writes no wider than given, smaller where it must be: for what may not be cut off, as a date.
   */
  void fitting(double xMm, double yMm, double widthMm, String text, Pen pen) {
    double wide = width(text, pen);
    double size = wide <= widthMm ? pen.size() : pen.size() * widthMm / wide;
    text(xMm, yMm, text, new Pen(size, pen.isBold(), pen.color()));
  }

  /** Writes lines broken at blanks; returns where the next base line would be. */
  double wrapped(double xMm, double yMm, double widthMm, String text, Pen pen) {
    double y = yMm;
    for (String line : lines(widthMm, text, pen)) {
      text(xMm, y, line, pen);
      y += lineMm(pen);
    }
    return y;
  }

  /** From one line of wrapped text to the next, in mm. */
  static double lineMm(Pen pen) {
    return pen.size() * 0.46;
  }

  /** The lines of a text that is not to be wider; at least one. */
  List<String> lines(double widthMm, String text, Pen pen) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && width(longer, pen) > widthMm) {
        lines.add(line.toString());
        line.setLength(0);
        line.append(word);
      } else {
        line.setLength(0);
        line.append(longer);
      }
    }
    lines.add(line.toString());
    return lines;
  }

  /** A straight line. */
  void line(double x1, double y1, double x2, double y2, double widthMm, Color color) {
    run(
        () -> {
          out().setStrokingColor(color);
          out().setLineWidth(points(widthMm));
          out().moveTo(points(x1), up(y1));
          out().lineTo(points(x2), up(y2));
          out().stroke();
        });
  }

  /** A filled rectangle. */
  void fill(double x, double y, double width, double height, Color color) {
    run(
        () -> {
          out().setNonStrokingColor(color);
          out().addRect(points(x), up(y + height), points(width), points(height));
          out().fill();
        });
  }

  /** An empty rectangle. */
  void frame(double x, double y, double width, double height, double lineMm, Color color) {
    run(
        () -> {
          out().setStrokingColor(color);
          out().setLineWidth(points(lineMm));
          out().addRect(points(x), up(y + height), points(width), points(height));
          out().stroke();
        });
  }

  /** A filled polygon of points x, y. */
  void polygon(double[][] corners, Color fill, Color edge, double lineMm) {
    run(
        () -> {
          out().setNonStrokingColor(fill);
          out().setStrokingColor(edge);
          out().setLineWidth(points(lineMm));
          out().moveTo(points(corners[0][0]), up(corners[0][1]));
          for (int i = 1; i < corners.length; i++) {
            out().lineTo(points(corners[i][0]), up(corners[i][1]));
          }
          out().closePath();
          out().fillAndStroke();
        });
  }

  /** A box to tick. */
  void tick(double x, double y) {
    frame(x, y - 3.1, 3.4, 3.4, 0.25, SLATE);
  }

  /** Lays the first page of another PDF down, its top left corner at a point, true to size. */
  void lay(byte[] pdf, double xMm, double yMm) {
    run(
        () -> {
          try (PDDocument other = Loader.loadPDF(pdf)) {
            float high = other.getPage(0).getMediaBox().getHeight();
            PDFormXObject form = new LayerUtility(document).importPageAsForm(other, 0);
            out().saveGraphicsState();
            out().transform(Matrix.getTranslateInstance(points(xMm), up(yMm) - high));
            out().drawForm(form);
            out().restoreGraphicsState();
          }
        });
  }

  void save(OutputStream to) {
    run(
        () -> {
          closeStream();
          document.save(to);
        });
  }

  @Override
  public void close() {
    run(
        () -> {
          closeStream();
          document.close();
        });
  }

  /** Something that draws. */
  private interface Drawing {
    void run() throws IOException;
  }

  private static void run(Drawing drawing) {
    try {
      drawing.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
