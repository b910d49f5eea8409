package pourwright.main;

import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import pourwright.burn.BurnRules;
import pourwright.card.CandleDesign;
import pourwright.work.BurnTest;
import pourwright.work.Proving;
import pourwright.work.RunBurnTest;

/** Burn tests of the demo studio: most pass, some fail, and a word follows a pass. */
final class DemoTests {
  private static final int CYCLES = 3;

  private final DemoHistory history;
  private final DemoMaking making;
  private final Set<String> checking = new HashSet<>();

  DemoTests(DemoHistory history, DemoMaking making) {
    this.history = history;
    this.making = making;
  }

  /** Puts up to three candles of a design on test, where they stand on the shelf. */
  void begin(CandleDesign design, boolean fails) {
    Deque<Long> shelf = making.shelf(design.code());
    if (shelf.isEmpty()) {
      return;
    }
    List<RunBurnTest.NewSample> samples = new ArrayList<>();
    for (int i = 0; i < 3 && !shelf.isEmpty(); i++) {
      samples.add(new RunBurnTest.NewSample("" + (char) ('A' + i), shelf.removeFirst()));
    }
    BurnTest test =
        history
            .studio()
            .burnTests
            .begin(
                history.act(),
                new RunBurnTest.Request(
                    design.code(), 1, "house", fails ? "a taller wick" : "for sale", samples))
            .made();
    next(test, placed(test), 1, fails);
  }

  /** Burns the youngest candle of a design that is proved already, unless one burns. */
  void check(String design) {
    Deque<Long> shelf = making.shelf(design);
    if (!shelf.isEmpty()) {
      check(design, shelf.getLast());
    }
  }

  /** Burns one candle of a design whose lots nobody has burnt yet, the youngest there is. */
  void checkLots(String design) {
    for (Iterator<Long> i = making.shelf(design).descendingIterator(); i.hasNext(); ) {
      long piece = i.next();
      if (!making.lots().areBurnt(piece)) {
        check(design, piece);
        return;
      }
    }
  }

  private void check(String design, long piece) {
    if (!checking.add(design)) {
      return;
    }
    making.shelf(design).remove(piece);
    BurnTest test =
        history
            .studio()
            .burnTests
            .begin(
                history.act(),
                new RunBurnTest.Request(
                    design,
                    1,
                    BurnRules.CHECK,
                    "check burn",
                    List.of(new RunBurnTest.NewSample("A", piece))))
            .made();
    next(test, placed(test), 1, false);
  }

  private List<BurnTest.Sample> placed(BurnTest test) {
    return history.studio().look(books -> books.burns().samples(test.id()));
  }

  /** One cycle a working day: a weekend must not bring two of them together. */
  private void next(BurnTest test, List<BurnTest.Sample> placed, int cycle, boolean fails) {
    history.inDays(
        1,
        () -> {
          if (cycle <= CYCLES) {
            burn(test.id(), placed, cycle, fails);
            next(test, placed, cycle + 1, fails);
          } else {
            close(test, fails);
          }
        });
  }

  private void burn(long test, List<BurnTest.Sample> samples, int number, boolean fails) {
    for (BurnTest.Sample sample : samples) {
      BurnTest.Cycle cycle =
          history.studio().burnTests.light(history.act(), test, sample.id()).made();
      int looks = history.size().busy() && samples.size() > 1 ? 9 : 4;
      for (int look = 0; look <= looks; look++) {
        history
            .studio()
            .burnTests
            .look(history.act(), cycle.id(), look(look * 240.0 / looks, number, fails));
      }
      history
          .studio()
          .burnTests
          .putOut(
              history.act(),
              cycle.id(),
              number == CYCLES && !fails ? "self_extinguished" : "after four hours");
    }
  }

  private BurnTest.Look look(double minute, int number, boolean fails) {
    double hours = minute / 60;
    double flame = (fails ? 58 + 8 * hours : 26 + 3 * hours) + 3 * history.random().nextGaussian();
    double pool = Math.min(72, 20 + 16 * Math.sqrt(hours) + history.random().nextGaussian());
    return new BurnTest.Look(
        minute,
        520 - 5.2 * (4.0 * (number - 1) + hours),
        Math.max(5, flame),
        pool,
        pool - 1,
        Math.min(14, 2 + 2.4 * hours),
        24 + 7 * hours,
        23 + 5 * hours,
        fails && hours > 2 ? "some" : "none",
        number > 1 && hours > 3 ? "small" : "none",
        null,
        null,
        false,
        false,
        fails && hours > 3,
        "");
  }

  /** Whether a word for sale stands on a design. */
  boolean proved(String design) {
    return history
        .studio()
        .look(books -> books.burns().proof(design, 1))
        .filter(BurnTest.Proof::proved)
        .isPresent();
  }

  private void close(BurnTest test, boolean fails) {
    String reasons = fails ? "flame height above the house limit of 75 mm" : "every look inside";
    history.studio().burnTests.close(history.act(), test.id(), fails ? "fail" : "pass", reasons);
    checking.remove(test.candle());
    making.lots().passed();
    if (!fails && !proved(test.candle())) {
      // her own rule: the demo's tests burn three candles of one pour
      history.studio().saveSetting.run(history.maker(), Proving.RULE, "3 1 1 20");
      if (history.studio().look(b -> new Proving(b).missing(test.candle(), 1)).isEmpty()) {
        history
            .studio()
            .burnTests
            .word(
                history.maker(),
                new RunBurnTest.Word(
                    test.candle(), 1, test.id(), true, "Three candles, three cycles, my rule."))
            .made();
      }
    }
  }
}
