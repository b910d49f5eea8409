package pourwright.page.house;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.quantity.Counted;
import pourwright.work.Act;
import pourwright.work.BurnTest;
import pourwright.work.Outcome;

/** STOP: everything that burns or melts, with what to do, and one button that says it is out. */
public final class StopCorner implements Corner {
  private final Desk desk;

  /** STOP for this studio. */
  public StopCorner(Desk desk) {
    this.desk = desk;
  }

  /**
   * The page.
   *
   * @param form what was typed
   * @param burning candles that burn
   * @param melting pours under way
   */
  public record StopPage(Form form, List<String> burning, List<String> melting) {
    /** Whether anything is hot. */
    public boolean hot() {
      return !burning.isEmpty() || !melting.isEmpty();
    }
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/stop", http -> Show.page(http, "house/stop.jte", page(Form.blank())));
    routes.post("/stop", this::stop);
  }

  private StopPage page(Form form) {
    return desk.studio()
        .look(
            books -> {
              List<String> burning = new ArrayList<>();
              for (BurnTest.Cycle cycle : books.burns().burning()) {
                burning.add(
                    "test "
                        + books.burns().testOfCycle(cycle.id())
                        + ", cycle "
                        + cycle.number()
                        + ", lit at "
                        + desk.clockTime(cycle.litAt()));
              }
              List<String> melting =
                  books.batches().running().stream()
                      .filter(b -> b.plan().kind() == BatchKind.POUR)
                      .map(
                          b ->
                              "pour "
                                  + b.mark().text()
                                  + ", since "
                                  + desk.clockTime(b.startedAt()))
                      .toList();
              return new StopPage(form, burning, melting);
            });
  }

  private static String stopped(int burning, int pours) {
    List<String> words = new ArrayList<>();
    if (burning > 0) {
      words.add(Counted.of(burning, "burning cycle is ended", "burning cycles are ended"));
    }
    if (pours > 0) {
      words.add(Counted.of(pours, "pour is stopped", "pours are stopped"));
    }
    return words.isEmpty() ? "Noted." : String.join(", ", words) + ".";
  }

  /** Closes every running pour as stopped; what could not be is added to {@code left}. */
  private int stopPours(Act act, List<String> left) {
    List<Batch> running =
        desk.studio()
            .look(
                books ->
                    books.batches().running().stream()
                        .filter(batch -> batch.plan().kind() == BatchKind.POUR)
                        .toList());
    int stopped = 0;
    for (Batch pour : running) {
      Act each = new Act(act.by(), act.requestKey() + "-pour-" + pour.id(), "STOP");
      if (desk.studio().stopPour.run(each, pour.id()) instanceof Outcome.Refused<?> refused) {
        left.add(refused.sentence());
      } else {
        stopped++;
      }
    }
    return stopped;
  }

  private void stop(Context http) {
    Form form = Form.of(http);
    Optional<Act> act = form.act(http, "stopped");
    if (act.isEmpty()) {
      Show.again(http, "house/stop.jte", page(form));
      return;
    }
    List<BurnTest.Cycle> burning = desk.studio().look(books -> books.burns().burning());
    List<String> left = new ArrayList<>();
    for (BurnTest.Cycle cycle : burning) {
      Act each = new Act(act.get().by(), act.get().requestKey() + "-" + cycle.id(), "STOP");
      if (desk.studio().burnTests.putOut(each, cycle.id(), "stopped for safety")
          instanceof Outcome.Refused<?> refused) {
        left.add(refused.sentence());
      }
    }
    int pours = stopPours(act.get(), left);
    Said said =
        left.isEmpty()
            ? new Said(
                Said.Tone.DONE,
                stopped(burning.size(), pours),
                "Undo opens them again, the last one first; the history has them all.")
            : Said.warning("Not all could be noted.", String.join("; ", left));
    Show.done(http, said, "/stop");
  }
}
