package pourwright.work;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.plan.ForwardRule;
import pourwright.plan.PartOfProblem;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.PlanChecker;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner;
import pourwright.plan.Rearrange;
import pourwright.plan.Step;

/**
 * Plans what is open again, close to the plan that stands; shows what would move before it is
 * taken.
 */
public final class Replan {
  private final Studio studio;

  /** Planning in this studio. */
  public Replan(Studio studio) {
    this.studio = studio;
  }

  /**
   * A plan that is looked at before it is taken.
   *
   * @param fresh what is to be made and the new plan, or why there is none
   * @param before the standing plan in the new plan's minutes and keys, as far as it still applies
   * @param changes what would stand elsewhere; empty when nothing was planned before
   * @param millis how long the planning took
   */
  public record Preview(
      WorkPlan fresh, @Nullable Plan before, List<Rearrange.Change> changes, long millis) {
    /** Keeps its own copy. */
    public Preview {
      changes = List.copyOf(changes);
    }
  }

  /** The plan that stands: the newest that was taken. */
  public Optional<PlanText.Kept> standing() {
    return studio.look(books -> books.planRuns().newest()).map(run -> PlanText.read(run.body()));
  }

  /**
   * The order of work there is now.
   *
   * @param work what is to be made, and when
   * @param takenAt when the plan was taken that it keeps to; null where it keeps to none
   * @param fits false where a plan was taken that what is open now no longer fits
   */
  public record Current(WorkPlan work, @Nullable Instant takenAt, boolean fits) {}

  /**
   * The plan that was taken, with what has come since laid round it by the forward rule; by the
   * forward rule alone where none was taken, or where it can no longer be kept.
   */
  public static Current current(Books books, List<OrderLine> lines, Instant now, ZoneId zone) {
    WorkPlan quick = WorkPlan.of(books, lines, now, zone, new ForwardRule());
    Optional<PlanRun> run = books.planRuns().newest();
    if (run.isEmpty()) {
      return new Current(quick, null, true);
    }
    PlanProblem problem = quick.problem();
    Plan kept = carried(PlanText.read(run.get().body()), problem);
    Planner.Outcome round =
        new ForwardRule()
            .plan(PartOfProblem.pinned(problem, kept), Planner.Effort.of(Duration.ZERO));
    boolean holds =
        round instanceof Planner.Planned planned
            && PlanChecker.check(problem, planned.plan()).isEmpty();
    return holds
        ? new Current(quick.with(round), run.get().at(), true)
        : new Current(quick, null, false);
  }

  /** What is ordered and not yet picked. */
  public static List<OrderLine> openLines(Books books) {
    return left(books, books.orders().wanting());
  }

  /** What is left of wanting orders when the pieces that are picked for them are taken off. */
  public static List<OrderLine> left(Books books, List<Order> wanting) {
    Map<OrderLine.Key, Integer> filled = books.orders().filledOfWanting();
    List<OrderLine> open = new ArrayList<>();
    for (Order order : wanting) {
      for (OrderLine line : order.lines()) {
        int left = line.quantity() - filled.getOrDefault(line.key(), 0);
        if (left > 0) {
          open.add(
              new OrderLine(
                  line.order(), line.design(), line.nth(), left, line.dueOn(), line.note()));
        }
      }
    }
    return open;
  }

  /** Plans from now on; the effort's own hint is replaced by the standing plan. */
  public Preview look(Instant now, ZoneId zone, Planner planner, Planner.Effort effort) {
    return look(now, zone, planner, effort, late -> {});
  }

  /** As before; tells the weighted minutes late of each better plan as it is found. */
  public Preview look(
      Instant now, ZoneId zone, Planner planner, Planner.Effort effort, LongConsumer lateMin) {
    long from = System.nanoTime();
    WorkPlan quick =
        studio.look(books -> WorkPlan.of(books, openLines(books), now, zone, new ForwardRule()));
    PlanProblem problem = quick.problem();
    Plan before = standing().map(kept -> carried(kept, problem)).orElse(null);
    Planner.Effort near =
        new Planner.Effort(
            effort.limit(),
            effort.seed(),
            effort.workers(),
            before,
            plan -> {
              lateMin.accept(plan.tardiness(problem));
              effort.better().accept(plan);
            },
            effort.cancelled());
    WorkPlan fresh = quick.with(planner.plan(problem, near));
    Plan plan = fresh.plan();
    List<Rearrange.Change> changes =
        before == null || plan == null ? List.of() : Rearrange.changes(problem, before, plan);
    return new Preview(fresh, before, changes, (System.nanoTime() - from) / 1_000_000);
  }

  /** Takes a plan that was looked at: it is the standing one from now on. */
  public Outcome<PlanRun> take(Act act, Preview preview) {
    Plan plan = preview.fresh().plan();
    if (!(preview.fresh().outcome() instanceof Planner.Planned planned) || plan == null) {
      return Outcome.refused(
          Reason.NOT_ON_FILE,
          "there is no plan to take",
          String.join("; ", preview.fresh().reasons()));
    }
    PlanProblem problem = preview.fresh().problem();
    String body = PlanText.write(problem, plan);
    return studio.recordPlanRun.run(
        act,
        new PlanRun(
            0,
            hash(PlanText.write(problem, new Plan(List.of()))),
            1,
            planned.proven() ? "proven" : "found",
            (double) plan.tardiness(problem),
            (double) planned.boundMin(),
            preview.millis(),
            body,
            Instant.EPOCH,
            0));
  }

  /** Takes the standing plan with steps moved by hand; the caller has looked at what it breaks. */
  public Outcome<PlanRun> takeByHand(Act act, PlanProblem problem, Plan plan) {
    return studio.recordPlanRun.run(
        act,
        new PlanRun(
            0,
            hash(PlanText.write(problem, new Plan(List.of()))),
            1,
            "by hand",
            (double) plan.tardiness(problem),
            null,
            0,
            PlanText.write(problem, plan),
            Instant.EPOCH,
            0));
  }

  private static String hash(String text) {
    try {
      byte[] bytes =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * The standing plan in the minutes and keys of a new problem. Batches are numbered anew whenever
   * orders change, so a step is the same step when its words without the batch's number are; the
   * earlier ones first. What should have begun before the new origin is left out.
   */
  static Plan carried(PlanText.Kept kept, PlanProblem problem) {
    int shift =
        Math.toIntExact(Duration.between(problem.origin(), kept.problem().origin()).toMinutes());
    Map<String, Step> old = kept.problem().stepsByKey();
    Map<String, Deque<Placed>> known = new HashMap<>();
    for (Placed placed : kept.plan().placed()) {
      Step step = old.get(placed.step());
      if (step != null && placed.startMin() + shift >= 0) {
        known.computeIfAbsent(name(step), n -> new ArrayDeque<>()).add(placed);
      }
    }
    List<Placed> carried = new ArrayList<>();
    for (Step step : problem.steps()) {
      Deque<Placed> same = known.getOrDefault(name(step), new ArrayDeque<>());
      Placed place = step.begun() ? null : same.poll();
      if (place != null) {
        int start = place.startMin() + shift;
        carried.add(new Placed(step.key(), start, start + step.minutes(), place.person()));
      }
    }
    return new Plan(carried);
  }

  private static String name(Step step) {
    String local = step.key().substring(step.key().indexOf('/') + 1);
    return local + " " + step.minutes() + " " + step.words().replace(step.batch(), "");
  }
}
