package pourwright.plan;

import java.util.List;
import pourwright.card.Amounts;
import pourwright.material.UnitKind;
import pourwright.order.OrderLine;

/**
 * From order lines to what is made of what: nothing of time yet.
 *
 * @param served how each order line is served
 * @param casts mixings, in the order of need
 * @param running casts under way whose vessels are used
 * @param poured pours under way whose candles are used, or that want hands soon
 * @param pours pitchers, in the order of need
 * @param classes classes to come, with their kits
 * @param picks what each batch draws, from which lot, and what is short
 * @param needs all materials together
 */
public record MakePlan(
    List<Served> served,
    List<CastJob> casts,
    List<RunningCast> running,
    List<RunningPour> poured,
    List<PourJob> pours,
    List<ClassJob> classes,
    List<Pick> picks,
    Amounts needs) {

  /**
   * How an order line is served.
   *
   * @param line the line
   * @param fromStock candles that are there already
   * @param pours keys of the pours that make the rest, those under way included
   */
  public record Served(OrderLine line, int fromStock, List<String> pours) {
    /** Copies. */
    public Served {
      pours = List.copyOf(pours);
    }
  }

  /**
   * What one batch draws of one material.
   *
   * @param batch key of the cast or pour
   * @param material code
   * @param unit how it is counted
   * @param needUnits what is needed, in the material's small unit
   * @param draws from which lots
   * @param shortUnits what no lot could give, in the small unit
   */
  public record Pick(
      String batch,
      String material,
      UnitKind unit,
      long needUnits,
      List<Draw> draws,
      long shortUnits) {
    /** Copies. */
    public Pick {
      draws = List.copyOf(draws);
    }
  }

  /**
   * An amount from one lot.
   *
   * @param lot the ledger's number of the lot
   * @param code the lot code on the pack
   * @param units in the material's small unit
   */
  public record Draw(long lot, String code, long units) {}

  /** Copies. */
  public MakePlan {
    served = List.copyOf(served);
    casts = List.copyOf(casts);
    running = List.copyOf(running);
    poured = List.copyOf(poured);
    pours = List.copyOf(pours);
    classes = List.copyOf(classes);
    picks = List.copyOf(picks);
  }

  /** What is short of a material over all batches, in its small unit. */
  public java.util.SortedMap<String, Long> shortages() {
    java.util.SortedMap<String, Long> sum = new java.util.TreeMap<>();
    for (Pick pick : picks) {
      if (pick.shortUnits() > 0) {
        sum.merge(pick.material(), pick.shortUnits(), Long::sum);
      }
    }
    return sum;
  }
}
