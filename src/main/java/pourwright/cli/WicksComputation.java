package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import pourwright.shape.Outline;
import pourwright.wick.WickLayout;
import pourwright.wick.WickLayout.Clearances;

/** {@code wicks}: how many, and where. */
final class WicksComputation implements Computation {
  @Override
  public void compute(JsonIn in, ObjectNode out) {
    Outline outline = OutlineIn.outline(in, "outline");
    Clearances clearances =
        new Clearances(
            in.number("wall_clearance_mm", Range.NOT_NEGATIVE),
            in.number("spacing_mm", Range.NOT_NEGATIVE),
            in.flagOr("symmetric", true));
    int count = in.wholeOr("count", 0, 1, WickLayout.MOST);
    double melt = in.numberOr("melt_radius_mm", 0, Range.POSITIVE);
    if ((count == 0) == (melt == 0)) {
      throw in.refuse(
          count == 0 ? "count" : "melt_radius_mm",
          (count == 0 ? "neither" : "both") + " of count and melt_radius_mm are given",
          "give exactly one of them");
    }
    WickLayout layout =
        count > 0
            ? WickLayout.of(outline, clearances, count)
            : WickLayout.fewest(outline, clearances, melt);
    out.put("count", layout.positions().size());
    ArrayNode positions = out.putArray("positions_mm");
    layout.positions().forEach(p -> positions.addArray().add(p.xMm()).add(p.yMm()));
    out.put("covering_radius_mm", layout.coveringRadiusMm());
    out.put("turned_deg", layout.turnedDeg());
    out.put("mirror_axes_kept", layout.mirrorAxes());
    out.withArray("warnings");
  }
}
