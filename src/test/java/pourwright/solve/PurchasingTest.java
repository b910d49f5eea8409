package pourwright.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pourwright.stock.Purchase;
import pourwright.stock.Purchase.Bought;
import pourwright.stock.Purchase.NotToBeHad;
import pourwright.stock.Purchase.Packs;
import pourwright.stock.PurchaseList;
import pourwright.stock.PurchaseList.Need;
import pourwright.stock.PurchaseList.Offer;
import pourwright.stock.PurchaseList.PriceFrom;
import pourwright.stock.PurchaseList.Supplier;

/** The cheapest purchase. The oracle tries every number of packs of every offer. */
class PurchasingTest {
  private static final OptionalDouble NEVER = OptionalDouble.empty();
  private final CpSatPurchasing purchasing = new CpSatPurchasing();

  @Test
  void twoHundredSmallPurchasesCostWhatTryingEveryPurchaseFinds() {
    Random random = new Random(23);
    int bought = 0;
    for (int round = 0; round < 200; round++) {
      PurchaseList list = someList(random);
      Purchase found = purchasing.buy(list);
      double cheapest = cheapest(list, 0, new int[list.offers().size()]);
      if (found instanceof Bought purchase) {
        assertThat(purchase.proven()).isTrue();
        assertThat(purchase.cost()).as("round " + round).isCloseTo(cheapest, within(1e-9));
        assertThat(cost(list, counts(list, purchase))).isCloseTo(purchase.cost(), within(1e-9));
        bought++;
      } else {
        assertThat(cheapest).as("round " + round).isInfinite();
      }
    }
    assertThat(bought).isBetween(100, 199);
  }

  /** The same with stock, orders under way, a safety stock and what goes off. */
  @Test
  void twoHundredPurchasesWithSafetyStockAndShelfLifeCostWhatTryingEveryPurchaseFinds() {
    Random random = new Random(29);
    int bought = 0;
    int held = 0;
    for (int round = 0; round < 200; round++) {
      PurchaseList plain = someList(random);
      List<Need> needs = new ArrayList<>();
      for (Need need : plain.needs()) {
        double safety = random.nextInt(400);
        double there = random.nextInt(700);
        double keeps = random.nextInt(4) == 0 ? Double.POSITIVE_INFINITY : random.nextInt(2500);
        Need net = Need.net(need.material(), need.amountG(), safety, there, keeps);
        assertThat(net.amountG()).isEqualTo(Math.max(0, need.amountG() + safety - there));
        needs.add(net);
      }
      PurchaseList list = new PurchaseList(needs, plain.offers(), plain.suppliers());
      Purchase found = purchasing.buy(list);
      double cheapest = cheapest(list, 0, new int[list.offers().size()]);
      if (found instanceof Bought purchase) {
        assertThat(purchase.proven()).isTrue();
        assertThat(purchase.cost()).as("round " + round).isCloseTo(cheapest, within(1e-9));
        assertThat(cost(list, counts(list, purchase))).isCloseTo(purchase.cost(), within(1e-9));
        bought++;
        held += cheapest > cheapest(plainOf(list), 0, new int[list.offers().size()]) + 1e-9 ? 1 : 0;
      } else {
        assertThat(cheapest).as("round " + round).isInfinite();
      }
    }
    assertThat(bought).isBetween(100, 199);
    assertThat(held).as("purchases that what goes off makes dearer").isGreaterThan(3);
  }

  /** The same needs, of what keeps for ever. */
  private static PurchaseList plainOf(PurchaseList list) {
    return new PurchaseList(
        list.needs().stream().map(n -> new Need(n.material(), n.amountG())).toList(),
        list.offers(),
        list.suppliers());
  }

  private static PurchaseList someList(Random random) {
    List<Need> needs = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(2); i++) {
      needs.add(new Need("m" + random.nextInt(3), 100 + random.nextInt(1500)));
    }
    List<Offer> offers = new ArrayList<>();
    int most = 2 + random.nextInt(4);
    for (int i = 0; i < most; i++) {
      double pack = 250 * (1 + random.nextInt(6));
      double price = (100 + random.nextInt(2500)) / 100.0;
      int available = random.nextInt(5) == 0 ? 0 : 1 + random.nextInt(4);
      String material = "m" + (i < 3 ? i : random.nextInt(3));
      List<PriceFrom> prices = new ArrayList<>(List.of(new PriceFrom(1, price)));
      if (random.nextInt(3) == 0) {
        prices.add(new PriceFrom(3, Math.round(price * 60) / 100.0));
      }
      offers.add(new Offer(material, "s" + random.nextInt(3), pack, prices, available));
    }
    List<Supplier> suppliers = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      OptionalDouble free =
          random.nextBoolean() ? NEVER : OptionalDouble.of(5 + random.nextInt(40));
      suppliers.add(new Supplier("s" + i, random.nextInt(900) / 100.0, free));
    }
    return new PurchaseList(needs, offers, suppliers);
  }

  private static double cheapest(PurchaseList list, int offer, int[] counts) {
    if (offer == counts.length) {
      return cost(list, counts);
    }
    double best = Double.POSITIVE_INFINITY;
    for (int n = 0; n <= list.offers().get(offer).available(); n++) {
      counts[offer] = n;
      best = Math.min(best, cheapest(list, offer + 1, counts));
    }
    counts[offer] = 0;
    return best;
  }

  private static int[] counts(PurchaseList list, Bought bought) {
    int[] counts = new int[list.offers().size()];
    bought.packs().forEach(p -> counts[p.offer()] = p.count());
    return counts;
  }

  private static double cost(PurchaseList list, int[] counts) {
    Map<String, Double> goods = new HashMap<>();
    Map<String, Double> grams = new HashMap<>();
    for (int i = 0; i < counts.length; i++) {
      Offer offer = list.offers().get(i);
      if (counts[i] > 0) {
        PriceFrom last = offer.prices().get(offer.prices().size() - 1);
        double each = counts[i] >= last.packs() ? last.price() : offer.prices().get(0).price();
        goods.merge(offer.supplier(), counts[i] * each, Double::sum);
        grams.merge(offer.material(), counts[i] * offer.packG(), Double::sum);
      }
    }
    if (list.needs().stream().anyMatch(n -> goesOff(list, counts, n))) {
      return Double.POSITIVE_INFINITY;
    }
    for (Need need : list.needs()) {
      grams.merge(need.material(), -need.amountG(), Double::sum);
    }
    if (grams.values().stream().anyMatch(g -> g < -1e-9)) {
      return Double.POSITIVE_INFINITY;
    }
    double cost = goods.values().stream().mapToDouble(Double::doubleValue).sum();
    for (Supplier supplier : list.suppliers()) {
      Double bought = goods.get(supplier.name());
      if (bought != null && bought < supplier.freeFrom().orElse(1e99) - 1e-9) {
        cost += supplier.shipping();
      }
    }
    return cost;
  }

  /** More than keeps, although one of its packs could have been left out. */
  private static boolean goesOff(PurchaseList list, int[] counts, Need of) {
    double needed = 0;
    for (Need need : list.needs()) {
      needed += need.material().equals(of.material()) ? need.amountG() : 0;
    }
    double bought = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < counts.length; i++) {
      Offer offer = list.offers().get(i);
      if (offer.material().equals(of.material()) && counts[i] > 0) {
        bought += counts[i] * offer.packG();
        least = Math.min(least, offer.packG());
      }
    }
    return bought > of.keepsG() && bought - least >= needed;
  }

  @Test
  void whatGoesOffIsNotBoughtForAPriceStep() {
    // one pack covers the need at 30; from three packs each costs 8: 24, but two would go off
    Offer scent =
        new Offer("scent", "Harbour", 500, List.of(new PriceFrom(1, 30), new PriceFrom(3, 8)), 99);
    List<Supplier> none = List.of();
    PurchaseList keeps = new PurchaseList(List.of(new Need("scent", 400)), List.of(scent), none);
    assertThat(((Bought) purchasing.buy(keeps)).packs()).containsExactly(new Packs(0, 3));
    PurchaseList goesOff =
        new PurchaseList(List.of(new Need("scent", 400, 900)), List.of(scent), none);
    assertThat(((Bought) purchasing.buy(goesOff)).packs()).containsExactly(new Packs(0, 1));
  }

  @Test
  void safetyStockIsBoughtBesideWhatIsWantedLessWhatIsThereAndOnOrder() {
    // 1000 wanted and 300 for surprises, 200 there and on order: 1100, two packs of 750
    Need need = Need.net("wax", 1000, 300, 200, Double.POSITIVE_INFINITY);
    PurchaseList list =
        new PurchaseList(List.of(need), List.of(new Offer("wax", "Quay", 750, 9, 99)), List.of());
    assertThat(((Bought) purchasing.buy(list)).packs()).containsExactly(new Packs(0, 2));
    assertThat(Need.net("wax", 100, 300, 1000, 0).amountG()).isZero();
  }

  @Test
  void shippingThatIsNeverFreeIsPaidHoweverMuchIsBought() {
    PurchaseList list =
        new PurchaseList(
            List.of(new Need("grey powder", 90_000)),
            List.of(new Offer("grey powder", "Quarry", 10_000, 40, 99)),
            List.of(new Supplier("Quarry", 7.5, NEVER)));
    Bought bought = (Bought) purchasing.buy(list);
    assertThat(bought.packs()).containsExactly(new Packs(0, 9));
    assertThat(bought.cost()).isEqualTo(367.5);
  }

  @Test
  void aPackThatEarnsFreeShippingIsBoughtWhenItCostsLessThanTheShipping() {
    PurchaseList list =
        new PurchaseList(
            List.of(new Need("wax", 1000)),
            List.of(
                new Offer("wax", "Chandlery", 1000, 48, 9),
                new Offer("tabs", "Chandlery", 10, 2, 9)),
            List.of(new Supplier("Chandlery", 6, OptionalDouble.of(50))));
    Bought bought = (Bought) purchasing.buy(list);
    assertThat(bought.packs()).containsExactly(new Packs(0, 1), new Packs(1, 1));
    assertThat(bought.cost()).isEqualTo(50);
  }

  @Test
  void whatNobodySellsIsRefusedByName() {
    PurchaseList list =
        new PurchaseList(
            List.of(
                new Need("wax", 1000),
                new Need("Rain on slate", 60),
                new Need("Rain on slate", 60)),
            List.of(
                new Offer("wax", "Chandlery", 1000, 9, 99),
                new Offer("Rain on slate", "Chandlery", 100, 14, 1)),
            List.of());
    assertThat(purchasing.buy(list)).isEqualTo(new NotToBeHad(1, "Rain on slate", 120, 100));
  }
}
