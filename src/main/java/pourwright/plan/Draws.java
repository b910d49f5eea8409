package pourwright.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pourwright.card.Amounts;
import pourwright.material.Material;
import pourwright.material.MaterialBook;
import pourwright.stock.Amount;
import pourwright.stock.FirstExpiredFirstOut;
import pourwright.stock.Shelf;

/**
 * Lots for each batch, batch after batch, first expired first out. What one batch has been given is
 * gone for the next: nothing is drawn twice.
 */
final class Draws {
  private final MaterialBook materials;
  private final InHand inHand;
  private final Map<String, List<Shelf>> left;
  private final List<MakePlan.Pick> picks = new ArrayList<>();

  private Draws(MaterialBook materials, InHand inHand) {
    this.materials = materials;
    this.inHand = inHand;
    this.left = new HashMap<>(inHand.shelves());
  }

  /** What is begun comes first, then what has a fixed hour. */
  static List<MakePlan.Pick> of(
      List<RunningPour> poured,
      List<CastJob> casts,
      List<PourJob> pours,
      List<ClassJob> classes,
      MaterialBook materials,
      InHand inHand) {
    Draws draws = new Draws(materials, inHand);
    poured.forEach(p -> draws.batch(p.key(), p.needs()));
    classes.forEach(k -> draws.batch(k.key(), k.kit().needs()));
    casts.forEach(c -> draws.batch(c.key(), c.needs()));
    pours.forEach(p -> draws.batch(p.key(), p.needs()));
    return draws.picks;
  }

  private void batch(String key, Amounts needs) {
    needs
        .byMaterial()
        .forEach(
            (code, amount) -> {
              if (amount > 0) {
                material(key, materials.get(code), amount);
              }
            });
  }

  private void material(String batch, Material material, double amount) {
    long need = material.unit().toSmall(amount);
    List<Shelf> shelves = left.getOrDefault(material.code(), List.of());
    FirstExpiredFirstOut.Draw draw =
        FirstExpiredFirstOut.draw(
            shelves, new Amount(material.unit(), need), inHand.today(), material.shelfLife());
    Map<Long, Long> taken = new HashMap<>();
    draw.lines().forEach(l -> taken.put(l.lot(), l.amount().units()));
    List<Shelf> after = new ArrayList<>();
    Map<Long, String> codes = new HashMap<>();
    for (Shelf shelf : shelves) {
      long units = taken.getOrDefault(shelf.lot().id(), 0L);
      codes.put(shelf.lot().id(), shelf.lot().code());
      after.add(
          new Shelf(
              shelf.lot(), shelf.onHand().minus(new Amount(material.unit(), units)), shelf.held()));
    }
    left.put(material.code(), after);
    picks.add(
        new MakePlan.Pick(
            batch,
            material.code(),
            material.unit(),
            need,
            draw.lines().stream()
                .map(
                    l ->
                        new MakePlan.Draw(
                            l.lot(), codes.getOrDefault(l.lot(), ""), l.amount().units()))
                .toList(),
            draw.missing().units()));
  }
}
