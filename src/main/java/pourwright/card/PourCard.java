package pourwright.card;

import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.material.Material;
import pourwright.material.MaterialBook;
import pourwright.pour.Dose.LoadOf;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * What is poured: wax blend, fragrance, temperatures, rest.
 *
 * @param waxes the blend, in parts
 * @param fragrances the scent, in parts; empty for an unscented candle
 * @param load fragrance load, a fraction
 * @param loadOf what the load is a share of
 * @param extras dye and additives: mass of each to a mass of 1 of wax
 * @param temperatures when to stir in and when to pour, from the wax's sheet
 * @param losses what is melted but not poured
 * @param restDays rest before test or sale; typical: paraffin 3 to 5, plant 10 to 14
 * @param family scent family: the pitcher is washed between two families
 * @param note anything worth reading
 */
public record PourCard(
    String code,
    String name,
    List<Part> waxes,
    List<Part> fragrances,
    double load,
    LoadOf loadOf,
    List<Part> extras,
    Temperatures temperatures,
    Losses losses,
    double restDays,
    String family,
    @Nullable String note)
    implements Card {

  /**
   * One of a blend.
   *
   * @param material its code
   * @param parts parts by mass, above 0
   */
  public record Part(String material, double parts) {
    /** Checks the share. */
    public Part {
      Material.checkCode("material", material);
      Check.between("parts", parts, 1e-6, 1e6);
    }
  }

  /**
   * Windows of temperature, °C, as the wax's sheet states them.
   *
   * @param addFromC lowest for stirring the fragrance in
   * @param addToC highest for stirring the fragrance in
   * @param pourFromC lowest for pouring
   * @param pourToC highest for pouring
   */
  public record Temperatures(double addFromC, double addToC, double pourFromC, double pourToC) {
    /** Checks range and order. */
    public Temperatures {
      for (double c : new double[] {addFromC, addToC, pourFromC, pourToC}) {
        Check.between("temperature_c", c, 25, 130);
      }
      Written.notEarlier("add_to_c", addToC, addFromC, "the window for stirring in is turned over");
      Written.notEarlier("pour_to_c", pourToC, pourFromC, "the window for pouring is turned over");
    }
  }

  /**
   * What is melted but not poured.
   *
   * @param wasteFraction multiplies: 0.03 means times 1.03
   * @param residueG what stays in the pitcher of each pour, in g, added after the waste
   */
  public record Losses(double wasteFraction, double residueG) {
    /** House: 3 % more and 5 g in the pitcher. */
    public static final Losses HOUSE = new Losses(0.03, 5);

    /** Checks the range. */
    public Losses {
      Check.between("waste_fraction", wasteFraction, 0, 1);
      Check.between("residue_g", residueG, 0, 10_000);
    }
  }

  /** Checks codes, shares and that a load has a fragrance. */
  public PourCard {
    Written.head("pour", code, name);
    Material.checkCode("family", family);
    waxes = List.copyOf(waxes);
    fragrances = List.copyOf(fragrances);
    extras = List.copyOf(extras);
    if (waxes.isEmpty()) {
      throw new OutOfRange("waxes", name + " has no wax", "name at least one wax");
    }
    Check.between("load_fraction", load, 0, 0.5);
    if (load > 0 == fragrances.isEmpty()) {
      throw new OutOfRange(
          "load_fraction",
          name + " has a load of " + load + " and " + fragrances.size() + " fragrances",
          "give a fragrance and a load above 0, or neither");
    }
    Check.between("rest_days", restDays, 0, 365);
  }

  /** Looks up every material. */
  public ResolvedPour resolve(MaterialBook book) {
    return ResolvedPour.of(this, book);
  }

  @Override
  public CardKind kind() {
    return CardKind.POUR;
  }
}
