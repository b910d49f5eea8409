package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import pourwright.card.ResolvedPour;
import pourwright.hazard.Audience;
import pourwright.hazard.Classification;
import pourwright.hazard.Classifier;
import pourwright.hazard.Form;
import pourwright.hazard.Ingredient;
import pourwright.hazard.Mixture;
import pourwright.hazard.Regime;
import pourwright.material.Material;

/**
 * Unwicked pieces from what is left of several pitchers: every ingredient of every wax, scent and
 * extra that was weighed in counts by its true share in the hazard sum.
 *
 * @param kept what is kept for unwicked pieces, newest first
 * @param shares of the mixture by name of the material, the largest first
 * @param grams of the mixture
 * @param classification of the mixture; null while nothing is chosen
 * @param missing sheets that are not written down
 */
public record Unwicked(
    List<Kept> kept,
    List<Share> shares,
    double grams,
    @Nullable Classification classification,
    List<String> missing) {
  private static final int LOOKED_AT = 60;

  /** Copies. */
  public Unwicked {
    kept = List.copyOf(kept);
    shares = List.copyOf(shares);
    missing = List.copyOf(missing);
  }

  /** What a pour left for unwicked pieces: grams that are not poured yet. */
  public record Kept(PourWatch pour, double grams) {}

  /** A material of the mixture and its share of it. */
  public record Share(String name, double fraction) {}

  /**
   * The mixture of what these pours left.
   *
   * @param chosen numbers of pours
   */
  public static Unwicked of(Books books, Set<Long> chosen) {
    List<Kept> kept = kept(books);
    PitcherContents all = new PitcherContents(Map.of());
    for (Kept each : kept) {
      if (chosen.contains(each.pour().batch().id())) {
        PitcherContents whole = PitcherContents.of(each.pour().candle().pour(), each.pour().done());
        all = all.with(whole.part(each.grams()));
      }
    }
    double total = all.totalG();
    if (!(total > 0)) {
      return new Unwicked(kept, List.of(), 0, null, List.of());
    }
    List<ResolvedPour.Share> shares = new ArrayList<>();
    all.grams()
        .forEach((code, g) -> shares.add(new ResolvedPour.Share(material(books, code), g / total)));
    shares.sort((a, b) -> Double.compare(b.share(), a.share()));
    List<String> missing = new ArrayList<>();
    List<Ingredient> lines =
        CandleBlend.parts(
            shares,
            code -> books.cards().current(Drawers.SHEET, code).map(CardVersion::body),
            missing,
            new ArrayList<>());
    Mixture mixture =
        new Mixture(Regime.CLP, Form.SOLID, Audience.PUBLIC, lines, Mixture.Tested.NOTHING);
    return new Unwicked(
        kept,
        shares.stream().map(s -> new Share(s.material().name(), s.share())).toList(),
        total,
        Classifier.classify(mixture),
        missing);
  }

  private static Material material(Books books, String code) {
    return Drawers.book(books).materials().get(code);
  }

  private static List<Kept> kept(Books books) {
    Map<Long, Double> grams = new TreeMap<>(java.util.Comparator.reverseOrder());
    for (String quantity : List.of(LeftWax.UNWICKED_G, LeftWax.USED_G)) {
      double sign = quantity.equals(LeftWax.USED_G) ? -1 : 1;
      for (Reading reading : books.readings().list(quantity, null, LOOKED_AT).items()) {
        if (reading.subject().kind() == Subject.Kind.BATCH) {
          grams.merge(reading.subject().number(), sign * reading.value(), Double::sum);
        }
      }
    }
    List<Kept> kept = new ArrayList<>();
    grams.forEach(
        (pour, g) -> {
          Optional<PourWatch> watch = g > 0.05 ? PourWatch.of(books, pour) : Optional.empty();
          watch.ifPresent(w -> kept.add(new Kept(w, g)));
        });
    return kept;
  }
}
