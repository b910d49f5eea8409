package pourwright.work;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Mark;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.card.CandleDesign;
import pourwright.card.CardBook;
import pourwright.card.ResolvedCandle;
import pourwright.card.ResolvedPour;
import pourwright.hazard.Audience;
import pourwright.hazard.Blend;
import pourwright.hazard.Classification;
import pourwright.hazard.HazardSheet;
import pourwright.hazard.Ingredient;
import pourwright.hazard.Regime;
import pourwright.label.BurnFacts;
import pourwright.label.SaleGate;
import pourwright.material.Material;
import pourwright.pour.Dose;

/** Reads out of the books what a candle's label stands on. */
public final class LabelReader {

  private final Books books;
  private final CardBook cards;

  /** A reader of the books as they are now. */
  public LabelReader(Books books) {
    this.books = books;
    this.cards = Drawers.book(books);
  }

  /**
   * The label of a design, for a mark where one is given.
   *
   * @param code of the candle's card
   * @param mark of a piece or a pour, or null for the design alone
   * @return nothing when there is no such candle
   */
  public Optional<CandleLabel> candle(String code, @Nullable Mark mark) {
    Optional<CardVersion<CandleDesign>> version = books.cards().current(Drawers.CANDLE, code);
    return version.map(v -> candle(v, v.body().resolve(cards), mark));
  }

  private CandleLabel candle(
      CardVersion<CandleDesign> version, ResolvedCandle candle, @Nullable Mark mark) {
    List<String> missing = new ArrayList<>();
    List<String> sheets = new ArrayList<>();
    ResolvedPour pour = candle.pour();
    List<Ingredient> oil = parts(pour.fragrances(), missing, sheets);
    List<ResolvedPour.Share> rest = new ArrayList<>(pour.waxes());
    rest.addAll(pour.extras());
    Blend blend = new Blend(Regime.CLP, Audience.PUBLIC, oil, parts(rest, missing, sheets));
    double load = Dose.loadOfTotal(pour.card().load(), pour.card().loadOf());
    Classification found = blend.at(load);
    SaleGate gate =
        new SaleGate(missing, notProved(version), waits(mark), holds(version, mark), found.stops());
    return new CandleLabel(
        candle, version.version(), blend, load, found, sheets, burn(version), gate);
  }

  /** Compositions of several materials as one, each by its share of them all. */
  private List<Ingredient> parts(
      List<ResolvedPour.Share> shares, List<String> missing, List<String> sheets) {
    double sum = shares.stream().mapToDouble(ResolvedPour.Share::share).sum();
    List<Ingredient> all = new ArrayList<>();
    for (ResolvedPour.Share share : shares) {
      Material material = share.material();
      Optional<HazardSheet> sheet =
          books.cards().current(Drawers.SHEET, material.code()).map(CardVersion::body);
      if (sheet.isEmpty()) {
        missing.add("the safety data sheet of " + material.name());
        all.add(Ingredient.plain("unknown: " + material.name(), 0));
        continue;
      }
      sheets.add(material.name() + ", sheet " + sheet.get().revision());
      for (Ingredient line : sheet.get().composition(material.name())) {
        all.add(line.at(line.share().times(share.share() / sum)));
      }
    }
    return all;
  }

  private List<String> notProved(CardVersion<CandleDesign> version) {
    Optional<BurnTest.Proof> proof =
        books.burns().proof(version.code(), version.version()).filter(BurnTest.Proof::proved);
    if (proof.isEmpty()) {
      return List.of(
          "no word stands behind version " + version.version() + " of this candle's card");
    }
    Instant at = proof.get().at();
    CandleDesign design = version.body();
    List<String> since = new ArrayList<>();
    changed(since, at, Drawers.POUR, design.pour(), "pour card (wax, scent, load, colour)");
    changed(since, at, Drawers.VESSEL, design.vessel(), "vessel");
    changed(since, at, Drawers.MIX, design.mix(), "mix card");
    changed(since, at, Drawers.FINISH, design.finish(), "finish (sealer)");
    return since;
  }

  private <T> void changed(
      List<String> since, Instant proved, Drawer<T> drawer, String code, String what) {
    books
        .cards()
        .current(drawer, code)
        .filter(card -> card.at().isAfter(proved))
        .ifPresent(card -> since.add("the " + what + " was changed after the proof"));
  }

  private List<String> waits(@Nullable Mark mark) {
    List<String> waits = new ArrayList<>();
    for (Piece piece : pieces(mark)) {
      PieceState state = piece.state();
      boolean ready = state instanceof PieceState.Rested || state instanceof PieceState.Picked;
      if (!ready) {
        waits.add(piece.mark().text() + " is " + state.words());
      }
    }
    return waits;
  }

  private List<Piece> pieces(@Nullable Mark mark) {
    Optional<Subject> marked = mark == null ? Optional.empty() : books.pieces().marked(mark);
    if (marked.isEmpty()) {
      return List.of();
    }
    return marked.get().kind() == Subject.Kind.PIECE
        ? books.pieces().piece(marked.get().number()).stream().toList()
        : books.pieces().ofBatch(marked.get().number()).stream()
            .filter(p -> !(p.state() instanceof PieceState.Gone))
            .toList();
  }

  private List<String> holds(CardVersion<CandleDesign> version, @Nullable Mark mark) {
    CandleDesign design = version.body();
    Set<String> cardsOfIt =
        Set.of(
            "candle/" + version.code(),
            "pour/" + design.pour(),
            "vessel/" + design.vessel(),
            "mix/" + design.mix(),
            "finish/" + design.finish());
    List<String> holds = new ArrayList<>();
    for (Hold hold : books.holds().standing()) {
      if (hold.subject().kind() == Subject.Kind.CARD && cardsOfIt.contains(hold.subject().id())) {
        holds.add(hold.subject().id() + ": " + hold.reason());
      }
    }
    for (Piece piece : pieces(mark)) {
      books
          .holds()
          .stopping(piece.id())
          .forEach(h -> holds.add(piece.mark().text() + ": " + h.reason()));
    }
    return holds.stream().distinct().toList();
  }

  /** Longest cycle, hottest wall, shortest life of a sample over this version's passed tests. */
  private BurnFacts burn(CardVersion<CandleDesign> version) {
    BurnBook.Extremes seen = books.burns().extremes(version.code(), version.version());
    Double life = seen.lifeH();
    return new BurnFacts(
        seen.hours(), null, null, null, life == null || life < 1 ? null : life, seen.wallC());
  }
}
