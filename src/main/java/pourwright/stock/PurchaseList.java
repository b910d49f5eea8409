package pourwright.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pourwright.quantity.Check;
import pourwright.quantity.Mass;
import pourwright.quantity.OutOfRange;

/**
 * What is needed, who sells it in which packs, and what each sender asks for postage. Prices are in
 * one currency, shipping is one charge for each supplier bought from.
 *
 * @param needs amounts that must be covered; a material named twice is needed twice
 * @param offers packs on offer
 * @param suppliers postage terms; a supplier without terms sends free
 */
public record PurchaseList(List<Need> needs, List<Offer> offers, List<Supplier> suppliers) {
  /** A number of packs that nobody buys: no limit. */
  public static final int NO_LIMIT = 100_000;

  /** Checks that no supplier has two terms. */
  public PurchaseList {
    needs = List.copyOf(needs);
    offers = List.copyOf(offers);
    suppliers = List.copyOf(suppliers);
    if (suppliers.stream().map(Supplier::name).distinct().count() != suppliers.size()) {
      throw new OutOfRange("suppliers", "a supplier is listed twice", "keep one line for each");
    }
  }

  /**
   * So much of a material.
   *
   * @param material which
   * @param amountG what must be covered, g, not negative
   * @param keepsG the most that is used up before it goes off, g; infinite where it keeps. More is
   *     bought only where no pack of it could be left out
   */
  public record Need(String material, double amountG, double keepsG) {
    /** Checks the ranges. */
    public Need {
      Check.between("amount_g", amountG, 0, 1e8);
      if (Double.isNaN(keepsG) || keepsG < 0) {
        throw new OutOfRange(
            "keeps_g", "what keeps is " + keepsG, "give 0 or more, or leave it out");
      }
    }

    /** A need of something that keeps. */
    public Need(String material, double amountG) {
      this(material, amountG, Double.POSITIVE_INFINITY);
    }

    /**
     * What is to be bought of a material: what is wanted and the safety stock, less what is there
     * and what is on order; nothing where that is enough.
     */
    public static Need net(
        String material, double wantedG, double safetyG, double thereG, double keepsG) {
      return new Need(material, Math.max(0, wantedG + safetyG - thereG), keepsG);
    }
  }

  /**
   * A pack on offer.
   *
   * @param material what is in it
   * @param supplier who sells it
   * @param packG content of a pack, g, greater than zero
   * @param prices price of a pack by the number bought, the first from 1 pack, in order
   * @param available how many packs can be had; 0 when it is sold out
   */
  public record Offer(
      String material, String supplier, double packG, List<PriceFrom> prices, int available) {
    /** Checks the ranges. */
    public Offer {
      prices = List.copyOf(prices);
      Check.between("pack_g", packG, 1e-6, 1e7);
      if (available < 0 || available > NO_LIMIT) {
        throw new OutOfRange(
            "available", "available is " + available, "give true, false or a number of packs");
      }
      int last = 0;
      for (PriceFrom price : prices) {
        if (price.packs() <= last || (last == 0 && price.packs() != 1)) {
          throw new OutOfRange(
              "price_steps",
              "a price from " + price.packs() + " packs follows one from " + last,
              "list the steps in order of packs, each number once, from 2 on");
        }
        last = price.packs();
      }
      if (last == 0) {
        throw new OutOfRange("price", "the offer has no price", "give a price");
      }
    }

    /** A pack at one price however many are bought. */
    public Offer(String material, String supplier, double packG, double price, int available) {
      this(material, supplier, packG, List.of(new PriceFrom(1, price)), available);
    }

    /** Content of a pack, to the microgram. */
    public Mass pack() {
      return Mass.ofGrams(packG);
    }

    /** What so many packs cost. */
    public double goods(long packs) {
      double each = 0;
      for (PriceFrom price : prices) {
        each = packs >= price.packs() ? price.price() : each;
      }
      return packs * each;
    }
  }

  /**
   * A price step.
   *
   * @param packs from so many packs of the offer on, 1 or more, every one of them
   * @param price costs this, not negative
   */
  public record PriceFrom(int packs, double price) {
    /** Checks the range. */
    public PriceFrom {
      Check.between("price", price, 0, 1e9);
    }
  }

  /**
   * A supplier's postage.
   *
   * @param name the supplier
   * @param shipping charge for a parcel, not negative
   * @param freeFrom price of goods from which on the parcel travels free; empty: never
   */
  public record Supplier(String name, double shipping, OptionalDouble freeFrom) {
    /** Checks the ranges. */
    public Supplier {
      Check.between("shipping", shipping, 0, 1e9);
      if (freeFrom.isPresent()) {
        Check.between("free_from", freeFrom.getAsDouble(), 0, 1e9);
      }
    }
  }

  /** What is needed of each material in all, in the order of the needs. */
  public Map<String, Mass> needed() {
    Map<String, Mass> sum = new LinkedHashMap<>();
    needs.forEach(n -> sum.merge(n.material(), Mass.ofGrams(n.amountG()), Mass::plus));
    return sum;
  }

  /**
   * The most of a material that is used up before it goes off; empty where that is no limit. Where
   * a material is needed twice the lesser limit counts.
   */
  public Optional<Mass> keeps(String material) {
    return needs.stream()
        .filter(n -> n.material().equals(material) && n.keepsG() < 1e8)
        .map(n -> Mass.ofGrams(n.keepsG()))
        .min(java.util.Comparator.naturalOrder());
  }

  /** What all offers of a material hold together. */
  public Mass offered(String material) {
    Mass sum = Mass.ZERO;
    for (Offer offer : offers) {
      if (offer.material().equals(material)) {
        sum = sum.plus(new Mass(offer.pack().micrograms() * offer.available()));
      }
    }
    return sum;
  }

  /** The first need that all offers together do not cover. */
  public Optional<Purchase.NotToBeHad> notToBeHad() {
    Map<String, Mass> needed = needed();
    for (int i = 0; i < needs.size(); i++) {
      String material = needs.get(i).material();
      Mass asked = needed.getOrDefault(material, Mass.ZERO);
      Mass offered = offered(material);
      if (asked.compareTo(offered) > 0) {
        return Optional.of(new Purchase.NotToBeHad(i, material, asked.grams(), offered.grams()));
      }
    }
    return Optional.empty();
  }

  /** The purchase with these numbers of packs, one for each offer, at this postage. */
  public Purchase.Bought bought(long[] counts, double shipping, boolean proven) {
    List<Purchase.Packs> packs = new ArrayList<>();
    double goods = 0;
    for (int i = 0; i < counts.length; i++) {
      goods += offers.get(i).goods(counts[i]);
      if (counts[i] > 0) {
        packs.add(new Purchase.Packs(i, Math.toIntExact(counts[i])));
      }
    }
    return new Purchase.Bought(packs, goods, shipping, proven);
  }
}
