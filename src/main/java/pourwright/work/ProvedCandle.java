package pourwright.work;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Piece;
import pourwright.card.CandleDesign;
import pourwright.label.Proof;
import pourwright.material.MaterialBook;
import pourwright.stock.Trace;

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
    List<String> nearest = null;
    for (Proof proved : proved(word.get())) {
      List<String> differences = proved.differences(labelled);
      if (nearest == null || differences.size() < nearest.size()) {
        nearest = differences;
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

  /** The combinations that were burnt for a word. */
  Set<Proof> proved(BurnTest.Proof word) {
    Optional<CardVersion<CandleDesign>> candle =
        books.cards().version(Drawers.CANDLE, word.candle(), word.candleVersion());
    Set<Proof> proved = new LinkedHashSet<>();
    if (candle.isEmpty()) {
      return proved;
    }
    Optional<BurnTest> test =
        word.test() == null ? Optional.empty() : books.burns().test(word.test());
    Instant began = test.map(BurnTest::startedAt).orElse(word.at());
    Optional<CandleCards> then = CandleCards.at(books, candle.get(), began);
    List<BurnTest.Sample> samples =
        test.isEmpty() ? List.of() : books.burns().samples(test.get().id());
    if (then.isEmpty()) {
      return proved;
    }
    for (BurnTest.Sample sample : samples) {
      CandleCards burnt =
          sample.piece() == null ? then.get() : made(then.get(), List.of(sample.piece())).get(0);
      proved.add(burnt.combination(materials));
    }
    if (proved.isEmpty()) {
      proved.add(then.get().combination(materials));
    }
    return proved;
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

  private CandleCards made(CandleCards cards, long piece) {
    CandleCards named = cards;
    Integer pour = null;
    CandleCards.MadeIn cast = CandleCards.MadeIn.BOUGHT;
    for (Batch batch : batchesOf(piece)) {
      BatchPlan plan = batch.plan();
      if (plan.kind() == BatchKind.CAST) {
        cast = new CandleCards.MadeIn(plan.card(), plan.cardVersion(), version(plan, piece));
      } else if (plan.card().equals(cards.pour().code())) {
        pour = plan.cardVersion();
        named = named(cards, plan);
      }
    }
    return named.madeBy(books, pour, cast);
  }

  private List<Batch> batchesOf(long piece) {
    Trace.Node node = new Trace.Node(Trace.Kind.PIECE, piece);
    List<Batch> batches = new ArrayList<>();
    for (long id : Trace.walk(node, books.trace()::back, false).of(Trace.Kind.BATCH)) {
      books.batches().batch(id).ifPresent(batches::add);
    }
    return batches;
  }

  /** Version of the vessel's card in the cast that a piece came out of. */
  private Integer version(BatchPlan cast, long piece) {
    String vessel = books.pieces().piece(piece).map(Piece::vesselDesign).orElse("");
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
