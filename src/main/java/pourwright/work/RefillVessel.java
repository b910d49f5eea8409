package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pourwright.batch.Mark;
import pourwright.batch.Piece;
import pourwright.batch.PieceEvent;
import pourwright.batch.PieceState;
import pourwright.batch.PieceStep;
import pourwright.batch.Tightness;
import pourwright.quantity.Counted;

/**
 * Clears a vessel that came back for another filling: inspected, cleared of wax and wick, dried,
 * checked. It gets a new mark that is linked to the old one, and nothing that was proved of the old
 * piece holds for the new one. House: filled again three times at most.
 */
public final class RefillVessel {
  private static final String VERB = "cleared a vessel for a refill";

  /** The setting that says how often a vessel is filled again. */
  public static final String LIMIT = "refill.limit";

  private static final int HOUSE_LIMIT = 3;
  private final Doing doing;

  RefillVessel(Doing doing) {
    this.doing = doing;
  }

  /**
   * What was done to the vessel.
   *
   * @param piece the piece that came back
   * @param inspected no crack, no chip, no scorch
   * @param cleared of wax, wick and soot
   * @param dried to constant mass
   * @param checked stands level, and held water or wax again
   */
  public record Request(
      long piece, boolean inspected, boolean cleared, boolean dried, boolean checked) {}

  /** Clears it; gives the new piece. */
  public Outcome<Piece> run(Act act, Request request) {
    return doing.once(
        act,
        VERB,
        turn -> clear(turn, request),
        (books, deed) ->
            Doing.known(
                books.pieces().touchedBy(deed.id()).stream()
                    .flatMap(id -> books.pieces().piece(id).stream())
                    .filter(p -> p.refillOf() != null && p.refillOf() == request.piece())
                    .findFirst(),
                deed));
  }

  /** How often a vessel was filled again, through all the marks it had. */
  public static int fills(Books books, Piece piece) {
    int fills = 0;
    Long before = piece.refillOf();
    while (before != null) {
      fills++;
      before = books.pieces().piece(before).map(Piece::refillOf).orElse(null);
    }
    return fills;
  }

  /** How often a vessel may be filled again. */
  public static int limit(Books books) {
    String text = books.settings().value(LIMIT).orElse("");
    return text.matches("[0-9]{1,3}") ? Integer.parseInt(text) : HOUSE_LIMIT;
  }

  private static Outcome<Piece> clear(Turn turn, Request request) {
    Books books = turn.books();
    Optional<Piece> found = books.pieces().piece(request.piece());
    if (found.isEmpty()) {
      return Doing.notOnFile("piece " + request.piece());
    }
    Piece old = found.get();
    if (!(old.state() instanceof PieceState.CameBack)) {
      return Outcome.refused(
          Reason.PIECE_IS_NOT_THERE_YET,
          old.mark().text() + " is " + old.state().words(),
          "write down that it came back first");
    }
    List<String> missing = new ArrayList<>();
    note(missing, request.inspected(), "inspected");
    note(missing, request.cleared(), "cleared of wax");
    note(missing, request.dried(), "dried to constant mass");
    note(missing, request.checked(), "checked");
    if (!missing.isEmpty()) {
      return Outcome.refused(
          Reason.PIECE_IS_NOT_THERE_YET,
          "it was not " + String.join(", not ", missing),
          "do that first, or scrap it");
    }
    int limit = limit(books);
    if (fills(books, old) >= limit) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE,
          "it was filled again "
              + Counted.of(limit, "time", "times")
              + " already, the most in this house",
          "make a planter of it, or scrap it");
    }
    if (!books.holds().stopping(old.id()).isEmpty()) {
      return Outcome.refused(
          Reason.IT_IS_HELD,
          old.mark().text() + " is stopped by a hold",
          "have the hold lifted by name first");
    }
    Deed deed = turn.deed(Subject.of(Subject.Kind.PIECE, old.id()));
    books
        .pieces()
        .append(
            new PieceEvent(
                0, old.id(), PieceStep.REFILLED, turn.now(), null, null, null, null, deed.id()));
    long id = books.pieces().nextId();
    Piece fresh =
        new Piece(
            id,
            Mark.ofNumber(books.pieces().nextMark()),
            old.vesselDesign(),
            old.madeIn(),
            old.vesselLot(),
            null,
            old.id(),
            null,
            new PieceState.Dry(turn.now(), Tightness.NONE));
    books
        .pieces()
        .add(
            fresh,
            new PieceEvent(0, id, PieceStep.DRIED, turn.now(), null, null, null, null, deed.id()));
    return Turn.done(deed, Doing.known(books.pieces().piece(id), deed));
  }

  private static void note(List<String> missing, boolean done, String what) {
    if (!done) {
      missing.add(what);
    }
  }
}
