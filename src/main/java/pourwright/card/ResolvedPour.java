package pourwright.card;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.material.Material;
import pourwright.material.MaterialBook;
import pourwright.material.Property;
import pourwright.pour.Blend;
import pourwright.pour.Dose;
import pourwright.pour.Fill;
import pourwright.quantity.Sourced;

/**
 * A pour card with its materials looked up.
 *
 * @param card as it is written
 * @param waxes the blend
 * @param fragrances the scent
 * @param extras dye and additives, mass to a mass of 1 of wax
 */
public record ResolvedPour(
    PourCard card, List<Share> waxes, List<Share> fragrances, List<Share> extras) {

  private static final Property HOLDS = Property.FRAGRANCE_HELD_OF_TOTAL_FRACTION;
  private static final Property LEGAL = Property.FRAGRANCE_LEGAL_MAX_OF_TOTAL_FRACTION;
  private static final Property MOST = Property.FRAGRANCE_MAX_OF_TOTAL_FRACTION;

  /** A material and its share: of the blend, in all 1; for extras to the wax. */
  public record Share(Material material, double share) {}

  /** Copies. */
  public ResolvedPour {
    waxes = List.copyOf(waxes);
    fragrances = List.copyOf(fragrances);
    extras = List.copyOf(extras);
  }

  static ResolvedPour of(PourCard card, MaterialBook book) {
    return new ResolvedPour(
        card,
        shares(card.waxes(), book, true),
        shares(card.fragrances(), book, true),
        shares(card.extras(), book, false));
  }

  private static List<Share> shares(List<PourCard.Part> parts, MaterialBook book, boolean ofAll) {
    double sum = ofAll ? parts.stream().mapToDouble(PourCard.Part::parts).sum() : 1;
    List<Share> shares = new ArrayList<>();
    parts.forEach(p -> shares.add(new Share(book.get(p.material()), p.parts() / sum)));
    return shares;
  }

  /**
   * Densities of the scented wax: wax and fragrance by their volumes. A first-order estimate;
   * mixing changes volumes by less than the waxes' own spread. A wax whose hot density is not known
   * counts with the set one.
   */
  public Fill.Densities densities() {
    double set = density(Property.SET_DENSITY_G_PER_ML);
    return new Fill.Densities(Math.min(set, density(Property.HOT_DENSITY_G_PER_ML)), set);
  }

  private double density(Property ofWax) {
    double load = Dose.loadOfTotal(card.load(), card.loadOf());
    double mlPerG = 0;
    for (Share wax : waxes) {
      double density =
          wax.material()
              .property(ofWax)
              .orElseGet(() -> wax.material().required(Property.SET_DENSITY_G_PER_ML))
              .value();
      mlPerG += (1 - load) * wax.share() / density;
    }
    for (Share fragrance : fragrances) {
      double density = fragrance.material().required(Property.DENSITY_G_PER_ML).value();
      mlPerG += load * fragrance.share() / density;
    }
    return 1 / mlPerG;
  }

  /**
   * The blend with its limits: a limit that no sheet tells counts as none and is named by {@link
   * #untold()}.
   *
   * @param legalMaxOfTotal legal limit for all fragrance on the total, null where none is known
   */
  public Blend blend(@Nullable Double legalMaxOfTotal) {
    return new Blend(
        waxes.stream()
            .map(w -> new Blend.Wax(w.material().name(), w.share(), told(w, HOLDS, 1)))
            .toList(),
        fragrances.stream()
            .map(
                f ->
                    new Blend.Fragrance(
                        f.material().name(),
                        f.share(),
                        told(f, MOST, 1),
                        told(f, Property.FLASH_POINT_C, 400),
                        f.material().property(LEGAL).map(Sourced::value).orElse(null)))
            .toList(),
        extras.stream().map(e -> new Blend.Extra(e.material().name(), e.share())).toList(),
        card.load(),
        card.loadOf(),
        legalMaxOfTotal);
  }

  private static double told(Share share, Property property, double absent) {
    return share.material().property(property).map(Sourced::value).orElse(absent);
  }

  /** Names of materials whose limit no sheet in the books tells. */
  public List<String> untold() {
    List<String> names = new ArrayList<>();
    waxes.stream()
        .filter(w -> w.material().property(HOLDS).isEmpty())
        .forEach(w -> names.add(w.material().name()));
    fragrances.stream()
        .filter(f -> f.material().property(MOST).isEmpty())
        .forEach(f -> names.add(f.material().name()));
    return names;
  }

  /**
   * One melt.
   *
   * @param materials what is drawn from stock
   * @param waxG all waxes
   * @param fragranceG all fragrances
   * @param totalG wax and fragrance together
   * @param netG what of it goes into vessels
   */
  public record Melt(
      Amounts materials, double waxG, double fragranceG, double totalG, double netG) {}

  /** Amounts for a net mass in the vessels, with the card's waste and residue. */
  public Melt melt(double netG) {
    return melt(netG, card.losses().residueG());
  }

  /** The same with what stays in this very pitcher, in g, added after the waste. */
  public Melt melt(double netG, double residueG) {
    double total = netG * (1 + card.losses().wasteFraction()) + residueG;
    Dose dose =
        fragrances.isEmpty() ? new Dose(total, 0) : Dose.ofTotal(total, card.load(), card.loadOf());
    Amounts materials = Amounts.NONE;
    for (Share wax : waxes) {
      materials = materials.plus(Amounts.of(wax.material().code(), dose.waxG() * wax.share()));
    }
    for (Share fragrance : fragrances) {
      materials =
          materials.plus(
              Amounts.of(fragrance.material().code(), dose.fragranceG() * fragrance.share()));
    }
    for (Share extra : extras) {
      materials = materials.plus(Amounts.of(extra.material().code(), dose.waxG() * extra.share()));
    }
    return new Melt(materials, dose.waxG(), dose.fragranceG(), dose.totalG(), netG);
  }
}
