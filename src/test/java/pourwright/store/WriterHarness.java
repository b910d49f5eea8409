package pourwright.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.work.Act;
import pourwright.work.FinishCast;
import pourwright.work.Outcome;
import pourwright.work.ReceiveLot;
import pourwright.work.RecordStep;
import pourwright.work.Studio;
import pourwright.work.WriteOff;

/**
 * A studio without pages that writes as fast as it can, to be killed: some clients record movements
 * and batch steps, and each line of the acknowledgements is written after the commit it is for.
 *
 * <p>Arguments: folder, file of acknowledgements, FULL or NORMAL, clients, commits a client (0:
 * until killed).
 */
final class WriterHarness {
  private final SqliteStore store;
  private final Studio studio;
  private final Path acks;
  private final AtomicInteger done = new AtomicInteger();
  private final String run = Long.toString(System.nanoTime(), 36);

  private WriterHarness(SqliteStore store, StudioFolder folder, Path acks) {
    this.store = store;
    this.studio = new Studio(store.unitOfWork(), Clock.systemUTC(), new HashedFiles(folder));
    this.acks = acks;
  }

  public static void main(String[] words) throws Exception {
    StudioFolder folder = new StudioFolder(Path.of(words[0]));
    try (SqliteStore store = SqliteStore.openWith(folder, words[2])) {
      WriterHarness harness = new WriterHarness(store, folder, Path.of(words[1]));
      int clients = Integer.parseInt(words[3]);
      int commits = Integer.parseInt(words[4]);
      Thread[] threads = new Thread[clients];
      for (int i = 0; i < clients; i++) {
        String name = "c" + i;
        threads[i] = new Thread(() -> harness.client(name, commits), name);
        threads[i].start();
      }
      for (Thread thread : threads) {
        thread.join();
      }
    }
  }

  private void client(String name, int commits) {
    long lot = receive(name);
    long batch = -1;
    long lastStep = -1;
    for (int i = 1; commits == 0 || i < commits; i++) {
      Act act = Act.of("mk", run + "-" + name + "-" + i);
      switch (i % 20) {
        case 0 -> lot = receive(name + "-" + i);
        case 1 -> batch = ack(act, studio.startCast.run(act, Bench.castPlan("bollard", 3))).id();
        case 9 ->
            ack(
                act,
                studio.writeOff.run(
                    act, new WriteOff.Request(lot, Amount.ofGrams(1), Cause.WASTE)));
        case 12 -> ack(act, studio.undo.run(act, lastStep));
        case 19 ->
            ack(
                act,
                studio.finishCast.run(
                    act,
                    new FinishCast.Request(
                        batch, List.of(new FinishCast.Demolded("bollard", 3)), "T")));
        default -> {
          RecordStep.Taken taken = new RecordStep.Taken("grey-powder", lot, Amount.ofGrams(i % 20));
          Outcome<?> step =
              studio.recordStep.run(
                  act, new RecordStep.Request(batch, "s" + i, List.of(taken, water(lot)), 20.5));
          ack(act, step);
          lastStep = step.deed().id();
        }
      }
      if (done.incrementAndGet() % 200 == 0) {
        store.tidy();
      }
    }
  }

  private static RecordStep.Taken water(long lot) {
    return new RecordStep.Taken("grey-powder", lot, Amount.ofGrams(0.5));
  }

  private long receive(String name) {
    Act act = Act.of("mk", run + "-" + name + "-lot");
    ReceiveLot.Request request =
        ReceiveLot.Request.of("grey-powder", run + name, Amount.ofGrams(5000));
    return ack(act, studio.receiveLot.run(act, request)).lot().id();
  }

  private <T> T ack(Act act, Outcome<T> outcome) {
    T made = outcome.made();
    try {
      synchronized (acks) {
        Files.write(
            acks,
            (act.requestKey() + "\n").getBytes(StandardCharsets.UTF_8),
            StandardOpenOption.CREATE,
            StandardOpenOption.APPEND);
      }
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    return made;
  }
}
