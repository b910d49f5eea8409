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
 * Whether candles may be picked for an order, packed for a market or sold: only where a word for
 * sale stands behind what they were really made of, and no check burn is overdue. The word may be
 * limited; a word that was taken back lets nothing out. Vessels without wax are not asked about.
 *
 * <p>That a new lot waits for its check burn is held by the label: without one it cannot be sold.
 */
final class ForSale {
  private final Books books;
  private final ProvedCandle proved;

  ForSale(Books books) {
    this.books = books;
    this.proved = new ProvedCandle(books, Drawers.materials(books));
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
    Set<String> not = new LinkedHashSet<>();
    Optional<CandleCards> now = CandleCards.now(books, candle);
    if (now.isPresent()) {
      List<Long> ids = pieces.stream().map(Piece::id).toList();
      proved.made(now.get(), ids).forEach(made -> not.addAll(proved.against(made)));
    } else {
      int version =
          books.cards().current(Drawers.CANDLE, candle).map(CardVersion::version).orElse(1);
      Optional<BurnTest.Proof> word = proved.word(candle, version);
      if (word.isEmpty()) {
        not.add("no word stands behind it");
      } else if (!word.get().proved()) {
        not.add("the word on it was taken back");
      }
    }
    new Proving(books).overdue(candle, pours(pieces)).ifPresent(not::add);
    return not;
  }

  /** The pours that candles came out of. */
  static Set<Long> pours(Collection<Piece> pieces) {
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
