package pourwright.page.plan;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import pourwright.plan.Planner;
import pourwright.plan.Promise;
import pourwright.plan.Promising;
import pourwright.work.Wish;

/** One search for the earliest date, in the background; it can be stopped with the best so far. */
final class PromiseJob {
  private static final int WORKERS = 2;

  private final String query;
  private final Wish wish;
  private final AtomicBoolean stop = new AtomicBoolean();
  private final AtomicReference<@Nullable Promise> found = new AtomicReference<>();

  private PromiseJob(String query, Wish wish) {
    this.query = query;
    this.wish = wish;
  }

  static PromiseJob begin(String query, Wish wish, Promising promising, Duration limit) {
    PromiseJob job = new PromiseJob(query, wish);
    Planner.Effort effort = new Planner.Effort(limit, 1, WORKERS, null, plan -> {}, job.stop::get);
    Thread thread = new Thread(() -> job.run(promising, effort), "promise");
    thread.setDaemon(true);
    thread.start();
    return job;
  }

  private void run(Promising promising, Planner.Effort effort) {
    try {
      found.set(wish.earliest(promising, effort));
    } catch (RuntimeException e) {
      found.set(new Promise.None(List.of(String.valueOf(e.getMessage()))));
    }
  }

  void stop() {
    stop.set(true);
  }

  /** What was asked, as in the page's address. */
  String query() {
    return query;
  }

  Wish wish() {
    return wish;
  }

  /** What came of it; null while it is being searched. */
  @Nullable Promise found() {
    return found.get();
  }
}
