package pourwright.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.burn.NextTest.Candidate;
import pourwright.burn.NextTest.Foresight;
import pourwright.card.CandleDesign;
import pourwright.material.Material;
import pourwright.material.MaterialKind;

/**
 * The wicks on file as candidates for a candle's next test, with what closed tests say of each: of
 * this vessel with this pour they count whole, of any other candle with the same wick half.
 */
public final class WickCandidates {
  private static final int TESTS = 500;

  private WickCandidates() {}

  /** Passed lives and failed tests. */
  private static final class Tally {
    int passed;
    int failed;
    final int[] like = new int[2];
  }

  /**
   * Candidates for a candle; empty when it is not on file or there is no wick.
   *
   * @param costOfTest the same for each, above 0
   */
  public static List<Candidate> of(Books books, String candle, double costOfTest) {
    Optional<CandleDesign> design =
        books.cards().current(Drawers.CANDLE, candle).map(CardVersion::body);
    if (design.isEmpty()) {
      return List.of();
    }
    Map<String, Tally> tallies = new LinkedHashMap<>();
    for (CardVersion<Material> card : books.cards().all(Drawers.MATERIAL)) {
      if (card.body().kind() == MaterialKind.WICK) {
        tallies.put(card.code(), new Tally());
      }
    }
    for (BurnTest test : books.burns().list(null, null, TESTS).items()) {
      books
          .cards()
          .version(Drawers.CANDLE, test.candle(), test.candleVersion())
          .ifPresent(burnt -> count(books, test, burnt.body(), design.get(), tallies));
    }
    List<Candidate> candidates = new ArrayList<>();
    tallies.forEach(
        (wick, t) ->
            candidates.add(
                new Candidate(wick, t.like, Foresight.NONE, t.passed, t.failed, costOfTest)));
    return candidates;
  }

  private static void count(
      Books books,
      BurnTest test,
      CandleDesign burnt,
      CandleDesign asked,
      Map<String, Tally> tallies) {
    BurnTest.Closed closed = test.closed();
    Tally tally = tallies.get(burnt.wicks().wick());
    if (closed == null || tally == null || closed.verdict().equals("not_enough_evidence")) {
      return;
    }
    boolean same =
        burnt.vessel().equals(asked.vessel())
            && burnt.pour().equals(asked.pour())
            && burnt.wicks().count() == asked.wicks().count();
    boolean passed = closed.verdict().equals("pass");
    int lives = passed ? books.burns().samples(test.id()).size() : 1;
    if (same) {
      tally.passed += passed ? lives : 0;
      tally.failed += passed ? 0 : 1;
    } else {
      tally.like[passed ? 0 : 1] += lives;
    }
  }
}
