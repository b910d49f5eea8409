package pourwright.main;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import pourwright.cli.Doors;
import pourwright.cli.ExitCode;
import pourwright.cli.PlanText;
import pourwright.cli.Reading;
import pourwright.order.ImportChoices;
import pourwright.order.OrderImport;
import pourwright.order.OrderLine;
import pourwright.plan.ForwardSearch;
import pourwright.plan.Planner;
import pourwright.sheet.Paper;
import pourwright.sheet.PlanSheets;
import pourwright.solve.CpSatPlanner;
import pourwright.work.Act;
import pourwright.work.Books;
import pourwright.work.Outcome;
import pourwright.work.Replan;
import pourwright.work.ShopFile;
import pourwright.work.Studio;
import pourwright.work.WorkPlan;

/** Order files without pages: plan one, or take one into the book. */
final class OrderDoors {
  /**
   * Orders of batches that are tried without the solver; a number, so that the plan is the same.
   */
  private static final int ORDERS_TRIED = 60;

  private final PrintWriter out;
  private final PrintWriter err;
  private final Clock clock;

  OrderDoors(PrintWriter out, PrintWriter err, Clock clock) {
    this.out = out;
    this.err = err;
    this.clock = clock;
  }

  int plan(Path data, String db, Doors.PlanWish wish) throws IOException {
    Paper paper = Paper.of(wish.paper());
    if (!studioIsThere(data, db)) {
      return ExitCode.USAGE;
    }
    try (Wiring wiring = Wiring.open(data, db, clock)) {
      Studio studio = wiring.studio();
      OrderImport.Ready ready = read(studio, wish.orders(), wish.reading());
      if (ready == null) {
        return ExitCode.USAGE;
      }
      List<OrderLine> ofFile = ready.lines().stream().map(OrderImport.Read::line).toList();
      Planner planner =
          wish.seconds() == 0 ? new ForwardSearch(ORDERS_TRIED) : CpSatPlanner.usual();
      Planner.Effort effort =
          new Planner.Effort(
              Duration.ofSeconds(wish.seconds()), 1, 2, null, better -> {}, () -> false);
      WorkPlan plan =
          studio.look(
              books ->
                  WorkPlan.of(
                      books,
                      wish.alone() ? ofFile : withOpen(books, ofFile),
                      studio.now(),
                      clock.getZone(),
                      planner,
                      effort));
      if (wish.json()) {
        out.println(PlanText.json(plan).toPrettyString());
        out.flush();
      } else {
        PlanText.detected(ready.detected(), out);
        ready.notes().forEach(n -> out.println("  " + n));
        PlanText.print(plan, out);
      }
      if (wish.pdf() != null) {
        write(plan, paper, wiring.name(), wish.pdf());
      }
      return plan.plan() == null ? ExitCode.ERROR : ExitCode.OK;
    }
  }

  /**
   * The file's lines and what else is open in the book; a line of both counts as the file has it.
   */
  private static List<OrderLine> withOpen(Books books, List<OrderLine> ofFile) {
    Set<OrderLine.Key> inFile = ofFile.stream().map(OrderLine::key).collect(Collectors.toSet());
    List<OrderLine> lines = new ArrayList<>(ofFile);
    Replan.openLines(books).stream()
        .filter(line -> !inFile.contains(line.key()))
        .forEach(lines::add);
    return lines;
  }

  private void write(WorkPlan plan, Paper paper, String name, Path pdf) throws IOException {
    try (OutputStream to = Files.newOutputStream(pdf)) {
      PlanSheets.write(plan, paper, name, clock.instant().atZone(clock.getZone()), to);
    }
    err.println("pourwright: the sheets are in " + pdf);
  }

  int importOrders(Path data, String db, Path file, Reading reading) throws IOException {
    if (!studioIsThere(data, db)) {
      return ExitCode.USAGE;
    }
    // An open studio shows what it planned; orders go in on its own page then.
    try (DataFolder held = DataFolder.hold(data);
        Wiring wiring = Wiring.open(held.path(), db, clock)) {
      OrderImport.Ready ready = read(wiring.studio(), file, reading);
      if (ready == null) {
        return ExitCode.USAGE;
      }
      PlanText.detected(ready.detected(), out);
      wiring
          .file()
          .ifPresent(store -> wiring.backups().make(store, clock.instant(), Commands.program()));
      Act act = Act.of("ME", "import-" + ready.fingerprint() + "-" + clock.millis());
      Outcome<pourwright.work.AcceptOrders.Accepted> outcome =
          wiring.studio().acceptOrders.run(act, String.valueOf(file.getFileName()), ready);
      if (outcome instanceof Outcome.Refused<pourwright.work.AcceptOrders.Accepted> refused) {
        err.println("pourwright: " + refused.sentence() + "; " + refused.hint());
        return ExitCode.USAGE;
      }
      var changes = outcome.made().changes();
      out.printf(
          "%d lines added, %d changed, %d cancelled, %d as they were%n",
          changes.added().size(),
          changes.edited().size(),
          changes.cancelled().size(),
          changes.same().size());
      out.flush();
      return ExitCode.OK;
    }
  }

  private boolean studioIsThere(Path data, String db) {
    if (db.isEmpty() && !Wiring.hasStudio(data)) {
      err.println(
          "pourwright: there is no studio in "
              + data
              + "; start one there, or make the sample with: pourwright demo --data "
              + data);
      return false;
    }
    return true;
  }

  /** Reads a file, or says line by line why not. */
  private OrderImport.@Nullable Ready read(Studio studio, Path file, Reading reading)
      throws IOException {
    if (!Files.isRegularFile(file)) {
      err.println("pourwright: there is no file " + file);
      return null;
    }
    byte[] bytes = Files.readAllBytes(file);
    ImportChoices choices = reading.choices(studio.today(), clock.getZone());
    OrderImport outcome = studio.look(books -> ShopFile.of(books).read(books, bytes, choices));
    if (outcome instanceof OrderImport.Ready ready) {
      return ready;
    }
    err.println("pourwright: nothing of " + file + " was taken");
    if (outcome instanceof OrderImport.Bad bad) {
      bad.lines().forEach(l -> err.println("  line " + l.lineNumber() + ": " + l.reason()));
    } else if (outcome instanceof OrderImport.Ambiguous ambiguous) {
      ambiguous
          .questions()
          .forEach(
              q ->
                  err.println(
                      "  "
                          + q.sentence()
                          + "; say "
                          + option(q.about())
                          + " one of "
                          + q.answers()));
    } else if (outcome instanceof OrderImport.Unreadable unreadable) {
      err.println("  " + unreadable.reason() + "; " + unreadable.hint());
    }
    return null;
  }

  private static String option(String about) {
    return List.of("dates", "decimal", "delimiter", "encoding", "sheet").contains(about)
        ? "--" + about
        : "--map " + about + "=";
  }
}
