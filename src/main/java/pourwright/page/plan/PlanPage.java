package pourwright.page.plan;

import java.util.List;

/**
 * The standing plan: finished strings.
 *
 * @param there whether a plan stands
 * @param today the day's strip as SVG
 * @param weeks the coming weeks as SVG
 * @param list what needs somebody, day by day
 * @param why reasons for one step, or empty
 */
public record PlanPage(boolean there, String today, String weeks, List<Day> list, Why why) {
  /** Keeps its own copy. */
  public PlanPage {
    list = List.copyOf(list);
  }

  /** One day's steps. */
  public record Day(String day, List<Row> rows) {}

  /**
   * One step.
   *
   * @param key of the step
   * @param time from and to
   * @param words what is done
   * @param who hands or watch
   */
  public record Row(String key, String time, String words, String who) {}

  /** Why a step is where it is, or what a move by hand would break. */
  public record Why(String words, List<String> reasons) {
    static final Why NOTHING = new Why("", List.of());
  }
}
