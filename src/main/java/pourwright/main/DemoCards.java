package pourwright.main;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import pourwright.card.CandleDesign;
import pourwright.card.Card;
import pourwright.card.CardBook;
import pourwright.card.Finish;
import pourwright.card.Instrument;
import pourwright.card.MixCard;
import pourwright.card.Mold;
import pourwright.card.OutlineForm;
import pourwright.card.Person;
import pourwright.card.PourCard;
import pourwright.card.SolidForm;
import pourwright.card.Supplier;
import pourwright.card.Vessel;
import pourwright.card.WickPlan;
import pourwright.material.Material;
import pourwright.material.MaterialBook;
import pourwright.material.MaterialKind;
import pourwright.material.ShelfLife;
import pourwright.pour.Dose.LoadOf;
import pourwright.quantity.Origin;
import pourwright.quantity.Sourced;

/** What is written down at Undercroft Lantern Works, the invented studio of the demo. */
public final class DemoCards {
  private static final List<String> SCENTS = List.of("rain", "fig", "hearth");
  private static final Map<String, String> SCENT_NAMES =
      Map.of("rain", "Rain on slate", "fig", "Fig loft", "hearth", "Cold hearth");

  private DemoCards() {}

  /** All cards and materials as one book. */
  public static CardBook book() {
    return CardBook.of(MaterialBook.of(materials()), cards());
  }

  private static Sourced sheet(double value, double relative) {
    return new Sourced(value, relative, Origin.SUPPLIERS_SHEET);
  }

  private static Material material(
      String code,
      String name,
      MaterialKind kind,
      @Nullable ShelfLife life,
      Map<String, Sourced> properties) {
    return new Material(
        code,
        name,
        kind,
        kind.usualUnit(),
        properties,
        life == null ? ShelfLife.KEEPS : life,
        null);
  }

  /** The materials. */
  public static List<Material> materials() {
    List<Material> all = new ArrayList<>();
    castingMaterials(all);
    waxes(all);
    for (String scent : SCENTS) {
      all.add(
          material(
              "scent-" + scent,
              SCENT_NAMES.getOrDefault(scent, scent),
              MaterialKind.FRAGRANCE,
              new ShelfLife(730, 365),
              Map.of(
                  "density_g_per_ml", sheet(0.98, 0.02),
                  "flash_point_c", sheet(scent.equals("hearth") ? 68 : 93, 0.02),
                  "fragrance_max_of_total_fraction",
                      sheet(scent.equals("fig") ? 0.085 : 0.11, 0))));
    }
    wicksAndBoxes(all);
    return all;
  }

  private static void castingMaterials(List<Material> all) {
    ShelfLife powder = new ShelfLife(270, 60);
    all.add(
        material(
            "rapid-grey",
            "Rapid hydraulic grey",
            MaterialKind.POWDER,
            powder,
            Map.of(
                "particle_density_g_per_ml", sheet(2.95, 0.02),
                "bulk_density_g_per_ml", Sourced.measured(1.08, 0.02),
                "cement_fraction", sheet(1, 0),
                "water_to_powder_low", sheet(0.24, 0),
                "water_to_powder_high", sheet(0.42, 0))));
    all.add(
        material(
            "white-portland",
            "White portland cement",
            MaterialKind.POWDER,
            powder,
            Map.of(
                "particle_density_g_per_ml", sheet(3.10, 0.01),
                "bulk_density_g_per_ml", Sourced.typical(1.25, 0.08),
                "cement_fraction", sheet(1, 0),
                "water_to_powder_low", sheet(0.30, 0),
                "water_to_powder_high", sheet(0.55, 0))));
    all.add(
        material(
            "marble-flour",
            "Marble flour",
            MaterialKind.SAND,
            null,
            Map.of("particle_density_g_per_ml", Sourced.typical(2.70, 0.01))));
    all.add(
        material(
            "black-oxide",
            "Black iron oxide",
            MaterialKind.PIGMENT,
            null,
            Map.of("particle_density_g_per_ml", Sourced.typical(5.0, 0.03))));
    all.add(
        material(
            "film-sealer",
            "Matt film sealer",
            MaterialKind.SEALER,
            new ShelfLife(540, 270),
            Map.of(
                "density_g_per_ml", sheet(1.03, 0.01),
                "coverage_m2_per_l", sheet(8, 0.15),
                "full_dry_d", sheet(7, 0),
                "softens_c", sheet(95, 0))));
  }

  private static void waxes(List<Material> all) {
    Object[][] waxes = {
      {"soft-wax-a", "Soft plant wax A", 45.0, 52.0, 0.915, 0.862},
      {"blend-b", "Plant and coconut blend B", 39.0, 47.0, 0.905, 0.855}
    };
    for (Object[] w : waxes) {
      Map<String, Sourced> properties = new TreeMap<>();
      properties.put("melt_from_c", sheet((double) w[2], 0.02));
      properties.put("melt_to_c", sheet((double) w[3], 0.02));
      properties.put("set_density_g_per_ml", sheet((double) w[4], 0.01));
      properties.put("hot_density_g_per_ml", sheet((double) w[5], 0.01));
      properties.put("fragrance_held_of_total_fraction", sheet(0.10, 0));
      properties.put("latent_j_per_kg", Sourced.typical(140_000, 0.2));
      properties.put("conductivity_solid_w_per_m_k", Sourced.typical(0.20, 0.15));
      properties.put("conductivity_liquid_w_per_m_k", Sourced.typical(0.17, 0.1));
      properties.put("heat_capacity_solid_j_per_kg_k", Sourced.typical(2100, 0.1));
      properties.put("heat_capacity_liquid_j_per_kg_k", Sourced.typical(2200, 0.05));
      properties.put("heat_of_combustion_j_per_kg", Sourced.typical(37.3e6, 0.04));
      all.add(
          material(
              (String) w[0], (String) w[1], MaterialKind.WAX, new ShelfLife(730, 730), properties));
    }
  }

  private static void wicksAndBoxes(List<Material> all) {
    for (double rate : new double[] {4.1, 4.8, 5.6}) {
      String code = "flat-braid-" + Math.round(rate * 10);
      all.add(
          material(
              code,
              "Flat braid, " + rate + " g/h",
              MaterialKind.WICK,
              null,
              Map.of("burn_rate_g_per_h", Sourced.measured(rate, 0.08))));
    }
    all.add(
        material(
            "tab-20",
            "Wick tab 20 mm",
            MaterialKind.TAB,
            null,
            Map.of("neck_height_mm", sheet(6, 0), "diameter_mm", sheet(20, 0))));
    all.add(
        material(
            "sticker-20",
            "Wick sticker 20 mm",
            MaterialKind.STICKER,
            null,
            Map.of("diameter_mm", sheet(20, 0), "softens_c", sheet(95, 0.05))));
    all.add(material("box-small", "Box, small", MaterialKind.PACKAGING, null, Map.of()));
    all.add(material("box-long", "Box, long", MaterialKind.PACKAGING, null, Map.of()));
    all.add(material("care-card", "Care card", MaterialKind.PACKAGING, null, Map.of()));
    all.add(material("base-label", "Base label", MaterialKind.LABEL, null, Map.of()));
    all.add(material("paper-400", "Wet sandpaper 400", MaterialKind.CONSUMABLE, null, Map.of()));
  }

  /** The cards. */
  public static List<Card> cards() {
    List<Card> all = new ArrayList<>();
    vesselsAndMolds(all);
    mixesAndFinishes(all);
    for (String scent : SCENTS) {
      all.add(pour(scent));
    }
    for (String vessel : List.of("bollard", "ferry", "cog", "trough")) {
      for (String scent : SCENTS) {
        all.add(candle(vessel, scent));
      }
    }
    all.add(new Person("MB", "Mira", Person.Role.MAKER, null));
    all.add(new Person("TO", "Tove", Person.Role.LEARNER, null));
    all.add(new Instrument("bench-scale", "Bench scale", "mass", 0.1, "g", null, null));
    all.add(
        new Instrument("probe", "Probe thermometer", "temperature", 0.1, "\u00b0C", null, null));
    all.add(new Supplier("north-quay", "North Quay Supplies", 6, null));
    all.add(new Supplier("lantern-yard", "Lantern Yard Oils", 9, null));
    return all;
  }

  private static void vesselsAndMolds(List<Card> all) {
    vessel(
        all,
        "bollard",
        "Bollard",
        new SolidForm(OutlineForm.circle(80), OutlineForm.circle(92), 96),
        new SolidForm(OutlineForm.circle(64), OutlineForm.circle(75), 86),
        4);
    vessel(
        all,
        "ferry",
        "Ferry",
        SolidForm.straight(OutlineForm.roundedRectangle(128, 78, 20), 84),
        SolidForm.straight(OutlineForm.roundedRectangle(110, 60, 14), 73),
        2);
    vessel(
        all,
        "cog",
        "Cog",
        SolidForm.straight(OutlineForm.polygon(8, 92, 0), 90),
        SolidForm.straight(OutlineForm.circle(74), 79),
        3);
    vessel(
        all,
        "trough",
        "Trough",
        SolidForm.straight(OutlineForm.stadium(300, 90), 80),
        SolidForm.straight(OutlineForm.stadium(280, 70), 68),
        1);
    all.add(
        new Vessel(
            "limpet",
            "Limpet",
            SolidForm.straight(OutlineForm.circle(58), 20),
            SolidForm.straight(OutlineForm.circle(46), 12),
            null,
            null,
            "a melt dish for the rest of a mix, never a candle"));
    all.add(new Mold("limpet-mold", "Limpet mold", "limpet", 6, 1, 60, true, null));
  }

  private static void vessel(
      List<Card> all, String code, String name, SolidForm outer, SolidForm cavity, int molds) {
    all.add(new Vessel(code, name, outer, cavity, null, null, null));
    all.add(new Mold(code + "-mold", name + " mold", code, molds, 1, 60, false, null));
  }

  private static void mixesAndFinishes(List<Card> all) {
    all.add(
        new MixCard(
            "grey",
            "Rapid grey, 3 : 1 by volume",
            "rapid-grey",
            new MixCard.Ratio(MixCard.By.VOLUME, 3, 1),
            List.of(new MixCard.Part("black-oxide", 0.015)),
            MixCard.Losses.HOUSE,
            MixCard.Times.RAPID,
            "grey",
            null));
    all.add(
        new MixCard(
            "white",
            "White portland with marble flour",
            "white-portland",
            new MixCard.Ratio(MixCard.By.MASS, 1, 0.42),
            List.of(new MixCard.Part("marble-flour", 1.2)),
            MixCard.Losses.HOUSE,
            MixCard.Times.PORTLAND,
            "white",
            null));
    all.add(
        new Finish(
            "two-coats",
            "Sanded to 400, two coats inside",
            List.of(120, 220, 400),
            6,
            List.of(
                new Finish.Coat("film-sealer", Finish.Where.BOTH, 2, 24.0),
                new Finish.Coat("film-sealer", Finish.Where.INSIDE, 2, 24.0)),
            168,
            true,
            null));
  }

  private static PourCard pour(String scent) {
    boolean blend = scent.equals("fig");
    return new PourCard(
        scent,
        SCENT_NAMES.getOrDefault(scent, scent),
        blend
            ? List.of(new PourCard.Part("blend-b", 1))
            : List.of(new PourCard.Part("soft-wax-a", 4), new PourCard.Part("blend-b", 1)),
        List.of(new PourCard.Part("scent-" + scent, 1)),
        blend ? 0.08 : 0.10,
        scent.equals("hearth") ? LoadOf.WAX : LoadOf.TOTAL,
        List.of(),
        new PourCard.Temperatures(68, 76, 54, 60),
        PourCard.Losses.HOUSE,
        blend ? 10 : 12,
        scent,
        null);
  }

  private static CandleDesign candle(String vessel, String scent) {
    boolean trough = vessel.equals("trough");
    int wicks = trough ? 4 : vessel.equals("ferry") ? 2 : 1;
    String wick = scent.equals("fig") ? "flat-braid-41" : "flat-braid-48";
    String name = Character.toUpperCase(vessel.charAt(0)) + vessel.substring(1);
    return new CandleDesign(
        vessel + "-" + scent,
        name + ", " + SCENT_NAMES.getOrDefault(scent, scent),
        vessel,
        vessel.equals("cog") ? "white" : "grey",
        "two-coats",
        scent,
        new WickPlan(wick, wicks, 115, "tab-20", "sticker-20", List.of()),
        CandleDesign.HEADSPACE_MM,
        null,
        1,
        List.of(
            new CandleDesign.Packed(trough ? "box-long" : "box-small", 1),
            new CandleDesign.Packed("care-card", 1),
            new CandleDesign.Packed("base-label", 1)),
        null);
  }
}
