package pourwright.page.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import pourwright.card.OutlineForm;
import pourwright.card.SolidForm;
import pourwright.page.Form;
import pourwright.quantity.OutOfRange;

/**
 * The fields of one body of a vessel: its outline, sizes, and what it has beside straight walls.
 */
final class BodyForm {
  private static final Map<String, String> FORMS = new LinkedHashMap<>();

  static {
    FORMS.put("circle", "round");
    FORMS.put("ellipse", "oval (ellipse)");
    FORMS.put("superellipse", "squarish oval (superellipse)");
    FORMS.put("stadium", "two half circles (stadium)");
    FORMS.put("rounded_rectangle", "rectangle, corners rounded");
    FORMS.put("polygon", "regular polygon");
    FORMS.put("points_mm", "traced by points");
    FORMS.put("svg_path", "drawn as an SVG path");
  }

  private final Lengths lengths;
  private final String of;
  private final String title;
  private final String foot;
  private final String heightLabel;

  BodyForm(Lengths lengths, String of, String title, String foot, String heightLabel) {
    this.lengths = lengths;
    this.of = of;
    this.title = title;
    this.foot = foot;
    this.heightLabel = heightLabel;
  }

  private String field(String name) {
    return of + "_" + name;
  }

  private Entry number(String name, String label, String hint) {
    return Entry.number(field(name), title + ": " + label, "").hint(hint).mayBeLeftOut();
  }

  List<EntryGroup> entries() {
    return List.of(
        EntryGroup.of(
            title,
            Entry.choice(field("form"), title + ": shape", FORMS),
            number(
                "length",
                "length at the " + foot,
                "A round one: its diameter. A polygon: across the flats. 80 mm or 3 1/8 in."),
            number("width", "width at the " + foot, "Not for round ones and polygons."),
            number(
                "top_length", "length at the rim", "Where the walls are straight, leave it out."),
            number("top_width", "width at the rim", ""),
            number("corner", "corner radius", "Rectangles and polygons."),
            number("sides", "number of sides", "Polygons: 6 or 8."),
            number("exponent", "squareness", "Squarish ovals: 2 is an oval, 4 nearly a rectangle."),
            Entry.area(
                field("points"),
                title + ": points",
                "Traced: one corner a line, x and y in mm, in order round the shape."),
            Entry.number(field("height"), heightLabel, "")),
        EntryGroup.folded(
            title + ": path, ribs, twist, profile, stack",
            Entry.area(
                field("path"), title + ": SVG path", "Drawn: what stands in d=, one outline."),
            number("mm_per_unit", "millimetres to a unit of the path", ""),
            number("ribs", "number of ribs", "Flutes between them; not for traced or drawn ones."),
            number("rib_depth", "depth of the flutes", ""),
            number("twist", "twist from bottom to top, in degrees", ""),
            Entry.area(
                field("profile"),
                title + ": profile",
                "One level a line, from the bottom up: height in mm and size there. 1 is the"
                    + " length above, 1.2 a fifth larger. The last is the height."),
            Entry.area(
                field("stack"),
                title + ": stack of unlike shapes",
                "One level a line above the foot: height, shape, sizes in mm. 40 polygon 8 76, then"
                    + " 90 round 80. Shapes: round, oval, squarish, stadium, rectangle, polygon."
                    + " The last is the height.")));
  }

  void write(SolidForm body, Map<String, String> into) {
    OutlineForm bottom = body.bottom();
    into.put(field("form"), bottom.form());
    into.put(field("length"), size(bottom, lengthOf(bottom.form())));
    into.put(field("width"), size(bottom, "width_mm"));
    into.put(field("corner"), size(bottom, "corner_mm"));
    into.put(field("sides"), plain(bottom.sizes().get("sides")));
    into.put(field("exponent"), plain(bottom.sizes().get("exponent")));
    into.put(field("points"), lines(bottom.pointsMm()));
    String path = bottom.path();
    into.put(field("path"), path == null ? "" : path);
    into.put(field("mm_per_unit"), plain(bottom.sizes().get("mm_per_unit")));
    into.put(field("ribs"), plain(bottom.sizes().get("ribs")));
    into.put(field("rib_depth"), size(bottom, "rib_depth_mm"));
    OutlineForm top = body.top();
    into.put(field("top_length"), top == null ? "" : size(top, lengthOf(top.form())));
    into.put(field("top_width"), top == null ? "" : size(top, "width_mm"));
    into.put(field("height"), lengths.write(body.heightMm()));
    SolidForm.Shaping shaping = body.shaping();
    boolean twisted = shaping != null && shaping.twistDegrees() != 0;
    into.put(field("twist"), shaping != null && twisted ? plain(shaping.twistDegrees()) : "");
    into.put(
        field("profile"),
        shaping == null
            ? ""
            : lines(
                shaping.profile().stream().map(l -> List.of(l.heightMm(), l.scale())).toList()));
    List<SolidForm.Storey> stack = shaping == null ? null : shaping.stack();
    into.put(field("stack"), stack == null ? "" : StackLines.write(stack, lengths::number));
  }

  private String lines(List<List<Double>> pairs) {
    StringBuilder lines = new StringBuilder();
    pairs.forEach(
        p -> lines.append(plain(p.get(0))).append(' ').append(plain(p.get(1))).append('\n'));
    return lines.toString();
  }

  private String plain(@Nullable Double number) {
    return number == null ? "" : lengths.number(number);
  }

  private String size(OutlineForm form, String name) {
    Double size = form.sizes().get(name);
    return size == null ? "" : lengths.write(size);
  }

  private static String lengthOf(String form) {
    return switch (form) {
      case "circle" -> "diameter_mm";
      case "polygon" -> "across_flats_mm";
      default -> "length_mm";
    };
  }

  Optional<SolidForm> read(Form form) {
    Optional<String> shape =
        form.choice(field("form"), "the shape", new ArrayList<>(FORMS.keySet()));
    Optional<Double> height = lengths.read(form, field("height"), "the height");
    if (shape.isEmpty() || height.isEmpty()) {
      return Optional.empty();
    }
    OutlineForm bottom = outline(form, shape.get(), "");
    boolean hasTop = !form.optionalText(field("top_length")).isEmpty();
    OutlineForm top = hasTop ? outline(form, shape.get(), "top_") : null;
    SolidForm.Shaping shaping = shaping(form);
    if (bottom == null || !form.ok()) {
      return Optional.empty();
    }
    try {
      SolidForm body = new SolidForm(bottom, top, height.get(), shaping);
      body.solid();
      return Optional.of(body);
    } catch (OutOfRange e) {
      form.complain(complained(e.field()), e.sentence() + ": " + e.hint() + ".");
      return Optional.empty();
    }
  }

  private String complained(String field) {
    return field(
        field.startsWith("profile")
            ? "profile"
            : field.startsWith("stack") ? "stack" : field.startsWith("twist") ? "twist" : "length");
  }

  private SolidForm.@Nullable Shaping shaping(Form form) {
    double twist =
        lengths.readNumberIfThere(form, field("twist"), "the twist in degrees").orElse(0.0);
    List<SolidForm.Level> profile = new ArrayList<>();
    if (!form.optionalText(field("profile")).isEmpty()) {
      for (List<Double> pair : lengths.points(form, field("profile"))) {
        profile.add(new SolidForm.Level(pair.get(0), pair.get(1)));
      }
    }
    List<SolidForm.Storey> stack = stack(form);
    try {
      return twist == 0 && profile.isEmpty() && stack.isEmpty()
          ? null
          : new SolidForm.Shaping(twist, profile, stack.isEmpty() ? null : stack);
    } catch (OutOfRange e) {
      form.complain(complained(e.field()), e.sentence() + ": " + e.hint() + ".");
      return null;
    }
  }

  private List<SolidForm.Storey> stack(Form form) {
    try {
      return StackLines.read(form.optionalText(field("stack")));
    } catch (OutOfRange e) {
      form.complain(field("stack"), e.sentence() + ": " + e.hint() + ".");
      return List.of();
    }
  }

  private @Nullable OutlineForm outline(Form form, String shape, String level) {
    if (shape.equals("points_mm")) {
      List<List<Double>> points = lengths.points(form, field("points"));
      return points.isEmpty() ? null : new OutlineForm(shape, Map.of(), points);
    }
    if (shape.equals("svg_path")) {
      return path(form);
    }
    Map<String, Double> sizes = new TreeMap<>();
    put(sizes, lengthOf(shape), lengths.read(form, field(level + "length"), "the length"));
    if (!List.of("circle", "polygon").contains(shape)) {
      put(sizes, "width_mm", lengths.read(form, field(level + "width"), "the width"));
    }
    if (List.of("rounded_rectangle", "polygon").contains(shape)) {
      Optional<Double> corner = lengths.readIfThere(form, field("corner"), "the corner radius");
      sizes.put("corner_mm", corner.orElse(0.0));
    }
    if (shape.equals("polygon")) {
      form.count(field("sides"), "the number of sides", 3, 360)
          .ifPresent(sides -> sizes.put("sides", sides.doubleValue()));
    }
    if (shape.equals("superellipse")) {
      put(sizes, "exponent", lengths.readNumber(form, field("exponent"), "the squareness"));
    }
    if (!form.optionalText(field("ribs")).isEmpty()) {
      form.count(field("ribs"), "the number of ribs", 3, 180)
          .ifPresent(ribs -> sizes.put("ribs", ribs.doubleValue()));
      put(sizes, "rib_depth_mm", lengths.read(form, field("rib_depth"), "the depth of the flutes"));
    }
    return form.ok() ? made(form, new OutlineForm(shape, sizes, List.of()), "ribs") : null;
  }

  private @Nullable OutlineForm path(Form form) {
    String d = form.text(field("path"), "the path");
    Optional<Double> scale =
        lengths.readNumber(form, field("mm_per_unit"), "the millimetres to a unit");
    if (d.isEmpty() || scale.isEmpty()) {
      return null;
    }
    Map<String, Double> sizes = Map.of("mm_per_unit", scale.get());
    return made(form, new OutlineForm("svg_path", sizes, List.of(), d), "path");
  }

  /** The outline where its sizes fit one another, else a complaint. */
  private @Nullable OutlineForm made(Form form, OutlineForm outline, String special) {
    try {
      outline.outline();
      return outline;
    } catch (OutOfRange e) {
      boolean isSpecial = e.field().startsWith("rib") || special.equals("path");
      form.complain(field(isSpecial ? special : "length"), e.sentence() + ": " + e.hint() + ".");
      return null;
    }
  }

  private static void put(Map<String, Double> into, String name, Optional<Double> value) {
    value.ifPresent(v -> into.put(name, v));
  }
}
