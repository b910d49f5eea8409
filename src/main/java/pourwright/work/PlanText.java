package pourwright.work;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import pourwright.plan.Apart;
import pourwright.plan.Goal;
import pourwright.plan.Link;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.PlanProblem;
import pourwright.plan.Resource;
import pourwright.plan.Span;
import pourwright.plan.Step;
import pourwright.plan.Washing;

/** A problem and its plan as the JSON text that a run of the planner is kept in. */
public final class PlanText {
  private static final ObjectMapper JSON =
      JsonMapper.builder().disable(MapperFeature.AUTO_DETECT_IS_GETTERS).build();

  private PlanText() {}

  /** A problem with its plan. */
  public record Kept(PlanProblem problem, Plan plan) {}

  private record Body(
      String origin,
      String zone,
      int horizonMin,
      List<Resource> resources,
      List<Step> steps,
      List<Link> links,
      List<Span> spans,
      List<Goal> goals,
      List<Apart> apart,
      List<Washing> washings,
      int lastHotStartMin,
      List<Placed> placed) {}

  /** Writes both. */
  public static String write(PlanProblem problem, Plan plan) {
    try {
      return JSON.writeValueAsString(
          new Body(
              problem.origin().toString(),
              problem.zone().getId(),
              problem.horizonMin(),
              problem.resources(),
              problem.steps(),
              problem.links(),
              problem.spans(),
              problem.goals(),
              problem.apart(),
              problem.washings(),
              problem.lastHotStartMin(),
              plan.placed()));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a plan cannot be written", e);
    }
  }

  /**
   * Reads both.
   *
   * @throws IllegalStateException when the text is not one that {@link #write} made
   */
  public static Kept read(String text) {
    try {
      Body body = JSON.readValue(text, Body.class);
      return new Kept(
          new PlanProblem(
              Instant.parse(body.origin()),
              ZoneId.of(body.zone()),
              body.horizonMin(),
              body.resources(),
              body.steps(),
              body.links(),
              body.spans(),
              body.goals(),
              body.apart(),
              body.washings(),
              body.lastHotStartMin()),
          new Plan(body.placed()));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a kept plan cannot be read", e);
    }
  }
}
