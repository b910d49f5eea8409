package pourwright.plan;

import java.util.List;

/** What is done about a latest moment that has gone, or falls where nobody is there. */
final class CatchUp {
  /** Shortest time that is left for a step whose latest moment has gone or is near; house. */
  private static final int LEAST_MIN = 240;

  private CatchUp() {}

  /**
   * The link behind a step that has begun; its step is taken up as soon as somebody is there for
   * some hours.
   *
   * @param end minute at which the step that has begun ends
   * @param opens the next minutes at which somebody is there, in order
   */
  static Link inTime(Link link, int end, List<Window> opens) {
    Integer most = link.maxMin();
    if (most == null) {
      return link;
    }
    int soonest =
        opens.stream()
            .filter(w -> w.toMin() >= end + LEAST_MIN)
            .mapToInt(w -> Math.max(w.fromMin(), Math.max(0, end)))
            .findFirst()
            .orElse(0);
    int needed = soonest + LEAST_MIN - end;
    return new Link(
        link.before(), link.after(), link.minMin(), Math.max(most, needed), link.reason());
  }

  /**
   * The link behind a melt that has begun: poured in its window, counted from when it is molten and
   * somebody is there for as long as it takes.
   *
   * @param end minute at which it is molten
   * @param minutes how long the pouring takes
   * @param others true where another pour wants the same hands or the melter just now
   */
  static Link molten(Link link, int end, int minutes, boolean others, List<Window> opens) {
    Integer most = link.maxMin();
    if (most == null) {
      return link;
    }
    int least = Math.max(minutes, PlanProblem.LAST_HOT_START_MIN);
    int soonest =
        opens.stream()
            .filter(w -> w.toMin() >= Math.max(w.fromMin(), Math.max(0, end)) + least)
            .mapToInt(w -> Math.max(w.fromMin(), Math.max(0, end)))
            .findFirst()
            .orElse(Math.max(0, end));
    int waits = soonest - end + most + (others ? LEAST_MIN : 0);
    return new Link(link.before(), link.after(), link.minMin(), waits, link.reason());
  }
}
