package pourwright.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import pourwright.card.CandleDesign;
import pourwright.card.CardBook;
import pourwright.card.PourCard;

/** The steps of one pour, from the empty vessel to the box. */
final class PourRoute {
  private final PourJob job;
  private final CardBook book;
  private final Habits habits;
  private final PourCard pour;
  private final String what;
  private final Chain chain;

  PourRoute(PourJob job, CardBook book, Habits habits) {
    this.job = job;
    this.book = book;
    this.habits = habits;
    this.pour = book.pour(job.pour());
    this.what =
        job.fills().stream()
            .map(f -> f.candles() + " " + book.vessel(design(f).vessel()).name())
            .collect(Collectors.joining(", "));
    this.chain = new Chain(job.key(), habits.hands().stretch());
  }

  private CandleDesign design(PourJob.Fill fill) {
    return book.candle(fill.design());
  }

  private Step hands(String name, String words, double minutes) {
    return Step.hands(job.key(), name, words, Math.max(1, (int) Math.ceil(minutes)));
  }

  Route lay() {
    Habits.Hands hands = habits.hands();
    int wicks = job.fills().stream().mapToInt(f -> f.candles() * design(f).wicks().count()).sum();
    String scent = pour.name() + ": " + what;
    chain.thenHands(hands("wick", "Wick " + what, hands.wick() * wicks), 0, null, "");
    chain.then(
        Step.watch(job.key(), "melt", "Melt for " + scent, habits.waits().melt())
            .using(Map.of(Routing.MELTER, 1))
            .marked(Set.of("flame"), pour.family()),
        0,
        null,
        "melt when the vessels stand ready");
    chain.then(
        hands("pour", "Stir in the scent and pour " + scent, hands.pour() * job.candles() + 10)
            .madeHot()
            .using(Map.of(Routing.MELTER, 1))
            .marked(Set.of("open-wax"), pour.family()),
        0,
        habits.waits().pourWithin(),
        "poured while the wax is in its window");
    chain.thenWait("set", "Set: " + scent, habits.waits().setH(), "sets from the pour on");
    chain.thenHands(
        hands("trim", "Level and trim " + what, hands.trim() * wicks), 0, null, "trim when set");
    chain.thenWait("rest", "Rest: " + scent, restDays() * 24, "rests from the trim on");
    int boxes =
        job.fills().stream()
            .mapToInt(f -> (f.candles() + design(f).piecesPerBox() - 1) / design(f).piecesPerBox())
            .sum();
    chain.thenHands(
        hands("box", "Check, label and box " + what, hands.box() * boxes),
        0,
        null,
        "boxed when rested");
    List<Span> spans = new ArrayList<>();
    return new Route(job, chain.steps(), chain.links(), spans);
  }

  /** The longest rest that one of the candles asks for. */
  private double restDays() {
    Map<String, Double> days = new HashMap<>();
    for (PourJob.Fill fill : job.fills()) {
      Double own = design(fill).restDays();
      days.put(fill.design(), own == null ? pour.restDays() : own);
    }
    return days.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
  }
}
