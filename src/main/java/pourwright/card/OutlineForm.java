package pourwright.card;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Circle;
import pourwright.shape.DrawnPath;
import pourwright.shape.Ellipse;
import pourwright.shape.Outline;
import pourwright.shape.Point;
import pourwright.shape.RegularPolygon;
import pourwright.shape.Ribbed;
import pourwright.shape.RoundedRectangle;
import pourwright.shape.Stadium;
import pourwright.shape.Superellipse;
import pourwright.shape.Traced;

/**
 * A closed plane curve as it is written: the name of its form and its sizes, as the headless
 * documents have them, e.g. form {@code circle} with {@code diameter_mm} 76.2.
 *
 * @param form circle, ellipse, superellipse, stadium, rounded_rectangle, polygon, points_mm or
 *     svg_path
 * @param sizes the sizes by their headless names; empty for points; of the named forms also {@code
 *     ribs} with {@code rib_depth_mm} where it has ribs
 * @param pointsMm corners as pairs x, y; empty for all other forms
 * @param path data of an SVG path; null for all other forms
 */
public record OutlineForm(
    String form, Map<String, Double> sizes, List<List<Double>> pointsMm, @Nullable String path) {
  private static final List<String> RIBS = List.of("rib_depth_mm", "ribs");
  private static final int PATH_MAX = 20_000;
  private static final Map<String, List<String>> FORMS =
      Map.of(
          "circle", List.of("diameter_mm"),
          "ellipse", List.of("length_mm", "width_mm"),
          "superellipse", List.of("exponent", "length_mm", "width_mm"),
          "stadium", List.of("length_mm", "width_mm"),
          "rounded_rectangle", List.of("corner_mm", "length_mm", "width_mm"),
          "polygon", List.of("across_flats_mm", "corner_mm", "sides"),
          "points_mm", List.of(),
          "svg_path", List.of("mm_per_unit"));

  /** An outline of no path. */
  public OutlineForm(String form, Map<String, Double> sizes, List<List<Double>> pointsMm) {
    this(form, sizes, pointsMm, null);
  }

  /** Checks that the form is known and has exactly its sizes. */
  public OutlineForm {
    List<String> wanted = FORMS.get(form);
    if (wanted == null) {
      throw new OutOfRange("form", "'" + form + "' is not an outline", "use circle, ellipse …");
    }
    sizes = java.util.Collections.unmodifiableMap(new TreeMap<>(sizes));
    List<String> given = new java.util.ArrayList<>(sizes.keySet());
    if (given.containsAll(RIBS) && !List.of("points_mm", "svg_path").contains(form)) {
      given.removeAll(RIBS);
    }
    if (!given.equals(wanted)) {
      throw new OutOfRange(
          "sizes", "a " + form + " has " + wanted + ", not " + sizes.keySet(), "give all of them");
    }
    sizes.forEach(
        (name, size) -> {
          if (name.equals("corner_mm")) {
            Check.notNegative(name, size);
          } else {
            Check.positive(name, size);
          }
        });
    pointsMm = pointsMm.stream().map(List::copyOf).toList();
    if (form.equals("points_mm") != !pointsMm.isEmpty()) {
      throw new OutOfRange("points_mm", "points belong to points_mm alone", "leave them out");
    }
    pointsMm.forEach(p -> checkPoint(p));
    if (form.equals("svg_path") != (path != null)) {
      throw new OutOfRange("svg_path", "a path belongs to svg_path alone", "leave it out");
    }
    if (path != null) {
      Check.between("svg_path", path.length(), 1, PATH_MAX);
    }
  }

  private static void checkPoint(List<Double> point) {
    if (point.size() != 2) {
      throw new OutOfRange("points_mm", "the point " + point + " is not a pair", "write [x, y]");
    }
    point.forEach(c -> Check.finite("points_mm", c));
  }

  /**
   * The curve that is written here.
   *
   * @throws OutOfRange when the sizes do not fit one another
   */
  public Outline outline() {
    Outline smooth = smooth();
    Double ribs = sizes.get("ribs");
    return ribs == null ? smooth : new Ribbed(smooth, (int) Math.round(ribs), size("rib_depth_mm"));
  }

  private Outline smooth() {
    return switch (form) {
      case "circle" -> new Circle(size("diameter_mm"));
      case "ellipse" -> new Ellipse(size("length_mm"), size("width_mm"));
      case "superellipse" ->
          new Superellipse(size("length_mm"), size("width_mm"), size("exponent"));
      case "stadium" -> new Stadium(size("length_mm"), size("width_mm"));
      case "rounded_rectangle" ->
          new RoundedRectangle(size("length_mm"), size("width_mm"), size("corner_mm"));
      case "polygon" ->
          new RegularPolygon(
              (int) Math.round(size("sides")), size("across_flats_mm"), size("corner_mm"));
      case "svg_path" -> DrawnPath.read(path == null ? "" : path, size("mm_per_unit")).outline();
      default -> Traced.through(pointsMm.stream().map(p -> new Point(p.get(0), p.get(1))).toList());
    };
  }

  private double size(String name) {
    return sizes.getOrDefault(name, Double.NaN);
  }

  /** A circle. */
  public static OutlineForm circle(double diameterMm) {
    return new OutlineForm("circle", Map.of("diameter_mm", diameterMm), List.of());
  }

  /** A rectangle with rounded corners. */
  public static OutlineForm roundedRectangle(double lengthMm, double widthMm, double cornerMm) {
    return new OutlineForm(
        "rounded_rectangle",
        Map.of("length_mm", lengthMm, "width_mm", widthMm, "corner_mm", cornerMm),
        List.of());
  }

  /** A regular polygon; {@code acrossFlatsMm} is twice the apothem. */
  public static OutlineForm polygon(int sides, double acrossFlatsMm, double cornerMm) {
    return new OutlineForm(
        "polygon",
        Map.of("sides", (double) sides, "across_flats_mm", acrossFlatsMm, "corner_mm", cornerMm),
        List.of());
  }

  /** Two half circles and what is between. */
  public static OutlineForm stadium(double lengthMm, double widthMm) {
    return new OutlineForm(
        "stadium", Map.of("length_mm", lengthMm, "width_mm", widthMm), List.of());
  }
}
