package pourwright.page.pouring;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.batch.PlannedAmount;
import pourwright.batch.PlannedStep;
import pourwright.card.Instrument;
import pourwright.card.PourCard;
import pourwright.card.ResolvedCandle;
import pourwright.card.Scales;
import pourwright.page.Desk;
import pourwright.page.Units;
import pourwright.page.pouring.PourPage.Ask;
import pourwright.page.pouring.PourPage.Print;
import pourwright.page.pouring.PourPage.Redosing;
import pourwright.page.pouring.PourPage.StepCard;
import pourwright.page.pouring.PourPage.Weighing;
import pourwright.pour.Dose;
import pourwright.pour.Dose.LoadOf;
import pourwright.pour.Redose;
import pourwright.stock.Shelf;
import pourwright.work.Books;
import pourwright.work.Drawers;
import pourwright.work.PieceBook;
import pourwright.work.PourWalk;
import pourwright.work.PourWatch;

/** The next step of a pour as it stands on its page. */
final class StepView {
  /** The load may be off by this share before the page says so. House. */
  static final double LOAD_TOLERANCE = 0.02;

  private static final int VESSELS_LOOKED_AT = 500;

  private final Desk desk;

  StepView(Desk desk) {
    this.desk = desk;
  }

  StepCard step(Books books, PourWatch watch) {
    PlannedStep next = watch.next();
    if (next == null || !watch.batch().isRunning()) {
      return new StepCard("", "", "", List.of(), List.of(), List.of(), List.of(), "", "");
    }
    List<PlannedStep> all = watch.batch().plan().steps();
    double scaleG = scaleG(books);
    List<Weighing> weighs = new ArrayList<>();
    List<String> hints = new ArrayList<>(HintView.of(watch, next, scaleG));
    if (all.indexOf(next) == 0) {
      hints.addAll(marks(books, watch));
    }
    Scales scales = Scales.of(Drawers.book(books));
    for (PlannedAmount amount : next.amounts()) {
      Weighing weighing = weighing(books, watch, next, amount, scaleG);
      weighs.add(weighing);
      if (amount.amount().usualUnit().equals("g")) {
        scales
            .tooFine(amount.amount().inUsualUnit())
            .ifPresent(fine -> hints.add(weighing.name() + ": " + fine.sentence()));
      }
    }
    return new StepCard(
        next.key(),
        "Step " + (all.indexOf(next) + 1) + " of " + all.size(),
        next.sentence(),
        hints,
        next.key().equals("tab") ? templates(watch) : List.of(),
        weighs,
        asks(books, watch, next),
        next.takesTemperature() ? thermometer(next) : "",
        next.care() == PlannedStep.Care.WAIT ? String.valueOf(Math.round(next.minutes())) : "");
  }

  /** Where the tray card ends: each vessel's own mark goes on before it is wicked. */
  private static List<String> marks(Books books, PourWatch watch) {
    Set<Long> chosen = new LinkedHashSet<>();
    List<String> marks = new ArrayList<>();
    for (PourWatch.Part part : watch.parts()) {
      dry(books, part.candle()).stream()
          .filter(piece -> !chosen.contains(piece.id()))
          .limit(part.count())
          .forEach(
              piece -> {
                chosen.add(piece.id());
                marks.add(piece.mark().text());
              });
    }
    return marks.isEmpty()
        ? List.of()
        : List.of(
            "Before wicking weigh each vessel and put its own mark on: "
                + String.join(", ", marks)
                + ". Here the tray card ends.");
  }

  /** The finest step of her scales, in g; 0 where none is written down. */
  private static double scaleG(Books books) {
    List<Instrument> scales = Scales.of(Drawers.book(books)).coarseToFine();
    return scales.isEmpty() ? 0 : scales.get(scales.size() - 1).resolution();
  }

  private Weighing weighing(
      Books books, PourWatch watch, PlannedStep step, PlannedAmount amount, double scaleG) {
    PourCard card = watch.candle().pour().card();
    String load =
        step.key().equals(PourWalk.SCENT)
            ? percent(card.load()) + (card.loadOf() == LoadOf.TOTAL ? " on the total" : " on wax")
            : "";
    String lot =
        books.lots().shelves(amount.material()).stream()
            .filter(s -> s.isDrawable(desk.today()))
            .findFirst()
            .map(StepView::lot)
            .orElse("no lot on the shelf: it is noted as missing");
    boolean counted = amount.amount().usualUnit().equals("pcs");
    boolean mass = amount.amount().usualUnit().equals("g");
    double exact = amount.amount().inUsualUnit();
    double usual =
        mass && scaleG > 0 ? Math.max(scaleG, Math.rint(exact / scaleG) * scaleG) : exact;
    return new Weighing(
        "amount-" + amount.material(),
        watch.candle().materials().get(amount.material()).name(),
        mass
            ? desk.units().massFigure(usual)
            : String.format(Locale.ROOT, counted ? "%.0f" : "%.1f", usual),
        mass ? desk.units().mass() : amount.amount().usualUnit(),
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

  private static String thermometer(PlannedStep step) {
    return step.key().equals(PourWalk.WARM) ? "The stone's temperature" : "The wax's temperature";
  }

  /** What else is asked: empty vessels, a reason above the flash point, the second pour. */
  private List<Ask> asks(Books books, PourWatch watch, PlannedStep step) {
    List<Ask> asks = new ArrayList<>();
    if (step.key().equals(PourWalk.TARE)) {
      Set<Long> asked = new HashSet<>();
      for (PourWatch.Part part : watch.parts()) {
        dry(books, part.candle()).stream()
            .filter(piece -> !asked.contains(piece.id()))
            .limit(part.count())
            .forEach(
                piece -> {
                  asked.add(piece.id());
                  asks.add(empty(piece));
                });
      }
    }
    Double flash = watch.lowestFlashC();
    Double wax = watch.waxC();
    if (step.key().equals(PourWalk.SCENT) && flash != null && (wax == null || wax > flash - 10)) {
      asks.add(
          new Ask(
              "reason",
              "Why above the flash point",
              "",
              "text",
              String.format(
                  Locale.ROOT, "asked for only when the wax is above %.0f \u00b0C", flash)));
    }
    if (step.key().equals(PourWalk.SECOND)) {
      asks.add(
          new Ask(
              "second_g", "Weighed in, all vessels together", desk.units().mass(), "decimal", ""));
    }
    return asks;
  }

  private static List<Print> templates(PourWatch watch) {
    return watch.parts().stream()
        .map(p -> p.candle().design())
        .map(d -> new Print("/pouring/template/" + d.code(), d.name()))
        .toList();
  }

  private Ask empty(Piece piece) {
    String label = "Vessel " + piece.mark().text();
    return new Ask("empty-" + piece.id(), label, desk.units().mass(), "decimal", "");
  }

  /** Dry vessels of the candle's design, the newest first. */
  static List<Piece> dry(Books books, ResolvedCandle candle) {
    PieceBook.Which which = new PieceBook.Which(candle.design().vessel(), null);
    return books.pieces().list(which, null, VESSELS_LOOKED_AT).items().stream()
        .filter(p -> p.state() instanceof PieceState.Dry)
        .toList();
  }

  static Redosing redosing(PourWatch watch, Units units) {
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
    return new Redosing(sentence, material, units.massFigure(grams));
  }
}
