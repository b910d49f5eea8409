package pourwright.page.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.PlanProblem;
import pourwright.plan.Resource;
import pourwright.plan.Step;
import pourwright.plan.Window;

class PlanWordsTest {
  private final List<Step> steps = new ArrayList<>();
  private final List<Placed> placed = new ArrayList<>();

  private void coat(String batch, int fromMin, int toMin, String who) {
    Step step = Step.hands(batch, "coat", "Coat 1: 1 Trough", toMin - fromMin);
    steps.add(step);
    placed.add(new Placed(step.key(), fromMin, toMin, who));
  }

  private List<PlanPage.Row> rows() {
    List<Window> day = List.of(new Window(540, 1020));
    PlanProblem problem =
        new PlanProblem(
            Instant.parse("2026-03-02T00:00:00Z"),
            ZoneOffset.UTC,
            2880,
            List.of(Resource.person("MB", "Marta", day), Resource.person("JS", "Jonas", day)),
            steps,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            30);
    List<PlanPage.Day> days = new PlanWords(Locale.UK).days(problem, new Plan(placed), 0);
    return days.stream().flatMap(d -> d.rows().stream()).toList();
  }

  @Test
  void theSameCoatOverAndOverIsOneLineWithEachTimeBehindIt() {
    coat("B1", 540, 546, "MB");
    coat("B2", 546, 552, "MB");
    coat("B3", 560, 566, "MB");
    assertThat(rows())
        .singleElement()
        .satisfies(
            row -> {
              assertThat(row.time()).isEqualTo("09:00 to 09:26");
              assertThat(row.words()).isEqualTo("Coat 1: 1 Trough");
              assertThat(row.each())
                  .extracting(PlanPage.Once::time)
                  .containsExactly("09:00 to 09:06", "09:06 to 09:12", "09:20 to 09:26");
              assertThat(row.each()).extracting(PlanPage.Once::key).doesNotHaveDuplicates();
            });
  }

  @Test
  void otherHandsOrALongBreakBeginALineOfTheirOwn() {
    coat("B1", 540, 546, "MB");
    coat("B2", 546, 552, "JS");
    coat("B3", 563, 569, "JS");
    assertThat(rows())
        .extracting(PlanPage.Row::time)
        .containsExactly("09:00 to 09:06", "09:06 to 09:12", "09:23 to 09:29");
  }
}
