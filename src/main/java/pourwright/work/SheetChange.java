package pourwright.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pourwright.card.CandleDesign;
import pourwright.card.PourCard;
import pourwright.card.ResolvedPour;
import pourwright.hazard.Classification;
import pourwright.hazard.HazardSheet;
import pourwright.label.Reprint;
import pourwright.material.MaterialBook;
import pourwright.quantity.OutOfRange;

/**
 * Which labels a changed sheet asks to be printed again: every candle with the material is
 * classified by the older and the newer version of its sheet, all else being as it is now.
 */
public final class SheetChange {
  private static final Set<String> ON_THE_SHELF = Set.of("Poured", "Resting", "Rested", "Picked");

  private final Books books;

  /** A reader of the books as they are now. */
  public SheetChange(Books books) {
    this.books = books;
  }

  /**
   * What a version of a sheet changed.
   *
   * @param looked how many candles have the material
   * @param labels those whose label is another one
   */
  public record Changed(int looked, List<Label> labels) {
    /** Copies the list. */
    public Changed {
      labels = List.copyOf(labels);
    }
  }

  /**
   * A label to be printed again.
   *
   * @param before statements and supplemental codes before
   * @param now the same now
   * @param shelf candles of the design that are in the studio
   */
  public record Label(
      String code, String name, List<String> before, List<String> now, long shelf) {}

  /**
   * Compares a version of a material's sheet with the one before it.
   *
   * @return nothing when there is no such version, or none before it
   */
  public Optional<Changed> of(String material, int version) {
    Optional<HazardSheet> newer = sheet(material, version);
    Optional<HazardSheet> older = sheet(material, version - 1);
    if (newer.isEmpty() || older.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Optional<HazardSheet>> others = new HashMap<>();
    Map<String, CandleBlend> before = blends(material, older.get(), others);
    Map<String, CandleBlend> now = blends(material, newer.get(), others);
    Map<String, CandleDesign> candles = new LinkedHashMap<>();
    for (CardVersion<CandleDesign> candle : books.cards().all(Drawers.CANDLE)) {
      if (now.containsKey(candle.body().pour())) {
        candles.put(candle.code(), candle.body());
      }
    }
    Map<String, Classification> was = classified(candles, before);
    Map<String, Classification> is = classified(candles, now);
    Map<String, Long> shelf = shelf();
    List<Label> labels = new ArrayList<>();
    for (Reprint.Changed changed : Reprint.needed(was, is)) {
      CandleDesign candle = candles.get(changed.candle());
      Classification old = was.get(changed.candle());
      Classification fresh = is.get(changed.candle());
      if (candle != null && old != null && fresh != null) {
        labels.add(
            new Label(
                changed.candle(),
                candle.name(),
                printed(old),
                printed(fresh),
                shelf.getOrDefault(changed.candle(), 0L)));
      }
    }
    return Optional.of(new Changed(candles.size(), labels));
  }

  private Optional<HazardSheet> sheet(String material, int version) {
    return version < 1
        ? Optional.empty()
        : books.cards().version(Drawers.SHEET, material, version).map(CardVersion::body);
  }

  /** Candles of one pour card are one mixture: it is read once. */
  private Map<String, CandleBlend> blends(
      String material, HazardSheet sheet, Map<String, Optional<HazardSheet>> others) {
    MaterialBook materials = Drawers.materials(books);
    Map<String, CandleBlend> blends = new HashMap<>();
    for (CardVersion<PourCard> card : books.cards().all(Drawers.POUR)) {
      if (!has(card.body(), material)) {
        continue;
      }
      try {
        ResolvedPour pour = card.body().resolve(materials);
        blends.put(
            card.code(),
            CandleBlend.of(
                pour,
                code ->
                    code.equals(material)
                        ? Optional.of(sheet)
                        : others.computeIfAbsent(
                            code,
                            c -> books.cards().current(Drawers.SHEET, c).map(CardVersion::body))));
      } catch (OutOfRange e) {
        // a card whose material is missing has no label that could be printed again
        continue;
      }
    }
    return blends;
  }

  private static boolean has(PourCard card, String material) {
    return card.fragrances().stream().anyMatch(p -> p.material().equals(material))
        || card.waxes().stream().anyMatch(p -> p.material().equals(material))
        || card.extras().stream().anyMatch(p -> p.material().equals(material));
  }

  private static Map<String, Classification> classified(
      Map<String, CandleDesign> candles, Map<String, CandleBlend> blends) {
    Map<String, Classification> byPour = new HashMap<>();
    Map<String, Classification> byCandle = new LinkedHashMap<>();
    candles.forEach(
        (code, candle) -> {
          CandleBlend blend = blends.get(candle.pour());
          if (blend != null) {
            byCandle.put(
                code,
                byPour.computeIfAbsent(candle.pour(), p -> blend.blend().at(blend.loadOfTotal())));
          }
        });
    return byCandle;
  }

  private Map<String, Long> shelf() {
    Map<String, Long> shelf = new HashMap<>();
    books
        .pieces()
        .counts()
        .forEach(
            (key, count) -> {
              if (ON_THE_SHELF.contains(key.state())) {
                shelf.merge(key.design(), count, Long::sum);
              }
            });
    return shelf;
  }

  private static List<String> printed(Classification found) {
    List<String> codes = new ArrayList<>(found.statements());
    codes.addAll(found.supplemental());
    found.namedSubstances().forEach(n -> codes.add("names " + n));
    return codes;
  }
}
