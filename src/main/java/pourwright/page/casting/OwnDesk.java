package pourwright.page.casting;

import java.util.List;
import java.util.Optional;
import pourwright.batch.Batch;
import pourwright.batch.PlannedStep;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.board.Lengths;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;
import pourwright.work.Act;
import pourwright.work.CastWalk;
import pourwright.work.Drawers;
import pourwright.work.MoldCare;
import pourwright.work.OwnCasts;
import pourwright.work.Reading;
import pourwright.work.Subject;

/** What a cast tells of her own hands: molds by number, the rest, a weighed cup, all its water. */
final class OwnDesk {
  /** No fresh mix of powder and water is lighter or heavier. */
  private static final double LIGHTEST = 0.3;

  private static final double HEAVIEST = 4;

  private final Desk desk;
  private final Lengths numbers;

  OwnDesk(Desk desk) {
    this.desk = desk;
    this.numbers = new Lengths(desk);
  }

  /** Adds what was written down at a step, or complains. */
  void read(Form form, Batch batch, PlannedStep step, List<Reading> readings) {
    if (step.key().equals(CastWalk.MOLDS)) {
      form.values("mold").stream()
          .filter(m -> m.matches("[a-z0-9-]{1,60}/\\d{1,4}"))
          .distinct()
          .forEach(m -> readings.add(filled(batch, m)));
    }
    if (step.key().equals(CastWalk.COVER)) {
      rest(form, batch, readings);
    }
  }

  private Reading filled(Batch batch, String mold) {
    int slash = mold.indexOf('/');
    double number = Integer.parseInt(mold.substring(slash + 1));
    return new Reading(
        0, subject(batch), MoldCare.FILLED, number, desk.now(), null, mold.substring(0, slash), 0);
  }

  private static Subject subject(Batch batch) {
    return Subject.of(Subject.Kind.BATCH, batch.id());
  }

  private void rest(Form form, Batch batch, List<Reading> readings) {
    if (!form.optionalText("left_g").isEmpty()) {
      numbers
          .readGrams(form, "left_g", "what is left to pour")
          .filter(g -> notNegative(form, g))
          .ifPresent(
              g -> readings.add(Reading.fresh(subject(batch), OwnCasts.LEFT, g, desk.now())));
    }
    if (form.optionalText("cup_g").isEmpty() && form.optionalText("cup_ml").isEmpty()) {
      return;
    }
    Optional<Double> grams = numbers.readGrams(form, "cup_g", "what the full cup weighs");
    Optional<Double> ml = numbers.readNumber(form, "cup_ml", "what the cup holds, in ml");
    if (grams.isEmpty() || ml.isEmpty()) {
      return;
    }
    try {
      double density = grams.get() / Check.positive("cup_ml", ml.get());
      Check.between("cup_g", density, LIGHTEST, HEAVIEST);
      readings.add(Reading.fresh(subject(batch), OwnCasts.CUP, density, desk.now()));
    } catch (OutOfRange e) {
      form.complain(
          "cup_g", "No fresh mix weighs that: weigh the mix alone, without the cup, level full.");
    }
  }

  private static boolean notNegative(Form form, double grams) {
    if (grams < 0) {
      form.complain("left_g", "What is left cannot weigh less than nothing.");
    }
    return grams >= 0;
  }

  /** Once the last water is in, all of it as one sum. */
  void sumWater(Act act, Batch batch, PlannedStep step) {
    if (!List.of(CastWalk.RANGE_WATER, CastWalk.REST_WATER).contains(step.key())) {
      return;
    }
    double water = desk.studio().look(b -> OwnCasts.weighed(b, Drawers.book(b), batch)).waterG();
    if (water > 0) {
      Reading total = Reading.fresh(subject(batch), OwnCasts.WATER, water, desk.now());
      Act follow = new Act(act.by(), act.requestKey() + "-w", "");
      desk.studio().recordReading.run(follow, List.of(total));
    }
  }
}
