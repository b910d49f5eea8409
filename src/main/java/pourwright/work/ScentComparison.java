package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pourwright.card.PourCard;
import pourwright.card.ResolvedPour;
import pourwright.hazard.Blend;
import pourwright.hazard.Classification;
import pourwright.material.Material;
import pourwright.material.MaterialKind;

/** Scents side by side in the wax of one candle, at one load. */
public final class ScentComparison {
  private final Books books;

  /** A reader of the books as they are now. */
  public ScentComparison(Books books) {
    this.books = books;
  }

  /**
   * One scent.
   *
   * @param classification at the load
   * @param sameUpTo highest load with the same classes
   * @param freeUpTo highest load without any class; 0 where the wax itself has one
   */
  public record Row(
      Material scent, Classification classification, double sameUpTo, double freeUpTo) {}

  /** Rows of the scents that have a sheet, and those that have none. */
  public record Compared(List<Row> rows, List<Material> withoutSheet) {
    /** Copies the lists. */
    public Compared {
      rows = List.copyOf(rows);
      withoutSheet = List.copyOf(withoutSheet);
    }
  }

  /**
   * Every scent of the studio in the wax and extras of a pour card.
   *
   * @param pour the card whose wax is taken
   * @param loadOfTotal fraction, above 0
   * @param highest loads are looked at up to here, fraction
   */
  public Compared of(PourCard pour, double loadOfTotal, double highest) {
    List<Row> rows = new ArrayList<>();
    List<Material> without = new ArrayList<>();
    var materials = Drawers.materials(books);
    ResolvedPour base = pour.resolve(materials);
    for (Material scent : materials.all()) {
      if (scent.kind() != MaterialKind.FRAGRANCE) {
        continue;
      }
      Optional<CandleBlend> blend = with(base, scent);
      if (blend.isEmpty()) {
        without.add(scent);
        continue;
      }
      Blend mixture = blend.get().blend();
      Classification found = mixture.at(loadOfTotal);
      boolean waxIsFree = mixture.at(0).isUnclassified();
      rows.add(
          new Row(
              scent,
              found,
              mixture.highestLoadLike(loadOfTotal, highest),
              waxIsFree ? mixture.highestLoadLike(0, highest) : 0));
    }
    return new Compared(rows, without);
  }

  private Optional<CandleBlend> with(ResolvedPour base, Material scent) {
    if (books.cards().current(Drawers.SHEET, scent.code()).isEmpty()) {
      return Optional.empty();
    }
    ResolvedPour pour =
        new ResolvedPour(
            base.card(), base.waxes(), List.of(new ResolvedPour.Share(scent, 1)), base.extras());
    return Optional.of(CandleBlend.of(books, pour));
  }
}
