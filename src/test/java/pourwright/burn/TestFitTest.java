package pourwright.burn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pourwright.burn.WickFit.Kind;
import pourwright.burn.WickFit.Want;
import pourwright.quantity.OutOfRange;

/** A fit to some readings foretells others that it has not seen, and says how well. */
class TestFitTest {
  private static final double[] PLANTED = {3.5, 0.16, 30};

  private static Burn candle() {
    Prototype p = new Prototype();
    p.grid = 5;
    p.hours = 1.5;
    p.sharp = true;
    p.wholeRows = false;
    return p.burn();
  }

  private static List<TestFit.Got> got(double... hours) {
    List<Want> wants = new ArrayList<>();
    for (double h : hours) {
      for (Kind kind : Kind.values()) {
        wants.add(new Want(h, kind));
      }
    }
    double[] said = WickFit.simulate(candle(), wants, PLANTED);
    List<TestFit.Got> got = new ArrayList<>();
    for (int i = 0; i < said.length; i++) {
      got.add(new TestFit.Got(wants.get(i), said[i]));
    }
    return got;
  }

  @Test
  void aLaterReadingIsForetoldAndTheScoreSaysHowWell() {
    TestFit fit = TestFit.of(candle(), got(0.5, 1), got(1.5));
    assertThat(fit.foretold()).hasSize(4);
    assertThat(fit.score(Kind.POOL_RADIUS_MM)).isLessThan(2);
    assertThat(fit.score(Kind.WALL_C)).isLessThan(2);
    double said = fit.foretold().get(2).said();
    double read = fit.foretold().get(2).got().value();
    assertThat(fit.score(Kind.WALL_C)).isCloseTo(Math.abs(said - read), within(1e-9));
    assertThat(fit.fitted().estimates()).hasSize(3);
  }

  @Test
  void theRunningScoreForetellsEachTestFromThoseBeforeItAlone() {
    List<List<TestFit.Got>> tests = List.of(got(0.5, 1), got(1), got(1.5));
    List<List<TestFit.Foretold>> running = TestFit.running(candle(), tests);
    assertThat(running).hasSize(3);
    assertThat(running.get(0)).isEmpty();
    assertThat(running.get(1)).hasSize(4);
    assertThat(TestFit.score(running.get(1), Kind.WALL_C)).isLessThan(2);
    List<TestFit.Got> all = new ArrayList<>(tests.get(0));
    all.addAll(tests.get(1));
    TestFit last = TestFit.of(candle(), all, tests.get(2));
    assertThat(TestFit.score(running.get(2), Kind.POOL_RADIUS_MM))
        .isCloseTo(last.score(Kind.POOL_RADIUS_MM), within(1e-6));
    assertThat(TestFit.running(candle(), List.of(got(0.5).subList(0, 2), got(1))).get(1)).isEmpty();
  }

  @Test
  void withoutALaterTestThereIsNoScoreAndTwoReadingsAreTooFew() {
    assertThat(TestFit.of(candle(), got(0.5), List.of()).score(Kind.WALL_C)).isNaN();
    assertThatThrownBy(() -> TestFit.of(candle(), got(0.5).subList(0, 2), List.of()))
        .isInstanceOf(OutOfRange.class);
  }
}
