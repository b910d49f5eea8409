package pourwright.main;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.PriorityQueue;
import java.util.Random;
import pourwright.work.Act;
import pourwright.work.AttachmentFiles;
import pourwright.work.Studio;
import pourwright.work.UnitOfWork;

/**
 * The history of the demo studio: what happened, in the order it happened, through the use cases
 * that pages use. The same seed and the same day give the same history.
 */
final class DemoHistory {
  /**
   * How much happens.
   *
   * @param years of history
   * @param castsPerWeek on the average
   * @param ordersPerWeek on the average
   * @param piecesPerCast in one mixing
   * @param busy true for the size that load is measured with: more materials, more small draws
   */
  record Size(
      int years, double castsPerWeek, double ordersPerWeek, int piecesPerCast, boolean busy) {
    /** A small studio of so many years, or a busy one from five years on. */
    static Size of(int years) {
      return years >= 5
          ? new Size(years, 27, 25, 5, true)
          : new Size(years, 1.3, 1.3 * 0.9, 6, false);
    }
  }

  /** Something that happens at a moment. */
  private record Event(Instant at, long nth, Runnable what) implements Comparable<Event> {
    @Override
    public int compareTo(Event other) {
      int byTime = at.compareTo(other.at);
      return byTime != 0 ? byTime : Long.compare(nth, other.nth);
    }
  }

  /** How long one transaction goes on. */
  private static final Duration STRETCH = Duration.ofDays(21);

  private final DemoBatch batch;
  private final DemoClock clock;
  private final Studio studio;
  private final Random random;
  private final Size size;
  private final Instant end;
  private final PriorityQueue<Event> events = new PriorityQueue<>();
  private long nth;
  private long keys;

  DemoHistory(
      UnitOfWork store, AttachmentFiles files, Size size, long seed, Instant end, ZoneId zone) {
    this.batch = new DemoBatch(store);
    this.size = size;
    this.end = end;
    this.random = new Random(seed);
    LocalDate first = LocalDate.ofInstant(end, zone).minusYears(size.years());
    this.clock = new DemoClock(first.atTime(8, 0).atZone(zone).toInstant(), zone);
    this.studio = new Studio(batch, clock, files);
  }

  Studio studio() {
    return studio;
  }

  Random random() {
    return random;
  }

  Size size() {
    return size;
  }

  Instant end() {
    return end;
  }

  LocalDate today() {
    return studio.today();
  }

  ZoneId zone() {
    return clock.getZone();
  }

  Instant now() {
    return clock.instant();
  }

  /** An act of the maker, sometimes of the learner. */
  Act act() {
    keys++;
    return Act.of(random.nextInt(6) == 0 ? "TO" : "MB", "demo-" + keys);
  }

  /** An act that a learner may not do. */
  Act maker() {
    Act act = act();
    return new Act("MB", act.requestKey(), act.note());
  }

  Act act(String note) {
    keys++;
    return new Act("MB", "demo-" + keys, note);
  }

  /** Something that will happen at a moment, if the history gets that far. */
  void at(Instant moment, Runnable what) {
    if (moment.isBefore(end)) {
      events.add(new Event(moment, nth++, what));
    }
  }

  /** Something that will happen so many days from now, in the hours of a working day. */
  void inDays(double days, Runnable what) {
    LocalDate day =
        LocalDate.ofInstant(now().plus(Duration.ofMinutes((long) (days * 1440))), zone());
    while (day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY) {
      day = day.plusDays(1);
    }
    at(
        day.atTime(LocalTime.of(9, 0).plusMinutes(random.nextInt(480))).atZone(zone()).toInstant(),
        what);
  }

  /** Something on a day, in the hours of work. */
  void on(LocalDate day, Runnable what) {
    at(
        day.atTime(LocalTime.of(9, 0).plusMinutes(random.nextInt(480))).atZone(zone()).toInstant(),
        what);
  }

  /** Lets everything happen until the end. */
  void run() {
    while (!events.isEmpty()) {
      Instant until = events.element().at().plus(STRETCH);
      batch.stretch(
          () -> {
            while (!events.isEmpty() && events.element().at().isBefore(until)) {
              Event event = events.remove();
              clock.set(event.at());
              event.what().run();
            }
          });
    }
    clock.set(end);
  }
}
