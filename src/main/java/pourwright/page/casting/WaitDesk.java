package pourwright.page.casting;

import io.javalin.http.Context;
import java.time.Duration;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.board.Lengths;
import pourwright.quantity.Counted;
import pourwright.work.Act;
import pourwright.work.Books;
import pourwright.work.CastWait;
import pourwright.work.Outcome;
import pourwright.work.Reading;
import pourwright.work.Subject;
import pourwright.work.Timer;

/** The wait for demolding, which follows the room's temperature. */
final class WaitDesk {
  private final Desk desk;
  private final Lengths numbers;

  WaitDesk(Desk desk) {
    this.desk = desk;
    this.numbers = new Lengths(desk);
  }

  CastPage.@Nullable Wait of(Books books, Batch batch) {
    if (!batch.isRunning()) {
      return null;
    }
    return CastWait.of(books, batch, desk.now()).map(this::words).orElse(null);
  }

  private CastPage.Wait words(CastWait wait) {
    DateTimeFormatter clock = DateTimeFormatter.ofPattern("EEE HH:mm", Locale.UK);
    String from = wait.from().atZone(desk.zone()).format(clock);
    String until = wait.until().atZone(desk.zone()).format(clock);
    String age = numbers.number(wait.ageH(), 1) + " of " + numbers.number(wait.fromAgeH(), 1);
    String rests =
        wait.ownCasts() > 0
            ? "from " + Counted.of(wait.ownCasts(), "cast", "casts") + " you judged yourself"
            : "from the mix card";
    String kept =
        wait.measured()
            ? "if it stays at " + numbers.number(wait.lastC(), 1) + " °C"
            : "at 20 °C; no temperature was recorded";
    return new CastPage.Wait(
        age,
        wait.isReached()
            ? "It may be demolded."
            : "From " + from + ", until " + until + ", " + kept,
        "hours at 20 °C, " + rests + "; activation energy usual for portland");
  }

  /** Records the room's temperature and sets the bell anew. */
  void room(Context http, Batch batch, Form form) {
    String back = "/casting/" + batch.id();
    Optional<Double> celsius = numbers.readCelsius(form, "room_c", "the temperature");
    Optional<Act> act = form.act(http, "");
    if (celsius.isPresent() && !(celsius.get() >= -10 && celsius.get() <= 60)) {
      form.complain("room_c", "A room is from -10 to 60 °C.");
    }
    if (!form.ok() || celsius.isEmpty() || act.isEmpty()) {
      Show.done(http, Said.note("Nothing recorded.", complaint(form)), back);
      return;
    }
    Subject subject = Subject.of(Subject.Kind.BATCH, batch.id());
    Reading reading = Reading.fresh(subject, CastWait.ROOM, celsius.get(), desk.now());
    Outcome<List<Reading>> outcome = desk.studio().recordReading.run(act.get(), List.of(reading));
    if (outcome instanceof Outcome.Refused<List<Reading>> refused) {
      Show.done(http, Said.refused(refused), back);
      return;
    }
    Show.done(http, Said.done("Recorded." + again(act.get(), batch)), back);
  }

  private static String complaint(Form form) {
    String room = form.error("room_c");
    return room.isEmpty() ? "Please give the temperature and your initials." : room;
  }

  private String again(Act act, Batch batch) {
    Timer bell = desk.studio().look(books -> CastWait.bell(books, batch));
    Optional<CastWait> wait = desk.studio().look(books -> CastWait.of(books, batch, desk.now()));
    if (bell == null || wait.isEmpty() || wait.get().isReached()) {
      return "";
    }
    Act stop = new Act(act.by(), act.requestKey() + "-a", "");
    desk.studio().timers.answer(stop, bell.id());
    Act start = new Act(act.by(), act.requestKey() + "-t", "");
    Duration left = Duration.ofSeconds(Math.round(3600 * wait.get().hoursLeft(desk.now())));
    desk.studio().timers.start(start, bell.label(), bell.subject(), left);
    return " The timer follows: " + numbers.number(left.toMinutes() / 60.0, 1) + " h from now.";
  }

  /** The bell of a cast that was demolded before it rang has nothing more to say. */
  void silence(Act act, Batch batch) {
    Timer bell = desk.studio().look(books -> CastWait.bell(books, batch));
    if (bell != null) {
      desk.studio().timers.answer(new Act(act.by(), act.requestKey() + "-a", ""), bell.id());
    }
  }

  /** Age at 20 °C now, for a demolding that is judged. */
  Optional<Double> ageH(Batch batch) {
    return desk.studio().look(books -> CastWait.of(books, batch, desk.now())).map(CastWait::ageH);
  }
}
