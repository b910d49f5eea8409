package pourwright.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import pourwright.hazard.Tables.Multiplier;
import pourwright.hazard.Tables.Sum;
import pourwright.hazard.Tables.Term;

/**
 * The classes that are given by weighted sums over substances: skin, eye, airways, drowsiness,
 * aspiration, water. A substance counts its share over its limit; the class is given when the
 * counts reach one, which for the generic limits is the published sum and for specific limits the
 * published c/limit (CLP Annex I 3.2.3.3.4).
 */
final class Sums {
  /** Ladders of one effect, the strictest class first; the first one reached is given. */
  static final List<List<String>> LADDERS =
      List.of(
          List.of("skin-corrosion", "skin-irritation"),
          List.of("eye-damage", "eye-irritation"),
          List.of("airway-irritation"),
          List.of("drowsiness"),
          List.of("aquatic-acute-1", "aquatic-acute-2", "aquatic-acute-3"),
          List.of(
              "aquatic-chronic-1", "aquatic-chronic-2", "aquatic-chronic-3", "aquatic-chronic-4"));

  private Sums() {}

  /** What a sum came to. */
  record Outcome(Sum sum, double ratio, double ratioWithTraces, List<Finding.Part> parts) {
    boolean reached() {
      return Limits.reached(ratio, 1);
    }

    double weighted() {
      return ratio * sum.base();
    }
  }

  /** Finding of one ladder, or null when no substance has anything to do with it. */
  static @Nullable Finding judge(
      Regime regime, List<String> ladder, Composition composition, List<String> warnings) {
    List<Outcome> outcomes = new ArrayList<>();
    for (String name : ladder) {
      Sum sum = Tables.shared().sum(regime, name);
      if (sum != null) {
        outcomes.add(outcome(sum, composition));
      }
    }
    Outcome stricter = null;
    for (Outcome outcome : outcomes) {
      if (outcome.reached()) {
        return given(outcome, stricter);
      }
      if (Limits.reached(outcome.ratioWithTraces, 1)) {
        warnings.add(traces(outcome));
      }
      stricter = outcome;
    }
    return stricter == null ? null : notReached(nearest(outcomes));
  }

  static Outcome outcome(Sum sum, Composition composition) {
    double ratio = 0;
    double withTraces = 0;
    List<Finding.Part> parts = new ArrayList<>();
    for (Ingredient substance : composition.substances()) {
      Count best = null;
      for (Term term : sum.terms()) {
        Count count = count(sum, term, substance);
        best = count != null && (best == null || count.ratio > best.ratio) ? count : best;
      }
      if (best == null) {
        continue;
      }
      withTraces += best.ratio;
      if (best.relevant) {
        ratio += best.ratio;
        parts.add(new Finding.Part(substance.name(), substance.share().high(), best.limit));
      }
    }
    return new Outcome(sum, ratio, withTraces, parts);
  }

  private record Count(double ratio, double limit, boolean relevant) {}

  private static @Nullable Count count(Sum sum, Term term, Ingredient substance) {
    HazardClass has = null;
    for (HazardClass c : substance.classes()) {
      if (c.sameLevel(term.ingredient())) {
        has = c;
      }
    }
    if (has == null) {
      return null;
    }
    double m = multiplier(term, substance);
    double times = term.times() == Multiplier.CUTOFF_ONLY ? 1 : m;
    double limit = limit(sum, term, substance) / times;
    double share = substance.share().high();
    boolean relevant = Limits.reached(share, Math.min(term.cutoff() / m, limit));
    return new Count(share / limit, limit, relevant);
  }

  /** The specific limit for the sum's class where there is one, else the generic one. */
  private static double limit(Sum sum, Term term, Ingredient substance) {
    if (term.times() != Multiplier.NONE || sum.result().kind() == HazardKind.AQUATIC_CHRONIC) {
      return term.limit();
    }
    OptionalDouble own = Limits.specific(substance, sum.result());
    if (own.isPresent()) {
      return own.getAsDouble();
    }
    OptionalDouble ofItsClass = Limits.specific(substance, term.ingredient());
    return Math.min(term.limit(), ofItsClass.orElse(term.limit()));
  }

  private static double multiplier(Term term, Ingredient substance) {
    Integer m =
        switch (term.times()) {
          case NONE -> null;
          case ACUTE -> substance.acuteM();
          case CHRONIC, CUTOFF_ONLY -> substance.chronicM();
        };
    return m == null ? 1 : m;
  }

  private static Outcome nearest(List<Outcome> outcomes) {
    Outcome nearest = outcomes.get(0);
    for (Outcome outcome : outcomes) {
      nearest = outcome.ratio >= nearest.ratio ? outcome : nearest;
    }
    return nearest;
  }

  private static Finding given(Outcome outcome, @Nullable Outcome stricter) {
    HazardClass result = outcome.sum.result();
    return new Finding(
        outcome.sum.name(),
        result,
        outcome.parts,
        outcome.weighted(),
        outcome.sum.base(),
        stricter == null ? "" : next(stricter),
        outcome.sum.rule(),
        result.fullCode()
            + ": "
            + who(outcome)
            + ", weighted sum "
            + Percent.text(outcome.weighted())
            + ", limit "
            + Percent.text(outcome.sum.base()));
  }

  private static @Nullable Finding notReached(Outcome nearest) {
    if (nearest.parts.isEmpty()) {
      return null;
    }
    return new Finding(
        nearest.sum.name(),
        null,
        nearest.parts,
        nearest.weighted(),
        nearest.sum.base(),
        next(nearest),
        nearest.sum.rule(),
        "no "
            + nearest.sum.result().fullCode()
            + ": "
            + who(nearest)
            + ", weighted sum "
            + Percent.text(nearest.weighted())
            + " is below the limit of "
            + Percent.text(nearest.sum.base()));
  }

  private static String next(Outcome outcome) {
    String begins =
        outcome.sum.result().fullCode()
            + " begins at a weighted sum of "
            + Percent.text(outcome.sum.base())
            + "; there is "
            + Percent.text(outcome.weighted());
    return outcome.ratio > 0
        ? begins + " (at " + Percent.plain(1 / outcome.ratio) + " times as much)"
        : begins;
  }

  private static String traces(Outcome outcome) {
    return "substances below their cut-off are not counted for "
        + outcome.sum.result().fullCode()
        + ", as the rules allow; counted, it would be reached: ask whether they matter at lower"
        + " amounts";
  }

  private static String who(Outcome outcome) {
    List<String> names = outcome.parts.stream().map(SingleSubstances::at).toList();
    return String.join(", ", names);
  }
}
