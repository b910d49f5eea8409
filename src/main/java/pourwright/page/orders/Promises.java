package pourwright.page.orders;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import pourwright.order.OrderLine;
import pourwright.page.Desk;
import pourwright.page.now.WorkAhead;
import pourwright.plan.ForwardRule;
import pourwright.plan.LastDay;
import pourwright.plan.MakePlan;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.work.WorkPlan;

/** The earliest honest date for a wish, with the way that it takes, as finished lines. */
final class Promises {
  private static final String WISH = "this wish";
  private static final int LINES_MAX = 60;

  private Promises() {}

  static List<String> of(Desk desk, String candle, int count) {
    OrderLine wish = new OrderLine(WISH, candle, 1, count, null, null);
    WorkPlan plan =
        desk.studio()
            .look(
                books -> {
                  List<OrderLine> open = WorkAhead.open(books);
                  List<OrderLine> lines =
                      new ArrayList<>(open.subList(0, Math.min(LINES_MAX, open.size())));
                  lines.add(wish);
                  return WorkPlan.of(books, lines, desk.now(), desk.zone(), new ForwardRule());
                });
    List<String> said = new ArrayList<>();
    Plan work = plan.plan();
    if (work == null) {
      said.add("No date can be said.");
      said.addAll(plan.reasons());
      return said;
    }
    MakePlan.Served served =
        plan.make().served().stream()
            .filter(s -> s.line().order().equals(WISH))
            .findFirst()
            .orElseThrow();
    if (served.pours().isEmpty()) {
      said.add("They stand on the shelf: today.");
      return said;
    }
    int end = 0;
    for (Placed placed : work.placed()) {
      for (String pour : served.pours()) {
        end = placed.step().startsWith(pour + "/") ? Math.max(end, placed.endMin()) : end;
      }
    }
    LocalDate day = plan.problem().clock(end).toLocalDate();
    said.add("Earliest by the order of work there is now: " + day + ".");
    if (!plan.make().shortages().isEmpty()) {
      said.add("Materials are short for what is open; the date holds once they are there.");
    }
    said.add("The whole way, on a floor with nothing else to do:");
    for (LastDay.Leg leg : LastDay.way(wish, plan.book(), plan.habits(), plan.floor())) {
      if (leg.minutes() >= 60) {
        said.add(length(leg.minutes()) + " \u2013 " + leg.words());
      }
    }
    return said;
  }

  private static String length(int minutes) {
    return minutes < 2880 ? minutes / 60 + " h" : minutes / 1440 + " d";
  }
}
