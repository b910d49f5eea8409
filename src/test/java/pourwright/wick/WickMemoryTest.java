package pourwright.wick;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pourwright.shape.Circle;
import pourwright.shape.Ellipse;
import pourwright.shape.Point;
import pourwright.wick.WickLayout.Clearances;
import pourwright.wick.WickMemory.Burnt;
import pourwright.wick.WickMemory.Proposal;

class WickMemoryTest {
  private static Burnt burnt(String wick, String wax, String vessel) {
    return new Burnt(wick, wax, "Fig loft", 0.08, vessel);
  }

  /** Handbook burning 0.1: a burn rate is known to 30-50 % at best before a test. */
  @Test
  void withoutATestTheProposalIsWide() {
    Proposal p = new WickMemory(5, List.of()).propose(burnt("flat-48", "plant-a", "bollard"));
    assertThat(p.value()).isCloseTo(5, within(1e-9));
    assertThat(p.high() / p.value()).isBetween(1.6, 2.4);
    assertThat(p.standsOn()).contains("no test");
  }

  @Test
  void ownTestsMoveAndNarrowTheProposalMostWhereTheyAreJustLikeIt() {
    List<WickMemory.Test> tests = new ArrayList<>();
    for (double rate : new double[] {4.7, 4.9, 4.8}) {
      tests.add(new WickMemory.Test(burnt("flat-48", "plant-a", "bollard"), rate));
    }
    WickMemory memory = new WickMemory(5.5, tests);
    Proposal same = memory.propose(burnt("flat-48", "plant-a", "bollard"));
    Proposal otherVessel = memory.propose(burnt("flat-48", "plant-a", "cog"));
    Proposal otherWax = memory.propose(burnt("flat-48", "blend-b", "cog"));
    Proposal otherWick = memory.propose(burnt("flat-60", "plant-a", "bollard"));
    assertThat(same.value()).isCloseTo(4.8, within(0.05));
    assertThat(width(same)).isLessThan(width(otherVessel));
    assertThat(width(otherVessel)).isLessThan(width(otherWax));
    assertThat(width(otherWax)).isLessThan(width(otherWick));
    assertThat(same.alike()).isEqualTo(3);
    assertThat(otherVessel.tests()).isEqualTo(3);
    assertThat(otherVessel.alike()).isZero();
    assertThat(otherWick.tests()).isZero();
  }

  private static double width(Proposal p) {
    return Math.log(p.high() / p.low());
  }

  @Test
  void theNextTestLiesInTheIntervalAbout95TimesInAHundred() {
    Random random = new Random(5);
    int inside = 0;
    for (int k = 0; k < 1000; k++) {
      double wick = Math.log(5) + 0.35 * random.nextGaussian();
      double wax = 0.12 * random.nextGaussian();
      double scent = 0.08 * random.nextGaussian();
      List<WickMemory.Test> tests = new ArrayList<>();
      double first = 0.08 * random.nextGaussian();
      for (int i = 0; i < 2; i++) {
        double rate = Math.exp(wick + wax + scent + first + 0.06 * random.nextGaussian());
        tests.add(new WickMemory.Test(burnt("w", "plant-a", "bollard"), rate));
      }
      double next =
          Math.exp(
              wick + wax + scent + 0.08 * random.nextGaussian() + 0.06 * random.nextGaussian());
      Proposal p = new WickMemory(5, tests).propose(burnt("w", "plant-a", "cog"));
      inside += next >= p.low() && next <= p.high() ? 1 : 0;
    }
    assertThat(inside).isBetween(930, 970);
  }

  /** House: flagged above 1.5 times a proved vessel's heat for its surface. */
  @Test
  void twoWicksInARoundVesselAreFlaggedAgainstAProvedSingleOne() {
    double surface = new Circle(76.2).areaMm2();
    HeatCheck proved = HeatCheck.of(1, 4.8, surface, Double.NaN);
    assertThat(HeatCheck.of(2, 4.8, surface, proved.gramsPerHourPerCm2()).isFlagged()).isTrue();
    assertThat(HeatCheck.of(2, 3.4, surface, proved.gramsPerHourPerCm2()).isFlagged()).isFalse();
  }

  @Test
  void theTemplateIsToScaleWithARulerOfAHundredMillimetres() {
    Ellipse base = new Ellipse(120, 60);
    WickLayout layout = WickLayout.of(base, new Clearances(15, 30, true), 3);
    WickTemplate template = WickTemplate.of(base, layout, 1, 20);
    List<Point> edge = template.lines().get(0);
    double width = edge.stream().mapToDouble(Point::xMm).max().orElse(0) * 2;
    double height = edge.stream().mapToDouble(Point::yMm).max().orElse(0) * 2;
    assertThat(height).isCloseTo(58, within(0.05));
    assertThat(width).isLessThanOrEqualTo(118);
    List<Point> ruler = template.ruler().get(0);
    assertThat(ruler.get(1).minus(ruler.get(0)).length()).isCloseTo(100, within(1e-12));
    assertThat(template.lines()).hasSize(1 + 3 * 3);
  }
}
