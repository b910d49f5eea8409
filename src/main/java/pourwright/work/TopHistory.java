package pourwright.work;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.RecordedStep;
import pourwright.card.CandleDesign;
import pourwright.card.PourCard;
import pourwright.cast.DefectCauses;
import pourwright.cast.DefectCauses.Finding;
import pourwright.cast.DefectCauses.Seen;
import pourwright.pour.Top;

/**
 * How tops came out in her own pours, and which recorded conditions go with each: the same exact
 * test and the same correction for many looks as for castings. A condition that goes with a top is
 * not yet its cause.
 *
 * @param judged pours whose tops were recorded
 * @param tops each top that was seen, and what goes with it
 */
public record TopHistory(int judged, List<Counted> tops) {
  private static final int POURS_LOOKED_AT = 400;

  /** House: below it stone counts as cold, from it as warmed, in °C. */
  private static final double WARM_STONE_C = 30;

  /** House: below it a room counts as cool, in °C. */
  private static final double COOL_ROOM_C = 19;

  /** Copies. */
  public TopHistory {
    tops = List.copyOf(tops);
  }

  /**
   * A top.
   *
   * @param pours pours that had it
   * @param candles candles that had it
   * @param findings conditions, the likeliest first
   */
  public record Counted(Top top, int pours, int candles, List<Finding> findings) {
    /** Copies. */
    public Counted {
      findings = List.copyOf(findings);
    }
  }

  private record Pour(Set<String> conditions, List<Reading> readings) {
    int count(Top top) {
      return readings.stream()
          .filter(r -> r.quantity().equals(top.reading()))
          .reduce((a, b) -> b)
          .map(r -> (int) r.value())
          .orElse(0);
    }
  }

  /** Looks at the latest pours. */
  public static TopHistory of(Books books) {
    List<Pour> pours = new ArrayList<>();
    for (long id : judged(books)) {
      Optional<Batch> batch = books.batches().batch(id);
      if (batch.isPresent() && batch.get().plan().kind() == BatchKind.POUR) {
        List<Reading> readings = books.readings().of(Subject.of(Subject.Kind.BATCH, id));
        pours.add(new Pour(conditions(books, batch.get(), readings), readings));
      }
    }
    List<Counted> tops = new ArrayList<>();
    for (Top top : Top.values()) {
      int had = (int) pours.stream().filter(p -> p.count(top) > 0).count();
      if (had == 0) {
        continue;
      }
      List<Seen> seen =
          pours.stream().map(p -> new Seen(p.count(top) > 0, p.conditions())).toList();
      int candles = pours.stream().mapToInt(p -> p.count(top)).sum();
      tops.add(new Counted(top, had, candles, DefectCauses.look(seen)));
    }
    return new TopHistory(pours.size(), tops);
  }

  /** Pours whose tops were recorded, the newest readings first. */
  private static Set<Long> judged(Books books) {
    Set<Long> ids = new LinkedHashSet<>();
    for (Top top : Top.values()) {
      for (Reading r : books.readings().list(top.reading(), null, POURS_LOOKED_AT).items()) {
        if (r.subject().kind() == Subject.Kind.BATCH && ids.size() < POURS_LOOKED_AT) {
          ids.add(r.subject().number());
        }
      }
    }
    return ids;
  }

  private static Set<String> conditions(Books books, Batch batch, List<Reading> readings) {
    Set<String> conditions = new HashSet<>();
    for (BatchPlan.Makes makes : batch.plan().makes()) {
      books
          .cards()
          .version(Drawers.CANDLE, makes.design(), makes.version())
          .map(CardVersion::body)
          .ifPresent((CandleDesign d) -> conditions.add("vessel " + d.vessel()));
    }
    conditions.add("pour card " + batch.plan().card());
    List<RecordedStep> done = books.batches().steps(batch.id());
    boolean twice = batch.plan().steps().stream().anyMatch(s -> s.key().equals(PourWalk.SECOND));
    if (twice) {
      conditions.add("a second pour");
    }
    Double stone = temperature(done, PourWalk.WARM);
    if (stone != null) {
      conditions.add(
          String.format(
              Locale.ROOT,
              stone < WARM_STONE_C ? "stone under %.0f °C" : "stone %.0f °C or warmer",
              WARM_STONE_C));
    }
    Double poured = temperature(done, PourWalk.POUR);
    Optional<PourCard.Temperatures> window =
        books
            .cards()
            .version(Drawers.POUR, batch.plan().card(), batch.plan().cardVersion())
            .map(CardVersion::body)
            .map(PourCard::temperatures);
    if (poured != null && window.isPresent()) {
      double middle = (window.get().pourFromC() + window.get().pourToC()) / 2;
      conditions.add(poured > middle ? "poured in the hot half" : "poured in the cool half");
    }
    readings.stream()
        .filter(r -> r.quantity().equals(PourWatch.ROOM_C))
        .reduce((a, b) -> b)
        .filter(r -> r.value() < COOL_ROOM_C)
        .ifPresent(
            r -> conditions.add(String.format(Locale.ROOT, "room under %.0f °C", COOL_ROOM_C)));
    return conditions;
  }

  private static @Nullable Double temperature(List<RecordedStep> done, String key) {
    return done.stream()
        .filter(s -> s.key().equals(key) && s.temperatureC() != null)
        .reduce((a, b) -> b)
        .map(RecordedStep::temperatureC)
        .orElse(null);
  }
}
