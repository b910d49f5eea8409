package pourwright.page.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Show;
import pourwright.page.now.WorkAhead;
import pourwright.plan.LastDay;
import pourwright.plan.Promise;
import pourwright.plan.Promising;
import pourwright.quantity.OutOfRange;
import pourwright.work.Drawers;
import pourwright.work.Wish;

/** When can I have it: the earliest day, what holds it, what one more mold or evening would buy. */
public final class PromiseDesk implements Corner {
  private static final String TEMPLATE = "plan/promise.jte";

  private final Desk desk;
  private final Promising promising;
  private final Duration limit;
  private final AtomicReference<@Nullable PromiseJob> job = new AtomicReference<>();

  /** Promises of this studio, searched for within this time. */
  public PromiseDesk(Desk desk, Promising promising, Duration limit) {
    this.desk = desk;
    this.promising = promising;
    this.limit = limit;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/plan/promise", this::show);
    routes.post("/plan/promise", this::begin);
    routes.post("/plan/promise/stop", this::stop);
  }

  private record Asked(String candle, int count, @Nullable LocalDate parcelDay) {
    String query() {
      return "candle="
          + URLEncoder.encode(candle, StandardCharsets.UTF_8)
          + "&count="
          + count
          + (parcelDay == null ? "" : "&day=" + parcelDay);
    }
  }

  private Optional<Asked> asked(Form form) {
    Optional<String> candle =
        form.choice("candle", "which candle", List.copyOf(candles().keySet()));
    Optional<Integer> count = form.count("count", "how many", 1, 500);
    Optional<LocalDate> day = form.readIfThere("day", "a day", PromiseDesk::day);
    return form.ok() && candle.isPresent() && count.isPresent()
        ? Optional.of(new Asked(candle.get(), count.get(), day.orElse(null)))
        : Optional.empty();
  }

  private static LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw new IllegalArgumentException(e);
    }
  }

  private Map<String, String> candles() {
    Map<String, String> candles = new LinkedHashMap<>();
    desk.studio()
        .look(books -> books.cards().all(Drawers.CANDLE))
        .forEach(c -> candles.put(c.code(), c.body().name()));
    return candles;
  }

  private Wish wish(Asked asked) {
    return desk.studio()
        .look(
            books ->
                Wish.of(
                    books,
                    WorkAhead.open(books),
                    asked.candle(),
                    asked.count(),
                    asked.parcelDay(),
                    desk.now(),
                    desk.zone()));
  }

  private void begin(Context http) {
    Form form = Form.of(http);
    Optional<Asked> asked = asked(form);
    if (asked.isEmpty()) {
      Show.again(http, TEMPLATE, empty(form));
      return;
    }
    PromiseJob running = job.get();
    if (running != null) {
      running.stop();
    }
    try {
      job.set(PromiseJob.begin(asked.get().query(), wish(asked.get()), promising, limit));
    } catch (OutOfRange e) {
      form.complain("candle", e.sentence() + ": " + e.hint());
      Show.again(http, TEMPLATE, empty(form));
      return;
    }
    http.redirect("/plan/promise?" + asked.get().query(), HttpStatus.SEE_OTHER);
  }

  private void stop(Context http) {
    PromiseJob running = job.get();
    if (running == null) {
      http.redirect("/plan/promise", HttpStatus.SEE_OTHER);
      return;
    }
    running.stop();
    http.redirect("/plan/promise?" + running.query(), HttpStatus.SEE_OTHER);
  }

  private PromisePage empty(Form form) {
    PromisePage.Proof none = new PromisePage.Proof("", List.of());
    return new PromisePage(form, candles(), "none", none, "", List.of(), List.of(), List.of(), "");
  }

  private void show(Context http) {
    if (http.queryParam("candle") == null) {
      Show.page(http, TEMPLATE, empty(Form.blank()));
      return;
    }
    Form form = Form.asked(http);
    Optional<Asked> asked = asked(form);
    if (asked.isEmpty()) {
      Show.again(http, TEMPLATE, empty(form));
      return;
    }
    PromiseJob known = job.get();
    boolean same = known != null && known.query().equals(asked.get().query());
    try {
      Wish wish = same && known != null ? known.wish() : wish(asked.get());
      Show.page(http, TEMPLATE, page(form, wish, same ? known : null));
    } catch (OutOfRange e) {
      form.complain("candle", e.sentence() + ": " + e.hint());
      Show.again(http, TEMPLATE, empty(form));
    }
  }

  private PromisePage page(Form form, Wish wish, @Nullable PromiseJob known) {
    Promise found = known == null ? null : known.found();
    String state = known == null ? "quick" : found == null ? "running" : "done";
    List<String> facts = new ArrayList<>();
    List<String> gains = new ArrayList<>();
    String lead = lead(wish, found, facts, gains);
    if (!wish.shortOf().isEmpty()) {
      facts.add(
          "Short for what is open: "
              + String.join(", ", wish.shortOf())
              + ". The date holds once they are there.");
    }
    LocalDate parcel = wish.parcelDay();
    LocalDate last = wish.lastDay();
    if (parcel != null) {
      facts.add(
          last == null
              ? "No day of the last half year would do to cast for the parcel of " + parcel + "."
              : "Last day to cast for the parcel of "
                  + desk.day(parcel)
                  + ": "
                  + desk.day(last)
                  + ", on a floor with nothing else to do.");
    }
    List<PromisePage.Leg> way =
        wish.way().stream()
            .map(leg -> new PromisePage.Leg(leg.words(), PlanWords.length(leg.minutes())))
            .toList();
    long sum = wish.way().stream().mapToLong(LastDay.Leg::minutes).sum();
    return new PromisePage(
        form, candles(), state, proof(wish), lead, facts, gains, way, PlanWords.length(sum));
  }

  private static PromisePage.Proof proof(Wish wish) {
    if (wish.mayBePromised()) {
      return new PromisePage.Proof("", List.of());
    }
    return new PromisePage.Proof(
        "It is not proved for sale, so nothing may be promised yet: "
            + String.join("; ", wish.notProved())
            + ".",
        wish.missing());
  }

  private String lead(Wish wish, @Nullable Promise found, List<String> facts, List<String> gains) {
    if (wish.onTheShelf()) {
      return "They stand on the shelf: today.";
    }
    if (found instanceof Promise.Holds holds) {
      facts.add(
          holds.proven()
              ? "Proven: no earlier minute holds while the other dates are kept."
              : "Not proven: at the very best "
                  + when(wish, Math.toIntExact(Math.max(0, holds.boundMin())))
                  + ".");
      facts.add("What holds it: " + holds.limitedBy() + ".");
      holds
          .gains()
          .forEach(
              gain ->
                  gains.add(
                      "With "
                          + gain.remedy()
                          + ": "
                          + PlanWords.length(gain.minutesEarlier())
                          + " earlier."));
      return "Earliest: " + when(wish, holds.endMin()) + ".";
    }
    if (found instanceof Promise.None none) {
      facts.addAll(none.reasons());
      return "No date can be said.";
    }
    int end = wish.quickEndMin();
    if (end < 0) {
      facts.addAll(wish.work().reasons());
      return "No date can be said.";
    }
    return "By the quick order of work: " + when(wish, end) + ".";
  }

  private String when(Wish wish, int minute) {
    return desk.dayAndTime(wish.problem().clock(minute).toInstant());
  }
}
