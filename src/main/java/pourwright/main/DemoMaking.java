package pourwright.main;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Grade;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.batch.PlannedAmount;
import pourwright.batch.PlannedStep;
import pourwright.card.Amounts;
import pourwright.card.CandleDesign;
import pourwright.card.CardBook;
import pourwright.card.ResolvedCandle;
import pourwright.card.ResolvedMix;
import pourwright.card.ResolvedPour;
import pourwright.stock.Amount;
import pourwright.work.AdvancePieces;
import pourwright.work.FinishCast;
import pourwright.work.FinishPour;
import pourwright.work.RecordStep;

/** Casts and pours of the demo studio, step by step, from the bucket to the shelf. */
final class DemoMaking {
  private final DemoHistory history;
  private final DemoStock stock;
  private final CardBook book;
  private final DemoLots lots;
  private final Map<String, Deque<Long>> tight = new HashMap<>();
  private final Map<String, Deque<Long>> shelf = new HashMap<>();
  private final Map<String, Deque<Long>> waiting = new HashMap<>();
  private final Map<String, Boolean> waxTight = new HashMap<>();
  private final Map<String, Integer> underWay = new HashMap<>();
  private final Map<String, Integer> resting = new HashMap<>();
  private int bollardCasts;

  DemoMaking(DemoHistory history, DemoStock stock, CardBook book) {
    this.history = history;
    this.stock = stock;
    this.book = book;
    this.lots = new DemoLots(history);
  }

  /** Finished candles of a design, oldest first. */
  Deque<Long> shelf(String design) {
    return shelf.computeIfAbsent(design, d -> new ArrayDeque<>());
  }

  /**
   * How many finished candles may be sold, as far as they are asked for; these stand first then.
   * What is held is set by, what waits for the check burn of a lot stands behind.
   */
  int free(String design, int wanted) {
    Deque<Long> shelf = shelf(design);
    boolean holds = !history.studio().look(books -> books.holds().standing()).isEmpty();
    List<Long> free = new ArrayList<>();
    List<Long> waits = new ArrayList<>();
    while (!shelf.isEmpty() && free.size() < wanted) {
      long piece = shelf.removeFirst();
      if (!lots.areBurnt(piece)) {
        waits.add(piece);
      } else if (!holds
          || history.studio().look(books -> books.holds().stopping(piece)).isEmpty()) {
        free.add(piece);
      }
    }
    for (List<Long> back : List.of(waits, free)) {
      for (int i = back.size() - 1; i >= 0; i--) {
        shelf.addFirst(back.get(i));
      }
    }
    return free.size();
  }

  /** What of the lots has been burnt. */
  DemoLots lots() {
    return lots;
  }

  /** Vessels that may be poured into. */
  Deque<Long> tight(String vessel) {
    return tight.computeIfAbsent(vessel, v -> new ArrayDeque<>());
  }

  /** Vessels that are cast and not yet proved tight, those that broke among them. */
  int underWay(String vessel) {
    return underWay.getOrDefault(vessel, 0);
  }

  /** Candles of a design that are poured and not yet on the shelf. */
  int resting(String design) {
    return resting.getOrDefault(design, 0);
  }

  /** A busy studio does not keep what it cannot sell as new. */
  private void setBy(long piece, double days, PieceStep step) {
    if (history.size().busy()) {
      history.inDays(days, () -> advance(List.of(piece), step));
    }
  }

  int bollardCasts() {
    return bollardCasts;
  }

  private PlannedStep weigh(String key, String sentence, Amounts amounts) {
    List<PlannedAmount> planned = new ArrayList<>();
    amounts
        .byMaterial()
        .forEach(
            (code, amount) -> {
              var unit = stock.material(code).unit();
              planned.add(new PlannedAmount(code, new Amount(unit, unit.toSmall(amount))));
            });
    return PlannedStep.weigh(key, sentence, planned);
  }

  private void advance(List<Long> pieces, PieceStep step) {
    history.studio().advancePieces.run(history.act(), AdvancePieces.Request.of(pieces, step));
  }

  private void record(
      long batch, String key, Amounts amounts, @org.jspecify.annotations.Nullable Double celsius) {
    history
        .studio()
        .recordStep
        .run(history.act(), new RecordStep.Request(batch, key, stock.take(amounts), celsius));
  }

  /** Casts so many of a vessel. */
  void cast(String vessel, int count) {
    CandleDesign design =
        book.all(CandleDesign.class).stream()
            .filter(c -> c.vessel().equals(vessel))
            .findFirst()
            .orElseThrow();
    ResolvedCandle candle = design.resolve(book);
    ResolvedMix.Mixing mixing = candle.mix().mixing(candle.vessel().mixMl().value() * count);
    String what = count + " " + candle.vessel().name();
    BatchPlan plan =
        new BatchPlan(
            BatchKind.CAST,
            design.mix(),
            1,
            List.of(new BatchPlan.Makes(vessel, 1, count, vessel + "-mold")),
            List.of(
                PlannedStep.hands("level", "Level and clean the molds for " + what, 5),
                weigh("mix", "Weigh colour and powder into the water and mix", mixing.materials()),
                PlannedStep.hands(
                    "fill", "Fill low in a thin stream, tap, level, cover", 2 * count),
                PlannedStep.waiting("set", "Set", candle.mix().card().times().demoldFromH() * 60),
                PlannedStep.hands("demold", "Demold " + what, 3 * count)),
            null);
    Batch batch = history.studio().startCast.run(history.act(), plan).made();
    record(batch.id(), "level", Amounts.NONE, null);
    record(batch.id(), "mix", mixing.materials(), 18 + 6 * history.random().nextDouble());
    record(batch.id(), "fill", Amounts.of("paper-400", 1).plus(extras(16)), null);
    underWay.merge(vessel, count, Integer::sum);
    bollardCasts += vessel.equals("bollard") ? 1 : 0;
    double hours = candle.mix().card().times().demoldFromH();
    history.inDays(Math.max(0.3, hours / 24), () -> demold(batch.id(), vessel, count, candle));
  }

  /** What a busy studio uses up beside: cups, sticks, gloves, paper. */
  private Amounts extras(int about) {
    Amounts sum = Amounts.NONE;
    for (int i = 0; history.size().busy() && i < about; i++) {
      sum = sum.plus(Amounts.of("consumable-" + (1 + history.random().nextInt(60)), 1));
    }
    return sum;
  }

  private void demold(long batch, String vessel, int count, ResolvedCandle candle) {
    record(batch, "demold", Amounts.NONE, null);
    DemoDefects.record(history, batch, vessel);
    int broken = history.random().nextInt(18) == 0 ? 1 : 0;
    List<Piece> pieces =
        history
            .studio()
            .finishCast
            .run(
                history.act(broken == 0 ? "" : "one corner came off"),
                new FinishCast.Request(
                    batch, List.of(new FinishCast.Demolded(vessel, count - broken)), null))
            .made();
    List<Long> ids = pieces.stream().map(Piece::id).toList();
    underWay.merge(vessel, ids.size() - count, Integer::sum);
    if (ids.isEmpty()) {
      return;
    }
    double harden = candle.mix().card().times().hardenH() / 24;
    double dry = candle.mix().card().times().dryH() / 24;
    history.inDays(harden + 0.5, () -> advance(ids, PieceStep.HARDENED));
    history.inDays(harden + dry + 1, () -> seal(ids, candle));
  }

  private void seal(List<Long> ids, ResolvedCandle candle) {
    advance(ids, PieceStep.DRIED);
    List<Long> good = new ArrayList<>(ids);
    if (history.random().nextInt(12) == 0) {
      long second = good.remove(0);
      history
          .studio()
          .advancePieces
          .run(
              history.act("bubbles at the rim"),
              new AdvancePieces.Request(List.of(second), PieceStep.GRADED, Grade.SECOND, null));
      underWay.merge(candle.design().vessel(), -1, Integer::sum);
      setBy(second, 30, PieceStep.GIVEN);
    }
    if (good.isEmpty()) {
      return;
    }
    candle
        .sealers()
        .times(good.size())
        .byMaterial()
        .forEach((code, ml) -> stock.take(Amounts.of(code, ml)));
    advance(good, PieceStep.SEALED);
    history.inDays(8, () -> prove(good, candle));
  }

  private void prove(List<Long> ids, ResolvedCandle candle) {
    advance(ids, PieceStep.DRIED);
    List<Long> good = new ArrayList<>(ids);
    if (history.random().nextInt(25) == 0) {
      long leaked = good.remove(0);
      advance(List.of(leaked), PieceStep.LEAKED);
      underWay.merge(candle.design().vessel(), -1, Integer::sum);
      setBy(leaked, 8, PieceStep.SCRAPPED);
    }
    if (good.isEmpty()) {
      return;
    }
    advance(good, PieceStep.HELD_WATER);
    String vessel = candle.design().vessel();
    history.inDays(
        2.2,
        () -> {
          advance(good, PieceStep.DRIED);
          List<Long> ready = new ArrayList<>(good);
          underWay.merge(vessel, -good.size(), Integer::sum);
          Boolean proved = waxTight.putIfAbsent(vessel, false);
          if (proved == null) {
            long first = ready.remove(0);
            advance(List.of(first), PieceStep.SEEP_TEST);
            history.inDays(1.5, () -> seepTested(first, vessel));
          }
          (Boolean.TRUE.equals(proved) ? tight(vessel) : waiting(vessel)).addAll(ready);
        });
  }

  /** Vessels held back until the first of their design has proved wax-tight. */
  private Deque<Long> waiting(String vessel) {
    return waiting.computeIfAbsent(vessel, v -> new ArrayDeque<>());
  }

  private void seepTested(long piece, String vessel) {
    advance(List.of(piece), PieceStep.HELD_WAX);
    waxTight.put(vessel, true);
    tight(vessel).add(piece);
    tight(vessel).addAll(waiting(vessel));
    waiting(vessel).clear();
  }

  /** Pours so many of a design, as far as vessels stand ready. */
  void pour(CandleDesign design, int wanted) {
    Deque<Long> vessels = tight(design.vessel());
    int count = Math.min(wanted, vessels.size());
    if (count == 0) {
      return;
    }
    List<Long> ids = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      ids.add(vessels.removeFirst());
    }
    ResolvedCandle candle = design.resolve(book);
    ResolvedPour.Melt melt = candle.pour().melt(candle.netG().value() * count);
    var t = candle.pour().card().temperatures();
    BatchPlan plan =
        new BatchPlan(
            BatchKind.POUR,
            design.pour(),
            1,
            List.of(new BatchPlan.Makes(design.code(), 1, count, null)),
            List.of(
                weigh(
                    "wick", "Wick, weigh the empty vessel, warm it", candle.wicking().times(count)),
                weigh("melt", "Melt the wax and stir the scent in", melt.materials()),
                PlannedStep.hands("pour", "Pour " + count + " " + design.name(), 2 * count),
                PlannedStep.waiting("set", "Set", 720)),
            null);
    Batch batch = history.studio().startPour.run(history.act(), plan).made();
    record(batch.id(), "wick", candle.wicking().times(count), null);
    double heat = t.addFromC() + (t.addToC() - t.addFromC()) * history.random().nextDouble();
    record(batch.id(), "melt", melt.materials(), heat);
    double poured = t.pourFromC() + (t.pourToC() - t.pourFromC()) * history.random().nextDouble();
    record(batch.id(), "pour", candle.boxes(count).plus(extras(13)), poured);
    history
        .studio()
        .finishPour
        .run(
            history.act(),
            new FinishPour.Request(
                batch.id(), List.of(new FinishPour.Filled(design.code(), ids)), List.of()));
    resting.merge(design.code(), count, Integer::sum);
    history.inDays(1, () -> advance(ids, PieceStep.RESTING));
    history.inDays(
        1 + candle.restDays(),
        () -> {
          advance(ids, PieceStep.RESTED);
          resting.merge(design.code(), -count, Integer::sum);
          shelf(design.code()).addAll(ids);
        });
  }
}
