package pourwright.page.pouring;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.batch.PlannedAmount;
import pourwright.batch.PlannedStep;
import pourwright.batch.RecordedStep;
import pourwright.card.PourCard;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.pouring.PourPage.Cooling;
import pourwright.page.pouring.PourPage.DoneStep;
import pourwright.page.pouring.PourPage.Redosing;
import pourwright.page.pouring.PourPage.StepCard;
import pourwright.page.pouring.PourPage.Tap;
import pourwright.page.pouring.PourPage.VesselTick;
import pourwright.page.pouring.PourPage.Weighing;
import pourwright.pour.CoolingClock;
import pourwright.pour.Dose;
import pourwright.pour.Dose.LoadOf;
import pourwright.pour.FlashRule;
import pourwright.pour.Mishap;
import pourwright.pour.Redose;
import pourwright.pour.Top;
import pourwright.pour.VesselWarming;
import pourwright.stock.Shelf;
import pourwright.work.Books;
import pourwright.work.PieceBook;
import pourwright.work.PourWalk;
import pourwright.work.PourWatch;
import pourwright.work.Reading;

/** Turns a pour in the books into the strings of its page. */
final class PourReader {
  /** The load may be off by this share before the page says so. House. */
  static final double LOAD_TOLERANCE = 0.02;

  private static final int VESSELS_SHOWN = 60;
  private static final double STONE_G_PER_ML = 2.0;
  private static final double STONE_J_PER_KG_K = 880;
  private static final double WAX_J_PER_KG_K = 2200;

  private final Desk desk;

  PourReader(Desk desk) {
    this.desk = desk;
  }

  PourPage page(Books books, PourWatch watch, Form form) {
    boolean open = watch.batch().isRunning();
    return new PourPage(
        form,
        "/pouring/" + watch.batch().id(),
        watch.batch().plan().pieces() + " × " + watch.candle().design().name(),
        open,
        cautions(watch),
        cooling(watch),
        step(books, watch),
        redosing(watch),
        new PourPage.Taps(
            Arrays.stream(Top.values()).map(t -> new Tap(t.key(), t.words())).toList(),
            Arrays.stream(Mishap.values()).map(m -> new Tap(m.key(), m.words())).toList()),
        open && watch.next() == null ? vessels(books, watch) : List.of(),
        open ? "" : restingUntil(books, watch),
        watch.done().stream().map(this::done).toList());
  }

  private static List<String> cautions(PourWatch watch) {
    List<String> all = new ArrayList<>();
    all.add("Hot wax is never left alone. If you must go, turn the heat off and press STOP.");
    all.add("Never water on hot wax: lid on, heat off.");
    Double flash = watch.lowestFlashC();
    all.add(
        flash == null
            ? "No flash point is written down for this scent: read its sheet first. Fan on."
            : String.format(
                Locale.ROOT,
                "The scent's flash point is %.0f °C: from %.0f °C up heat off, no flame or spark, fan"
                    + " on (house).",
                flash,
                flash - FlashRule.ADDING_K));
    return all;
  }

  private Cooling cooling(PourWatch watch) {
    PourWatch.Target target = watch.target();
    if (target == null || !watch.batch().isRunning()) {
      return new Cooling("", "", "", List.of(), List.of());
    }
    String waitsFor =
        String.format(
            Locale.ROOT,
            "%s at %.0f °C (%.0f to %.0f)",
            target.what(),
            target.c(),
            target.fromC(),
            target.toC());
    Instant at = watch.reachedAt();
    return new Cooling(
        waitsFor,
        at == null ? "" : desk.clockTime(at),
        range(watch),
        notes(watch),
        watch.readings().stream().map(this::reading).toList());
  }

  private String range(PourWatch watch) {
    CoolingClock.Crossing crossing = watch.crossing();
    if (crossing == null || crossing.atS() == null) {
      return watch.readings().isEmpty()
          ? "Take the wax's temperature and the room's; two readings start the clock."
          : "Another reading is needed; tell the room's temperature too.";
    }
    Double low = crossing.lowS();
    Double high = crossing.highS();
    return "between "
        + (low == null || watch.moment(low).isBefore(desk.now())
            ? "now"
            : desk.clockTime(watch.moment(low)))
        + " and "
        + (high == null ? "much later" : desk.clockTime(watch.moment(high)))
        + " (95 %)";
  }

  private static List<String> notes(PourWatch watch) {
    List<String> notes = new ArrayList<>();
    CoolingClock clock = watch.clock();
    if (clock != null) {
      notes.addAll(clock.warnings());
    }
    if (!watch.readings().isEmpty()) {
      double now = watch.readings().get(watch.readings().size() - 1).value();
      FlashRule.Answer answer = flash(watch, now);
      if (!answer.sentence().isEmpty()) {
        notes.add(answer.sentence());
      }
      PourWatch.Target target = watch.target();
      if (target != null && now < target.fromC()) {
        notes.add("The wax is below its window. Warm it gently once (house: at most one reheat).");
      }
    }
    return notes;
  }

  /** What is in the pot rules: wax alone until the scent is in, then the lowest of both. */
  private static FlashRule.Answer flash(PourWatch watch, double now) {
    FlashRule.Answer fine = new FlashRule.Answer(FlashRule.Says.FINE, "");
    Double oil = watch.lowestFlashC();
    PourWatch.Target target = watch.target();
    if (target == null) {
      return fine;
    }
    if (target.what().startsWith("add")) {
      boolean soon = oil != null && now <= target.toC() + 2;
      Double wax = watch.waxFlashC();
      if (soon && oil != null) {
        return FlashRule.adding(now, oil);
      }
      return wax == null ? fine : FlashRule.heating(now, wax);
    }
    CoolingClock clock = watch.clock();
    boolean reheated = clock != null && clock.readingsUsed() < watch.readings().size();
    return oil != null && reheated ? FlashRule.heating(now, oil) : fine;
  }

  private String reading(Reading reading) {
    return String.format(
        Locale.ROOT, "%s: %.1f °C", desk.clockTime(reading.takenAt()), reading.value());
  }

  private StepCard step(Books books, PourWatch watch) {
    PlannedStep next = watch.next();
    if (next == null || !watch.batch().isRunning()) {
      return new StepCard("", "", "", "", "", List.of(), false, "");
    }
    List<PlannedStep> all = watch.batch().plan().steps();
    List<Weighing> weighs = new ArrayList<>();
    for (PlannedAmount amount : next.amounts()) {
      weighs.add(weighing(books, watch, next, amount));
    }
    return new StepCard(
        next.key(),
        "Step " + (all.indexOf(next) + 1) + " of " + all.size(),
        next.sentence(),
        hint(watch, next),
        next.key().equals("tab") ? "/pouring/template/" + watch.candle().design().code() : "",
        weighs,
        next.takesTemperature(),
        next.care() == PlannedStep.Care.WAIT ? String.valueOf(Math.round(next.minutes())) : "");
  }

  private Weighing weighing(Books books, PourWatch watch, PlannedStep step, PlannedAmount amount) {
    PourCard card = watch.candle().pour().card();
    String load =
        step.key().equals(PourWalk.SCENT)
            ? percent(card.load()) + (card.loadOf() == LoadOf.TOTAL ? " on the total" : " on wax")
            : "";
    String lot =
        books.lots().shelves(amount.material()).stream()
            .filter(s -> s.isDrawable(desk.today()))
            .findFirst()
            .map(PourReader::lot)
            .orElse("no lot on the shelf: it is noted as missing");
    boolean counted = amount.amount().usualUnit().equals("pcs");
    return new Weighing(
        "amount-" + amount.material(),
        watch.candle().materials().get(amount.material()).name(),
        String.format(Locale.ROOT, counted ? "%.0f" : "%.1f", amount.amount().inUsualUnit()),
        amount.amount().usualUnit(),
        lot,
        load);
  }

  private static String lot(Shelf shelf) {
    return String.format(
        Locale.ROOT,
        "from lot %s (%.0f %s there)",
        shelf.lot().code(),
        shelf.onHand().inUsualUnit(),
        shelf.onHand().usualUnit());
  }

  private static String percent(double fraction) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * fraction).replace(".0 %", " %");
  }

  private static String hint(PourWatch watch, PlannedStep step) {
    if (!step.key().equals(PourWalk.WARM)) {
      return "";
    }
    var vessel = watch.candle().vessel();
    double stone =
        (vessel.outer().solid().volumeMl() - vessel.cavity().solid().volumeMl()) * STONE_G_PER_ML;
    VesselWarming warming =
        new VesselWarming(watch.candle().netG().value(), WAX_J_PER_KG_K, stone, STONE_J_PER_KG_K);
    PourCard.Temperatures window = watch.candle().pour().card().temperatures();
    double waxC = (window.pourFromC() + window.pourToC()) / 2;
    return String.format(
        Locale.ROOT,
        "The stone counts (typical %.0f g): wax poured at %.0f °C comes to %.0f °C in a vessel at"
            + " 20 °C and to %.0f °C in one at 35 °C.",
        stone,
        waxC,
        warming.afterC(waxC, 20),
        warming.afterC(waxC, 35));
  }

  private static Redosing redosing(PourWatch watch) {
    PourCard card = watch.candle().pour().card();
    boolean scented = watch.done().stream().anyMatch(s -> s.key().equals(PourWalk.SCENT));
    boolean poured = watch.done().stream().anyMatch(s -> s.key().equals(PourWalk.POUR));
    Dose dose = watch.inThePitcher();
    if (!scented || poured || dose.waxG() <= 0 || card.load() == 0) {
      return new Redosing("", "", "");
    }
    double wanted = Dose.loadOfTotal(card.load(), card.loadOf());
    if (Math.abs(dose.loadOfTotal() / wanted - 1) <= LOAD_TOLERANCE) {
      return new Redosing("", "", "");
    }
    Redose redose = Redose.of(dose, card.load(), card.loadOf(), null);
    boolean wax = redose.addWaxG() > 0;
    String material =
        (wax ? watch.candle().pour().waxes() : watch.candle().pour().fragrances())
            .get(0)
            .material()
            .code();
    String sentence =
        String.format(
            Locale.ROOT,
            "The load is %s on the total, the card says %s. Add %s:",
            percent(dose.loadOfTotal()),
            percent(wanted),
            watch.candle().materials().get(material).name());
    double grams = wax ? redose.addWaxG() : redose.addFragranceG();
    return new Redosing(sentence, material, String.format(Locale.ROOT, "%.1f", grams));
  }

  private static List<VesselTick> vessels(Books books, PourWatch watch) {
    String vessel = watch.candle().design().vessel();
    List<VesselTick> ticks = new ArrayList<>();
    int wanted = watch.batch().plan().pieces();
    for (Piece piece : books.pieces().list(new PieceBook.Which(vessel, null), null, 500).items()) {
      if (piece.state() instanceof PieceState.Dry && ticks.size() < VESSELS_SHOWN) {
        ticks.add(
            new VesselTick(String.valueOf(piece.id()), piece.mark().text(), ticks.size() < wanted));
      }
    }
    return ticks;
  }

  /** Candles of a pour that rest. */
  static List<Piece> resting(Books books, long pour) {
    return books.pieces().ofBatch(pour).stream()
        .filter(p -> p.state() instanceof PieceState.Resting)
        .toList();
  }

  private String restingUntil(Books books, PourWatch watch) {
    List<Piece> resting = resting(books, watch.batch().id());
    Instant finished = watch.batch().finishedAt();
    if (resting.isEmpty() || finished == null) {
      return "";
    }
    double days = watch.candle().restDays();
    Instant until = finished.plusSeconds(Math.round(days * 86_400));
    return String.format(
        Locale.ROOT,
        "%d candles rest for %.0f days, until %s.",
        resting.size(),
        days,
        desk.dayAndTime(until));
  }

  private DoneStep done(RecordedStep step) {
    StringBuilder with = new StringBuilder();
    for (RecordedStep.Used used : step.used()) {
      with.append(with.isEmpty() ? "" : ", ")
          .append(
              String.format(
                  Locale.ROOT,
                  "%.1f %s %s",
                  used.amount().inUsualUnit(),
                  used.amount().usualUnit(),
                  used.material()))
          .append(used.lot() == null ? " (missing in the books)" : "");
    }
    if (step.temperatureC() != null) {
      with.append(with.isEmpty() ? "" : ", ")
          .append(String.format(Locale.ROOT, "%.1f °C", step.temperatureC()));
    }
    if (!step.note().isEmpty()) {
      with.append(with.isEmpty() ? "" : ", ").append(step.note());
    }
    return new DoneStep(step.key(), desk.clockTime(step.at()) + ", " + step.by(), with.toString());
  }
}
