package pourwright.page.casting;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.card.CardBook;
import pourwright.card.Mold;
import pourwright.cast.Defect;
import pourwright.cast.DefectCauses;
import pourwright.cast.MoldLife;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.board.Lengths;
import pourwright.work.Act;
import pourwright.work.Books;
import pourwright.work.CastHistory;
import pourwright.work.Drawers;
import pourwright.work.Outcome;
import pourwright.work.Reading;
import pourwright.work.Subject;

/** What her own casts say: what goes with a defect, and how long molds last. */
final class HistoryDesk {
  private static final String RETIRED = "mold_retired_casts";

  /** House: failed molds from which their own life is told. */
  private static final int FAILED_MIN = 3;

  /** House: share of a life from which a spare is made. */
  private static final double SPARE_FROM = 0.8;

  private final Desk desk;
  private final Lengths numbers;

  HistoryDesk(Desk desk) {
    this.desk = desk;
    this.numbers = new Lengths(desk);
  }

  void addTo(RoutesConfig routes) {
    routes.get("/casting/defects", this::defects);
    routes.get("/casting/molds", http -> showMolds(http, Form.blank()));
    routes.post("/casting/molds/retire", this::retire);
  }

  private void defects(Context http) {
    CastHistory history = desk.studio().look(CastHistory::of);
    String asked = String.valueOf(http.queryParam("defect"));
    Defect defect =
        Arrays.stream(Defect.values())
            .filter(d -> d.name().equals(asked))
            .findFirst()
            .orElseGet(
                () ->
                    Arrays.stream(Defect.values())
                        .max(Comparator.comparingLong(history::with))
                        .orElse(Defect.BUG_HOLES));
    Show.page(http, "casting/defects.jte", page(history, defect));
  }

  private DefectsPage page(CastHistory history, Defect defect) {
    List<DefectsPage.Choice> choices =
        Arrays.stream(Defect.values())
            .map(
                d ->
                    new DefectsPage.Choice(
                        "/casting/defects?defect=" + d.name(),
                        d.words() + ", " + history.with(d),
                        d == defect))
            .toList();
    List<DefectCauses.Finding> findings = history.look(defect);
    List<DefectsPage.Row> rows = findings.stream().limit(12).map(this::row).toList();
    long cases = history.with(defect);
    String said =
        cases < DefectCauses.CASES_MIN
            ? cases + " of " + history.size() + " casts had it: too few to say anything."
            : findings.stream().anyMatch(DefectCauses.Finding::found)
                ? "What stands out goes with it. That is not yet its cause: change one thing and"
                    + " look again."
                : "Nothing recorded stands out from chance in " + history.size() + " casts.";
    return new DefectsPage(
        defect.words(), defect.causes(), defect.remedy(), said, choices, rows, findings.size());
  }

  private DefectsPage.Row row(DefectCauses.Finding f) {
    return new DefectsPage.Row(
        f.condition(),
        f.withDefect() + " of " + f.with(),
        f.withoutDefect() + " of " + f.without(),
        numbers.number(f.oddsRatio(), 1)
            + " ("
            + numbers.number(f.low(), 1)
            + " to "
            + numbers.number(f.high(), 1)
            + ")",
        f.corrected() < 0.001 ? "below 0.001" : numbers.number(f.corrected(), 3),
        f.found());
  }

  private void showMolds(Context http, Form form) {
    MoldsPage page = desk.studio().look(books -> molds(books, form));
    if (form.ok()) {
      Show.page(http, "casting/molds.jte", page);
    } else {
      Show.again(http, "casting/molds.jte", page);
    }
  }

  private MoldsPage molds(Books books, Form form) {
    CardBook book = Drawers.book(books);
    Map<String, Integer> castings = CastHistory.castingsByMold(books);
    List<MoldsPage.Row> rows = new ArrayList<>();
    for (Mold mold : book.all(Mold.class)) {
      rows.add(row(books, mold, castings.getOrDefault(mold.code(), 0)));
    }
    return new MoldsPage(form, rows);
  }

  private MoldsPage.Row row(Books books, Mold mold, int castings) {
    List<Reading> retired =
        books.readings().of(Subject.card(Drawers.MOLD, mold.code())).stream()
            .filter(r -> r.quantity().equals(RETIRED))
            .toList();
    int fills = (castings + mold.piecesPerCast() - 1) / mold.piecesPerCast();
    int gone = (int) retired.stream().mapToDouble(Reading::value).sum();
    int each = mold.count() == 0 ? 0 : Math.max(0, fills - gone) / mold.count();
    List<MoldLife.Served> served = new ArrayList<>();
    retired.forEach(r -> served.add(new MoldLife.Served((int) r.value(), true)));
    for (int i = 0; each > 0 && i < mold.count(); i++) {
      served.add(new MoldLife.Served(each, false));
    }
    Integer median = retired.size() >= FAILED_MIN ? MoldLife.median(served) : null;
    int life = median == null ? mold.lifeCasts() : median;
    String due =
        mold.count() == 0
            ? "none left"
            : each >= life
                ? "replacement due"
                : each >= SPARE_FROM * life
                    ? "make a spare now"
                    : "about " + (life - each) + " casts to go";
    return new MoldsPage.Row(
        mold.code(),
        mold.name(),
        mold.count() + " of them, " + each + " casts each",
        life + " casts, " + origin(served, retired.size(), median),
        due,
        each >= SPARE_FROM * life || mold.count() == 0);
  }

  private String origin(
      List<MoldLife.Served> served, int failed, @org.jspecify.annotations.Nullable Integer median) {
    if (median == null) {
      return failed == 0 ? "the card's figure (house)" : "the card's figure; " + failed + " failed";
    }
    List<MoldLife.Step> curve = MoldLife.curve(served);
    MoldLife.Step half =
        curve.stream().filter(s -> s.share() <= 0.5).findFirst().orElse(curve.get(0));
    return "half were gone by then, "
        + failed
        + " failed (share left "
        + numbers.number(half.share(), 2)
        + " ± "
        + numbers.number(half.error(), 2)
        + ", Kaplan and Meier)";
  }

  private void retire(Context http) {
    Form form = Form.of(http);
    List<String> codes =
        desk.studio().look(b -> Drawers.book(b).all(Mold.class)).stream().map(Mold::code).toList();
    Optional<String> mold = form.choice("mold", "the mold", codes);
    Optional<Integer> casts = form.count("casts", "how many casts it served", 1, 100_000);
    Optional<Act> act = form.act(http, form.optionalText("note"));
    if (!form.ok() || mold.isEmpty() || casts.isEmpty() || act.isEmpty()) {
      showMolds(http, form);
      return;
    }
    Subject subject = Subject.card(Drawers.MOLD, mold.get());
    Reading reading = Reading.fresh(subject, RETIRED, casts.get(), desk.now());
    Outcome<List<Reading>> outcome = desk.studio().recordReading.run(act.get(), List.of(reading));
    Show.done(
        http,
        outcome instanceof Outcome.Refused<List<Reading>> refused
            ? Said.refused(refused)
            : Said.note(
                "Recorded: it served " + casts.get() + " casts.",
                "Take one off the count on the mold's card at the drawing board."),
        "/casting/molds");
  }
}
