package pourwright.card;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;

/**
 * Her scales, and whether an amount is too fine for one of them: a reading is right to half a step,
 * so 5 g on a scale with steps of 1 g is ±10 %.
 *
 * @param coarseToFine scales that read grams, the coarsest first
 */
public record Scales(List<Instrument> coarseToFine) {
  /** House: an amount should be weighed to 2 % of itself. */
  public static final double TOLERANCE = 0.02;

  /** Keeps its own copy. */
  public Scales {
    coarseToFine = List.copyOf(coarseToFine);
  }

  /** The scales that are on file. */
  public static Scales of(CardBook book) {
    return new Scales(
        book.all(Instrument.class).stream()
            .filter(i -> i.measures().equals("mass") && i.unit().equals("g"))
            .sorted(Comparator.comparingDouble(Instrument::resolution).reversed())
            .toList());
  }

  /**
   * An amount that is finer than a scale can weigh.
   *
   * @param grams the amount
   * @param stepG steps of the scale it is too fine for
   * @param share half a step of the amount
   * @param finer the coarsest scale on file that is fine enough; null where none is
   */
  public record TooFine(double grams, double stepG, double share, @Nullable Instrument finer) {
    /** The sentence a person reads. */
    public String sentence() {
      String off =
          plain(grams)
              + " g on a scale with steps of "
              + plain(stepG)
              + " g is ±"
              + String.format(Locale.ROOT, share < 0.0995 ? "%.1f" : "%.0f", 100 * share)
              + " %: ";
      return finer == null
          ? off
              + "no scale on file is finer. Steps of "
              + plain(2 * TOLERANCE * grams)
              + " g would do, or weigh it for several batches at once."
          : off + "weigh it on " + finer.name() + ", steps of " + plain(finer.resolution()) + " g.";
    }

    private static String plain(double grams) {
      return new BigDecimal(grams).round(new MathContext(3)).stripTrailingZeros().toPlainString();
    }
  }

  /** Whether an amount is too fine for the coarsest scale on file; empty where none is on file. */
  public Optional<TooFine> tooFine(double grams) {
    return coarseToFine.isEmpty()
        ? Optional.empty()
        : tooFine(grams, coarseToFine.get(0).resolution());
  }

  /**
   * Whether an amount is too fine for a scale with such steps.
   *
   * @param grams 0 or more; nothing is too fine of nothing
   * @param stepG above 0
   */
  public Optional<TooFine> tooFine(double grams, double stepG) {
    Check.notNegative("grams", grams);
    Check.positive("step_g", stepG);
    double share = grams == 0 ? 0 : stepG / 2 / grams;
    if (share <= TOLERANCE) {
      return Optional.empty();
    }
    Instrument finer =
        coarseToFine.stream()
            .filter(s -> s.resolution() < stepG && s.resolution() / 2 / grams <= TOLERANCE)
            .findFirst()
            .orElse(null);
    return Optional.of(new TooFine(grams, stepG, share, finer));
  }
}
