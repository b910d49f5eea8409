package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import pourwright.batch.Batch;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.work.DrawForBatch;
import pourwright.work.Outcome;
import pourwright.work.Reason;
import pourwright.work.Subject;
import pourwright.work.WriteOff;

/** Several people at the books at once. */
class ManyHandsTest {
  private static <T> List<T> together(int hands, Callable<List<T>> work) throws Exception {
    ExecutorService people = Executors.newFixedThreadPool(hands);
    try {
      List<Future<List<T>>> running = new ArrayList<>();
      for (int i = 0; i < hands; i++) {
        running.add(people.submit(work));
      }
      List<T> all = new ArrayList<>();
      for (Future<List<T>> one : running) {
        all.addAll(one.get(60, TimeUnit.SECONDS));
      }
      return all;
    } finally {
      people.shutdownNow();
    }
  }

  @Test
  void eightWritersLoseNothing() throws Exception {
    try (Bench bench = Bench.onSqlite()) {
      long lot = bench.lot("grey-powder", "P-1", 1000);
      List<Outcome<?>> all =
          together(
              8,
              () -> {
                List<Outcome<?>> mine = new ArrayList<>();
                for (int i = 0; i < 25; i++) {
                  mine.add(
                      bench.studio.writeOff.run(
                          Bench.act(), new WriteOff.Request(lot, Amount.ofGrams(1), Cause.WASTE)));
                }
                return mine;
              });
      assertThat(all).hasSize(200).allMatch(Outcome::isDone);
      assertThat(bench.onHand(lot)).isEqualTo(800);
      assertThat(bench.store.keptRowsWrong()).isZero();
    }
  }

  @Test
  void theLastKilogramGoesToOne() throws Exception {
    try (Bench bench = Bench.onSqlite()) {
      long lot = bench.lot("grey-powder", "P-1", 1000);
      Batch batch = bench.studio.startCast.run(Bench.act(), Bench.castPlan("bollard", 1)).made();
      List<Outcome<?>> all =
          together(
              8,
              () ->
                  List.of(
                      bench.studio.drawForBatch.run(
                          Bench.act(),
                          new DrawForBatch.Request(
                              batch.id(), "grey-powder", null, Amount.ofGrams(1000)))));
      assertThat(all.stream().filter(Outcome::isDone)).hasSize(1);
      assertThat(bench.onHand(lot)).isZero();
    }
  }

  @Test
  void fromTheMomentOfAHoldNobodyDraws() throws Exception {
    try (Bench bench = Bench.onSqlite()) {
      long lot = bench.lot("grey-powder", "P-1", 1000);
      Batch batch = bench.studio.startCast.run(Bench.act(), Bench.castPlan("bollard", 1)).made();
      java.util.concurrent.atomic.AtomicLong heldBy = new java.util.concurrent.atomic.AtomicLong();
      List<Outcome<?>> draws =
          together(
              2,
              () -> {
                List<Outcome<?>> mine = new ArrayList<>();
                for (int i = 0; i < 30; i++) {
                  if (i == 10 && heldBy.compareAndSet(0, 1)) {
                    heldBy.set(
                        bench
                            .studio
                            .placeHold
                            .run(Bench.act(), Subject.of(Subject.Kind.LOT, lot), "lumps")
                            .deed()
                            .id());
                  }
                  mine.add(
                      bench.studio.drawForBatch.run(
                          Bench.act(),
                          new DrawForBatch.Request(
                              batch.id(), "grey-powder", lot, Amount.ofGrams(1))));
                }
                return mine;
              });
      long hold = heldBy.get();
      for (Outcome<?> draw : draws) {
        if (draw instanceof Outcome.Done<?> done) {
          assertThat(done.deed().id()).isLessThan(hold);
        } else {
          assertThat(((Outcome.Refused<?>) draw).reason()).isEqualTo(Reason.IT_IS_HELD);
        }
      }
      assertThat(draws).anyMatch(d -> !d.isDone());
    }
  }
}
