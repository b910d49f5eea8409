package pourwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.Temporal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.PlanProblem;
import pourwright.plan.Resource;
import pourwright.plan.Step;
import pourwright.plan.Window;

/** The plan in a calendar, read back by an independent library. */
class PlanCalendarTest {
  private static final Instant ORIGIN = Instant.parse("2026-03-27T23:00:00Z");
  private static final Step SEAL =
      Step.hands("C1", "seal", "Seal 4 Bollards, first coat; 2 tins", 30);
  private static final Step DRY = Step.wait("C1", "dry", "Dry the coat", 720);
  private static final Step BURN =
      Step.watch(
          "T1",
          "burn",
          "Burn test «Rain on slate»: a very long line that a calendar has to"
              + " fold because it is longer than seventy-five octets",
          240);

  private static PlanProblem problem() {
    return new PlanProblem(
        ORIGIN,
        ZoneId.of("Europe/Rome"),
        2880,
        List.of(Resource.person("hands", "Marta", List.of(new Window(0, 2880)))),
        List.of(SEAL, DRY, BURN),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        30);
  }

  private static Plan plan(int sealAt) {
    return new Plan(
        List.of(
            new Placed(SEAL.key(), sealAt, sealAt + 30, "hands"),
            new Placed(DRY.key(), sealAt + 30, sealAt + 750, null),
            new Placed(BURN.key(), 2000, 2240, null)));
  }

  private static Map<String, VEvent> read(Plan plan) throws Exception {
    String text = PlanCalendar.of(problem(), plan, "Undercroft Lantern Works", ORIGIN);
    Calendar calendar = new CalendarBuilder().build(new StringReader(text));
    calendar.validate();
    Map<String, VEvent> events = new HashMap<>();
    for (Component component : calendar.getComponents()) {
      if (component instanceof VEvent event) {
        events.put(event.getSummary().getValue(), event);
      }
    }
    return events;
  }

  private static Instant start(VEvent event) {
    Temporal date = event.getDateTimeStart().getDate();
    return Instant.from(date);
  }

  private static VEvent of(Map<String, VEvent> events, Step step) {
    VEvent event = events.get(step.words());
    assertThat(event).as(step.words()).isNotNull();
    return java.util.Objects.requireNonNull(event);
  }

  @Test
  void whatNeedsSomebodyIsInTheCalendarAtTheRightInstant() throws Exception {
    Map<String, VEvent> events = read(plan(1140));
    assertThat(events).hasSize(2).containsKeys(SEAL.words(), BURN.words());
    assertThat(start(of(events, SEAL))).isEqualTo(Instant.parse("2026-03-28T18:00:00Z"));
    // The night in which the clocks change lies between: minutes that really pass.
    assertThat(start(of(events, BURN))).isEqualTo(ORIGIN.plusSeconds(2000 * 60));
  }

  @Test
  void aStepThatMovesKeepsItsIdentifier() throws Exception {
    VEvent before = of(read(plan(1140)), SEAL);
    VEvent after = of(read(plan(1200)), SEAL);
    assertThat(after.getUid()).isEqualTo(before.getUid());
    assertThat(start(after)).isEqualTo(start(before).plusSeconds(3600));
  }
}
