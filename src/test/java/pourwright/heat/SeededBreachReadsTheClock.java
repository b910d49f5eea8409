package pourwright.heat;

import java.time.Instant;

/** A breach on purpose: the craft asking what time it is. */
public final class SeededBreachReadsTheClock {
  Instant now() {
    return Instant.now();
  }
}
