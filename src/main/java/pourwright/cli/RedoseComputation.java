package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import pourwright.pour.Dose;
import pourwright.pour.Dose.LoadOf;
import pourwright.pour.Redose;

/** {@code redose}: what to add to a pitcher so that its load is right again. */
final class RedoseComputation implements Computation {
  @Override
  public void compute(JsonIn in, ObjectNode out) {
    double waxG = in.number("wax_g", Range.POSITIVE);
    double fragranceG = in.number("fragrance_g", Range.NOT_NEGATIVE);
    double load = in.number("load_fraction", Range.NOT_NEGATIVE);
    LoadOf of = in.choice("of", "total", "wax").equals("total") ? LoadOf.TOTAL : LoadOf.WAX;
    double target = in.numberOr("target_total_g", 0, Range.POSITIVE);
    Redose redose =
        Redose.of(
            new Dose(waxG, fragranceG), load, of, target == 0 ? null : Double.valueOf(target));
    out.put("add_wax_g", redose.addWaxG());
    out.put("add_fragrance_g", redose.addFragranceG());
    out.put("wax_g", redose.after().waxG());
    out.put("fragrance_g", redose.after().fragranceG());
    out.put("total_g", redose.after().totalG());
    out.put("load_of_total_fraction", redose.after().loadOfTotal());
    out.put("load_of_wax_fraction", redose.after().loadOfWax());
    ArrayNode warnings = out.withArray("warnings");
    redose.warnings().forEach(warnings::add);
  }
}
