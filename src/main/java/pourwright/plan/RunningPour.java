package pourwright.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pourwright.card.Amounts;
import pourwright.card.CardBook;

/**
 * Candles of one pour that is under way: what is over is over, the step or wait they are in has
 * begun, and what is left of the way is planned. They are not poured a second time.
 *
 * @param key short name in the plan, e.g. {@code B12 setting}; no other batch has it
 * @param pour code of the pour card
 * @param fills which candles, and how many; what goes into each is not asked
 * @param needs what is still to be drawn for it, in the materials' usual units
 * @param stage how far they are
 * @param sinceMin when they came there, in minutes from the origin, not above 0
 */
public record RunningPour(
    String key, String pour, List<PourJob.Fill> fills, Amounts needs, Stage stage, int sinceMin) {
  /** How far a pour is. */
  public enum Stage {
    /** Begun: the vessels are being wicked. */
    WICKING("wick", How.BEGUN),
    /** The vessels are wicked, nothing is warm yet. */
    WICKED("wick", How.OVER),
    /** The melter is warm. */
    MELTING("melt", How.BEGUN),
    /** Molten: to be poured while the wax is in its window. */
    MELTED("melt", How.ENDED_THEN),
    /** Poured, setting. */
    SETTING("set", How.BEGUN),
    /** Trimmed, resting. */
    RESTING("rest", How.BEGUN);

    private final String step;
    private final How how;

    Stage(String step, How how) {
      this.step = step;
      this.how = how;
    }
  }

  private enum How {
    /** The step began at the minute since which it is known. */
    BEGUN,
    /** The step ended at that minute, and what follows has a latest moment. */
    ENDED_THEN,
    /** The step is over and nothing hangs on when. */
    OVER
  }

  /** Copies. */
  public RunningPour {
    fills = List.copyOf(fills);
  }

  /** Candles of one design in it. */
  public int candles(String design) {
    return fills.stream()
        .filter(f -> f.design().equals(design))
        .mapToInt(PourJob.Fill::candles)
        .sum();
  }

  /** True while it wants hands or the melter soon, whoever its candles are for. */
  boolean wantsHandsSoon() {
    return stage != Stage.RESTING;
  }

  private boolean isStage(Step step) {
    String name = key + "/" + stage.step;
    return step.key().equals(name) || step.key().startsWith(name + "-");
  }

  /**
   * What is left of its way.
   *
   * @param opens the next minutes at which somebody is there, in order
   * @param ownMelter false where another melt under way has the melter: this one stands elsewhere
   * @param others true where another pour wants hands or melter just now
   */
  Route left(CardBook book, Habits habits, List<Window> opens, boolean ownMelter, boolean others) {
    PourJob job = new PourJob(key, pour, fills, needs, 0, 0, 0, List.of());
    Route whole = new PourRoute(job, book, habits).lay();
    List<Step> steps = new ArrayList<>();
    boolean reached = false;
    for (Step step : whole.steps()) {
      if (!isStage(step)) {
        if (reached) {
          steps.add(step);
        }
        continue;
      }
      if (stage.how == How.OVER) {
        reached = true;
      } else if (!reached) {
        reached = true;
        int start = stage.how == How.BEGUN ? sinceMin : sinceMin - step.minutes();
        Step begun = step.fixedAt(Math.min(-1, start));
        steps.add(ownMelter ? begun : begun.using(Map.of()));
      } else {
        steps.add(step); // a later stretch of the same work
      }
    }
    Set<String> keys = new HashSet<>();
    steps.forEach(s -> keys.add(s.key()));
    List<Link> links = new ArrayList<>();
    for (Link link : whole.links()) {
      if (keys.contains(link.before()) && keys.contains(link.after())) {
        Step first = steps.get(0);
        Integer began = first.fixedStartMin();
        links.add(
            began != null && link.before().equals(first.key())
                ? CatchUp.molten(
                    link, began + first.minutes(), steps.get(1).minutes(), others, opens)
                : link);
      }
    }
    return new Route(job, steps, links, List.of());
  }

  /** True while its hands cannot wait. */
  boolean isInHand() {
    return isMolten() || stage == Stage.WICKING;
  }

  /** True where its first step stands in the melter. */
  boolean isMolten() {
    return stage == Stage.MELTING || stage == Stage.MELTED;
  }
}
