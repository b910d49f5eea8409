package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import pourwright.batch.Batch;
import pourwright.batch.Grade;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.batch.RecordedStep;
import pourwright.order.Order;
import pourwright.order.OrderImport;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.Price;
import pourwright.stock.Trace;
import pourwright.work.Act;
import pourwright.work.AdvancePieces;
import pourwright.work.AttachFile;
import pourwright.work.BurnTest;
import pourwright.work.CardVersion;
import pourwright.work.CountLot;
import pourwright.work.Customer;
import pourwright.work.DrawForBatch;
import pourwright.work.Drawer;
import pourwright.work.FinishCast;
import pourwright.work.FinishPour;
import pourwright.work.Outcome;
import pourwright.work.PageOf;
import pourwright.work.PieceBook;
import pourwright.work.Reading;
import pourwright.work.Reason;
import pourwright.work.ReceiveLot;
import pourwright.work.RecordStep;
import pourwright.work.RunBurnTest;
import pourwright.work.SaveCard;
import pourwright.work.Signed;
import pourwright.work.Studio;
import pourwright.work.Subject;
import pourwright.work.WriteOff;

/** What the books must do, whichever database they are kept in. */
abstract class BooksContract {
  private Bench bench;
  private Studio studio;

  abstract Bench open() throws Exception;

  @BeforeEach
  void openTheStudio() throws Exception {
    bench = open();
    studio = bench.studio;
  }

  @AfterEach
  void closeTheStudio() {
    assertThat(bench.store.keptRowsWrong()).as("kept tables agree with the ledger").isZero();
    bench.close();
  }

  /** What one sees in the books; keeps the compiler from guessing at overloads. */
  private record Seen<T>(T it) {}

  private <T> Seen<T> see(java.util.function.Function<pourwright.work.Books, T> reading) {
    return new Seen<>(studio.look(reading));
  }

  private static Act act() {
    return Bench.act();
  }

  private static Reason reason(Outcome<?> outcome) {
    assertThat(outcome).isInstanceOf(Outcome.Refused.class);
    Outcome.Refused<?> refused = (Outcome.Refused<?>) outcome;
    assertThat(refused.sentence()).isNotBlank();
    assertThat(refused.hint()).isNotBlank();
    return refused.reason();
  }

  private RecordStep.Request powder(long batch, double grams) {
    return new RecordStep.Request(
        batch,
        "powder",
        List.of(new RecordStep.Taken("grey-powder", null, Amount.ofGrams(grams))),
        21.5);
  }

  @Test
  void aDeliveryStandsOnTheShelfWithItsPriceAndItsLastGoodDay() {
    ReceiveLot.Request request =
        new ReceiveLot.Request(
            "fig-oil",
            "F-7",
            Amount.ofGrams(500),
            "harbour-oils",
            LocalDate.parse("2026-02-20"),
            LocalDate.parse("2027-02-20"),
            new Price(4200, "EUR"));
    long id = studio.receiveLot.run(act(), request).made().lot().id();
    var shelf = studio.look(b -> b.lots().shelf(id).orElseThrow());
    assertThat(shelf.onHand()).isEqualTo(Amount.ofGrams(500));
    assertThat(shelf.lot().price()).isEqualTo(new Price(4200, "EUR"));
    assertThat(shelf.lot().expiresOn()).isEqualTo(LocalDate.parse("2027-02-20"));
    assertThat(shelf.lot().supplier()).isEqualTo("harbour-oils");
    assertThat(reason(studio.receiveLot.run(act(), request))).isEqualTo(Reason.ALREADY_ON_FILE);
  }

  @Test
  void aDoubleTapCountsOnce() {
    long lot = bench.lot("grey-powder", "P-1", 5000);
    Batch batch = studio.startCast.run(act(), Bench.castPlan("bollard", 2)).made();
    Act tap = act();
    Outcome<RecordedStep> first = studio.recordStep.run(tap, powder(batch.id(), 900));
    Outcome<RecordedStep> second = studio.recordStep.run(tap, powder(batch.id(), 900));
    assertThat(bench.onHand(lot)).isEqualTo(4100);
    assertThat(second.made()).isEqualTo(first.made());
    assertThat(((Outcome.Done<?>) second).repeated()).isTrue();
    assertThat(see(b -> b.batches().steps(batch.id())).it()).hasSize(1);
    assertThat(reason(studio.writeOff.run(tap, waste(lot, 1))))
        .isEqualTo(Reason.REQUEST_KEY_BELONGS_TO_ANOTHER_DEED);
  }

  private static WriteOff.Request waste(long lot, double grams) {
    return new WriteOff.Request(lot, Amount.ofGrams(grams), Cause.WASTE);
  }

  @Test
  void whatExpiresFirstIsDrawnFirstAndWhatIsMissingIsSaid() {
    long late = bench.lot("grey-powder", "P-1", 400);
    long soon =
        studio
            .receiveLot
            .run(
                act(),
                new ReceiveLot.Request(
                    "grey-powder",
                    "P-2",
                    Amount.ofGrams(300),
                    null,
                    null,
                    LocalDate.parse("2026-04-01"),
                    null))
            .made()
            .lot()
            .id();
    Batch batch = studio.startCast.run(act(), Bench.castPlan("bollard", 1)).made();
    RecordedStep step = studio.recordStep.run(act(), powder(batch.id(), 1000)).made();
    assertThat(step.used())
        .containsExactly(
            new RecordedStep.Used("grey-powder", soon, Amount.ofGrams(300)),
            new RecordedStep.Used("grey-powder", late, Amount.ofGrams(400)),
            new RecordedStep.Used("grey-powder", null, Amount.ofGrams(300)));
    assertThat(bench.onHand(late)).isZero();
    assertThat(bench.onHand(soon)).isZero();
  }

  @Test
  void aDrawLargerThanTheLotIsRefusedWithWhatIsThere() {
    long lot = bench.lot("grey-powder", "P-1", 100);
    Batch batch = studio.startCast.run(act(), Bench.castPlan("bollard", 1)).made();
    Outcome<?> outcome =
        studio.drawForBatch.run(
            act(), new DrawForBatch.Request(batch.id(), "grey-powder", lot, Amount.ofGrams(100.5)));
    assertThat(reason(outcome)).isEqualTo(Reason.LOT_WOULD_GO_NEGATIVE);
    assertThat(((Outcome.Refused<?>) outcome).sentence()).contains("100 g").contains("100.5 g");
    assertThat(bench.onHand(lot)).isEqualTo(100);
  }

  @Test
  void oneLotChosenTwiceInAStepGivesNoMoreThanItHas() {
    long lot = bench.lot("grey-powder", "P-1", 100);
    Batch batch = studio.startCast.run(act(), Bench.castPlan("bollard", 1)).made();
    RecordStep.Taken most = new RecordStep.Taken("grey-powder", lot, Amount.ofGrams(60));
    Outcome<?> outcome =
        studio.recordStep.run(
            act(), new RecordStep.Request(batch.id(), "powder", List.of(most, most), null));
    assertThat(reason(outcome)).isEqualTo(Reason.LOT_WOULD_GO_NEGATIVE);
    assertThat(bench.onHand(lot)).isEqualTo(100);
  }

  @Test
  void theDatabaseItselfRefusesAnEditAndALotBelowZero() {
    long lot = bench.lot("grey-powder", "P-1", 100);
    for (String sql :
        List.of(
            "UPDATE movement SET units = units + 1",
            "DELETE FROM movement",
            "UPDATE deed SET note = 'changed'",
            "DELETE FROM lot",
            "INSERT INTO movement (id, lot_id, units, cause, deed_id) VALUES (99, "
                + lot
                + ", -100000001, 'WASTE', 1)")) {
      assertThatThrownBy(() -> bench.store.write(h -> h.execute(sql))).as(sql).isNotNull();
    }
    assertThat(bench.onHand(lot)).isEqualTo(100);
  }

  @Test
  void aCountBecomesADifferenceAndTwoPeopleDoNotOverwriteEachOther() {
    long lot = bench.lot("soft-wax", "W-1", 1000);
    Amount seen = Amount.ofGrams(1000);
    studio.countLot.run(act(), new CountLot.Request(lot, Amount.ofGrams(980), seen));
    assertThat(bench.onHand(lot)).isEqualTo(980);
    Outcome<?> second =
        studio.countLot.run(act(), new CountLot.Request(lot, Amount.ofGrams(990), seen));
    assertThat(reason(second)).isEqualTo(Reason.IT_WAS_CHANGED_MEANWHILE);
    Outcome<?> negative =
        studio.countLot.run(act(), new CountLot.Request(lot, Amount.ofGrams(-1), null));
    assertThat(reason(negative)).isEqualTo(Reason.INPUT_CANNOT_BE);
    assertThat(bench.onHand(lot)).isEqualTo(980);
  }

  @Test
  void aPriceInAnotherCurrencyIsRefusedWithASentence() {
    studio.saveSetting.run(act(), "currency", "EUR");
    Outcome<?> outcome =
        studio.receiveLot.run(
            act(),
            new ReceiveLot.Request(
                "wicks", "", Amount.ofPieces(100), null, null, null, new Price(900, "USD")));
    assertThat(reason(outcome)).isEqualTo(Reason.PRICE_IS_IN_ANOTHER_CURRENCY);
  }

  @Test
  void undoRestoresAndUndoingTheUndoDoesItAgain() {
    long lot = bench.lot("grey-powder", "P-1", 5000);
    Batch batch = studio.startCast.run(act(), Bench.castPlan("bollard", 2)).made();
    long step = studio.recordStep.run(act(), powder(batch.id(), 900)).deed().id();
    long undo = studio.undo.run(act(), step).deed().id();
    assertThat(bench.onHand(lot)).isEqualTo(5000);
    assertThat(see(b -> b.batches().steps(batch.id())).it()).isEmpty();
    assertThat(see(b -> b.deeds().deed(step).orElseThrow().undone()).it()).isTrue();
    assertThat(reason(studio.undo.run(act(), step))).isEqualTo(Reason.DEED_IS_ALREADY_UNDONE);
    long redo = studio.undo.run(act(), undo).deed().id();
    assertThat(bench.onHand(lot)).isEqualTo(4100);
    assertThat(see(b -> b.batches().steps(batch.id())).it()).hasSize(1);
    studio.undo.run(act(), redo);
    assertThat(bench.onHand(lot)).isEqualTo(5000);
    assertThat(see(b -> b.batches().steps(batch.id())).it()).isEmpty();
  }

  @Test
  void aDeedThatOthersStandOnIsNotUndone() {
    Outcome<?> received =
        studio.receiveLot.run(
            act(), ReceiveLot.Request.of("grey-powder", "P-1", Amount.ofGrams(1000)));
    Outcome<Batch> begun = studio.startCast.run(act(), Bench.castPlan("bollard", 2));
    studio.recordStep.run(act(), powder(begun.made().id(), 900));
    assertThat(reason(studio.undo.run(act(), received.deed().id())))
        .isEqualTo(Reason.LOT_WOULD_GO_NEGATIVE);
    assertThat(reason(studio.undo.run(act(), begun.deed().id())))
        .isEqualTo(Reason.LATER_DEEDS_STAND_ON_IT);
  }

  /** Casts vessels and brings them to dry. */
  private List<Piece> dryVessels(int count) {
    Batch batch = studio.startCast.run(act(), Bench.castPlan("bollard", count)).made();
    studio.recordStep.run(act(), powder(batch.id(), 100.0 * count));
    List<Piece> pieces =
        studio
            .finishCast
            .run(
                act(),
                new FinishCast.Request(
                    batch.id(), List.of(new FinishCast.Demolded("bollard", count)), "A"))
            .made();
    List<Long> ids = pieces.stream().map(Piece::id).toList();
    advance(ids, PieceStep.HARDENED);
    return advance(ids, PieceStep.DRIED);
  }

  private List<Piece> advance(List<Long> ids, PieceStep step) {
    return studio.advancePieces.run(act(), AdvancePieces.Request.of(ids, step)).made();
  }

  private static List<Long> ids(List<Piece> pieces) {
    return pieces.stream().map(Piece::id).toList();
  }

  @Test
  void aVesselBecomesACandleStepByStepAndIsFoundByItsMark() {
    long powder = bench.lot("grey-powder", "P-1", 5000);
    long wax = bench.lot("soft-wax", "W-1", 5000);
    List<Piece> vessels = dryVessels(3);
    Batch pour = studio.startPour.run(act(), Bench.pourPlan("rain-bollard", 2)).made();
    FinishPour.Request fill =
        new FinishPour.Request(
            pour.id(),
            List.of(new FinishPour.Filled("rain-bollard", ids(vessels.subList(0, 2)))),
            List.of());
    assertThat(reason(studio.finishPour.run(act(), fill)))
        .isEqualTo(Reason.VESSEL_IS_NOT_PROVED_TIGHT);
    long tester = vessels.get(2).id();
    advance(List.of(tester), PieceStep.SEEP_TEST);
    advance(List.of(tester), PieceStep.HELD_WAX);
    studio.drawForBatch.run(
        act(), new DrawForBatch.Request(pour.id(), "soft-wax", null, Amount.ofGrams(400)));
    List<Piece> candles = studio.finishPour.run(act(), fill).made();
    assertThat(candles).extracting(p -> p.state().code()).containsExactly("Poured", "Poured");
    assertThat(reason(studio.finishPour.run(act(), fill))).isEqualTo(Reason.BATCH_IS_FINISHED);
    advance(ids(candles), PieceStep.RESTING);
    Order order =
        new Order(
            "1001",
            "shop",
            null,
            OrderState.OPEN,
            List.of(new OrderLine("1001", "rain-bollard", 1, 2, null, null)));
    studio.orders.take(act(), order);
    long line = studio.look(b -> b.orders().lineIds("1001").values().iterator().next());
    AdvancePieces.Request pick =
        new AdvancePieces.Request(ids(candles), PieceStep.PICKED, null, line);
    assertThat(reason(studio.advancePieces.run(act(), pick)))
        .isEqualTo(Reason.PIECE_IS_NOT_THERE_YET);
    advance(ids(candles), PieceStep.RESTED);
    assertThat(reason(studio.advancePieces.run(act(), pick))).isEqualTo(Reason.NOT_PROVED_FOR_SALE);
    Signed.forSale(studio, "rain-bollard");
    studio.advancePieces.run(act(), pick);
    assertThat(see(b -> b.orders().filled(List.of(line))).it()).isEqualTo(Map.of(line, 2));

    assertThat(studio.find(candles.get(0).mark()))
        .contains(Subject.of(Subject.Kind.PIECE, candles.get(0).id()));
    Trace.Reached back = studio.traceBack(new Trace.Node(Trace.Kind.PIECE, candles.get(0).id()));
    assertThat(back.of(Trace.Kind.LOT)).containsExactlyInAnyOrder(powder, wax);
    Trace.Reached onward = studio.traceOnward(new Trace.Node(Trace.Kind.LOT, wax));
    assertThat(onward.of(Trace.Kind.PIECE)).containsExactlyElementsOf(ids(candles));
    assertThat(onward.of(Trace.Kind.ORDER_LINE)).containsExactly(line);
    assertThat(studio.traceOnward(new Trace.Node(Trace.Kind.LOT, powder)).of(Trace.Kind.PIECE))
        .hasSize(3);
  }

  @Test
  void aPieceSortedAsPlanterTakesNoWickAndAWetVesselIsNotPoured() {
    bench.lot("grey-powder", "P-1", 5000);
    List<Piece> vessels = dryVessels(2);
    List<Long> first = List.of(vessels.get(0).id());
    studio.advancePieces.run(
        act(), new AdvancePieces.Request(first, PieceStep.GRADED, Grade.PLANTER, null));
    advance(List.of(vessels.get(1).id()), PieceStep.WETTED);
    Batch pour = studio.startPour.run(act(), Bench.pourPlan("rain-bollard", 1)).made();
    for (Piece vessel : vessels) {
      FinishPour.Request fill =
          new FinishPour.Request(
              pour.id(),
              List.of(new FinishPour.Filled("rain-bollard", List.of(vessel.id()))),
              List.of());
      assertThat(reason(studio.finishPour.run(act(), fill)))
          .isEqualTo(Reason.PIECE_IS_NOT_THERE_YET);
    }
  }

  @Test
  void aHeldLotIsNotDrawnAndItsCandlesAreNotPickedUntilANamedPersonLiftsTheHold() {
    long lot = bench.lot("grey-powder", "P-1", 5000);
    List<Piece> vessels = dryVessels(1);
    long hold = studio.placeHold.run(act(), Subject.of(Subject.Kind.LOT, lot), "lumps").made().id();
    assertThat(studio.stopping(vessels.get(0).id())).hasSize(1);
    Batch next = studio.startCast.run(act(), Bench.castPlan("bollard", 1)).made();
    RecordedStep step = studio.recordStep.run(act(), powder(next.id(), 10)).made();
    assertThat(step.used().get(0).lot()).isNull();
    assertThat(reason(studio.liftHold.run(act(), hold, " ", "fine again")))
        .isEqualTo(Reason.A_NAME_IS_NEEDED);
    Outcome<?> given =
        studio.advancePieces.run(act(), AdvancePieces.Request.of(ids(vessels), PieceStep.GIVEN));
    assertThat(reason(given)).isEqualTo(Reason.IT_IS_HELD);
    studio.liftHold.run(act(), hold, "Mara Kell", "sieved, fine again");
    assertThat(studio.stopping(vessels.get(0).id())).isEmpty();
    assertThat(see(b -> b.holds().hold(hold).orElseThrow().liftedBy()).it()).isEqualTo("Mara Kell");
  }

  @Test
  void aMixedUpTrayTracesEachPieceThroughEveryCastOnIt() {
    long one = bench.lot("grey-powder", "P-1", 100);
    List<Piece> first = dryVessels(1);
    long two = bench.lot("grey-powder", "P-2", 100);
    List<Piece> second = dryVessels(1);
    List<Long> both = List.of(first.get(0).id(), second.get(0).id());
    long tray = studio.arrangeTrays.lay(act(), "B", both).made().id();
    Trace.Node piece = new Trace.Node(Trace.Kind.PIECE, both.get(0));
    assertThat(studio.traceBack(piece).of(Trace.Kind.LOT)).containsExactly(one);
    studio.arrangeTrays.mixUp(act(), tray);
    assertThat(studio.traceBack(piece).of(Trace.Kind.LOT)).containsExactly(one, two);
    assertThat(see(b -> b.pieces().tray(tray).orElseThrow().mixedUp()).it()).isTrue();
  }

  /** A card as the drawing board might keep one. */
  record Sheet(String name, Shade shade, LocalDate day, List<Double> values) {}

  /** A sealed part of a card. */
  sealed interface Shade {
    /** One. */
    record Plain(String colour) implements Shade {}

    /** Two. */
    record Blend(double share, Plain base) implements Shade {}
  }

  private static final Drawer<Sheet> SHEETS = new Drawer<>("sheet", Sheet.class);

  private static Sheet sheet(String name) {
    return new Sheet(
        name,
        new Shade.Blend(0.25, new Shade.Plain("slate")),
        LocalDate.parse("2026-03-01"),
        List.of(1.5, 2.0));
  }

  @Test
  void twoPeopleWhoEditTheSameCardGetAConflictAndNothingIsLost() {
    var saved = studio.saveCard.run(act(), SaveCard.Request.of(SHEETS, "a", 0, sheet("one")));
    assertThat(saved).isInstanceOf(SaveCard.Saving.Saved.class);
    studio.saveCard.run(act(), SaveCard.Request.of(SHEETS, "a", 1, sheet("two")));
    var late = studio.saveCard.run(act(), SaveCard.Request.of(SHEETS, "a", 1, sheet("three")));
    assertThat(late).isInstanceOf(SaveCard.Saving.Conflict.class);
    assertThat(((SaveCard.Saving.Conflict<Sheet>) late).theirs().body()).isEqualTo(sheet("two"));
    CardVersion<Sheet> current = studio.look(b -> b.cards().current(SHEETS, "a").orElseThrow());
    assertThat(current.body()).isEqualTo(sheet("two"));
    assertThat(current.version()).isEqualTo(2);
    studio.undo.run(act(), current.deed());
    assertThat(see(b -> b.cards().current(SHEETS, "a").orElseThrow().body()).it())
        .isEqualTo(sheet("one"));
    assertThat(see(b -> b.cards().version(SHEETS, "a", 2)).it()).isPresent();
  }

  @Test
  void longListsPageByKeyFromEndToEnd() {
    for (int i = 0; i < 23; i++) {
      bench.lot("grey-powder", "P-" + i, 10);
    }
    List<Long> seen = new ArrayList<>();
    String after = null;
    do {
      String from = after;
      PageOf<pourwright.stock.Shelf> page = studio.look(b -> b.lots().list("grey-powder", from, 5));
      page.items().forEach(s -> seen.add(s.lot().id()));
      after = page.next();
    } while (after != null);
    assertThat(seen).hasSize(23).doesNotHaveDuplicates();
    assertThat(studio.history(null, 10).items()).hasSize(10);
  }

  @Test
  void aTimerSurvivesAndIsAnsweredOnce() {
    Subject batch = Subject.of(Subject.Kind.STUDIO, 1);
    long timer = studio.timers.start(act(), "set", batch, Duration.ofMinutes(40)).made().id();
    bench.clock.move(Duration.ofMinutes(41));
    var ringing = studio.look(b -> b.timers().running()).get(0);
    assertThat(ringing.rings(studio.now())).isTrue();
    studio.timers.answer(act(), timer);
    assertThat(see(b -> b.timers().running()).it()).isEmpty();
    assertThat(reason(studio.timers.answer(act(), timer))).isEqualTo(Reason.IT_IS_ALREADY_ANSWERED);
  }

  @Test
  void readingsFilesAndBurnTestsAreKept() {
    Subject pitcher = Subject.of(Subject.Kind.BATCH, 7);
    studio.recordReading.run(act(), List.of(Reading.fresh(pitcher, "wax_c", 71.3, studio.now())));
    assertThat(see(b -> b.readings().newest(pitcher, "wax_c").orElseThrow().value()).it())
        .isEqualTo(71.3);
    var attached =
        studio
            .attachFile
            .run(
                act(),
                new AttachFile.Request(pitcher, "image/png", "top.png"),
                new ByteArrayInputStream("pixels".getBytes(StandardCharsets.UTF_8)))
            .made();
    assertThat(see(b -> b.attachments().of(pitcher)).it()).containsExactly(attached);
    var samples = List.of(new RunBurnTest.NewSample("A", null));
    long test =
        studio
            .burnTests
            .begin(act(), new RunBurnTest.Request("rain-bollard", 1, "house", "first", samples))
            .made()
            .id();
    long sample = studio.look(b -> b.burns().samples(test).get(0).id());
    long cycle = studio.burnTests.light(act(), test, sample).made().id();
    BurnTest.Look look =
        new BurnTest.Look(
            60, 412.5, 28.0, null, null, 6.0, 41.0, null, null, "small", null, null, false, null,
            true, "");
    studio.burnTests.look(act(), cycle, look);
    assertThat(see(b -> b.burns().seen(cycle).get(0).look()).it()).isEqualTo(look);
    studio.burnTests.putOut(act(), cycle, "after 4 h");
    var word = new RunBurnTest.Word("rain-bollard", 1, test, true, "burns well");
    assertThat(reason(studio.burnTests.word(act(), word))).isEqualTo(Reason.INPUT_CANNOT_BE);
    studio.burnTests.close(act(), test, "pass", "all looks within the rules");
    assertThat(reason(studio.burnTests.word(act(), word))).isEqualTo(Reason.INPUT_CANNOT_BE);
    studio.saveSetting.run(act(), "proof.rule", "0 0 0 20");
    studio.burnTests.word(act(), word);
    assertThat(see(b -> b.burns().proof("rain-bollard", 1).orElseThrow().proved()).it()).isTrue();
  }

  private static OrderImport.Ready file(String print, OrderLine... lines) {
    List<OrderImport.Read> reads = new ArrayList<>();
    for (OrderLine line : lines) {
      reads.add(new OrderImport.Read(reads.size() + 2, line, "shop", "Ada Quay"));
    }
    return new OrderImport.Ready(
        new OrderImport.Detected("CSV", "UTF-8", "comma", ".", "ISO", Map.of(), lines.length),
        reads,
        List.of(),
        print);
  }

  @Test
  void anOrderFileGoesInOnceAndItsCustomerCanBeErased() {
    OrderLine two = new OrderLine("2001", "rain", 1, 2, LocalDate.parse("2026-04-01"), null);
    OrderLine one = new OrderLine("2001", "fig", 1, 1, null, "a card please");
    studio.acceptOrders.run(act(), "march.csv", file("f1", two, one));
    studio.acceptOrders.run(act(), "march.csv", file("f1", two, one));
    Order order = studio.look(b -> b.orders().order("2001").orElseThrow());
    assertThat(order.lines()).containsExactly(two, one);
    assertThat(see(b -> b.orders().wanting()).it()).hasSize(1);
    OrderLine three = new OrderLine("2001", "rain", 1, 3, LocalDate.parse("2026-04-01"), null);
    long edit = studio.acceptOrders.run(act(), "march2.csv", file("f2", three)).deed().id();
    assertThat(see(b -> b.orders().order("2001").orElseThrow().lines()).it())
        .containsExactly(three);
    studio.undo.run(act(), edit);
    assertThat(see(b -> b.orders().order("2001").orElseThrow().lines()).it())
        .containsExactly(two, one);
    String ref = java.util.Objects.requireNonNull(order.customer());
    assertThat(see(b -> b.customers().customer(ref).map(Customer::name)).it()).contains("Ada Quay");
    studio.customers.erase(act(), ref);
    assertThat(see(b -> b.customers().customer(ref)).it()).isEmpty();
    assertThat(see(b -> b.orders().order("2001").orElseThrow()).it()).isEqualTo(order);
    studio.orders.move(act(), "2001", OrderState.SENT);
    assertThat(see(b -> b.orders().wanting()).it()).isEmpty();
    assertThat(see(b -> b.orders().list(OrderState.SENT, null, 5).items()).it()).hasSize(1);
  }

  @Test
  void piecesAreListedByDesignAndStateAndCounted() {
    bench.lot("grey-powder", "P-1", 5000);
    dryVessels(3);
    assertThat(see(b -> b.pieces().counts()).it())
        .isEqualTo(Map.of(new PieceBook.DesignState("bollard", "Dry"), 3L));
    PageOf<Piece> page =
        studio.look(b -> b.pieces().list(new PieceBook.Which("bollard", "Dry"), null, 2));
    assertThat(page.items()).hasSize(2);
    assertThat(page.next()).isNotNull();
    assertThat(see(b -> b.pieces().trays()).it()).hasSize(1);
  }

  @Test
  void undoingTheEndOfACastTakesItsVesselsBack() {
    bench.lot("grey-powder", "P-1", 5000);
    Batch batch = studio.startCast.run(act(), Bench.castPlan("bollard", 2)).made();
    FinishCast.Request end =
        new FinishCast.Request(batch.id(), List.of(new FinishCast.Demolded("bollard", 2)), null);
    Outcome<List<Piece>> done = studio.finishCast.run(act(), end);
    Outcome<?> undo = studio.undo.run(act(), done.deed().id());
    assertThat(see(b -> b.pieces().counts()).it()).isEmpty();
    assertThat(studio.find(done.made().get(0).mark())).isEmpty();
    studio.finishCast.run(act(), end);
    assertThat(reason(studio.undo.run(act(), undo.deed().id())))
        .isEqualTo(Reason.LATER_DEEDS_STAND_ON_IT);
  }
}
