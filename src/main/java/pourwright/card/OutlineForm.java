package pourwright.card;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Circle;
import pourwright.shape.Ellipse;
import pourwright.shape.Outline;
import pourwright.shape.Point;
import pourwright.shape.RegularPolygon;
import pourwright.shape.RoundedRectangle;
import pourwright.shape.Stadium;
import pourwright.shape.Superellipse;
import pourwright.shape.Traced;

/**
 * A closed plane curve as it is written: the name of its form and its sizes, as the headless
 * documents have them, e.g. form {@code circle} with {@code diameter_mm} 76.2.
 *
 * @param form circle, ellipse, superellipse, stadium, rounded_rectangle, polygon or points_mm
 * @param sizes the sizes by their headless names; empty for points
 * @param pointsMm corners as pairs x, y; empty for all other forms
 */
public record OutlineForm(String form, Map<String, Double> sizes, List<List<Double>> pointsMm) {
  private static final Map<String, List<String>> FORMS =
      Map.of(
          "circle", List.of("diameter_mm"),
          "ellipse", List.of("length_mm", "width_mm"),
          "superellipse", List.of("exponent", "length_mm", "width_mm"),
          "stadium", List.of("length_mm", "width_mm"),
          "rounded_rectangle", List.of("corner_mm", "length_mm", "width_mm"),
          "polygon", List.of("across_flats_mm", "corner_mm", "sides"),
          "points_mm", List.of());

  /** Checks that the form is known and has exactly its sizes. */
  public OutlineForm {
    List<String> wanted = FORMS.get(form);
    if (wanted == null) {
      throw new OutOfRange("form", "'" + form + "' is not an outline", "use circle, ellipse …");
    }
    sizes = java.util.Collections.unmodifiableMap(new TreeMap<>(sizes));
    if (!List.copyOf(sizes.keySet()).equals(wanted)) {
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
