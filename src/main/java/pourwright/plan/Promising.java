package pourwright.plan;

/** Port: finds the earliest date that can be promised. */
public interface Promising {
  /**
   * The earliest end of one goal while every other goal is met, or ends no later than in the
   * standing plan where it is late there already.
   *
   * @param problem the studio with the new order in it
   * @param goal key of the new order's goal; its due minute is not looked at
   * @param standing the plan there was before; empty when nothing was planned
   * @param effort how hard to try
   */
  Promise earliest(PlanProblem problem, String goal, Plan standing, Planner.Effort effort);
}
