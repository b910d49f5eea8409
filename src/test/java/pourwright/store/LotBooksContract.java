package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import pourwright.batch.Batch;
import pourwright.batch.RecordedStep;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.Price;
import pourwright.work.Act;
import pourwright.work.CountLot;
import pourwright.work.DrawForBatch;
import pourwright.work.Outcome;
import pourwright.work.Reason;
import pourwright.work.ReceiveLot;
import pourwright.work.RecordStep;
import pourwright.work.WriteOff;

/** Lots, movements, counts, and what is taken back. */
abstract class LotBooksContract extends BooksContract {

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
}
