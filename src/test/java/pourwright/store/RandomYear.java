package pourwright.store;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.batch.PieceStep;
import pourwright.batch.Tightness;
import pourwright.material.UnitKind;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.Price;
import pourwright.stock.Shelf;
import pourwright.work.AdvancePieces;
import pourwright.work.AfterSale;
import pourwright.work.CarryRest;
import pourwright.work.CountLot;
import pourwright.work.FinishCast;
import pourwright.work.FinishPour;
import pourwright.work.Outcome;
import pourwright.work.PieceBook;
import pourwright.work.ReceiveLot;
import pourwright.work.RecordAfterSale;
import pourwright.work.RecordStep;
import pourwright.work.RefillVessel;
import pourwright.work.Signed;
import pourwright.work.WriteOff;

/**
 * A random history of everything a ledger must stand: deliveries with and without a price, draws
 * over several lots, what is put back, trays that are split, merged and mixed up, bought vessels,
 * rests carried into another pour, sales, stalls, goods left with shops, returns, refills, counts,
 * losses, and corrections of corrections. What is refused is part of it.
 */
final class RandomYear implements AutoCloseable {
  private static final List<String> MATERIALS =
      List.of("grey-powder", "soft-wax", "scent", "bought-glass");
  final Bench bench = Bench.onSqlite();
  final Random random;

  /** How often each kind of deed was done, by name. */
  final Map<String, Integer> done = new TreeMap<>();

  /** Deeds in the order of doing. */
  final List<Long> deeds = new ArrayList<>();

  private int lots;
  private int orders;
  private int markets;

  RandomYear(int seed) {
    this.random = new Random(seed);
    Signed.forSale(bench.studio, "rain");
    bench.studio.saveSetting.run(Bench.act(), "slate.price.rain", "24.00");
    for (String material : MATERIALS) {
      receive(material);
      receive(material);
    }
    order();
  }

  /** Lets so many things happen. */
  void go(int steps) {
    for (int i = 0; i < steps; i++) {
      bench.clock.move(Duration.ofHours(1 + random.nextInt(30)));
      one(random.nextInt(36));
    }
  }

  private void one(int what) {
    switch (what) {
      case 0 -> receive(any(MATERIALS));
      case 1, 2 -> begin(BatchKind.CAST);
      case 3, 4 -> begin(BatchKind.POUR);
      case 5, 6, 7, 8 -> weigh();
      case 9 -> putBack();
      case 10, 11 -> carry();
      case 12, 13 -> finishCast();
      case 14, 15 -> finishPour();
      case 16 -> loseOrCount();
      case 17 -> lay();
      case 18 -> mixUp();
      case 19, 20, 21 -> hurry();
      case 22, 23, 24 -> sellOrSo();
      case 25, 33 -> comeBack();
      case 26, 34 -> refill();
      case 27 -> order();
      case 28 -> keep("market", OutOnSale.market(this, "Market " + markets++));
      case 29, 35 -> keep("shop", OutOnSale.shop(this, "Quay " + markets++));
      default -> undo();
    }
  }

  <T> T any(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  private boolean keep(String what, Outcome<?> outcome) {
    if (outcome instanceof Outcome.Done<?> one) {
      deeds.add(one.deed().id());
      done.merge(what, 1, Integer::sum);
      return true;
    }
    done.merge("refused: " + what, 1, Integer::sum);
    return false;
  }

  private void receive(String material) {
    Amount amount =
        material.equals("bought-glass")
            ? Amount.ofPieces(1 + random.nextInt(6))
            : Amount.ofGrams(100 + random.nextInt(900));
    Price price = random.nextInt(6) == 0 ? null : new Price(random.nextInt(5000), "EUR");
    keep(
        "receive",
        bench.studio.receiveLot.run(
            Bench.act(),
            new ReceiveLot.Request(material, "L" + lots++, amount, null, null, null, price)));
  }

  private void begin(BatchKind kind) {
    if (running(kind).size() < 3) {
      keep(
          "begin",
          kind == BatchKind.CAST
              ? bench.studio.startCast.run(Bench.act(), Bench.castPlan("bollard", 3))
              : bench.studio.startPour.run(Bench.act(), Bench.pourPlan("rain", 3)));
    }
  }

  private List<Batch> running(BatchKind kind) {
    return bench.studio.look(b -> b.batches().running()).stream()
        .filter(b -> b.plan().kind() == kind)
        .toList();
  }

  /** An amount, now and then more than one lot has. */
  private Amount some() {
    return new Amount(UnitKind.MASS, 1 + random.nextInt(600_000_000));
  }

  private void weigh() {
    List<Batch> all = bench.studio.look(b -> b.batches().running());
    if (all.isEmpty()) {
      return;
    }
    Batch batch = any(all);
    String material =
        batch.plan().kind() == BatchKind.CAST
            ? "grey-powder"
            : random.nextBoolean() ? "soft-wax" : "scent";
    Outcome<?> outcome =
        bench.studio.recordStep.run(
            Bench.act(),
            new RecordStep.Request(
                batch.id(),
                "weigh",
                List.of(
                    new RecordStep.Taken(
                        material, random.nextInt(4) == 0 ? lotOf(material) : null, some())),
                null));
    if (keep("weigh", outcome)
        && bench.studio.look(b -> b.lots().ofDeed(outcome.deed().id())).size() > 1) {
      done.merge("several lots at once", 1, Integer::sum);
    }
  }

  private @Nullable Long lotOf(String material) {
    List<Shelf> shelves = bench.studio.look(b -> b.lots().shelves(material));
    return shelves.isEmpty() ? null : any(shelves).lot().id();
  }

  private void putBack() {
    List<Batch> all = bench.studio.look(b -> b.batches().running());
    if (!all.isEmpty()) {
      Batch batch = any(all);
      var drawn = bench.studio.look(b -> b.lots().ofBatch(batch.id()));
      if (!drawn.isEmpty()) {
        keep(
            "put back",
            bench.studio.returnToLot.run(Bench.act(), batch.id(), any(drawn).lot(), some()));
      }
    }
  }

  private void carry() {
    List<Batch> into = running(BatchKind.POUR);
    List<Batch> from =
        bench.studio.look(b -> b.batches().list(BatchKind.POUR, null, 50)).items().stream()
            .filter(b -> !b.isRunning())
            .toList();
    if (!into.isEmpty() && !from.isEmpty()) {
      Batch rest = any(from);
      Amount left = bench.studio.look(b -> CarryRest.left(b, rest.id()));
      long units = Math.max(1, (long) (left.units() * random.nextDouble() * 0.5));
      keep(
          "carry",
          bench.studio.carryRest.run(
              Bench.act(),
              new CarryRest.Request(rest.id(), any(into).id(), new Amount(UnitKind.MASS, units))));
    }
  }

  private void finishCast() {
    List<Batch> all = running(BatchKind.CAST);
    if (!all.isEmpty()) {
      keep(
          "finish cast",
          bench.studio.finishCast.run(
              Bench.act(),
              new FinishCast.Request(
                  any(all).id(),
                  List.of(new FinishCast.Demolded("bollard", random.nextInt(4))),
                  random.nextInt(3) == 0 ? null : "T" + random.nextInt(9))));
    }
  }

  private void finishPour() {
    List<Batch> all = running(BatchKind.POUR);
    if (all.isEmpty()) {
      return;
    }
    List<Long> dry = some(p -> p.state() instanceof PieceState.Dry, 3);
    List<FinishPour.Bought> bought = new ArrayList<>();
    Long glass = lotOf("bought-glass");
    if (glass != null && random.nextInt(3) == 0) {
      bought.add(new FinishPour.Bought("rain", "glass", glass, 1 + random.nextInt(2)));
    }
    Outcome<?> outcome =
        bench.studio.finishPour.run(
            Bench.act(),
            new FinishPour.Request(
                any(all).id(), List.of(new FinishPour.Filled("rain", dry)), bought));
    if (keep("finish pour", outcome) && !bought.isEmpty()) {
      done.merge("bought vessels", 1, Integer::sum);
    }
  }

  private void loseOrCount() {
    Long lot = lotOf(any(MATERIALS));
    if (lot == null) {
      return;
    }
    Shelf shelf = bench.studio.look(b -> b.lots().shelf(lot)).orElseThrow();
    boolean pieces = shelf.lot().kind() == UnitKind.COUNT;
    Amount amount = pieces ? Amount.ofPieces(1 + random.nextInt(3)) : some();
    if (random.nextBoolean()) {
      keep(
          "count", bench.studio.countLot.run(Bench.act(), new CountLot.Request(lot, amount, null)));
    } else {
      Cause cause = any(List.of(Cause.WASTE, Cause.TEST, Cause.GIFT, Cause.SOLD));
      keep(
          "write off",
          bench.studio.writeOff.run(Bench.act(), new WriteOff.Request(lot, amount, cause)));
    }
  }

  List<Piece> pieces() {
    return bench.studio.look(b -> b.pieces().list(PieceBook.Which.ALL, null, 1000)).items();
  }

  private List<Long> some(Predicate<Piece> which, int most) {
    List<Piece> fitting = new ArrayList<>(pieces().stream().filter(which).toList());
    java.util.Collections.shuffle(fitting, random);
    return fitting.stream().limit(1 + random.nextInt(most)).map(Piece::id).toList();
  }

  private void lay() {
    List<Long> some = some(p -> PieceState.candleOf(p.state()).isEmpty(), 5);
    if (!some.isEmpty()) {
      keep("lay", bench.studio.arrangeTrays.lay(Bench.act(), "T" + random.nextInt(9), some));
    }
  }

  private void mixUp() {
    var trays = bench.studio.look(b -> b.pieces().trays());
    if (!trays.isEmpty()) {
      keep("mix up", bench.studio.arrangeTrays.mixUp(Bench.act(), any(trays).id()));
    }
  }

  private boolean move(PieceStep step, List<Long> pieces, @Nullable Long line) {
    return !pieces.isEmpty()
        && keep(
            step.words(),
            bench.studio.advancePieces.run(
                Bench.act(), new AdvancePieces.Request(pieces, step, null, line)));
  }

  /** Many pieces go a step on, each where its life allows. */
  private void hurry() {
    move(PieceStep.HARDENED, some(p -> p.state() instanceof PieceState.Green, 6), null);
    move(PieceStep.DRIED, some(p -> p.state() instanceof PieceState.Hardened, 6), null);
    move(
        PieceStep.SEEP_TEST,
        some(p -> p.state() instanceof PieceState.Dry d && d.tightness() != Tightness.WAX, 2),
        null);
    move(PieceStep.HELD_WAX, some(p -> p.state() instanceof PieceState.SeepTesting, 2), null);
    move(PieceStep.RESTING, some(p -> p.state() instanceof PieceState.Poured, 6), null);
    move(PieceStep.RESTED, some(p -> p.state() instanceof PieceState.Resting, 6), null);
  }

  private void sellOrSo() {
    List<Long> rested = some(p -> p.state() instanceof PieceState.Rested, 2);
    List<Long> picked = some(p -> p.state() instanceof PieceState.Picked, 2);
    switch (random.nextInt(7)) {
      case 0, 1 -> move(PieceStep.PICKED, rested, line());
      case 2 -> move(PieceStep.SOLD, rested, random.nextBoolean() ? line() : null);
      case 3 -> move(PieceStep.GIVEN, rested, null);
      case 4 -> move(PieceStep.TESTED, rested, null);
      case 5 -> move(PieceStep.UNPICKED, picked, null);
      default -> move(PieceStep.SOLD, picked, null);
    }
    if (random.nextInt(6) == 0) {
      move(PieceStep.SCRAPPED, some(p -> !(p.state() instanceof PieceState.Gone), 1), null);
    }
  }

  private @Nullable Long line() {
    return bench.studio.look(
        b ->
            b.orders().list(OrderState.OPEN, null, 20).items().stream()
                .flatMap(o -> b.orders().lineIds(o.number()).values().stream())
                .findFirst()
                .orElse(null));
  }

  private void comeBack() {
    for (long piece :
        some(p -> p.state() instanceof PieceState.Gone g && g.how() == PieceStep.SOLD, 1)) {
      keep(
          "come back",
          bench.studio.afterSale.run(
              Bench.act(),
              new RecordAfterSale.Request(
                  AfterSale.Kind.RETURN, piece, null, "", null, random.nextInt(3) * 100L)));
    }
  }

  private void refill() {
    for (long piece : some(p -> p.state() instanceof PieceState.CameBack, 1)) {
      keep(
          "refill",
          bench.studio.refillVessel.run(
              Bench.act(), new RefillVessel.Request(piece, true, true, true, true)));
    }
  }

  private void order() {
    OrderLine line = new OrderLine("A-" + orders++, "rain", 1, 3, null, null);
    keep(
        "order",
        bench.studio.orders.take(
            Bench.act(), new Order(line.order(), "shop", null, OrderState.OPEN, List.of(line))));
  }

  private void undo() {
    if (!deeds.isEmpty()) {
      int back = random.nextInt(3) == 0 ? random.nextInt(deeds.size()) : random.nextInt(3);
      long deed = deeds.get(Math.max(0, deeds.size() - 1 - back));
      keep("undo", bench.studio.undo.run(Bench.act(), deed));
    }
  }

  @Override
  public void close() {
    bench.close();
  }
}
