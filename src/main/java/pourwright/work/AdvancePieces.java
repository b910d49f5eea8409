package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Grade;
import pourwright.batch.Move;
import pourwright.batch.Piece;
import pourwright.batch.PieceEvent;
import pourwright.batch.PieceLife;
import pourwright.batch.PieceStep;
import pourwright.quantity.Counted;

/** Moves one or more pieces a step on: hardened, dried, sealed, tested, rested, picked, sold … */
public final class AdvancePieces {
  private static final Set<PieceStep> BARRED_BY_HOLD =
      Set.of(PieceStep.PICKED, PieceStep.SOLD, PieceStep.GIVEN, PieceStep.POURED);
  private static final Set<PieceStep> SOLD_AS_CANDLE = Set.of(PieceStep.PICKED, PieceStep.SOLD);
  private static final Set<PieceStep> NOT_HERE =
      Set.of(PieceStep.CAST, PieceStep.POURED, PieceStep.REFILLED);
  private final Doing doing;

  AdvancePieces(Doing doing) {
    this.doing = doing;
  }

  /**
   * A step for some pieces.
   *
   * @param pieces numbers; all of them move or none
   * @param step any but CAST and POURED, which belong to finishing a batch
   * @param grade for GRADED
   * @param orderLine for PICKED and SOLD
   */
  public record Request(
      List<Long> pieces, PieceStep step, @Nullable Grade grade, @Nullable Long orderLine) {

    /** Keeps its own copy. */
    public Request {
      pieces = List.copyOf(pieces);
    }

    /** A step that needs nothing more. */
    public static Request of(List<Long> pieces, PieceStep step) {
      return new Request(pieces, step, null, null);
    }
  }

  /** Moves them, or says which piece cannot and why. */
  public Outcome<List<Piece>> run(Act act, Request request) {
    return doing.once(
        act,
        request.step().words(),
        turn -> advance(turn, request),
        (books, deed) -> pieces(books, books.pieces().touchedBy(deed.id())));
  }

  private static List<Piece> pieces(Books books, List<Long> ids) {
    return ids.stream().flatMap(id -> books.pieces().piece(id).stream()).toList();
  }

  private static Outcome<List<Piece>> advance(Turn turn, Request request) {
    if (NOT_HERE.contains(request.step())
        || request.pieces().isEmpty()
        || (request.step() == PieceStep.GRADED && request.grade() == null)
        || (request.step() == PieceStep.PICKED && request.orderLine() == null)) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE,
          Counted.of(request.pieces().size(), "piece to be ", "pieces to be ")
              + request.step().words(),
          "name at least one piece, a grade when sorting, an order line when picking");
    }
    List<PieceEvent> events = new ArrayList<>();
    List<Piece> pieces = new ArrayList<>();
    for (long id : new java.util.LinkedHashSet<>(request.pieces())) {
      Optional<Piece> piece = turn.books().pieces().piece(id);
      if (piece.isEmpty()) {
        return Doing.notOnFile("piece " + id);
      }
      PieceEvent event =
          new PieceEvent(
              0,
              id,
              request.step(),
              turn.now(),
              null,
              request.orderLine(),
              request.grade(),
              null,
              0);
      Outcome<List<Piece>> bar = bar(turn, piece.get(), event);
      if (bar != null) {
        return bar;
      }
      pieces.add(piece.get());
      events.add(event);
    }
    if (SOLD_AS_CANDLE.contains(request.step())) {
      Outcome<List<Piece>> notProved = ForSale.refusal(turn.books(), pieces);
      if (notProved != null) {
        return notProved;
      }
    }
    Subject subject = Subject.of(Subject.Kind.PIECE, events.get(0).piece());
    Deed deed = turn.deed(subject);
    events.forEach(event -> turn.books().pieces().append(event.in(deed.id())));
    return Turn.done(deed, pieces(turn.books(), request.pieces()));
  }

  private static @Nullable Outcome<List<Piece>> bar(Turn turn, Piece piece, PieceEvent event) {
    Move move = new PieceLife(piece.state(), piece.grade()).after(event);
    if (move instanceof Move.Barred barred) {
      return Outcome.refused(
          Reason.PIECE_IS_NOT_THERE_YET,
          piece.mark().text() + ": " + barred.sentence(),
          "look at the piece and record what came before");
    }
    return BARRED_BY_HOLD.contains(event.step()) ? heldRefusal(turn, piece) : null;
  }

  static @Nullable Outcome<List<Piece>> heldRefusal(Turn turn, Piece piece) {
    List<Hold> holds = turn.books().holds().stopping(piece.id());
    if (holds.isEmpty()) {
      return null;
    }
    Hold hold = holds.get(0);
    return Outcome.refused(
        Reason.IT_IS_HELD,
        piece.mark().text() + " is stopped by a hold: " + hold.reason(),
        "take another piece, or have the hold lifted by name");
  }
}
