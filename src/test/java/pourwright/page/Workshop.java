package pourwright.page;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.card.CandleDesign;
import pourwright.card.Card;
import pourwright.card.PourCard;
import pourwright.card.Vessel;
import pourwright.main.DemoCards;
import pourwright.material.Material;
import pourwright.material.MaterialKind;
import pourwright.stock.Amount;
import pourwright.stock.Price;
import pourwright.work.Act;
import pourwright.work.AdvancePieces;
import pourwright.work.Drawer;
import pourwright.work.Drawers;
import pourwright.work.FinishCast;
import pourwright.work.ReceiveLot;
import pourwright.work.SaveCard;

/** The invented demo studio's cards, a full shelf and dry vessels, with a clock moved by hand. */
final class Workshop {
  final Hands clock = new Hands();
  final Desk desk;
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

  Workshop(Path folder) {
    desk = TestStudio.desk(folder, clock);
    DemoCards.materials().forEach(m -> save(Drawers.MATERIAL, m.code(), m));
    for (Card card : DemoCards.cards()) {
      if (card instanceof Vessel vessel) {
        save(Drawers.VESSEL, vessel.code(), vessel);
      } else if (card instanceof PourCard pour) {
        save(Drawers.POUR, pour.code(), pour);
      } else if (card instanceof CandleDesign candle) {
        save(Drawers.CANDLE, candle.code(), candle);
      } else if (card instanceof pourwright.card.MixCard mix) {
        save(Drawers.MIX, mix.code(), mix);
      } else if (card instanceof pourwright.card.Mold mold) {
        save(Drawers.MOLD, mold.code(), mold);
      } else if (card instanceof pourwright.card.Finish finish) {
        save(Drawers.FINISH, finish.code(), finish);
      }
    }
    DemoCards.materials().forEach(this::receive);
  }

  Act act() {
    key++;
    return Act.of("MB", "workshop-" + key);
  }

  private <T> void save(Drawer<T> drawer, String code, T body) {
    desk.studio().saveCard.run(act(), SaveCard.Request.of(drawer, code, 0, body));
  }

  private void receive(Material material) {
    boolean mass = material.kind().usualUnit() == pourwright.material.UnitKind.MASS;
    boolean sealer = material.kind() == MaterialKind.SEALER;
    Amount amount =
        mass ? Amount.ofGrams(5000) : sealer ? Amount.ofMillilitres(1000) : Amount.ofPieces(100);
    desk.studio()
        .receiveLot
        .run(
            act(),
            new ReceiveLot.Request(
                material.code(),
                "LOT-" + material.code(),
                amount,
                null,
                null,
                null,
                new Price(4000, "EUR")));
  }

  /** The mix that the candles in a vessel ask for. */
  private String mixOf(String vessel) {
    return desk.studio().look(b -> b.cards().all(Drawers.CANDLE)).stream()
        .map(c -> c.body())
        .filter(c -> c.vessel().equals(vessel))
        .map(CandleDesign::mix)
        .findFirst()
        .orElse("grey");
  }

  /** Vessels cast, hardened, dry and proved wax-tight. */
  List<Piece> vessels(String vessel, int count) {
    var studio = desk.studio();
    var plan =
        new BatchPlan(
            BatchKind.CAST,
            mixOf(vessel),
            1,
            List.of(new BatchPlan.Makes(vessel, 1, count, vessel + "-mold")),
            List.of(),
            null);
    long batch = studio.startCast.run(act(), plan).made().id();
    List<Piece> pieces =
        studio
            .finishCast
            .run(
                act(),
                new FinishCast.Request(
                    batch, List.of(new FinishCast.Demolded(vessel, count)), null))
            .made();
    List<Long> ids = pieces.stream().map(Piece::id).toList();
    for (PieceStep step :
        List.of(PieceStep.HARDENED, PieceStep.DRIED, PieceStep.SEEP_TEST, PieceStep.HELD_WAX)) {
      studio.advancePieces.run(act(), AdvancePieces.Request.of(ids, step)).made();
    }
    return pieces;
  }

  /** Candles poured, rested and ready to sell; so much of a material goes into each pour. */
  List<Piece> candles(String candle, String pour, List<Piece> vessels, String material, double g) {
    var studio = desk.studio();
    var plan =
        new BatchPlan(
            BatchKind.POUR,
            pour,
            1,
            List.of(new BatchPlan.Makes(candle, 1, vessels.size(), null)),
            List.of(),
            null);
    long batch = studio.startPour.run(act(), plan).made().id();
    if (g > 0) {
      var draw = new pourwright.work.DrawForBatch.Request(batch, material, null, Amount.ofGrams(g));
      studio.drawForBatch.run(act(), draw).made();
    }
    List<Long> ids = vessels.stream().map(Piece::id).toList();
    var filled = List.of(new pourwright.work.FinishPour.Filled(candle, ids));
    List<Piece> candles =
        studio
            .finishPour
            .run(act(), new pourwright.work.FinishPour.Request(batch, filled, List.of()))
            .made();
    studio.advancePieces.run(act(), AdvancePieces.Request.of(ids, PieceStep.RESTING)).made();
    studio.advancePieces.run(act(), AdvancePieces.Request.of(ids, PieceStep.RESTED)).made();
    return candles;
  }

  /** A candle is signed for sale after one more of it, of the same lot, was burnt and passed. */
  Piece prove(String candle, String pour, String material, double g) {
    List<Piece> vessel = vessels(candle.split("-", 2)[0], 1);
    Piece burnt = candles(candle, pour, vessel, material, g).get(0);
    pourwright.work.Signed.forSale(desk.studio(), candle, burnt.id());
    return burnt;
  }

  /** The number of the lot of a material. */
  long lot(String material) {
    return desk.studio()
        .look(b -> b.lots().shelf(material, "LOT-" + material))
        .orElseThrow()
        .lot()
        .id();
  }

  /** An order of one line is taken; gives the line's number. */
  long order(String number, String candle, int pieces, String channel) {
    var line = new pourwright.order.OrderLine(number, candle, 1, pieces, null, null);
    var order =
        new pourwright.order.Order(
            number, channel, null, pourwright.order.OrderState.OPEN, List.of(line));
    desk.studio().orders.take(act(), order).made();
    return desk.studio().look(b -> b.orders().lineIds(number).get(line.key()));
  }
}
