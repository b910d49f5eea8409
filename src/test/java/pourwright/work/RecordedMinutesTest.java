package pourwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.PlannedStep;

/** Which gaps between recorded steps are hands; worked by hand. */
class RecordedMinutesTest {
  private static final Instant BEGUN = Instant.parse("2026-03-02T09:00:00Z");
  private static final BatchPlan PLAN =
      new BatchPlan(
          BatchKind.CAST,
          "grey",
          1,
          List.of(new BatchPlan.Makes("bollard", 1, 4, null)),
          List.of(
              PlannedStep.hands("mix", "Mix", 15),
              PlannedStep.hands("fill", "Fill", 8),
              PlannedStep.waiting("set", "Set", 60),
              PlannedStep.hands("demold", "Demold", 12)),
          null);

  private static BatchBook.StepTime at(String key, int minutes) {
    return new BatchBook.StepTime(key, BEGUN.plusSeconds(60L * minutes));
  }

  /** 20 and 10 minutes as done; the wait before demolding is nobody's hands: 12 as planned. */
  @Test
  void aStepTookFromTheOneBeforeItAndAWaitIsNotCounted() {
    assertThat(
            RecordedMinutes.minutes(
                PLAN, BEGUN, List.of(at("mix", 20), at("fill", 30), at("demold", 110))))
        .isEqualTo(Optional.of(42.0));
  }

  @Test
  void aWaitThatWasRecordedItselfMakesTheNextStepCount() {
    assertThat(
            RecordedMinutes.minutes(
                PLAN,
                BEGUN,
                List.of(at("mix", 20), at("fill", 30), at("set", 95), at("demold", 110))))
        .isEqualTo(Optional.of(45.0));
  }

  @Test
  void whatWasWrittenDownAfterwardsOrAfterLunchIsNotBelieved() {
    assertThat(
            RecordedMinutes.minutes(
                PLAN, BEGUN, List.of(at("mix", 0), at("fill", 0), at("demold", 0))))
        .isEmpty();
    assertThat(
            RecordedMinutes.minutes(
                PLAN, BEGUN, List.of(at("mix", 20), at("fill", 400), at("demold", 401))))
        .isEmpty();
  }
}
