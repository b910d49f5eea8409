package pourwright.batch;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where a vessel or candle stands. Each state is a type and only the right state has the verb: what
 * is not {@link Dry} cannot be poured into. {@link #after} is the same walk for recorded facts; it
 * answers with a sentence where the types would not compile.
 */
public sealed interface PieceState {

  /** When it came to stand here. */
  Instant since();

  /** The words a person reads. */
  String words();

  /** The short name that lists and files use. */
  default String code() {
    return getClass().getSimpleName();
  }

  /** What it holds for certain, for a vessel that is still empty. */
  default Tightness tightness() {
    return Tightness.NONE;
  }

  /** Out of the studio, still known by what it was. */
  private static Gone gone(PieceState from, PieceEvent event) {
    return new Gone(event.at(), event.step(), candleOf(from).orElse(null), lineFor(from, event));
  }

  /** Where it stands after one more fact, or why that fact cannot be. */
  default Move after(PieceEvent event) {
    return switch (event.step()) {
      case GRADED -> new Move.Moved(this);
      case SCRAPPED -> new Move.Moved(gone(this, event));
      default ->
          new Move.Barred(
              "a piece that is " + words() + " cannot be " + event.step().words() + " next");
    };
  }

  /** Cast and demolded, hardening. */
  record Green(Instant since) implements PieceState {
    /** Hardened damp. */
    public Hardened hardened(Instant at) {
      return new Hardened(at);
    }

    @Override
    public String words() {
      return "green";
    }

    @Override
    public Move after(PieceEvent event) {
      return switch (event.step()) {
        case HARDENED -> new Move.Moved(hardened(event.at()));
        case WETTED -> new Move.Moved(this);
        default -> PieceState.super.after(event);
      };
    }
  }

  /** Hard and still damp. */
  record Hardened(Instant since) implements PieceState {
    /** At constant mass. */
    public Dry dried(Instant at) {
      return new Dry(at, Tightness.NONE);
    }

    @Override
    public String words() {
      return "hardened";
    }

    @Override
    public Move after(PieceEvent event) {
      return switch (event.step()) {
        case DRIED -> new Move.Moved(dried(event.at()));
        case WETTED -> new Move.Moved(this);
        default -> PieceState.super.after(event);
      };
    }
  }

  /** At constant mass: may be sealed, tested, wicked and poured into. */
  record Dry(Instant since, Tightness tightness) implements PieceState {
    /** Wet again; it has to dry before anything else. */
    public Damp wetted(Instant at) {
      return new Damp(at, tightness);
    }

    /** A fresh coat: nothing that was proved before holds for it, and it has to dry. */
    public Damp sealed(Instant at) {
      return new Damp(at, Tightness.NONE);
    }

    /** Held water for a day, and is damp from it. */
    public Damp heldWater(Instant at) {
      return new Damp(at, tightness == Tightness.WAX ? Tightness.WAX : Tightness.WATER);
    }

    /** Filled with scented wax to see whether it seeps. */
    public SeepTesting seepTest(Instant at) {
      return new SeepTesting(at);
    }

    /** Poured as a candle. */
    public Poured poured(Instant at, long pour, String candle) {
      return new Poured(at, pour, candle);
    }

    @Override
    public String words() {
      return switch (tightness) {
        case NONE -> "dry";
        case WATER -> "dry and water-tight";
        case WAX -> "dry and wax-tight";
      };
    }

    @Override
    public Move after(PieceEvent event) {
      Instant at = event.at();
      return switch (event.step()) {
        case DRIED -> new Move.Moved(this);
        case WETTED -> new Move.Moved(wetted(at));
        case SEALED -> new Move.Moved(sealed(at));
        case HELD_WATER -> new Move.Moved(heldWater(at));
        case LEAKED -> new Move.Moved(new Damp(at, Tightness.NONE));
        case SEEP_TEST -> new Move.Moved(seepTest(at));
        case POURED -> new Move.Moved(poured(at, batchOf(event), designOf(event)));
        case PICKED -> new Move.Moved(new Picked(at, lineOf(event), this));
        case SOLD, GIVEN -> new Move.Moved(gone(this, event));
        default -> PieceState.super.after(event);
      };
    }
  }

  /** Wet again, whatever was proved of it before. */
  record Damp(Instant since, Tightness tightness) implements PieceState {
    /** At constant mass again. */
    public Dry dried(Instant at) {
      return new Dry(at, tightness);
    }

    @Override
    public String words() {
      return tightness == Tightness.NONE ? "damp" : "proved tight, damp again";
    }

    @Override
    public Move after(PieceEvent event) {
      return switch (event.step()) {
        case DRIED -> new Move.Moved(dried(event.at()));
        case WETTED -> new Move.Moved(this);
        case LEAKED -> new Move.Moved(new Damp(event.at(), Tightness.NONE));
        case HELD_WATER ->
            new Move.Moved(
                new Damp(event.at(), tightness == Tightness.NONE ? Tightness.WATER : tightness));
        default -> PieceState.super.after(event);
      };
    }
  }

  /** Stands on paper with scented wax in it. */
  record SeepTesting(Instant since) implements PieceState {
    /** The paper stayed clean. */
    public Dry heldWax(Instant at) {
      return new Dry(at, Tightness.WAX);
    }

    @Override
    public String words() {
      return "on a seep test";
    }

    @Override
    public Move after(PieceEvent event) {
      return switch (event.step()) {
        case HELD_WAX -> new Move.Moved(heldWax(event.at()));
        case LEAKED -> new Move.Moved(new Dry(event.at(), Tightness.NONE));
        default -> PieceState.super.after(event);
      };
    }
  }

  /** Poured, not yet set and trimmed. */
  record Poured(Instant since, long pour, String candle) implements PieceState {
    @Override
    public String words() {
      return "poured";
    }

    @Override
    public Move after(PieceEvent event) {
      return switch (event.step()) {
        case RESTING -> new Move.Moved(new Resting(event.at(), pour, candle));
        default -> PieceState.super.after(event);
      };
    }
  }

  /** Set, trimmed and put aside until it may be tested or sold. */
  record Resting(Instant since, long pour, String candle) implements PieceState {
    @Override
    public String words() {
      return "resting";
    }

    @Override
    public Move after(PieceEvent event) {
      return switch (event.step()) {
        case RESTED -> new Move.Moved(new Rested(event.at(), pour, candle));
        case TESTED -> new Move.Moved(gone(this, event));
        default -> PieceState.super.after(event);
      };
    }
  }

  /** Rested: may go on test, be picked, sold or given. */
  record Rested(Instant since, long pour, String candle) implements PieceState {
    @Override
    public String words() {
      return "rested";
    }

    @Override
    public Move after(PieceEvent event) {
      return switch (event.step()) {
        case PICKED -> new Move.Moved(new Picked(event.at(), lineOf(event), this));
        case TESTED, SOLD, GIVEN -> new Move.Moved(gone(this, event));
        default -> PieceState.super.after(event);
      };
    }
  }

  /** Put aside for an order line. */
  record Picked(Instant since, long orderLine, PieceState before) implements PieceState {
    @Override
    public String words() {
      return "picked";
    }

    @Override
    public Move after(PieceEvent event) {
      return switch (event.step()) {
        case UNPICKED -> new Move.Moved(before);
        case SOLD -> new Move.Moved(gone(this, event));
        default -> PieceState.super.after(event);
      };
    }
  }

  /** No longer in the studio. */
  record Gone(Instant since, PieceStep how, @Nullable String candle, @Nullable Long orderLine)
      implements PieceState {
    @Override
    public String words() {
      return how.words();
    }

    @Override
    public Move after(PieceEvent event) {
      if (event.step() == PieceStep.CAME_BACK && how == PieceStep.SOLD) {
        return new Move.Moved(new CameBack(event.at(), candle));
      }
      return new Move.Barred("the piece is gone (" + how.words() + ")");
    }
  }

  /** Came back from a buyer: looked over, then scrapped or refilled under a new mark. */
  record CameBack(Instant since, @Nullable String candle) implements PieceState {
    @Override
    public String words() {
      return "come back";
    }

    @Override
    public Move after(PieceEvent event) {
      return event.step() == PieceStep.REFILLED
          ? new Move.Moved(gone(this, event))
          : PieceState.super.after(event);
    }
  }

  /** The order line that a piece was picked for or left with. */
  static Optional<Long> orderLineOf(PieceState state) {
    if (state instanceof Picked picked) {
      return Optional.of(picked.orderLine());
    }
    return state instanceof Gone gone ? Optional.ofNullable(gone.orderLine()) : Optional.empty();
  }

  private static @Nullable Long lineFor(PieceState from, PieceEvent event) {
    if (event.step() != PieceStep.SOLD) {
      return null;
    }
    return event.orderLine() != null ? event.orderLine() : orderLineOf(from).orElse(null);
  }

  /** Code of the candle's card, for a state that knows it. */
  static Optional<String> candleOf(PieceState state) {
    if (state instanceof Poured poured) {
      return Optional.of(poured.candle());
    }
    if (state instanceof Resting resting) {
      return Optional.of(resting.candle());
    }
    if (state instanceof Rested rested) {
      return Optional.of(rested.candle());
    }
    if (state instanceof Picked picked) {
      return candleOf(picked.before());
    }
    if (state instanceof Gone gone) {
      return Optional.ofNullable(gone.candle());
    }
    return state instanceof CameBack back ? Optional.ofNullable(back.candle()) : Optional.empty();
  }

  private static long batchOf(PieceEvent event) {
    return given(event.batch(), "a batch");
  }

  private static String designOf(PieceEvent event) {
    return given(event.design(), "a candle design");
  }

  private static long lineOf(PieceEvent event) {
    return given(event.orderLine(), "an order line");
  }

  private static <T> T given(@Nullable T value, String what) {
    if (value == null) {
      throw new IllegalArgumentException("the fact names no " + what);
    }
    return value;
  }
}
