package pourwright.plan;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pourwright.card.Amounts;
import pourwright.card.CardBook;
import pourwright.card.Mold;
import pourwright.quantity.Counted;

/**
 * What of a class's work is done when it ends, what comes after it, and when parcels can go: step
 * by step, hands only in hours of work, on a floor with nothing else to do.
 *
 * @param workMin minutes of work for a seat until the piece stands and sets
 * @param setMin minutes it sets
 * @param sets true where it sets and is taken out or levelled while the class lasts
 * @param later what comes after the class, in order
 * @param parcelDay the first day on which the pieces can go by post
 * @param warnings what does not fit
 */
public record ClassDay(
    int workMin,
    int setMin,
    boolean sets,
    List<Leg> later,
    LocalDate parcelDay,
    List<String> warnings) {
  private static final int DAYS = 250;

  /**
   * A step after the class.
   *
   * @param words what is done or waited for
   * @param minutes how long
   * @param done when it is over
   */
  public record Leg(String words, int minutes, ZonedDateTime done) {}

  /** Copies. */
  public ClassDay {
    later = List.copyOf(later);
    warnings = List.copyOf(warnings);
  }

  /** Lays out the day and what comes after it. */
  public static ClassDay of(SeatClass of, CardBook book, Habits habits, Floor floor) {
    boolean cast = of.does() == SeatClass.Does.CAST;
    Route route = cast ? castRoute(of, book, habits) : pourRoute(of, book, habits);
    Habits.Hands hands = habits.hands();
    double wicks = cast ? 0 : hands.wick() * book.candle(of.design()).wicks().count();
    // seats work beside each other; wicks go in while the wax melts
    double work =
        cast
            ? hands.mix() + hands.fill()
            : Math.max(wicks, habits.waits().melt()) + hands.pour() + 10;
    int workMin = (int) Math.ceil(work);
    int setMin =
        route.steps().stream()
            .filter(s -> s.key().endsWith("/set"))
            .mapToInt(Step::minutes)
            .findFirst()
            .orElse(0);
    double last = cast ? hands.demold() : hands.trim();
    boolean sets = workMin + setMin + last <= of.minutes();
    List<String> warnings = new ArrayList<>();
    if (workMin > of.minutes()) {
      warnings.add(
          "The work of a seat takes " + workMin + " minutes and the class has " + of.minutes());
    }
    int molds = cast ? molds(of, book) : of.seats();
    if (molds < of.seats()) {
      warnings.add(
          "There are molds for " + molds + " of " + Counted.of(of.seats(), "seat", "seats"));
    }
    List<Leg> later = later(of, route, sets, workMin, floor);
    LocalDate ready = later.isEmpty() ? of.day() : later.get(later.size() - 1).done().toLocalDate();
    return new ClassDay(workMin, setMin, sets, later, floor.post().onOrAfter(ready), warnings);
  }

  /** Pieces of the class's vessel that can be cast at one time. */
  static int molds(SeatClass of, CardBook book) {
    return book.moldsFor(book.candle(of.design()).vessel()).stream()
        .filter(m -> !m.leftoverOnly())
        .mapToInt(m -> m.count() * m.piecesPerCast())
        .sum();
  }

  /** How many pieces each mold takes, by resource of the plan. */
  static Map<String, Integer> held(SeatClass of, CardBook book) {
    Map<String, Integer> held = new HashMap<>();
    if (of.does() == SeatClass.Does.CAST) {
      int left = of.seats();
      for (Mold mold : book.moldsFor(book.candle(of.design()).vessel())) {
        int here = mold.leftoverOnly() ? 0 : Math.min(left, mold.count() * mold.piecesPerCast());
        if (here > 0) {
          held.put("mold:" + mold.code(), here);
          left -= here;
        }
      }
    }
    return held;
  }

  private static Route castRoute(SeatClass of, CardBook book, Habits habits) {
    VesselKind kind = VesselKind.of(book.candle(of.design()));
    CastJob.Fill fill = new CastJob.Fill(kind.vessel(), "", of.seats());
    CastJob job =
        new CastJob(
            "K", kind.mix(), kind.finish(), List.of(fill), Amounts.NONE, 0, 0, 0, List.of());
    return new CastRoute(job, book, habits).lay();
  }

  private static Route pourRoute(SeatClass of, CardBook book, Habits habits) {
    PourJob.Fill fill = new PourJob.Fill(of.design(), of.seats(), 0);
    PourJob job =
        new PourJob(
            "K", book.candle(of.design()).pour(), List.of(fill), Amounts.NONE, 0, 0, 0, List.of());
    return new PourRoute(job, book, habits).lay();
  }

  private static List<Leg> later(
      SeatClass of, Route route, boolean sets, int workMin, Floor floor) {
    Instant begin = of.day().atTime(of.from()).atZone(floor.zone()).toInstant();
    int end =
        Math.toIntExact(
            java.time.Duration.between(
                    begin, of.day().atTime(of.to()).atZone(floor.zone()).toInstant())
                .toMinutes());
    List<List<Window>> hands = new ArrayList<>();
    floor.hours().values().forEach(h -> hands.add(h.windows(begin, floor.zone(), DAYS * 1440)));
    Map<String, Integer> lag = new HashMap<>();
    route.links().forEach(l -> lag.merge(l.after(), l.minMin(), Math::max));
    List<Leg> legs = new ArrayList<>();
    int at = Math.min(workMin, end);
    boolean inClass = true;
    for (int i = 0; i < route.steps().size(); i++) {
      Step step = route.steps().get(i);
      String name = step.key().substring(step.key().indexOf('/') + 1);
      if (name.equals("set")) {
        inClass = false;
        at = sets ? end : at;
        if (sets) {
          continue;
        }
      } else if (inClass || (sets && isTakingOut(name))) {
        continue;
      }
      int start = at + lag.getOrDefault(step.key(), 0);
      if (step.kind() != StepKind.WAIT) {
        start = earliest(hands, Math.max(start, end), step.minutes());
      }
      at = start + step.minutes();
      legs.add(
          new Leg(step.words(), step.minutes(), begin.plusSeconds(60L * at).atZone(floor.zone())));
    }
    return legs;
  }

  private static boolean isTakingOut(String name) {
    return name.startsWith("demold") || name.startsWith("trim");
  }

  private static int earliest(List<List<Window>> hands, int from, int minutes) {
    int first = DAYS * 1440;
    for (List<Window> windows : hands) {
      if (!windows.isEmpty()) {
        first = Math.min(first, Windows.firstWithin(windows, from, minutes, DAYS * 1440));
      }
    }
    return first;
  }
}
