package pourwright.page.guard;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;

/**
 * Codes that let one device in without the passphrase: 256 random bits, good once and for five
 * minutes. Only digests are kept, and only in memory: a restart forgets them.
 */
public final class Pairing {
  /** How long a code is good. */
  public static final Duration GOOD_FOR = Duration.ofMinutes(5);

  private final Map<String, Instant> goodUntil = new HashMap<>();

  /** A fresh code; those made before are good no more. */
  public synchronized String code(Instant now) {
    goodUntil.clear();
    String code = Token.random();
    goodUntil.put(Token.digest(code), now.plus(GOOD_FOR));
    return code;
  }

  /** Whether a code would let a device in now; looking does not use it up. */
  public synchronized boolean good(String code, Instant now) {
    Instant until = goodUntil.get(Token.digest(code));
    return until != null && now.isBefore(until);
  }

  /** Uses a code up; says whether it was good. */
  public synchronized boolean use(String code, Instant now) {
    boolean good = good(code, now);
    goodUntil.remove(Token.digest(code));
    return good;
  }
}
