package pourwright.work;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Holds. */
public interface HoldBook {

  /** The number that the next hold gets. */
  long nextId();

  /** A hold by number. */
  Optional<Hold> hold(long id);

  /** Holds that stand, oldest first. */
  List<Hold> standing();

  /** Holds on one thing, newest first, lifted ones too. */
  List<Hold> on(Subject subject);

  /** All holds, newest first. */
  PageOf<Hold> list(@Nullable String after, int limit);

  /**
   * The holds that stop a piece: on its mark, its designs, a lot it is made of (through every cast
   * of a mixed-up tray), or a card of its batches.
   */
  List<Hold> stopping(long piece);

  /** Every piece that some standing hold stops: those with an answer to {@link #stopping}. */
  Set<Long> stopped();

  /** Adds a hold. Only inside a write. */
  void add(Hold hold);

  /** Lifts a hold. Only inside a write. */
  void lift(long hold, String name, String reason, Deed deed);
}
