package pourwright.label;

import java.util.ArrayList;
import java.util.List;

/**
 * The combination that was proved for sale against the combination that is to be labelled: wax,
 * scent, load, wick, vessel, sealer, colour. A difference in any of them is a new combination.
 *
 * @param wax code
 * @param scent code, empty for none
 * @param loadOfTotal fraction of the whole by mass
 * @param wick what is in it
 * @param vessel design and version
 * @param sealer code, empty for none
 * @param colour code, empty for none
 */
public record Proof(
    String wax,
    String scent,
    double loadOfTotal,
    String wick,
    String vessel,
    String sealer,
    String colour) {
  private static final double SAME_LOAD = 1e-6;

  /** Where the other combination differs from this proved one, in words; empty when nowhere. */
  public List<String> differences(Proof labelled) {
    List<String> differences = new ArrayList<>();
    compare(differences, "wax", wax, labelled.wax);
    compare(differences, "scent", scent, labelled.scent);
    if (Math.abs(loadOfTotal - labelled.loadOfTotal) > SAME_LOAD) {
      differences.add(
          "load "
              + Amounts.percent(labelled.loadOfTotal)
              + ", proved at "
              + Amounts.percent(loadOfTotal));
    }
    compare(differences, "wick", wick, labelled.wick);
    compare(differences, "vessel", vessel, labelled.vessel);
    compare(differences, "sealer", sealer, labelled.sealer);
    compare(differences, "colour", colour, labelled.colour);
    return differences;
  }

  private static void compare(List<String> differences, String what, String proved, String now) {
    if (!proved.equals(now)) {
      differences.add(
          what
              + " "
              + (now.isEmpty() ? "none" : now)
              + ", proved with "
              + (proved.isEmpty() ? "none" : proved));
    }
  }
}
