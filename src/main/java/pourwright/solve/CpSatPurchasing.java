package pourwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.quantity.Mass;
import pourwright.stock.Purchase;
import pourwright.stock.PurchaseList;
import pourwright.stock.PurchaseList.Offer;
import pourwright.stock.PurchaseList.Supplier;
import pourwright.stock.Purchasing;

/**
 * A covering problem with fixed charges, solved to proof. Amounts count in micrograms and money in
 * millionths. A pack that nobody needs may be bought where it lifts a parcel over the threshold of
 * free shipping for less than the shipping.
 */
public final class CpSatPurchasing implements Purchasing {
  private static final double SECONDS = 20;

  @Override
  public Purchase buy(PurchaseList list) {
    Optional<Purchase.NotToBeHad> impossible = list.notToBeHad();
    if (impossible.isPresent()) {
      return impossible.get();
    }
    Model model = new Model(list);
    CpSolver solver = Cp.solver(SECONDS);
    CpSolverStatus status = Cp.solve(solver, model.model);
    if (!Cp.answered(status)) {
      throw new IllegalStateException("the purchase has no answer: " + status);
    }
    return list.bought(
        model.counts(solver), model.shipping(solver), status == CpSolverStatus.OPTIMAL);
  }

  private record Parcel(Literal paid, double shipping) {}

  private static final class Model {
    private final CpModel model = Cp.model();
    private final PurchaseList list;
    private final IntVar[] counts;
    private final long[] prices;
    private final List<Parcel> parcels = new ArrayList<>();

    Model(PurchaseList list) {
      this.list = list;
      List<Offer> offers = list.offers();
      prices = offers.stream().mapToLong(o -> Cp.millionths(o.price())).toArray();
      counts = new IntVar[offers.size()];
      Map<String, Mass> needed = list.needed();
      for (int i = 0; i < counts.length; i++) {
        counts[i] = model.newIntVar(0, most(i, needed), "packs of offer " + i);
      }
      needed.forEach(this::cover);
      LinearExprBuilder cost = LinearExpr.newBuilder().addWeightedSum(counts, prices);
      list.suppliers().forEach(supplier -> addParcel(supplier, cost));
      model.minimize(cost);
    }

    /** No cheapest purchase holds more packs: all that is needed, or all that makes it free. */
    private long most(int offer, Map<String, Mass> needed) {
      Offer it = list.offers().get(offer);
      long need = needed.getOrDefault(it.material(), Mass.ZERO).micrograms();
      long cover = ceiling(need, it.pack().micrograms());
      long filler =
          list.suppliers().stream()
              .filter(s -> s.name().equals(it.supplier()) && prices[offer] > 0)
              .mapToLong(
                  s -> ceiling(Cp.millionths(s.freeFrom().orElse(0)), prices[offer]))
              .max()
              .orElse(0);
      return Math.min(it.available(), Math.max(cover, filler));
    }

    private static long ceiling(long amount, long part) {
      return (amount + part - 1) / part;
    }

    private void cover(String material, Mass need) {
      LinearExprBuilder bought = LinearExpr.newBuilder();
      long[] packs = new long[counts.length];
      for (int i = 0; i < counts.length; i++) {
        Offer offer = list.offers().get(i);
        packs[i] = offer.material().equals(material) ? offer.pack().micrograms() : 0;
      }
      long divisor = Cp.commonDivisor(packs);
      for (int i = 0; i < counts.length; i++) {
        bought.addTerm(counts[i], packs[i] / divisor);
      }
      model.addGreaterOrEqual(bought, ceiling(need.micrograms(), divisor));
    }

    /** Shipping is paid when anything is bought there, unless the goods reach the threshold. */
    private void addParcel(Supplier supplier, LinearExprBuilder cost) {
      long shipping = Cp.millionths(supplier.shipping());
      if (shipping == 0) {
        return;
      }
      BoolVar paid = model.newBoolVar("shipping of " + supplier.name());
      LinearExprBuilder goods = LinearExpr.newBuilder();
      List<IntVar> bought = new ArrayList<>();
      for (int i = 0; i < counts.length; i++) {
        if (list.offers().get(i).supplier().equals(supplier.name())) {
          goods.addTerm(counts[i], prices[i]);
          bought.add(counts[i]);
        }
      }
      if (supplier.freeFrom().isPresent()) {
        BoolVar free = model.newBoolVar("free from " + supplier.name());
        model.addGreaterOrEqual(goods, Cp.millionths(supplier.freeFrom().getAsDouble()))
            .onlyEnforceIf(free);
        model.addEquality(LinearExpr.sum(bought.toArray(new IntVar[0])), 0)
            .onlyEnforceIf(new Literal[] {paid.not(), free.not()});
      } else {
        bought.forEach(count -> model.addEquality(count, 0).onlyEnforceIf(paid.not()));
      }
      cost.addTerm(paid, shipping);
      parcels.add(new Parcel(paid, supplier.shipping()));
    }

    long[] counts(CpSolver solver) {
      long[] found = new long[counts.length];
      for (int i = 0; i < found.length; i++) {
        found[i] = solver.value(counts[i]);
      }
      return found;
    }

    double shipping(CpSolver solver) {
      return parcels.stream()
          .filter(p -> solver.booleanValue(p.paid()))
          .mapToDouble(Parcel::shipping)
          .sum();
    }
  }
}
