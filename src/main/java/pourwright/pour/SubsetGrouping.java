package pourwright.pour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.OutOfRange;

/**
 * Grouping without a solver: exact by going through all subsets where a melt has at most {@value
 * #EXACT_MOST} candles, by best fit in falling order above, with a bound that says how far from the
 * fewest it can be at most.
 *
 * <p>Source of best fit decreasing and its bound: Johnson, Demers, Ullman, Garey and Graham, SIAM
 * J. Comput. 3 (1974) 299-325.
 */
public final class SubsetGrouping implements PourGrouping {
  private static final int EXACT_MOST = 13;

  @Override
  public Grouping group(List<ToFill> candles, List<Pitcher> pitchers) {
    if (pitchers.isEmpty()) {
      throw new OutOfRange("pitchers", "there is no pitcher", "give at least one");
    }
    List<Pitcher> bySize =
        pitchers.stream().sorted(Comparator.comparingDouble(Pitcher::usableG)).toList();
    Pitcher largest = bySize.get(bySize.size() - 1);
    Map<String, List<ToFill>> melts = new LinkedHashMap<>();
    for (ToFill candle : candles) {
      if (candle.grams() > largest.usableG()) {
        throw new OutOfRange(
            "grams",
            candle.id() + " needs " + candle.grams() + " g and no pitcher holds that",
            "take a larger pitcher");
      }
      melts.computeIfAbsent(candle.melt(), m -> new ArrayList<>()).add(candle);
    }
    List<Pour> pours = new ArrayList<>();
    int atLeast = 0;
    for (List<ToFill> melt : melts.values()) {
      Grouping one =
          melt.size() <= EXACT_MOST ? exact(melt, bySize) : bestFit(melt, bySize, largest);
      pours.addAll(one.pours());
      atLeast += one.atLeast();
    }
    return new Grouping(pours, atLeast);
  }

  /** Cost of a set of pours: pours first, then residue in grams. */
  private record Best(int pours, double residueG, int last) {}

  private static Grouping exact(List<ToFill> melt, List<Pitcher> bySize) {
    int n = melt.size();
    Pour[] pour = new Pour[1 << n];
    for (int set = 1; set < pour.length; set++) {
      pour[set] = pourOf(members(melt, set), bySize);
    }
    Best[] best = new Best[1 << n];
    best[0] = new Best(0, 0, 0);
    for (int set = 1; set < best.length; set++) {
      int first = Integer.lowestOneBit(set);
      int rest = set ^ first;
      for (int with = rest; ; with = (with - 1) & rest) {
        Pour p = pour[with | first];
        if (p != null) {
          Best before = best[rest ^ with];
          Best now =
              new Best(before.pours + 1, before.residueG + p.pitcher().residueG(), with | first);
          if (best[set] == null || better(now, best[set])) {
            best[set] = now;
          }
        }
        if (with == 0) {
          break;
        }
      }
    }
    List<Pour> pours = new ArrayList<>();
    for (int set = best.length - 1; set > 0; set ^= best[set].last) {
      pours.add(pour[best[set].last]);
    }
    return new Grouping(pours, pours.size());
  }

  private static boolean better(Best a, Best b) {
    return a.pours < b.pours || (a.pours == b.pours && a.residueG < b.residueG - 1e-9);
  }

  private static List<ToFill> members(List<ToFill> melt, int set) {
    List<ToFill> in = new ArrayList<>();
    for (int i = 0; i < melt.size(); i++) {
      if ((set >> i & 1) == 1) {
        in.add(melt.get(i));
      }
    }
    return in;
  }

  /**
   * The candles in the smallest pitcher with the least residue, null when they do not go together.
   */
  private static @Nullable Pour pourOf(List<ToFill> candles, List<Pitcher> bySize) {
    double grams = candles.stream().mapToDouble(ToFill::grams).sum();
    double from = candles.stream().mapToDouble(ToFill::pourFromC).max().orElse(0);
    double to = candles.stream().mapToDouble(ToFill::pourToC).min().orElse(0);
    if (from > to) {
      return null;
    }
    return bySize.stream()
        .filter(p -> grams <= p.usableG() + 1e-9)
        .min(Comparator.comparingDouble(Pitcher::residueG))
        .map(p -> new Pour(p, candles, from, to))
        .orElse(null);
  }

  private static Grouping bestFit(List<ToFill> melt, List<Pitcher> bySize, Pitcher largest) {
    List<ToFill> falling =
        melt.stream().sorted(Comparator.comparingDouble(ToFill::grams).reversed()).toList();
    List<List<ToFill>> bins = new ArrayList<>();
    for (ToFill candle : falling) {
      List<ToFill> fullest = null;
      double most = -1;
      for (List<ToFill> bin : bins) {
        List<ToFill> with = new ArrayList<>(bin);
        with.add(candle);
        double held = bin.stream().mapToDouble(ToFill::grams).sum();
        if (held > most && pourOf(with, bySize) != null) {
          most = held;
          fullest = bin;
        }
      }
      if (fullest == null) {
        fullest = new ArrayList<>();
        bins.add(fullest);
      }
      fullest.add(candle);
    }
    List<Pour> pours = new ArrayList<>();
    for (List<ToFill> bin : bins) {
      Pour pour = pourOf(bin, bySize);
      if (pour != null) {
        pours.add(pour);
      }
    }
    return new Grouping(pours, atLeast(melt, largest.usableG()));
  }

  /** Lower bound of Martello and Toth: large ones stand alone, the rest by mass. */
  private static int atLeast(List<ToFill> melt, double capacity) {
    int best = (int) Math.ceil(melt.stream().mapToDouble(ToFill::grams).sum() / capacity - 1e-9);
    for (ToFill pivot : melt) {
      double k = pivot.grams();
      if (k <= capacity / 2) {
        long alone = melt.stream().filter(c -> c.grams() > capacity - k).count();
        double half = 0;
        long halves = 0;
        double small = 0;
        for (ToFill c : melt) {
          if (c.grams() > capacity / 2 && c.grams() <= capacity - k) {
            halves++;
            half += c.grams();
          } else if (c.grams() <= capacity / 2 && c.grams() >= k) {
            small += c.grams();
          }
        }
        double over = (small - (halves * capacity - half)) / capacity;
        best = Math.max(best, (int) (alone + halves + Math.max(0, Math.ceil(over - 1e-9))));
      }
    }
    return best;
  }
}
