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
import pourwright.stock.PurchaseList.PriceFrom;
import pourwright.stock.PurchaseList.Supplier;
import pourwright.stock.Purchasing;

/**
 * A covering problem with fixed charges, solved to proof. Amounts count in micrograms and money in
 * millionths. A pack that nobody needs may be bought where it lifts a parcel over the threshold of
 * free shipping for less than the shipping; of what goes off before it is used up no pack is bought
 * that could be left out.
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
    private final LinearExpr[] goods;
    private final List<Parcel> parcels = new ArrayList<>();

    Model(PurchaseList list) {
      this.list = list;
      List<Offer> offers = list.offers();
      counts = new IntVar[offers.size()];
      goods = new LinearExpr[offers.size()];
      Map<String, Mass> needed = list.needed();
      LinearExprBuilder cost = LinearExpr.newBuilder();
      for (int i = 0; i < counts.length; i++) {
        long most = most(offers.get(i), needed);
        counts[i] = model.newIntVar(0, most, "packs of offer " + i);
        goods[i] = goods(i, most);
        cost.add(goods[i]);
      }
      needed.forEach(this::cover);
      list.suppliers().forEach(supplier -> addParcel(supplier, cost));
      model.minimize(cost);
    }

    /**
     * No cheapest purchase holds more packs: all that is needed, all that makes the parcel free, or
     * the first pack of a price step beyond.
     */
    private long most(Offer offer, Map<String, Mass> needed) {
      long need = needed.getOrDefault(offer.material(), Mass.ZERO).micrograms();
      long cover = ceiling(need, offer.pack().micrograms());
      long step = offer.prices().get(offer.prices().size() - 1).packs();
      long cheapest =
          offer.prices().stream().mapToLong(p -> Cp.millionths(p.price())).min().orElse(0);
      long filler =
          list.suppliers().stream()
              .filter(s -> s.name().equals(offer.supplier()) && cheapest > 0)
              .mapToLong(s -> ceiling(Cp.millionths(s.freeFrom().orElse(0)), cheapest))
              .max()
              .orElse(0);
      return Math.min(offer.available(), Math.max(cover, Math.max(filler, step > 1 ? step : 0)));
    }

    private static long ceiling(long amount, long part) {
      return (amount + part - 1) / part;
    }

    /** Price of the packs: one step of the price applies to all of them. */
    private LinearExpr goods(int offer, long most) {
      List<PriceFrom> prices = list.offers().get(offer).prices();
      if (prices.size() == 1) {
        return LinearExpr.term(counts[offer], Cp.millionths(prices.get(0).price()));
      }
      LinearExprBuilder sum = LinearExpr.newBuilder();
      LinearExprBuilder all = LinearExpr.newBuilder();
      List<BoolVar> applies = new ArrayList<>();
      for (int p = 0; p < prices.size(); p++) {
        long from = prices.get(p).packs();
        long to = p + 1 < prices.size() ? Math.min(most, prices.get(p + 1).packs() - 1L) : most;
        if (from <= to) {
          BoolVar chosen = model.newBoolVar("step " + p + " of offer " + offer);
          IntVar packs = model.newIntVar(0, to, "packs at step " + p + " of offer " + offer);
          model.addLinearConstraint(packs, from, to).onlyEnforceIf(chosen);
          model.addEquality(packs, 0).onlyEnforceIf(chosen.not());
          applies.add(chosen);
          all.add(packs);
          sum.addTerm(packs, Cp.millionths(prices.get(p).price()));
        }
      }
      model.addAtMostOne(applies.toArray(new BoolVar[0]));
      model.addEquality(counts[offer], all);
      return sum.build();
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
      list.keeps(material)
          .ifPresent(keeps -> addKeeps(packs, divisor, need.micrograms(), keeps.micrograms()));
    }

    /** More than keeps is bought only where each pack of it is needed to cover the need. */
    private void addKeeps(long[] packs, long divisor, long need, long keeps) {
      LinearExprBuilder sum = LinearExpr.newBuilder();
      for (int i = 0; i < counts.length; i++) {
        sum.addTerm(counts[i], packs[i] / divisor);
      }
      LinearExpr bought = sum.build();
      BoolVar all = model.newBoolVar("all of it keeps");
      model.addLessOrEqual(bought, keeps / divisor).onlyEnforceIf(all);
      for (int i = 0; i < counts.length; i++) {
        if (packs[i] > 0) {
          BoolVar some = model.newBoolVar("some of offer " + i);
          model.addEquality(counts[i], 0).onlyEnforceIf(some.not());
          model
              .addLessOrEqual(bought, (need + packs[i] - 1) / divisor)
              .onlyEnforceIf(new Literal[] {some, all.not()});
        }
      }
    }

    /** Shipping is paid when anything is bought there, unless the goods reach the threshold. */
    private void addParcel(Supplier supplier, LinearExprBuilder cost) {
      long shipping = Cp.millionths(supplier.shipping());
      if (shipping == 0) {
        return;
      }
      BoolVar paid = model.newBoolVar("shipping of " + supplier.name());
      LinearExprBuilder sum = LinearExpr.newBuilder();
      List<IntVar> bought = new ArrayList<>();
      for (int i = 0; i < counts.length; i++) {
        if (list.offers().get(i).supplier().equals(supplier.name())) {
          sum.add(goods[i]);
          bought.add(counts[i]);
        }
      }
      if (supplier.freeFrom().isPresent()) {
        BoolVar free = model.newBoolVar("free from " + supplier.name());
        model
            .addGreaterOrEqual(sum, Cp.millionths(supplier.freeFrom().getAsDouble()))
            .onlyEnforceIf(free);
        model
            .addEquality(LinearExpr.sum(bought.toArray(new IntVar[0])), 0)
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
