package pourwright.work;

import java.util.List;
import java.util.UUID;

/** A word for sale for tests that need candles to sell and not how they were proved. */
public final class Signed {
  private Signed() {}

  /** Closes a test of a candle as passed and signs it, under a rule that asks for nothing more. */
  public static void forSale(Studio studio, String candle) {
    studio.saveSetting.run(act(), Proving.RULE, "0 0 0 1000").made();
    RunBurnTest.Request request =
        new RunBurnTest.Request(
            candle,
            version(studio, candle),
            "house",
            "for sale",
            List.of(new RunBurnTest.NewSample("A", null)));
    long test = studio.burnTests.begin(act(), request).made().id();
    studio.burnTests.close(act(), test, "pass", "every look inside").made();
    studio
        .burnTests
        .word(
            act(),
            new RunBurnTest.Word(candle, version(studio, candle), test, true, "My rule, my name."))
        .made();
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
