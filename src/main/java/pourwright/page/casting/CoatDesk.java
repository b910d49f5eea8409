package pourwright.page.casting;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.batch.Piece;
import pourwright.card.CardBook;
import pourwright.card.Vessel;
import pourwright.cast.SealCoat;
import pourwright.material.Material;
import pourwright.material.MaterialKind;
import pourwright.material.Property;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.board.Lengths;
import pourwright.quantity.Sourced;
import pourwright.stock.Amount;
import pourwright.stock.Movement;
import pourwright.work.Act;
import pourwright.work.DrawForBatch;
import pourwright.work.Drawers;
import pourwright.work.Outcome;
import pourwright.work.Subject;

/** The sealer of a coat: worked out from the faces, drawn from its lot, and its full-dry bell. */
final class CoatDesk {
  /** Typical where the sealer's sheet says nothing. */
  private static final double FULL_DRY_D = 7;

  private static final List<String> FACES = List.of("inside", "outside", "both");

  private final Desk desk;
  private final Lengths numbers;

  CoatDesk(Desk desk) {
    this.desk = desk;
    this.numbers = new Lengths(desk);
  }

  /**
   * A coat that is to be drawn.
   *
   * @param sealer the material
   * @param millilitres all pieces together
   */
  record Coat(Material sealer, double millilitres) {}

  /** Sealers to choose from, none first; empty where the books have none. */
  static Map<String, String> sealers(CardBook book) {
    Map<String, String> sealers = new LinkedHashMap<>();
    book.materials().all().stream()
        .filter(m -> m.kind() == MaterialKind.SEALER)
        .forEach(m -> sealers.put(m.code(), m.name()));
    if (sealers.isEmpty()) {
      return Map.of();
    }
    Map<String, String> all = new LinkedHashMap<>();
    all.put("", "not from stock");
    all.putAll(sealers);
    return all;
  }

  /** The coat that a form asks for; complains where its amount cannot be told. */
  Optional<Coat> read(Form form, List<Long> pieces) {
    String code = form.optionalText("sealer");
    if (code.isEmpty()) {
      return Optional.empty();
    }
    CardBook book = desk.studio().look(Drawers::book);
    Optional<Material> sealer = book.materials().find(code);
    Optional<String> face = form.choice("face", "which faces", FACES);
    Optional<Double> used = numbers.readNumberIfThere(form, "sealer_ml", "what was used, in ml");
    if (sealer.isEmpty() || face.isEmpty() || !form.ok()) {
      return Optional.empty();
    }
    Optional<Sourced> coverage = sealer.get().property(Property.COVERAGE_M2_PER_L);
    if (used.isEmpty() && coverage.isEmpty()) {
      form.complain(
          "sealer_ml", "The sealer's sheet says no coverage: write down what was really used.");
      return Optional.empty();
    }
    double ml =
        used.isPresent()
            ? used.get()
            : SealCoat.millilitres(areaMm2(book, pieces, face.get()), 1, coverage.get().value());
    if (!(ml > 0 && ml <= 100_000)) {
      form.complain("sealer_ml", "Give what was used, above zero.");
      return Optional.empty();
    }
    return Optional.of(new Coat(sealer.get(), ml));
  }

  private double areaMm2(CardBook book, List<Long> ids, String face) {
    double m2 = 0;
    for (Piece piece : pieces(ids)) {
      Vessel vessel = book.vessel(piece.vesselDesign());
      m2 += face.equals("outside") ? 0 : vessel.insideM2();
      m2 += face.equals("inside") ? 0 : vessel.outsideM2();
    }
    return m2 * 1e6;
  }

  private List<Piece> pieces(List<Long> ids) {
    return desk.studio()
        .look(b -> ids.stream().flatMap(id -> b.pieces().piece(id).stream()).toList());
  }

  /** Draws it for the casts the pieces come from, in proportion, and sets the full-dry bell. */
  String draw(Act act, Coat coat, List<Long> ids) {
    Map<Long, Integer> byCast = new LinkedHashMap<>();
    List<Piece> pieces = pieces(ids);
    pieces.forEach(p -> byCast.merge(p.madeIn(), 1, Integer::sum));
    List<String> missing = new ArrayList<>();
    byCast.forEach(
        (cast, count) -> {
          Amount amount = Amount.ofMillilitres(coat.millilitres() * count / pieces.size());
          Act draw = new Act(act.by(), act.requestKey() + "-s" + cast, "");
          Outcome<List<Movement>> drawn =
              desk.studio()
                  .drawForBatch
                  .run(draw, new DrawForBatch.Request(cast, coat.sealer().code(), null, amount));
          if (drawn instanceof Outcome.Refused<List<Movement>> refused) {
            missing.add(refused.sentence());
          }
        });
    bell(act, coat, pieces);
    String ml = numbers.number(coat.millilitres(), 1) + " ml of " + coat.sealer().name();
    return missing.isEmpty()
        ? " " + ml + " drawn; a bell rings when it is full-dry."
        : " Not drawn, " + missing.get(0) + ": count the lot.";
  }

  private void bell(Act act, Coat coat, List<Piece> pieces) {
    double days =
        coat.sealer().property(Property.FULL_DRY_D).map(Sourced::value).orElse(FULL_DRY_D);
    Piece first = pieces.get(0);
    String more = pieces.size() == 1 ? "" : " and " + (pieces.size() - 1) + " more";
    Subject subject = Subject.of(Subject.Kind.PIECE, first.id());
    Act bell = new Act(act.by(), act.requestKey() + "-b", "");
    Duration wait = Duration.ofMinutes(Math.round(24 * 60 * days));
    desk.studio().timers.start(bell, "Full-dry " + first.mark().text() + more, subject, wait);
  }
}
