package pourwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import pourwright.quantity.OutOfRange;

/**
 * Closed forms: elementary geometry, except where another source stands beside the value. Figures
 * of the worked table are those of the workshop's handbook on casting, section 8.1.
 */
class SolidTest {

  /** π·38.1²·80. */
  @Test
  void aRoundVesselOf76point2MillimetresFilledTo80Holds364point8Millilitres() {
    assertThat(Solid.straight(new Circle(76.2), 80).volumeMl()).isCloseTo(364.83, within(0.005));
  }

  /** Cone frustum, πh/3(R²+Rr+r²) and π(R+r)√((R−r)²+h²); check value 53. */
  @Test
  void aConeFrustumOf40And35By80() {
    Solid cone = new Solid(new Circle(80), new Circle(70), 80);
    assertThat(cone.volumeMl()).isCloseTo(353.953, within(0.0005));
    assertThat(cone.sideAreaMm2()).isCloseTo(18886.3, within(0.05));
  }

  /** The same surface through the general quadrature, to its stated tolerance. */
  @Test
  void theQuadratureMeetsTheClosedFormOfTheCone() {
    double closed = Math.PI * 75 * Math.hypot(5, 80);
    double general = Eccentric.sideMm2(new Circle(80), new Circle(70), 80, 0, 1);
    double byAngle = new JoinedByAngle(new Circle(80), new Circle(70)).sideMm2(80, 0, 1);
    assertThat(general).isCloseTo(closed, within(1e-9 * closed));
    assertThat(byAngle).isCloseTo(closed, within(1e-9 * closed));
  }

  /** πabh. */
  @Test
  void anEllipticalCylinder() {
    assertThat(Solid.straight(new Ellipse(100, 70), 80).volumeMl())
        .isCloseTo(439.823, within(5e-4));
  }

  /** πh/6(2a₁b₁+a₁b₂+a₂b₁+2a₂b₂); check value 54. */
  @Test
  void anEllipticalFrustumOfUnlikeEnds() {
    Solid solid = new Solid(new Ellipse(100, 70), new Ellipse(90, 56), 80);
    assertThat(solid.volumeMl()).isCloseTo(376.782, within(5e-4));
  }

  /** (3√3/2)s²h, lateral 6sh; (√3/2)f². */
  @Test
  void aHexagonalPrism() {
    Solid prism = Solid.straight(new RegularPolygon(6, 40 * Math.sqrt(3), 0), 80);
    assertThat(prism.volumeMl()).isCloseTo(332.554, within(5e-4));
    assertThat(prism.sideAreaMm2()).isCloseTo(19200, within(1e-6));
    assertThat(new RegularPolygon(6, 80, 0).areaMm2()).isCloseTo(5542.56, within(0.005));
  }

  /** 2(√2−1)f². */
  @Test
  void anOctagon() {
    assertThat(new RegularPolygon(8, 80, 0).areaMm2()).isCloseTo(5301.93, within(0.005));
  }

  /** [LW−(4−π)r²]h and 2(L+W)−(8−2π)r; check value 58. */
  @Test
  void aRoundedRectangle() {
    RoundedRectangle outline = new RoundedRectangle(100, 70, 15);
    assertThat(Solid.straight(outline, 80).volumeMl()).isCloseTo(544.549, within(5e-4));
    assertThat(outline.perimeterMm()).isCloseTo(2 * 170 - (8 - 2 * Math.PI) * 15, within(1e-9));
    assertThat(outline.perimeterMm()).isCloseTo(314.248, within(5e-4));
  }

  /** h/3(A₁+A₂+√(A₁A₂)) for similar ends. */
  @Test
  void aTruncatedPyramid() {
    Solid byAngle = new Solid(new RegularPolygon(4, 80, 0), new RegularPolygon(4, 60, 0), 80);
    Solid byIndex = new Solid(rectangle(80, 80), rectangle(60, 60), 80);
    assertThat(byAngle.volumeMl()).isCloseTo(394.667, within(5e-4));
    assertThat(byIndex.volumeMl()).isCloseTo(394.667, within(5e-4));
    double slant = 2 * (80 + 60) * Math.hypot(10, 80);
    assertThat(byAngle.sideAreaMm2()).isCloseTo(slant, within(1e-7));
    assertThat(byIndex.sideAreaMm2()).isCloseTo(slant, within(1e-7));
  }

  /** h/6(A₁+4Am+A₂); check value 55. */
  @Test
  void aPrismoidOfUnlikeRectanglesJoinedCornerToCorner() {
    Solid solid = new Solid(rectangle(100, 70), rectangle(80, 60), 80);
    assertThat(solid.volumeMl()).isCloseTo(469.333, within(5e-4));
  }

  /** Ramanujan's second formula beside the exact elliptic integral; check value 56. */
  @Test
  void thePerimeterOfAnEllipse() {
    assertThat(new Ellipse(100, 70).perimeterMm()).isCloseTo(269.11844907, within(1e-8));
    assertThat(new Ellipse(10, 2).perimeterMm()).isCloseTo(21.010045, within(1e-6));
  }

  /** 4abΓ(1+1/n)²/Γ(1+2/n), perimeter numeric; check value 57. */
  @Test
  void superellipses() {
    assertThat(new Superellipse(100, 70, 2).areaMm2()).isCloseTo(5497.787, within(5e-4));
    assertThat(new Superellipse(100, 70, 2.5).areaMm2()).isCloseTo(5916.637, within(5e-4));
    assertThat(new Superellipse(100, 70, 3).areaMm2()).isCloseTo(6183.236, within(5e-4));
    assertThat(new Superellipse(100, 70, 4).areaMm2()).isCloseTo(6489.261, within(5e-4));
    assertThat(new Superellipse(100, 70, 10).areaMm2()).isCloseTo(6900.124, within(5e-4));
    assertThat(new Superellipse(100, 70, 4).perimeterMm()).isCloseTo(299.268, within(5e-4));
    assertThat(new Superellipse(100, 70, 2.5).perimeterMm()).isCloseTo(279.884, within(5e-4));
  }

  @Test
  void aSuperellipseOfExponent2IsAnEllipse() {
    Solid ellipse = new Solid(new Ellipse(100, 70), new Ellipse(80, 60), 50);
    Solid superellipse = new Solid(new Superellipse(100, 70, 2), new Superellipse(80, 60, 2), 50);
    assertThat(superellipse.volumeMl()).isCloseTo(ellipse.volumeMl(), within(1e-9));
    assertThat(superellipse.sideAreaMm2()).isCloseTo(ellipse.sideAreaMm2(), within(1e-6));
  }

  @Test
  void aSolidCutOffHasTheVolumeAndTheWallOfWhatIsBelowTheCut() {
    Solid whole = new Solid(new Ellipse(90, 60), new Ellipse(70, 40), 90);
    Solid cut = whole.below(30);
    Solid afresh = new Solid(whole.bottom(), cut.top(), 30);
    assertThat(cut.volumeMl()).isCloseTo(afresh.volumeMl(), within(1e-9));
    assertThat(cut.volumeMl()).isCloseTo(whole.volumeBelowMl(30), within(1e-12));
    assertThat(cut.sideAreaMm2()).isCloseTo(afresh.sideAreaMm2(), within(1e-6));
    assertThat(cut.below(12).volumeMl()).isCloseTo(whole.volumeBelowMl(12), within(1e-12));
  }

  @Test
  void theHeightOfAVolumeIsTheInverseOfTheVolumeBelowAHeight() {
    Solid solid = new Solid(new Superellipse(90, 60, 3), new Circle(70), 90);
    assertThat(solid.heightOfMl(solid.volumeBelowMl(41))).isCloseTo(41, within(1e-9));
  }

  /** πh²(3R−h)/3 and 2πRh; R 50, h 30: 113.097 ml, 94.248 cm²; a profile of 400 levels. */
  @Test
  void aSphericalCapIsMetByItsProfile() {
    List<Solid.Level> levels = new java.util.ArrayList<>();
    for (int i = 0; i < Solid.LEVELS_MAX; i++) {
      double z = 30.0 * i / (Solid.LEVELS_MAX - 1);
      double below = 20 + z;
      levels.add(new Solid.Level(z, Math.max(1e-3, Math.sqrt(2500 - below * below) / 50)));
    }
    Solid cap = Solid.ofProfile(new Circle(100), levels);
    assertThat(cap.volumeMl()).isCloseTo(113.097, within(0.002));
    assertThat(cap.sideAreaMm2() / 100).isCloseTo(94.248, within(0.01));
    assertThat(cap.bottom().lengthMm() / 2).isCloseTo(45.826, within(5e-4));
  }

  /** Two frusta of a cone on one another, elementary geometry; and the height of half of it. */
  @Test
  void aProfileOfTwoTiers() {
    Solid vase =
        Solid.ofProfile(
            new Circle(80),
            List.of(
                new Solid.Level(0, 0.875), new Solid.Level(80, 1), new Solid.Level(160, 0.875)));
    assertThat(vase.volumeMl()).isCloseTo(2 * 353.953, within(1e-3));
    assertThat(vase.sideAreaMm2()).isCloseTo(2 * 18886.3, within(0.1));
    assertThat(vase.heightOfMl(353.953)).isCloseTo(80, within(1e-3));
    assertThat(vase.centreOfGravityMm(160)).isCloseTo(80, within(1e-9));
    assertThat(vase.kneesMm()).containsExactly(0.0, 80.0, 160.0);
    assertThat(vase.below(80).volumeMl()).isCloseTo(353.953, within(1e-3));
    assertThatThrownBy(
            () ->
                Solid.ofProfile(
                    new Circle(80), List.of(new Solid.Level(0, 1), new Solid.Level(0, 2))))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("level 2");
  }

  /** A twist keeps every section's area, and a round body's wall. */
  @Test
  void aTwistChangesTheWallAndNoVolume() {
    Solid square = Solid.straight(new RegularPolygon(4, 80, 5), 80);
    Solid twisted = square.twisted(90);
    assertThat(twisted.volumeMl()).isEqualTo(square.volumeMl());
    assertThat(twisted.sideAreaMm2()).isGreaterThan(square.sideAreaMm2() * 1.02);
    assertThat(twisted.top().areaMm2()).isEqualTo(square.top().areaMm2());
    assertThat(square.radiusMm(0, 40) / twisted.radiusMm(Math.PI / 4, 40))
        .isCloseTo(1, within(1e-9));
    assertThat(twisted.contains(39, 0, 0)).isTrue();
    Solid round = new Solid(new Circle(80), new Circle(70), 80);
    assertThat(round.twisted(200).sideAreaMm2()).isCloseTo(round.sideAreaMm2(), within(1e-6));
    Solid oval = Solid.straight(new Ellipse(100, 70), 80);
    double byAngle = new JoinedByAngle(oval.bottom(), oval.top()).sideMm2(80, Math.PI, 1);
    assertThat(oval.twisted(180).sideAreaMm2()).isCloseTo(byAngle, within(1e-6 * byAngle));
    Solid tapered = new Solid(new Ellipse(100, 70), new Ellipse(80, 56), 80);
    double scaled = new JoinedByAngle(tapered.bottom(), tapered.top()).sideMm2(80, 1, 1);
    assertThat(tapered.twisted(Math.toDegrees(1)).sideAreaMm2())
        .isCloseTo(scaled, within(1e-6 * scaled));
  }

  /** π((R−d/2)² + d²/8) about a circle; the same by quadrature about an ellipse of equal axes. */
  @Test
  void ribsAboutACircle() {
    Ribbed ribbed = new Ribbed(new Circle(80), 24, 4);
    assertThat(ribbed.areaMm2()).isCloseTo(Math.PI * (38 * 38 + 2), within(1e-9));
    assertThat(new Ribbed(new Ellipse(80, 80), 24, 4).areaMm2())
        .isCloseTo(ribbed.areaMm2(), within(1e-6));
    assertThat(ribbed.lengthMm()).isCloseTo(80, within(1e-6));
    assertThat(ribbed.clearanceMm(0, 0)).isCloseTo(36, within(1e-6));
    assertThat(ribbed.clearanceMm(45, 0)).isCloseTo(-5, within(1e-6));
    assertThat(ribbed.perimeterMm()).isGreaterThan(Math.PI * 80);
    assertThatThrownBy(() -> new Ribbed(new Ellipse(90, 60), 7, 3))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("evenly");
    assertThatThrownBy(() -> new Ribbed(new Circle(40), 12, 11)).isInstanceOf(OutOfRange.class);
    assertThatThrownBy(() -> new Ribbed(rectangle(40, 30), 12, 1)).isInstanceOf(OutOfRange.class);
  }

  /** A cone's centre of gravity: a quarter of the height above its base, in the limit. */
  @Test
  void theCentreOfGravityOfASlimCone() {
    Solid cone = new Solid(new Circle(100), new Circle(1e-4), 80);
    assertThat(cone.centreOfGravityMm(80)).isCloseTo(20, within(1e-3));
  }

  @Test
  void anOutlineThatCrossesItselfIsRefused() {
    List<Point> bow =
        List.of(new Point(0, 0), new Point(10, 10), new Point(10, 0), new Point(0, 12));
    assertThatThrownBy(() -> Traced.through(bow))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("crosses itself");
  }

  @Test
  void aRoundCornerThatDoesNotFitIsRefused() {
    assertThatThrownBy(() -> new RoundedRectangle(100, 70, 36)).isInstanceOf(OutOfRange.class);
    assertThatThrownBy(() -> new RegularPolygon(6, 80, 41)).isInstanceOf(OutOfRange.class);
    assertThatThrownBy(() -> new Stadium(60, 70)).isInstanceOf(OutOfRange.class);
  }

  static Traced rectangle(double lengthMm, double widthMm) {
    double x = lengthMm / 2;
    double y = widthMm / 2;
    return Traced.through(
        List.of(new Point(-x, -y), new Point(x, -y), new Point(x, y), new Point(-x, y)));
  }
}
