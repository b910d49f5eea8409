package pourwright.cli;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Circle;
import pourwright.shape.Ellipse;
import pourwright.shape.Outline;
import pourwright.shape.Point;
import pourwright.shape.RegularPolygon;
import pourwright.shape.RoundedRectangle;
import pourwright.shape.Solid;
import pourwright.shape.Stadium;
import pourwright.shape.Superellipse;
import pourwright.shape.Traced;

/** Reads outlines and solids of the headless contract. */
final class OutlineIn {
  private static final List<String> FORMS =
      List.of(
          "circle",
          "ellipse",
          "superellipse",
          "stadium",
          "rounded_rectangle",
          "polygon",
          "points_mm");

  private OutlineIn() {}

  /** The outline in a field that must be there. */
  static Outline outline(JsonIn in, String field) {
    return outline(in.object(field));
  }

  private static Outline outline(JsonIn in) {
    List<String> given = FORMS.stream().filter(in::has).toList();
    if (given.size() != 1) {
      throw in.refuse(
          given.isEmpty() ? "circle" : given.get(1),
          given.size() + " forms of an outline are given",
          "give exactly one of " + FORMS);
    }
    String form = given.get(0);
    if (form.equals("points_mm")) {
      double[][] points = in.points("points_mm", 2);
      return made(
          in, () -> Traced.through(Arrays.stream(points).map(p -> new Point(p[0], p[1])).toList()));
    }
    return sized(form, in.object(form));
  }

  private static Outline sized(String form, JsonIn in) {
    if (form.equals("circle")) {
      double diameter = mm(in, "diameter_mm");
      return made(in, () -> new Circle(diameter));
    }
    if (form.equals("polygon")) {
      int sides = in.whole("sides", 3, 360);
      double across = mm(in, "across_flats_mm");
      double corner = in.numberOr("corner_mm", 0, Range.NOT_NEGATIVE);
      return made(in, () -> new RegularPolygon(sides, across, corner));
    }
    double length = mm(in, "length_mm");
    double width = mm(in, "width_mm");
    if (form.equals("superellipse")) {
      double exponent = in.number("exponent", Range.POSITIVE);
      return made(in, () -> new Superellipse(length, width, exponent));
    }
    if (form.equals("rounded_rectangle")) {
      double corner = in.numberOr("corner_mm", 0, Range.NOT_NEGATIVE);
      return made(in, () -> new RoundedRectangle(length, width, corner));
    }
    return form.equals("stadium")
        ? made(in, () -> new Stadium(length, width))
        : made(in, () -> new Ellipse(length, width));
  }

  private static double mm(JsonIn in, String name) {
    return in.number(name, Range.POSITIVE);
  }

  /** The solid whose fields stand in the given object. */
  static Solid solid(JsonIn in) {
    Outline bottom = outline(in, "bottom");
    JsonIn above = in.objectOrNull("top");
    Outline top = above == null ? bottom : outline(above);
    double height = mm(in, "height_mm");
    return made(in, () -> new Solid(bottom, top, height));
  }

  /** The craft's refusal, pointed at the object that the values stand in. */
  private static <T> T made(JsonIn in, Supplier<T> maker) {
    try {
      return maker.get();
    } catch (OutOfRange e) {
      throw in.refuse(e);
    }
  }
}
