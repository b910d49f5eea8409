package pourwright.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A reading is right to half a step (the example: 5 g on a 1 g scale is ±10 %). */
class ScalesTest {
  private static Instrument scale(String name, double step) {
    return new Instrument(
        name.toLowerCase(java.util.Locale.ROOT), name, "mass", step, "g", null, null);
  }

  private static final Scales TWO = new Scales(List.of(scale("Bench", 1), scale("Fine", 0.01)));

  @Test
  void fiveGramsOnAOneGramScaleIsTenPercentAndTheFinerScaleIsNamed() {
    Scales.TooFine found = TWO.tooFine(5).orElseThrow();
    assertThat(found.share()).isCloseTo(0.10, within(1e-12));
    assertThat(found.sentence())
        .isEqualTo("5 g on a scale with steps of 1 g is ±10 %: weigh it on Fine, steps of 0.01 g.");
  }

  @Test
  void whatIsCoarseEnoughIsNotRemarked() {
    assertThat(TWO.tooFine(25)).isEmpty();
    assertThat(TWO.tooFine(24.9)).isPresent();
    assertThat(TWO.tooFine(0)).isEmpty();
    assertThat(new Scales(List.of()).tooFine(0.1)).isEmpty();
  }

  @Test
  void whereNoScaleIsFinerItSaysWhichStepsWouldDo() {
    Scales one = new Scales(List.of(scale("Bench", 1)));
    assertThat(one.tooFine(5).orElseThrow().sentence())
        .isEqualTo(
            "5 g on a scale with steps of 1 g is ±10 %: no scale on file is finer. Steps of 0.2 g"
                + " would do, or weigh it for several batches at once.");
  }
}
