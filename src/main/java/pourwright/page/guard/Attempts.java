package pourwright.page.guard;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;

/**
 * Slows guessing down: five wrong passphrases from one address are free, after that each wrong one
 * doubles the wait, up to a quarter of an hour. All addresses together have forty.
 */
public final class Attempts {
  private static final int FREE = 5;
  private static final int FREE_OF_ALL = 40;
  private static final int DOUBLINGS_MAX = 9;
  private static final Duration FIRST_WAIT = Duration.ofSeconds(2);
  private static final Duration WAIT_MAX = Duration.ofMinutes(15);
  private static final int ADDRESSES_MAX = 10_000;
  private static final String ALL = "";

  private record Wrong(int times, Instant last) {}

  private final Map<String, Wrong> byAddress = new HashMap<>();

  /** How long an address has to wait before the next attempt; zero when it may try now. */
  public synchronized Duration waitFor(String address, Instant now) {
    Duration own = left(byAddress.get(address), FREE, now);
    Duration all = left(byAddress.get(ALL), FREE_OF_ALL, now);
    return own.compareTo(all) > 0 ? own : all;
  }

  private static Duration left(
      @org.jspecify.annotations.Nullable Wrong wrong, int free, Instant now) {
    if (wrong == null || wrong.times() < free) {
      return Duration.ZERO;
    }
    int doublings = Math.min(wrong.times() - free, DOUBLINGS_MAX);
    Duration wait = FIRST_WAIT.multipliedBy(1L << doublings);
    Duration capped = wait.compareTo(WAIT_MAX) > 0 ? WAIT_MAX : wait;
    Duration left = Duration.between(now, wrong.last().plus(capped));
    return left.isNegative() ? Duration.ZERO : left;
  }

  /** Notes a wrong passphrase. */
  public synchronized void wrong(String address, Instant now) {
    if (byAddress.size() >= ADDRESSES_MAX) {
      byAddress.values().removeIf(w -> w.last().plus(WAIT_MAX).isBefore(now));
    }
    for (String key : new String[] {address, ALL}) {
      byAddress.merge(key, new Wrong(1, now), (old, one) -> counted(old, now));
    }
  }

  private static Wrong counted(Wrong old, Instant now) {
    boolean longAgo = old.last().plus(WAIT_MAX).plus(WAIT_MAX).isBefore(now);
    return new Wrong(longAgo ? 1 : old.times() + 1, now);
  }

  /** Notes the right one. */
  public synchronized void right(String address) {
    byAddress.remove(address);
  }
}
