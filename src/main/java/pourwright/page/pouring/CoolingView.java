package pourwright.page.pouring;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pourwright.page.Desk;
import pourwright.page.pouring.PourPage.Cooling;
import pourwright.pour.CoolingClock;
import pourwright.pour.FlashRule;
import pourwright.quantity.Counted;
import pourwright.work.PourWalk;
import pourwright.work.PourWatch;
import pourwright.work.Reading;

/** The cooling clock of a pour as it stands on its page. */
final class CoolingView {
  private final Desk desk;

  CoolingView(Desk desk) {
    this.desk = desk;
  }

  Cooling cooling(PourWatch watch, Optional<Double> melterC) {
    PourWatch.Target target = watch.target();
    if (target == null || !watch.batch().isRunning()) {
      return new Cooling(
          "",
          "",
          "",
          List.of(),
          List.of(),
          watch.batch().isRunning() ? reheating(watch) : PourPage.Reheating.NONE);
    }
    String waitsFor =
        String.format(
            Locale.ROOT,
            "%s at %.0f °C (%.0f to %.0f)",
            target.what(),
            target.c(),
            target.fromC(),
            target.toC());
    Instant at = watch.reachedAt();
    return new Cooling(
        waitsFor,
        at == null ? "" : desk.clockTime(at),
        range(watch),
        notes(watch, melterC),
        watch.readings().stream().map(this::reading).toList(),
        reheating(watch));
  }

  /** Wax that is not yet scented may be warmed as its window asks; after that it counts. */
  private static PourPage.Reheating reheating(PourWatch watch) {
    boolean melted =
        watch.done().stream()
            .anyMatch(s -> s.key().equals(PourWalk.SCENT) || s.key().equals(PourWalk.POUR));
    int before = watch.reheats();
    if (!melted) {
      return PourPage.Reheating.NONE;
    }
    String said =
        before == 0
            ? "Not heated again yet; house: at most once."
            : before == 1
                ? "Heated again once (house: at most once)."
                : "Heated again " + Counted.of(before, "time", "times") + " (house: at most once).";
    return new PourPage.Reheating(said, before >= PourWalk.REHEATS_MOST);
  }

  private String range(PourWatch watch) {
    CoolingClock.Crossing crossing = watch.crossing();
    if (crossing == null || crossing.atS() == null) {
      return watch.readings().isEmpty()
          ? "Take the wax's temperature and the room's; two readings start the clock."
          : "Another reading is needed; tell the room's temperature too.";
    }
    Double low = crossing.lowS();
    Double high = crossing.highS();
    return "between "
        + (low == null || watch.moment(low).isBefore(desk.now())
            ? "now"
            : desk.clockTime(watch.moment(low)))
        + " and "
        + (high == null ? "much later" : desk.clockTime(watch.moment(high)))
        + " (95 %)";
  }

  private static List<String> notes(PourWatch watch, Optional<Double> melterC) {
    List<String> notes = new ArrayList<>();
    CoolingClock clock = watch.clock();
    if (clock != null) {
      notes.addAll(clock.warnings());
      if (clock.readingsUsed() < watch.readings().size()) {
        notes.add("It got warmer: was it heated again? Press the button so that it is counted.");
      }
    }
    if (!watch.readings().isEmpty()) {
      double now = watch.readings().get(watch.readings().size() - 1).value();
      FlashRule.Answer answer = flash(watch, now);
      if (!answer.sentence().isEmpty()) {
        notes.add(answer.sentence());
      }
      melterC
          .filter(limit -> now > limit)
          .ifPresent(
              limit ->
                  notes.add(
                      String.format(
                          Locale.ROOT,
                          "Heat off: %.0f °C is above the melter's limit of %.0f °C.",
                          now,
                          limit)));
      PourWatch.Target target = watch.target();
      if (target != null && now < target.fromC()) {
        notes.add(
            watch.reheats() < PourWalk.REHEATS_MOST
                ? "The wax is below its window. Warm it gently once (house: at most one reheat)."
                : "The wax is below its window and was heated again before (house: at most one"
                    + " reheat).");
      }
    }
    return notes;
  }

  /** What is in the pot rules: wax alone until the scent is in, then the lowest of both. */
  private static FlashRule.Answer flash(PourWatch watch, double now) {
    FlashRule.Answer fine = new FlashRule.Answer(FlashRule.Says.FINE, "");
    Double oil = watch.lowestFlashC();
    PourWatch.Target target = watch.target();
    if (target == null) {
      return fine;
    }
    if (target.what().startsWith("add")) {
      boolean soon = oil != null && now <= target.toC() + 2;
      Double wax = watch.waxFlashC();
      if (soon && oil != null) {
        return FlashRule.adding(now, oil);
      }
      return wax == null ? fine : FlashRule.heating(now, wax);
    }
    CoolingClock clock = watch.clock();
    boolean warmer = clock != null && clock.readingsUsed() < watch.readings().size();
    boolean reheated = warmer || watch.reheats() > 0;
    return oil != null && reheated ? FlashRule.heating(now, oil) : fine;
  }

  private String reading(Reading reading) {
    return String.format(
        Locale.ROOT,
        "%s: %s",
        desk.clockTime(reading.takenAt()),
        desk.units().temperature(reading.value(), 1));
  }
}
