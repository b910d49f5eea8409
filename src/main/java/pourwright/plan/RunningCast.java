package pourwright.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
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
        links.add(
            link.before().endsWith("/" + stage.wait)
                ? CatchUp.inTime(link, Math.min(-1, sinceMin) + steps.get(0).minutes(), opens)
                : link);
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
}
