package pourwright.card;

import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.cast.Addition;
import pourwright.cast.Mix;
import pourwright.cast.Powder;
import pourwright.material.Material;
import pourwright.material.MaterialBook;
import pourwright.material.MaterialKind;
import pourwright.material.Property;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;

/**
 * What a cast is mixed from.
 *
 * @param powder code of the powder
 * @param ratio powder to water
 * @param parts sand, pigment, fibre, admixture, liquid colour: by mass to one of powder
 * @param losses what is mixed but not cast
 * @param times pot life and waits
 * @param family colour family: the pot is washed between two families
 * @param note anything worth reading
 */
public record MixCard(
    String code,
    String name,
    String powder,
    Ratio ratio,
    List<Part> parts,
    Losses losses,
    Times times,
    String family,
    @Nullable String note)
    implements Card {

  /** How a ratio is meant. */
  public enum By {
    /** By the scale. */
    MASS,
    /** By the scoop: turned into mass with the bulk density of the powder. */
    VOLUME
  }

  /**
   * Powder to water.
   *
   * @param by mass or volume
   * @param powder parts of powder, above 0
   * @param water parts of water, above 0
   * @param powderTo parts of powder at the drier end, where it is mixed to consistency, above
   *     {@code powder}; null for one ratio
   */
  public record Ratio(By by, double powder, double water, @Nullable Double powderTo) {
    /** One ratio. */
    public Ratio(By by, double powder, double water) {
      this(by, powder, water, null);
    }

    /** Checks that both parts are above zero. */
    public Ratio {
      Check.between("ratio/powder", powder, 0.01, 1000);
      Check.between("ratio/water", water, 0.01, 1000);
      if (powderTo != null && !(powderTo > powder && powderTo <= 1000)) {
        throw new OutOfRange(
            "ratio_powder_to",
            "the drier end has no more powder than the wetter one",
            "write the smaller number first: 3 to 4");
      }
    }

    /** Parts of powder with the least water. */
    double driest() {
      return powderTo == null ? powder : powderTo;
    }
  }

  /**
   * Something in the mix beside powder and water.
   *
   * @param material its code
   * @param perPowder mass of it to a mass of 1 of powder
   */
  public record Part(String material, double perPowder) {
    /** Checks the share. */
    public Part {
      Material.checkCode("material", material);
      Check.between("per_powder", perPowder, 0, 20);
    }
  }

  /**
   * What is mixed but not cast.
   *
   * @param wasteFraction multiplies: 0.10 means times 1.10
   * @param residueG what stays in the bucket of each mixing, in g, added after the waste
   * @param airFraction air in the fresh mix, of its volume
   */
  public record Losses(double wasteFraction, double residueG, double airFraction) {
    /** House: one tenth more, 45 g in the bucket (it keeps 30 to 60 g), 2 % air. */
    public static final Losses HOUSE = new Losses(0.10, 45, 0.02);

    /** Checks the range. */
    public Losses {
      Check.between("waste_fraction", wasteFraction, 0, 1);
      Check.between("residue_g", residueG, 0, 10_000);
      Check.between("air_fraction", airFraction, 0, 0.5);
    }
  }

  /**
   * Times of a cast at 20 °C.
   *
   * @param potLifeMin from water to powder until the mix must be in the mold
   * @param demoldFromH earliest demold after casting
   * @param demoldToH latest demold, while the mold still comes off easily
   * @param hardenH kept damp after demolding, before it may dry
   * @param dryH from the end of hardening to constant mass; typical, the scale decides
   */
  public record Times(
      double potLifeMin, double demoldFromH, double demoldToH, double hardenH, double dryH) {
    /** House times of a rapid mix. */
    public static final Times RAPID = new Times(12, 1.5, 24, 4, 72);

    /** House times of a portland mix. */
    public static final Times PORTLAND = new Times(45, 24, 72, 72, 120);

    /** Checks the range and the order of the two demold times. */
    public Times {
      Check.between("pot_life_min", potLifeMin, 1, 600);
      Check.between("demold_from_h", demoldFromH, 0.1, 240);
      Check.between("demold_to_h", demoldToH, 0.1, 1000);
      Check.between("harden_h", hardenH, 0, 2000);
      Check.between("dry_h", dryH, 0, 2000);
      Written.notEarlier(
          "demold_to_h", demoldToH, demoldFromH, "the latest demold is before the earliest");
    }
  }

  /** Checks the codes. */
  public MixCard {
    Written.head("mix", code, name);
    Material.checkCode("powder", powder);
    Material.checkCode("family", family);
    parts = List.copyOf(parts);
  }

  /**
   * The mix with what the materials say, for the calculator; between two ratios the drier one,
   * which takes the most powder.
   *
   * @throws OutOfRange naming the material and the property that is missing
   */
  public Mix resolve(MaterialBook materials, double waterC) {
    return resolve(materials, waterC, ratio.driest());
  }

  /** The same with the most water, where there are two ratios. */
  public Mix wettest(MaterialBook materials, double waterC) {
    return resolve(materials, waterC, ratio.powder());
  }

  private Mix resolve(MaterialBook materials, double waterC, double powderParts) {
    Material binder = materials.get(powder);
    parts.forEach(p -> refuseUnlike(binder, materials.get(p.material())));
    Powder grains =
        new Powder(
            binder.required(Property.PARTICLE_DENSITY_G_PER_ML).value(),
            known(binder, Property.BULK_DENSITY_G_PER_ML),
            known(binder, Property.CEMENT_FRACTION),
            known(binder, Property.WATER_TO_POWDER_LOW),
            known(binder, Property.WATER_TO_POWDER_HIGH));
    pourwright.cast.Ratio.By by =
        ratio.by() == By.MASS ? pourwright.cast.Ratio.By.MASS : pourwright.cast.Ratio.By.VOLUME;
    return new Mix(
        grains,
        new pourwright.cast.Ratio(by, powderParts, ratio.water()),
        parts.stream().map(p -> addition(materials.get(p.material()), p.perPowder())).toList(),
        null,
        losses.airFraction(),
        waterC);
  }

  /** A second binder with cement where the first has none, or the other way round. */
  private static void refuseUnlike(Material binder, Material part) {
    Double one = known(binder, Property.CEMENT_FRACTION);
    Double other = known(part, Property.CEMENT_FRACTION);
    if (part.kind() == MaterialKind.POWDER
        && one != null
        && other != null
        && (one == 0) != (other == 0)) {
      throw new OutOfRange(
          "parts",
          "plaster and cement are not mixed (" + binder.name() + " with " + part.name() + ")",
          "they go on swelling for weeks and crack the casting; take one of them");
    }
  }

  private static Addition addition(Material material, double perPowder) {
    Addition.Kind kind =
        switch (material.kind()) {
          case PIGMENT -> Addition.Kind.PIGMENT;
          case FIBRE -> Addition.Kind.FIBRE;
          case ADMIXTURE -> Addition.Kind.ADMIXTURE;
          case LIQUID_COLOUR -> Addition.Kind.LIQUID_COLOUR;
          default -> Addition.Kind.SAND;
        };
    Double solids = known(material, Property.SOLIDS_FRACTION);
    Property density =
        material.property(Property.PARTICLE_DENSITY_G_PER_ML).isPresent()
            ? Property.PARTICLE_DENSITY_G_PER_ML
            : Property.DENSITY_G_PER_ML;
    return new Addition(
        kind, perPowder, material.required(density).value(), solids == null ? 0 : 1 - solids);
  }

  private static @Nullable Double known(Material material, Property property) {
    return material.property(property).map(Sourced::value).orElse(null);
  }

  /** The mix with its materials looked up, for amounts by material. */
  public ResolvedMix resolve(MaterialBook book) {
    return ResolvedMix.of(this, book);
  }

  @Override
  public CardKind kind() {
    return CardKind.MIX;
  }
}
