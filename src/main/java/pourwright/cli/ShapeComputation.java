package pourwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import pourwright.shape.Solid;

/** {@code shape}: volume and areas of a solid. */
final class ShapeComputation implements Computation {
  @Override
  public void compute(JsonIn in, ObjectNode out) {
    Solid solid = OutlineIn.solid(in);
    out.put("volume_ml", solid.volumeMl());
    out.put("side_area_mm2", solid.sideAreaMm2());
    out.put("bottom_area_mm2", solid.bottom().areaMm2());
    out.put("top_area_mm2", solid.top().areaMm2());
    out.put("bottom_perimeter_mm", solid.bottom().perimeterMm());
    out.put("top_perimeter_mm", solid.top().perimeterMm());
  }
}
