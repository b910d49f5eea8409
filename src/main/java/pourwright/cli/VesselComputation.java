package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Hollow;
import pourwright.shape.Solid;

/** {@code vessel}: volumes, walls, faces to seal and balance of an outer solid with a cavity. */
final class VesselComputation implements Computation {
  /** Typical hardened casting. */
  private static final double HARDENED_G_PER_ML = 2.0;

  /** Typical set wax. */
  private static final double WAX_G_PER_ML = 0.88;

  /** House: wax left when a burn ends. */
  private static final double LEFT_MM = 10;

  @Override
  public void compute(JsonIn in, ObjectNode out) {
    Solid outer = OutlineIn.solid(in.object("outer"));
    Solid cavity = OutlineIn.solid(in.object("cavity"));
    double stone = in.numberOr("vessel_density_g_per_ml", HARDENED_G_PER_ML, Range.POSITIVE);
    double wax = in.numberOr("wax_density_g_per_ml", WAX_G_PER_ML, Range.POSITIVE);
    double fill = in.numberOr("fill_height_mm", cavity.heightMm(), Range.NOT_NEGATIVE);
    try {
      Hollow vessel = new Hollow(outer, cavity);
      write(vessel, stone, wax, fill, out);
    } catch (OutOfRange e) {
      throw in.refuse(e);
    }
  }

  private static void write(Hollow vessel, double stone, double wax, double fill, ObjectNode out) {
    Hollow.Thinnest thinnest = vessel.thinnestWall();
    Hollow.Balance filled = vessel.balance(stone, wax, fill);
    out.put("cavity_ml", vessel.cavity().volumeMl());
    out.put("cast_ml", vessel.wallMl());
    out.put("thinnest_wall_mm", thinnest.mm());
    out.put("thinnest_wall_height_mm", thinnest.heightMm());
    out.put("thinnest_wall_degrees", Math.toDegrees(thinnest.angle()));
    out.put("base_mm", vessel.baseMm());
    out.put("inside_mm2", vessel.insideMm2(vessel.cavity().heightMm()));
    out.put("outside_mm2", vessel.outsideMm2());
    out.put("filled_g", filled.massG());
    out.put("centre_of_gravity_mm", filled.centreMm());
    out.put("tips_at_degrees", filled.tipsAtDegrees());
    double left = Math.min(LEFT_MM, fill);
    out.put("tips_at_degrees_burnt_down", vessel.balance(stone, wax, left).tipsAtDegrees());
    ArrayNode warnings = out.putArray("warnings");
    if (thinnest.mm() <= 0) {
      warnings.add("the cavity breaks through the wall");
    }
  }
}
