package pourwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.quantity.OutOfRange;

/** Closed forms of elementary geometry and mechanics. */
class HollowTest {
  private static final Hollow CUP =
      new Hollow(Solid.straight(new Circle(90), 100), Solid.straight(new Circle(74), 90));

  /** Check value 59: a cup of 90 × 100 mm with a bore of 74 × 90 mm. */
  @Test
  void aCupHoldsMaterialAndHasFacesToSeal() {
    assertThat(CUP.wallMl()).isCloseTo(249.097, within(5e-4));
    assertThat(CUP.insideMm2(90) / 100).isCloseTo(252.238, within(5e-4));
    double rim = Math.PI / 4 * (90 * 90 - 74 * 74);
    assertThat((CUP.outsideMm2() - rim) / 100).isCloseTo(346.361, within(5e-4));
    assertThat(CUP.baseMm()).isEqualTo(10);
  }

  @Test
  void theWallOfACupIsEightMillimetresAllRound() {
    assertThat(CUP.thinnestWall().mm()).isCloseTo(8, within(0.05));
  }

  @Test
  void aTaperedCupIsThinnestAtTheRim() {
    Hollow cup =
        new Hollow(
            new Solid(new Circle(90), new Circle(80), 100), Solid.straight(new Circle(70), 90));
    Hollow.Thinnest thinnest = cup.thinnestWall();
    assertThat(thinnest.mm()).isCloseTo(5, within(0.05));
    assertThat(thinnest.heightMm()).isCloseTo(100, within(1e-9));
  }

  @Test
  void aRectangularCavityInARoundVesselIsThinnestAtItsCorners() {
    Hollow vessel =
        new Hollow(
            Solid.straight(new Circle(100), 80),
            Solid.straight(new RoundedRectangle(60, 60, 0), 70));
    Hollow.Thinnest thinnest = vessel.thinnestWall();
    assertThat(thinnest.mm()).isCloseTo(50 - 30 * Math.sqrt(2), within(0.05));
    assertThat(Math.abs(Math.sin(2 * thinnest.angle()))).isCloseTo(1, within(1e-9));
  }

  @Test
  void aCavityThatBreaksThroughHasAWallBelowZero() {
    Hollow broken =
        new Hollow(Solid.straight(new Circle(60), 80), Solid.straight(new Circle(70), 70));
    assertThat(broken.thinnestWall().mm()).isNegative();
  }

  /** A block of 90 mm across and 100 mm high tips at atan(45/50). */
  @Test
  void aFullCupOfOneDensityTipsAsABlock() {
    Hollow.Balance balance = CUP.balance(1, 1, 90);
    assertThat(balance.centreMm()).isCloseTo(50, within(1e-9));
    assertThat(balance.tipsAtDegrees()).isCloseTo(Math.toDegrees(Math.atan2(45, 50)), within(0.05));
  }

  /**
   * Handbook compliance, check value 44: atan(R/h) of the centre; own geometry, limit 10 degrees.
   */
  @ParameterizedTest
  @CsvSource({"80, 90, 41.6", "30, 180, 9.46"})
  void aNarrowTallBodyTipsBeforeTenDegrees(double acrossMm, double highMm, double degrees) {
    Solid outer = Solid.straight(new Circle(acrossMm), highMm);
    Solid cavity = Solid.straight(new Circle(acrossMm - 10), highMm - 5);
    Hollow.Balance full = new Hollow(outer, cavity).balance(1, 1, highMm - 5);
    assertThat(full.tipsAtDegrees()).isCloseTo(degrees, within(0.04));
  }

  @Test
  void anEmptyCupIsHeldBelowTheMiddleByItsBase() {
    double outer = Math.PI / 4 * 90 * 90 * 100;
    double bore = Math.PI / 4 * 74 * 74 * 90;
    double centre = (outer * 50 - bore * 55) / (outer - bore);
    assertThat(CUP.balance(2, 0.9, 0).centreMm()).isCloseTo(centre, within(1e-9));
  }

  @Test
  void aRectangularFootTipsOverItsShortHalf() {
    Hollow box =
        new Hollow(
            Solid.straight(new RoundedRectangle(120, 60, 5), 80),
            Solid.straight(new RoundedRectangle(100, 40, 5), 70));
    assertThat(box.footMm()).isCloseTo(30, within(0.01));
  }

  /** Elementary geometry: three feet at 40 mm carry over the side of their triangle, 20 mm off. */
  @Test
  void feetTipOverTheLineBetweenThem() {
    assertThat(Hollow.feetMm(3, 40)).isCloseTo(20, within(1e-9));
    assertThat(Hollow.feetMm(4, 40)).isCloseTo(40 / Math.sqrt(2), within(1e-9));
    assertThatThrownBy(() -> Hollow.feetMm(2, 40)).isInstanceOf(OutOfRange.class);
  }

  /** Difference of radii; a square plug is held at its corners. */
  @Test
  void aLidHasAGapAllRound() {
    assertThat(CUP.lidGapMm(new Circle(72))).isCloseTo(1, within(0.05));
    assertThat(CUP.lidGapMm(new Circle(76))).isCloseTo(-1, within(0.05));
    assertThat(CUP.lidGapMm(new RoundedRectangle(50, 50, 0)))
        .isCloseTo(37 - 25 * Math.sqrt(2), within(0.05));
  }

  @Test
  void aVesselWithoutABaseIsRefused() {
    assertThatThrownBy(
            () ->
                new Hollow(Solid.straight(new Circle(90), 80), Solid.straight(new Circle(70), 80)))
        .isInstanceOf(OutOfRange.class);
  }
}
