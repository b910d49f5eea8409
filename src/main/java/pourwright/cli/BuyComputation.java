package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import pourwright.quantity.OutOfRange;
import pourwright.stock.Purchase;
import pourwright.stock.PurchaseList;
import pourwright.stock.PurchaseList.Need;
import pourwright.stock.PurchaseList.Offer;
import pourwright.stock.PurchaseList.PriceFrom;
import pourwright.stock.PurchaseList.Supplier;
import pourwright.stock.Purchasing;

/** {@code buy}: the cheapest purchase that covers what is needed. */
final class BuyComputation implements Computation {
  private final Purchasing purchasing;

  BuyComputation(Purchasing purchasing) {
    this.purchasing = purchasing;
  }

  @Override
  public void compute(JsonIn in, ObjectNode out) {
    List<Need> needs = new ArrayList<>();
    for (JsonIn need : in.objects("needs", true)) {
      needs.add(need(need));
    }
    List<Offer> offers = new ArrayList<>();
    for (JsonIn offer : in.objects("offers", true)) {
      offers.add(offer(offer));
    }
    List<Supplier> suppliers = new ArrayList<>();
    for (JsonIn supplier : in.objects("suppliers", true)) {
      suppliers.add(supplier(supplier));
    }
    PurchaseList list = new PurchaseList(needs, offers, suppliers);
    Purchase purchase = purchasing.buy(list);
    if (purchase instanceof Purchase.NotToBeHad lack) {
      throw in.refuse(
          "needs/" + lack.need(),
          lack.material()
              + ": "
              + plain(lack.askedG())
              + " g is needed and all offers together hold "
              + plain(lack.offeredG())
              + " g",
          "add an offer of " + lack.material() + " that can be had, or lower the amount");
    }
    write(list, (Purchase.Bought) purchase, out);
  }

  private static void write(PurchaseList list, Purchase.Bought bought, ObjectNode out) {
    ArrayNode purchases = out.putArray("purchases");
    Set<String> silent = new TreeSet<>();
    Set<String> fillers = new TreeSet<>();
    Set<String> terms = list.suppliers().stream().map(Supplier::name).collect(Collectors.toSet());
    for (Purchase.Packs packs : bought.packs()) {
      purchases.addObject().put("offer", packs.offer()).put("count", packs.count());
      Offer offer = list.offers().get(packs.offer());
      if (!terms.contains(offer.supplier())) {
        silent.add(offer.supplier());
      }
      if (!list.needed().containsKey(offer.material())) {
        fillers.add(offer.material());
      }
    }
    out.put("cost", bought.cost());
    out.put("goods", bought.goods());
    out.put("shipping", bought.shipping());
    out.put("proven", bought.proven());
    ArrayNode warnings = out.putArray("warnings");
    silent.forEach(s -> warnings.add("no shipping is given for " + s + "; none is counted"));
    fillers.forEach(m -> warnings.add(m + " is not needed; it only earns free shipping"));
  }

  private static String plain(double grams) {
    return BigDecimal.valueOf(grams).stripTrailingZeros().toPlainString();
  }

  private static Need need(JsonIn in) {
    return refusing(
        in,
        () ->
            Need.net(
                in.text("material"),
                in.number("amount_g", Range.NOT_NEGATIVE),
                in.numberOr("safety_g", 0, Range.NOT_NEGATIVE),
                in.numberOr("on_hand_g", 0, Range.NOT_NEGATIVE)
                    + in.numberOr("on_order_g", 0, Range.NOT_NEGATIVE),
                in.numberOr("keeps_g", Double.POSITIVE_INFINITY, Range.NOT_NEGATIVE)));
  }

  private static Offer offer(JsonIn in) {
    return refusing(
        in,
        () ->
            new Offer(
                in.text("material"),
                in.text("supplier"),
                in.number("pack_g", Range.POSITIVE),
                prices(in),
                available(in)));
  }

  private static List<PriceFrom> prices(JsonIn in) {
    List<PriceFrom> prices = new ArrayList<>();
    prices.add(new PriceFrom(1, in.number("price", Range.NOT_NEGATIVE)));
    for (JsonIn step : in.objects("price_steps", false)) {
      prices.add(
          new PriceFrom(
              step.whole("from_packs", 2, PurchaseList.NO_LIMIT),
              step.number("price", Range.NOT_NEGATIVE)));
    }
    return prices;
  }

  /** True or absent: any number; false: none; a whole number: so many packs. */
  private static int available(JsonIn in) {
    try {
      return in.flagOr("available", true) ? PurchaseList.NO_LIMIT : 0;
    } catch (RefusedInput notAFlag) {
      return in.whole("available", 0, PurchaseList.NO_LIMIT);
    }
  }

  private static Supplier supplier(JsonIn in) {
    return refusing(
        in,
        () -> {
          double freeFrom = in.numberOr("free_from", -1, Range.NOT_NEGATIVE);
          return new Supplier(
              in.text("supplier"),
              in.number("shipping", Range.NOT_NEGATIVE),
              freeFrom < 0 ? OptionalDouble.empty() : OptionalDouble.of(freeFrom));
        });
  }

  private static <T> T refusing(JsonIn in, java.util.function.Supplier<T> made) {
    try {
      return made.get();
    } catch (OutOfRange e) {
      throw in.refuse(e);
    }
  }
}
