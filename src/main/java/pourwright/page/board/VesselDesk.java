package pourwright.page.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import pourwright.card.CardBook;
import pourwright.card.OutlineForm;
import pourwright.card.SolidForm;
import pourwright.card.Vessel;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.quantity.Sourced;
import pourwright.work.Drawer;
import pourwright.work.Drawers;

/** Vessels as a form: outside and cavity by their measures. */
final class VesselDesk implements CardDesk<Vessel> {
  private static final Map<String, String> FORMS = new LinkedHashMap<>();

  static {
    FORMS.put("circle", "round");
    FORMS.put("ellipse", "oval (ellipse)");
    FORMS.put("superellipse", "squarish oval (superellipse)");
    FORMS.put("stadium", "two half circles (stadium)");
    FORMS.put("rounded_rectangle", "rectangle, corners rounded");
    FORMS.put("polygon", "regular polygon");
    FORMS.put("points_mm", "traced by points");
  }

  private final Lengths lengths;

  VesselDesk(Desk desk) {
    this.lengths = new Lengths(desk);
  }

  @Override
  public Drawer<Vessel> drawer() {
    return Drawers.VESSEL;
  }

  @Override
  public String singular() {
    return "vessel";
  }

  @Override
  public List<EntryGroup> entries(CardBook book) {
    return List.of(
        EntryGroup.of("Vessel", Entry.text("name", "Name")),
        body("outer", "Outside", "Height, foot to rim"),
        body("cavity", "Cavity", "Depth, rim to base"),
        EntryGroup.of("Note", Entry.area("note", "Note", "")));
  }

  private static EntryGroup body(String of, String title, String heightLabel) {
    String foot = of.equals("outer") ? "foot" : "base";
    return EntryGroup.of(
        title,
        Entry.choice(of + "_form", title + ": shape", FORMS),
        Entry.number(of + "_length", title + ": length at the " + foot, "")
            .hint("A round one: its diameter. A polygon: across the flats. 80 mm or 3 1/8 in.")
            .mayBeLeftOut(),
        Entry.number(of + "_width", title + ": width at the " + foot, "")
            .hint("Not for round ones and polygons.")
            .mayBeLeftOut(),
        Entry.number(of + "_top_length", title + ": length at the rim", "")
            .hint("Where the walls are straight, leave it out.")
            .mayBeLeftOut(),
        Entry.number(of + "_top_width", title + ": width at the rim", "").mayBeLeftOut(),
        Entry.number(of + "_corner", title + ": corner radius", "")
            .hint("Rectangles and polygons.")
            .mayBeLeftOut(),
        Entry.number(of + "_sides", title + ": number of sides", "")
            .hint("Polygons: 6 or 8.")
            .mayBeLeftOut(),
        Entry.number(of + "_exponent", title + ": squareness", "")
            .hint("Squarish ovals: 2 is an oval, 4 nearly a rectangle.")
            .mayBeLeftOut(),
        Entry.area(
            of + "_points",
            title + ": points",
            "Traced: one corner a line, x and y in mm, in order round the shape."),
        Entry.number(of + "_height", heightLabel, ""));
  }

  @Override
  public Map<String, String> fresh(CardBook book) {
    Map<String, String> fresh = new LinkedHashMap<>();
    fresh.put("outer_form", "circle");
    fresh.put("cavity_form", "circle");
    return fresh;
  }

  @Override
  public Map<String, String> written(Vessel vessel) {
    Map<String, String> written = new LinkedHashMap<>();
    written.put("name", vessel.name());
    write("outer", vessel.outer(), written);
    write("cavity", vessel.cavity(), written);
    String note = vessel.note();
    written.put("note", note == null ? "" : note);
    return written;
  }

  private void write(String of, SolidForm body, Map<String, String> into) {
    OutlineForm bottom = body.bottom();
    into.put(of + "_form", bottom.form());
    into.put(of + "_length", size(bottom, lengthOf(bottom.form())));
    into.put(of + "_width", size(bottom, "width_mm"));
    into.put(of + "_corner", size(bottom, "corner_mm"));
    Double sides = bottom.sizes().get("sides");
    into.put(of + "_sides", sides == null ? "" : String.valueOf(Math.round(sides)));
    Double exponent = bottom.sizes().get("exponent");
    into.put(of + "_exponent", exponent == null ? "" : lengths.number(exponent));
    StringBuilder points = new StringBuilder();
    bottom
        .pointsMm()
        .forEach(p -> points.append(p.get(0)).append(' ').append(p.get(1)).append('\n'));
    into.put(of + "_points", points.toString());
    OutlineForm top = body.top();
    into.put(of + "_top_length", top == null ? "" : size(top, lengthOf(top.form())));
    into.put(of + "_top_width", top == null ? "" : size(top, "width_mm"));
    into.put(of + "_height", lengths.write(body.heightMm()));
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

  @Override
  public Optional<Vessel> read(Form form, String code, Optional<Vessel> before) {
    String name = form.text("name", "a name");
    Optional<SolidForm> outer = body(form, "outer");
    Optional<SolidForm> cavity = body(form, "cavity");
    if (outer.isEmpty() || cavity.isEmpty() || !form.ok()) {
      return Optional.empty();
    }
    boolean sameOuter = before.isPresent() && before.get().outer().equals(outer.get());
    boolean sameCavity = before.isPresent() && before.get().cavity().equals(cavity.get());
    Sourced cavityMl = sameCavity ? before.get().cavityMl() : null;
    Sourced castMl = sameOuter && sameCavity ? before.get().castMl() : null;
    String note = form.optionalText("note");
    Vessel vessel =
        new Vessel(
            code, name, outer.get(), cavity.get(), castMl, cavityMl, note.isEmpty() ? null : note);
    vessel.hollow();
    return Optional.of(vessel);
  }

  private Optional<SolidForm> body(Form form, String of) {
    Optional<String> shape =
        form.choice(of + "_form", "the shape", new ArrayList<>(FORMS.keySet()));
    Optional<Double> height = lengths.read(form, of + "_height", "the height");
    if (shape.isEmpty() || height.isEmpty()) {
      return Optional.empty();
    }
    OutlineForm bottom = outline(form, of, shape.get(), "");
    OutlineForm top = hasTop(form, of) ? outline(form, of, shape.get(), "top_") : null;
    return bottom == null || !form.ok()
        ? Optional.empty()
        : Optional.of(new SolidForm(bottom, top, height.get()));
  }

  private static boolean hasTop(Form form, String of) {
    return !form.optionalText(of + "_top_length").isEmpty();
  }

  private @Nullable OutlineForm outline(Form form, String of, String shape, String level) {
    if (shape.equals("points_mm")) {
      List<List<Double>> points = lengths.points(form, of + "_points");
      return points.isEmpty() ? null : new OutlineForm(shape, Map.of(), points);
    }
    Map<String, Double> sizes = new TreeMap<>();
    put(sizes, lengthOf(shape), lengths.read(form, of + "_" + level + "length", "the length"));
    if (!List.of("circle", "polygon").contains(shape)) {
      String width = of + "_" + level + "width";
      put(sizes, "width_mm", lengths.read(form, width, "the width"));
    }
    if (List.of("rounded_rectangle", "polygon").contains(shape)) {
      Optional<Double> corner = lengths.readIfThere(form, of + "_corner", "the corner radius");
      sizes.put("corner_mm", corner.orElse(0.0));
    }
    if (shape.equals("polygon")) {
      form.count(of + "_sides", "the number of sides", 3, 360)
          .ifPresent(sides -> sizes.put("sides", sides.doubleValue()));
    }
    if (shape.equals("superellipse")) {
      put(sizes, "exponent", lengths.readNumber(form, of + "_exponent", "the squareness"));
    }
    if (!form.ok()) {
      return null;
    }
    OutlineForm outline = new OutlineForm(shape, sizes, List.of());
    outline.outline();
    return outline;
  }

  private static void put(Map<String, Double> into, String name, Optional<Double> value) {
    value.ifPresent(v -> into.put(name, v));
  }
}
