package pourwright.page.pouring;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pourwright.batch.Batch;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.pour.MeltDay;
import pourwright.pour.PourGrouping.Pitcher;
import pourwright.pour.PourGrouping.ToFill;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Unit;
import pourwright.work.Act;
import pourwright.work.BeginPour;
import pourwright.work.Books;
import pourwright.work.Outcome;
import pourwright.work.PourDay;

/** Which candles of a day share a pitcher and a melt. */
final class GroupDesk {
  private static final String PITCHERS = "pour.pitchers";
  private static final String MELTER = "pour.melter";
  private static final String MELTER_C = "pour.melter.limit_c";
  private static final String USUAL_PITCHERS = "jug; 1500; 8\nsmall jug; 700; 5";
  private static final String USUAL_MELTER = "5000";
  private static final String TEMPLATE = "pouring/group.jte";
  private static final int MOST = 400;

  private final Desk desk;

  GroupDesk(Desk desk) {
    this.desk = desk;
  }

  /** The hottest the melter may get, in °C, where it is written down. */
  static Optional<Double> melterC(Books books) {
    return books
        .settings()
        .value(MELTER_C)
        .filter(v -> v.matches("\\d{2,3}(\\.\\d+)?"))
        .map(Double::valueOf);
  }

  void addTo(RoutesConfig routes) {
    routes.get("/pouring/day", this::first);
    routes.post("/pouring/day", this::group);
    routes.post("/pouring/day/begin", this::begin);
  }

  private void first(Context http) {
    Map<String, String> values = new HashMap<>();
    desk.studio()
        .look(
            books -> {
              PourDay.stillToPour(books).forEach((c, n) -> values.put("n-" + c, "" + n));
              values.put("pitchers", books.settings().value(PITCHERS).orElse(USUAL_PITCHERS));
              values.put("melter", books.settings().value(MELTER).orElse(USUAL_MELTER));
              melterC(books)
                  .ifPresent(c -> values.put("melter_c", desk.units().temperatureFigure(c, 0)));
              return "";
            });
    Show.page(http, TEMPLATE, page(Form.startingFrom(values), "", List.of()));
  }

  private GroupPage page(Form form, String summary, List<GroupPage.Melt> melts) {
    return desk.studio()
        .look(
            books -> {
              Map<String, Integer> wanted = PourDay.stillToPour(books);
              List<GroupPage.Row> rows = new ArrayList<>();
              PouringPlace.candles(books)
                  .forEach(
                      (code, name) ->
                          rows.add(
                              new GroupPage.Row(
                                  "n-" + code,
                                  name,
                                  wanted.containsKey(code)
                                      ? "orders still want " + wanted.get(code)
                                      : "")));
              return new GroupPage(form, rows, summary, melts);
            });
  }

  private void group(Context http) {
    Form form = Form.of(http);
    List<PourDay.Wanted> wanted = new ArrayList<>();
    for (String code :
        desk.studio().look(books -> List.copyOf(PouringPlace.candles(books).keySet()))) {
      form.readIfThere("n-" + code, "how many", Integer::valueOf)
          .filter(n -> n > 0)
          .ifPresent(n -> wanted.add(new PourDay.Wanted(code, n)));
    }
    if (form.ok() && wanted.isEmpty()) {
      form.complain("n-", "Please give at least one candle.");
    }
    if (wanted.stream().mapToInt(PourDay.Wanted::count).sum() > MOST) {
      form.complain("n-", "More than " + MOST + " candles in a day are not grouped.");
    }
    List<Pitcher> pitchers = pitchers(form);
    Optional<Double> melter = form.read("melter", "a mass", this::grams);
    Optional<Double> limit =
        form.readIfThere("melter_c", "the melter's limit", t -> desk.units().celsius(t));
    if (!form.ok() || melter.isEmpty()) {
      Show.again(http, TEMPLATE, page(form, "", List.of()));
      return;
    }
    try {
      PourDay day = desk.studio().look(books -> PourDay.of(books, wanted, pitchers, melter.get()));
      keep(http, form, limit);
      Show.page(http, TEMPLATE, page(form, summary(day), melts(day, names())));
    } catch (OutOfRange e) {
      form.complain("pitchers", e.sentence() + ": " + e.hint() + ".");
      Show.again(http, TEMPLATE, page(form, "", List.of()));
    }
  }

  private double grams(String text) {
    double g = desk.quantities().mass(text, Unit.GRAM).grams();
    if (!(g > 0)) {
      throw new OutOfRange("mass", "nothing fits into that", "give a mass above 0 g");
    }
    return g;
  }

  private List<Pitcher> pitchers(Form form) {
    List<Pitcher> pitchers = new ArrayList<>();
    for (String line : form.text("pitchers", "the pitchers, one a line").lines().toList()) {
      String[] cells = line.split(";", -1);
      if (line.isBlank()) {
        continue;
      }
      try {
        if (cells.length != 3) {
          throw new OutOfRange("pitchers", "three cells are needed", "jug; 1500; 8");
        }
        double residue = desk.quantities().mass(cells[2].strip(), Unit.GRAM).grams();
        pitchers.add(new Pitcher(cells[0].strip(), grams(cells[1].strip()), residue));
      } catch (IllegalArgumentException e) {
        form.complain(
            "pitchers",
            "'" + line + "' cannot be read: name; grams it holds; grams that stay in it.");
      }
    }
    return pitchers;
  }

  /** The pitchers are kept for the next day, once they have changed. */
  private void keep(Context http, Form form, Optional<Double> limit) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put(PITCHERS, form.value("pitchers").strip());
    values.put(MELTER, form.value("melter").strip());
    limit.ifPresent(c -> values.put(MELTER_C, String.format(Locale.ROOT, "%.1f", c)));
    Optional<Act> act = form.act(http, "");
    values.forEach(
        (key, value) -> {
          Optional<String> before = desk.studio().look(books -> books.settings().value(key));
          if (act.isPresent() && !before.equals(Optional.of(value))) {
            desk.studio()
                .saveSetting
                .run(Act.of(act.get().by(), act.get().requestKey() + "-" + key), key, value);
          }
        });
  }

  private static String summary(PourDay day) {
    MeltDay melts = day.melts();
    int pours = day.grouping().pours().size();
    return String.format(
        Locale.ROOT,
        "%s (%s), %s (%s), %s washing up%s, %.0f g stay in the pitchers.",
        Counted.of(pours, "pitcher", "pitchers"),
        day.grouping().isProven() ? "the fewest" : "at least " + day.grouping().atLeast(),
        Counted.of(melts.charges().size(), "melt", "melts"),
        melts.isProven() ? "the fewest" : "at least " + melts.chargesAtLeast(),
        Counted.of(melts.washes(), "time", "times"),
        melts.washes() == melts.washesAtLeast() ? " (the fewest)" : "",
        day.grouping().residueG());
  }

  private Map<String, String> names() {
    return desk.studio().look(PouringPlace::candles);
  }

  private static List<GroupPage.Melt> melts(PourDay day, Map<String, String> names) {
    List<GroupPage.Melt> melts = new ArrayList<>();
    for (MeltDay.Charge charge : day.melts().charges()) {
      List<GroupPage.Pitcher> pitchers = new ArrayList<>();
      charge.jobs().forEach(job -> pitchers.add(pitcher(day, job, names)));
      melts.add(
          new GroupPage.Melt(
              String.format(
                  Locale.ROOT,
                  "Melt %d: %.0f g of %s",
                  melts.size() + 1,
                  charge.waxG(),
                  charge.wax()),
              pitchers));
    }
    return melts;
  }

  private static GroupPage.Pitcher pitcher(
      PourDay day, MeltDay.Job job, Map<String, String> names) {
    var pour = job.pour();
    Map<String, Long> counts =
        pour.candles().stream()
            .collect(Collectors.groupingBy(ToFill::id, LinkedHashMap::new, Collectors.counting()));
    String melt = pour.candles().get(0).melt();
    List<String> proved = day.proved().getOrDefault(melt, List.of());
    return new GroupPage.Pitcher(
        String.format(
            Locale.ROOT,
            "%s, %s: %.0f g wax, %.0f g fragrance",
            pour.pitcher().name(),
            melt,
            job.waxG(),
            pour.meltG() - job.waxG()),
        counts.entrySet().stream()
            .map(e -> e.getValue() + " × " + names.getOrDefault(e.getKey(), e.getKey()))
            .collect(Collectors.joining(", ")),
        String.format(Locale.ROOT, "pour between %.0f and %.0f °C", pour.fromC(), pour.toC()),
        "What is left over goes "
            + (proved.isEmpty() ? "" : "into " + String.join(", ", proved) + " (proved), ")
            + "into unwicked pieces labelled from their true composition, or to waste.",
        counts.entrySet().stream()
            .map(e -> e.getKey() + ":" + e.getValue())
            .collect(Collectors.joining(",")),
        String.valueOf(pour.pitcher().residueG()));
  }

  /** A proposed pitcher begins as one pour with all its candles. */
  private void begin(Context http) {
    Form form = Form.of(http);
    List<BeginPour.Of> candles = new ArrayList<>();
    for (String of : form.value("of").split(",", -1)) {
      int colon = of.lastIndexOf(':');
      if (colon > 0 && of.substring(colon + 1).matches("[1-9]\\d{0,2}")) {
        candles.add(
            new BeginPour.Of(of.substring(0, colon), Integer.parseInt(of.substring(colon + 1))));
      }
    }
    Optional<Integer> topUp = form.count("top_up", "a share in per cent", 0, 50);
    Optional<Double> residue = form.readIfThere("residue", "a mass", Double::valueOf);
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty() || topUp.isEmpty() || residue.isEmpty()) {
      Show.again(http, TEMPLATE, page(form, "", List.of()));
      return;
    }
    Outcome<Batch> outcome =
        desk.studio()
            .beginPour
            .run(act.get(), new BeginPour.Request(candles, topUp.get() / 100.0, residue.get()));
    if (outcome instanceof Outcome.Refused<Batch> refused) {
      Show.done(http, Said.refused(refused), "/pouring/day");
    } else {
      Show.done(
          http,
          Said.done("Pour " + outcome.made().mark().text() + " has begun."),
          "/pouring/" + outcome.made().id());
    }
  }
}
