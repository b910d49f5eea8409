package pourwright.page.press;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.card.CandleDesign;
import pourwright.card.Card;
import pourwright.hazard.HazardSheet;
import pourwright.hazard.SheetReader;
import pourwright.main.DemoCards;
import pourwright.page.Desk;
import pourwright.store.HashedFiles;
import pourwright.store.SqliteStore;
import pourwright.store.StudioFolder;
import pourwright.work.Act;
import pourwright.work.AdvancePieces;
import pourwright.work.BeginPour;
import pourwright.work.BurnTest;
import pourwright.work.CandleLabel;
import pourwright.work.CardVersion;
import pourwright.work.DrawForBatch;
import pourwright.work.Drawer;
import pourwright.work.Drawers;
import pourwright.work.FinishCast;
import pourwright.work.FinishPour;
import pourwright.work.LabelReader;
import pourwright.work.Reading;
import pourwright.work.ReceiveLot;
import pourwright.work.RunBurnTest;
import pourwright.work.SaveCard;
import pourwright.work.Studio;
import pourwright.work.Subject;

/** A studio with the invented cards and sheets, where candles are cast, poured, tested, proved. */
final class PressStudio {
  /** Skin Sens. 1B at 8 % of 15 %: H317; invented. */
  static final String OIL = "Linalool 78-70-6 15 % Skin Sens. 1B H317";

  final Hands clock = new Hands();
  final Desk desk;
  final Studio studio;
  final CandleDesign candle;

  /** What every pour draws 100 g of: lots by material. */
  final Map<String, Long> draws = new LinkedHashMap<>();

  private int key;

  /** A clock that only moves when told. */
  static final class Hands extends Clock {
    private volatile Instant now = Instant.parse("2026-03-02T09:00:00Z");

    void move(Duration by) {
      now = now.plus(by);
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }

    @Override
    public Instant instant() {
      return now;
    }
  }

  PressStudio(Path folder) {
    StudioFolder data = new StudioFolder(folder);
    studio = new Studio(SqliteStore.open(data).unitOfWork(), clock, new HashedFiles(data));
    desk = new Desk(studio, clock, ZoneOffset.UTC, Locale.UK);
    DemoCards.materials().forEach(m -> save(Drawers.MATERIAL, m.code(), m));
    DemoCards.cards().forEach(this::saveCard);
    candle =
        DemoCards.cards().stream()
            .filter(CandleDesign.class::isInstance)
            .map(CandleDesign.class::cast)
            .filter(c -> !DemoCards.book().pour(c.pour()).fragrances().isEmpty())
            .findFirst()
            .orElseThrow();
  }

  Act act() {
    key++;
    return Act.of("MB", "press-" + key);
  }

  /** Saves the next version of a card. */
  <T> CardVersion<T> save(Drawer<T> drawer, String code, T body) {
    int based =
        studio.look(b -> b.cards().current(drawer, code)).map(CardVersion::version).orElse(0);
    SaveCard.Saving<T> saving =
        studio.saveCard.run(act(), SaveCard.Request.of(drawer, code, based, body));
    return ((SaveCard.Saving.Saved<T>) saving).version();
  }

  private void saveCard(Card card) {
    for (Drawer<? extends Card> drawer : Drawers.ofCards()) {
      if (drawer.type().isInstance(card)) {
        saveIn(drawer, card);
      }
    }
  }

  private <T extends Card> void saveIn(Drawer<T> drawer, Card card) {
    save(drawer, card.code(), drawer.type().cast(card));
  }

  /** The sheets of everything that is poured into the candle. */
  void sheets(String revision, String oil) {
    var pour = DemoCards.book().pour(candle.pour());
    pour.fragrances().forEach(p -> sheet(p.material(), revision, oil));
    pour.waxes().forEach(p -> sheet(p.material(), revision, ""));
    pour.extras().forEach(p -> sheet(p.material(), revision, ""));
  }

  void sheet(String material, String revision, String text) {
    save(
        Drawers.SHEET,
        material,
        HazardSheet.of(material, revision, SheetReader.read(text).lines(), true));
  }

  /** Rested candles of the design, poured by the cards as they are now. */
  List<Piece> candles(int count) {
    CandleDesign now =
        studio.look(b -> b.cards().current(Drawers.CANDLE, candle.code())).orElseThrow().body();
    int mix = version(Drawers.MIX, now.mix());
    int vessel = version(Drawers.VESSEL, now.vessel());
    BatchPlan plan =
        new BatchPlan(
            BatchKind.CAST,
            now.mix(),
            mix,
            List.of(new BatchPlan.Makes(now.vessel(), vessel, count, null)),
            List.of(),
            null);
    long cast = studio.startCast.run(act(), plan).made().id();
    List<Long> ids =
        studio
            .finishCast
            .run(
                act(),
                new FinishCast.Request(
                    cast, List.of(new FinishCast.Demolded(now.vessel(), count)), null))
            .made()
            .stream()
            .map(Piece::id)
            .toList();
    for (PieceStep step :
        List.of(
            PieceStep.HARDENED,
            PieceStep.DRIED,
            PieceStep.SEALED,
            PieceStep.DRIED,
            PieceStep.SEEP_TEST,
            PieceStep.HELD_WAX)) {
      studio.advancePieces.run(act(), AdvancePieces.Request.of(ids, step));
    }
    Batch pour = studio.beginPour.run(act(), new BeginPour.Request(candle.code(), count, 0)).made();
    if (draws.isEmpty()) {
      String wax = DemoCards.book().pour(now.pour()).waxes().get(0).material();
      lot(wax, "W-" + pour.id());
      studio.drawForBatch.run(
          act(),
          new DrawForBatch.Request(pour.id(), wax, null, pourwright.stock.Amount.ofGrams(200)));
    }
    draws.forEach(
        (material, lot) ->
            studio
                .drawForBatch
                .run(
                    act(),
                    new DrawForBatch.Request(
                        pour.id(), material, lot, pourwright.stock.Amount.ofGrams(100)))
                .made());
    studio.finishPour.run(
        act(),
        new FinishPour.Request(
            pour.id(), List.of(new FinishPour.Filled(candle.code(), ids)), List.of()));
    clock.move(Duration.ofDays(1));
    studio.advancePieces.run(act(), AdvancePieces.Request.of(ids, PieceStep.RESTING));
    clock.move(Duration.ofDays(20));
    studio.advancePieces.run(act(), AdvancePieces.Request.of(ids, PieceStep.RESTED));
    return studio.look(b -> ids.stream().map(id -> b.pieces().piece(id).orElseThrow()).toList());
  }

  private int version(Drawer<?> drawer, String code) {
    return studio.look(b -> b.cards().current(drawer, code)).orElseThrow().version();
  }

  /** Burns the pieces to their end, each in cycles of so many hours, and gives the word. */
  BurnTest prove(List<Piece> pieces, int cycles, double hours) {
    int version = version(Drawers.CANDLE, candle.code());
    BurnTest test =
        studio
            .burnTests
            .begin(
                act(),
                new RunBurnTest.Request(
                    candle.code(),
                    version,
                    "house",
                    "for sale",
                    pieces.stream()
                        .map(p -> new RunBurnTest.NewSample(p.mark().text(), p.id()))
                        .toList()))
            .made();
    for (int cycle = 1; cycle <= cycles; cycle++) {
      for (BurnTest.Sample sample : studio.look(b -> b.burns().samples(test.id()))) {
        burn(test, sample, hours, cycle == cycles ? "self_extinguished" : "after four hours");
      }
    }
    studio.burnTests.close(act(), test.id(), "pass", "every look inside").made();
    studio.saveSetting.run(act(), "proof.rule", "1 1 1 20").made();
    studio
        .burnTests
        .word(
            act(),
            new RunBurnTest.Word(candle.code(), version, test.id(), true, "My rule, my name."))
        .made();
    return test;
  }

  private void burn(BurnTest test, BurnTest.Sample sample, double hours, String how) {
    BurnTest.Cycle cycle = studio.burnTests.light(act(), test.id(), sample.id()).made();
    for (int i = 0; i <= 4; i++) {
      double minute = hours * 15 * i;
      studio.burnTests.look(act(), cycle.id(), look(minute, 40.0 + 20 * i));
    }
    clock.move(Duration.ofMinutes(Math.round(hours * 60)));
    studio.burnTests.putOut(act(), cycle.id(), how).made();
    clock.move(Duration.ofHours(5));
  }

  private static BurnTest.Look look(double minute, double poolMm) {
    return new BurnTest.Look(
        minute,
        500 - minute / 12,
        30.0,
        poolMm,
        poolMm,
        8.0,
        46.0,
        31.0,
        "none",
        "none",
        null,
        null,
        false,
        false,
        false,
        "");
  }

  void reading(Subject subject, String quantity, double value) {
    studio
        .recordReading
        .run(act(), List.of(Reading.fresh(subject, quantity, value, studio.now())))
        .made();
  }

  long lot(String material, String code) {
    return studio
        .receiveLot
        .run(act(), ReceiveLot.Request.of(material, code, pourwright.stock.Amount.ofGrams(1000)))
        .made()
        .lot()
        .id();
  }

  /** Who stands on the label, as settings. */
  void maker() {
    java.util.Map.of(
            "maker.name", "Undercroft Lantern Works",
            "maker.address", "1 Cellar Steps, Harbour",
            "maker.phone", "+00 000 0000",
            "maker.web", "works@example.org")
        .forEach((name, value) -> studio.saveSetting.run(act(), name, value));
  }

  CandleLabel label(pourwright.batch.@org.jspecify.annotations.Nullable Mark mark) {
    return studio.look(b -> new LabelReader(b).candle(candle.code(), mark)).orElseThrow();
  }
}
