package pourwright.work;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.batch.PieceLife;
import pourwright.stock.Amount;
import pourwright.stock.Movement;
import pourwright.stock.Shelf;

/**
 * Takes a deed back by a further deed: its movements are reversed exactly and its other facts no
 * longer count. Undoing an undo does the deed again. Nothing is erased.
 */
public final class Undo {
  private static final String VERB = "undid";
  private final Doing doing;

  Undo(Doing doing) {
    this.doing = doing;
  }

  /**
   * Whether a deed can be taken back at all: a hold is lifted, words on designs, closed books and
   * labels that were printed stand.
   */
  public static boolean serves(Deed deed) {
    return !java.util.List.of(
            PlaceHold.VERB, LiftHold.VERB, RunBurnTest.WORD, CloseBooks.VERB, PrintForSale.VERB)
        .contains(deed.verb());
  }

  /** Undoes, or says what stands on the deed. */
  public Outcome<Deed> run(Act act, long deed) {
    return doing.once(
        act,
        VERB,
        turn -> undo(turn, deed),
        (books, again) -> Doing.known(books.deeds().deed(again.id()), again));
  }

  private static Outcome<Deed> undo(Turn turn, long id) {
    DeedBook deeds = turn.books().deeds();
    Optional<Deed> found = deeds.deed(id);
    if (found.isEmpty()) {
      return Doing.notOnFile("deed " + id);
    }
    Deed target = found.get();
    if (target.undone()) {
      return Outcome.refused(
          Reason.DEED_IS_ALREADY_UNDONE,
          "this was undone already",
          "to do it again, undo that undo in the history");
    }
    if (target.verb().equals(PlaceHold.VERB)) {
      return Outcome.refused(
          Reason.A_NAME_IS_NEEDED,
          "a hold is not undone, it is lifted",
          "lift it on the page of holds, with your name and the reason");
    }
    String first = first(deeds, target).verb();
    if (first.equals(RunBurnTest.WORD) || first.equals(LiftHold.VERB)) {
      return Outcome.refused(
          Reason.A_NAME_IS_NEEDED,
          first.equals(LiftHold.VERB)
              ? "a lifted hold is not undone"
              : "a word on a design is not undone",
          first.equals(LiftHold.VERB)
              ? "place a hold again and say why"
              : "give another word at the test, with your name and the reason");
    }
    if (target.verb().equals(PrintForSale.VERB)) {
      return Outcome.refused(
          Reason.A_NAME_IS_NEEDED,
          "what was printed for sale is not undone",
          "destroy the labels, or hold the pieces they are on");
    }
    if (target.verb().equals(CloseBooks.VERB)) {
      return Outcome.refused(
          Reason.DAY_IS_CLOSED,
          "closed books are not opened again",
          "correct what was wrong; the correction counts in the open year");
    }
    Outcome<Deed> loose = loose(deeds, target);
    if (loose != null) {
      return loose;
    }
    List<Movement> movements = turn.books().lots().ofDeed(id);
    Outcome<Deed> given = givenOn(turn, movements);
    if (given != null) {
      return given;
    }
    Outcome<Deed> shortage = shortage(turn, target, movements);
    if (shortage != null) {
      return shortage;
    }
    Deed deed = turn.undoing(target.subject(), id);
    movements.forEach(m -> turn.books().lots().reverse(m, deed));
    List<Long> touched = flip(turn, target);
    turn.books().pieces().retell(touched);
    chain(turn, target).forEach(d -> turn.books().orders().retellOrdersOf(d));
    for (long piece : touched) {
      Outcome<Deed> broken = broken(turn, piece);
      if (broken != null) {
        return broken;
      }
    }
    return Turn.done(deed, deed);
  }

  /** What a chain of taking back and doing again began with. */
  private static Deed first(DeedBook deeds, Deed target) {
    Deed at = target;
    while (at.undoes() != null) {
      at = deeds.deed(at.undoes()).orElseThrow();
    }
    return at;
  }

  /** Why a deed, or one down the chain, would hang in the air or leave others so. */
  private static @Nullable Outcome<Deed> loose(DeedBook deeds, Deed target) {
    boolean counts = false;
    Deed at = target;
    while (at != null) {
      List<String> sentences = counts ? deeds.missingUnder(at.id()) : deeds.standingOn(at);
      if (!sentences.isEmpty()) {
        return Outcome.refused(
            Reason.LATER_DEEDS_STAND_ON_IT,
            String.join("; ", sentences),
            counts
                ? "bring that back first, in the history"
                : "undo those first, the newest first");
      }
      counts = !counts;
      at = at.undoes() == null ? null : deeds.deed(at.undoes()).orElseThrow();
    }
    return null;
  }

  /** The deed stops counting; what it took back counts again; and so on down the chain. */
  private static List<Long> flip(Turn turn, Deed target) {
    java.util.Set<Long> touched = new java.util.TreeSet<>();
    DeedBook deeds = turn.books().deeds();
    boolean counts = false;
    Deed at = target;
    while (at != null) {
      deeds.setCounting(at.id(), counts);
      touched.addAll(turn.books().pieces().touchedBy(at.id()));
      counts = !counts;
      at = at.undoes() == null ? null : deeds.deed(at.undoes()).orElseThrow();
    }
    return List.copyOf(touched);
  }

  private static List<Long> chain(Turn turn, Deed target) {
    List<Long> chain = new java.util.ArrayList<>();
    Long at = target.id();
    while (at != null) {
      chain.add(at);
      at = turn.books().deeds().deed(at).orElseThrow().undoes();
    }
    return chain;
  }

  /** Why a batch would have put back or given on more than it ever had, if so. */
  private static @Nullable Outcome<Deed> givenOn(Turn turn, List<Movement> movements) {
    java.util.Set<Long> batches = new java.util.TreeSet<>();
    for (Movement movement : movements) {
      if (movement.batch() != null) {
        batches.add(movement.batch());
      }
    }
    for (long batch : batches) {
      java.util.Map<Long, Long> inLot = new java.util.TreeMap<>();
      turn.books()
          .lots()
          .ofBatch(batch)
          .forEach(m -> inLot.merge(m.lot(), m.change().units(), Math::addExact));
      Amount left = CarryRest.left(turn.books(), batch);
      for (Movement m : movements) {
        if (m.batch() != null && m.batch() == batch) {
          inLot.merge(m.lot(), -m.change().units(), Math::addExact);
          left = m.change().kind() == left.kind() ? left.plus(m.change()) : left;
        }
      }
      boolean back = inLot.values().stream().anyMatch(units -> units > 0);
      if (back || left.isNegative()) {
        return Outcome.refused(
            Reason.LATER_DEEDS_STAND_ON_IT,
            back
                ? "part of it was put back into the lot since"
                : "what was left of it went into another pour",
            "undo that first");
      }
    }
    return null;
  }

  /** Why a lot has less than would be taken back, or is used by others, if so. */
  private static @Nullable Outcome<Deed> shortage(
      Turn turn, Deed target, List<Movement> movements) {
    LotBook lots = turn.books().lots();
    java.util.Map<Long, Amount> left = new java.util.TreeMap<>();
    for (Movement movement : movements) {
      Amount before =
          left.computeIfAbsent(
              movement.lot(),
              lot ->
                  lots.shelf(lot).map(Shelf::onHand).orElse(Amount.none(movement.change().kind())));
      left.put(movement.lot(), before.minus(movement.change()));
    }
    java.util.Set<Long> tooShort = new java.util.TreeSet<>(used(turn, target));
    left.forEach(
        (lot, amount) -> {
          if (amount.isNegative()) {
            tooShort.add(lot);
          }
        });
    for (long lot : tooShort) {
      String name =
          lots.shelf(lot)
              .map(s -> s.lot().material() + " lot " + s.lot().code())
              .orElse("lot " + lot);
      return Outcome.refused(
          Reason.LOT_WOULD_GO_NEGATIVE,
          name + " has been used since",
          "undo what used it first, or count the lot");
    }
    return null;
  }

  /** Lots that deeds which stop counting brought, and that others used. */
  private static List<Long> used(Turn turn, Deed target) {
    List<Long> used = new java.util.ArrayList<>();
    boolean counts = false;
    Deed at = target;
    while (at != null) {
      if (!counts) {
        used.addAll(turn.books().deeds().lotsUsed(at.id()));
      }
      counts = !counts;
      at = at.undoes() == null ? null : turn.books().deeds().deed(at.undoes()).orElseThrow();
    }
    return used;
  }

  private static @Nullable Outcome<Deed> broken(Turn turn, long piece) {
    var events = turn.books().pieces().events(piece);
    if (events.isEmpty() || !(PieceLife.told(events) instanceof PieceLife.Told.Broken broken)) {
      return null;
    }
    return Outcome.refused(
        Reason.LATER_DEEDS_STAND_ON_IT,
        "later facts of a piece would not follow: " + broken.sentence(),
        "undo those first, the newest first");
  }
}
