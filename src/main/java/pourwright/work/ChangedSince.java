package pourwright.work;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import pourwright.card.CandleDesign.Packed;
import pourwright.card.ResolvedCandle;
import pourwright.card.ResolvedPour;
import pourwright.hazard.HazardSheet;
import pourwright.material.MaterialBook;

/**
 * What a proof stands on beside the combination that is poured: rest before test, lid or liner, and
 * the safety sheets. A change of any asks for a new test.
 */
final class ChangedSince {
  private final Books books;
  private final MaterialBook materials;

  ChangedSince(Books books, MaterialBook materials) {
    this.books = books;
    this.materials = materials;
  }

  /**
   * Where cards differ from those of a proof, in words.
   *
   * @param then the cards that were burnt
   * @param began when their test began: sheets count as they stood then
   */
  List<String> of(CandleCards then, Instant began, CandleCards now) {
    List<String> changes = new ArrayList<>();
    ResolvedCandle was = then.resolve(materials);
    ResolvedCandle is = now.resolve(materials);
    if (was.restDays() != is.restDays()) {
      changes.add(
          String.format(
              Locale.ROOT, "rest of %.1f days, proved with %.1f", is.restDays(), was.restDays()));
    }
    Set<String> lids = lids(then);
    if (!lids.equals(lids(now))) {
      changes.add("lid or liner " + words(lids(now)) + ", proved with " + words(lids));
    }
    sheets(is.pour(), began, changes);
    return changes;
  }

  private static String words(Set<String> lids) {
    return lids.isEmpty() ? "none" : String.join(", ", lids);
  }

  /**
   * What is packed with a candle and closes or lines it, by its name: no card has a field for it.
   */
  private Set<String> lids(CandleCards cards) {
    Set<String> lids = new LinkedHashSet<>();
    for (Packed packed : cards.candle().body().boxed()) {
      String name = materials.get(packed.material()).name().toLowerCase(Locale.ROOT);
      if (name.matches(".*\\b(lid|liner|cover)s?\\b.*")) {
        lids.add(packed.material());
      }
    }
    return lids;
  }

  /** A sheet that was only issued again, with the same composition, is no other candle. */
  private static boolean sameComposition(HazardSheet then, HazardSheet now) {
    return then.lines().equals(now.lines()) && then.restIsHarmless() == now.restIsHarmless();
  }

  private void sheets(ResolvedPour pour, Instant began, List<String> changes) {
    List<ResolvedPour.Share> all = new ArrayList<>(pour.waxes());
    all.addAll(pour.fragrances());
    all.addAll(pour.extras());
    for (ResolvedPour.Share share : all) {
      String code = share.material().code();
      Optional<CardVersion<HazardSheet>> now = books.cards().current(Drawers.SHEET, code);
      if (now.isEmpty() || !now.get().at().isAfter(began)) {
        continue;
      }
      books.cards().history(Drawers.SHEET, code).stream()
          .filter(v -> !v.at().isAfter(began))
          .findFirst()
          .filter(v -> !sameComposition(v.body(), now.get().body()))
          .ifPresent(
              v ->
                  changes.add(
                      "safety sheet of "
                          + code
                          + " "
                          + now.get().body().revision()
                          + ", proved with "
                          + v.body().revision()));
    }
  }
}
