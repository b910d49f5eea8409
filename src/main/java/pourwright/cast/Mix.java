package pourwright.cast;

import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Water;

/**
 * What a cast is mixed from, resolved to numbers.
 *
 * <p>Proportioned by absolute volumes: each part fills its mass over its grain density, and with
 * the air they fill the volume, {@code V(1−a) = Σ m/ρ}. Source: ACI 211.1-91; US Navy Engineering
 * Aid 14070, chapter 17. Departs from it: no slump table, the water follows from the ratio.
 *
 * @param powder the powder
 * @param ratio powder to water
 * @param additions sand, pigment and others by mass of the powder
 * @param liquid liquid colour; null for none
 * @param airFraction share of the fresh volume that is air, from 0 to below 1
 * @param waterC temperature of the mix water, 0 to 40 °C
 */
public record Mix(
    Powder powder,
    Ratio ratio,
    List<Addition> additions,
    @Nullable LiquidColour liquid,
    double airFraction,
    double waterC) {

  /** Checks the ranges. */
  public Mix {
    additions = List.copyOf(additions);
    Check.between("air_fraction", airFraction, 0, 0.9);
    Check.between("water_c", waterC, 0, 40);
  }

  /** A mix of powder and water without air. */
  public static Mix plain(Powder powder, Ratio ratio) {
    return new Mix(powder, ratio, List.of(), null, 0, 20);
  }

  /** The same with another share of air. */
  public Mix withAir(double fraction) {
    return new Mix(powder, ratio, additions, liquid, fraction, waterC);
  }

  /** The same with additions. */
  public Mix with(List<Addition> more) {
    return new Mix(powder, ratio, more, liquid, airFraction, waterC);
  }

  /** Mass of all water, the liquid's too, to a mass of one of powder. */
  public double waterToPowder() {
    return ratio.waterToPowder(powder, Water.gramsPerMl(waterC));
  }

  /** Parts of powder to one of water by the scoop; null where the bulk density is not known. */
  public @Nullable Double powderToWaterByVolume() {
    Double bulk = powder.bulkGPerMl();
    return bulk == null ? null : Water.gramsPerMl(waterC) / (waterToPowder() * bulk);
  }

  /**
   * Fresh mix for a volume of one of powder and water as they are scooped: below 1, because water
   * goes between the grains. Null where the bulk density is not known.
   */
  public @Nullable Double scoopsYield() {
    Double bulk = powder.bulkGPerMl();
    if (bulk == null) {
      return null;
    }
    MixAmounts litre = amounts(1000, 0, 0);
    return 1000 / (litre.powderG() / bulk + litre.waterG() / Water.gramsPerMl(waterC));
  }

  /**
   * The amounts that fill a volume.
   *
   * @param volumeMl fresh volume wanted, in ml, greater than zero
   * @param wasteFraction multiplies: 0.10 means times 1.10
   * @param residueG what stays in the pot, in g, added to the mass after waste
   * @throws OutOfRange when the liquid colour alone fills the volume or brings more water than the
   *     ratio allows
   */
  public MixAmounts amounts(double volumeMl, double wasteFraction, double residueG) {
    Check.positive("volume_ml", volumeMl);
    Check.notNegative("waste_fraction", wasteFraction);
    Check.notNegative("residue_g", residueG);
    double waterGPerMl = Water.gramsPerMl(waterC);
    double ratioByMass = waterToPowder();
    double broughtPerPowder = additions.stream().mapToDouble(Addition::waterPerPowder).sum();
    double mlPerPowderG =
        1 / powder.particleGPerMl()
            + additions.stream().mapToDouble(Addition::mlPerPowderG).sum()
            + (ratioByMass - broughtPerPowder) / waterGPerMl;
    double solidAndWaterMl = volumeMl * (1 - airFraction);
    if (liquid != null) {
      solidAndWaterMl += liquid.waterG() / waterGPerMl - liquid.volumeMl();
    }
    double powderG = solidAndWaterMl / mlPerPowderG;
    double liquidWaterG = liquid == null ? 0 : liquid.waterG();
    double waterG = (ratioByMass - broughtPerPowder) * powderG - liquidWaterG;
    if (powderG <= 0 || waterG < 0) {
      throw new OutOfRange(
          "liquid_colour",
          "the liquid colour brings more water than the whole mix should have",
          "use less of it, or a drier ratio");
    }
    MixAmounts lean =
        new MixAmounts(
            powderG,
            additions.stream().map(a -> a.perPowder() * powderG).toList(),
            waterG,
            liquid == null ? 0 : liquid.massG(),
            volumeMl);
    return lean.times(1 + wasteFraction + residueG / lean.totalG());
  }

  /** Mass of all water to a mass of one of cement; null where the cement share is not known. */
  public @Nullable Double waterToCement() {
    Double cement = powder.cementFraction();
    return cement == null || cement == 0 ? null : waterToPowder() / cement;
  }

  /** Dry pigment to a mass of one of powder. */
  public double pigmentPerPowder() {
    return additions.stream()
        .filter(a -> a.kind() == Addition.Kind.PIGMENT)
        .mapToDouble(Addition::perPowder)
        .sum();
  }
}
