package pourwright.work;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Piece;
import pourwright.batch.PieceEvent;
import pourwright.batch.PieceStep;
import pourwright.label.Proof;
import pourwright.material.MaterialBook;

/**
 * What a candle was proved with, and where that which is to be sold differs. What counts as proved
 * is what was burnt: the cards that the samples were made by, and for samples that were never in
 * the books the cards as they stood when the test began.
 */
final class ProvedCandle {
  private final Books books;
  private final MaterialBook materials;

  ProvedCandle(Books books, MaterialBook materials) {
    this.books = books;
    this.materials = materials;
  }

  /**
   * The word that counts on a version of a candle's card: the one on that version, else the latest
   * on an earlier one.
   */
  Optional<BurnTest.Proof> word(String candle, int version) {
    for (int v = version; v >= 1; v--) {
      Optional<BurnTest.Proof> word = books.burns().proof(candle, v);
      if (word.isPresent()) {
        return word;
      }
    }
    return Optional.empty();
  }

  /** Where a candle made by these cards is not proved for sale, in words; empty when it is. */
  List<String> against(CandleCards cards) {
    String code = cards.candle().code();
    int version = cards.candle().version();
    Optional<BurnTest.Proof> word = word(code, version);
    if (word.isEmpty()) {
      return List.of("no word stands behind version " + version + " of this candle's card");
    }
    if (!word.get().proved()) {
      return List.of(
          "the word on version " + word.get().candleVersion() + " of this candle was taken back");
    }
    Proof labelled = cards.combination(materials);
    @Nullable List<String> nearest = null;
    for (Supplier<Proof> burnt : burnt(word.get())) {
      List<String> differences = burnt.get().differences(labelled);
      if (nearest == null || differences.size() < nearest.size()) {
        nearest = differences;
      }
      if (nearest.isEmpty()) {
        break;
      }
    }
    if (nearest == null) {
      return List.of("the cards that the word on this candle stands on are not on file");
    }
    List<String> all = new ArrayList<>(nearest);
    then(word.get())
        .ifPresent(
            then ->
                all.addAll(new ChangedSince(books, materials).of(then, began(word.get()), cards)));
    return all;
  }

  private Instant began(BurnTest.Proof word) {
    Optional<BurnTest> test =
        word.test() == null ? Optional.empty() : books.burns().test(word.test());
    return test.map(BurnTest::startedAt).orElse(word.at());
  }

  private Optional<CandleCards> then(BurnTest.Proof word) {
    return books
        .cards()
        .version(Drawers.CANDLE, word.candle(), word.candleVersion())
        .flatMap(candle -> CandleCards.at(books, candle, began(word)));
  }

  /** The combinations that were burnt for a word, each read when it is asked for. */
  private List<Supplier<Proof>> burnt(BurnTest.Proof word) {
    Optional<CandleCards> then = then(word);
    if (then.isEmpty()) {
      return List.of();
    }
    Long test = word.test();
    List<BurnTest.Sample> samples = test == null ? List.of() : books.burns().samples(test);
    List<Supplier<Proof>> burnt = new ArrayList<>();
    for (BurnTest.Sample sample : samples) {
      Long piece = sample.piece();
      burnt.add(
          () -> (piece == null ? then.get() : made(then.get(), piece)).combination(materials));
    }
    return burnt.isEmpty() ? List.of(() -> then.get().combination(materials)) : burnt;
  }

  /**
   * The cards by which pieces were really made, each set once; the given cards where the pieces'
   * batches do not say.
   */
  List<CandleCards> made(CandleCards cards, List<Long> pieces) {
    Set<CandleCards> made = new LinkedHashSet<>();
    for (long piece : pieces) {
      made.add(made(cards, piece));
    }
    return made.isEmpty() ? List.of(cards) : new ArrayList<>(made);
  }

  private CandleCards made(CandleCards cards, long id) {
    Optional<Piece> piece = books.pieces().piece(id);
    if (piece.isEmpty()) {
      return cards;
    }
    CandleCards named = cards;
    @Nullable Integer pour = null;
    CandleCards.MadeIn cast = CandleCards.MadeIn.BOUGHT;
    for (long number : batchesOf(piece.get())) {
      Optional<BatchPlan> plan = books.batches().batch(number).map(Batch::plan);
      if (plan.isEmpty()) {
        continue;
      }
      if (plan.get().kind() == BatchKind.CAST) {
        int vessel = version(plan.get(), piece.get().vesselDesign());
        cast = new CandleCards.MadeIn(plan.get().card(), plan.get().cardVersion(), vessel);
      } else if (plan.get().card().equals(cards.pour().code())) {
        pour = plan.get().cardVersion();
        named = named(cards, plan.get());
      }
    }
    return named.madeBy(books, pour, cast);
  }

  /** The batch that a piece came out of, and the pours that filled it, the last one last. */
  private Set<Long> batchesOf(Piece piece) {
    Set<Long> batches = new LinkedHashSet<>();
    batches.add(piece.madeIn());
    for (PieceEvent event : books.pieces().events(piece.id())) {
      Long batch = event.batch();
      if (event.step() == PieceStep.POURED && batch != null) {
        batches.remove(batch);
        batches.add(batch);
      }
    }
    return batches;
  }

  /** Version of the vessel's card in the cast that a piece came out of. */
  private static int version(BatchPlan cast, String vessel) {
    return cast.makes().stream()
        .filter(m -> m.design().equals(vessel))
        .map(BatchPlan.Makes::version)
        .findFirst()
        .orElse(1);
  }

  /** The version of the candle's card that a pour was made by. */
  private CandleCards named(CandleCards cards, BatchPlan pour) {
    return pour.makes().stream()
        .filter(m -> m.design().equals(cards.candle().code()))
        .findFirst()
        .flatMap(m -> books.cards().version(Drawers.CANDLE, m.design(), m.version()))
        .map(
            candle ->
                new CandleCards(candle, cards.pour(), cards.vessel(), cards.mix(), cards.finish()))
        .orElse(cards);
  }
}
