package pourwright.page.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.burn.CycleKind;
import pourwright.burn.NextTest;
import pourwright.card.CandleDesign;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.work.AdvancePieces;
import pourwright.work.BurnTest;
import pourwright.work.Drawers;
import pourwright.work.LeaveWithShop;
import pourwright.work.MarketDay;
import pourwright.work.Outcome;
import pourwright.work.Proving;
import pourwright.work.Reason;
import pourwright.work.RunBurnTest;
import pourwright.work.Signed;
import pourwright.work.WickCandidates;

/** A word for sale stands on her rule; a change asks for a new test, a new lot for a check burn. */
class ProofGateTest {
  private PressStudio press;
  private BurnTest first;

  @BeforeEach
  void threeCandlesOfOneCastAndOnePourAreBurnt(@TempDir Path folder) {
    press = new PressStudio(folder);
    press.sheets("2026-01", PressStudio.OIL);
    press.draws.put(wax(), press.lot(wax(), "W-1"));
    first = press.prove(press.candles(3), 3, 4);
    press.clock.move(Duration.ofDays(1));
  }

  private String wax() {
    return press
        .studio
        .look(b -> b.cards().current(Drawers.POUR, press.candle.pour()))
        .orElseThrow()
        .body()
        .waxes()
        .get(0)
        .material();
  }

  private Outcome<BurnTest.Proof> sign() {
    return press.studio.burnTests.word(
        press.act(), new RunBurnTest.Word(press.candle.code(), 1, first.id(), true, "My rule."));
  }

  private List<String> changes() {
    return press.studio.look(b -> new Proving(b).changes(press.candle.code()));
  }

  /** House: 3 full lives over 2 casts and 2 pours, one to the very end; hers to set. */
  @Test
  void theRuleIsAskedAndSaysWhatIsMissing() {
    press.studio.saveSetting.run(press.act(), Proving.RULE, "3 2 2 20");
    assertThat(sign()).isInstanceOf(Outcome.Refused.class);
    assertThat(((Outcome.Refused<BurnTest.Proof>) sign()).sentence())
        .isEqualTo("not proved yet: 1 of 2 casts; 1 of 2 pours");
    press.prove(press.candles(1), 1, 4);
    press.studio.saveSetting.run(press.act(), Proving.RULE, "3 2 2 20");
    assertThat(sign()).isInstanceOf(Outcome.Done.class);
    press.studio.saveSetting.run(press.act(), Proving.RULE, "5 2 2 20");
    assertThat(((Outcome.Refused<BurnTest.Proof>) sign()).sentence())
        .contains("4 of 5 passed full lives");
  }

  @Test
  void aNewLotOfWaxAsksForOneCheckBurnBeforeItsFirstSale() {
    Piece old = press.candles(1).get(0);
    assertThat(press.label(old.mark()).gate().reasons()).isEmpty();
    press.draws.put(wax(), press.lot(wax(), "W-2"));
    List<Piece> fresh = press.candles(2);
    assertThat(press.label(fresh.get(0).mark()).gate().notProved())
        .containsExactly("lot W-2 of " + wax() + ": one check burn before its first sale");
    List<String> listed = press.studio.look(b -> new Proving(b).freshLots());
    assertThat(listed).anySatisfy(l -> assertThat(l).startsWith("lot W-2 of " + wax()));
    assertThat(listed).noneSatisfy(l -> assertThat(l).startsWith("lot W-1"));
    press.prove(fresh.subList(1, 2), 1, 4);
    assertThat(press.label(fresh.get(0).mark()).gate().reasons()).isEmpty();
  }

  /** Every way out asks the one function that the label asks, and the check burn opens them all. */
  @Test
  void aNewLotWaitsAtEveryWayOut() {
    press.draws.put(wax(), press.lot(wax(), "W-2"));
    List<Piece> fresh = press.candles(6);
    String candle = press.candle.code();
    String waits =
        candle
            + " is not proved for sale: lot W-2 of "
            + wax()
            + ": one check burn before its first sale";
    assertThat(refused(pick(fresh.subList(0, 1)))).isEqualTo(waits);
    assertThat(refused(sell(fresh.get(1)))).isEqualTo(waits);
    assertThat(refused(market("Quay, early"))).isEqualTo(waits);
    assertThat(refused(shop("Shop, early"))).isEqualTo(waits);
    assertThat(press.label(fresh.get(0).mark()).gate().notProved())
        .containsExactly(waits.substring(waits.indexOf("lot ")));
    press.prove(fresh.subList(5, 6), 1, 4);
    assertThat(pick(fresh.subList(0, 1)).isDone()).isTrue();
    assertThat(sell(fresh.get(1)).isDone()).isTrue();
    assertThat(market("Quay").isDone()).isTrue();
    assertThat(shop("Shop").isDone()).isTrue();
  }

  private Outcome<List<Piece>> sell(Piece piece) {
    return press.studio.advancePieces.run(
        press.act(), AdvancePieces.Request.of(List.of(piece.id()), PieceStep.SOLD));
  }

  private Outcome<Order> market(String name) {
    return press.studio.market.pack(
        press.act(),
        new MarketDay.Pack(name, press.studio.today(), Map.of(press.candle.code(), 1), 0));
  }

  private Outcome<Order> shop(String name) {
    return press.studio.shops.leave(
        press.act(),
        new LeaveWithShop.Leave(name, press.studio.today(), Map.of(press.candle.code(), 1)));
  }

  /** What was picked while the word stood does not leave after it was taken back. */
  @Test
  void whatIsPickedIsNotSentWithoutTheWord() {
    Piece piece = press.candles(1).get(0);
    assertThat(pick(List.of(piece)).isDone()).isTrue();
    Signed.takeBack(press.studio, press.candle.code(), "the flame was too high");
    assertThat(refused(press.studio.orders.move(press.act(), "O-" + piece.id(), OrderState.SENT)))
        .contains("was taken back");
  }

  @Test
  void anotherRestAsksForANewTest() {
    assertThat(changes()).isEmpty();
    CandleDesign d = press.candle;
    press.save(
        Drawers.CANDLE,
        d.code(),
        new CandleDesign(
            d.code(),
            d.name(),
            d.vessel(),
            d.mix(),
            d.finish(),
            d.pour(),
            d.wicks(),
            d.headspaceMm(),
            2.0,
            d.piecesPerBox(),
            d.boxed(),
            d.note()));
    assertThat(changes()).singleElement().asString().startsWith("rest of 2.0 days, proved with ");
  }

  @Test
  void aChangedSafetySheetAsksForANewTest() {
    press.sheet(wax(), "2026-03", "");
    assertThat(changes()).isEmpty();
    press.sheet(wax(), "2026-04", PressStudio.OIL);
    assertThat(changes())
        .containsExactly("safety sheet of " + wax() + " 2026-04, proved with 2026-01");
  }

  @Test
  void wicksOnFileAreCandidatesWithWhatTheirTestsSaid() {
    String wick = press.candle.wicks().wick();
    List<NextTest.Candidate> candidates =
        press.studio.look(b -> WickCandidates.of(b, press.candle.code(), 1));
    assertThat(candidates)
        .filteredOn(c -> c.name().equals(wick))
        .singleElement()
        .satisfies(c -> assertThat(c.passed()).isEqualTo(3))
        .satisfies(c -> assertThat(c.failed()).isZero());
    assertThat(candidates)
        .filteredOn(c -> !c.name().equals(wick))
        .isNotEmpty()
        .allSatisfy(c -> assertThat(c.passed()).isZero());
    List<NextTest.Candidate> none =
        press.studio.look(b -> WickCandidates.of(b, "no-such-candle", 1));
    assertThat(none).isEmpty();
  }

  /** A misuse cycle has to hold the limits; the hours of the label come from the usual ones. */
  @Test
  void aForgottenCycleDoesNotMakeTheLabelSayEightHours() {
    Piece piece = press.candles(1).get(0);
    RunBurnTest tests = press.studio.burnTests;
    BurnTest test =
        tests
            .begin(
                press.act(),
                new RunBurnTest.Request(
                    press.candle.code(),
                    1,
                    "house",
                    "misuse",
                    List.of(new RunBurnTest.NewSample("A", piece.id()))))
            .made();
    long sample = press.studio.look(b -> b.burns().samples(test.id()).get(0).id());
    long cycle = tests.light(press.act(), test.id(), sample, CycleKind.FORGOTTEN).made().id();
    List<BurnTest.Seen> seen = press.studio.look(b -> b.burns().seen(cycle));
    assertThat(seen)
        .singleElement()
        .satisfies(s -> assertThat(s.look().note()).isEqualTo("cycle: forgotten"));
    press.clock.move(Duration.ofHours(8));
    tests.putOut(press.act(), cycle, "self_extinguished").made();
    tests.close(press.act(), test.id(), "pass", "misuse").made();
    assertThat(press.label(null).burn().hoursAtATime()).isEqualTo(4.0);
  }

  @Test
  void aLifeThatWasLitBeforeItsRestWasOverDoesNotCount() {
    Piece piece = press.candles(1).get(0);
    RunBurnTest tests = press.studio.burnTests;
    BurnTest test =
        tests
            .begin(
                press.act(),
                new RunBurnTest.Request(
                    press.candle.code(),
                    1,
                    "house",
                    "in a hurry",
                    List.of(new RunBurnTest.NewSample("A", piece.id()))))
            .made();
    int before = lives();
    long sample = press.studio.look(b -> b.burns().samples(test.id()).get(0).id());
    for (int i = 0; i < 2; i++) {
      long cycle = tests.light(press.act(), test.id(), sample).made().id();
      press.clock.move(Duration.ofHours(i == 0 ? 2 : 6));
      tests.putOut(press.act(), cycle, "self_extinguished").made();
      press.clock.move(Duration.ofHours(3));
    }
    tests.close(press.act(), test.id(), "pass", "in a hurry").made();
    assertThat(lives()).isEqualTo(before);
    assertThat(press.label(null).burn().hoursAtATime()).as("six hours lit early").isEqualTo(4.0);
  }

  private Outcome<List<Piece>> pick(List<Piece> pieces) {
    String number = "O-" + pieces.get(0).id();
    OrderLine line = new OrderLine(number, press.candle.code(), 1, pieces.size(), null, null);
    press.studio.orders.take(
        press.act(), new Order(number, "shop", null, OrderState.OPEN, List.of(line)));
    long id = press.studio.look(b -> b.orders().lineIds(number).get(line.key()));
    return press.studio.advancePieces.run(
        press.act(),
        new AdvancePieces.Request(
            pieces.stream().map(Piece::id).toList(), PieceStep.PICKED, null, id));
  }

  private static String refused(Outcome<?> outcome) {
    assertThat(outcome).isInstanceOf(Outcome.Refused.class);
    assertThat(((Outcome.Refused<?>) outcome).reason()).isEqualTo(Reason.NOT_PROVED_FOR_SALE);
    return ((Outcome.Refused<?>) outcome).sentence();
  }

  /** Nothing leaves as a candle without a word, nor once the word was taken back. */
  @Test
  void onlyWhatIsProvedForSaleIsPickedAndSold() {
    List<Piece> pieces = press.candles(3);
    assertThat(pick(pieces.subList(0, 1)).isDone()).isTrue();
    Signed.takeBack(press.studio, press.candle.code(), "the flame was too high");
    assertThat(refused(pick(pieces.subList(1, 2))))
        .isEqualTo(
            press.candle.code()
                + " is not proved for sale: the word on version 1 of this candle was taken back");
    assertThat(
            refused(
                press.studio.advancePieces.run(
                    press.act(),
                    AdvancePieces.Request.of(List.of(pieces.get(0).id()), PieceStep.SOLD))))
        .contains("was taken back");
    assertThat(
            refused(
                press.studio.market.pack(
                    press.act(),
                    new MarketDay.Pack(
                        "Market quay", press.studio.today(), Map.of(press.candle.code(), 1), 0))))
        .contains("is not proved for sale");
    assertThat(
            press.studio.advancePieces.run(
                press.act(),
                AdvancePieces.Request.of(List.of(pieces.get(1).id()), PieceStep.TESTED)))
        .matches(Outcome::isDone);
  }

  /** House: then one candle of every 20th pour; every second one here. */
  @Test
  void oneCandleOfEverySecondPourIsBurntOrTheWordWaits() {
    press.studio.saveSetting.run(press.act(), Proving.RULE, "1 1 1 2");
    List<Piece> one = press.candles(2);
    assertThat(checks()).isEmpty();
    List<Piece> two = press.candles(2);
    assertThat(checks())
        .containsExactly(
            "2 pours since one was burnt: burn one candle of the latest before the next pour");
    assertThat(press.label(two.get(0).mark()).gate().reasons()).isEmpty();
    List<Piece> three = press.candles(2);
    String waits =
        "its check burn is overdue: 3 pours since one was burnt, your rule says one candle of"
            + " every 2";
    assertThat(checks()).containsExactly(waits);
    assertThat(press.label(null).gate().notProved()).contains(waits);
    assertThat(press.label(two.get(0).mark()).gate().reasons()).isEmpty();
    assertThat(press.label(three.get(0).mark()).gate().notProved()).containsExactly(waits);
    assertThat(refused(pick(three.subList(0, 1)))).contains(waits);
    assertThat(pick(one.subList(0, 1)).isDone()).isTrue();
    assertThat(((Outcome.Refused<BurnTest.Proof>) sign()).sentence()).contains(waits);
    press.studio.saveSetting.run(press.act(), Proving.RULE, "1 1 1 3");
    press.prove(two.subList(1, 2), 1, 4);
    press.studio.saveSetting.run(press.act(), Proving.RULE, "1 1 1 2");
    assertThat(checks()).isEmpty();
    assertThat(pick(three.subList(0, 1)).isDone()).isTrue();
  }

  private List<String> checks() {
    return press.studio.look(
        b -> new Proving(b).checkBurns().values().stream().map(Proving.Checked::sentence).toList());
  }

  private int lives() {
    return press.studio.look(b -> new Proving(b).standing(press.candle.code(), 1)).passedLives();
  }
}
