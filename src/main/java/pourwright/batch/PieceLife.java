package pourwright.batch;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A piece's life as its facts tell it: the state and the grade after the last of them.
 *
 * @param state where it stands
 * @param grade how good it is, null while it was not sorted
 */
public record PieceLife(PieceState state, @Nullable Grade grade) {

  /** A life told from its facts, or the sentence that stops the tale. */
  public sealed interface Told {
    /** All facts follow from one another. */
    record Life(PieceLife life) implements Told {}

    /** A fact does not follow from those before it. */
    record Broken(PieceEvent at, String sentence) implements Told {}
  }

  /** The beginning: cast, or made by pouring into a bought vessel. */
  public static PieceLife begunBy(PieceEvent first) {
    Instant at = first.at();
    return switch (first.step()) {
      case CAST -> new PieceLife(new PieceState.Green(at), null);
      case POURED ->
          new PieceLife(
              new PieceState.Poured(
                  at,
                  Objects.requireNonNull(first.batch()),
                  Objects.requireNonNull(first.design())),
              null);
      case DRIED -> new PieceLife(new PieceState.Dry(at, Tightness.NONE), null);
      default -> throw new IllegalArgumentException("a life does not begin with " + first.step());
    };
  }

  /** One more fact. A piece sorted as planter or scrap is never poured as a candle. */
  public Move after(PieceEvent event) {
    if (event.step() == PieceStep.POURED && (grade == Grade.PLANTER || grade == Grade.SCRAP)) {
      return new Move.Barred(
          "a piece sorted as " + (grade == Grade.PLANTER ? "planter" : "scrap") + " takes no wick");
    }
    return state.after(event);
  }

  /** Tells a whole life; the facts in the order they were written. */
  public static Told told(List<PieceEvent> events) {
    PieceLife life = begunBy(events.get(0));
    for (PieceEvent event : events.subList(1, events.size())) {
      Move move = life.after(event);
      if (move instanceof Move.Barred barred) {
        return new Told.Broken(event, barred.sentence());
      }
      PieceState state = ((Move.Moved) move).state();
      life = new PieceLife(state, event.grade() == null ? life.grade() : event.grade());
    }
    return new Told.Life(life);
  }
}
