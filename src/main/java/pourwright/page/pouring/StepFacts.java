package pourwright.page.pouring;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.batch.PlannedStep;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.pour.FlashRule;
import pourwright.work.Act;
import pourwright.work.Outcome;
import pourwright.work.PourFill;
import pourwright.work.PourWalk;
import pourwright.work.PourWatch;
import pourwright.work.Reading;
import pourwright.work.RecordStep;
import pourwright.work.Subject;

/**
 * What is recorded beside a step, each a fact of its own: masses of empty wicked vessels, the mass
 * of a second pour, the reason for adding scent above its flash point.
 */
final class StepFacts {
  private final Desk desk;
  private final PourWatch watch;
  private final List<Reading> readings = new ArrayList<>();
  private String reason = "";
  private @Nullable Double reasonC;

  private StepFacts(Desk desk, PourWatch watch) {
    this.desk = desk;
    this.watch = watch;
  }

  /** Reads them, with complaints beside the fields that cannot be. */
  static StepFacts of(
      Desk desk, Form form, PourWatch watch, PlannedStep step, @Nullable Double stepC) {
    StepFacts facts = new StepFacts(desk, watch);
    switch (step.key()) {
      case PourWalk.TARE -> facts.masses(form, "empty-", PourFill.EMPTY_G);
      case PourWalk.SECOND ->
          form.readIfThere("second_g", "a mass", facts::grams)
              .ifPresent(
                  g -> facts.add(Subject.Kind.BATCH, watch.batch().id(), PourWatch.SECOND_G, g));
      case PourWalk.SCENT -> facts.reason(form, stepC);
      default -> {}
    }
    return facts;
  }

  private double grams(String text) {
    return desk.units().grams(text);
  }

  private void add(Subject.Kind kind, long id, String quantity, double value) {
    readings.add(Reading.fresh(Subject.of(kind, id), quantity, value, desk.now()));
  }

  private void masses(Form form, String prefix, String quantity) {
    for (String field : form.fields()) {
      String id = field.startsWith(prefix) ? field.substring(prefix.length()) : "";
      if (id.matches("\\d{1,18}")) {
        form.readIfThere(field, "a mass", this::grams)
            .ifPresent(g -> add(Subject.Kind.PIECE, Long.parseLong(id), quantity, g));
      }
    }
  }

  private void reason(Form form, @Nullable Double stepC) {
    Double oil = watch.lowestFlashC();
    Double wax = stepC == null ? watch.waxC() : stepC;
    reason = form.optionalText("reason");
    reasonC = wax;
    if (oil == null
        || wax == null
        || FlashRule.adding(wax, oil).says() != FlashRule.Says.REASON_NEEDED) {
      reason = "";
    } else if (reason.isEmpty()) {
      form.complain(
          "reason",
          String.format(
              Locale.ROOT,
              "The wax is at %.0f \u00b0C, above the oil's flash point (%.0f \u00b0C). Let it cool, or"
                  + " write down why not.",
              wax,
              oil));
    }
  }

  /** Writes them down before the step itself; what was refused, if anything was. */
  Optional<Outcome.Refused<?>> write(Act act) {
    Act aside = new Act(act.by(), act.requestKey() + "-facts", reason);
    if (!reason.isEmpty()) {
      RecordStep.Request request =
          new RecordStep.Request(watch.batch().id(), PourWalk.REASON, List.of(), reasonC);
      return refused(desk.studio().recordStep.run(aside, request));
    }
    return readings.isEmpty()
        ? Optional.empty()
        : refused(desk.studio().recordReading.run(aside, readings));
  }

  private static Optional<Outcome.Refused<?>> refused(Outcome<?> outcome) {
    return outcome instanceof Outcome.Refused<?> refused ? Optional.of(refused) : Optional.empty();
  }
}
