package pourwright.page.casting;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pourwright.card.Mold;
import pourwright.cast.MoldLife;
import pourwright.cast.Silicone;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.board.Lengths;
import pourwright.quantity.Counted;
import pourwright.work.Act;
import pourwright.work.Books;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.MoldCare;
import pourwright.work.Outcome;
import pourwright.work.Reading;
import pourwright.work.SaveCard;
import pourwright.work.SlateBook;
import pourwright.work.Subject;

/** Molds one by one: casts each has served, how long they last, a spare in time, what they cost. */
final class MoldsDesk {
  private static final String TEMPLATE = "casting/molds.jte";
  private static final String BACK = "/casting/molds";

  /** A date further off than this says nothing. */
  private static final double FAR_D = 730;

  private static final double COST_MOST = 100_000;

  private final Desk desk;
  private final Lengths numbers;

  MoldsDesk(Desk desk) {
    this.desk = desk;
    this.numbers = new Lengths(desk);
  }

  void addTo(RoutesConfig routes) {
    routes.get(BACK, http -> show(http, Form.blank()));
    routes.post(BACK + "/retire", this::retire);
    routes.post(BACK + "/spare", this::spare);
    routes.post(BACK + "/cost", this::cost);
  }

  private void show(Context http, Form form) {
    MoldsPage page = desk.studio().look(books -> page(books, form));
    if (form.ok()) {
      Show.page(http, TEMPLATE, page);
    } else {
      Show.again(http, TEMPLATE, page);
    }
  }

  private MoldsPage page(Books books, Form form) {
    SlateBook slate = new SlateBook(books);
    List<MoldsPage.Row> rows = new ArrayList<>();
    Map<String, String> singles = new LinkedHashMap<>();
    for (MoldCare.Kind kind : MoldCare.all(books, desk.now())) {
      rows.add(row(kind, slate));
      for (MoldCare.Single single : kind.singles()) {
        singles.put(
            kind.mold().code() + "/" + single.number(),
            kind.mold().name()
                + " no. "
                + single.number()
                + ", "
                + Counted.of(single.casts(), "cast", "casts"));
      }
    }
    return new MoldsPage(form, rows, singles);
  }

  private MoldsPage.Row row(MoldCare.Kind kind, SlateBook slate) {
    Mold mold = kind.mold();
    String served =
        kind.singles().isEmpty()
            ? "none left"
            : kind.singles().stream()
                .map(s -> "#" + s.number() + ": " + s.casts())
                .collect(Collectors.joining(", "));
    return new MoldsPage.Row(
        mold.code(),
        mold.name(),
        served,
        Counted.of(kind.life(), "cast", "casts") + ", " + origin(kind),
        due(kind),
        when(kind),
        cost(kind, slate),
        kind.wantsSpare());
  }

  private static String due(MoldCare.Kind kind) {
    MoldCare.Single oldest = kind.oldest();
    if (oldest == null) {
      return "make one";
    }
    String worn =
        kind.singles().stream()
            .filter(s -> s.casts() >= kind.life())
            .map(s -> "" + s.number())
            .collect(Collectors.joining(", "));
    return !worn.isEmpty()
        ? "replace no. " + worn
        : kind.wantsSpare()
            ? "make a spare for no. " + oldest.number()
            : "about " + Counted.of(kind.life() - oldest.casts(), "cast", "casts") + " to go";
  }

  private String when(MoldCare.Kind kind) {
    Double days = kind.daysLeft();
    if (days == null || days > FAR_D || days <= 0) {
      return "";
    }
    LocalDate by = desk.now().atZone(desk.zone()).toLocalDate().plusDays(days.longValue());
    return "At your pace it gets there about "
        + by
        + "; begin a spare by "
        + by.minusDays(MoldCare.SPARE_D)
        + ".";
  }

  private static String cost(MoldCare.Kind kind, SlateBook slate) {
    double one = slate.moldCost(kind.mold().code());
    double each = Silicone.costOfPiece(one, kind.life() * (double) kind.mold().piecesPerCast());
    return String.format(Locale.ROOT, "%.2f %s, %.2f a piece", one, slate.currency(), each);
  }

  private String origin(MoldCare.Kind kind) {
    if (kind.median() == null) {
      return kind.failed() == 0
          ? "the card's figure (house)"
          : "the card's figure; " + kind.failed() + " failed";
    }
    List<MoldLife.Step> curve = MoldLife.curve(kind.served());
    MoldLife.Step half =
        curve.stream().filter(s -> s.share() <= 0.5).findFirst().orElse(curve.get(0));
    return "half were gone by then, "
        + kind.failed()
        + " failed (share left "
        + numbers.number(half.share(), 2)
        + " ± "
        + numbers.number(half.error(), 2)
        + ", Kaplan and Meier)";
  }

  private Optional<CardVersion<Mold>> card(String code) {
    return desk.studio().look(b -> b.cards().current(Drawers.MOLD, code));
  }

  private Optional<MoldCare.Kind> kind(String code) {
    return desk.studio().look(b -> MoldCare.all(b, desk.now())).stream()
        .filter(k -> k.mold().code().equals(code))
        .findFirst();
  }

  private void retire(Context http) {
    Form form = Form.of(http);
    String[] asked = form.value("mold").split("/", 2);
    Optional<MoldCare.Kind> kind = kind(asked[0]);
    Optional<MoldCare.Single> single =
        kind.flatMap(
            k ->
                k.singles().stream()
                    .filter(s -> asked.length == 2 && asked[1].equals("" + s.number()))
                    .findFirst());
    if (kind.isEmpty() || single.isEmpty()) {
      form.complain("mold", "Please choose the mold.");
    }
    boolean counted = single.filter(s -> s.casts() > 0).isPresent();
    Optional<Integer> casts =
        counted && form.optionalText("casts").isEmpty()
            ? single.map(MoldCare.Single::casts)
            : form.count("casts", "how many casts it served", 1, 100_000);
    Optional<Act> act = form.act(http, form.optionalText("note"));
    if (!form.ok() || kind.isEmpty() || single.isEmpty() || casts.isEmpty() || act.isEmpty()) {
      show(http, form);
      return;
    }
    Mold mold = kind.get().mold();
    Reading reading =
        reading(mold, MoldCare.RETIRED, casts.get(), MoldCare.note(single.get().number()));
    Outcome<List<Reading>> outcome = desk.studio().recordReading.run(act.get(), List.of(reading));
    if (outcome instanceof Outcome.Refused<List<Reading>> refused) {
      Show.done(http, Said.refused(refused), BACK);
      return;
    }
    count(act.get(), mold, mold.count() - 1);
    Show.done(
        http, Said.done("Recorded: it served " + Counted.of(casts.get(), "cast.", "casts.")), BACK);
  }

  private void spare(Context http) {
    Form form = Form.of(http);
    Optional<CardVersion<Mold>> card = card(form.value("kind"));
    Optional<Act> act = form.act(http, "a spare was made");
    if (card.isEmpty()) {
      form.complain("kind", "Please choose the mold.");
    }
    if (!form.ok() || card.isEmpty() || act.isEmpty()) {
      show(http, form);
      return;
    }
    Mold mold = card.get().body();
    int number = desk.studio().look(b -> MoldCare.nextNumber(b, mold));
    Reading reading = reading(mold, MoldCare.MADE, number, "");
    Outcome<List<Reading>> outcome = desk.studio().recordReading.run(act.get(), List.of(reading));
    if (outcome instanceof Outcome.Refused<List<Reading>> refused) {
      Show.done(http, Said.refused(refused), BACK);
      return;
    }
    count(act.get(), mold, mold.count() + 1);
    Show.done(http, Said.done("Write no. " + number + " on it."), BACK);
  }

  private Reading reading(Mold mold, String quantity, double value, String note) {
    Subject subject = Subject.card(Drawers.MOLD, mold.code());
    return new Reading(0, subject, quantity, value, desk.now(), null, note, 0);
  }

  /** How many there are now stands on the card, where the planner reads it. */
  private void count(Act act, Mold was, int count) {
    Act follow = new Act(act.by(), act.requestKey() + "-c", "");
    card(was.code())
        .ifPresent(
            version ->
                desk.studio()
                    .saveCard
                    .run(
                        follow,
                        SaveCard.Request.of(
                            Drawers.MOLD,
                            was.code(),
                            version.version(),
                            version.body().withCount(Math.max(0, count)))));
  }

  private void cost(Context http) {
    Form form = Form.of(http);
    Optional<CardVersion<Mold>> card = card(form.value("kind"));
    Optional<Double> cost = numbers.readNumber(form, "cost", "what making one cost");
    Optional<Act> act = form.act(http, "what a mold cost");
    if (card.isEmpty()) {
      form.complain("kind", "Please choose the mold.");
    }
    if (cost.isPresent() && !(cost.get() >= 0 && cost.get() <= COST_MOST)) {
      form.complain("cost", "Give what one cost, rubber, box and hands together.");
    }
    if (!form.ok() || card.isEmpty() || cost.isEmpty() || act.isEmpty()) {
      show(http, form);
      return;
    }
    String value = String.format(Locale.ROOT, "%.2f", cost.get());
    Outcome<String> outcome =
        desk.studio().saveSetting.run(act.get(), "slate.mold." + card.get().body().code(), value);
    Show.done(
        http,
        outcome instanceof Outcome.Refused<String> refused
            ? Said.refused(refused)
            : Said.done("The slate spreads it over the mold's life."),
        BACK);
  }
}
