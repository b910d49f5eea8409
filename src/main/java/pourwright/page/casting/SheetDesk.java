package pourwright.page.casting;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.batch.Batch;
import pourwright.batch.BatchPlan;
import pourwright.card.CardBook;
import pourwright.card.MixCard;
import pourwright.card.Scales;
import pourwright.card.Vessel;
import pourwright.cast.MixSplit;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.board.Lengths;
import pourwright.page.plan.LossWords;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;
import pourwright.work.Act;
import pourwright.work.CastSheet;
import pourwright.work.CastWalk;
import pourwright.work.Drawers;
import pourwright.work.Outcome;
import pourwright.work.YieldReader;

/** What is to be cast, the mix sheet for it, and the beginning of the cast. */
final class SheetDesk {
  private static final String NEW = "casting/new.jte";
  private static final int ROWS = 3;
  private static final int DOZEN = 12;
  private static final List<String> ASKED =
      List.of(
          "mix", "vessel1", "count1", "vessel2", "count2", "vessel3", "count3", "water_c", "room_c",
          "step");

  private final Desk desk;
  private final Lengths numbers;

  SheetDesk(Desk desk) {
    this.desk = desk;
    this.numbers = new Lengths(desk);
  }

  void addTo(RoutesConfig routes) {
    routes.get("/casting/new", this::showNew);
    routes.get("/casting/sheet", this::showSheet);
    routes.post("/casting/start", this::start);
  }

  private void showNew(Context http) {
    Map<String, String> fresh = new LinkedHashMap<>();
    fresh.put("count1", "1");
    fresh.put("water_c", numbers.celsius(20));
    fresh.put("room_c", numbers.celsius(20));
    fresh.put("step", numbers.number(1));
    http.queryParamMap().forEach((name, values) -> fresh.put(name, values.get(0)));
    Show.page(http, NEW, page(Form.startingFrom(fresh)));
  }

  private NewCastPage page(Form form) {
    CardBook book = desk.studio().look(Drawers::book);
    Map<String, String> mixes = new LinkedHashMap<>();
    book.all(MixCard.class).forEach(m -> mixes.put(m.code(), m.name()));
    Map<String, String> vessels = new LinkedHashMap<>();
    vessels.put("", "none");
    book.all(Vessel.class).forEach(v -> vessels.put(v.code(), v.name()));
    String losses = LossWords.cast(desk.studio().look(YieldReader::of), DOZEN) + ".";
    return new NewCastPage(form, mixes, vessels, losses);
  }

  private void showSheet(Context http) {
    Map<String, String> asked = new LinkedHashMap<>();
    ASKED.forEach(name -> asked.put(name, String.valueOf(orEmpty(http.queryParam(name)))));
    Form form = Form.startingFrom(asked);
    Optional<CastSheet> sheet = sheet(form);
    if (sheet.isEmpty()) {
      Show.again(http, NEW, page(form));
      return;
    }
    Show.page(http, "casting/sheet.jte", page(sheet.get(), asked));
  }

  private static String orEmpty(@org.jspecify.annotations.Nullable String text) {
    return text == null ? "" : text;
  }

  private Optional<CastSheet> sheet(Form form) {
    String mix = form.text("mix", "a mix card; write one at the drawing board");
    List<CastSheet.Fill> fills = new ArrayList<>();
    for (int i = 1; i <= ROWS; i++) {
      String vessel = form.optionalText("vessel" + i);
      if (!vessel.isEmpty()) {
        form.count("count" + i, "how many", 1, 500)
            .ifPresent(count -> fills.add(new CastSheet.Fill(vessel, count)));
      }
    }
    Optional<Double> water = numbers.readCelsius(form, "water_c", "the water's temperature");
    Optional<Double> room = numbers.readCelsius(form, "room_c", "the room's temperature");
    Optional<Double> step = numbers.readNumber(form, "step", "the scale's step");
    if (fills.isEmpty()) {
      form.complain("vessel1", "Please choose at least one vessel.");
    }
    if (!form.ok() || water.isEmpty() || room.isEmpty() || step.isEmpty()) {
      return Optional.empty();
    }
    CastSheet.Ask ask = new CastSheet.Ask(mix, fills, water.get(), room.get(), step.get());
    try {
      return Optional.of(desk.studio().look(books -> CastWalk.sheet(books, ask)));
    } catch (OutOfRange e) {
      form.complain(
          ASKED.contains(e.field()) ? e.field() : "mix", e.sentence() + ": " + e.hint() + ".");
      return Optional.empty();
    }
  }

  private SheetPage page(CastSheet sheet, Map<String, String> asked) {
    double step = sheet.ask().stepG();
    List<SheetPage.Line> lines = new ArrayList<>();
    for (CastSheet.Line line : sheet.lines()) {
      String range = "";
      if (line.material().equals(sheet.mix().powder().code())) {
        range = range(sheet.powderRange(), step);
      } else if (line.material().equals(CastSheet.WATER)) {
        double most = sheet.waterMostG();
        range =
            most > line.grams()
                ? "up to " + numbers.grams(most, step) + ", in weighed steps until it pours"
                : range(sheet.waterRange(), step);
      }
      lines.add(new SheetPage.Line(line.name(), numbers.grams(line.grams(), step), range));
    }
    lines.add(
        new SheetPage.Line("All together", numbers.grams(sheet.amounts().totalG(), step), ""));
    SheetFacts facts = new SheetFacts(desk);
    String title =
        sheet.mix().card().name()
            + " for "
            + Counted.of(sheet.ask().pieces(), "casting", "castings");
    MixSplit split = sheet.split();
    String all = split != null && split.mixings() > 1 ? "Begin all " + split.mixings() : "";
    return new SheetPage(
        title, lines, facts.of(sheet), facts.more(sheet), warnings(sheet), asked, rest(sheet), all);
  }

  /** What the waste leaves over, less what stays in the bucket: before it is mixed. */
  private String rest(CastSheet sheet) {
    MixCard card = sheet.mix().card();
    double over =
        sheet.amounts().totalG()
            - sheet.freshMl().value() * sheet.exact().freshGPerMl()
            - sheet.lostG();
    return over < 1
        ? ""
        : "/casting/rest?mix=" + card.code() + "&left_g=" + Math.round(over) + "&which=small";
  }

  private String range(Sourced value, double step) {
    return numbers.grams(value.low(), step) + " to " + numbers.grams(value.high(), step);
  }

  private List<String> warnings(CastSheet sheet) {
    List<String> warnings = new ArrayList<>(sheet.warnings());
    Scales scales = Scales.of(desk.studio().look(Drawers::book));
    for (CastSheet.Line line : sheet.lines()) {
      scales
          .tooFine(line.grams(), sheet.ask().stepG())
          .ifPresent(fine -> warnings.add(line.name() + ": " + fine.sentence()));
    }
    MixSplit split = sheet.split();
    if (split == null) {
      warnings.add(
          "At this temperature the mix stiffens before one mold is filled. Use cooler water, or a"
              + " retarder by the powder's sheet.");
    } else if (split.mixings() > 1) {
      warnings.add(
          "Too much for one mixing: it would stiffen before the last mold. Make "
              + split.mixings()
              + " mixings of at most "
              + Counted.of(split.moldsEach(), "casting each.", "castings each."));
    }
    return warnings;
  }

  private void start(Context http) {
    Form form = Form.of(http);
    Optional<CastSheet> sheet = sheet(form);
    Optional<Act> act = form.act(http, "");
    if (sheet.isEmpty() || act.isEmpty()) {
      Show.again(http, NEW, page(form));
      return;
    }
    MixSplit split = sheet.get().split();
    if (form.value("all").equals("yes") && split != null && split.mixings() > 1) {
      startAll(http, form, act.get(), sheet.get().ask(), split);
      return;
    }
    Outcome<Batch> outcome = desk.studio().startCast.run(act.get(), sheet.get().plan());
    if (outcome instanceof Outcome.Refused<Batch> refused) {
      form.complain("mix", refused.sentence() + ": " + refused.hint() + ".");
      Show.again(http, NEW, page(form));
      return;
    }
    Batch batch = outcome.made();
    Show.done(
        http,
        Said.done("Cast " + batch.mark().text() + " begun. Write the mark on the tray card."),
        "/casting/" + batch.id());
  }

  /** Begins one cast for each mixing, every one with its own amounts and mark. */
  private void startAll(Context http, Form form, Act act, CastSheet.Ask whole, MixSplit split) {
    List<String> marks = new ArrayList<>();
    int number = 0;
    for (CastSheet.Ask ask : parts(whole, split)) {
      BatchPlan plan = desk.studio().look(books -> CastWalk.sheet(books, ask)).plan();
      Act one = number == 0 ? act : new Act(act.by(), act.requestKey() + "-" + number, "");
      number++;
      Outcome<Batch> outcome = desk.studio().startCast.run(one, plan);
      if (outcome instanceof Outcome.Refused<Batch> refused) {
        form.complain("mix", refused.sentence() + ": " + refused.hint() + ".");
        Show.again(http, NEW, page(form));
        return;
      }
      marks.add(outcome.made().mark().text());
    }
    Show.done(
        http,
        Said.note(
            Counted.of(marks.size(), "cast begun: ", "casts begun: ")
                + String.join(", ", marks)
                + ".",
            "Mix one, pour it, then begin the next."),
        "/casting");
  }

  /** The same pieces in groups of what one mixing fills. */
  private static List<CastSheet.Ask> parts(CastSheet.Ask whole, MixSplit split) {
    List<CastSheet.Ask> parts = new ArrayList<>();
    List<CastSheet.Fill> fills = new ArrayList<>();
    int room = split.moldsEach();
    for (CastSheet.Fill fill : whole.fills()) {
      int left = fill.count();
      while (left > 0) {
        int now = Math.min(left, room);
        fills.add(new CastSheet.Fill(fill.vessel(), now));
        left -= now;
        room -= now;
        if (room == 0) {
          parts.add(with(whole, fills));
          fills.clear();
          room = split.moldsEach();
        }
      }
    }
    if (!fills.isEmpty()) {
      parts.add(with(whole, fills));
    }
    return parts;
  }

  private static CastSheet.Ask with(CastSheet.Ask whole, List<CastSheet.Fill> fills) {
    return new CastSheet.Ask(whole.mix(), fills, whole.waterC(), whole.roomC(), whole.stepG());
  }
}
