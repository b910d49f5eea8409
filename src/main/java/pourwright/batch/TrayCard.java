package pourwright.batch;

import java.util.List;

/**
 * A card that goes with castings from the mold through sanding, while they have no mark of their
 * own on them.
 *
 * @param id the ledger's number
 * @param label what is written on it
 * @param pieces the pieces that lie on it
 * @param mixedUp true when the castings can no longer be told apart; from then on the trace of each
 *     runs through every cast on the tray
 */
public record TrayCard(long id, String label, List<Long> pieces, boolean mixedUp) {

  /** Keeps its own copy. */
  public TrayCard {
    pieces = List.copyOf(pieces);
  }
}
