package pourwright.page.guard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** A double tap counts once. */
class RequestKeysTest {
  private static final RequestKeys.Answer ANSWER =
      new RequestKeys.Answer(303, "/casting/12", "", "text/html");

  @Test
  void twoToFiveTapsAtOnceAreOneActInAThousandTrials() throws Exception {
    RequestKeys keys = new RequestKeys();
    ExecutorService hands = Executors.newFixedThreadPool(5);
    try {
      for (int trial = 0; trial < 1_000; trial++) {
        String key = "trial " + trial;
        AtomicInteger done = new AtomicInteger();
        List<Future<RequestKeys.Answer>> taps = new ArrayList<>();
        for (int tap = 0; tap < 2 + trial % 4; tap++) {
          taps.add(hands.submit(() -> tap(keys, key, done)));
        }
        for (Future<RequestKeys.Answer> tap : taps) {
          assertThat(tap.get()).isEqualTo(ANSWER);
        }
        assertThat(done).hasValue(1);
      }
    } finally {
      hands.shutdownNow();
    }
  }

  private static RequestKeys.Answer tap(RequestKeys keys, String key, AtomicInteger done)
      throws InterruptedException {
    Optional<RequestKeys.Answer> earlier = keys.claim(key);
    if (earlier.isPresent()) {
      return earlier.get();
    }
    done.incrementAndGet();
    keys.answered(key, ANSWER);
    return ANSWER;
  }

  @Test
  void anActThatFailedMayBeTriedAgain() throws Exception {
    RequestKeys keys = new RequestKeys();
    assertThat(keys.claim("wet finger")).isEmpty();
    keys.failed("wet finger");
    assertThat(keys.claim("wet finger")).isEmpty();
  }
}
