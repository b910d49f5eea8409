package pourwright.page.plan;

import java.util.List;

/**
 * The standing plan: finished strings.
 *
 * @param there whether there is anything to draw
 * @param taken whether it is a plan that was taken
 * @param by how it came about, or why there is none
 * @param today the day's strip as SVG
 * @param weeks the coming weeks as SVG
 * @param list what needs somebody, day by day
 * @param why reasons for one step, or empty
 * @param move moving that step by hand
 * @param classes classes to come
 */
public record PlanPage(
    boolean there,
    boolean taken,
    String by,
    String today,
    String weeks,
    List<Day> list,
    Why why,
    Move move,
    List<ClassPages.Row> classes) {
  /** Keeps its own copies. */
  public PlanPage {
    list = List.copyOf(list);
    classes = List.copyOf(classes);
  }

  /** One day's steps. */
  public record Day(String day, List<Row> rows) {}

  /**
   * One thing that is done, once or several times on end.
   *
   * @param time from the first to the last
   * @param words what is done
   * @param who hands or watch
   * @param each every time of it, one at least
   */
  public record Row(String time, String words, String who, List<Once> each) {
    /** Keeps its own copy. */
    public Row {
      each = List.copyOf(each);
    }
  }

  /**
   * One step.
   *
   * @param key of the step
   * @param time from and to
   */
  public record Once(String key, String time) {}

  /**
   * Moving a step by hand.
   *
   * @param step its key; empty where none was asked for
   * @param form the day and the time that were typed
   * @param asked true once a place was asked for
   * @param breaks what the step there would break; empty when it breaks nothing
   */
  public record Move(String step, pourwright.page.Form form, boolean asked, List<String> breaks) {
    /** Keeps its own copy. */
    public Move {
      breaks = List.copyOf(breaks);
    }

    static Move none() {
      return new Move("", pourwright.page.Form.blank(), false, List.of());
    }
  }

  /** Why a step is where it is, or what a move by hand would break. */
  public record Why(String words, List<String> reasons) {
    static final Why NOTHING = new Why("", List.of());
  }
}
