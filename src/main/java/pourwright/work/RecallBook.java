package pourwright.work;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where pieces stand and who has them, many at once. */
public interface RecallBook {

  /**
   * A piece and who has it.
   *
   * @param design the candle's code once it was poured, else the vessel's
   * @param state state code, as lists use it
   * @param lastStep code of the last thing that happened to it
   * @param lastAt when
   * @param order number of the order it was picked or sold for
   * @param channel that order's channel
   * @param customerRef the reference the order holds
   * @param customer the name behind it, null once erased or where none was known
   */
  record Whereabouts(
      long piece,
      long mark,
      String design,
      String state,
      String lastStep,
      Instant lastAt,
      @Nullable String order,
      @Nullable String channel,
      @Nullable String customerRef,
      @Nullable String customer) {}

  /** Numbers of the pieces that a card made: vessel, candle, mix or pour. */
  List<Long> ofCard(String drawer, String code);

  /** Numbers of the pieces that stand picked for an order. */
  List<Long> pickedFor(String order);

  /** Numbers of the pieces that stand picked for an order line, the oldest first. */
  List<Long> pickedForLine(long line);

  /** Numbers of the pieces of a design in a state, the oldest first, at most so many. */
  List<Long> standing(String design, String state, int most);

  /** How many candles of each design wait to be sold that were poured before a moment. */
  java.util.Map<String, Integer> pouredBefore(Instant moment);

  /** How many pieces of each design are in a state. */
  java.util.Map<String, Integer> counts(String state);

  /** Where the given pieces are, by number. */
  List<Whereabouts> of(Collection<Long> pieces);
}
