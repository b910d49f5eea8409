package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import pourwright.cast.Leftover;
import pourwright.cast.LeftoverPacking;
import pourwright.quantity.OutOfRange;

/** {@code leftover}: which free molds make the most of slurry that is left. */
final class LeftoverComputation implements Computation {
  private final LeftoverPacking packing;

  LeftoverComputation(LeftoverPacking packing) {
    this.packing = packing;
  }

  @Override
  public void compute(JsonIn in, ObjectNode out) {
    double volumeMl = in.number("volume_ml", Range.NOT_NEGATIVE);
    int atMost = in.wholeOr("molds_at_most", Leftover.NO_LIMIT, 0, Leftover.NO_LIMIT);
    List<Leftover.Mold> molds = new ArrayList<>();
    for (JsonIn mold : in.objects("molds", true)) {
      molds.add(mold(mold));
    }
    Leftover.Filling filling = packing.fill(new Leftover(volumeMl, molds, atMost));
    ArrayNode fill = out.putArray("fill");
    for (Leftover.Filled filled : filling.fill()) {
      fill.addObject().put("name", filled.name()).put("count", filled.count());
    }
    out.put("used_ml", filling.usedMl());
    out.put("left_ml", Math.max(0, volumeMl - filling.usedMl()));
    out.put("value", filling.value());
    out.put("proven", filling.proven());
  }

  private static Leftover.Mold mold(JsonIn in) {
    try {
      return new Leftover.Mold(
          in.text("name"),
          in.number("volume_ml", Range.POSITIVE),
          in.whole("free", 0, Leftover.NO_LIMIT),
          in.number("value", Range.NOT_NEGATIVE));
    } catch (OutOfRange e) {
      throw in.refuse(e);
    }
  }
}
