package pourwright.work;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.Lot;
import pourwright.stock.Movement;
import pourwright.stock.Price;
import pourwright.stock.Shelf;

/** Lots, movements and what is on hand. */
public interface LotBook {

  /** The number that the next lot gets. */
  long nextId();

  /** A lot by number. */
  Optional<Shelf> shelf(long lot);

  /** A lot by material and lot code. */
  Optional<Shelf> shelf(String material, String code);

  /** Lots whose pack carries a code, capitals or not, newest first, emptied ones too. */
  List<Shelf> coded(String code);

  /** All lots of a material with something left, in the order they are drawn from. */
  List<Shelf> shelves(String material);

  /** All lots with something left, in material and drawing order. */
  List<Shelf> allShelves();

  /**
   * Those of all shelves that may need a look: held, opened, good until this day at the longest by
   * what is on the pack, or of a material that goes bad and with no day on the pack.
   *
   * @param until the day
   * @param perishable codes of materials that go bad unopened
   */
  List<Shelf> toLookAt(LocalDate until, Collection<String> perishable);

  /** Lots newest first, emptied ones too; of one material when it is given. */
  PageOf<Shelf> list(@Nullable String material, @Nullable String after, int limit);

  /** What is on hand by material, held and expired lots included. */
  Map<String, Amount> onHand();

  /** What may be drawn by material: held and expired lots left out. */
  Map<String, Amount> drawable(LocalDate today);

  /** Movements of a lot, newest first. */
  PageOf<Movement> movements(long lot, @Nullable String after, int limit);

  /** All movements, newest first. */
  PageOf<Movement> movements(@Nullable String after, int limit);

  /** The number of the newest movement there is; 0 where there is none. */
  long newestMovement();

  /** The number of the newest movement of a material's lots; 0 where there is none. */
  long newestMovement(String material);

  /** The newest movement of each material that moved after the movement of this number. */
  Map<String, Long> movedSince(long after);

  /** All movements of a material's lots in the order of writing. */
  default List<Movement> ofMaterial(String material) {
    return ofMaterial(material, 0);
  }

  /** The same of those later than some number. */
  List<Movement> ofMaterial(String material, long after);

  /** What the lots of a material cost, by lot; lots without a price are left out. */
  Map<Long, Price> prices(String material);

  /** Movements of a batch in the order of writing, reversals included. */
  List<Movement> ofBatch(long batch);

  /** Movements of a deed in the order of writing. */
  List<Movement> ofDeed(long deed);

  /** Adds a lot. Only inside a write. */
  void add(Lot lot);

  /** Notes the day a pack was opened. Only inside a write. */
  void open(long lot, LocalDate day, long deed);

  /** Adds a movement; the database refuses one that leaves a lot below zero. */
  Movement append(long lot, Amount change, Cause cause, @Nullable Long batch, Deed deed);

  /** Adds the exact reverse of a movement. Only inside a write. */
  Movement reverse(Movement movement, Deed deed);
}
