package pourwright.page.now;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.page.Desk;
import pourwright.plan.ForwardRule;
import pourwright.work.Books;
import pourwright.work.WorkPlan;

/**
 * The plan of all open orders, worked out when a page asks and not more than once a minute; pages
 * that ask while it is being worked out get the one before.
 */
public final class WorkAhead {
  private static final Duration FRESH = Duration.ofSeconds(60);
  private static final int LINES_MAX = 60;

  private final Desk desk;
  private final ReentrantLock working = new ReentrantLock();
  private volatile @Nullable Made made;

  /** Plans with the clock and books of a desk. */
  public WorkAhead(Desk desk) {
    this.desk = desk;
  }

  /**
   * What was planned.
   *
   * @param at when
   * @param plan the plan; null where a card is missing
   * @param trouble why there is no plan, else empty
   * @param leftOut order lines beyond the first sixty by date
   */
  public record Made(Instant at, @Nullable WorkPlan plan, String trouble, int leftOut) {}

  /** The plan, at most a minute old. */
  public Made get() {
    Made last = made;
    if (last != null && last.at().plus(FRESH).isAfter(desk.now())) {
      return last;
    }
    if (last != null && !working.tryLock()) {
      return last;
    }
    if (last == null) {
      working.lock();
    }
    try {
      Made again = made;
      if (again != null && again.at().plus(FRESH).isAfter(desk.now())) {
        return again;
      }
      Made fresh = desk.studio().look(this::plan);
      made = fresh;
      return fresh;
    } finally {
      working.unlock();
    }
  }

  private Made plan(Books books) {
    List<OrderLine> lines = open(books);
    int leftOut = Math.max(0, lines.size() - LINES_MAX);
    List<OrderLine> first = lines.subList(0, lines.size() - leftOut);
    try {
      WorkPlan plan =
          WorkPlan.of(books, first, desk.now(), desk.zone(), new ForwardRule());
      return new Made(desk.now(), plan, "", leftOut);
    } catch (pourwright.quantity.OutOfRange e) {
      return new Made(desk.now(), null, e.sentence() + ": " + e.hint(), leftOut);
    }
  }

  /** Lines of open orders, the earliest date first. */
  public static List<OrderLine> open(Books books) {
    List<OrderLine> lines = new ArrayList<>();
    for (Order order : books.orders().wanting()) {
      if (order.state() == OrderState.OPEN) {
        lines.addAll(order.lines());
      }
    }
    lines.sort(
        Comparator.comparing(
                (OrderLine l) -> l.dueOn() == null ? java.time.LocalDate.MAX : l.dueOn())
            .thenComparing(OrderLine::key));
    return lines;
  }
}
