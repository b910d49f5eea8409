package pourwright.work;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.batch.BatchPlan;
import pourwright.batch.Mistake;
import pourwright.batch.PlannedStep;
import pourwright.batch.RecordedStep;
import pourwright.card.CandleDesign;
import pourwright.card.PourCard;
import pourwright.card.ResolvedCandle;
import pourwright.card.ResolvedPour;
import pourwright.material.Property;
import pourwright.pour.CoolingClock;
import pourwright.pour.Fill;
import pourwright.quantity.OutOfRange;

/**
 * A running pour as one looks at it from the bench: which step is next, what was recorded, and the
 * cooling clock from the readings since the heat or the scent last changed the pitcher.
 *
 * @param batch the pour
 * @param candle its candle with all cards looked up; the first where a pitcher fills several, which
 *     then share wax, scent and load
 * @param parts every candle of it, and how many
 * @param done recorded steps
 * @param next the next planned step, null when all are recorded
 * @param readings wax temperatures that the clock counts, oldest first
 * @param target what the pitcher cools to next, null once it is poured
 * @param clock the fitted cooling, null when the readings are too few
 * @param crossing when the target is reached
 */
public record PourWatch(
    Batch batch,
    ResolvedCandle candle,
    List<Part> parts,
    List<RecordedStep> done,
    @Nullable PlannedStep next,
    List<Reading> readings,
    @Nullable Target target,
    @Nullable CoolingClock clock,
    CoolingClock.@Nullable Crossing crossing) {
  /** Quantity of a wax reading. */
  public static final String WAX_C = "wax_c";

  /** Quantity of a room reading. */
  public static final String ROOM_C = "room_c";

  /** Quantity of what was poured the second time, all vessels together. */
  public static final String SECOND_G = "second_pour_g";

  /** What the timer of the cooling clock is called, before the pour's mark. */
  static final String LABEL = "Wax at ";

  /** So many of a candle. */
  public record Part(ResolvedCandle candle, int count) {}

  /** Copies. */
  public PourWatch {
    parts = List.copyOf(parts);
    done = List.copyOf(done);
    readings = List.copyOf(readings);
  }

  /**
   * A temperature to wait for, and the window it is the middle of.
   *
   * @param what "add the fragrance", "pour" or "pour the second time"
   */
  public record Target(String what, double c, double fromC, double toC) {}

  /** The pour of that number, when it is one. */
  public static Optional<PourWatch> of(Books books, long id) {
    return books.batches().batch(id).flatMap(batch -> of(books, batch));
  }

  private static Optional<PourWatch> of(Books books, Batch batch) {
    List<Part> parts = parts(books, batch);
    if (parts.isEmpty()) {
      return Optional.empty();
    }
    ResolvedCandle candle = parts.get(0).candle();
    List<RecordedStep> done = books.batches().steps(batch.id());
    Subject subject = Subject.of(Subject.Kind.BATCH, batch.id());
    List<Reading> all = books.readings().of(subject);
    Instant since = since(batch, done);
    List<Reading> wax =
        all.stream()
            .filter(r -> r.quantity().equals(WAX_C) && !r.takenAt().isBefore(since))
            .toList();
    Target target = target(batch, candle.pour().card().temperatures(), done);
    CoolingClock clock = clock(wax, room(all));
    CoolingClock.Crossing crossing =
        clock == null || target == null ? null : clock.crossing(target.c());
    PlannedStep next = next(batch, done);
    return Optional.of(
        new PourWatch(batch, candle, parts, done, next, wax, target, clock, crossing));
  }

  /** The candles by their cards of then; empty when it is no pour or one is not on file. */
  private static List<Part> parts(Books books, Batch batch) {
    List<Part> parts = new ArrayList<>();
    for (BatchPlan.Makes makes : batch.plan().makes()) {
      Optional<CandleDesign> design =
          books
              .cards()
              .version(Drawers.CANDLE, makes.design(), makes.version())
              .map(CardVersion::body);
      if (design.isEmpty()) {
        return List.of();
      }
      parts.add(new Part(design.get().resolve(Drawers.book(books)), makes.count()));
    }
    return parts;
  }

  /** The moment from which readings belong to one cooling. */
  private static Instant since(Batch batch, List<RecordedStep> done) {
    Set<String> changes = Set.of(PourWalk.MELT, PourWalk.SCENT, PourWalk.POUR, PourWalk.REHEAT);
    return done.stream()
        .filter(s -> changes.contains(s.key()))
        .map(RecordedStep::at)
        .reduce((a, b) -> b)
        .orElse(batch.startedAt());
  }

  private static @Nullable Double room(List<Reading> all) {
    return all.stream()
        .filter(r -> r.quantity().equals(ROOM_C))
        .reduce((a, b) -> b)
        .map(Reading::value)
        .orElse(null);
  }

  private static Set<String> keys(List<RecordedStep> done) {
    Set<String> keys = new HashSet<>();
    done.forEach(s -> keys.add(s.key()));
    return keys;
  }

  private static @Nullable PlannedStep next(Batch batch, List<RecordedStep> done) {
    Set<String> keys = keys(done);
    return batch.plan().steps().stream()
        .filter(s -> !keys.contains(s.key()))
        .findFirst()
        .orElse(null);
  }

  private static @Nullable Target target(
      Batch batch, PourCard.Temperatures window, List<RecordedStep> done) {
    Set<String> keys = keys(done);
    boolean scented = batch.plan().steps().stream().anyMatch(s -> s.key().equals(PourWalk.SCENT));
    if (keys.contains(PourWalk.POUR)) {
      boolean more = batch.plan().steps().stream().anyMatch(s -> s.key().equals(PourWalk.SECOND));
      return more && !keys.contains(PourWalk.SECOND) ? second(window, done) : null;
    }
    return scented && !keys.contains(PourWalk.SCENT)
        ? target("add the fragrance", window.addFromC(), window.addToC())
        : target("pour", window.pourFromC(), window.pourToC());
  }

  private static Target target(String what, double from, double to) {
    return new Target(what, (from + to) / 2, from, to);
  }

  /** About 5 K above the first pour, as it was measured or else as the card says. */
  private static Target second(PourCard.Temperatures window, List<RecordedStep> done) {
    Double first = temperature(done, PourWalk.POUR);
    double c = first == null ? (window.pourFromC() + window.pourToC()) / 2 : first;
    double half = (window.pourToC() - window.pourFromC()) / 2;
    double at = c + Fill.SECOND_HOTTER_K;
    return target("pour the second time", at - half, at + half);
  }

  private static @Nullable Double temperature(List<RecordedStep> done, String key) {
    return done.stream()
        .filter(s -> s.key().equals(key))
        .map(RecordedStep::temperatureC)
        .filter(java.util.Objects::nonNull)
        .reduce((a, b) -> b)
        .orElse(null);
  }

  /** How warm the stone was when it was read, null when nobody looked. */
  public @Nullable Double stoneC() {
    return temperature(done, PourWalk.WARM);
  }

  /** The newest reading of the wax, null when there is none since the pitcher last changed. */
  public @Nullable Double waxC() {
    return readings.isEmpty() ? null : readings.get(readings.size() - 1).value();
  }

  /** Whether some is held back for a second pour. */
  public boolean hasSecondPour() {
    return batch.plan().steps().stream().anyMatch(s -> s.key().equals(PourWalk.SECOND));
  }

  private static @Nullable CoolingClock clock(List<Reading> wax, @Nullable Double roomC) {
    if (wax.size() < (roomC == null ? 3 : 2)) {
      return null;
    }
    List<CoolingClock.Reading> readings = new ArrayList<>();
    Instant start = wax.get(0).takenAt();
    for (Reading reading : wax) {
      double s = Duration.between(start, reading.takenAt()).toMillis() / 1000.0;
      readings.add(new CoolingClock.Reading(s, reading.value()));
    }
    try {
      return CoolingClock.of(readings, roomC);
    } catch (OutOfRange e) {
      return null;
    }
  }

  /** The moment of so many seconds on the readings' own clock. */
  public Instant moment(double seconds) {
    return readings.get(0).takenAt().plusMillis(Math.round(1000 * seconds));
  }

  /** When the target is reached, null when that is not known. */
  public @Nullable Instant reachedAt() {
    CoolingClock.Crossing at = crossing;
    Double seconds = at == null ? null : at.atS();
    return seconds == null ? null : moment(seconds);
  }

  /** How often the pitcher was heated again. */
  public int reheats() {
    return (int) done.stream().filter(s -> s.key().equals(PourWalk.REHEAT)).count();
  }

  /** Grams of wax and of fragrance that really went in. */
  public pourwright.pour.Dose inThePitcher() {
    return new pourwright.pour.Dose(used(candle.pour().waxes()), scent());
  }

  /**
   * Scent in the pitcher: a bottle that was forgotten or mistaken takes the place of all before.
   */
  private double scent() {
    Set<String> codes = new HashSet<>();
    candle.pour().fragrances().forEach(s -> codes.add(s.material().code()));
    double grams = 0;
    for (RecordedStep step : done) {
      boolean other = step.key().equals(Mistake.WRONG_BOTTLE.stepKey());
      if (other || step.key().equals(Mistake.SCENT_FORGOTTEN.stepKey())) {
        grams = 0;
      }
      grams +=
          step.used().stream()
              .filter(u -> other || codes.contains(u.material()))
              .mapToDouble(u -> u.amount().inUsualUnit())
              .sum();
    }
    return grams;
  }

  private double used(List<ResolvedPour.Share> shares) {
    Set<String> codes = new HashSet<>();
    shares.forEach(s -> codes.add(s.material().code()));
    return done.stream()
        .flatMap(s -> s.used().stream())
        .filter(u -> codes.contains(u.material()))
        .mapToDouble(u -> u.amount().inUsualUnit())
        .sum();
  }

  /** The lowest flash point in the pot, null when no sheet says one. */
  public @Nullable Double lowestFlashC() {
    return candle.pour().fragrances().stream()
        .flatMap(f -> f.material().property(Property.FLASH_POINT_C).stream())
        .map(pourwright.quantity.Sourced::value)
        .min(Double::compare)
        .orElse(null);
  }

  /** The lowest flash point of the waxes alone, null when no sheet says one. */
  public @Nullable Double waxFlashC() {
    return candle.pour().waxes().stream()
        .flatMap(w -> w.material().property(Property.FLASH_POINT_C).stream())
        .map(pourwright.quantity.Sourced::value)
        .min(Double::compare)
        .orElse(null);
  }

  /** Bottom of the blend's melting range, null when no sheet says one. */
  public @Nullable Double meltFromC() {
    return candle.pour().waxes().stream()
        .flatMap(w -> w.material().property(Property.MELT_FROM_C).stream())
        .map(pourwright.quantity.Sourced::value)
        .min(Double::compare)
        .orElse(null);
  }

  /** Top of the blend's melting range, null when no sheet says one. */
  public @Nullable Double meltToC() {
    return candle.pour().waxes().stream()
        .flatMap(w -> w.material().property(Property.MELT_TO_C).stream())
        .map(pourwright.quantity.Sourced::value)
        .max(Double::compare)
        .orElse(null);
  }
}
