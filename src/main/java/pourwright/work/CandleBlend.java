package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pourwright.card.ResolvedPour;
import pourwright.hazard.Audience;
import pourwright.hazard.Blend;
import pourwright.hazard.HazardSheet;
import pourwright.hazard.Ingredient;
import pourwright.hazard.Regime;
import pourwright.material.Material;
import pourwright.pour.Dose;

/**
 * What a pour card's wax, scent and extras are made of by their suppliers' sheets.
 *
 * @param blend for any load
 * @param loadOfTotal the card's load on the total
 * @param missing sheets that are not written down, in words
 * @param sheets those it stands on, with their revisions
 */
record CandleBlend(Blend blend, double loadOfTotal, List<String> missing, List<String> sheets) {
  CandleBlend {
    missing = List.copyOf(missing);
    sheets = List.copyOf(sheets);
  }

  /** By the sheets that count now. */
  static CandleBlend of(Books books, ResolvedPour pour) {
    return of(pour, code -> books.cards().current(Drawers.SHEET, code).map(CardVersion::body));
  }

  /**
   * By any sheets.
   *
   * @param sheetOf the sheet of a material's code
   */
  static CandleBlend of(ResolvedPour pour, Function<String, Optional<HazardSheet>> sheetOf) {
    List<String> missing = new ArrayList<>();
    List<String> used = new ArrayList<>();
    List<ResolvedPour.Share> rest = new ArrayList<>(pour.waxes());
    rest.addAll(pour.extras());
    List<Ingredient> oil = parts(pour.fragrances(), sheetOf, missing, used);
    Blend blend = new Blend(Regime.CLP, Audience.PUBLIC, oil, parts(rest, sheetOf, missing, used));
    return new CandleBlend(
        blend, Dose.loadOfTotal(pour.card().load(), pour.card().loadOf()), missing, used);
  }

  /** Compositions of several materials as one, each by its share of them all. */
  static List<Ingredient> parts(
      List<ResolvedPour.Share> shares,
      Function<String, Optional<HazardSheet>> sheetOf,
      List<String> missing,
      List<String> used) {
    double sum = shares.stream().mapToDouble(ResolvedPour.Share::share).sum();
    List<Ingredient> all = new ArrayList<>();
    for (ResolvedPour.Share share : shares) {
      Material material = share.material();
      Optional<HazardSheet> sheet = sheetOf.apply(material.code());
      if (sheet.isEmpty()) {
        missing.add("the safety data sheet of " + material.name());
        all.add(Ingredient.plain("unknown: " + material.name(), 0));
        continue;
      }
      used.add(material.name() + ", sheet " + sheet.get().revision());
      for (Ingredient line : sheet.get().composition(material.name())) {
        all.add(line.at(line.share().times(share.share() / sum)));
      }
    }
    return all;
  }
}
