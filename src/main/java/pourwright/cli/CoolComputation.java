package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import pourwright.pour.CoolingClock;
import pourwright.pour.CoolingClock.Crossing;
import pourwright.pour.CoolingClock.Interval;
import pourwright.pour.CoolingClock.Reading;

/** {@code cool}: when a pitcher reaches its temperatures, from thermometer readings. */
final class CoolComputation implements Computation {
  @Override
  public void compute(JsonIn in, ObjectNode out) {
    List<Reading> readings = new ArrayList<>();
    for (JsonIn item : in.objects("readings", true)) {
      readings.add(
          new Reading(item.number("s", Range.NOT_NEGATIVE), item.number("c", Range.CELSIUS)));
    }
    double room = in.numberOr("room_c", Double.NaN, Range.CELSIUS);
    double meltTo = in.numberOr("melt_to_c", Double.NaN, Range.CELSIUS);
    List<Double> targets = new ArrayList<>();
    for (double target : in.numbers("targets_c", Range.CELSIUS)) {
      targets.add(target);
    }
    CoolingClock clock = CoolingClock.of(readings, Double.isNaN(room) ? null : room);
    out.put("room_c", clock.roomC());
    Interval roomRange = clock.roomInterval();
    out.put("room_low_c", roomRange.low());
    out.put("room_high_c", roomRange.high());
    out.put("time_constant_s", clock.timeConstantS());
    Interval tauRange = clock.timeConstantInterval();
    out.put("time_constant_low_s", tauRange.low());
    out.put("time_constant_high_s", tauRange.high());
    out.put("noise_k", clock.noiseK());
    out.put("readings_used", clock.readingsUsed());
    ArrayNode list = out.putArray("targets");
    targets.forEach(target -> put(list.addObject(), clock.crossing(target)));
    if (!Double.isNaN(meltTo)) {
      clock.warnOfPlateau(meltTo, targets);
    }
    ArrayNode warnings = out.withArray("warnings");
    clock.warnings().forEach(warnings::add);
  }

  private static void put(ObjectNode node, Crossing crossing) {
    node.put("c", crossing.c());
    node.put("at_s", crossing.atS());
    node.put("low_s", crossing.lowS());
    node.put("high_s", crossing.highS());
  }
}
