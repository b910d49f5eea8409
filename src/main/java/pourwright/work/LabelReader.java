package pourwright.work;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Mark;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.card.CandleDesign;
import pourwright.card.ResolvedCandle;
import pourwright.hazard.Classification;
import pourwright.label.BurnFacts;
import pourwright.label.SaleGate;
import pourwright.material.MaterialBook;

/**
 * Reads out of the books what a candle's label stands on. For a mark it is what the marked pieces
 * were really made by, else the cards as they are now.
 */
public final class LabelReader {

  private final Books books;
  private final MaterialBook materials;
  private final ProvedCandle proved;
  private final TestedFacts tested;
  private final List<Hold> standing;

  /** A reader of the books as they are now. */
  public LabelReader(Books books) {
    this.books = books;
    this.materials = Drawers.materials(books);
    this.proved = new ProvedCandle(books, materials);
    this.tested = new TestedFacts(books);
    this.standing = books.holds().standing();
  }

  /**
   * The label of a design, for a mark where one is given.
   *
   * @param code of the candle's card
   * @param mark of a piece or a pour, or null for the design alone
   * @return nothing when there is no such candle
   * @throws pourwright.quantity.OutOfRange when a card or a material of it is missing
   */
  public Optional<CandleLabel> candle(String code, @Nullable Mark mark) {
    return read(code, mark, true);
  }

  /** The same in short, for a list: without what the burn tests have shown. */
  public Optional<CandleLabel> inShort(String code) {
    return read(code, null, false);
  }

  private Optional<CandleLabel> read(String code, @Nullable Mark mark, boolean whole) {
    Optional<CardVersion<CandleDesign>> version = books.cards().current(Drawers.CANDLE, code);
    if (version.isEmpty()) {
      return Optional.empty();
    }
    Optional<CandleCards> now = CandleCards.now(books, code);
    if (now.isEmpty()) {
      // names the card that is missing
      version.get().body().resolve(Drawers.book(books));
      return Optional.empty();
    }
    List<Piece> pieces = pieces(mark);
    List<CandleCards> made =
        proved.made(now.get(), pieces.stream().filter(p -> isOf(p, code)).map(Piece::id).toList());
    return Optional.of(label(made, pieces, mark, whole));
  }

  private static boolean isOf(Piece piece, String candle) {
    return piece.candle().filter(candle::equals).isPresent();
  }

  private CandleLabel label(
      List<CandleCards> made, List<Piece> pieces, @Nullable Mark mark, boolean whole) {
    CandleCards cards = made.get(0);
    String code = cards.candle().code();
    ResolvedCandle candle = cards.resolve(materials);
    CandleBlend blend = CandleBlend.of(books, candle.pour());
    Classification found = blend.blend().at(blend.loadOfTotal());
    List<String> missing = new ArrayList<>(blend.missing());
    if (mark != null && pieces.isEmpty()) {
      missing.add("pieces with the mark " + mark.text() + ": none is in the books");
    }
    SaleGate gate =
        new SaleGate(
            missing,
            List.copyOf(new ForSale(books, proved).against(code, made, pieces)),
            waits(pieces, code),
            holds(made, pieces),
            found.stops());
    int version = cards.candle().version();
    int tests = proved.word(code, version).map(BurnTest.Proof::candleVersion).orElse(version);
    BurnFacts burn = whole ? tested.of(cards, tests) : BurnFacts.UNTESTED;
    return new CandleLabel(
        cards,
        candle,
        version,
        blend.blend(),
        blend.loadOfTotal(),
        found,
        blend.sheets(),
        burn,
        tests,
        gate);
  }

  private static List<String> waits(List<Piece> pieces, String candle) {
    List<String> waits = new ArrayList<>();
    for (Piece piece : pieces) {
      PieceState state = piece.state();
      boolean ready = state instanceof PieceState.Rested || state instanceof PieceState.Picked;
      if (!ready) {
        waits.add(piece.mark().text() + " is " + state.words());
      } else if (!isOf(piece, candle)) {
        waits.add(piece.mark().text() + " is another candle, " + piece.candle().orElse("?"));
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

  private List<String> holds(List<CandleCards> made, List<Piece> pieces) {
    Set<String> cardsOfIt = new LinkedHashSet<>();
    for (CandleCards cards : made) {
      cardsOfIt.add("candle/" + cards.candle().code());
      cardsOfIt.add("pour/" + cards.pour().code());
      cardsOfIt.add("vessel/" + cards.vessel().code());
      cardsOfIt.add("mix/" + cards.mix().code());
      cardsOfIt.add("finish/" + cards.finish().code());
    }
    List<String> holds = new ArrayList<>();
    for (Hold hold : standing) {
      if (hold.subject().kind() == Subject.Kind.CARD && cardsOfIt.contains(hold.subject().id())) {
        holds.add(hold.subject().id() + ": " + hold.reason());
      }
    }
    for (Piece piece : pieces) {
      books
          .holds()
          .stopping(piece.id())
          .forEach(h -> holds.add(piece.mark().text() + ": " + h.reason()));
    }
    return holds.stream().distinct().toList();
  }
}
