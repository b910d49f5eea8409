package pourwright.work;

import java.util.List;
import java.util.Optional;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.batch.TrayCard;

/** Tray cards: laying pieces on a new one (which splits or merges old ones), marks mixed up. */
public final class ArrangeTrays {
  private static final String LAID = "laid on a tray";
  private static final String MIXED = "mixed up a tray";
  private final Doing doing;

  ArrangeTrays(Doing doing) {
    this.doing = doing;
  }

  /** Lays pieces on a new tray card; they leave the ones they were on. */
  public Outcome<TrayCard> lay(Act act, String label, List<Long> pieces) {
    return doing.once(
        act,
        LAID,
        turn -> {
          Optional<Long> unknown =
              pieces.stream().filter(p -> turn.books().pieces().piece(p).isEmpty()).findFirst();
          if (unknown.isPresent()) {
            return Doing.notOnFile("piece " + unknown.get());
          }
          Optional<Piece> other =
              pieces.stream()
                  .flatMap(p -> turn.books().pieces().piece(p).stream())
                  .filter(p -> !isVessel(p))
                  .findFirst();
          if (other.isPresent()) {
            return Outcome.refused(
                Reason.PIECE_IS_NOT_THERE_YET,
                other.get().mark().text() + " is " + other.get().state().words(),
                "a tray card carries empty vessels that are still here");
          }
          if (pieces.isEmpty() || label.isBlank()) {
            return Outcome.refused(
                Reason.INPUT_CANNOT_BE, "a tray without a label or pieces", "give both");
          }
          Deed deed = turn.deed(Subject.of(Subject.Kind.TRAY, turn.books().pieces().nextTray()));
          return Turn.done(deed, turn.books().pieces().addTray(label, pieces, deed.id()));
        },
        ArrangeTrays::again);
  }

  private static boolean isVessel(Piece piece) {
    boolean away =
        piece.state() instanceof PieceState.Gone || piece.state() instanceof PieceState.CameBack;
    return !away && PieceState.candleOf(piece.state()).isEmpty();
  }

  /**
   * Owns up that the castings on a tray can no longer be told apart. From now on each is traced
   * through every cast on the tray.
   */
  public Outcome<TrayCard> mixUp(Act act, long tray) {
    return doing.once(
        act,
        MIXED,
        turn -> {
          if (turn.books().pieces().tray(tray).isEmpty()) {
            return Doing.notOnFile("tray " + tray);
          }
          Deed deed = turn.deed(Subject.of(Subject.Kind.TRAY, tray));
          turn.books().pieces().mixUp(tray, deed.id());
          return Turn.done(deed, again(turn.books(), deed));
        },
        ArrangeTrays::again);
  }

  private static TrayCard again(Books books, Deed deed) {
    return Doing.known(books.pieces().tray(deed.subject().number()), deed);
  }
}
