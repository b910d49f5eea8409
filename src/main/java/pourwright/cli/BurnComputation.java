package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pourwright.burn.Burn;
import pourwright.burn.BurnResult;
import pourwright.burn.BurningWick;
import pourwright.burn.Flame;
import pourwright.burn.Room;
import pourwright.burn.Simulation;
import pourwright.burn.Vessel;
import pourwright.heat.Melting;
import pourwright.heat.Stepper.Precision;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Solid;

/** {@code burn}: the simulation of a burning candle in its vessel. */
final class BurnComputation implements Computation {
  /** Tests of a vessel family that a calibration must stand on. */
  private static final int TESTS_MIN = 3;

  private static final int PROCESSORS = Math.max(1, Runtime.getRuntime().availableProcessors());

  @Override
  public void compute(JsonIn in, ObjectNode out) {
    Burn burn = burn(in);
    JsonIn calibration = in.objectOrNull("calibration");
    boolean calibrated = calibration != null && calibration.whole("tests", 0, 100_000) >= TESTS_MIN;
    long from = System.nanoTime();
    BurnResult result = Simulation.run(burn);
    double seconds = (System.nanoTime() - from) * 1e-9;
    pool(result, out.putArray("pool"));
    if (Double.isNaN(result.fullPoolH())) {
      out.putNull("full_pool_h");
    } else {
      out.put("full_pool_h", result.fullPoolH());
    }
    out.put("wall_max_c", result.wallMaxC());
    out.put("base_max_c", result.baseMaxC());
    out.put("remaining_wax_g", result.remainingWaxG());
    out.put("returned_share", result.returnedShare());
    balance(result, out);
    out.put("calibrated", calibrated);
    out.put("tunnelling", result.isTunnelling());
    out.put("solver_used", result.effort().axisymmetric() ? "axisymmetric" : "three_d");
    out.put("level", burn.fineness().wholeRows() ? "whole_rows" : "in_cell");
    out.put("scheme", burn.fineness().sharp() ? "sharp" : "plain");
    out.put("seconds", seconds);
    out.put("cells", result.effort().cells());
    out.put("steps", result.effort().sweeps());
    ArrayNode warnings = out.withArray("warnings");
    if (!calibrated) {
      warnings.add("not calibrated on tests of this vessel's family: not for judging a candle");
    }
    warnings.add("a prediction never replaces a burn test");
    result.warnings().forEach(warnings::add);
  }

  private static void pool(BurnResult result, ArrayNode pool) {
    for (BurnResult.Pool at : result.pool()) {
      ObjectNode node = pool.addObject();
      node.put("h", at.hours());
      node.put("equivalent_radius_mm", at.equivalentRadiusMm());
      node.put("length_mm", at.lengthMm());
      node.put("width_mm", at.widthMm());
      node.put("depth_mm", at.depthMm());
      node.put("melted_surface_fraction", at.meltedSurface());
      node.put("liquid_g", at.liquidG());
    }
  }

  private static void balance(BurnResult result, ObjectNode out) {
    BurnResult.Balance balance = result.balance();
    out.put("energy_error_fraction", balance.energyErrorFraction());
    out.put("mass_error_fraction", balance.massErrorFraction());
    out.put("heat_in_j", balance.heatInJ());
    out.put("lost_j", balance.lostJ());
    out.put("carried_j", balance.carriedJ());
    out.put("stored_j", balance.storedJ());
  }

  private static Burn burn(JsonIn in) {
    Vessel vessel = vessel(in);
    Melting wax = WaxIn.melting(in.object("wax"));
    double across = in.numberOr("liquid_enhancement_horizontal", 30, Range.POSITIVE);
    double upright = in.numberOr("liquid_enhancement_vertical", 1.2, Range.POSITIVE);
    List<BurningWick> wicks = wicks(in);
    Flame flame = flame(in);
    Room room = room(in);
    Burn.Fineness fineness = fineness(in);
    double contact = in.numberOr("contact_w_per_m2_k", Burn.CLOSE, Range.POSITIVE);
    return new Burn(vessel, wax, across, upright, wicks, flame, room, fineness, contact);
  }

  private static Vessel vessel(JsonIn in) {
    Solid cavity = OutlineIn.solid(in.object("cavity"));
    double fill = in.number("fill_height_mm", Range.POSITIVE);
    double wall = in.number("wall_mm", Range.POSITIVE);
    double base = in.number("base_mm", Range.POSITIVE);
    JsonIn stuff = in.object("vessel");
    double k = stuff.number("conductivity_w_per_m_k", Range.POSITIVE);
    double density = stuff.number("density_kg_per_m3", Range.POSITIVE);
    double capacity = stuff.number("heat_capacity_j_per_kg_k", Range.POSITIVE);
    double emissivity = stuff.numberOr("emissivity", 0.92, Range.FRACTION);
    Vessel.Stuff made;
    try {
      made = new Vessel.Stuff(k, density, capacity, emissivity);
    } catch (OutOfRange e) {
      throw stuff.refuse(e);
    }
    return new Vessel(cavity, fill, wall, base, made);
  }

  private static List<BurningWick> wicks(JsonIn in) {
    List<BurningWick> wicks = new ArrayList<>();
    for (JsonIn wick : in.objects("wicks", true)) {
      double x = wick.numberOr("x_mm", 0, Range.ANY);
      double y = wick.numberOr("y_mm", 0, Range.ANY);
      double rate = wick.number("burn_rate_g_per_h", Range.NOT_NEGATIVE);
      try {
        wicks.add(new BurningWick(x, y, rate));
      } catch (OutOfRange e) {
        throw wick.refuse(e);
      }
    }
    if (wicks.isEmpty()) {
      throw in.refuse("wicks", "no wick is given", "give at least one, burning at 0 if unlit");
    }
    return wicks;
  }

  private static Flame flame(JsonIn in) {
    double combustion = in.number("heat_of_combustion_j_per_kg", Range.POSITIVE);
    double radiative = in.numberOr("radiative_fraction", 0.20, Range.FRACTION);
    double absorbed = in.numberOr("radiation_absorbed_fraction", 0.95, Range.FRACTION);
    double point = in.numberOr("flame_point_above_wax_mm", 25, Range.POSITIVE);
    double root = in.numberOr("wick_root_w", 4, Range.NOT_NEGATIVE);
    double deep = in.numberOr("wick_root_depth_mm", 7.5, Range.POSITIVE);
    return new Flame(combustion, radiative, absorbed, point, root, deep);
  }

  private static Room room(JsonIn in) {
    double celsius = in.numberOr("room_c", 21, Range.CELSIUS);
    double emissivity = in.numberOr("wax_emissivity", 0.95, Range.FRACTION);
    if (in.isText("convection_w_per_m2_k")) {
      in.choice("convection_w_per_m2_k", "correlation");
      return new Room(celsius, emissivity, Room.Convection.fromCorrelations());
    }
    JsonIn given = in.objectOrNull("convection_w_per_m2_k");
    return new Room(celsius, emissivity, given == null ? Room.Convection.usual() : films(given));
  }

  private static Room.Convection films(JsonIn given) {
    double wax = given.numberOr("wax", 8, Range.NOT_NEGATIVE);
    double outer = given.numberOr("outer", 6, Range.NOT_NEGATIVE);
    double inner = given.numberOr("inner", 5, Range.NOT_NEGATIVE);
    double base = given.numberOr("base", 3, Range.NOT_NEGATIVE);
    try {
      return new Room.Convection(wax, outer, inner, base, false);
    } catch (OutOfRange e) {
      throw given.refuse(e);
    }
  }

  private static Burn.Fineness fineness(JsonIn in) {
    double hours = in.number("hours", Range.POSITIVE);
    double grid = in.number("grid_mm", Range.POSITIVE);
    double record = in.numberOr("record_every_s", 600, Range.POSITIVE);
    String solver = in.choiceOr("solver", "auto", "axisymmetric", "three_d", "auto");
    String precision = in.choiceOr("precision", "single", "single", "double");
    String level = in.choiceOr("level", "in_cell", "in_cell", "whole_rows");
    String scheme = in.choiceOr("scheme", "plain", "plain", "sharp");
    int threads = in.wholeOr("threads", Math.min(2, PROCESSORS), 1, 64);
    boolean symmetry = in.flagOr("symmetry", true);
    double step = in.numberOr("step_max_s", 30, Range.POSITIVE);
    Precision chosen = precision.equals("single") ? Precision.SINGLE : Precision.DOUBLE;
    return Burn.Fineness.of(
            hours, grid, record, Burn.Solver.valueOf(solver.toUpperCase(Locale.ROOT)))
        .withPrecision(chosen)
        .withThreads(threads)
        .withSymmetry(symmetry)
        .withWholeRows(level.equals("whole_rows"))
        .withStep(step)
        .withSharp(scheme.equals("sharp"));
  }
}
