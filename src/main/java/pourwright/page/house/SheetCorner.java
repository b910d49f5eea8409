package pourwright.page.house;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.PlannedAmount;
import pourwright.batch.PlannedStep;
import pourwright.batch.RecordedStep;
import pourwright.card.Scales;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.quantity.Counted;
import pourwright.stock.Amount;
import pourwright.work.Act;
import pourwright.work.CastSheet;
import pourwright.work.Drawers;
import pourwright.work.Outcome;
import pourwright.work.PaperPrinter;
import pourwright.work.PaperSheet;
import pourwright.work.PaperSheet.Block;
import pourwright.work.PaperSheet.Column;
import pourwright.work.PaperSheet.How;
import pourwright.work.Reading;
import pourwright.work.RecordStep;
import pourwright.work.RecordStep.Taken;
import pourwright.work.Subject;

/** A batch on paper: its sheet to print, and the page on which it is entered the day after. */
public final class SheetCorner implements Corner {
  private static final String TEMPLATE = "house/sheet.jte";
  private final Desk desk;
  private final PaperPrinter paper;

  /** Sheets of this studio. */
  public SheetCorner(Desk desk, PaperPrinter paper) {
    this.desk = desk;
    this.paper = paper;
  }

  /**
   * The page.
   *
   * @param form what was typed
   * @param heading mark of the batch
   * @param path of the batch's own page
   * @param post where the sheet goes
   * @param print where it is printed
   * @param day of the sheet
   * @param lines in the sheet's own order; empty once all are recorded
   */
  public record SheetPage(
      Form form,
      String heading,
      String path,
      String post,
      String print,
      String day,
      List<LineOfSheet> lines) {}

  /**
   * A line of the sheet.
   *
   * @param key the step's key, which is in the names of its fields
   * @param number as it stands on the sheet
   * @param sentence what was to be done
   * @param clock when it was planned
   * @param amounts what was weighed or counted
   * @param takesTemperature whether a thermometer belongs to it
   */
  public record LineOfSheet(
      String key,
      String number,
      String sentence,
      String clock,
      List<AmountOfSheet> amounts,
      boolean takesTemperature) {}

  /** What was weighed: its field, its name, the planned figure and the unit. */
  public record AmountOfSheet(String field, String name, String figure, String unit) {}

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/sheet/{id}", http -> Show.page(http, TEMPLATE, page(batch(http), Form.blank())));
    routes.post("/sheet/{id}", this::enter);
    routes.get("/sheet/{id}/print", this::print);
  }

  private Batch batch(Context http) {
    long id = Numbers.of(http.pathParam("id"));
    return desk.studio()
        .look(books -> books.batches().batch(id))
        .orElseThrow(
            () -> new TurnedAway(404, "There is no such batch", "Look at the two benches."));
  }

  private static String pathOf(Batch batch) {
    return (batch.plan().kind() == BatchKind.CAST ? "/casting/" : "/pouring/") + batch.id();
  }

  private static String amountField(PlannedStep step, PlannedAmount amount) {
    return "amount-" + step.key() + "-" + amount.material();
  }

  private List<PlannedStep> open(Batch batch) {
    List<String> recorded =
        desk.studio().look(books -> books.batches().steps(batch.id())).stream()
            .map(RecordedStep::key)
            .toList();
    return batch.isRunning()
        ? batch.plan().steps().stream().filter(s -> !recorded.contains(s.key())).toList()
        : List.of();
  }

  private SheetPage page(Batch batch, Form form) {
    List<LineOfSheet> lines = new ArrayList<>();
    for (PlannedStep step : open(batch)) {
      List<AmountOfSheet> amounts =
          step.amounts().stream()
              .map(
                  a ->
                      new AmountOfSheet(
                          amountField(step, a), name(a.material()), figure(a.amount()), unit(a)))
              .toList();
      lines.add(
          new LineOfSheet(
              step.key(),
              number(batch, step),
              step.sentence(),
              desk.clockTime(planned(batch, step)),
              amounts,
              step.takesTemperature()));
    }
    String path = pathOf(batch);
    String day = form.value("day");
    return new SheetPage(
        form,
        "Paper of " + batch.mark().text(),
        path,
        "/sheet/" + batch.id(),
        "/sheet/" + batch.id() + "/print",
        day.isEmpty() ? LocalDate.ofInstant(batch.startedAt(), desk.zone()).toString() : day,
        lines);
  }

  private static String number(Batch batch, PlannedStep step) {
    return String.valueOf(batch.plan().steps().indexOf(step) + 1);
  }

  /** When a step was to begin: the start and the minutes of all before it. */
  private static Instant planned(Batch batch, PlannedStep step) {
    double minutes = 0;
    for (PlannedStep before : batch.plan().steps()) {
      if (before.equals(step)) {
        break;
      }
      minutes += before.minutes();
    }
    return batch.startedAt().plusSeconds(Math.round(60 * minutes));
  }

  private String name(String material) {
    return material.equals(CastSheet.WATER)
        ? "Water"
        : desk.studio()
            .look(books -> Drawers.material(books, material))
            .map(pourwright.material.Material::name)
            .orElse(material);
  }

  private String figure(Amount amount) {
    return amount.usualUnit().equals("g")
        ? desk.units().massFigure(amount.inUsualUnit())
        : String.format(Locale.ROOT, "%.0f", amount.inUsualUnit());
  }

  private String unit(PlannedAmount amount) {
    String usual = amount.amount().usualUnit();
    return usual.equals("g") ? desk.units().mass() : usual;
  }

  private void enter(Context http) {
    Batch batch = batch(http);
    Form form = Form.of(http);
    Optional<LocalDate> day = form.read("day", "the day of the sheet", LocalDate::parse);
    List<RecordStep.Request> steps = new ArrayList<>();
    List<Reading> readings = new ArrayList<>();
    for (PlannedStep step : open(batch)) {
      if (form.ticked("did-" + step.key())) {
        steps.add(line(form, batch, step, day.orElse(desk.today()), readings));
      }
    }
    Optional<Act> act = form.act(http, "from the sheet");
    if (!form.ok() || act.isEmpty()) {
      Show.again(http, TEMPLATE, page(batch, form));
      return;
    }
    Outcome<List<RecordedStep>> outcome = desk.studio().recordStep.runAll(act.get(), steps);
    if (outcome instanceof Outcome.Refused<?> refused) {
      form.complain("day", refused.sentence() + ": " + refused.hint() + ".");
      Show.again(http, TEMPLATE, page(batch, form));
      return;
    }
    if (!readings.isEmpty()) {
      Act aside = new Act(act.get().by(), act.get().requestKey() + "-r", "");
      desk.studio().recordReading.run(aside, readings);
    }
    Show.done(
        http,
        Said.note(
            Counted.of(
                outcome.made().size(),
                "line of the sheet is recorded.",
                "lines of the sheet are recorded."),
            "One undo takes the whole sheet back."),
        pathOf(batch));
  }

  private RecordStep.Request line(
      Form form, Batch batch, PlannedStep step, LocalDate day, List<Reading> readings) {
    Instant at =
        form.readIfThere("time-" + step.key(), "a time such as 0930", SheetCorner::time)
            .map(t -> t.atDate(day).atZone(desk.zone()).toInstant())
            .orElse(null);
    Double celsius =
        form.readIfThere("c-" + step.key(), "a temperature", t -> desk.units().celsius(t))
            .orElse(null);
    List<Taken> taken = new ArrayList<>();
    for (PlannedAmount planned : step.amounts()) {
      String field = amountField(step, planned);
      if (planned.material().equals(CastSheet.WATER)) {
        form.readIfThere(field, "what was weighed", t -> desk.units().grams(t))
            .ifPresent(g -> readings.add(water(batch, g, at)));
      } else {
        amount(form, field, planned).ifPresent(taken::add);
      }
    }
    return new RecordStep.Request(batch.id(), step.key(), taken, celsius, at);
  }

  private Reading water(Batch batch, double grams, @Nullable Instant at) {
    Subject subject = Subject.of(Subject.Kind.BATCH, batch.id());
    return Reading.fresh(subject, "water_g", grams, at == null ? desk.now() : at);
  }

  private Optional<Taken> amount(Form form, String field, PlannedAmount planned) {
    if (planned.amount().usualUnit().equals("pcs")) {
      return form.readIfThere(field, "how many", Long::valueOf)
          .filter(n -> n > 0)
          .map(n -> new Taken(planned.material(), null, Amount.ofPieces(n)));
    }
    return form.readIfThere(field, "what was weighed", t -> desk.units().readMass(t))
        .filter(pourwright.quantity.Mass::isPositive)
        .map(m -> new Taken(planned.material(), null, Amount.of(m)));
  }

  /** A time as a thumb types it: 930, 0930 or 9:30. */
  static LocalTime time(String text) {
    String digits = text.strip().replaceAll("[:.h ]", "");
    if (!digits.matches("\\d{3,4}")) {
      throw new IllegalArgumentException(text);
    }
    int number = Integer.parseInt(digits);
    try {
      return LocalTime.of(number / 100, number % 100);
    } catch (DateTimeException e) {
      throw new IllegalArgumentException(text, e);
    }
  }

  private void print(Context http) {
    Batch batch = batch(http);
    List<List<String>> rows = new ArrayList<>();
    Scales scales = Scales.of(desk.studio().look(Drawers::book));
    for (PlannedStep step : batch.plan().steps()) {
      List<String> amounts = new ArrayList<>();
      for (PlannedAmount amount : step.amounts()) {
        boolean mass = amount.amount().usualUnit().equals("g");
        String fine =
            mass
                ? scales
                    .tooFine(amount.amount().inUsualUnit())
                    .map(f -> " (" + f.sentence() + ")")
                    .orElse("")
                : "";
        amounts.add(
            name(amount.material()) + " " + figure(amount.amount()) + " " + unit(amount) + fine);
      }
      rows.add(
          List.of(
              number(batch, step),
              desk.clockTime(planned(batch, step)),
              step.sentence() + (amounts.isEmpty() ? "" : " " + String.join("; ", amounts)),
              "",
              "",
              ""));
    }
    List<Column> columns =
        List.of(
            new Column("", 0.35, How.TICK),
            Column.of("Clock", 0.55),
            new Column("What", 3.6, How.WRAP),
            new Column("At", 0.7, How.WRITE),
            new Column("Really", 1, How.WRITE),
            new Column("\u00b0C", 0.5, How.WRITE));
    String studio =
        desk.studio().look(books -> books.settings().value("studio.name")).orElse("Pourwright");
    PaperSheet sheet =
        new PaperSheet(
            studio,
            desk.dayAndTime(desk.now()),
            (batch.plan().kind() == BatchKind.CAST ? "Cast " : "Pour ") + batch.mark().text(),
            Counted.of(batch.plan().pieces(), "piece", "pieces")
                + ", begun "
                + desk.dayAndTime(batch.startedAt()),
            List.of(
                new Block.Text(
                    "Everything may be switched off: work from the paper, write the clock and what"
                        + " was really weighed beside each line, and enter it afterwards in this"
                        + " order.",
                    false),
                new Block.Grid(columns, rows),
                new Block.Text(
                    batch.plan().kind() == BatchKind.CAST
                        ? "Mask and gloves for powder and wet cement. Sand wet."
                        : "Hot wax is never left alone. Never water on hot wax: lid on, heat off.",
                    true)));
    String size = Optional.ofNullable(http.queryParam("paper")).orElse("a4");
    byte[] file = paper.pdf(sheet, size.equals("letter") ? "letter" : "a4");
    Show.inline(http, file, "application/pdf", "sheet-" + batch.mark().text() + ".pdf");
  }
}
