package pourwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ClearanceTest {

  /** By definition: no point of the curve is nearer, and one of many is about as near. */
  @Property(tries = 300)
  void anEllipsesClearanceIsTheWayToItsNearestPoint(
      @ForAll @DoubleRange(min = 10, max = 200) double length,
      @ForAll @DoubleRange(min = 10, max = 200) double width,
      @ForAll @DoubleRange(min = -0.8, max = 0.8) double u,
      @ForAll @DoubleRange(min = -0.8, max = 0.8) double v) {
    Ellipse ellipse = new Ellipse(length, width);
    Point p = new Point(u * length, v * width);
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 4000; i++) {
      nearest = Math.min(nearest, ellipse.at(i * Math.PI / 2000).minus(p).length());
    }
    double clearance = ellipse.clearanceMm(p.xMm(), p.yMm());
    assertThat(Math.abs(clearance)).isLessThanOrEqualTo(nearest + 1e-9);
    assertThat(Math.abs(clearance)).isCloseTo(nearest, within(0.2));
    assertThat(clearance >= 0).isEqualTo(4 * u * u + 4 * v * v <= 1);
    double general = new Superellipse(length, width, 2).clearanceMm(p.xMm(), p.yMm());
    assertThat(clearance).isCloseTo(general, within(1e-6));
  }

  /** By hand: the middle is half the width from the wall; on a long axis the end is nearest. */
  @Test
  void onTheAxesTheClearanceIsKnown() {
    assertThat(new Ellipse(120, 60).clearanceMm(0, 0)).isCloseTo(30, within(1e-12));
    assertThat(new Ellipse(60, 120).clearanceMm(0, 0)).isCloseTo(30, within(1e-12));
    assertThat(new Ellipse(120, 60).clearanceMm(58, 0)).isCloseTo(2, within(1e-12));
    assertThat(new Ellipse(80, 80).clearanceMm(0, 0)).isCloseTo(40, within(1e-12));
    assertThat(new Ellipse(80, 80).clearanceMm(0, 30)).isCloseTo(10, within(1e-9));
  }
}
