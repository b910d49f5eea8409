package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import pourwright.shape.Outline;
import pourwright.wick.WickLayout;
import pourwright.wick.WickLayout.Clearances;
import pourwright.wick.WickOffer;

/** {@code wicks}: how many, and where. */
final class WicksComputation implements Computation {
  @Override
  public void compute(JsonIn in, ObjectNode out) {
    Outline outline = OutlineIn.outline(in, "outline");
    double wall = in.number("wall_clearance_mm", Range.NOT_NEGATIVE);
    double spacing = in.number("spacing_mm", Range.NOT_NEGATIVE);
    boolean symmetric = in.flagOr("symmetric", true);
    int count = in.wholeOr("count", 0, 1, WickLayout.MOST);
    double melt = in.numberOr("melt_radius_mm", 0, Range.POSITIVE);
    if ((count == 0) == (melt == 0)) {
      throw in.refuse(
          count == 0 ? "count" : "melt_radius_mm",
          (count == 0 ? "neither" : "both") + " of count and melt_radius_mm are given",
          "give exactly one of them");
    }
    WickOffer offer =
        symmetric
            ? symmetric(outline, wall, spacing, count, melt)
            : new WickOffer(free(outline, new Clearances(wall, spacing, false), count, melt), null);
    WickLayout layout = offer.layout();
    out.put("count", layout.positions().size());
    write(layout, "positions_mm", out);
    out.put("covering_radius_mm", layout.coveringRadiusMm());
    out.put("turned_deg", layout.turnedDeg());
    out.put("mirror_axes_kept", layout.mirrorAxes());
    WickLayout free = offer.free();
    if (free != null) {
      write(free, "free_positions_mm", out);
      out.put("free_covering_radius_mm", free.coveringRadiusMm());
      out.put("symmetry_costs", offer.sentence());
    }
    out.withArray("warnings");
  }

  private static WickOffer symmetric(
      Outline outline, double wall, double spacing, int count, double melt) {
    return count > 0
        ? WickOffer.of(outline, wall, spacing, count)
        : WickOffer.fewest(outline, wall, spacing, melt);
  }

  private static WickLayout free(Outline outline, Clearances clearances, int count, double melt) {
    return count > 0
        ? WickLayout.of(outline, clearances, count)
        : WickLayout.fewest(outline, clearances, melt);
  }

  private static void write(WickLayout layout, String field, ObjectNode out) {
    ArrayNode positions = out.putArray(field);
    layout.positions().forEach(p -> positions.addArray().add(p.xMm()).add(p.yMm()));
  }
}
