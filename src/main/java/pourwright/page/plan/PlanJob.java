package pourwright.page.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import pourwright.plan.Planner;
import pourwright.work.Replan;

/** One planning in the background: it can be looked at, stopped early, and its result taken. */
final class PlanJob {
  private static final int WORKERS = 2;

  private final AtomicBoolean stop = new AtomicBoolean();
  private final AtomicInteger found = new AtomicInteger();
  private final AtomicReference<Replan.@Nullable Preview> preview = new AtomicReference<>();
  private volatile String trouble = "";
  private final Instant begun;
  private final AtomicLong late = new AtomicLong(-1);

  private PlanJob(Instant begun) {
    this.begun = begun;
  }

  /** Begins on a thread of its own. */
  static PlanJob begin(Replan replan, Planner planner, Instant now, ZoneId zone, Duration limit) {
    PlanJob job = new PlanJob(now);
    Planner.Effort effort =
        new Planner.Effort(
            limit, 1, WORKERS, null, plan -> job.found.incrementAndGet(), job.stop::get);
    Thread thread = new Thread(() -> job.run(replan, planner, zone, effort), "plan again");
    thread.setDaemon(true);
    thread.start();
    return job;
  }

  private void run(Replan replan, Planner planner, ZoneId zone, Planner.Effort effort) {
    try {
      preview.set(replan.look(begun, zone, planner, effort, late::set));
    } catch (RuntimeException e) {
      trouble = String.valueOf(e.getMessage());
    }
  }

  /** Ends the search with the best plan so far. */
  void stop() {
    stop.set(true);
  }

  Instant begun() {
    return begun;
  }

  /** Plans found so far, each better than the one before. */
  int found() {
    return found.get();
  }

  /** Weighted minutes late of the best plan so far; -1 while there is none. */
  long lateMin() {
    return late.get();
  }

  boolean isDone() {
    return preview.get() != null || !trouble.isEmpty();
  }

  Replan.@Nullable Preview preview() {
    return preview.get();
  }

  /** What went wrong; empty while nothing did. */
  String trouble() {
    return trouble;
  }
}
