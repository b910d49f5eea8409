package pourwright.work;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Move;
import pourwright.batch.Piece;
import pourwright.batch.PieceEvent;
import pourwright.batch.PieceLife;
import pourwright.batch.PieceStep;
import pourwright.burn.CycleKind;
import pourwright.quantity.Check;

/**
 * The test shelf: begins a burn test, lights samples, writes down what is seen, ends and closes.
 */
public final class RunBurnTest {
  private static final String BEGAN = "began a burn test";
  private static final String LIT = "lit a sample";
  private static final String LOOKED = "looked at a flame";
  private static final String LOGGED = "read a log of a flame in";
  private static final String ENDED = "put a sample out";
  private static final String CLOSED = "closed a burn test";
  static final String WORD = "gave a word on a design";
  private final Doing doing;

  RunBurnTest(Doing doing) {
    this.doing = doing;
  }

  /**
   * A sample to go on test.
   *
   * @param piece the candle's number; null when it was never in the books
   */
  public record NewSample(String label, @Nullable Long piece) {}

  /**
   * A test to begin.
   *
   * @param candle code of the candle's card, and its version
   * @param rules id of the rule set
   * @param purpose why, in her words
   * @param samples at least one
   */
  public record Request(
      String candle, int candleVersion, String rules, String purpose, List<NewSample> samples) {

    /** Keeps its own copy. */
    public Request {
      samples = List.copyOf(samples);
    }
  }

  /** Begins; candles that are on file leave stock as test. */
  public Outcome<BurnTest> begin(Act act, Request request) {
    return doing.once(
        act,
        BEGAN,
        turn -> begin(turn, request),
        (books, deed) -> Doing.known(books.burns().test(deed.subject().number()), deed));
  }

  private static Outcome<BurnTest> begin(Turn turn, Request request) {
    if (request.samples().isEmpty()) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE, "a burn test without a sample", "give at least one candle");
    }
    for (NewSample sample : request.samples()) {
      if (sample.piece() != null) {
        Outcome<BurnTest> bar = bar(turn, sample.piece());
        if (bar != null) {
          return bar;
        }
      }
    }
    long id = turn.books().burns().nextId();
    Deed deed = turn.deed(Subject.of(Subject.Kind.BURN_TEST, id));
    BurnTest test =
        new BurnTest(
            id,
            request.candle(),
            request.candleVersion(),
            request.rules(),
            request.purpose(),
            turn.now(),
            turn.act().by(),
            null,
            deed.id());
    turn.books().burns().add(test);
    for (NewSample sample : request.samples()) {
      turn.books().burns().addSample(id, sample.label(), sample.piece(), deed.id());
      if (sample.piece() != null) {
        turn.books().pieces().append(tested(turn, sample.piece(), deed.id()));
      }
    }
    return Turn.done(deed, test);
  }

  private static PieceEvent tested(Turn turn, long piece, long deed) {
    return new PieceEvent(0, piece, PieceStep.TESTED, turn.now(), null, null, null, null, deed);
  }

  private static @Nullable Outcome<BurnTest> bar(Turn turn, long id) {
    Optional<Piece> piece = turn.books().pieces().piece(id);
    if (piece.isEmpty()) {
      return Doing.notOnFile("piece " + id);
    }
    Move move = new PieceLife(piece.get().state(), piece.get().grade()).after(tested(turn, id, 0));
    return move instanceof Move.Barred barred
        ? Outcome.refused(
            Reason.PIECE_IS_NOT_THERE_YET,
            piece.get().mark().text() + ": " + barred.sentence(),
            "test candles that have been put to rest")
        : null;
  }

  /** Lights a sample: a new cycle of the usual kind begins. */
  public Outcome<BurnTest.Cycle> light(Act act, long test, long sample) {
    return light(act, test, sample, CycleKind.USUAL);
  }

  /** Lights a sample; what a cycle of another kind is for stands on its first look. */
  public Outcome<BurnTest.Cycle> light(Act act, long test, long sample, CycleKind kind) {
    return light(act, test, sample, kind, null);
  }

  /**
   * The same with what was measured before lighting.
   *
   * @param before mass after the trim and the base's temperature, at minute 0; null for nothing
   */
  public Outcome<BurnTest.Cycle> light(
      Act act, long test, long sample, CycleKind kind, BurnTest.@Nullable Look before) {
    return doing.once(
        act,
        LIT,
        turn -> {
          BurnBook burns = turn.books().burns();
          if (burns.samples(test).stream().noneMatch(s -> s.id() == sample)) {
            return Doing.notOnFile("sample " + sample);
          }
          if (burns.cycles(sample).stream().anyMatch(c -> c.endedAt() == null)) {
            return Outcome.refused(
                Reason.INPUT_CANNOT_BE, "the sample burns already", "put it out first");
          }
          Deed deed = turn.deed(Subject.of(Subject.Kind.BURN_TEST, test));
          BurnTest.Cycle cycle = burns.light(sample, turn.now(), deed.id());
          if (kind.isMisuse()) {
            burns.append(cycle.id(), BurnTest.Look.noted(0, kind.note()), deed);
          }
          if (before != null) {
            burns.append(cycle.id(), before, deed);
          }
          return Turn.done(deed, cycle);
        },
        (books, deed) ->
            Doing.known(books.burns().cycles(sample).stream().reduce((first, last) -> last), deed));
  }

  /** Writes down what is seen at one minute of a cycle. */
  public Outcome<BurnTest.Seen> look(Act act, long cycle, BurnTest.Look look) {
    return doing.once(
        act,
        LOOKED,
        turn -> {
          Check.between("minute", look.minute(), 0, 60 * 24 * 14);
          if (turn.books().burns().cycle(cycle).isEmpty()) {
            return Doing.notOnFile("cycle " + cycle);
          }
          Deed deed =
              turn.deed(
                  Subject.of(Subject.Kind.BURN_TEST, turn.books().burns().testOfCycle(cycle)));
          return Turn.done(deed, turn.books().burns().append(cycle, look, deed));
        },
        (books, deed) -> Doing.known(books.burns().ofDeed(deed.id()).stream().findFirst(), deed));
  }

  /** Writes down a whole log of a cycle, in one deed; {@link BurnLog} reads it. */
  public Outcome<List<BurnTest.Seen>> log(Act act, long cycle, List<BurnTest.Look> looks) {
    return doing.once(
        act,
        LOGGED,
        turn -> {
          if (turn.books().burns().cycle(cycle).isEmpty()) {
            return Doing.notOnFile("cycle " + cycle);
          }
          Deed deed =
              turn.deed(
                  Subject.of(Subject.Kind.BURN_TEST, turn.books().burns().testOfCycle(cycle)));
          return Turn.done(
              deed, looks.stream().map(l -> turn.books().burns().append(cycle, l, deed)).toList());
        },
        (books, deed) -> books.burns().ofDeed(deed.id()));
  }

  /** Puts a sample out. */
  public Outcome<BurnTest.Cycle> putOut(Act act, long cycle, String how) {
    return doing.once(
        act,
        ENDED,
        turn -> {
          BurnBook burns = turn.books().burns();
          Optional<BurnTest.Cycle> burning = burns.cycle(cycle);
          if (burning.isEmpty()) {
            return Doing.notOnFile("cycle " + cycle);
          }
          if (burning.get().endedAt() != null) {
            return Outcome.refused(
                Reason.IT_IS_ALREADY_ANSWERED, "the sample is out", "nothing more to do");
          }
          Deed deed = turn.deed(Subject.of(Subject.Kind.BURN_TEST, burns.testOfCycle(cycle)));
          burns.end(cycle, how, turn.now(), deed.id());
          return Turn.done(deed, Doing.known(burns.cycle(cycle), deed));
        },
        (books, deed) -> Doing.known(books.burns().cycle(cycle), deed));
  }

  /**
   * Closes a test with its verdict.
   *
   * @param verdict pass, fail or not_enough_evidence
   * @param reasons what it rests on, one a line
   */
  public Outcome<BurnTest> close(Act act, long test, String verdict, String reasons) {
    return doing.once(
        act,
        CLOSED,
        turn -> {
          Optional<BurnTest> open = turn.books().burns().test(test);
          if (open.isEmpty()) {
            return Doing.notOnFile("burn test " + test);
          }
          if (open.get().closed() != null) {
            return Outcome.refused(
                Reason.IT_IS_ALREADY_ANSWERED, "the test is closed", "nothing more to do");
          }
          if (!List.of("pass", "fail", "not_enough_evidence").contains(verdict)) {
            return Outcome.refused(
                Reason.INPUT_CANNOT_BE,
                "'" + verdict + "' is not a verdict",
                "use pass, fail or not_enough_evidence");
          }
          Deed deed = turn.deed(Subject.of(Subject.Kind.BURN_TEST, test));
          BurnTest.Closed closed =
              new BurnTest.Closed(verdict, reasons, turn.now(), turn.act().by());
          turn.books().burns().close(test, closed, deed.id());
          return Turn.done(deed, Doing.known(turn.books().burns().test(test), deed));
        },
        (books, deed) -> Doing.known(books.burns().test(test), deed));
  }

  /**
   * A maker's word, under her name.
   *
   * @param test the test it rests on; needed to prove, not to take back
   * @param proved true for sale, false to take that back
   * @param statement her words
   */
  public record Word(
      String candle, int candleVersion, @Nullable Long test, boolean proved, String statement) {}

  /**
   * Gives a word on a design; proving needs a test of that design that was closed as passed, and
   * all that her rule of proof asks for.
   */
  public Outcome<BurnTest.Proof> word(Act act, Word word) {
    return doing.once(
        act,
        WORD,
        turn -> {
          Optional<Outcome<BurnTest.Proof>> learner =
              word.proved() ? Learner.bar(turn, "prove for sale") : Optional.empty();
          if (learner.isPresent()) {
            return learner.get();
          }
          Optional<BurnTest> test =
              word.test() == null ? Optional.empty() : turn.books().burns().test(word.test());
          if (word.proved() && !proves(test, word)) {
            return Outcome.refused(
                Reason.INPUT_CANNOT_BE,
                "no passed burn test of " + word.candle() + " stands behind this",
                "close a test of this version with a pass first");
          }
          List<String> missing =
              word.proved()
                  ? new Proving(turn.books()).missing(word.candle(), word.candleVersion())
                  : List.of();
          if (!missing.isEmpty()) {
            return Outcome.refused(
                Reason.INPUT_CANNOT_BE,
                "not proved yet: " + String.join("; ", missing),
                "burn what is missing, or change your rule of proof on the test shelf");
          }
          Deed deed = turn.deed(new Subject(Subject.Kind.CARD, "candle/" + word.candle()));
          BurnTest.Proof proof =
              new BurnTest.Proof(
                  0,
                  word.candle(),
                  word.candleVersion(),
                  word.test(),
                  word.proved(),
                  word.statement(),
                  turn.now(),
                  turn.act().by(),
                  deed.id());
          return Turn.done(deed, turn.books().burns().append(proof));
        },
        (books, deed) ->
            Doing.known(books.burns().proof(word.candle(), word.candleVersion()), deed));
  }

  private static boolean proves(Optional<BurnTest> test, Word word) {
    if (test.isEmpty()) {
      return false;
    }
    BurnTest.Closed closed = test.get().closed();
    return test.get().candle().equals(word.candle())
        && test.get().candleVersion() == word.candleVersion()
        && closed != null
        && closed.verdict().equals("pass");
  }
}
