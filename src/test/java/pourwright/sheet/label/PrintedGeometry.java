package pourwright.sheet.label;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** What a page really prints, read back from the file: red squares, letters, embedded fonts. */
final class PrintedGeometry {
  private static final double MM = 25.4 / 72;

  /** A letter as printed: its text, the em in mm, and its base line from the top. */
  private record Letters(String text, double emMm, double baselineMm, double left, double right) {}

  private final List<Double> redSquares = new ArrayList<>();
  private final List<Letters> letters = new ArrayList<>();
  private final List<Boolean> embedded = new ArrayList<>();
  private final double pageWidthMm;
  private double outside;

  private PrintedGeometry(double pageWidthMm) {
    this.pageWidthMm = pageWidthMm;
  }

  static PrintedGeometry of(PDDocument document, PDPage page) throws IOException {
    PrintedGeometry printed = new PrintedGeometry(page.getMediaBox().getWidth() * MM);
    printed.new Paths(page).processPage(page);
    printed.new Text().writeText(document, new StringWriter());
    for (COSName name : page.getResources().getFontNames()) {
      printed.embedded.add(page.getResources().getFont(name).isEmbedded());
    }
    return printed;
  }

  List<Double> redSquareSidesMm() {
    return redSquares;
  }

  List<Boolean> embedded() {
    return embedded;
  }

  double smallestXHeightMm() {
    return letters.stream().mapToDouble(Letters::emMm).min().orElse(0)
        * LabelFonts.shared().xHeight();
  }

  double outsideMm() {
    return Math.max(
        outside,
        letters.stream()
            .mapToDouble(l -> Math.max(-l.left, l.right - pageWidthMm))
            .max()
            .orElse(0));
  }

  double capHeightMm(String text) {
    return find(text).emMm * LabelFonts.shared().capHeight();
  }

  double baselineFromTopMm(String text) {
    return find(text).baselineMm;
  }

  private Letters find(String text) {
    return letters.stream().filter(l -> l.text.equals(text)).findFirst().orElseThrow();
  }

  private final class Text extends PDFTextStripper {
    @Override
    protected void writeString(String text, List<TextPosition> positions) {
      TextPosition first = positions.get(0);
      TextPosition last = positions.get(positions.size() - 1);
      letters.add(
          new Letters(
              text,
              Math.abs(first.getTextMatrix().getScalingFactorY()) * MM,
              first.getYDirAdj() * MM,
              first.getXDirAdj() * MM,
              (last.getXDirAdj() + last.getWidthDirAdj()) * MM));
    }
  }

  private final class Paths extends PDFGraphicsStreamEngine {
    private final List<Point2D> corners = new ArrayList<>();

    Paths(PDPage page) {
      super(page);
    }

    @Override
    public void fillPath(int windingRule) throws IOException {
      float[] colour = getGraphicsState().getNonStrokingColor().getComponents();
      boolean red = colour.length == 3 && colour[0] > 0.6 && colour[1] < 0.2 && colour[2] < 0.2;
      if (red && corners.size() == 4) {
        redSquares.add(corners.get(0).distance(corners.get(1)) * MM);
      }
      for (Point2D corner : corners) {
        Rectangle2D paper =
            new Rectangle2D.Double(
                0, 0, getPage().getMediaBox().getWidth(), getPage().getMediaBox().getHeight());
        double over =
            Math.max(
                Math.max(-corner.getX(), corner.getX() - paper.getWidth()),
                Math.max(-corner.getY(), corner.getY() - paper.getHeight()));
        outside = Math.max(outside, over * MM);
      }
      corners.clear();
    }

    @Override
    public void strokePath() {
      corners.clear();
    }

    @Override
    public void moveTo(float x, float y) {
      corners.add(new Point2D.Double(x, y));
    }

    @Override
    public void lineTo(float x, float y) {
      corners.add(new Point2D.Double(x, y));
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
      corners.add(new Point2D.Double(x3, y3));
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
      corners.addAll(List.of(p0, p1, p2, p3));
    }

    @Override
    public Point2D getCurrentPoint() {
      return corners.isEmpty() ? new Point2D.Double() : corners.get(corners.size() - 1);
    }

    @Override
    public void closePath() {}

    @Override
    public void endPath() {
      corners.clear();
    }

    @Override
    public void clip(int windingRule) {}

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void fillAndStrokePath(int windingRule) throws IOException {
      fillPath(windingRule);
    }

    @Override
    public void shadingFill(COSName name) {}
  }
}
