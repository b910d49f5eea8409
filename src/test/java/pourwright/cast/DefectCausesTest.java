package pourwright.cast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pourwright.cast.DefectCauses.Finding;
import pourwright.cast.DefectCauses.Seen;

class DefectCausesTest {

  /** Fisher (1935): the lady tasting tea, 3 of 4 right each way: two-sided 34/70. */
  @Test
  void theLadyTastingTea() {
    assertThat(DefectCauses.fisher(3, 4, 1, 4)).isCloseTo(34 / 70.0, within(1e-12));
    assertThat(DefectCauses.fisher(4, 4, 0, 4)).isCloseTo(2 / 70.0, within(1e-12));
  }

  /** A widely reprinted example, 1 of 10 against 11 of 14: p 0.002759; no single source. */
  @Test
  void aTableWithUnequalChances() {
    assertThat(DefectCauses.fisher(1, 10, 11, 14)).isCloseTo(0.002759, within(1e-6));
  }

  @Test
  void aPlantedCauseIsFoundAndNoneIsInventedInAHundredHistories() {
    DefectHistories.Tally tally = DefectHistories.tally(100);
    assertThat(tally.found()).isGreaterThanOrEqualTo(90);
    assertThat(tally.invented()).isLessThanOrEqualTo(10);
  }

  @Tag("long")
  @Test
  void aPlantedCauseIsFoundAndNoneIsInventedInAThousandHistories() {
    DefectHistories.Tally tally = DefectHistories.tally(1000);
    assertThat(tally.found()).as(tally.toString()).isGreaterThanOrEqualTo(900);
    assertThat(tally.invented()).as(tally.toString()).isLessThanOrEqualTo(65);
  }

  @Test
  void aHandfulOfCastsCarriesNoFinding() {
    List<Seen> casts = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      casts.add(new Seen(true, Set.of("hot")));
      casts.add(new Seen(false, Set.of()));
      casts.add(new Seen(false, Set.of()));
      casts.add(new Seen(false, Set.of()));
    }
    assertThat(DefectCauses.look(casts)).noneMatch(Finding::found);
  }

  /** Freireich et al., Blood 21 (1963) 699, the 6-MP group, in every textbook of survival. */
  @Test
  void moldsThatStillServeCountInTheirLife() {
    int[] failed = {6, 6, 6, 7, 10, 13, 16, 22, 23};
    int[] serving = {6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35};
    List<MoldLife.Served> molds = new ArrayList<>();
    for (int casts : failed) {
      molds.add(new MoldLife.Served(casts, true));
    }
    for (int casts : serving) {
      molds.add(new MoldLife.Served(casts, false));
    }
    double[] shares = MoldLife.curve(molds).stream().mapToDouble(MoldLife.Step::share).toArray();
    assertThat(shares)
        .containsExactly(
            new double[] {0.857, 0.807, 0.753, 0.690, 0.627, 0.538, 0.448}, within(0.0005));
    assertThat(MoldLife.curve(molds).get(0).error()).isCloseTo(0.0764, within(0.0001));
    assertThat(MoldLife.median(molds)).isEqualTo(23);
    assertThat(MoldLife.median(List.of(new MoldLife.Served(40, false)))).isNull();
  }

  @Test
  void theDemoldTimeIsLearntFromHerOwnJudgement() {
    DemoldWindow window =
        DemoldWindow.of(
            List.of(
                new DemoldWindow.Demolded(1.0, DemoldWindow.Judged.EARLY),
                new DemoldWindow.Demolded(1.4, DemoldWindow.Judged.EARLY),
                new DemoldWindow.Demolded(1.8, DemoldWindow.Judged.RIGHT),
                new DemoldWindow.Demolded(2.5, DemoldWindow.Judged.RIGHT),
                new DemoldWindow.Demolded(30, DemoldWindow.Judged.LATE)));
    assertThat(window.isTold()).isTrue();
    assertThat(window.overlaps()).isFalse();
    assertThat(window.fromEveryTimeH()).isEqualTo(1.8);
    assertThat(window.untilH()).isEqualTo(30);
  }
}
