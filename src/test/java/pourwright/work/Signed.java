package pourwright.work;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;

/** A word for sale for tests that need candles to sell and not how they were proved. */
public final class Signed {
  private Signed() {}

  /** Closes a test of a candle as passed and signs it, under a rule that asks for nothing more. */
  public static void forSale(Studio studio, String candle) {
    forSale(studio, candle, null);
  }

  /** The same with a piece on test: its lots have then had their check burn. */
  public static void forSale(Studio studio, String candle, @Nullable Long piece) {
    studio.saveSetting.run(act(), Proving.RULE, "0 0 0 1000").made();
    RunBurnTest.Request request =
        new RunBurnTest.Request(
            candle,
            version(studio, candle),
            "house",
            "for sale",
            List.of(new RunBurnTest.NewSample("A", piece)));
    long test = studio.burnTests.begin(act(), request).made().id();
    studio.burnTests.close(act(), test, "pass", "every look inside").made();
    studio
        .burnTests
        .word(
            act(),
            new RunBurnTest.Word(candle, version(studio, candle), test, true, "My rule, my name."))
        .made();
  }

  /** Casts one vessel of a design, proves it wax-tight and throws it away: the design held wax. */
  public static void waxTight(Studio studio, String vessel, String mix) {
    BatchPlan plan =
        new BatchPlan(
            BatchKind.CAST,
            mix,
            1,
            List.of(new BatchPlan.Makes(vessel, 1, 1, vessel + "-mold")),
            List.of(),
            null);
    long batch = studio.startCast.run(act(), plan).made().id();
    FinishCast.Request out =
        new FinishCast.Request(batch, List.of(new FinishCast.Demolded(vessel, 1)), null);
    List<Long> one = studio.finishCast.run(act(), out).made().stream().map(Piece::id).toList();
    for (PieceStep step :
        List.of(
            PieceStep.HARDENED,
            PieceStep.DRIED,
            PieceStep.SEEP_TEST,
            PieceStep.HELD_WAX,
            PieceStep.SCRAPPED)) {
      studio.advancePieces.run(act(), AdvancePieces.Request.of(one, step)).made();
    }
  }

  /** Takes a word back. */
  public static void takeBack(Studio studio, String candle, String why) {
    studio
        .burnTests
        .word(act(), new RunBurnTest.Word(candle, version(studio, candle), null, false, why))
        .made();
  }

  private static int version(Studio studio, String candle) {
    return studio
        .look(b -> b.cards().current(Drawers.CANDLE, candle))
        .map(CardVersion::version)
        .orElse(1);
  }

  private static Act act() {
    return Act.of("MB", UUID.randomUUID().toString());
  }
}
