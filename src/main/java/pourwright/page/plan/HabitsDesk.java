package pourwright.page.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.plan.PostDays;
import pourwright.quantity.OutOfRange;
import pourwright.work.Act;
import pourwright.work.Outcome;
import pourwright.work.PlanSettings;

/** When parcels go, how cold the shed is, spare kits of a class: what the plan reckons with. */
final class HabitsDesk implements Corner {
  private static final String PATH = "/plan/habits";
  private static final String TEMPLATE = "plan/habits.jte";

  private final Desk desk;

  HabitsDesk(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(PATH, this::show);
    routes.post(PATH, this::save);
  }

  private void show(Context http) {
    PlanSettings said = desk.studio().look(PlanSettings::of);
    Map<String, String> typed =
        Map.of(
            "week",
            said.week(),
            "hot",
            said.hot(),
            "last",
            said.last(),
            "shed",
            said.shed(),
            "spare",
            said.spare(),
            "tests",
            said.tests());
    Show.page(http, TEMPLATE, new HabitsPage(Form.startingFrom(typed)));
  }

  private void save(Context http) {
    Form form = Form.of(http);
    String week = form.value("week").strip();
    String hot = form.value("hot").strip();
    String last = form.value("last").strip();
    String shed = form.value("shed").strip().replace(',', '.');
    String spare = form.value("spare").strip().replace(',', '.');
    String tests = form.value("tests").strip();
    try {
      if (!spare.isEmpty()) {
        PlanSettings.share(Double.parseDouble(spare));
      }
    } catch (NumberFormatException | OutOfRange e) {
      form.complain("spare", "the spare is a number of percent between 0 and 100, such as 10");
    }
    try {
      if (!tests.isEmpty()) {
        PlanSettings.testPieces(tests);
      }
    } catch (OutOfRange e) {
      form.complain("tests", e.sentence());
    }
    try {
      PostDays.read(week, hot, last);
    } catch (OutOfRange e) {
      form.complain(e.field(), e.sentence() + ": " + e.hint());
    }
    try {
      if (!shed.isEmpty()) {
        PlanSettings.shed(Double.parseDouble(shed));
      }
    } catch (NumberFormatException e) {
      form.complain("shed", "a temperature is a number, such as 8");
    } catch (OutOfRange e) {
      form.complain("shed", "the shed is between 2 and 35 °C; below that no mix hardens");
    }
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty()) {
      Show.again(http, TEMPLATE, new HabitsPage(form));
      return;
    }
    Outcome<String> outcome =
        new PlanSettings(week, hot, last, shed, spare, tests).save(desk.studio(), act.get());
    Show.done(
        http,
        outcome instanceof Outcome.Refused<String> refused
            ? Said.refused(refused)
            : Said.done("The plan reckons with it from now on."),
        PATH);
  }
}
