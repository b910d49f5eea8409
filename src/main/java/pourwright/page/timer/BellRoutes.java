package pourwright.page.timer;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.sse.SseClient;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import pourwright.page.Bell;
import pourwright.page.Show;
import pourwright.page.Surroundings;

/**
 * Tells every open page, twice a second, what time it is in the studio and which timers there are;
 * a page without the stream asks by itself. The timers themselves are rows in the ledger.
 */
public final class BellRoutes implements AutoCloseable {
  private static final long EVERY_MS = 500;
  private static final int LISTENERS_MAX = 200;

  private final Surroundings surroundings;
  private final Clock clock;
  private final Set<SseClient> listeners = ConcurrentHashMap.newKeySet();
  private final ScheduledExecutorService pulse =
      Executors.newSingleThreadScheduledExecutor(BellRoutes::thread);
  private volatile boolean closed;

  /** The bells of these surroundings. */
  public BellRoutes(Surroundings surroundings, Clock clock) {
    this.surroundings = surroundings;
    this.clock = clock;
  }

  private static Thread thread(Runnable task) {
    Thread thread = new Thread(task, "bells");
    thread.setDaemon(true);
    return thread;
  }

  /** Adds the stream and the list. */
  public void addTo(RoutesConfig routes) {
    routes.get("/bells", this::list);
    routes.sse("/bells/stream", this::listen);
    pulse.scheduleWithFixedDelay(this::tell, EVERY_MS, EVERY_MS, TimeUnit.MILLISECONDS);
  }

  private void list(Context http) {
    http.header("X-Studio-Time", String.valueOf(clock.instant().toEpochMilli()));
    Show.part(http, "bells.jte", "");
  }

  private void listen(SseClient client) {
    if (listeners.size() >= LISTENERS_MAX) {
      client.close();
      return;
    }
    client.keepAlive();
    client.onClose(() -> listeners.remove(client));
    listeners.add(client);
    client.sendEvent("bells", word(clock.instant()));
    if (closed) {
      // it came in while the others were sent away
      client.close();
    }
  }

  private void tell() {
    if (listeners.isEmpty()) {
      return;
    }
    String word = word(clock.instant());
    for (SseClient client : listeners) {
      if (client.terminated()) {
        listeners.remove(client);
      } else {
        client.sendEvent("bells", word);
      }
    }
  }

  /** The studio's time and a word that changes when the list does. */
  private String word(Instant now) {
    List<Bell> bells = surroundings.bells(now);
    long sum = 17;
    for (Bell bell : bells) {
      sum = 31 * sum + bell.id().hashCode();
      sum = 31 * sum + bell.deadlineMillis();
      sum = 31 * sum + (bell.rings() ? 1 : 0);
    }
    return now.toEpochMilli() + " " + Long.toString(sum, 36);
  }

  @Override
  public void close() {
    closed = true;
    pulse.shutdownNow();
    listeners.forEach(SseClient::close);
    listeners.clear();
  }
}
