package pourwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.Locale;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.quantity.OutOfRange;

/**
 * Outlines drawn as SVG paths against closed forms and the platform's own two-dimensional shapes.
 */
class DrawnPathTest {

  /** Elementary geometry: rectangle, the same by H and V, relative, with and without Z. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M0 0 L90 0 L90 60 L0 60 Z",
        "m10,10 90 0 0,60 -90 0z",
        "M5 5H95V65H5",
        "M-1e1-20h90v60h-90v-60z",
        "  M 0 0 h 90 v60 h -90 Z  "
      })
  void aRectangle(String d) {
    DrawnPath path = DrawnPath.read(d, 1);
    assertThat(path.areaMm2()).isCloseTo(5400, within(1e-9));
    assertThat(path.perimeterMm()).isCloseTo(300, within(1e-9));
    assertThat(path.outline().areaMm2()).isCloseTo(5400, within(1e-9));
    assertThat(path.outline().corners()).hasSize(4);
  }

  /** πr², 2πr; half a millimetre to the unit. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M20 100A80 80 0 0 1 180 100A80 80 0 0 1 20 100Z",
        "M20 100a80 80 0 1 0 160 0a80 80 0 1 0-160 0z",
        "M20 100a80 80 0 10160 0 80 80 0 10-160 0z"
      })
  void aCircleOfTwoArcs(String d) {
    DrawnPath path = DrawnPath.read(d, 0.5);
    assertThat(path.areaMm2()).isCloseTo(Math.PI * 1600, within(1e-8));
    assertThat(path.perimeterMm()).isCloseTo(2 * Math.PI * 40, within(1e-8));
    Traced outline = path.outline();
    assertThat(outline.areaMm2()).isCloseTo(Math.PI * 1600, within(1e-7));
    assertThat(outline.lengthMm()).isCloseTo(80, within(0.01));
    assertThat(Solid.straight(outline, 80).volumeMl()).isCloseTo(402.124, within(5e-4));
  }

  /** An ellipse of 50 and 35 mm, tilted by 30°: πab, perimeter 269.11845 (DLMF 19.9). */
  @Test
  void aTiltedEllipse() {
    double x = 50 * Math.cos(Math.PI / 6);
    double y = 50 * Math.sin(Math.PI / 6);
    String d =
        String.format(
            Locale.ROOT, "M%f %f A50 35 30 1 1 %f %f A50 35 30 0 1 %f %f Z", x, y, -x, -y, x, y);
    DrawnPath path = DrawnPath.read(d, 1);
    assertThat(path.areaMm2()).isCloseTo(Math.PI * 50 * 35, within(1e-3));
    assertThat(path.perimeterMm()).isCloseTo(269.11845, within(1e-3));
  }

  /** Radii that do not reach are enlarged (SVG 2, appendix B.2.5): a half circle of 50. */
  @Test
  void anArcThatDoesNotReachIsEnlarged() {
    DrawnPath path = DrawnPath.read("M0 0A10 10 0 0 1 100 0Z", 1);
    assertThat(path.areaMm2()).isCloseTo(Math.PI * 1250, within(1e-8));
  }

  /** A parabola's segment is two thirds of its box (Archimedes); T repeats it mirrored. */
  @Test
  void aParabolaIsTwoThirdsOfItsBox() {
    assertThat(DrawnPath.read("M0 0Q50 60 100 0Z", 1).areaMm2())
        .isCloseTo(100 * 30 * 2 / 3.0, within(1e-9));
    double both = DrawnPath.read("M0 0Q50 60 100 0T200 0V90H0Z", 1).areaMm2();
    assertThat(both).isCloseTo(200 * 90, within(1e-9));
  }

  /** A smooth blob: areas and lengths by the platform's Path2D, cut into chords of 1e-7. */
  @Property(tries = 60)
  void aRandomBlobAgreesWithThePlatformsOwnPaths(@ForAll @LongRange(min = 0) long seed) {
    SplittableRandom r = new SplittableRandom(seed);
    Blob blob = Blob.random(r);
    DrawnPath path = DrawnPath.read(blob.d(), 1);
    double[] known = areaAndLength(blob.path());
    assertThat(path.areaMm2()).isCloseTo(known[0], within(1e-5 * known[0]));
    assertThat(path.perimeterMm()).isCloseTo(known[1], within(1e-5 * known[1]));
    assertThat(path.outline().areaMm2()).isCloseTo(path.areaMm2(), within(1e-9 * known[0]));
    assertThat(path.outline().perimeterMm()).isCloseTo(known[1], within(1e-4 * known[1]));
  }

  /** Arcs of every flag against Arc2D: a sector of an ellipse. */
  @Property(tries = 40)
  void sectorsAgreeWithThePlatformsOwnArcs(@ForAll @LongRange(min = 0) long seed) {
    SplittableRandom r = new SplittableRandom(seed);
    double a = r.nextDouble(20, 70);
    double b = r.nextDouble(20, 70);
    double from = r.nextDouble(360);
    double swept = r.nextDouble(20, 340) * (r.nextBoolean() ? 1 : -1);
    Arc2D arc = new Arc2D.Double(-a, -b, 2 * a, 2 * b, from, swept, Arc2D.PIE);
    String d =
        String.format(
            Locale.ROOT,
            "M0 0L%.12f %.12fA%.12f %.12f 0 %d %d %.12f %.12fZ",
            arc.getStartPoint().getX(),
            arc.getStartPoint().getY(),
            a,
            b,
            Math.abs(swept) > 180 ? 1 : 0,
            swept < 0 ? 1 : 0,
            arc.getEndPoint().getX(),
            arc.getEndPoint().getY());
    double[] known = areaAndLength(new Path2D.Double(arc));
    DrawnPath path = DrawnPath.read(d, 1);
    assertThat(path.areaMm2()).isCloseTo(known[0], within(1e-3 * known[0]));
    assertThat(path.perimeterMm()).isCloseTo(known[1], within(1e-3 * known[1]));
  }

  private static double[] areaAndLength(Path2D path) {
    PathIterator flat =
        new FlatteningPathIterator(path.getPathIterator(new AffineTransform()), 1e-7, 16);
    double[] c = new double[6];
    double x0 = 0;
    double y0 = 0;
    double x = 0;
    double y = 0;
    double area = 0;
    double length = 0;
    for (; !flat.isDone(); flat.next()) {
      int kind = flat.currentSegment(c);
      if (kind == PathIterator.SEG_MOVETO) {
        x0 = c[0];
        y0 = c[1];
      } else {
        double nx = kind == PathIterator.SEG_CLOSE ? x0 : c[0];
        double ny = kind == PathIterator.SEG_CLOSE ? y0 : c[1];
        area += x * ny - nx * y;
        length += Math.hypot(nx - x, ny - y);
        c[0] = nx;
        c[1] = ny;
      }
      x = c[0];
      y = c[1];
    }
    return new double[] {Math.abs(area) / 2, length};
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "L0 0 | at character 1: a path begins with M",
        "'' | at character 1",
        "M0 0 L10 K | at character 10: a number is missing",
        "M0 0 K | at character 6: 'K' is no path command",
        "M0 0 H10 V10 Z M5 5 | at character 16: the path goes on",
        "M0 0 H10 V10 M5 5 | at character 14: a second outline",
        "M0 0 A5 5 0 2 1 9 9 | at character 13: an arc's flag",
        "M0 0 L1e9 0 | at character 7: the number is larger",
        "M0 0 | at character 5: the path draws nothing"
      })
  void whatIsWrongIsSaidWithItsPlace(String d, String said) {
    assertThatThrownBy(() -> DrawnPath.read(d, 1))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining(said);
  }

  @Test
  void aPathThatCrossesItselfIsNoOutline() {
    DrawnPath eight = DrawnPath.read("M0 0L100 60L100 0L0 70Z", 1);
    assertThatThrownBy(eight::outline).isInstanceOf(OutOfRange.class);
  }
}
