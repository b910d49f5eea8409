package pourwright.page.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Mark;
import pourwright.batch.Piece;
import pourwright.card.CandleDesign;
import pourwright.card.Finish;
import pourwright.card.MixCard;
import pourwright.card.PourCard;
import pourwright.card.WickPlan;
import pourwright.label.BurnFacts;
import pourwright.work.BurnTest;
import pourwright.work.CandleLabel;
import pourwright.work.Drawers;
import pourwright.work.RunBurnTest;
import pourwright.work.Subject;

/** A sale label only for what was burnt: every difference closes the gate and is named. */
class PressGateTest {
  private PressStudio press;

  @BeforeEach
  void aProvedCandle(@TempDir Path folder) {
    press = new PressStudio(folder);
    press.sheets("2026-01", PressStudio.OIL);
    List<Piece> tested = press.candles(3);
    press.prove(tested, 3, 4);
    press.clock.move(Duration.ofDays(1));
  }

  private List<String> notProved() {
    return press.label(null).gate().notProved();
  }

  private PourCard pour() {
    return press
        .studio
        .look(b -> b.cards().current(Drawers.POUR, press.candle.pour()))
        .orElseThrow()
        .body();
  }

  private static PourCard with(
      PourCard card, List<PourCard.Part> waxes, double load, List<PourCard.Part> extras) {
    return new PourCard(
        card.code(),
        card.name(),
        waxes,
        card.fragrances(),
        load,
        card.loadOf(),
        extras,
        card.temperatures(),
        card.losses(),
        card.restDays(),
        card.family(),
        card.note());
  }

  private void candle(WickPlan wicks, String name, String finish) {
    CandleDesign d = press.candle;
    press.save(
        Drawers.CANDLE,
        d.code(),
        new CandleDesign(
            d.code(),
            name,
            d.vessel(),
            d.mix(),
            finish,
            d.pour(),
            wicks,
            d.headspaceMm(),
            d.restDays(),
            d.piecesPerBox(),
            d.boxed(),
            d.note()));
  }

  @Test
  void whatWasBurntMayBeLabelled() {
    assertThat(notProved()).isEmpty();
    assertThat(press.label(null).gate().reasons()).isEmpty();
  }

  @Test
  void anotherNameIsNoOtherCandle() {
    candle(press.candle.wicks(), "Bollard by another name", press.candle.finish());
    assertThat(notProved()).isEmpty();
  }

  @Test
  void anotherLoadIsNamed() {
    double load = pour().load() + 0.01;
    press.save(Drawers.POUR, pour().code(), with(pour(), pour().waxes(), load, pour().extras()));
    assertThat(notProved()).singleElement().asString().startsWith("load ").contains("proved at");
  }

  @Test
  void anotherWaxIsNamed() {
    String other = pour().waxes().get(0).material().equals("soft-wax-a") ? "blend-b" : "soft-wax-a";
    press.save(
        Drawers.POUR,
        pour().code(),
        with(pour(), List.of(new PourCard.Part(other, 1)), pour().load(), pour().extras()));
    assertThat(notProved())
        .singleElement()
        .asString()
        .startsWith("wax " + other + ", proved with ");
  }

  @Test
  void anotherWickIsNamed() {
    WickPlan w = press.candle.wicks();
    candle(
        new WickPlan(w.wick(), w.count(), w.cutMm() + 5, w.tab(), w.sticker(), w.positionsMm()),
        press.candle.name(),
        press.candle.finish());
    assertThat(notProved()).singleElement().asString().startsWith("wick ");
  }

  @Test
  void anotherSealerIsNamed() {
    Finish f =
        press
            .studio
            .look(b -> b.cards().current(Drawers.FINISH, press.candle.finish()))
            .orElseThrow()
            .body();
    press.save(
        Drawers.FINISH,
        f.code(),
        new Finish(
            f.code(),
            f.name(),
            f.grits(),
            f.sandMinutesPerPiece(),
            f.coats().subList(0, f.coats().size() - 1),
            f.fullDryH(),
            f.tightnessTest(),
            f.note()));
    assertThat(notProved()).singleElement().asString().startsWith("sealer ");
  }

  @Test
  void anotherMixOfTheVesselIsNamed() {
    MixCard mix =
        press
            .studio
            .look(b -> b.cards().current(Drawers.MIX, press.candle.mix()))
            .orElseThrow()
            .body();
    press.save(Drawers.MIX, mix.code(), mix);
    assertThat(notProved())
        .singleElement()
        .asString()
        .startsWith("vessel ")
        .contains(mix.code() + " version 2")
        .contains("proved with")
        .contains(mix.code() + " version 1");
  }

  @Test
  void candlesPouredBeforeAChangeMayStillBeLabelledByTheirMark() {
    List<Piece> before = press.candles(1);
    press.save(
        Drawers.POUR,
        pour().code(),
        with(pour(), pour().waxes(), pour().load() + 0.01, pour().extras()));
    List<Piece> after = press.candles(1);
    assertThat(press.label(before.get(0).mark()).gate().reasons()).isEmpty();
    CandleLabel later = press.label(after.get(0).mark());
    assertThat(later.gate().notProved()).singleElement().asString().startsWith("load ");
    assertThat(later.loadOfTotal()).isGreaterThan(press.label(before.get(0).mark()).loadOfTotal());
  }

  @Test
  void oldCandlesDoNotProveACardThatWasChangedBeforeTheyWereBurnt() {
    List<Piece> old = press.candles(3);
    press.save(
        Drawers.POUR,
        pour().code(),
        with(pour(), pour().waxes(), pour().load() + 0.01, pour().extras()));
    press.prove(old, 1, 4);
    assertThat(notProved()).singleElement().asString().startsWith("load ");
  }

  @Test
  void aWordTakenBackClosesTheGate() {
    press
        .studio
        .burnTests
        .word(
            press.act(),
            new RunBurnTest.Word(press.candle.code(), 1, null, false, "One sooted after all."))
        .made();
    assertThat(notProved()).containsExactly("the word on version 1 of this candle was taken back");
  }

  @Test
  void aMarkThatIsNotInTheBooksClosesTheGate() {
    Mark unknown = Mark.ofNumber(999_999);
    assertThat(press.label(unknown).gate().missing())
        .singleElement()
        .asString()
        .contains("none is in the books");
  }

  @Test
  void careLinesSayWhatWasTested() {
    BurnTest test =
        press.studio.look(b -> b.burns().list(press.candle.code(), null, 1)).items().get(0);
    Subject subject = Subject.of(Subject.Kind.BURN_TEST, test.id());
    BurnFacts before = press.label(null).burn();
    assertThat(before.trimMm()).isNull();
    assertThat(before.stopDepthMm()).isNull();
    press.reading(subject, "trim_mm", 6);
    press.reading(subject, "wax_left_mm", 11);
    BurnFacts facts = press.label(null).burn();
    assertThat(facts.hoursAtATime()).isEqualTo(4);
    assertThat(facts.burnHoursLow()).isEqualTo(12);
    assertThat(facts.trimMm()).isEqualTo(6);
    assertThat(facts.stopDepthMm()).isEqualTo(11);
    assertThat(facts.wallC()).isEqualTo(46);
    assertThat(facts.firstPoolHours()).isBetween(1.0, 4.0);
  }
}
