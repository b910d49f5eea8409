package pourwright.work;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Burn tests, their samples, cycles and readings, and proofs for sale. */
public interface BurnBook {

  /** The number that the next test gets. */
  long nextId();

  /** A test by number. */
  Optional<BurnTest> test(long id);

  /** Tests newest first, of one candle when it is given. */
  PageOf<BurnTest> list(@Nullable String candle, @Nullable String after, int limit);

  /** Tests that are not closed, the oldest first. */
  List<BurnTest> open();

  /** Tests that a piece was a sample of, oldest first. */
  List<BurnTest> ofPiece(long piece);

  /** Pieces that were samples of tests closed as passed. */
  List<Long> passedPieces();

  /**
   * Those of some lots that were weighed into the very batch of a sample of a passed test. A lot
   * that came into one by a carried rest is not among them: the trace knows it.
   */
  Set<Long> weighedIntoPassed(Collection<Long> lots);

  /**
   * The pours of each candle, by the numbers of their batches and the oldest first, that came after
   * the newest one that a passed test has burnt. Where no sample of its passed tests was ever in
   * the books, those after the first of these tests began. Candles without a passed test, or
   * without a pour since, are left out.
   *
   * @param candle code of one candle's card, or null for all of them
   */
  Map<String, List<Long>> poursSinceBurnt(@Nullable String candle);

  /** Samples of a test. */
  List<BurnTest.Sample> samples(long test);

  /** Cycles of a sample. */
  List<BurnTest.Cycle> cycles(long sample);

  /** A cycle by number. */
  Optional<BurnTest.Cycle> cycle(long id);

  /** The test that a cycle belongs to. */
  long testOfCycle(long cycle);

  /** Cycles that burn now. */
  List<BurnTest.Cycle> burning();

  /** What was seen in a cycle, in the order of minutes. */
  List<BurnTest.Seen> seen(long cycle);

  /**
   * Longest cycle, hottest wall and shortest life of a sample over the passed tests of a version.
   *
   * @param hours of the longest cycle that was put out; null without one
   * @param wallC the hottest wall; null where none was read
   * @param lifeH the shortest time that a sample burnt in all; null without one
   */
  record Extremes(@Nullable Double hours, @Nullable Double wallC, @Nullable Double lifeH) {}

  /** What the passed tests of a version of a candle's card have shown. */
  Extremes extremes(String candle, int candleVersion);

  /** The looks that a deed wrote down. */
  List<BurnTest.Seen> ofDeed(long deed);

  /** The word that counts now on a version of a candle's card. */
  Optional<BurnTest.Proof> proof(String candle, int candleVersion);

  /**
   * A word that changes whenever a fact of the test shelf is written, or any deed is taken back or
   * counts again.
   */
  String edition();

  /** Adds a test. Only inside a write. */
  void add(BurnTest test);

  /** Adds a sample. Only inside a write. */
  BurnTest.Sample addSample(long test, String label, @Nullable Long piece, long deed);

  /** Lights a sample. Only inside a write. */
  BurnTest.Cycle light(long sample, Instant at, long deed);

  /** Writes down a look. Only inside a write. */
  BurnTest.Seen append(long cycle, BurnTest.Look look, Deed deed);

  /** Ends a cycle. Only inside a write. */
  void end(long cycle, String how, Instant at, long deed);

  /** Closes a test. Only inside a write. */
  void close(long test, BurnTest.Closed closed, long deed);

  /** Writes down a word for or against. Only inside a write. */
  BurnTest.Proof append(BurnTest.Proof proof);
}
