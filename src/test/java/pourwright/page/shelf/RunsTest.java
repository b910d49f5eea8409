package pourwright.page.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.burn.Burn;
import pourwright.burn.BurnResult;
import pourwright.burn.TestFit;
import pourwright.burn.WickFit;
import pourwright.page.Form;
import pourwright.store.ResultFiles;
import pourwright.store.StudioFolder;
import pourwright.work.KeptResults;

/** Simulations are answered once, also by a studio that was closed and opened again. */
class RunsTest {
  private static SimulationForm.Question question(String hours) {
    return SimulationForm.read(SimulationForm.usual().with("hours", hours).with("grid", "5"))
        .orElseThrow();
  }

  private static Runs.Run ask(Runs runs, SimulationForm.Question q) {
    return runs.start(q, null);
  }

  private static BurnResult wait(Runs.Run run) {
    for (int i = 0; i < 3000 && run.isRunning(); i++) {
      LockSupport.parkNanos(20_000_000);
    }
    return run.result().orElseThrow();
  }

  @Test
  void theSameQuestionIsNotComputedAgainAfterARestart(@TempDir Path folder) throws Exception {
    KeptResults kept = new ResultFiles(new StudioFolder(folder));
    Runs runs = new Runs(kept);
    Runs.Run first = ask(runs, question("0.2"));
    BurnResult result = wait(first);
    assertThat(ask(runs, question("0.2"))).isSameAs(first);
    for (int i = 0; i < 1000 && kept.newestFirst().isEmpty(); i++) {
      LockSupport.parkNanos(10_000_000);
    }
    Runs opened = new Runs(kept);
    assertThat(opened.newestFirst()).extracting(r -> r.title).containsExactly(first.title);
    Runs.Run again = ask(opened, question("0.2"));
    assertThat(again.isRunning()).isFalse();
    assertThat(again.id).isEqualTo(first.id);
    assertThat(again.result().orElseThrow()).isEqualTo(result);
    assertThat(again.frames()).hasSameSizeAs(first.frames());
    assertThat(Arrays.deepToString(again.frames().get(0).plan()))
        .isEqualTo(Arrays.deepToString(first.frames().get(0).plan()));
    assertThat(again.band().orElseThrow().radiusHighMm())
        .isEqualTo(first.band().orElseThrow().radiusHighMm());
    Runs.Run other = ask(opened, question("0.1"));
    assertThat(other.id).isGreaterThan(first.id);
    wait(other);
    Form colder = SimulationForm.usual().with("hours", "0.2").with("grid", "5").with("room", "20");
    assertThat(SimulationForm.read(colder).orElseThrow().key()).isNotEqualTo(question("0.2").key());
  }

  /** Handbook of burning, row 38: a faster wick, a warmer wall. */
  @Test
  void besideATestedCandleTheWallIsOnlyWarmerOrCooler(@TempDir Path folder) {
    KeptResults kept = new ResultFiles(new StudioFolder(folder));
    Runs runs = new Runs(kept);
    SimulationForm.Question slow =
        SimulationForm.read(
                SimulationForm.usual().with("hours", "1").with("grid", "5").with("rate", "3"))
            .orElseThrow();
    Beside fast = new Beside("Bollard", question("1").burn(), question("1").burn(), List.of());
    Runs.Run run = runs.start(slow, fast);
    wait(run);
    assertThat(run.besideName()).isEqualTo("Bollard");
    assertThat(run.besideTold()).startsWith("wall cooler, underside ");
    Runs.Run itself = runs.start(question("1"), fast);
    wait(itself);
    assertThat(itself.besideTold()).isEqualTo("wall alike, underside alike");
    assertThat(runs.start(slow, fast)).isSameAs(run);
    Runs.Run alone = runs.start(slow, null);
    assertThat(alone).isNotSameAs(run);
    wait(alone);
    assertThat(alone.besideName()).isEmpty();
  }

  private static List<TestFit.Got> test() {
    List<TestFit.Got> got = new ArrayList<>();
    for (double h : new double[] {0.5, 1, 2}) {
      got.add(got(h, WickFit.Kind.POOL_RADIUS_MM, 24 + 4 * h));
      got.add(got(h, WickFit.Kind.WALL_C, 26 + 6 * h));
      got.add(got(h, WickFit.Kind.BASE_C, 23 + 3 * h));
    }
    return got;
  }

  private static TestFit.Got got(double hours, WickFit.Kind kind, double value) {
    return new TestFit.Got(new WickFit.Want(hours, kind), value);
  }

  /** Two tests of the family: warmer or cooler only; from three on degrees, always with a band. */
  @Test
  void fromThreeTestsOfTheFamilyOnWallAndUndersideAreToldInDegrees(@TempDir Path folder) {
    Burn asked = question("2").burn();
    List<TestFit.Got> test = test();
    Beside two = new Beside("Bollard", asked, asked, List.of(test, test));
    assertThat(two.warm(asked))
        .isEqualTo("not shown: 2 of 3 tests of this vessel's family have read the wall");
    Beside three = new Beside("Bollard", asked, asked, List.of(test, test, test));
    assertThat(three.warm(asked))
        .matches(
            "wall \\d+ °C \\(\\d+ to \\d+\\), underside \\d+ °C \\(\\d+ to \\d+\\), from 3 tests");
    Form wide = SimulationForm.usual().with("length", "90").with("hours", "2").with("grid", "5");
    assertThat(three.warm(SimulationForm.read(wide).orElseThrow().burn()))
        .startsWith("not shown: another vessel than the tested one, which is 75 mm across inside");
    KeptResults kept = new ResultFiles(new StudioFolder(folder));
    Runs runs = new Runs(kept);
    Runs.Run before = runs.start(question("2"), two);
    Runs.Run after = runs.start(question("2"), three);
    assertThat(after).as("a new test is a new question").isNotSameAs(before);
    wait(before);
    wait(after);
    assertThat(before.besideWarm()).startsWith("not shown");
    assertThat(after.besideWarm()).startsWith("wall ");
    for (int i = 0; i < 1000 && kept.newestFirst().size() < 2; i++) {
      LockSupport.parkNanos(10_000_000);
    }
    Runs.Run again = new Runs(kept).start(question("2"), three);
    assertThat(again.besideWarm()).isEqualTo(after.besideWarm());
  }

  @Test
  void aFileCutShortIsAsIfItHadNeverBeen(@TempDir Path folder) throws Exception {
    KeptResults kept = new ResultFiles(new StudioFolder(folder));
    wait(ask(new Runs(kept), question("0.1")));
    for (int i = 0; i < 1000 && kept.newestFirst().isEmpty(); i++) {
      LockSupport.parkNanos(10_000_000);
    }
    String name = kept.newestFirst().get(0);
    byte[] whole = kept.read(name).orElseThrow();
    for (int length : List.of(0, 3, whole.length / 2, whole.length - 9)) {
      assertThat(RunFile.of(Arrays.copyOf(whole, length))).isEmpty();
    }
    Path file = folder.resolve("computed").resolve(name + ".result");
    Files.write(file, Arrays.copyOf(whole, whole.length / 2));
    Runs opened = new Runs(kept);
    assertThat(opened.newestFirst()).isEmpty();
    assertThat(wait(ask(opened, question("0.1"))).pool()).isNotEmpty();
  }
}
