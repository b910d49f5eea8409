package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import pourwright.batch.Batch;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.Movement;
import pourwright.stock.OnHand;
import pourwright.stock.Trace;
import pourwright.work.Act;
import pourwright.work.AdvancePieces;
import pourwright.work.CountLot;
import pourwright.work.Deed;
import pourwright.work.FinishCast;
import pourwright.work.Outcome;
import pourwright.work.RecordStep;
import pourwright.work.WriteOff;

/** Laws of the ledger over random histories. */
class LedgerProperties {
  /** A random history: what was done, and what can be undone. */
  private static final class History {
    final Bench bench = Bench.onSqlite();
    final Random random;
    final List<Long> lots = new ArrayList<>();
    final List<Long> running = new ArrayList<>();
    final List<Long> deeds = new ArrayList<>();
    final List<Act> acts = new ArrayList<>();

    History(int seed) {
      this.random = new Random(seed);
      for (int i = 0; i < 4; i++) {
        lots.add(bench.lot(i < 2 ? "grey-powder" : "soft-wax", "L" + i, 500 + random.nextInt(900)));
      }
    }

    Amount some() {
      return new Amount(pourwright.material.UnitKind.MASS, 1 + random.nextInt(400_000_000));
    }

    long lot() {
      return lots.get(random.nextInt(lots.size()));
    }

    Act act() {
      Act act = Bench.act();
      acts.add(act);
      return act;
    }

    void keep(Outcome<?> outcome) {
      if (outcome instanceof Outcome.Done<?> done) {
        deeds.add(done.deed().id());
      }
    }

    void go(int steps) {
      for (int i = 0; i < steps; i++) {
        one(random.nextInt(9));
      }
    }

    private void one(int what) {
      switch (what) {
        case 0 -> keep(bench.studio.startCast.run(act(), Bench.castPlan("bollard", 2)));
        case 1, 2, 3 -> step();
        case 4 ->
            keep(
                bench.studio.writeOff.run(act(), new WriteOff.Request(lot(), some(), Cause.WASTE)));
        case 5 -> keep(bench.studio.countLot.run(act(), new CountLot.Request(lot(), some(), null)));
        case 6 -> finish();
        case 7 -> advance();
        default -> undo();
      }
      running.clear();
      bench.studio.look(b -> b.batches().running()).forEach(b -> running.add(b.id()));
    }

    private void step() {
      if (!running.isEmpty()) {
        long batch = running.get(random.nextInt(running.size()));
        String material = random.nextBoolean() ? "grey-powder" : "soft-wax";
        keep(
            bench.studio.recordStep.run(
                act(),
                new RecordStep.Request(
                    batch, "weigh", List.of(new RecordStep.Taken(material, null, some())), null)));
      }
    }

    private void finish() {
      if (!running.isEmpty()) {
        keep(
            bench.studio.finishCast.run(
                act(),
                new FinishCast.Request(
                    running.get(0),
                    List.of(new FinishCast.Demolded("bollard", 1 + random.nextInt(2))),
                    null)));
      }
    }

    private void advance() {
      List<Piece> pieces =
          bench
              .studio
              .look(b -> b.pieces().list(pourwright.work.PieceBook.Which.ALL, null, 10))
              .items();
      if (!pieces.isEmpty()) {
        PieceStep step = random.nextBoolean() ? PieceStep.HARDENED : PieceStep.DRIED;
        long piece = pieces.get(random.nextInt(pieces.size())).id();
        keep(bench.studio.advancePieces.run(act(), AdvancePieces.Request.of(List.of(piece), step)));
      }
    }

    private void undo() {
      if (!deeds.isEmpty()) {
        keep(bench.studio.undo.run(act(), deeds.get(random.nextInt(deeds.size()))));
      }
    }

    List<Movement> movements() {
      List<Movement> all = new ArrayList<>();
      bench.studio.look(b -> all.addAll(b.lots().movements(null, 100_000).items()));
      return all;
    }
  }

  @Property(tries = 12, shrinking = ShrinkingMode.OFF)
  void balanceIsTheSumOfMovementsAndNeverBelowZero(@ForAll @IntRange(max = 100_000) int seed) {
    History history = new History(seed);
    history.go(60);
    Map<Long, Amount> sums = OnHand.derivedFrom(history.movements()).byLot();
    for (long lot : history.lots) {
      Amount kept = history.bench.studio.look(b -> b.lots().shelf(lot).orElseThrow().onHand());
      assertThat(kept).isEqualTo(sums.get(lot));
      assertThat(kept.isNegative()).isFalse();
    }
    assertThat(history.bench.store.keptRowsWrong()).isZero();
    assertThat(history.bench.store.rebuildKept()).isZero();
    history.bench.close();
  }

  /** All that a person can see of the state of things, the history itself left out. */
  private static Map<String, Object> seen(History history) {
    Map<String, Object> seen = new TreeMap<>();
    history.bench.studio.look(
        b -> {
          seen.put("shelves", b.lots().allShelves());
          seen.put("running", b.batches().running());
          seen.put("counts", b.pieces().counts());
          for (Batch batch : b.batches().list(null, null, 1000).items()) {
            seen.put("steps" + batch.id(), b.batches().steps(batch.id()));
            seen.put("batch" + batch.id(), batch);
          }
          for (Piece piece :
              b.pieces().list(pourwright.work.PieceBook.Which.ALL, null, 1000).items()) {
            seen.put("piece" + piece.id(), piece);
          }
          return true;
        });
    return seen;
  }

  @Property(tries = 12, shrinking = ShrinkingMode.OFF)
  void undoRestoresTheEarlierStateExactlyAndRedoTheLater(
      @ForAll @IntRange(max = 100_000) int seed) {
    History history = new History(seed);
    history.go(25);
    for (int i = 0; i < 15; i++) {
      int before = history.deeds.size();
      Map<String, Object> earlier = seen(history);
      history.go(1);
      if (history.deeds.size() == before + 1) {
        long deed = history.deeds.get(before);
        Map<String, Object> later = seen(history);
        Outcome<Deed> undone = history.bench.studio.undo.run(Bench.act(), deed);
        if (undone.isDone()) {
          assertThat(seen(history)).isEqualTo(earlier);
          Outcome<Deed> redone = history.bench.studio.undo.run(Bench.act(), undone.deed().id());
          assertThat(redone.isDone()).as(redone.toString()).isTrue();
          assertThat(seen(history)).isEqualTo(later);
        }
      }
    }
    history.bench.close();
  }

  @Property(tries = 8, shrinking = ShrinkingMode.OFF)
  void aRequestSentAgainCountsOnceHoweverOftenAndWhenever(
      @ForAll @IntRange(max = 100_000) int seed) {
    History history = new History(seed);
    Act tap = Bench.act();
    WriteOff.Request waste = new WriteOff.Request(history.lot(), Amount.ofGrams(1), Cause.WASTE);
    Outcome<?> first = history.bench.studio.writeOff.run(tap, waste);
    for (int i = 0; i < 4; i++) {
      history.go(5);
      int movements = history.movements().size();
      Outcome<?> again = history.bench.studio.writeOff.run(tap, waste);
      assertThat(again.deed().id()).isEqualTo(first.deed().id());
      assertThat(history.movements()).hasSize(movements);
    }
    history.bench.close();
  }

  @Property(tries = 12, shrinking = ShrinkingMode.OFF)
  void theTraceEqualsABruteForceWalk(@ForAll @IntRange(max = 100_000) int seed) {
    History history = new History(seed);
    history.go(80);
    Map<Trace.Node, Set<Trace.Node>> onward = new HashMap<>();
    Map<String, Amount> net = new HashMap<>();
    for (Movement m : history.movements()) {
      if (m.batch() != null) {
        net.merge(m.lot() + " " + m.batch(), m.change(), Amount::plus);
      }
    }
    net.forEach(
        (key, amount) -> {
          if (amount.isNegative()) {
            String[] ends = key.split(" ", -1);
            edge(onward, Trace.Kind.LOT, Long.parseLong(ends[0]), Trace.Kind.BATCH, ends[1]);
          }
        });
    List<Piece> pieces =
        history
            .bench
            .studio
            .look(b -> b.pieces().list(pourwright.work.PieceBook.Which.ALL, null, 1000))
            .items();
    for (Piece piece : pieces) {
      edge(onward, Trace.Kind.BATCH, piece.madeIn(), Trace.Kind.PIECE, "" + piece.id());
    }
    for (long lot : history.lots) {
      Trace.Node start = new Trace.Node(Trace.Kind.LOT, lot);
      assertThat(history.bench.studio.traceOnward(start).nodes())
          .containsExactlyInAnyOrderElementsOf(reach(onward, start));
    }
    for (Piece piece : pieces) {
      Trace.Node end = new Trace.Node(Trace.Kind.PIECE, piece.id());
      Set<Long> lots = new TreeSet<>();
      for (long lot : history.lots) {
        if (reach(onward, new Trace.Node(Trace.Kind.LOT, lot)).contains(end)) {
          lots.add(lot);
        }
      }
      assertThat(history.bench.studio.traceBack(end).of(Trace.Kind.LOT))
          .containsExactlyInAnyOrderElementsOf(lots);
    }
    history.bench.close();
  }

  private static void edge(
      Map<Trace.Node, Set<Trace.Node>> onward, Trace.Kind a, long from, Trace.Kind b, String to) {
    onward
        .computeIfAbsent(new Trace.Node(a, from), n -> new TreeSet<>())
        .add(new Trace.Node(b, Long.parseLong(to)));
  }

  private static Set<Trace.Node> reach(Map<Trace.Node, Set<Trace.Node>> onward, Trace.Node start) {
    Set<Trace.Node> reached = new TreeSet<>();
    for (Trace.Node next : onward.getOrDefault(start, Set.of())) {
      if (reached.add(next)) {
        reached.addAll(reach(onward, next));
      }
    }
    return reached;
  }
}
