package pourwright.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.card.Amounts;
import pourwright.card.CardBook;

/**
 * Vessels of one cast that is under way: the steps behind them are over, the wait they are in has
 * begun, and what is left of the way is planned.
 *
 * @param key short name in the plan, e.g. {@code B12 green}; no other batch has it
 * @param kind vessel, mix and finish
 * @param pieces how many
 * @param stage how far they are
 * @param sinceMin when they came there, in minutes from the origin, not above 0
 */
public record RunningCast(String key, VesselKind kind, int pieces, Stage stage, int sinceMin) {
  /** How far a cast is. */
  public enum Stage {
    /** In the mold. */
    SETTING("set", true),
    /** Out of the mold, kept damp. */
    HARDENING("harden", true),
    /** Hard, not yet sanded. */
    HARDENED("harden", false),
    /** Sealed, the sealer not yet full-dry. */
    SEALED("full", true),
    /** Wetted by a test, drying again. */
    WETTED("dry2", true);

    private final String wait;
    private final boolean inIt;

    Stage(String wait, boolean inIt) {
      this.wait = wait;
      this.inIt = inIt;
    }
  }

  /** Shortest time that is left for a step whose latest moment has gone or is near; house. */
  private static final int CATCH_UP_MIN = 240;

  /** The vessel's mold as the card book has it first; none for a vessel without one. */
  private CastJob job(CardBook book) {
    String mold =
        book.moldsFor(kind.vessel()).stream().map(m -> m.code()).findFirst().orElse("none");
    return new CastJob(
        key,
        kind.mix(),
        kind.finish(),
        List.of(new CastJob.Fill(kind.vessel(), mold, pieces)),
        Amounts.NONE,
        0,
        0,
        0,
        List.of());
  }

  /**
   * What is left of its way; no step at all where it is at the end of it.
   *
   * @param opens the next minutes at which somebody is there, in order
   */
  Route left(CardBook book, Habits habits, List<Window> opens) {
    Route whole = new CastRoute(job(book), book, habits).lay();
    int from = 0;
    while (from < whole.steps().size() && !is(whole.steps().get(from))) {
      from++;
    }
    List<Step> steps = new ArrayList<>();
    for (int i = stage.inIt ? from : from + 1; i < whole.steps().size(); i++) {
      Step step = whole.steps().get(i);
      steps.add(is(step) ? step.fixedAt(Math.min(-1, sinceMin)) : step);
    }
    Set<String> keys = new HashSet<>();
    steps.forEach(s -> keys.add(s.key()));
    List<Link> links = new ArrayList<>();
    for (Link link : whole.links()) {
      if (keys.contains(link.before()) && keys.contains(link.after())) {
        links.add(link.before().endsWith("/" + stage.wait) ? inTime(link, steps, opens) : link);
      }
    }
    List<Span> spans = new ArrayList<>();
    for (Span span : whole.spans()) {
      if (keys.contains(span.toStep()) && book.moldsFor(kind.vessel()).size() > 0) {
        String first = keys.contains(span.fromStep()) ? span.fromStep() : steps.get(0).key();
        spans.add(new Span(span.resource(), span.amount(), first, span.toStep()));
      }
    }
    return new Route(whole.job(), steps, links, spans);
  }

  private boolean is(Step step) {
    return step.key().equals(key + "/" + stage.wait);
  }

  /** A latest moment that has gone, or falls where nobody is there, is met as soon as can be. */
  private Link inTime(Link link, List<Step> steps, List<Window> opens) {
    @Nullable Integer most = link.maxMin();
    if (most == null) {
      return link;
    }
    int end = Math.min(-1, sinceMin) + steps.get(0).minutes();
    int soonest =
        opens.stream()
            .filter(w -> w.toMin() >= end + CATCH_UP_MIN)
            .mapToInt(w -> Math.max(w.fromMin(), Math.max(0, end)))
            .findFirst()
            .orElse(0);
    int needed = soonest + CATCH_UP_MIN - end;
    return new Link(
        link.before(), link.after(), link.minMin(), Math.max(most, needed), link.reason());
  }
}
