package pourwright.card;

import java.util.List;
import pourwright.cast.Mix;
import pourwright.cast.MixAmounts;
import pourwright.cast.MixLimits;
import pourwright.material.Material;
import pourwright.material.MaterialBook;

/**
 * A mix card with its materials looked up.
 *
 * @param card as it is written
 * @param powder the powder
 * @param parts the other materials, in the order of the card
 * @param mix what the calculator takes
 */
public record ResolvedMix(MixCard card, Material powder, List<Material> parts, Mix mix) {
  /** Mix water, where nobody measured it, in °C. */
  public static final double WATER_C = 20;

  /** Copies. */
  public ResolvedMix {
    parts = List.copyOf(parts);
  }

  static ResolvedMix of(MixCard card, MaterialBook book) {
    return new ResolvedMix(
        card,
        book.get(card.powder()),
        card.parts().stream().map(p -> book.get(p.material())).toList(),
        card.resolve(book, WATER_C));
  }

  /**
   * One mixing.
   *
   * @param materials what is drawn from stock
   * @param waterG water to be added
   * @param totalG everything in the bucket
   * @param freshMl what of it goes into molds
   * @param warnings what the trade would say
   */
  public record Mixing(
      Amounts materials, double waterG, double totalG, double freshMl, List<String> warnings) {
    /** Copies. */
    public Mixing {
      warnings = List.copyOf(warnings);
    }
  }

  /** Amounts for a volume in the molds, with the card's waste and residue. */
  public Mixing mixing(double volumeMl) {
    MixAmounts amounts =
        mix.amounts(volumeMl, card.losses().wasteFraction(), card.losses().residueG());
    Amounts materials = Amounts.of(powder.code(), amounts.powderG());
    for (int i = 0; i < parts.size(); i++) {
      materials = materials.plus(Amounts.of(parts.get(i).code(), amounts.additionsG().get(i)));
    }
    return new Mixing(
        materials, amounts.waterG(), amounts.totalG(), volumeMl, MixLimits.warnings(mix, amounts));
  }
}
