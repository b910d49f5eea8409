package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.batch.BatchKind;
import pourwright.batch.Mark;
import pourwright.batch.Piece;
import pourwright.batch.PieceEvent;
import pourwright.batch.PieceState;
import pourwright.batch.PieceStep;
import pourwright.quantity.Counted;

/** Closes a cast: what came out of the molds becomes green vessels with marks, on a tray card. */
public final class FinishCast {
  private static final String VERB = "finished a cast";
  private final Doing doing;

  FinishCast(Doing doing) {
    this.doing = doing;
  }

  /** So many castings of a vessel design; zero when none came out whole. */
  public record Demolded(String design, int count) {}

  /**
   * The end of a cast.
   *
   * @param batch a running cast
   * @param demolded what came out whole; what broke is left out and said in the note
   * @param tray label of the tray card, null for none
   */
  public record Request(long batch, List<Demolded> demolded, @Nullable String tray) {

    /** Keeps its own copy. */
    public Request {
      demolded = List.copyOf(demolded);
    }
  }

  /** Finishes; gives the vessels. */
  public Outcome<List<Piece>> run(Act act, Request request) {
    return doing.once(
        act,
        VERB,
        turn -> finish(turn, request),
        (books, deed) -> books.pieces().ofBatch(deed.subject().number()));
  }

  private static Outcome<List<Piece>> finish(Turn turn, Request request) {
    Optional<Outcome<List<Piece>>> refusal =
        Finishing.refusal(turn, request.batch(), BatchKind.CAST);
    if (refusal.isPresent()) {
      return refusal.get();
    }
    for (Demolded demolded : request.demolded()) {
      if (demolded.count() < 0 || demolded.count() > 1000) {
        return Outcome.refused(
            Reason.INPUT_CANNOT_BE,
            Counted.of(demolded.count(), "casting of ", "castings of ") + demolded.design(),
            "give how many came out whole, 0 to 1000");
      }
    }
    Deed deed = turn.deed(Subject.of(Subject.Kind.BATCH, request.batch()));
    turn.books().batches().finish(request.batch(), deed);
    List<Long> made = new ArrayList<>();
    for (Demolded demolded : request.demolded()) {
      for (int i = 0; i < demolded.count(); i++) {
        made.add(addGreen(turn, demolded.design(), request.batch(), deed));
      }
    }
    if (request.tray() != null && !made.isEmpty()) {
      turn.books().pieces().addTray(request.tray(), made, deed.id());
    }
    NameMistake.sortByMistakes(turn, request.batch(), made, deed);
    return Turn.done(deed, turn.books().pieces().ofBatch(request.batch()));
  }

  private static long addGreen(Turn turn, String design, long batch, Deed deed) {
    PieceBook pieces = turn.books().pieces();
    long id = pieces.nextId();
    Mark mark = Mark.ofNumber(pieces.nextMark());
    Piece piece =
        new Piece(
            id, mark, design, batch, null, null, null, null, new PieceState.Green(turn.now()));
    pieces.add(
        piece,
        new PieceEvent(0, id, PieceStep.CAST, turn.now(), batch, null, null, null, deed.id()));
    return id;
  }
}
