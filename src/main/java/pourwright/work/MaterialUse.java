package pourwright.work;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pourwright.card.Supplier;
import pourwright.material.Material;
import pourwright.stock.Amount;
import pourwright.stock.Deliveries;
import pourwright.stock.Lot;
import pourwright.stock.Movement;
import pourwright.stock.Price;
import pourwright.stock.PurchaseList;
import pourwright.stock.Reorder;
import pourwright.stock.Shelf;

/** How fast materials are used up, and what packs of them have cost; from lots and movements. */
public final class MaterialUse {
  /** Days of use that are looked at; house. */
  public static final int DAYS = 90;

  private static final int AT_ONCE = 1000;

  /** Days from order to delivery where no card says it; house. */
  static final int LEAD_DAYS = 7;

  /** Chance not to run out in a lead time; house. */
  private static final double CHANCE = 0.95;

  private final Books books;
  private final LocalDate today;
  private final Map<Long, Optional<Lot>> lots = new HashMap<>();

  private MaterialUse(Books books, LocalDate today) {
    this.books = books;
    this.today = today;
  }

  /**
   * When to order a material again; amounts in its usual unit.
   *
   * @param material the card
   * @param onHand what may be drawn
   * @param onOrder what was ordered and has not come
   * @param lead how long deliveries take, and from how many that is known
   * @param use a day, and how long a delivery takes
   * @param reorder safety stock and order point
   * @param orderBy the last day to order so that the safety stock is not touched
   * @param keeps the most that is used up before it goes off; infinite where it keeps
   */
  public record Row(
      Material material,
      double onHand,
      double onOrder,
      Deliveries.LeadTime lead,
      Reorder.Use use,
      Reorder reorder,
      LocalDate orderBy,
      double keeps) {}

  /** Materials used in the last 90 days, the soonest order first. */
  public static List<Row> rows(Books books, Instant now, ZoneId zone) {
    return new MaterialUse(books, LocalDate.ofInstant(now, zone)).rows(now, zone);
  }

  private List<Row> rows(Instant now, ZoneId zone) {
    Map<String, double[]> daily = new TreeMap<>();
    Map<String, String> supplier = new HashMap<>();
    for (Movement movement : since(now.minus(Duration.ofDays(DAYS)))) {
      Optional<Lot> lot = lot(movement.lot());
      if (movement.batch() != null && lot.isPresent()) {
        long day = today.toEpochDay() - LocalDate.ofInstant(movement.at(), zone).toEpochDay();
        if (day >= 0 && day < DAYS) {
          daily.computeIfAbsent(lot.get().material(), m -> new double[DAYS])[(int) day] -=
              movement.change().inUsualUnit();
        }
      }
      lot.map(Lot::supplier).ifPresent(s -> supplier.put(lot.get().material(), s));
    }
    Deliveries deliveries = PlaceOrder.of(books, zone);
    Map<String, Integer> lead = new HashMap<>();
    Drawers.book(books).all(Supplier.class).forEach(s -> lead.put(s.code(), s.leadDays()));
    Map<String, Amount> drawable = books.lots().drawable(today);
    Map<String, Material> materials = new HashMap<>();
    Drawers.book(books).materials().all().forEach(m -> materials.put(m.code(), m));
    List<Row> rows = new ArrayList<>();
    daily.forEach(
        (code, used) -> {
          Material material = materials.get(code);
          if (material != null) {
            String from = supplier.getOrDefault(code, "");
            Amount there = drawable.get(code);
            rows.add(
                row(
                    material,
                    used,
                    deliveries.from(from, lead.getOrDefault(from, LEAD_DAYS)),
                    there == null ? 0 : there.inUsualUnit(),
                    deliveries.onOrder(code)));
          }
        });
    rows.sort(java.util.Comparator.comparing(Row::orderBy).thenComparing(r -> r.material().code()));
    return rows;
  }

  private Row row(
      Material material, double[] used, Deliveries.LeadTime lead, double onHand, double onOrder) {
    double sum = 0;
    double squares = 0;
    for (double amount : used) {
      sum += Math.max(0, amount);
      squares += Math.max(0, amount) * Math.max(0, amount);
    }
    double mean = sum / used.length;
    double deviation = Math.sqrt(Math.max(0, squares / used.length - mean * mean));
    Reorder.Use use = new Reorder.Use(mean, deviation, lead.meanDays(), lead.deviationDays());
    Reorder reorder = Reorder.of(use, CHANCE);
    Integer life = material.shelfLife().closedDays();
    double there = onHand + onOrder;
    double keeps =
        life == null ? Double.POSITIVE_INFINITY : Reorder.mostThatKeeps(use, life, there);
    return new Row(
        material, onHand, onOrder, lead, use, reorder, reorder.orderBy(today, there, use), keeps);
  }

  private List<Movement> since(Instant from) {
    List<Movement> all = new ArrayList<>();
    String after = null;
    do {
      PageOf<Movement> page = books.lots().movements(after, AT_ONCE);
      for (Movement movement : page.items()) {
        if (movement.at().isBefore(from)) {
          return all;
        }
        all.add(movement);
      }
      after = page.next();
    } while (after != null);
    return all;
  }

  private Optional<Lot> lot(long id) {
    return lots.computeIfAbsent(id, l -> books.lots().shelf(l).map(Shelf::lot));
  }

  /**
   * The packs that were bought, newest price of each supplier and size: what can be bought again.
   * Amounts in the material's usual unit.
   */
  public static List<PurchaseList.Offer> packs(Books books, String material) {
    Map<String, PurchaseList.Offer> offers = new TreeMap<>();
    String after = null;
    do {
      PageOf<Shelf> page = books.lots().list(material, after, AT_ONCE);
      for (Shelf shelf : page.items()) {
        Lot lot = shelf.lot();
        Price price = lot.price();
        double received = received(books, lot);
        if (price != null && received > 0) {
          String supplier = lot.supplier() == null ? "unknown" : lot.supplier();
          offers.putIfAbsent(
              supplier + " " + received,
              new PurchaseList.Offer(
                  material, supplier, received, price.minor() / 100.0, PurchaseList.NO_LIMIT));
        }
      }
      after = page.next();
    } while (after != null);
    return List.copyOf(offers.values());
  }

  private static double received(Books books, Lot lot) {
    return books.lots().ofDeed(lot.deed()).stream()
        .filter(m -> m.lot() == lot.id())
        .mapToDouble(m -> m.change().inUsualUnit())
        .sum();
  }
}
