package pourwright.stock;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What was ordered laid beside what came: what is still on order, and how long deliveries really
 * took. What comes fills the oldest order of the same material from the same supplier, where either
 * names one; amounts are in the material's usual unit.
 *
 * @param open orders not yet filled
 * @param leads how long those took that were filled
 */
public record Deliveries(List<Open> open, List<Lead> leads) {
  /** An order is filled when so much of it has come; house. */
  private static final double FILLED = 0.9;

  /** Copies. */
  public Deliveries {
    open = List.copyOf(open);
    leads = List.copyOf(leads);
  }

  /**
   * What was ordered.
   *
   * @param id the ledger's number
   * @param material code
   * @param supplier code, or an empty string where none was said
   * @param day when
   * @param deed number of the deed that wrote it down: what was taken in before it is not it
   * @param amount above 0
   */
  public record Ordered(
      long id, String material, String supplier, LocalDate day, long deed, double amount) {}

  /** What came; supplier and deed as in {@link Ordered}. */
  public record Came(String material, String supplier, LocalDate day, long deed, double amount) {}

  /**
   * An order that is not filled.
   *
   * @param order as it was placed
   * @param still what has not come of it
   */
  public record Open(Ordered order, double still) {}

  /** A filled order: days from placing it until it was filled. */
  public record Lead(String material, String supplier, int days) {}

  /** Lays them side by side; orders and deliveries in any order. */
  public static Deliveries of(List<Ordered> ordered, List<Came> came) {
    List<Ordered> orders = new ArrayList<>(ordered);
    orders.sort(Comparator.comparing(Ordered::day).thenComparing(Ordered::id));
    List<Came> deliveries = new ArrayList<>(came);
    deliveries.sort(Comparator.comparing(Came::day));
    double[] still = orders.stream().mapToDouble(Ordered::amount).toArray();
    boolean[] filled = new boolean[still.length];
    List<Lead> leads = new ArrayList<>();
    for (Came delivery : deliveries) {
      double left = delivery.amount();
      for (int i = 0; i < still.length && left > 0; i++) {
        Ordered order = orders.get(i);
        if (!filled[i] && answers(delivery, order)) {
          double taken = Math.min(left, still[i]);
          left -= taken;
          still[i] -= taken;
          if (still[i] <= (1 - FILLED) * order.amount() + 1e-9) {
            filled[i] = true;
            String supplier = order.supplier().isEmpty() ? delivery.supplier() : order.supplier();
            int days = (int) ChronoUnit.DAYS.between(order.day(), delivery.day());
            leads.add(new Lead(order.material(), supplier, days));
          }
        }
      }
    }
    List<Open> open = new ArrayList<>();
    for (int i = 0; i < still.length; i++) {
      if (!filled[i]) {
        open.add(new Open(orders.get(i), still[i]));
      }
    }
    return new Deliveries(open, leads);
  }

  private static boolean answers(Came delivery, Ordered order) {
    boolean unnamed = delivery.supplier().isEmpty() || order.supplier().isEmpty();
    return delivery.material().equals(order.material())
        && (unnamed || delivery.supplier().equals(order.supplier()))
        && delivery.deed() > order.deed()
        && !delivery.day().isBefore(order.day());
  }

  /** What is on order of a material. */
  public double onOrder(String material) {
    return open.stream()
        .filter(o -> o.order().material().equals(material))
        .mapToDouble(Open::still)
        .sum();
  }

  /** How long a supplier's deliveries took; the card's word until three have come. */
  public LeadTime from(String supplier, int cardDays) {
    return LeadTime.of(
        leads.stream().filter(l -> l.supplier().equals(supplier)).map(Lead::days).toList(),
        cardDays);
  }

  /**
   * A lead time.
   *
   * @param meanDays from order to shelf
   * @param deviationDays its standard deviation
   * @param deliveries how many were counted; 0 where it is the card's word
   */
  public record LeadTime(double meanDays, double deviationDays, int deliveries) {
    /** Fewer deliveries than this say nothing of how much they vary; house. */
    public static final int ENOUGH = 3;

    /** One lead time on a card does not say how it varies: a quarter of it, house. */
    private static final double CARD_DEVIATION = 0.25;

    /** Of what was recorded, else of the card. */
    public static LeadTime of(List<Integer> days, int cardDays) {
      if (days.size() < ENOUGH) {
        return new LeadTime(cardDays, CARD_DEVIATION * cardDays, 0);
      }
      double mean = days.stream().mapToInt(Integer::intValue).average().orElse(0);
      double squares = days.stream().mapToDouble(d -> (d - mean) * (d - mean)).sum();
      return new LeadTime(mean, Math.sqrt(squares / (days.size() - 1)), days.size());
    }
  }
}
