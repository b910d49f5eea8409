package pourwright.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Circle;
import pourwright.shape.DrawnPath;
import pourwright.shape.Ellipse;
import pourwright.shape.Outline;
import pourwright.shape.Point;
import pourwright.shape.RegularPolygon;
import pourwright.shape.Ribbed;
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
          "points_mm",
          "svg_path");

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
    JsonIn sizes = in.object(form);
    if (form.equals("svg_path")) {
      String d = sizes.text("d");
      double mmPerUnit = mm(sizes, "mm_per_unit");
      try {
        return DrawnPath.read(d, mmPerUnit).outline();
      } catch (OutOfRange e) {
        throw sizes.refuse("d", e.sentence(), e.hint());
      }
    }
    Outline smooth = sized(form, sizes);
    int ribs = sizes.wholeOr("ribs", 0, 3, Ribbed.RIBS_MAX);
    if (ribs == 0) {
      return smooth;
    }
    double depth = mm(sizes, "rib_depth_mm");
    return made(sizes, () -> new Ribbed(smooth, ribs, depth));
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

  /**
   * The solid whose fields stand in the given object: outlines at bottom and top, or a profile of
   * one outline by {@code scale}, or a profile of revolution by {@code radius_mm}; either twisted.
   */
  static Solid solid(JsonIn in) {
    double twist = in.numberOr("twist_degrees", 0, Range.ANY);
    List<JsonIn> levels = in.objects("profile", false);
    Solid body = levels.isEmpty() ? ruled(in) : ofProfile(in, levels);
    return twist == 0 ? body : made(in, () -> body.twisted(twist));
  }

  private static Solid ruled(JsonIn in) {
    Outline bottom = outline(in, "bottom");
    JsonIn above = in.objectOrNull("top");
    Outline top = above == null ? bottom : outline(above);
    double height = mm(in, "height_mm");
    return made(in, () -> new Solid(bottom, top, height));
  }

  private static Solid ofProfile(JsonIn in, List<JsonIn> levels) {
    boolean turned = !in.has("bottom");
    double[] at = new double[levels.size()];
    double[] size = new double[levels.size()];
    for (int i = 0; i < at.length; i++) {
      at[i] = levels.get(i).number("height_mm", Range.NOT_NEGATIVE);
      size[i] = levels.get(i).number(turned ? "radius_mm" : "scale", Range.POSITIVE);
    }
    Outline outline = turned ? new Circle(2 * size[0]) : outline(in, "bottom");
    List<Solid.Level> profile = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      double z = at[i];
      double scale = turned ? size[i] / size[0] : size[i];
      profile.add(made(in, () -> new Solid.Level(z, scale)));
    }
    return made(in, () -> Solid.ofProfile(outline, profile));
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
