package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import pourwright.cast.Addition;
import pourwright.cast.LiquidColour;
import pourwright.cast.Mix;
import pourwright.cast.MixAmounts;
import pourwright.cast.MixLimits;
import pourwright.cast.Powder;
import pourwright.cast.Ratio;
import pourwright.quantity.OutOfRange;

/** {@code mix}: the parts of a mix that fill a volume. */
final class MixComputation implements Computation {
  @Override
  public void compute(JsonIn in, ObjectNode out) {
    double volume = in.number("volume_ml", Range.POSITIVE);
    double waste = in.number("waste_fraction", Range.NOT_NEGATIVE);
    double residue = in.numberOr("residue_g", 0, Range.NOT_NEGATIVE);
    double air = in.numberOr("air_fraction", 0, Range.FRACTION);
    double water = in.numberOr("water_c", 20, Range.CELSIUS);
    Powder powder = powder(in);
    Mix mix = new Mix(powder, ratio(in, powder), additions(in), liquid(in), air, water);
    write(mix, mix.amounts(volume, waste, residue), out);
  }

  private static Powder powder(JsonIn in) {
    Double cement = optional(in, "cement_fraction_of_powder", Range.FRACTION);
    JsonIn powder = in.object("powder");
    double particle = powder.number("particle_density_g_per_ml", Range.POSITIVE);
    Double bulk = optional(powder, "bulk_density_g_per_ml", Range.POSITIVE);
    Double low = optional(powder, "water_to_powder_low", Range.NOT_NEGATIVE);
    Double high = optional(powder, "water_to_powder_high", Range.NOT_NEGATIVE);
    return made(powder, () -> new Powder(particle, bulk, cement, low, high));
  }

  private static Ratio ratio(JsonIn in, Powder powder) {
    JsonIn ratio = in.object("ratio");
    boolean byMass = ratio.choice("by", "mass", "volume").equals("mass");
    double parts = ratio.number("powder", Range.POSITIVE);
    double water = ratio.number("water", Range.POSITIVE);
    if (!byMass && powder.bulkGPerMl() == null) {
      throw in.object("powder")
          .refuse(
              "bulk_density_g_per_ml",
              "a ratio by volume needs the powder's bulk density",
              "weigh a level scoop of known volume, five times");
    }
    return new Ratio(byMass ? Ratio.By.MASS : Ratio.By.VOLUME, parts, water);
  }

  private static List<Addition> additions(JsonIn in) {
    List<Addition> additions = new ArrayList<>();
    add(in, "sand", "per_powder_mass", Addition.Kind.SAND, additions);
    add(in, "pigment", "fraction_of_powder", Addition.Kind.PIGMENT, additions);
    add(in, "fibre", "per_powder_mass", Addition.Kind.FIBRE, additions);
    add(in, "admixture", "per_powder_mass", Addition.Kind.ADMIXTURE, additions);
    return additions;
  }

  private static void add(
      JsonIn in, String field, String share, Addition.Kind kind, List<Addition> into) {
    JsonIn part = in.objectOrNull(field);
    if (part != null) {
      double per = part.number(share, Range.NOT_NEGATIVE);
      double density = part.number("particle_density_g_per_ml", Range.POSITIVE);
      into.add(new Addition(kind, per, density));
    }
  }

  private static @Nullable LiquidColour liquid(JsonIn in) {
    JsonIn liquid = in.objectOrNull("liquid_colour");
    return liquid == null
        ? null
        : new LiquidColour(
            liquid.number("mass_g", Range.NOT_NEGATIVE),
            liquid.number("solids_fraction", Range.FRACTION),
            liquid.number("density_g_per_ml", Range.POSITIVE));
  }

  private static void write(Mix mix, MixAmounts amounts, ObjectNode out) {
    out.put("powder_g", amounts.powderG());
    out.put("sand_g", amounts.of(mix, Addition.Kind.SAND));
    out.put("water_g", amounts.waterG());
    out.put("pigment_g", amounts.of(mix, Addition.Kind.PIGMENT));
    out.put("fibre_g", amounts.of(mix, Addition.Kind.FIBRE));
    out.put("admixture_g", amounts.of(mix, Addition.Kind.ADMIXTURE));
    out.put("liquid_colour_g", amounts.liquidG());
    out.put("total_g", amounts.totalG());
    out.put("mixed_volume_ml", amounts.volumeMl());
    out.put("fresh_density_g_per_ml", amounts.freshGPerMl());
    out.put("water_to_powder", mix.waterToPowder());
    out.put("powder_to_water_by_mass", 1 / mix.waterToPowder());
    out.put("powder_to_water_by_volume", mix.powderToWaterByVolume());
    out.put("water_to_cement", mix.waterToCement());
    ArrayNode warnings = out.withArray("warnings");
    MixLimits.warnings(mix, amounts).forEach(warnings::add);
  }

  private static @Nullable Double optional(JsonIn in, String name, Range range) {
    double value = in.numberOr(name, Double.NaN, range);
    return Double.isNaN(value) ? null : value;
  }

  private static <T> T made(JsonIn in, Supplier<T> maker) {
    try {
      return maker.get();
    } catch (OutOfRange e) {
      throw in.refuse(e);
    }
  }
}
