package pourwright.work;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import pourwright.material.Material;
import pourwright.plan.MakePlan;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.Planner;
import pourwright.stock.Amount;
import pourwright.stock.PurchaseList;

/**
 * What is to be bought, and by which day it is to be ordered. Wanted is what open orders need or
 * what is used up while a delivery is on its way, whichever is more; with the safety stock, less
 * what is there and what is on order. Amounts in each material's usual unit.
 *
 * @param material its card
 * @param wanted what open orders or a lead time ask for
 * @param safety the stock for surprises; 0 where nothing was used in the last 90 days
 * @param there on hand and on order
 * @param need what is left to buy, and what of it keeps
 * @param orderBy the last day to order: a delivery's time before the first batch that would lack
 *     it, or when the order point is reached; never before today
 */
public record ToBuy(
    Material material,
    double wanted,
    double safety,
    double there,
    PurchaseList.Need need,
    LocalDate orderBy) {
  private static final Planner AMOUNTS_ONLY = (problem, effort) -> new Planner.NotFound(List.of());

  /**
   * Everything that is to be bought, by material.
   *
   * @param timed the order of work there is, which tells when a batch begins; null where there is
   *     none: then what is short for an order is wanted today
   * @throws pourwright.quantity.OutOfRange when a card of an open order is missing
   */
  public static List<ToBuy> of(Books books, @Nullable WorkPlan timed, Instant now, ZoneId zone) {
    return of(books, amounts(books, now, zone), timed, now, zone);
  }

  /** What the open orders want, worked out for its amounts alone. */
  public static WorkPlan amounts(Books books, Instant now, ZoneId zone) {
    return WorkPlan.of(books, Replan.openLines(books), now, zone, AMOUNTS_ONLY);
  }

  /** The same where the amounts are known. */
  public static List<ToBuy> of(
      Books books, WorkPlan plan, @Nullable WorkPlan timed, Instant now, ZoneId zone) {
    LocalDate today = LocalDate.ofInstant(now, zone);
    Map<String, MaterialUse.Row> use = new HashMap<>();
    MaterialUse.rows(books, now, zone).forEach(r -> use.put(r.material().code(), r));
    Map<String, Amount> drawable = books.lots().drawable(today);
    pourwright.stock.Deliveries deliveries = PlaceOrder.of(books, zone);
    Map<String, Double> needs = plan.make().needs().byMaterial();
    TreeSet<String> codes = new TreeSet<>(needs.keySet());
    codes.addAll(use.keySet());
    List<ToBuy> all = new ArrayList<>();
    for (String code : codes) {
      MaterialUse.Row row = use.get(code);
      Amount hand = drawable.get(code);
      double onOrder = deliveries.onOrder(code);
      double there = (hand == null ? 0 : hand.inUsualUnit()) + onOrder;
      double inLeadTime = row == null ? 0 : row.use().perDayG() * row.use().leadDays();
      double wanted = Math.max(needs.getOrDefault(code, 0.0), inLeadTime);
      double safety = row == null ? 0 : row.reorder().safetyG();
      PurchaseList.Need need =
          PurchaseList.Need.net(
              code, wanted, safety, there, row == null ? Double.POSITIVE_INFINITY : row.keeps());
      if (need.amountG() > 1e-6) {
        Material material = plan.book().materials().get(code);
        LocalDate byUse = row == null ? LocalDate.MAX : row.orderBy();
        double lead = row == null ? MaterialUse.LEAD_DAYS : row.use().leadDays();
        LocalDate byPlan = byPlan(timed, material, onOrder, lead, today);
        LocalDate first = byPlan.isBefore(byUse) ? byPlan : byUse;
        all.add(
            new ToBuy(material, wanted, safety, there, need, first.isAfter(today) ? first : today));
      }
    }
    return all;
  }

  /** A lead time before the first batch that lots and what is on order do not cover. */
  private static LocalDate byPlan(
      @Nullable WorkPlan timed, Material material, double onOrder, double lead, LocalDate today) {
    Plan plan = timed == null ? null : timed.plan();
    LocalDate first = LocalDate.MAX;
    double lacking = 0;
    if (timed == null || plan == null) {
      return today;
    }
    Map<String, Integer> begins = new HashMap<>();
    for (Placed placed : plan.placed()) {
      String batch = placed.step().substring(0, Math.max(0, placed.step().indexOf('/')));
      begins.merge(batch, placed.startMin(), Math::min);
    }
    List<MakePlan.Pick> picks = new ArrayList<>(timed.make().picks());
    picks.removeIf(p -> !p.material().equals(material.code()));
    picks.sort(
        java.util.Comparator.comparing(p -> begins.getOrDefault(p.batch(), Integer.MAX_VALUE)));
    for (MakePlan.Pick pick : picks) {
      lacking += pick.unit().fromSmall(pick.shortUnits());
      Integer minute = begins.get(pick.batch());
      if (lacking > onOrder + 1e-6 && minute != null && first.equals(LocalDate.MAX)) {
        first =
            timed.problem().clock(minute).toLocalDate().minusDays((long) Math.ceil(lead - 1e-9));
      }
    }
    return first;
  }
}
