package pourwright.work;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.batch.BatchKind;
import pourwright.batch.Mark;
import pourwright.batch.Move;
import pourwright.batch.Piece;
import pourwright.batch.PieceEvent;
import pourwright.batch.PieceLife;
import pourwright.batch.PieceState;
import pourwright.batch.PieceStep;
import pourwright.batch.Tightness;
import pourwright.quantity.Counted;
import pourwright.stock.Amount;
import pourwright.stock.Cause;

/**
 * Closes a pour: vessels that were filled become candles, vessels that were bought get a mark. Only
 * a dry vessel of a design that was proved wax-tight is poured as a candle.
 */
public final class FinishPour {
  private static final String VERB = "finished a pour";
  private final Doing doing;

  FinishPour(Doing doing) {
    this.doing = doing;
  }

  /**
   * Own vessels that were filled.
   *
   * @param candle code of the candle's card
   * @param pieces the vessels' numbers
   */
  public record Filled(String candle, List<Long> pieces) {

    /** Keeps its own copy. */
    public Filled {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * Bought vessels that were filled; they are drawn from their lot.
   *
   * @param candle code of the candle's card
   * @param vesselDesign code of the vessel's card
   * @param lot the lot of vessels, counted in pieces
   * @param count above zero
   */
  public record Bought(String candle, String vesselDesign, long lot, int count) {}

  /** The end of a pour. */
  public record Request(long batch, List<Filled> filled, List<Bought> bought) {

    /** Keeps its own copies. */
    public Request {
      filled = List.copyOf(filled);
      bought = List.copyOf(bought);
    }
  }

  /** Finishes; gives the candles. */
  public Outcome<List<Piece>> run(Act act, Request request) {
    return doing.once(
        act,
        VERB,
        turn -> finish(turn, request),
        (books, deed) -> books.pieces().ofBatch(deed.subject().number()));
  }

  private static Outcome<List<Piece>> finish(Turn turn, Request request) {
    Optional<Outcome<List<Piece>>> refusal =
        Finishing.refusal(turn, request.batch(), BatchKind.POUR);
    if (refusal.isEmpty()) {
      refusal = vesselRefusal(turn, request);
    }
    if (refusal.isEmpty()) {
      refusal = boughtRefusal(turn, request);
    }
    if (refusal.isPresent()) {
      return refusal.get();
    }
    Deed deed = turn.deed(Subject.of(Subject.Kind.BATCH, request.batch()));
    turn.books().batches().finish(request.batch(), deed);
    for (Filled filled : request.filled()) {
      for (long piece : filled.pieces()) {
        turn.books().pieces().append(poured(turn, piece, request.batch(), filled.candle(), deed));
      }
    }
    for (Bought bought : request.bought()) {
      takeBought(turn, request.batch(), bought, deed);
    }
    NameMistake.sortByMistakes(
        turn, request.batch(), turn.books().pieces().touchedBy(deed.id()), deed);
    return Turn.done(deed, turn.books().pieces().ofBatch(request.batch()));
  }

  private static PieceEvent poured(Turn turn, long piece, long batch, String candle, Deed deed) {
    return new PieceEvent(
        0, piece, PieceStep.POURED, turn.now(), batch, null, null, candle, deed.id());
  }

  private static void takeBought(Turn turn, long batch, Bought bought, Deed deed) {
    turn.books()
        .lots()
        .append(bought.lot(), Amount.ofPieces(-bought.count()), Cause.DRAWN, batch, deed);
    PieceBook pieces = turn.books().pieces();
    for (int i = 0; i < bought.count(); i++) {
      long id = pieces.nextId();
      Mark mark = Mark.ofNumber(pieces.nextMark());
      PieceState state = new PieceState.Poured(turn.now(), batch, bought.candle());
      pieces.add(
          new Piece(id, mark, bought.vesselDesign(), batch, bought.lot(), null, null, null, state),
          poured(turn, id, batch, bought.candle(), deed));
    }
  }

  private static Optional<Outcome<List<Piece>>> boughtRefusal(Turn turn, Request request) {
    java.util.Map<Long, Integer> byLot = new java.util.TreeMap<>();
    for (Bought bought : request.bought()) {
      if (bought.count() < 1) {
        return Optional.of(
            Outcome.refused(
                Reason.AMOUNT_MUST_BE_POSITIVE,
                Counted.of(bought.count(), "bought vessel", "bought vessels"),
                "give how many were filled, or leave the line out"));
      }
      byLot.merge(bought.lot(), bought.count(), Integer::sum);
    }
    for (var entry : byLot.entrySet()) {
      Optional<Outcome<List<Piece>>> refusal =
          Drawing.refusal(turn, entry.getKey(), Amount.ofPieces(entry.getValue()));
      if (refusal.isPresent()) {
        return refusal;
      }
    }
    return Optional.empty();
  }

  private static Optional<Outcome<List<Piece>>> vesselRefusal(Turn turn, Request request) {
    java.util.Set<Long> seen = new java.util.HashSet<>();
    for (Filled filled : request.filled()) {
      for (long id : filled.pieces()) {
        Optional<Piece> piece = turn.books().pieces().piece(id);
        if (piece.isEmpty() || !seen.add(id)) {
          return Optional.of(
              piece.isEmpty()
                  ? Doing.notOnFile("piece " + id)
                  : Outcome.refused(
                      Reason.INPUT_CANNOT_BE,
                      "piece " + piece.get().mark().text() + " is named twice",
                      "name each vessel once"));
        }
        Outcome<List<Piece>> bar = bar(turn, piece.get(), request.batch(), filled.candle());
        if (bar != null) {
          return Optional.of(bar);
        }
      }
    }
    return Optional.empty();
  }

  private static @Nullable Outcome<List<Piece>> bar(
      Turn turn, Piece piece, long batch, String candle) {
    PieceEvent event =
        new PieceEvent(0, piece.id(), PieceStep.POURED, turn.now(), batch, null, null, candle, 0);
    Move move = new PieceLife(piece.state(), piece.grade()).after(event);
    if (move instanceof Move.Barred barred) {
      return Outcome.refused(
          Reason.PIECE_IS_NOT_THERE_YET,
          "vessel " + piece.mark().text() + ": " + barred.sentence(),
          "pour only into vessels that are dry");
    }
    if (piece.state().tightness() != Tightness.WAX
        && !turn.books().pieces().designHeldWax(piece.vesselDesign())) {
      return Outcome.refused(
          Reason.VESSEL_IS_NOT_PROVED_TIGHT,
          "no vessel of " + piece.vesselDesign() + " has been proved wax-tight",
          "do a seep test on one first; until then a pour is for that test only");
    }
    if (PlasterGate.hidden(turn.books(), piece.madeIn(), candle)) {
      return Outcome.refused(
          Reason.VESSEL_IS_NOT_PROVED_TIGHT,
          "vessel " + piece.mark().text() + " is of plaster and the candle's card is not",
          "lay out a candle with the plaster mix and have its wall measured in a burn test");
    }
    return AdvancePieces.heldRefusal(turn, piece);
  }
}
