package pourwright.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.FirstOrder;
import pourwright.quantity.Origin;
import pourwright.quantity.Sourced;

/**
 * A volume as drawn, and which of the measures carries most of its range.
 *
 * @param volumeMl in ml, with what the calipers leave open
 * @param widest the measure that would narrow it most, in words
 */
public record Drawn(Sourced volumeMl, String widest) {
  /** House: what a measure taken with calipers on a soft mold is good for, in mm. */
  public static final double CALIPER_MM = 0.5;

  /** A size of a drawing and how it is put back. */
  private record Size(int body, boolean top, String name, double value) {}

  /**
   * Works out a volume of one or more bodies and its range, to first order.
   *
   * @param bodies the bodies that the volume is made of
   * @param volume of the same bodies, in their order
   */
  static Drawn of(List<SolidForm> bodies, ToDoubleFunction<List<SolidForm>> volume) {
    List<Size> sizes = new ArrayList<>();
    for (int i = 0; i < bodies.size(); i++) {
      addSizes(i, bodies.get(i), sizes);
    }
    List<Sourced> inputs =
        sizes.stream()
            .map(s -> Sourced.measured(s.value, Math.min(0.5, CALIPER_MM / s.value)))
            .toList();
    FirstOrder.Result result =
        FirstOrder.of(inputs, x -> volume.applyAsDouble(rebuilt(bodies, sizes, x)));
    int widest = result.widestInput();
    String words = widest < 0 ? "" : words(bodies.size(), sizes.get(widest));
    Sourced ml =
        new Sourced(
            result.value().value(), result.value().relativeUncertainty(), Origin.WORKED_OUT);
    return new Drawn(ml, words);
  }

  private static String words(int bodies, Size size) {
    String body = bodies == 1 ? "" : size.body == 0 ? "outer " : "inner ";
    String name = size.name.replace("_mm", "").replace('_', ' ');
    return (body + name + (size.top ? " at the rim" : "")).toLowerCase(Locale.ROOT);
  }

  private static void addSizes(int index, SolidForm body, List<Size> into) {
    body.bottom().sizes().forEach((name, value) -> addSize(index, false, name, value, into));
    OutlineForm top = body.top();
    if (top != null) {
      top.sizes().forEach((name, value) -> addSize(index, true, name, value, into));
    }
    into.add(new Size(index, false, "height_mm", body.heightMm()));
  }

  private static void addSize(int body, boolean top, String name, double value, List<Size> into) {
    if (name.endsWith("_mm") && !name.equals("corner_mm") && !name.equals("rib_depth_mm")) {
      into.add(new Size(body, top, name, value));
    }
  }

  private static List<SolidForm> rebuilt(
      List<SolidForm> bodies, List<Size> sizes, double[] values) {
    List<SolidForm> rebuilt = new ArrayList<>();
    for (int index = 0; index < bodies.size(); index++) {
      SolidForm body = bodies.get(index);
      Map<String, Double> below = new TreeMap<>(body.bottom().sizes());
      OutlineForm top = body.top();
      Map<String, Double> above = top == null ? null : new TreeMap<>(top.sizes());
      double height = body.heightMm();
      for (int i = 0; i < values.length; i++) {
        Size size = sizes.get(i);
        if (size.body != index) {
          continue;
        }
        if (size.name.equals("height_mm")) {
          height = values[i];
        } else if (size.top && above != null) {
          above.put(size.name, values[i]);
        } else {
          below.put(size.name, values[i]);
        }
      }
      rebuilt.add(body.resized(resized(body.bottom(), below), resizedOrNull(top, above), height));
    }
    return rebuilt;
  }

  private static OutlineForm resized(OutlineForm form, Map<String, Double> sizes) {
    return new OutlineForm(form.form(), sizes, form.pointsMm(), form.path());
  }

  private static @Nullable OutlineForm resizedOrNull(
      @Nullable OutlineForm form, @Nullable Map<String, Double> sizes) {
    return form == null || sizes == null ? null : resized(form, sizes);
  }
}
