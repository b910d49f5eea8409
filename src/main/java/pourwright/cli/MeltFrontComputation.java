package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.DoubleUnaryOperator;
import pourwright.heat.LineSource;
import pourwright.heat.MeltFront;
import pourwright.heat.MeltFront.Faces;
import pourwright.heat.Melting;
import pourwright.heat.Neumann;

/** {@code melt-front}: a melting front in one dimension beside its closed form. */
final class MeltFrontComputation implements Computation {
  @Override
  public void compute(JsonIn in, ObjectNode out) {
    Melting wax = WaxIn.melting(in.has("wax") ? in.object("wax") : in);
    double initial = in.number("initial_c", Range.CELSIUS);
    double length = in.number("length_mm", Range.POSITIVE);
    double grid = in.number("grid_mm", Range.POSITIVE);
    double[] times = in.numbers("times_s", Range.POSITIVE);
    String geometry = in.choiceOr("geometry", "plane", "plane", "line_source");
    String faces = in.choiceOr("faces", "integral", "integral", "harmonic");
    String named = in.choiceOr("case", "", "one_phase", "two_phase");
    if (named.equals("one_phase") && initial != wax.fromC()) {
      throw in.refuse(
          "initial_c", "with one phase the wax begins at its melting point", "use two_phase");
    }
    MeltFront.Case of =
        new MeltFront.Case(
            wax, initial, length, grid, faces.equals("integral") ? Faces.INTEGRAL : Faces.HARMONIC);
    boolean plane = geometry.equals("plane");
    double surface = plane ? in.number("surface_c", Range.CELSIUS) : 0;
    double watts = plane ? 0 : in.number("source_w_per_m", Range.POSITIVE);
    MeltFront front = plane ? MeltFront.slab(of, surface) : MeltFront.line(of, watts);
    DoubleUnaryOperator exact =
        plane
            ? new Neumann(wax, initial, surface)::frontM
            : new LineSource(wax, initial, watts)::frontM;
    write(out, front.frontsM(times), times, exact);
    double farthest = exact.applyAsDouble(times[times.length - 1]) * 1000;
    if (farthest > 0.8 * length) {
      out.withArray("warnings")
          .add("the front comes near the far end; the closed form knows of no far end");
    }
  }

  private static void write(
      ObjectNode out, double[] fronts, double[] times, DoubleUnaryOperator exact) {
    ArrayNode computed = out.putArray("front_mm");
    ArrayNode analytic = out.putArray("analytic_mm");
    for (int i = 0; i < times.length; i++) {
      computed.add(1000 * fronts[i]);
      analytic.add(1000 * exact.applyAsDouble(times[i]));
    }
  }
}
