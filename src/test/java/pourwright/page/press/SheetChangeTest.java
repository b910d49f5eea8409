package pourwright.page.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.card.CandleDesign;
import pourwright.card.PourCard;
import pourwright.pour.Dose.LoadOf;
import pourwright.work.Drawers;
import pourwright.work.SheetChange;

/** After a sheet changed: the labels to print again, read from the books. */
class SheetChangeTest {
  private PressStudio press;
  private String scent;

  @BeforeEach
  void aStudio(@TempDir Path folder) {
    press = new PressStudio(folder);
    press.sheets("old", PressStudio.OIL);
    scent = pour().fragrances().get(0).material();
  }

  private PourCard pour() {
    return press
        .studio
        .look(b -> b.cards().current(Drawers.POUR, press.candle.pour()))
        .orElseThrow()
        .body();
  }

  /** As many candles, each of a pour card of its own, with loads from 2 % to 14 %. */
  private void candles(int count) {
    PourCard card = pour();
    CandleDesign d = press.candle;
    for (int i = 0; i < count; i++) {
      double load = 0.02 + 0.12 * i / count;
      press.save(
          Drawers.POUR,
          "p-" + i,
          new PourCard(
              "p-" + i,
              "Pour " + i,
              card.waxes(),
              card.fragrances(),
              load,
              LoadOf.TOTAL,
              card.extras(),
              card.temperatures(),
              card.losses(),
              card.restDays(),
              card.family(),
              null));
      press.save(
          Drawers.CANDLE,
          "c-" + i,
          new CandleDesign(
              "c-" + i,
              "Candle " + i,
              d.vessel(),
              d.mix(),
              d.finish(),
              "p-" + i,
              d.wicks(),
              d.headspaceMm(),
              d.restDays(),
              d.piecesPerBox(),
              d.boxed(),
              null));
    }
  }

  private SheetChange.Changed changed() {
    return press.studio.look(b -> new SheetChange(b).of(scent, 2)).orElseThrow();
  }

  /** 15 % of Linalool reaches 1 % from 6.67 % load, 12 % from 8.33 %: the loads between change. */
  @Test
  void onlyTheLabelsBetweenTheTwoLimitsArePrintedAgain() {
    candles(12);
    press.candles(2);
    boolean first = press.studio.look(b -> new SheetChange(b).of(scent, 1).isEmpty());
    assertThat(first).isTrue();
    press.sheet(scent, "new", "Linalool 78-70-6 12 % Skin Sens. 1B H317");
    SheetChange.Changed changed = changed();
    assertThat(changed.labels())
        .extracting(SheetChange.Label::code)
        .contains("c-5", "c-6")
        .doesNotContain("c-4", "c-7");
    SheetChange.Label label =
        changed.labels().stream().filter(l -> l.code().equals("c-5")).findFirst().orElseThrow();
    assertThat(label.before()).contains("H317");
    assertThat(label.now()).contains("EUH208").doesNotContain("H317");
  }

  @Test
  void candlesInTheStudioAreCounted() {
    press.candles(2);
    press.sheet(scent, "new", "Linalool 78-70-6 1 % Skin Sens. 1B H317");
    assertThat(changed().labels())
        .filteredOn(l -> l.code().equals(press.candle.code()))
        .singleElement()
        .satisfies(l -> assertThat(l.shelf()).isEqualTo(2));
  }

  @Test
  void anotherRevisionWithTheSameLinesChangesNoLabel() {
    press.sheet(scent, "new", PressStudio.OIL);
    assertThat(changed().labels()).isEmpty();
    assertThat(changed().looked()).isPositive();
  }

  /** The bar of the project: 2,000 candles in under a second, from the books. */
  @Test
  @Tag("long")
  void twoThousandCandlesOfTheBooksAreLookedThroughInUnderASecond() {
    candles(2000);
    press.sheet(scent, "new", "Linalool 78-70-6 12 % Skin Sens. 1B H317");
    long best = Long.MAX_VALUE;
    for (int run = 0; run < 4; run++) {
      long from = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      assertThat(changed().looked()).isGreaterThanOrEqualTo(2000);
      best = Math.min(best, ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - from);
    }
    assertThat(best).isLessThan(1_000_000_000L);
  }
}
