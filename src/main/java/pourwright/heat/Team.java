package pourwright.heat;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;

/**
 * A caller and its helpers doing pieces of work. Pieces are claimed one by one, so that a helper
 * that the machine has no core for holds nobody up. With one member there is no helper thread.
 * Helpers are daemon threads that end with {@link #close}.
 */
final class Team implements AutoCloseable {
  private static final int SPINS = 200;
  private static final int YIELDS = 1000;
  private static final long NAP_NANOS = 50_000;
  private static final long ROUND = 1L << 32;

  /** A numbered piece of work, done by a numbered member. */
  @FunctionalInterface
  interface Work {
    void piece(int piece, int member);
  }

  private record Round(long number, int pieces, Work work) {}

  private final int size;
  private final AtomicLong claimed = new AtomicLong();
  private final AtomicInteger done = new AtomicInteger();
  private volatile Round round = new Round(0, 0, (piece, member) -> {});
  private volatile boolean closed;
  private volatile boolean failed;

  Team(int size) {
    this.size = size;
    for (int i = 1; i < size; i++) {
      int member = i;
      Thread helper = new Thread(() -> help(member), "heat-" + i);
      helper.setDaemon(true);
      helper.start();
    }
  }

  /** Does all pieces; returns when every one is done. */
  void each(int pieces, Work work) {
    if (size == 1) {
      for (int i = 0; i < pieces; i++) {
        work.piece(i, 0);
      }
      return;
    }
    Round now = new Round(round.number + 1, pieces, work);
    done.set(0);
    claimed.set(now.number * ROUND);
    round = now;
    work(now, 0);
    for (int i = 0; done.get() < pieces; i++) {
      pause(i);
    }
    if (failed) {
      throw new IllegalStateException("a helper failed at its piece of work");
    }
  }

  /** Claims and does pieces of a round until none is left or another round has begun. */
  private boolean work(Round of, int member) {
    boolean any = false;
    while (true) {
      long ticket = claimed.get();
      int piece = (int) (ticket % ROUND);
      if (ticket / ROUND != of.number || piece >= of.pieces) {
        return any;
      }
      if (claimed.compareAndSet(ticket, ticket + 1)) {
        any = true;
        try {
          of.work.piece(piece, member);
        } catch (RuntimeException | Error e) {
          failed = true;
          throw e;
        } finally {
          done.incrementAndGet();
        }
      }
    }
  }

  private void help(int member) {
    int idle = 0;
    while (!closed) {
      idle = work(round, member) ? 0 : idle + 1;
      pause(idle);
    }
  }

  private static void pause(int turn) {
    if (turn < SPINS) {
      Thread.onSpinWait();
    } else if (turn < YIELDS) {
      Thread.yield();
    } else {
      LockSupport.parkNanos(NAP_NANOS);
    }
  }

  @Override
  public void close() {
    closed = true;
  }
}
