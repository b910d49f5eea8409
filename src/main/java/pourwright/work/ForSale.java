package pourwright.work;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;

/**
 * Whether candles may be labelled for sale, picked for an order, packed for a market, left with a
 * shop, sold or sent: only where a word for sale stands behind what they were really made of, no
 * check burn is overdue, and every lot of wax, oil and wick in them was burnt once. The label and
 * every way out ask {@link #against}. The word may be limited; a word that was taken back lets
 * nothing out. Vessels without wax are not asked about.
 *
 * <p>Nobody signs past it: what lifts a lot's hold is its check burn.
 */
final class ForSale {
  private final Books books;
  private final ProvedCandle proved;

  ForSale(Books books) {
    this(books, new ProvedCandle(books, Drawers.materials(books)));
  }

  /** With what was read of the proof already. */
  ForSale(Books books, ProvedCandle proved) {
    this.books = books;
    this.proved = proved;
  }

  /** A refusal where one of these pieces may not be sold as a candle, else null. */
  static <T> @Nullable Outcome<T> refusal(Books books, Collection<Piece> pieces) {
    List<String> bars = new ForSale(books).bars(pieces);
    return bars.isEmpty()
        ? null
        : Outcome.refused(
            Reason.NOT_PROVED_FOR_SALE,
            String.join("; ", bars),
            "burn what is missing and sign on the test shelf; till then it is a test piece");
  }

  /** Why these pieces may not be sold, a sentence for each candle; empty where they may. */
  List<String> bars(Collection<Piece> pieces) {
    Map<String, List<Piece>> byCandle = new LinkedHashMap<>();
    for (Piece piece : pieces) {
      piece.candle().ifPresent(c -> byCandle.computeIfAbsent(c, x -> new ArrayList<>()).add(piece));
    }
    List<String> bars = new ArrayList<>();
    byCandle.forEach(
        (candle, of) -> {
          Set<String> not = not(candle, of);
          if (!not.isEmpty()) {
            bars.add(candle + " is not proved for sale: " + String.join(", ", not));
          }
        });
    return bars;
  }

  private Set<String> not(String candle, List<Piece> pieces) {
    Optional<CandleCards> now = CandleCards.now(books, candle);
    if (now.isPresent()) {
      List<Long> ids = pieces.stream().map(Piece::id).toList();
      return against(candle, proved.made(now.get(), ids), pieces);
    }
    Set<String> not = new LinkedHashSet<>();
    int version = books.cards().current(Drawers.CANDLE, candle).map(CardVersion::version).orElse(1);
    Optional<BurnTest.Proof> word = proved.word(candle, version);
    if (word.isEmpty()) {
      not.add("no word stands behind it");
    } else if (!word.get().proved()) {
      not.add("the word on it was taken back");
    }
    not.addAll(checkBurns(candle, pieces));
    return not;
  }

  /**
   * What stands against selling a candle, in words; empty where nothing does.
   *
   * @param made the cards by which the pieces were really made, those of today for a design alone
   * @param pieces what is to be sold, or none for the design alone with all its pours
   */
  Set<String> against(String candle, List<CandleCards> made, Collection<Piece> pieces) {
    Set<String> not = new LinkedHashSet<>();
    made.forEach(m -> not.addAll(proved.against(m)));
    not.addAll(checkBurns(candle, pieces));
    return not;
  }

  /** The check burns that these wait for: one of every so many pours, one of every new lot. */
  private List<String> checkBurns(String candle, Collection<Piece> pieces) {
    Proving proving = new Proving(books);
    List<String> waits = new ArrayList<>();
    proving.overdue(candle, pieces.isEmpty() ? null : pours(pieces)).ifPresent(waits::add);
    waits.addAll(proving.freshLotsOf(pieces.stream().map(Piece::id).toList()));
    return waits;
  }

  /** The pours that candles came out of. */
  private static Set<Long> pours(Collection<Piece> pieces) {
    Set<Long> pours = new LinkedHashSet<>();
    for (Piece piece : pieces) {
      PieceState state = piece.state();
      PieceState filled = state instanceof PieceState.Picked picked ? picked.before() : state;
      if (filled instanceof PieceState.Rested rested) {
        pours.add(rested.pour());
      } else if (filled instanceof PieceState.Resting resting) {
        pours.add(resting.pour());
      } else if (filled instanceof PieceState.Poured poured) {
        pours.add(poured.pour());
      }
    }
    return pours;
  }
}
