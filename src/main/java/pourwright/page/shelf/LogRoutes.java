package pourwright.page.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.quantity.Counted;
import pourwright.work.Act;
import pourwright.work.BurnLog;
import pourwright.work.BurnTest;
import pourwright.work.Outcome;

/** Logs of a scale or a thermometer: a CSV file on the test's page, pasted lines on the cycle's. */
final class LogRoutes {
  private static final List<String> WHAT = List.of("mass_g", "wall_c", "base_c");
  private final Desk desk;
  private final TestViews views;

  LogRoutes(Desk desk, TestViews views) {
    this.desk = desk;
    this.views = views;
  }

  void addTo(RoutesConfig routes) {
    routes.post("/shelf/test/{id}/log", this::file);
    routes.post("/shelf/cycle/{id}/log", this::pasted);
  }

  private void file(Context http) throws IOException {
    long test = ShelfPlace.number(http.pathParam("id"));
    Form form = Form.of(http);
    Optional<Long> cycle = form.read("cycle", "a cycle", Long::valueOf);
    UploadedFile file = http.uploadedFile("log");
    byte[] bytes = {};
    if (file == null || file.size() == 0) {
      form.complain("log", "Please choose the logger's file.");
    } else {
      try (InputStream in = file.content()) {
        bytes = in.readAllBytes();
      }
    }
    if (cycle.isPresent() && !isOf(cycle.get(), test)) {
      form.complain("cycle", "Please choose a cycle of this test.");
    }
    Optional<Said> said =
        form.ok() && cycle.isPresent()
            ? take(http, form, cycle.get(), bytes, "log")
            : Optional.empty();
    if (said.isEmpty()) {
      Show.again(http, "shelf/test.jte", views.test(test, form).orElseThrow(NotFoundResponse::new));
      return;
    }
    Show.done(http, said.get(), "/shelf/test/" + test);
  }

  private boolean isOf(long cycle, long test) {
    return desk.studio()
        .look(
            books ->
                books.burns().cycle(cycle).isPresent() && books.burns().testOfCycle(cycle) == test);
  }

  private void pasted(Context http) {
    long cycle = ShelfPlace.number(http.pathParam("id"));
    Form form = Form.of(http);
    String lines = form.text("lines", "the lines of the log");
    Optional<Said> said =
        form.ok()
            ? take(http, form, cycle, lines.getBytes(StandardCharsets.UTF_8), "lines")
            : Optional.empty();
    if (said.isEmpty()) {
      Show.again(
          http, "shelf/cycle.jte", views.cycle(cycle, form).orElseThrow(NotFoundResponse::new));
      return;
    }
    Show.done(http, said.get(), "/shelf/cycle/" + cycle);
  }

  /** Reads a log whole or not at all; complaints stay in the form, at the given field. */
  private Optional<Said> take(Context http, Form form, long cycle, byte[] bytes, String field) {
    Optional<String> what = form.choice("what", "mass, wall or underside", WHAT);
    Optional<BurnTest.Cycle> burnt = desk.studio().look(books -> books.burns().cycle(cycle));
    if (what.isEmpty() || burnt.isEmpty()) {
      return Optional.empty();
    }
    BurnLog log =
        BurnLog.read(
            bytes,
            what.get(),
            new BurnLog.Burnt(burnt.get().litAt(), burnt.get().endedAt(), desk.zone()));
    if (!log.complaints().isEmpty()) {
      form.complain(field, String.join(" ", log.complaints()));
    }
    Optional<Act> act = form.act(http, "from a log");
    if (!form.ok() || act.isEmpty()) {
      return Optional.empty();
    }
    Outcome<List<BurnTest.Seen>> outcome =
        desk.studio().burnTests.log(act.get(), cycle, log.looks());
    if (outcome instanceof Outcome.Refused<List<BurnTest.Seen>> refused) {
      return Optional.of(Said.refused(refused));
    }
    String done =
        Counted.of(
            log.looks().size(),
            "reading recorded from the log.",
            "readings recorded from the log.");
    return Optional.of(
        log.aside() == 0
            ? Said.done(done)
            : Said.warning(
                done,
                Counted.of(
                    log.aside(),
                    "line lies before lighting or after putting out: left out.",
                    "lines lie before lighting or after putting out: left out.")));
  }
}
