package pourwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import pourwright.cast.Maturity;
import pourwright.cast.Maturity.Line;
import pourwright.cast.Maturity.Log;

/** {@code maturity}: Nurse–Saul maturity and equivalent age of a temperature log. */
final class MaturityComputation implements Computation {
  @Override
  public void compute(JsonIn in, ObjectNode out) {
    double datum = in.numberOr("datum_c", 0, Range.CELSIUS);
    double reference = in.numberOr("reference_c", 20, Range.CELSIUS);
    double energy = in.numberOr("activation_energy_kj_per_mol", 40, Range.NOT_NEGATIVE);
    double longestGap = in.numberOr("longest_gap_h", Double.MAX_VALUE, Range.POSITIVE);
    Log log = new Log(lines(in.objects("log", true))).withoutGapsOver(longestGap);
    out.put("maturity_c_h", Maturity.nurseSaul(log, datum));
    out.put("equivalent_age_h", Maturity.equivalentAgeH(log, reference, energy));
    out.put("log_h", log.hours());
  }

  private static List<Line> lines(List<JsonIn> log) {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < log.size(); i++) {
      JsonIn line = log.get(i);
      boolean last = i == log.size() - 1;
      if (!last && !line.has("c")) {
        throw line.refuse(
            "c",
            "line " + (i + 1) + " of the log has no temperature, so the log has a gap",
            "fill it in; only the last line, which ends the log, goes without");
      }
      double c = last ? line.numberOr("c", 0, Range.CELSIUS) : line.number("c", Range.CELSIUS);
      lines.add(new Line(line.number("h", Range.ANY), c));
    }
    return lines;
  }
}
