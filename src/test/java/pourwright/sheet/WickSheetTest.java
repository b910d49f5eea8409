package pourwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.junit.jupiter.api.Test;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Circle;
import pourwright.shape.Ellipse;
import pourwright.shape.Outline;
import pourwright.shape.Stadium;
import pourwright.wick.WickLayout;
import pourwright.wick.WickLayout.Clearances;
import pourwright.wick.WickTemplate;

/** The printed template measures true: its lines are read back from the file. */
class WickSheetTest {

  /** Every straight line of a page as x1, y1, x2, y2 in mm from the lower left. */
  private static final class Lines extends PDFGraphicsStreamEngine {
    private static final double MM = 25.4 / 72;
    private final List<double[]> lines = new ArrayList<>();
    private Point2D at = new Point2D.Double();

    Lines(PDPage page) {
      super(page);
    }

    @Override
    public void moveTo(float x, float y) {
      at = new Point2D.Double(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
      lines.add(new double[] {at.getX() * MM, at.getY() * MM, x * MM, y * MM});
      at = new Point2D.Double(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
      at = new Point2D.Double(x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
      return at;
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {}

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void clip(int rule) {}

    @Override
    public void closePath() {}

    @Override
    public void endPath() {}

    @Override
    public void strokePath() {}

    @Override
    public void fillPath(int rule) {}

    @Override
    public void fillAndStrokePath(int rule) {}

    @Override
    public void shadingFill(COSName name) {}
  }

  private static List<double[]> printed(Outline base, int wicks, Paper paper) throws IOException {
    WickLayout layout = WickLayout.of(base, new Clearances(15, 30, true), wicks);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    WickSheet.print("Ferry", WickTemplate.of(base, layout, 1, 20), paper, out);
    try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
      Lines lines = new Lines(document.getPage(0));
      lines.processPage(document.getPage(0));
      return lines.lines;
    }
  }

  private static double length(double[] line) {
    return Math.hypot(line[2] - line[0], line[3] - line[1]);
  }

  @Test
  void theRulerMeasures100MillimetresAndTheOutlineItsSize() throws IOException {
    List<double[]> lines = printed(new Circle(80), 1, Paper.A4);
    assertThat(lines.stream().mapToDouble(WickSheetTest::length).max().orElse(0))
        .isCloseTo(100, within(0.02));
    double middle = Paper.A4.widthMm() / 2;
    double half =
        lines.stream()
            .filter(l -> length(l) < 10 && Math.abs(l[0] - l[2]) > 1e-3)
            .mapToDouble(l -> Math.abs(l[0] - middle))
            .filter(d -> d < 45)
            .max()
            .orElse(0);
    assertThat(half).isCloseTo(39, within(0.2));
  }

  @Test
  void theCrossesStandAsFarApartAsTheWicks() throws IOException {
    List<double[]> lines = printed(new Ellipse(120, 60), 3, Paper.LETTER);
    List<Double> centres =
        lines.stream()
            .filter(l -> Math.abs(length(l) - 8) < 0.02 && Math.abs(l[1] - l[3]) < 1e-3)
            .map(l -> (l[0] + l[2]) / 2)
            .sorted()
            .toList();
    assertThat(centres).hasSize(3);
    assertThat(centres.get(1) - centres.get(0)).isCloseTo(30, within(0.2));
    assertThat(centres.get(2) - centres.get(1)).isCloseTo(30, within(0.2));
  }

  @Test
  void aLongTemplateLiesAlongThePaperAndOneTooLargeIsRefusedNotShrunk() throws IOException {
    List<double[]> lines = printed(new Stadium(220, 70), 4, Paper.A4);
    double low = lines.stream().mapToDouble(l -> Math.min(l[1], l[3])).min().orElse(0);
    double high = lines.stream().mapToDouble(l -> Math.max(l[1], l[3])).max().orElse(0);
    assertThat(high - low).isBetween(210.0, 220.0);
    assertThatThrownBy(() -> printed(new Stadium(400, 90), 4, Paper.A4))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("too large");
  }
}
