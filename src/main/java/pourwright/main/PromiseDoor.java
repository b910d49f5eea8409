package pourwright.main;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.cli.Doors;
import pourwright.cli.ExitCode;
import pourwright.cli.PromiseText;
import pourwright.page.now.WorkAhead;
import pourwright.plan.Planner;
import pourwright.quantity.OutOfRange;
import pourwright.solve.CpSatPromising;
import pourwright.work.Drawers;
import pourwright.work.Studio;
import pourwright.work.Wish;

/** When can it leave, without pages: the same wish and the same rule as on the page. */
final class PromiseDoor {
  private static final int COUNT_MAX = 500;

  private final Clock clock;
  private final PrintWriter out;
  private final PrintWriter err;

  PromiseDoor(Clock clock, PrintWriter out, PrintWriter err) {
    this.clock = clock;
    this.out = out;
    this.err = err;
  }

  /** Exit code 1 where no date can be promised. */
  int promise(Path data, String db, Doors.PromiseWish asked) {
    if (asked.count() < 1 || asked.count() > COUNT_MAX) {
      return refused("--count is " + asked.count() + "; give 1 to " + COUNT_MAX);
    }
    LocalDate day;
    try {
      day = asked.day().isEmpty() ? null : LocalDate.parse(asked.day());
    } catch (DateTimeException e) {
      return refused("--day is '" + asked.day() + "'; write it as 2026-05-20");
    }
    if (db.isEmpty() && !Wiring.hasStudio(data)) {
      return refused(
          "there is no studio in "
              + data
              + "; start one there, or make the sample with: pourwright demo --data "
              + data);
    }
    try (Wiring wiring = Wiring.open(data, db, clock)) {
      return answer(wiring.studio(), asked, day);
    } catch (OutOfRange e) {
      return refused(e.sentence() + "; " + e.hint());
    }
  }

  private int answer(Studio studio, Doors.PromiseWish asked, @Nullable LocalDate day) {
    List<String> candles =
        studio.look(books -> books.cards().all(Drawers.CANDLE)).stream()
            .map(c -> c.code())
            .toList();
    if (!candles.contains(asked.candle())) {
      return refused(
          "there is no candle '" + asked.candle() + "'; there are " + String.join(", ", candles));
    }
    Wish wish =
        studio.look(
            books ->
                Wish.of(
                    books,
                    WorkAhead.open(books),
                    asked.candle(),
                    asked.count(),
                    day,
                    studio.now(),
                    clock.getZone()));
    boolean search = asked.seconds() > 0 && !wish.onTheShelf();
    Planner.Effort effort =
        new Planner.Effort(
            Duration.ofSeconds(asked.seconds()), 1, 2, null, better -> {}, () -> false);
    PromiseText text =
        new PromiseText(wish, search ? wish.earliest(new CpSatPromising(), effort) : null);
    if (asked.json()) {
      out.println(text.json().toPrettyString());
      out.flush();
    } else {
      text.print(out);
    }
    return text.promises() ? ExitCode.OK : ExitCode.ERROR;
  }

  private int refused(String sentence) {
    err.println("pourwright: " + sentence);
    return ExitCode.USAGE;
  }
}
