package pourwright.page.shelf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.burn.Burn;
import pourwright.burn.BurningWick;
import pourwright.burn.Flame;
import pourwright.burn.Room;
import pourwright.burn.Vessel;
import pourwright.card.WickPlan;
import pourwright.heat.Melting;
import pourwright.page.Form;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Circle;
import pourwright.shape.Ellipse;
import pourwright.shape.Outline;
import pourwright.shape.RegularPolygon;
import pourwright.shape.RoundedRectangle;
import pourwright.shape.Solid;

/** Reads what to simulate. Property values are typical ones, from docs/models/burn.md. */
final class SimulationForm {
  /** A usual wax with its net heat of combustion in J/kg. */
  private record Usual(String words, Melting melting, double combustion) {}

  /** Hard wax that came off the wall: the handbook's usual gap. */
  private static final double GAP_W_PER_M2_K = 100;

  /** Enough to choose between wicks; depth is good to a quarter. */
  private static final double COARSE_MM = 5;

  private static final Map<String, Usual> WAXES = waxes();

  private static Map<String, Usual> waxes() {
    Map<String, Usual> waxes = new LinkedHashMap<>();
    waxes.put(
        "plant",
        new Usual(
            "soft plant wax, 45 to 52 °C",
            new Melting(45, 52, 140e3, 2100, 2200, .20, .17, 910),
            37.3e6));
    waxes.put(
        "paraffin",
        new Usual(
            "paraffin, 50 to 58 °C",
            new Melting(50, 58, 190e3, 2200, 2300, .24, .15, 900),
            43.8e6));
    waxes.put(
        "bees",
        new Usual(
            "beeswax, 58 to 65 °C", new Melting(58, 65, 170e3, 2300, 2400, .25, .17, 960), 41.0e6));
    return waxes;
  }

  private static final Map<String, String> OUTLINES =
      Map.of(
          "circle",
          "round",
          "ellipse",
          "oval",
          "rounded",
          "rounded rectangle",
          "octagon",
          "octagon");

  private SimulationForm() {}

  static Map<String, String> waxChoices() {
    Map<String, String> choices = new LinkedHashMap<>();
    WAXES.forEach((code, usual) -> choices.put(code, usual.words));
    return choices;
  }

  static Map<String, String> outlineChoices() {
    return new java.util.TreeMap<>(OUTLINES);
  }

  static Form usual() {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("outline", "circle");
    values.put("length", "75");
    values.put("width", "75");
    values.put("height", "90");
    values.put("fill", "78");
    values.put("wall", "7");
    values.put("base", "9");
    values.put("conductivity", "1.0");
    values.put("density", "1900");
    values.put("wax", "plant");
    values.put("wicks", "1");
    values.put("rate", "5.0");
    values.put("room", "21");
    values.put("hours", "4");
    values.put("grid", "2.5");
    return Form.startingFrom(values);
  }

  /** A burn, with the words of its title; complaints stay in the form. */
  record Question(Burn burn, String title, String key) {}

  static Optional<Question> read(Form form) {
    double[] v = {
      number(form, "length", 20, 400), number(form, "width", 20, 400),
      number(form, "height", 20, 300), number(form, "fill", 10, 300),
      number(form, "wall", 1, 40), number(form, "base", 1, 60),
      number(form, "conductivity", .05, 5), number(form, "density", 500, 4000),
      number(form, "rate", 0, 20), number(form, "room", 0, 40),
      number(form, "hours", .1, 12), number(form, "grid", 1, 5)
    };
    Optional<Integer> wicks = form.count("wicks", "a number of wicks", 1, 9);
    Optional<String> outline = form.choice("outline", "an outline", List.copyOf(OUTLINES.keySet()));
    Optional<String> wax = form.choice("wax", "a wax", List.copyOf(WAXES.keySet()));
    if (!form.ok() || wicks.isEmpty() || outline.isEmpty() || wax.isEmpty()) {
      return Optional.empty();
    }
    try {
      Burn burn =
          switched(form, burn(v, wicks.get(), outline(outline.get(), v), usualWax(wax.get())));
      String title =
          title(outline.get(), v, Counted.of(wicks.get(), "wick", "wicks"))
              + usualWax(wax.get()).words;
      String key =
          outline.get()
              + java.util.Arrays.toString(v)
              + burn.vessel().stuff()
              + burn.wax()
              + burn.across()
              + burn.upright()
              + burn.wicks()
              + burn.flame()
              + burn.room()
              + burn.contact()
              + burn.fineness();
      return Optional.of(new Question(burn, title, key));
    } catch (OutOfRange e) {
      form.complain("fill", e.sentence() + ": " + e.hint() + ".");
      return Optional.empty();
    }
  }

  private static String title(String outline, double[] v, String wicks) {
    String name = OUTLINES.getOrDefault(outline, outline);
    String across = Plot.plain(v[0]);
    boolean even = outline.equals("circle") || outline.equals("octagon");
    return even
        ? String.format(Locale.ROOT, "%s, %s mm across, %s of %s g/h, ", name, across, wicks, v[8])
        : String.format(
            Locale.ROOT,
            "%s, %s by %s mm, %s of %s g/h, ",
            name,
            across,
            Plot.plain(v[1]),
            wicks,
            v[8]);
  }

  /** A round candle of the books, in a usual wax, over so many hours; cells that a fit needs. */
  static Burn candle(Vessel vessel, String wax, double gramsPerHour, double[] roomAndHours) {
    Usual usual = usualWax(wax);
    return new Burn(
        vessel,
        usual.melting,
        30,
        1.2,
        List.of(new BurningWick(0, 0, gramsPerHour)),
        new Flame(usual.combustion, .2, .95, 25, 4, 7.5),
        new Room(roomAndHours[0], .95, Room.Convection.usual()),
        Burn.Fineness.of(roomAndHours[1], 3.75, 900, Burn.Solver.AXISYMMETRIC).withSharp(true));
  }

  /** A cycle of any candle of the books with its wicks at so many grams an hour each. */
  static Burn candle(Vessel vessel, String wax, WickPlan plan, double gramsPerHour) {
    Burn round = candle(vessel, wax, gramsPerHour, new double[] {21, 4});
    if (plan.count() == 1 && vessel.cavity().bottom() instanceof Circle) {
      return round;
    }
    List<BurningWick> wicks = new ArrayList<>();
    double length = vessel.cavity().bottom().lengthMm();
    for (int i = 0; i < plan.count(); i++) {
      boolean placed = plan.positionsMm().size() == plan.count();
      double x =
          placed ? plan.positionsMm().get(i).get(0) : length * ((i + .5) / plan.count() - .5);
      double y = placed ? plan.positionsMm().get(i).get(1) : 0;
      wicks.add(new BurningWick(x, y, gramsPerHour));
    }
    return new Burn(
        vessel,
        round.wax(),
        round.across(),
        round.upright(),
        wicks,
        round.flame(),
        round.room(),
        Burn.Fineness.of(4, COARSE_MM, 900, Burn.Solver.THREE_D).withSharp(true));
  }

  private static Usual usualWax(String code) {
    return java.util.Objects.requireNonNull(WAXES.get(code));
  }

  /** What goes beyond the usual, where she asks for it. */
  private static Burn switched(Form form, Burn burn) {
    Room room =
        form.ticked("correlation")
            ? new Room(
                burn.room().celsius(),
                burn.room().waxEmissivity(),
                Room.Convection.fromCorrelations())
            : burn.room();
    return new Burn(
        burn.vessel(),
        burn.wax(),
        burn.across(),
        burn.upright(),
        burn.wicks(),
        burn.flame(),
        room,
        burn.fineness(),
        form.ticked("gap") ? GAP_W_PER_M2_K : Burn.CLOSE);
  }

  private static double number(Form form, String field, double least, double most) {
    Optional<Double> value =
        form.read(field, "a number", text -> Double.valueOf(text.replace(',', '.')));
    if (value.isPresent() && !(value.get() >= least && value.get() <= most)) {
      form.complain(field, "Please give a number from " + least + " to " + most + ".");
    }
    return value.orElse(0.0);
  }

  private static Outline outline(String code, double[] v) {
    return switch (code) {
      case "ellipse" -> new Ellipse(v[0], v[1]);
      case "rounded" -> new RoundedRectangle(v[0], v[1], Math.min(v[0], v[1]) / 5);
      case "octagon" -> new RegularPolygon(8, v[0], 0);
      default -> new Circle(v[0]);
    };
  }

  private static Burn burn(double[] v, int count, Outline outline, Usual wax) {
    Vessel vessel =
        new Vessel(
            Solid.straight(outline, v[2]),
            v[3],
            v[4],
            v[5],
            new Vessel.Stuff(v[6], v[7], 950, .92));
    List<BurningWick> wicks = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double x = count == 1 ? 0 : outline.lengthMm() * ((i + .5) / count - .5);
      wicks.add(new BurningWick(x, 0, v[8]));
    }
    return new Burn(
        vessel,
        wax.melting,
        30,
        1.2,
        wicks,
        new Flame(wax.combustion, .2, .95, 25, 4, 7.5),
        new Room(v[9], .95, Room.Convection.usual()),
        Burn.Fineness.of(v[10], v[11], 300, Burn.Solver.AUTO).withSharp(true));
  }
}
