package pourwright.page.now;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jspecify.annotations.Nullable;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.page.Desk;
import pourwright.work.Books;
import pourwright.work.Replan;
import pourwright.work.WorkPlan;

/**
 * The plan of all open orders, worked out beside the pages: a page gets the last one at once and
 * starts the next when that is older than a minute. Only the very first page waits a moment.
 */
public final class WorkAhead {
  private static final Duration FRESH = Duration.ofSeconds(60);
  private static final long FIRST_WAIT_MILLIS = 600;
  private static final int LINES_MAX = 60;
  private static final Made NOT_YET = new Made(Instant.EPOCH, null, List.of(), "", 0, "");

  private final Desk desk;
  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "work-ahead");
            thread.setDaemon(true);
            return thread;
          });
  private final LastDays lastDays = new LastDays(); // of the worker alone
  private @Nullable Future<?> running;
  private volatile Made made = NOT_YET;

  /** Plans with the clock and books of a desk. */
  public WorkAhead(Desk desk) {
    this.desk = desk;
  }

  /**
   * What was planned.
   *
   * @param at when
   * @param plan the plan; null where there is none yet or a card is missing
   * @param lastDays the last day to cast for the nearest parcels
   * @param trouble why there is no plan, else empty
   * @param leftOut order lines beyond the first sixty by date
   * @param by how the plan came about, as a sentence
   */
  public record Made(
      Instant at,
      @Nullable WorkPlan plan,
      List<NowPage.Line> lastDays,
      String trouble,
      int leftOut,
      String by) {
    /** Copies. */
    public Made {
      lastDays = List.copyOf(lastDays);
    }

    /** True before the first plan is there. */
    boolean notYet() {
      return at.equals(Instant.EPOCH);
    }
  }

  /** The plan there is; begins the next where it is older than a minute. */
  public Made get() {
    Made last = made;
    if (last.at().plus(FRESH).isAfter(desk.now())) {
      return last;
    }
    Future<?> work = begin();
    if (!last.notYet()) {
      return last;
    }
    try {
      work.get(FIRST_WAIT_MILLIS, TimeUnit.MILLISECONDS);
    } catch (TimeoutException e) {
      return made;
    } catch (ExecutionException e) {
      return new Made(
          desk.now(), null, List.of(), "The plan could not be worked out: " + e.getCause(), 0, "");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return made;
  }

  private synchronized Future<?> begin() {
    Future<?> work = running;
    if (work == null || work.isDone()) {
      work = worker.submit(() -> made = desk.studio().look(this::plan));
      running = work;
    }
    return work;
  }

  private Made plan(Books books) {
    List<OrderLine> lines = open(books);
    int leftOut = Math.max(0, lines.size() - LINES_MAX);
    List<OrderLine> first = lines.subList(0, lines.size() - leftOut);
    try {
      Replan.Current current = Replan.current(books, first, desk.now(), desk.zone());
      WorkPlan plan = current.work();
      return new Made(desk.now(), plan, NowPage.lastDays(plan, lastDays), "", leftOut, by(current));
    } catch (pourwright.quantity.OutOfRange e) {
      return new Made(desk.now(), null, List.of(), e.sentence() + ": " + e.hint(), leftOut, "");
    }
  }

  private String by(Replan.Current current) {
    Instant taken = current.takenAt();
    if (taken != null) {
      return "As the plan says that was taken on " + desk.dayAndTime(taken) + ".";
    }
    return current.fits()
        ? "A quick order of work; no plan is taken yet."
        : "A quick order of work: the plan that was taken no longer fits what is open.";
  }

  /** Lines of open orders less what is picked for them, the earliest date first. */
  public static List<OrderLine> open(Books books) {
    List<Order> orders =
        books.orders().wanting().stream().filter(o -> o.state() == OrderState.OPEN).toList();
    List<OrderLine> lines = Replan.left(books, orders);
    lines.sort(
        Comparator.comparing(
                (OrderLine l) -> l.dueOn() == null ? java.time.LocalDate.MAX : l.dueOn())
            .thenComparing(OrderLine::key));
    return lines;
  }
}
