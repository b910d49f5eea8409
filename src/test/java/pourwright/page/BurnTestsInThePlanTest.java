package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Piece;
import pourwright.plan.ForwardRule;
import pourwright.plan.PlanChecker;
import pourwright.plan.Step;
import pourwright.work.BurnTest;
import pourwright.work.Replan;
import pourwright.work.RunBurnTest;
import pourwright.work.WorkPlan;

/** Candles for tests are made beside the order, and open tests burn where somebody watches. */
class BurnTestsInThePlanTest {
  private static final String CANDLE = "bollard-rain";

  @TempDir Path folder;
  private Workshop workshop;

  @BeforeEach
  void threeAreOrdered() {
    workshop = new Workshop(folder);
    workshop.order("1042", CANDLE, 3, "shop");
  }

  private WorkPlan plan() {
    WorkPlan plan =
        workshop
            .desk
            .studio()
            .look(
                books ->
                    WorkPlan.of(
                        books,
                        Replan.openLines(books),
                        workshop.desk.studio().now(),
                        ZoneOffset.UTC,
                        new ForwardRule()));
    assertThat(plan.reasons()).isEmpty();
    assertThat(PlanChecker.check(plan.problem(), Objects.requireNonNull(plan.plan()))).isEmpty();
    return plan;
  }

  private void setAside(String candles) {
    var save = workshop.desk.studio().saveSetting;
    assertThat(save.run(workshop.act(), "plan.test-candles", candles).isDone()).isTrue();
  }

  private int forTests() {
    return plan().make().served().stream()
        .filter(s -> s.line().order().equals("burn test"))
        .mapToInt(s -> s.line().quantity())
        .sum();
  }

  private BurnTest onTest(List<Piece> candles) {
    List<RunBurnTest.NewSample> samples =
        candles.stream().map(c -> new RunBurnTest.NewSample(c.mark().text(), c.id())).toList();
    RunBurnTest.Request request = new RunBurnTest.Request(CANDLE, 1, "house", "to sell", samples);
    return workshop.desk.studio().burnTests.begin(workshop.act(), request).made();
  }

  private List<String> burning() {
    return plan().problem().steps().stream()
        .map(Step::key)
        .filter(k -> k.startsWith("T"))
        .map(k -> k.substring(k.indexOf('/') + 1))
        .toList();
  }

  @Test
  void noneAreMadeUntilSheSaysHowManyAndThenThoseThatAreMissing() {
    assertThat(forTests()).isZero();
    double without = plan().make().needs().get("scent-rain");
    setAside("3");
    assertThat(forTests()).isEqualTo(3);
    assertThat(plan().make().needs().get("scent-rain")).isGreaterThan(without);
    onTest(workshop.candles(CANDLE, "rain", workshop.vessels("bollard", 2), "scent-rain", 20));
    assertThat(forTests()).as("two of the three are on the shelf").isEqualTo(1);
  }

  @Test
  void aCandleThatIsProvedAsksForNone() {
    setAside("3");
    workshop.prove(CANDLE, "rain", "scent-rain", 20);
    assertThat(forTests()).isZero();
  }

  @Test
  void eachSampleIsLitByHandAndWatchedAndOneThatBurnsGoesOn() {
    assertThat(burning()).isEmpty();
    BurnTest test =
        onTest(workshop.candles(CANDLE, "rain", workshop.vessels("bollard", 2), "scent-rain", 20));
    assertThat(burning()).containsExactly("light-1", "burn-1", "light-2", "burn-2");
    var studio = workshop.desk.studio();
    long first = studio.look(b -> b.burns().samples(test.id())).get(0).id();
    studio.burnTests.light(workshop.act(), test.id(), first).made();
    workshop.clock.move(Duration.ofHours(1));
    assertThat(burning()).containsExactly("burn-1", "light-2", "burn-2");
    assertThat(plan().problem().steps()).filteredOn(Step::begun).hasSize(1);
    studio.burnTests.close(workshop.act(), test.id(), "fail", "it sooted").made();
    assertThat(burning()).as("a closed test burns no more").isEmpty();
  }
}
