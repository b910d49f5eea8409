package pourwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import pourwright.pour.Dose;
import pourwright.pour.Dose.LoadOf;

/** {@code dose}: wax and fragrance from one known mass and the load. */
final class DoseComputation implements Computation {
  @Override
  public void compute(JsonIn in, ObjectNode out) {
    double load = in.number("load_fraction", Range.NOT_NEGATIVE);
    LoadOf of = in.choice("of", "total", "wax").equals("total") ? LoadOf.TOTAL : LoadOf.WAX;
    Dose dose = dose(in, load, of);
    out.put("wax_g", dose.waxG());
    out.put("fragrance_g", dose.fragranceG());
    out.put("total_g", dose.totalG());
    out.put("load_of_total_fraction", dose.loadOfTotal());
    out.put("load_of_wax_fraction", dose.loadOfWax());
  }

  private static Dose dose(JsonIn in, double load, LoadOf of) {
    long given = List.of("total_g", "wax_g", "fragrance_g").stream().filter(in::has).count();
    if (given != 1) {
      throw in.refuse(
          "total_g",
          given + " of total_g, wax_g and fragrance_g are given",
          "give exactly one of them");
    }
    if (in.has("total_g")) {
      return Dose.ofTotal(in.number("total_g", Range.POSITIVE), load, of);
    }
    if (in.has("wax_g")) {
      return Dose.ofWax(in.number("wax_g", Range.POSITIVE), load, of);
    }
    return Dose.ofFragrance(in.number("fragrance_g", Range.POSITIVE), load, of);
  }
}
