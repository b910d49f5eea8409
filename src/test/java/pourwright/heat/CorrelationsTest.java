package pourwright.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

/** Free convection and radiation beside printed worked examples. */
class CorrelationsTest {

  /**
   * Bergman et al., Introduction to Heat Transfer, example 9.2, as recomputed in a public library.
   */
  @Test
  void aVerticalPlateAsInBergmansExample() {
    assertThat(Correlations.verticalPlate(.69, .69 * 2.63e9)).isCloseTo(147.1619, within(1e-4));
  }

  /** Doctest of the public library ht (conv_free_immersed). */
  @Test
  void aLyingCylinderAsInThePublicLibrary() {
    assertThat(Correlations.lyingCylinder(.69, .69 * 2.63e9)).isCloseTo(139.1349, within(1e-4));
  }

  /** Doctest of the public library ht: McAdams at Pr 5.54, Gr 3.21e8. */
  @Test
  void levelFacesAsMcAdams() {
    double rayleigh = 5.54 * 3.21e8;
    assertThat(Correlations.hotFaceUp(rayleigh)).isCloseTo(181.7312, within(1e-4));
    assertThat(Correlations.hotFaceDown(rayleigh)).isCloseTo(55.4456, within(1e-3));
  }

  /** Doctest of the public library ht: Popiel's standing cylinder. */
  @Test
  void aSlenderStandingCylinderAsPopiel() {
    assertThat(Correlations.standingCylinder(.7, 1e10, 2.5, 1)).isCloseTo(228.8979, within(1e-4));
  }

  /** Worked out; handbook of burning, check values 3 and 7. */
  @Test
  void aVesselsWallAt60DegreesInARoomAt20() {
    double rayleigh = new Correlations.Air(17.0e-6, 24.1e-6, .0273, 313.15).rayleigh(.09, 40);
    assertThat(rayleigh).isCloseTo(2.2297e6, withPercentage(0.1));
    double prandtl = 17.0 / 24.1;
    double nusselt = Correlations.verticalPlate(prandtl, rayleigh);
    assertThat(nusselt).isCloseTo(20.532, withPercentage(0.1));
    assertThat(nusselt * .0273 / .09).isCloseTo(6.228, withPercentage(0.1));
    assertThat(Correlations.verticalPlateLaminar(prandtl, rayleigh) * .0273 / .09)
        .isCloseTo(6.230, withPercentage(0.1));
    double grashof = rayleigh / prandtl;
    assertThat(Correlations.plateWillDo(grashof, .09, .09)).isTrue();
    assertThat(35 / Math.pow(grashof, .25)).isCloseTo(.830, withPercentage(0.1));
    assertThat(Correlations.slenderFactor(prandtl, grashof, .09, .09))
        .isCloseTo(1.0472, withPercentage(0.1));
  }

  /** Worked out; handbook of burning, check value 5. */
  @Test
  void aDiscOf75MillimetresAt70DegreesInARoomAt20() {
    double rayleigh = new Correlations.Air(17.5e-6, 24.8e-6, .0277, 318.15).rayleigh(.075 / 4, 50);
    assertThat(rayleigh).isCloseTo(23_416, withPercentage(0.1));
    assertThat(Correlations.hotFaceUp(rayleigh)).isCloseTo(6.680, withPercentage(0.1));
    assertThat(Correlations.hotFaceUp(rayleigh) * .0277 / (.075 / 4))
        .isCloseTo(9.869, withPercentage(0.1));
    assertThat(Correlations.hotFaceDown(rayleigh) * .0277 / (.075 / 4))
        .isCloseTo(4.934, withPercentage(0.1));
  }

  /** Worked out from the Stefan-Boltzmann law; handbook of burning, check values 9 and 10. */
  @Test
  void radiationFromAWallAndFromABlackBodyAt400Kelvin() {
    assertThat(Correlations.radiatedFlux(.9, 333.15, 293.15)).isCloseTo(251.77, within(.02));
    assertThat(Correlations.radiation(.9, 60, 20)).isCloseTo(6.294, within(.001));
    assertThat(4 * .9 * Correlations.SIGMA * Math.pow(313.15, 3)).isCloseTo(6.269, within(.001));
    assertThat(Correlations.radiatedFlux(1, 400, 0)).isCloseTo(1451.614, within(.01));
  }

  /** US Standard Atmosphere forms, worked out; handbook of burning, section 3. */
  @Test
  void airAtThreeTemperatures() {
    double[][] rows = {
      {300, 1.569e-5, .02625, .707}, {320, 1.758e-5, .02779, .702}, {350, 2.056e-5, .03004, .694}
    };
    for (double[] row : rows) {
      Correlations.Air air = Correlations.Air.at(row[0] - 273.15);
      assertThat(air.viscosity()).isCloseTo(row[1], withPercentage(0.1));
      assertThat(air.conductivity()).isCloseTo(row[2], withPercentage(0.1));
      assertThat(air.prandtl()).isCloseTo(row[3], within(.001));
    }
  }

  /** Worked out; handbook of burning, section 3: 5.2 to 6.2 W/m²K for a vessel at 40 to 60 °C. */
  @Test
  void aWarmVesselLosesFiveToSixWattsASquareMetreAndKelvinByConvection() {
    assertThat(Correlations.side(40, 20, .09, .08)).isBetween(4.9, 6.4);
    assertThat(Correlations.side(60, 20, .09, .08)).isBetween(5.9, 6.7);
  }
}
