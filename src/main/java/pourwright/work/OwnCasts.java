package pourwright.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.batch.BatchPlan;
import pourwright.batch.RecordedStep;
import pourwright.card.CardBook;
import pourwright.card.MixCard;
import pourwright.cast.OwnHands;
import pourwright.material.UnitKind;
import pourwright.quantity.OutOfRange;

/** What was weighed in her finished casts of a mix, for the next sheet of it. */
public final class OwnCasts {
  /** What could still be poured when the molds were full, in g, a reading on the cast. */
  public static final String LEFT = "left_g";

  /** Fresh density by a weighed cup, a reading on the cast. */
  public static final String CUP = "fresh_g_per_ml";

  /** All water of a cast as one sum, in g, a reading on the cast. */
  public static final String WATER = "water_total_g";

  /** Newest readings that are looked at; a mix changes with its sacks. */
  private static final int LATEST = 30;

  private OwnCasts() {}

  /** What her casts of a mix say. */
  public static OwnHands of(Books books, String mix) {
    Map<Long, Map<String, Double>> readings = new HashMap<>();
    for (String quantity : List.of(LEFT, CUP, WATER)) {
      for (Reading r : books.readings().list(quantity, null, LATEST).items()) {
        if (r.subject().kind() == Subject.Kind.BATCH) {
          readings
              .computeIfAbsent(r.subject().number(), k -> new HashMap<>())
              .putIfAbsent(quantity, r.value());
        }
      }
    }
    if (readings.isEmpty()) {
      return OwnHands.NONE;
    }
    CardBook book = Drawers.book(books);
    List<OwnHands.Mixing> mixings = new ArrayList<>();
    readings.forEach(
        (id, own) ->
            books
                .batches()
                .batch(id)
                .filter(b -> !b.isRunning() && b.plan().card().equals(mix))
                .flatMap(b -> mixing(books, book, b, own))
                .ifPresent(mixings::add));
    return OwnHands.of(mixings);
  }

  private static Optional<OwnHands.Mixing> mixing(
      Books books, CardBook book, Batch batch, Map<String, Double> own) {
    Weighed weighed = weighed(books, book, batch);
    double filled = filledMl(book, batch);
    if (!(weighed.allG() > 0 && filled > 0)) {
      return Optional.empty();
    }
    return Optional.of(
        new OwnHands.Mixing(
            weighed.allG(),
            filled,
            own.get(LEFT),
            own.get(CUP),
            own.containsKey(WATER) ? weighed.waterToPowder() : null));
  }

  /**
   * What went into the bucket of a cast so far.
   *
   * @param allG water and all materials, in g
   * @param waterG water, in g
   * @param powderG the powder of the mix, in g
   */
  public record Weighed(double allG, double waterG, double powderG) {
    /** Water to a mass of one of powder; null before powder was weighed. */
    public @Nullable Double waterToPowder() {
      return powderG > 0 ? (Double) (waterG / powderG) : null;
    }
  }

  /** Sums what was recorded of a cast. */
  public static Weighed weighed(Books books, CardBook book, Batch batch) {
    String powder = powder(book, batch.plan().card());
    double water =
        books.readings().of(Subject.of(Subject.Kind.BATCH, batch.id())).stream()
            .filter(r -> r.quantity().equals("water_g"))
            .mapToDouble(Reading::value)
            .sum();
    double all = water;
    double ofPowder = 0;
    Set<String> seen = new HashSet<>();
    for (RecordedStep step : books.batches().steps(batch.id())) {
      for (RecordedStep.Used used : step.used()) {
        if (used.amount().kind() == UnitKind.MASS) {
          all += used.amount().inUsualUnit();
          ofPowder += used.material().equals(powder) ? used.amount().inUsualUnit() : 0;
          seen.add(used.material());
        }
      }
    }
    return new Weighed(seen.isEmpty() ? 0 : all, water, ofPowder);
  }

  private static String powder(CardBook book, String mix) {
    return book.all(MixCard.class).stream()
        .filter(m -> m.code().equals(mix))
        .map(MixCard::powder)
        .findFirst()
        .orElse("");
  }

  private static double filledMl(CardBook book, Batch batch) {
    double filled = 0;
    for (BatchPlan.Makes makes : batch.plan().makes()) {
      try {
        filled += makes.count() * book.vessel(makes.design()).mixMl().value();
      } catch (OutOfRange e) {
        return 0; // its card is gone: nobody knows what the molds took
      }
    }
    return filled;
  }
}
