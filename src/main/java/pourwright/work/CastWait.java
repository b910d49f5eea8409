package pourwright.work;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.batch.RecordedStep;
import pourwright.card.MixCard;
import pourwright.cast.DemoldWindow;
import pourwright.cast.Maturity;

/**
 * How far a covered cast is on its way to demolding, by its age in hours at 20 °C: each temperature
 * that was recorded holds until the next one, the last one from now on. Source: ASTM C1074 with an
 * activation energy of 40 kJ/mol, usual for portland; other binders differ.
 *
 * @param ageH age so far, in h at 20 °C
 * @param lastC temperature that holds now, in °C
 * @param measured whether it was recorded; 20 °C is taken where none was
 * @param fromAgeH age from which it may be demolded, in h at 20 °C
 * @param ownCasts judged casts of hers that this age rests on; 0 where it is the mix card's
 * @param from when that age is reached if the temperature stays
 * @param until when the card's latest age is reached if it stays
 */
public record CastWait(
    double ageH,
    double lastC,
    boolean measured,
    double fromAgeH,
    int ownCasts,
    Instant from,
    Instant until) {

  /** Quantity under which a room's temperature is recorded with a cast. */
  public static final String ROOM = "room_c";

  private static final double REFERENCE_C = 20;
  private static final double ENERGY = 40;

  /** The wait of a cast, once it was covered and while its mix card is in the books. */
  public static Optional<CastWait> of(Books books, Batch batch, Instant now) {
    List<RecordedStep> steps = books.batches().steps(batch.id());
    Optional<Instant> covered =
        steps.stream()
            .filter(s -> s.key().equals(CastWalk.COVER))
            .map(RecordedStep::at)
            .findFirst();
    Optional<MixCard> mix =
        books.cards().current(Drawers.MIX, batch.plan().card()).map(CardVersion::body);
    if (covered.isEmpty() || mix.isEmpty()) {
      return Optional.empty();
    }
    TreeMap<Instant, Double> read = readings(books, batch, steps);
    double age = age(read, covered.get(), now);
    DemoldWindow hers = CastHistory.demolding(books, batch.plan().card());
    Double own = hers.isTold() ? hers.fromEveryTimeH() : null;
    double from = own == null ? mix.get().times().demoldFromH() : own;
    double until = Math.max(from, mix.get().times().demoldToH());
    double last = read.isEmpty() ? REFERENCE_C : read.lastEntry().getValue();
    return Optional.of(
        new CastWait(
            age,
            last,
            !read.isEmpty(),
            from,
            own == null ? 0 : hers.casts(),
            at(now, from - age, last),
            at(now, until - age, last)));
  }

  /** Age in h at 20 °C from covering until a moment. */
  static double age(TreeMap<Instant, Double> read, Instant covered, Instant now) {
    Map.Entry<Instant, Double> first = read.floorEntry(covered);
    double begin =
        first != null
            ? first.getValue()
            : read.isEmpty() ? REFERENCE_C : read.firstEntry().getValue();
    List<Maturity.Line> lines = new ArrayList<>();
    lines.add(new Maturity.Line(0, begin));
    read.tailMap(covered, false)
        .headMap(now, false)
        .forEach((at, c) -> lines.add(new Maturity.Line(hours(covered, at), c)));
    double whole = hours(covered, now);
    if (whole <= lines.get(lines.size() - 1).h()) {
      return 0;
    }
    lines.add(new Maturity.Line(whole, begin));
    return Maturity.equivalentAgeH(new Maturity.Log(lines), REFERENCE_C, ENERGY);
  }

  private static TreeMap<Instant, Double> readings(
      Books books, Batch batch, List<RecordedStep> steps) {
    TreeMap<Instant, Double> read = new TreeMap<>();
    for (RecordedStep step : steps) {
      Double celsius = step.temperatureC();
      if (celsius != null) {
        read.put(step.at(), celsius);
      }
    }
    for (Reading r : books.readings().of(Subject.of(Subject.Kind.BATCH, batch.id()))) {
      if (r.quantity().equals(ROOM)) {
        read.put(r.takenAt(), r.value());
      }
    }
    return read;
  }

  private static double hours(Instant from, Instant to) {
    return Duration.between(from, to).toMillis() / 3_600_000.0;
  }

  private static Instant at(Instant now, double ageLeftH, double celsius) {
    double hours = ageLeftH / Maturity.ageFactor(celsius, REFERENCE_C, ENERGY);
    return now.plusSeconds(Math.round(3600 * hours));
  }

  /** True when the age is reached. */
  public boolean isReached() {
    return ageH >= fromAgeH;
  }

  /** Hours from a moment until it may be demolded, zero when it may. */
  public double hoursLeft(Instant now) {
    return Math.max(0, hours(now, from));
  }

  /** The timer for demolding that still runs on a cast, if there is one. */
  public static @Nullable Timer bell(Books books, Batch batch) {
    return books.timers().of(Subject.of(Subject.Kind.BATCH, batch.id())).stream()
        .filter(t -> t.answeredAt() == null && t.label().startsWith("Demold "))
        .reduce((a, b) -> b)
        .orElse(null);
  }
}
