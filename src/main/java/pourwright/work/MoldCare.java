package pourwright.work;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.card.Mold;
import pourwright.cast.MoldLife;

/**
 * Molds one by one: each of a kind carries a number, counts its own casts, and is expected to last
 * as long as those of its kind that wore out.
 */
public final class MoldCare {
  /** Casts that a worn-out mold served, a reading on the mold's card; the note is its number. */
  public static final String RETIRED = "mold_retired_casts";

  /** A mold was filled: its number, a reading on the cast; the note is the code of its card. */
  public static final String FILLED = "mold_number";

  /** A spare was made: its number, a reading on the mold's card. */
  public static final String MADE = "mold_made_number";

  /** House: failed molds from which their own life is told. */
  public static final int FAILED_MIN = 3;

  /** House: share of a life from which a spare is made. */
  public static final double SPARE_FROM = 0.8;

  /** House: days from the rubber to a spare that has given its first good casting. */
  public static final int SPARE_D = 7;

  private static final int PACE_D = 90;
  private static final int PAGE = 1000;
  private static final Pattern NUMBER = Pattern.compile("no\\. (\\d{1,4})");

  private final Books books;
  private final Map<String, Map<Integer, Integer>> recorded = new HashMap<>();
  private final Map<String, Integer> unrecorded = new HashMap<>();
  private final Map<String, Integer> recent = new HashMap<>();
  private final Map<String, Set<Integer>> busy = new HashMap<>();

  /**
   * One mold.
   *
   * @param number written on it
   * @param casts it has served
   * @param busy whether a cast under way has it
   */
  public record Single(int number, int casts, boolean busy) {}

  /**
   * The molds of a card.
   *
   * @param mold the card
   * @param singles those that serve, by number
   * @param served those and the worn-out ones, for the curve of their life
   * @param failed how many wore out
   * @param median casts by which half had failed; null while fewer than {@link #FAILED_MIN} failed
   * @param perDay casts a day of each, over the last 90 days
   */
  public record Kind(
      Mold mold,
      List<Single> singles,
      List<MoldLife.Served> served,
      int failed,
      @Nullable Integer median,
      double perDay) {
    /** Copies. */
    public Kind {
      singles = List.copyOf(singles);
      served = List.copyOf(served);
    }

    /** Casts that one of them is expected to last. */
    public int life() {
      return median == null ? mold.lifeCasts() : median;
    }

    /** The most worn one; null where none is left. */
    public @Nullable Single oldest() {
      return singles.stream().reduce((a, b) -> b.casts() > a.casts() ? b : a).orElse(null);
    }

    /** Days until the most worn one reaches its life at this pace; null where nobody can say. */
    public @Nullable Double daysLeft() {
      Single oldest = oldest();
      return oldest == null || perDay <= 0
          ? null
          : (Double) (Math.max(0, life() - oldest.casts()) / perDay);
    }

    /** Whether a spare has to be begun now to be there in time. */
    public boolean wantsSpare() {
      Single oldest = oldest();
      Double days = daysLeft();
      return oldest == null
          || oldest.casts() >= SPARE_FROM * life()
          || (days != null && days <= SPARE_D);
    }

    /** Those to be filled next: the least worn that stand free. */
    public List<Integer> next(int molds) {
      return singles.stream()
          .filter(s -> !s.busy())
          .sorted((a, b) -> Integer.compare(a.casts(), b.casts()))
          .limit(molds)
          .map(Single::number)
          .toList();
    }
  }

  private MoldCare(Books books) {
    this.books = books;
  }

  /** The molds of all cards. */
  public static List<Kind> all(Books books, Instant now) {
    MoldCare care = new MoldCare(books);
    care.read(now);
    return Drawers.book(books).all(Mold.class).stream().map(care::kind).toList();
  }

  /**
   * Casts that molds last by those that failed, by code; cards of which too few failed are left
   * out, theirs is the card's figure. One statement where nothing failed yet.
   */
  public static Map<String, Integer> lives(Books books) {
    Map<String, Integer> failed = new HashMap<>();
    books.readings().list(RETIRED, null, PAGE).items().stream()
        .map(r -> r.subject().id())
        .forEach(id -> failed.merge(id, 1, Integer::sum));
    if (failed.values().stream().noneMatch(n -> n >= FAILED_MIN)) {
      return Map.of();
    }
    Map<String, Integer> lives = new HashMap<>();
    all(books, Instant.EPOCH).stream()
        .filter(k -> k.median() != null)
        .forEach(k -> lives.put(k.mold().code(), k.life()));
    return lives;
  }

  /** Molds of a kind that a number of pieces takes. */
  public static int molds(Mold mold, int pieces) {
    return (pieces + mold.piecesPerCast() - 1) / mold.piecesPerCast();
  }

  private static List<Reading> retired(Books books, Mold mold) {
    return books.readings().of(Subject.card(Drawers.MOLD, mold.code())).stream()
        .filter(r -> r.quantity().equals(RETIRED))
        .toList();
  }

  private void read(Instant now) {
    Map<Long, Map<String, Integer>> filled = new HashMap<>();
    String after = null;
    do {
      PageOf<Reading> page = books.readings().list(FILLED, after, PAGE);
      for (Reading r : page.items()) {
        filled.computeIfAbsent(r.subject().number(), k -> new HashMap<>());
        count(r, filled);
      }
      after = page.next();
    } while (after != null);
    Instant since = now.minus(Duration.ofDays(PACE_D));
    Map<String, Mold> molds = new HashMap<>();
    Drawers.book(books).all(Mold.class).forEach(m -> molds.put(m.code(), m));
    do {
      PageOf<Batch> page = books.batches().list(BatchKind.CAST, after, PAGE);
      for (Batch batch : page.items()) {
        for (BatchPlan.Makes makes : batch.plan().makes()) {
          Mold mold = molds.get(String.valueOf(makes.mold()));
          if (mold != null && !batch.isRunning()) {
            int fills = molds(mold, makes.count());
            int known = filled.getOrDefault(batch.id(), Map.of()).getOrDefault(mold.code(), 0);
            unrecorded.merge(mold.code(), Math.max(0, fills - known), Integer::sum);
            recent.merge(mold.code(), batch.startedAt().isAfter(since) ? fills : 0, Integer::sum);
          }
        }
      }
      after = page.next();
    } while (after != null);
    running();
  }

  private void count(Reading r, Map<Long, Map<String, Integer>> filled) {
    int number = (int) r.value();
    recorded.computeIfAbsent(r.note(), k -> new HashMap<>()).merge(number, 1, Integer::sum);
    Map<String, Integer> own = filled.get(r.subject().number());
    if (own != null) {
      own.merge(r.note(), 1, Integer::sum);
    }
  }

  private void running() {
    for (Batch batch : books.batches().running()) {
      for (Reading r : books.readings().of(Subject.of(Subject.Kind.BATCH, batch.id()))) {
        if (r.quantity().equals(FILLED)) {
          busy.computeIfAbsent(r.note(), k -> new HashSet<>()).add((int) r.value());
        }
      }
    }
  }

  private Kind kind(Mold mold) {
    List<Reading> retired = retired(books, mold);
    Map<Integer, Integer> own = recorded.getOrDefault(mold.code(), Map.of());
    TreeSet<Integer> alive = alive(mold, retired);
    Set<Integer> made = new HashSet<>();
    books.readings().of(Subject.card(Drawers.MOLD, mold.code())).stream()
        .filter(r -> r.quantity().equals(MADE))
        .forEach(r -> made.add((int) r.value()));
    double gone = 0;
    for (Reading r : retired) {
      gone += Math.max(0, r.value() - own.getOrDefault(number(r), 0));
    }
    long old = alive.stream().filter(n -> !made.contains(n)).count();
    double rest = Math.max(0, unrecorded.getOrDefault(mold.code(), 0) - gone);
    int each = old == 0 ? 0 : (int) (rest / old);
    Map<Integer, Single> singles = new TreeMap<>();
    for (int number : alive) {
      int casts = own.getOrDefault(number, 0) + (made.contains(number) ? 0 : each);
      boolean held = busy.getOrDefault(mold.code(), Set.of()).contains(number);
      singles.put(number, new Single(number, casts, held));
    }
    List<MoldLife.Served> served = new ArrayList<>();
    retired.forEach(r -> served.add(new MoldLife.Served((int) r.value(), true)));
    singles.values().stream()
        .filter(s -> s.casts() > 0)
        .forEach(s -> served.add(new MoldLife.Served(s.casts(), false)));
    Integer median = retired.size() >= FAILED_MIN ? MoldLife.median(served) : null;
    double pace = recent.getOrDefault(mold.code(), 0) / (double) PACE_D;
    return new Kind(
        mold,
        List.copyOf(singles.values()),
        served,
        retired.size(),
        median,
        mold.count() == 0 ? 0 : pace / mold.count());
  }

  /**
   * Numbers run on from the first mold to the latest spare; those of worn-out ones are left out.
   */
  private static TreeSet<Integer> alive(Mold mold, List<Reading> retired) {
    TreeSet<Integer> alive = new TreeSet<>();
    for (int n = 1; n <= mold.count() + retired.size(); n++) {
      alive.add(n);
    }
    int unnamed = 0;
    for (Reading r : retired) {
      unnamed += alive.remove(number(r)) ? 0 : 1;
    }
    for (; unnamed > 0 && !alive.isEmpty(); unnamed--) {
      alive.pollFirst();
    }
    return alive;
  }

  /** The number that a spare of this card gets. */
  public static int nextNumber(Books books, Mold mold) {
    return mold.count() + retired(books, mold).size() + 1;
  }

  private static int number(Reading retired) {
    Matcher number = NUMBER.matcher(retired.note());
    return number.matches() ? Integer.parseInt(number.group(1)) : 0;
  }

  /** The note of a reading on one mold. */
  public static String note(int number) {
    return "no. " + number;
  }
}
