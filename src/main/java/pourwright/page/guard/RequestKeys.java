package pourwright.page.guard;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Makes a double tap count once: the first post with a key is carried out, a repeat waits for it
 * and gets the same answer. The last few thousand keys are remembered here; beyond a restart the
 * ledger itself refuses a key it has seen.
 */
public final class RequestKeys {
  private static final int KEYS_MAX = 4_000;
  private static final long WAIT_S = 20;

  private final Map<String, CompletableFuture<Answer>> seen =
      new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, CompletableFuture<Answer>> eldest) {
          return size() > KEYS_MAX && eldest.getValue().isDone();
        }
      };

  /** What the first post was answered with. */
  public record Answer(int status, String location, String body, String contentType) {}

  /**
   * Claims a key. Empty: this is the first post, carry it out and then {@link #answered} or {@link
   * #failed}. Otherwise the answer the first post got.
   */
  public Optional<Answer> claim(String key) throws InterruptedException {
    CompletableFuture<Answer> first;
    synchronized (seen) {
      first = seen.get(key);
      if (first == null) {
        seen.put(key, new CompletableFuture<>());
        return Optional.empty();
      }
    }
    try {
      return Optional.of(first.get(WAIT_S, TimeUnit.SECONDS));
    } catch (ExecutionException | TimeoutException e) {
      throw new TurnedAway(
          409,
          "The first tap is still being worked on",
          "Load the page again to see whether it was recorded.");
    }
  }

  /** Remembers what the first post was answered with. */
  public void answered(String key, Answer answer) {
    synchronized (seen) {
      CompletableFuture<Answer> first = seen.get(key);
      if (first != null) {
        first.complete(answer);
      }
    }
  }

  /** Forgets a key whose act was not carried out, so that it may be tried again. */
  public void failed(String key) {
    synchronized (seen) {
      CompletableFuture<Answer> first = seen.remove(key);
      if (first != null) {
        first.completeExceptionally(new IllegalStateException("not carried out"));
      }
    }
  }
}
