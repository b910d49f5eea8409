package pourwright.page.casting;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.batch.Grade;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.card.CardBook;
import pourwright.card.Vessel;
import pourwright.cast.Drying;
import pourwright.cast.Grit;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.board.Lengths;
import pourwright.page.guard.TurnedAway;
import pourwright.quantity.OutOfRange;
import pourwright.work.Act;
import pourwright.work.AdvancePieces;
import pourwright.work.Books;
import pourwright.work.Drawers;
import pourwright.work.Outcome;
import pourwright.work.PieceBook;
import pourwright.work.Reading;
import pourwright.work.Subject;

/** Vessels from green to wax-tight: what may be recorded of them, several at a time. */
final class PiecesDesk {
  private static final String TEMPLATE = "casting/pieces.jte";
  private static final int MOST = 120;

  /** House: papers in their order, each about half as coarse as the one before. */
  private static final List<Integer> GRITS = List.of(80, 150, 240, 400);

  /** Diffusivities of water in mortar, from memory. */
  private static final double FAST_M2_PER_S = 1e-10;

  private static final double SLOW_M2_PER_S = 1e-11;

  private final Desk desk;
  private final Lengths numbers;
  private final CoatDesk coats;

  PiecesDesk(Desk desk) {
    this.desk = desk;
    this.coats = new CoatDesk(desk);
    this.numbers = new Lengths(desk);
  }

  void addTo(RoutesConfig routes) {
    routes.get("/casting/pieces/{state}", this::show);
    routes.post("/casting/pieces/{state}", this::advance);
  }

  private static Bay bay(Context http) {
    String state = http.pathParam("state");
    return Arrays.stream(Bay.values())
        .filter(b -> b.state().equals(state))
        .findFirst()
        .orElseThrow(() -> new TurnedAway(404, "No vessels stand there", "See the bench."));
  }

  private void show(Context http) {
    Bay bay = bay(http);
    Show.page(http, TEMPLATE, desk.studio().look(b -> page(b, bay, Form.blank())));
  }

  private PiecesPage page(Books books, Bay bay, Form form) {
    CardBook book = Drawers.book(books);
    PieceBook.Which which = new PieceBook.Which(null, bay.state());
    Map<String, List<Piece>> byCast = new LinkedHashMap<>();
    for (Piece piece : books.pieces().list(which, null, MOST).items()) {
      String title = CastReader.name(book, piece.vesselDesign());
      String cast =
          books.batches().batch(piece.madeIn()).map(b -> ", cast " + b.mark().text()).orElse("");
      String state = bay == Bay.DRY ? " (" + piece.state().words() + ")" : "";
      byCast.computeIfAbsent(title + cast + state, k -> new ArrayList<>()).add(piece);
    }
    List<PiecesPage.Group> groups = new ArrayList<>();
    byCast.forEach((title, pieces) -> groups.add(group(title, pieces)));
    String title = bay.words().substring(0, 1).toUpperCase(Locale.ROOT) + bay.words().substring(1);
    return new PiecesPage(
        title,
        bay.state(),
        form,
        groups,
        bay.acts(),
        cautions(bay),
        sealers(bay, book),
        bay == Bay.GREEN ? GRITS.stream().map(this::grain).toList() : List.of(),
        bay == Bay.HARDENED ? drying(book, byCast) : List.of());
  }

  /** How coarse a sheet of paper is: the two scales part above 220. */
  private String grain(int number) {
    return "P"
        + number
        + ", "
        + numbers.number(new Grit(Grit.Scale.P, number).micrometres())
        + " µm";
  }

  /** From what a wall is thick; one line for each vessel. */
  private List<String> drying(CardBook book, Map<String, List<Piece>> byCast) {
    return byCast.values().stream()
        .map(pieces -> pieces.get(0).vesselDesign())
        .distinct()
        .flatMap(code -> book.all(Vessel.class).stream().filter(v -> v.code().equals(code)))
        .map(
            v -> {
              double wall = Math.max(1, v.hollow().thinnestWall().mm());
              return v.name()
                  + ": "
                  + numbers.number(Drying.daysTo90Percent(wall, FAST_M2_PER_S), 0)
                  + " to "
                  + numbers.number(Drying.daysTo90Percent(wall, SLOW_M2_PER_S), 0)
                  + " days until nine tenths have left its wall";
            })
        .toList();
  }

  private static Map<String, String> sealers(Bay bay, CardBook book) {
    boolean seals = bay.acts().stream().anyMatch(a -> a.step().equals(PieceStep.SEALED.name()));
    return seals ? CoatDesk.sealers(book) : Map.of();
  }

  private PiecesPage.Group group(String title, List<Piece> pieces) {
    List<PiecesPage.Tick> ticks = new ArrayList<>();
    for (Piece piece : pieces) {
      Grade grade = piece.grade();
      ticks.add(
          new PiecesPage.Tick(
              String.valueOf(piece.id()),
              piece.mark().text(),
              grade == null ? "" : grade.name().toLowerCase(Locale.ROOT)));
    }
    String since = pieces.get(0).since().atZone(desk.zone()).toLocalDate().toString();
    return new PiecesPage.Group(title, ticks, since);
  }

  private static List<String> cautions(Bay bay) {
    return switch (bay) {
      case GREEN, HARDENED ->
          List.of(
              "Sand wet. Dust of sand and cement harms the lungs: mask on, wipe up wet, no dry"
                  + " sweeping. Green castings are alkaline: gloves.",
              "Never dry a vessel of plaster or rapid cement in an oven.");
      case DRY ->
          List.of(
              "Seal only a dry wall. A coat that repels water may still let oil through: only the"
                  + " wax test shows it.",
              "No coat above the wax line near a flame unless a burn test covered it. Nothing here"
                  + " says fit for food.");
      case DAMP, SEEP_TESTING -> List.of();
    };
  }

  /** The vessels that are ticked, by number; what is no number is passed over. */
  static List<Long> ticked(Form form) {
    return form.values("piece").stream()
        .filter(p -> p.matches("\\d{1,18}"))
        .map(Long::valueOf)
        .toList();
  }

  private void advance(Context http) {
    Bay bay = bay(http);
    Form form = Form.of(http);
    List<Long> pieces = ticked(form);
    if (pieces.isEmpty()) {
      form.complain("pieces", "Please tick at least one vessel.");
    }
    Optional<PiecesPage.Act> wanted =
        bay.acts().stream().filter(a -> a.step().equals(form.value("step"))).findFirst();
    if (wanted.isEmpty()) {
      form.complain("pieces", "That cannot be recorded here.");
    }
    List<Reading> readings = new ArrayList<>();
    if (wanted.isPresent() && wanted.get().weighs() && !pieces.isEmpty()) {
      dry(form, pieces.get(0), readings);
    }
    boolean seals =
        wanted.filter(w -> w.step().equals(PieceStep.SEALED.name())).isPresent() && form.ok();
    Optional<CoatDesk.Coat> coat = seals ? coats.read(form, pieces) : Optional.empty();
    Optional<Act> act = form.act(http, form.optionalText("note"));
    if (!form.ok() || act.isEmpty() || wanted.isEmpty()) {
      Show.again(http, TEMPLATE, desk.studio().look(b -> page(b, bay, form)));
      return;
    }
    PieceStep step = PieceStep.valueOf(wanted.get().step());
    Outcome<List<Piece>> outcome =
        desk.studio().advancePieces.run(act.get(), AdvancePieces.Request.of(pieces, step));
    String back = "/casting/pieces/" + bay.state();
    if (outcome instanceof Outcome.Refused<List<Piece>> refused) {
      Show.done(http, Said.refused(refused), back);
      return;
    }
    if (!readings.isEmpty()) {
      Act follow = new Act(act.get().by(), act.get().requestKey() + "-r", "");
      desk.studio().recordReading.run(follow, readings);
    }
    String drawn = coat.map(c -> coats.draw(act.get(), c, pieces)).orElse("");
    String now = outcome.made().isEmpty() ? "" : outcome.made().get(0).state().words();
    Show.done(
        http,
        Said.done(
            outcome.made().size() + " recorded: " + step.words() + ". Now " + now + "." + drawn),
        back);
  }

  /** Two weighings of one of them, or a sentence why they do not prove it dry. */
  private void dry(Form form, long piece, List<Reading> readings) {
    Optional<Double> before = numbers.readGrams(form, "before_g", "the first weight");
    Optional<Double> later = numbers.readGrams(form, "later_g", "the second weight");
    Optional<Double> hours = numbers.readNumber(form, "hours", "the hours between them");
    if (before.isEmpty() || later.isEmpty() || hours.isEmpty()) {
      return;
    }
    try {
      if (!Drying.isDry(before.get(), later.get(), hours.get())) {
        double loss = Drying.lossPerDay(before.get(), later.get(), hours.get());
        form.complain(
            "later_g",
            String.format(
                Locale.ROOT,
                "Not dry yet: it still changes by %.2f %% in 24 h, and less than 0.10 %% is"
                    + " wanted. Weigh again tomorrow.",
                100 * loss));
        return;
      }
    } catch (OutOfRange e) {
      form.complain("hours", e.sentence() + ": " + e.hint() + ".");
      return;
    }
    Subject subject = Subject.of(Subject.Kind.PIECE, piece);
    readings.add(Reading.fresh(subject, "dry_mass_g", later.get(), desk.now()));
  }
}
