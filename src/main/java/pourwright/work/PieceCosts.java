package pourwright.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pourwright.batch.PieceEvent;
import pourwright.batch.PieceStep;
import pourwright.card.CardBook;
import pourwright.card.CardKind;
import pourwright.cost.Shares;
import pourwright.quantity.OutOfRange;

/**
 * What the materials in each piece cost, to the cent: what a batch drew is shared over the pieces
 * that came out of it or were poured in it, equally where they are of one design, by what each
 * takes where they are not. Hands are not in it: this is what the books carry, not what the slate
 * asks.
 *
 * @param byPiece cents by piece number
 * @param withoutPieces cents by batch of which no piece came
 */
public record PieceCosts(Map<Long, Long> byPiece, Map<Long, Long> withoutPieces) {

  /** A piece in a batch, by the design that counts there: vessel when cast, candle when poured. */
  private record Member(long piece, String design) {}

  /**
   * Shares the batches' costs out.
   *
   * @param batches what each batch drew, in cents
   */
  static PieceCosts of(Books books, Map<Long, Long> batches, List<PieceEvent> passages) {
    Map<Long, Map<Long, String>> members = new TreeMap<>();
    for (AccountBook.Made made : books.accounts().pieces()) {
      if (made.refillOf() != null) {
        continue; // the same stone under a new mark: its cast is paid
      }
      members
          .computeIfAbsent(made.madeIn(), b -> new TreeMap<>())
          .put(made.piece(), made.vesselDesign());
    }
    for (PieceEvent event : passages) {
      if (event.step() == PieceStep.POURED && event.batch() != null && event.design() != null) {
        members
            .computeIfAbsent(event.batch(), b -> new TreeMap<>())
            .put(event.piece(), event.design());
      }
    }
    Weights weights = new Weights(Drawers.book(books));
    Map<Long, Long> byPiece = new HashMap<>();
    Map<Long, Long> without = new TreeMap<>();
    batches.forEach(
        (batch, minor) -> {
          List<Member> all = new ArrayList<>();
          members
              .getOrDefault(batch, Map.of())
              .forEach((piece, design) -> all.add(new Member(piece, design)));
          if (all.isEmpty()) {
            without.put(batch, minor);
            return;
          }
          List<Long> shares = Shares.of(minor, weights.of(all));
          for (int i = 0; i < shares.size(); i++) {
            byPiece.merge(all.get(i).piece(), shares.get(i), Math::addExact);
          }
        });
    return new PieceCosts(byPiece, without);
  }

  /** Cost of a piece in cents; 0 when nothing was drawn for it. */
  long of(long piece) {
    return byPiece.getOrDefault(piece, 0L);
  }

  /** How much of a mixing or a pitcher a design takes. */
  private static final class Weights {
    private final CardBook cards;
    private final Map<String, Double> known = new HashMap<>();

    Weights(CardBook cards) {
      this.cards = cards;
    }

    List<Double> of(List<Member> members) {
      boolean alike = members.stream().map(Member::design).distinct().count() == 1;
      return members.stream()
          .map(m -> alike ? 1.0 : known.computeIfAbsent(m.design(), this::takes))
          .toList();
    }

    private double takes(String design) {
      try {
        return cards.find(CardKind.CANDLE, design).isPresent()
            ? cards.candle(design).resolve(cards).netG().value()
            : cards.find(CardKind.VESSEL, design).isPresent()
                ? cards.vessel(design).hollow().wallMl()
                : 1.0;
      } catch (OutOfRange e) {
        return 1.0;
      }
    }
  }
}
