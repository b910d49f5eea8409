package pourwright.work;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import pourwright.cost.Valuation;

/**
 * Values of materials once worked out, kept until a movement of that material is written, and how
 * pieces fared, kept until a fact of a piece is: a slate must not read the years each time it is
 * looked at. Of one studio; only for looks at what is written, never within an unfinished deed.
 */
public final class StockValues {
  private record Known(
      long newestOfAll, long newestMovement, Valuation.Method method, StockValue value) {}

  private record Moved(long after, long newestOfAll, Map<String, Long> newest) {}

  private record Timed(long newestBatch, RecordedMinutes minutes) {}

  private record Fared(String edition, Map<String, PieceBook.Fared> byDesign) {}

  private static final int LATEST = 300;

  private final Map<String, Known> known = new ConcurrentHashMap<>();
  private volatile @Nullable Timed timed;
  private volatile Moved moved = new Moved(0, 0, Map.of());
  private volatile Fared fared = new Fared("", Map.of());

  /** Recorded minutes, read anew when a batch was begun or finished since. */
  RecordedMinutes minutes(Books books) {
    long newest = books.batches().newestDeed();
    Timed before = timed;
    if (before != null && before.newestBatch() == newest) {
      return before.minutes();
    }
    RecordedMinutes minutes = RecordedMinutes.of(books);
    timed = new Timed(newest, minutes);
    return minutes;
  }

  /**
   * How the latest {@value #LATEST} pieces of a design fared, asked anew once any fact of a piece
   * was written or taken back.
   *
   * @param edition of the pieces in these books
   * @param others designs that are likely to be asked for next
   */
  PieceBook.Fared fared(Books books, String edition, String design, Set<String> others) {
    Fared before = fared;
    boolean same = before.edition().equals(edition);
    PieceBook.Fared known = same ? before.byDesign().get(design) : null;
    if (known != null) {
      return known;
    }
    Map<String, PieceBook.Fared> all = new HashMap<>(same ? before.byDesign() : Map.of());
    Set<String> missing = new TreeSet<>(others);
    missing.add(design);
    missing.removeAll(all.keySet());
    missing.forEach(each -> all.put(each, new PieceBook.Fared(0, 0)));
    all.putAll(books.pieces().fared(missing, LATEST));
    fared = new Fared(edition, Map.copyOf(all));
    return all.getOrDefault(design, new PieceBook.Fared(0, 0));
  }

  /**
   * The value of a material as these books have it; taking back writes a movement too.
   *
   * @param newestOfAll number of the newest movement of any material: where nothing at all moved
   *     since the last look, no lot has to be asked
   */
  public StockValue of(Books books, String material, Valuation.Method method, long newestOfAll) {
    Known last = known.get(material);
    Known before = last != null && last.method() == method ? last : null;
    if (before != null && before.newestOfAll() == newestOfAll) {
      return before.value();
    }
    long newest =
        before == null || newestOfAll < before.newestOfAll()
            ? books.lots().newestMovement(material)
            : movedSince(books, before.newestOfAll(), newestOfAll)
                .getOrDefault(material, before.newestMovement());
    StockValue value =
        (before == null ? Optional.<StockValue>empty() : next(books, material, before, newest))
            .orElseGet(() -> StockValue.of(books, material, method))
            .withoutIssues();
    known.put(material, new Known(newestOfAll, newest, method, value));
    return value;
  }

  /** Asked once for all the materials of a look: each of them would have to ask all its lots. */
  private Map<String, Long> movedSince(Books books, long after, long newestOfAll) {
    Moved last = moved;
    if (last.after() == after && last.newestOfAll() == newestOfAll) {
      return last.newest();
    }
    Map<String, Long> newest = books.lots().movedSince(after);
    moved = new Moved(after, newestOfAll, newest);
    return newest;
  }

  /** What was known, with what moved since; empty where that does not tell it. */
  private static Optional<StockValue> next(
      Books books, String material, Known before, long newest) {
    if (before.newestMovement() == newest) {
      return Optional.of(before.value());
    }
    return before.newestMovement() < newest
        ? before.value().continued(books, material, before.newestMovement())
        : Optional.empty();
  }
}
