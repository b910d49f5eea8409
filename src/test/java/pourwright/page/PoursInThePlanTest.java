package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.plan.PlanChecker;
import pourwright.plan.Planner;
import pourwright.plan.RunningPour;
import pourwright.plan.RunningPour.Stage;
import pourwright.solve.CpSatPlanner;
import pourwright.work.AdvancePieces;
import pourwright.work.BeginPour;
import pourwright.work.FinishPour;
import pourwright.work.RecordStep;
import pourwright.work.Replan;
import pourwright.work.WorkPlan;

/** One pour from its beginning to the shelf: the plan follows it and never makes it twice. */
class PoursInThePlanTest {
  private static final String CANDLE = "bollard-rain";

  @TempDir Path folder;
  private Workshop workshop;
  private List<Piece> vessels;

  @BeforeEach
  void threeAreOrderedAndThreeVesselsStandReady() {
    workshop = new Workshop(folder);
    vessels = workshop.vessels("bollard", 3);
    workshop.order("1042", CANDLE, 3, "shop");
  }

  private WorkPlan plan() {
    Planner.Effort effort = Planner.Effort.of(Duration.ofSeconds(2));
    Replan.Preview preview =
        new Replan(workshop.desk.studio())
            .look(now(), ZoneOffset.UTC, CpSatPlanner.alone(), effort);
    WorkPlan plan = preview.fresh();
    assertThat(plan.reasons()).isEmpty();
    assertThat(PlanChecker.check(plan.problem(), java.util.Objects.requireNonNull(plan.plan())))
        .isEmpty();
    assertThat(plan.make().casts()).as("vessels are there").isEmpty();
    return plan;
  }

  private Instant now() {
    return workshop.desk.studio().now();
  }

  private static String steps(WorkPlan plan) {
    return plan.problem().steps().stream()
        .map(s -> s.key().substring(s.key().indexOf('/') + 1))
        .collect(Collectors.joining(" "));
  }

  /** The pour under way is in the plan so far, and there is no other. */
  private void stands(Stage stage, int sinceMin, String left) {
    WorkPlan plan = plan();
    assertThat(plan.make().pours()).as("nothing is poured twice").isEmpty();
    RunningPour running = plan.make().poured().get(0);
    assertThat(running.stage()).isEqualTo(stage);
    assertThat(running.sinceMin()).isEqualTo(sinceMin);
    assertThat(running.candles(CANDLE)).isEqualTo(3);
    assertThat(plan.make().served().get(0).pours()).containsExactly(running.key());
    assertThat(steps(plan)).isEqualTo(left);
  }

  private void record(long pour, String key) {
    workshop
        .desk
        .studio()
        .recordStep
        .run(workshop.act(), new RecordStep.Request(pour, key, List.of(), null))
        .made();
  }

  @Test
  void thePlanFollowsAPourFromTheWicksToTheShelf() {
    WorkPlan before = plan();
    assertThat(before.make().pours()).hasSize(1);
    assertThat(steps(before)).isEqualTo("wick melt pour set trim rest box");

    long pour =
        workshop
            .desk
            .studio()
            .beginPour
            .run(workshop.act(), new BeginPour.Request(CANDLE, 3, 0))
            .made()
            .id();
    workshop.clock.move(Duration.ofMinutes(5));
    stands(Stage.WICKING, -5, "wick melt pour set trim rest box");
    record(pour, "tab");
    stands(Stage.WICKED, 0, "melt pour set trim rest box");
    record(pour, "warm");
    workshop.clock.move(Duration.ofMinutes(20));
    stands(Stage.MELTING, -20, "melt pour set trim rest box");
    record(pour, "melt");
    record(pour, "scent");
    workshop.clock.move(Duration.ofMinutes(10));
    stands(Stage.MELTED, -10, "melt pour set trim rest box");
    record(pour, "pour");
    workshop.clock.move(Duration.ofMinutes(30));
    stands(Stage.SETTING, -30, "set trim rest box");

    List<Long> ids = vessels.stream().map(Piece::id).toList();
    workshop
        .desk
        .studio()
        .finishPour
        .run(
            workshop.act(),
            new FinishPour.Request(pour, List.of(new FinishPour.Filled(CANDLE, ids)), List.of()))
        .made();
    workshop.clock.move(Duration.ofMinutes(30));
    stands(Stage.SETTING, -60, "set trim rest box"); // from the pour, not from closing it
    move(ids, PieceStep.RESTING);
    workshop.clock.move(Duration.ofDays(3));
    stands(Stage.RESTING, -3 * 1440, "rest box");
    move(ids, PieceStep.RESTED);
    WorkPlan after = plan();
    assertThat(after.make().poured()).isEmpty();
    assertThat(after.make().served().get(0).fromStock()).isEqualTo(3);
    assertThat(after.problem().steps()).isEmpty();
  }

  private void move(List<Long> ids, PieceStep step) {
    workshop
        .desk
        .studio()
        .advancePieces
        .run(workshop.act(), AdvancePieces.Request.of(ids, step))
        .made();
  }

  @Test
  void vesselsThatAreBeingFilledAreNotPromisedToTheNextPour() {
    workshop
        .desk
        .studio()
        .beginPour
        .run(workshop.act(), new BeginPour.Request(CANDLE, 2, 0))
        .made();
    workshop.order("1043", CANDLE, 2, "shop");
    WorkPlan plan =
        workshop
            .desk
            .studio()
            .look(
                b ->
                    WorkPlan.of(
                        b,
                        Replan.openLines(b),
                        now(),
                        ZoneOffset.UTC,
                        new pourwright.plan.ForwardRule()));
    // five wanted, two under way; three vessels stand there, two of them are spoken for
    assertThat(plan.make().pours().get(0).candles()).isEqualTo(3);
    assertThat(plan.make().casts().get(0).pieces()).isEqualTo(2);
    assertThat(plan.inHand().vessels().values()).containsExactly(1);
  }

  @Test
  void whatIsDrawnAlreadyIsNotNeededAgain() {
    long pour =
        workshop
            .desk
            .studio()
            .beginPour
            .run(workshop.act(), new BeginPour.Request(CANDLE, 3, 0))
            .made()
            .id();
    double all = plan().make().needs().get("soft-wax-a");
    assertThat(all).isGreaterThan(100);
    workshop
        .desk
        .studio()
        .recordStep
        .run(
            workshop.act(),
            new RecordStep.Request(
                pour,
                "melt",
                List.of(
                    new RecordStep.Taken("soft-wax-a", null, pourwright.stock.Amount.ofGrams(100))),
                null))
        .made();
    assertThat(plan().make().needs().get("soft-wax-a"))
        .isCloseTo(all - 100, org.assertj.core.api.Assertions.within(0.001));
  }
}
