package pourwright.pour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import pourwright.pour.PourGrouping.Pour;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * A day's pours put into charges of the melter and into an order: pours of one wax share a charge
 * as far as it holds them, fewest charges first; then pours of one scent family follow each other,
 * so that a pitcher is washed seldom. Maths: docs/models/pour.md 7.
 *
 * @param charges melts in their order
 * @param chargesAtLeast no packing has fewer charges
 * @param washes how often a pitcher is washed, once more at the end of the day
 * @param washesAtLeast no order has fewer: each pitcher once for each family that it carried
 */
public record MeltDay(List<Charge> charges, int chargesAtLeast, int washes, int washesAtLeast) {
  /** Most pours of one wax that are packed exactly. */
  private static final int EXACT_MOST = 14;

  /** Most charges of which every order is tried. */
  private static final int ORDERS_MOST = 7;

  /** One filling of the melter, and the pours from it in their order. */
  public record Charge(String wax, List<Job> jobs) {
    /** Copies. */
    public Charge {
      jobs = List.copyOf(jobs);
    }

    /** Grams of wax in it. */
    public double waxG() {
      return jobs.stream().mapToDouble(Job::waxG).sum();
    }
  }

  /**
   * A pour with what it is made of.
   *
   * @param wax code of the wax blend: only equal ones share a charge
   * @param family scent family: a pitcher is washed between two
   * @param waxG wax in it, fragrance left out, in grams
   */
  public record Job(Pour pour, String wax, String family, double waxG) {
    /** Checks the mass. */
    public Job {
      Check.positive("wax_g", waxG);
    }
  }

  /** Copies. */
  public MeltDay {
    charges = List.copyOf(charges);
  }

  /**
   * Packs and orders.
   *
   * @param melterG wax that the melter holds, in grams
   * @throws OutOfRange when one pour is more than the melter holds
   */
  public static MeltDay of(List<Job> jobs, double melterG) {
    Check.positive("melter_g", melterG);
    Map<String, List<Job>> byWax = new LinkedHashMap<>();
    for (Job job : jobs) {
      if (job.waxG() > melterG) {
        throw new OutOfRange(
            "melter_g",
            String.format(
                java.util.Locale.ROOT,
                "a pour of %.0f g of wax is more than the melter holds",
                job.waxG()),
            "take a larger melter or a smaller pitcher");
      }
      byWax.computeIfAbsent(job.wax(), w -> new ArrayList<>()).add(job);
    }
    List<Charge> charges = new ArrayList<>();
    int atLeast = 0;
    for (Map.Entry<String, List<Job>> wax : byWax.entrySet()) {
      List<Job> sorted = new ArrayList<>(wax.getValue());
      sorted.sort(Comparator.comparing(Job::family).thenComparing(j -> -j.waxG()));
      boolean exact = sorted.size() <= EXACT_MOST;
      List<List<Job>> packed = exact ? exact(sorted, melterG) : firstFit(sorted, melterG);
      packed.forEach(p -> charges.add(new Charge(wax.getKey(), p)));
      double sum = sorted.stream().mapToDouble(Job::waxG).sum();
      atLeast += exact ? packed.size() : (int) Math.ceil(sum / melterG - 1e-9);
    }
    List<Charge> ordered = ordered(charges);
    return new MeltDay(ordered, atLeast, washes(ordered), families(jobs));
  }

  /** True when it is proved that no packing has fewer charges. */
  public boolean isProven() {
    return charges.size() == chargesAtLeast;
  }

  private static List<List<Job>> exact(List<Job> jobs, double melterG) {
    int n = jobs.size();
    int[] fewest = new int[1 << n];
    double[] last = new double[1 << n];
    int[] added = new int[1 << n];
    for (int set = 1; set < fewest.length; set++) {
      fewest[set] = Integer.MAX_VALUE;
      for (int i = 0; i < n; i++) {
        if ((set & 1 << i) == 0) {
          continue;
        }
        int before = set & ~(1 << i);
        double grams = jobs.get(i).waxG();
        boolean opens = before == 0 || last[before] + grams > melterG + 1e-9;
        int charges = fewest[before] + (opens ? 1 : 0);
        double inLast = opens ? grams : last[before] + grams;
        if (charges < fewest[set] || (charges == fewest[set] && inLast < last[set])) {
          fewest[set] = charges;
          last[set] = inLast;
          added[set] = i;
        }
      }
    }
    List<Job> order = new ArrayList<>();
    for (int set = fewest.length - 1; set != 0; set &= ~(1 << added[set])) {
      order.add(0, jobs.get(added[set]));
    }
    return cut(order, melterG);
  }

  private static List<List<Job>> cut(List<Job> order, double melterG) {
    List<List<Job>> packed = new ArrayList<>();
    double left = 0;
    for (Job job : order) {
      if (packed.isEmpty() || job.waxG() > left + 1e-9) {
        packed.add(new ArrayList<>());
        left = melterG;
      }
      packed.get(packed.size() - 1).add(job);
      left -= job.waxG();
    }
    return packed;
  }

  private static List<List<Job>> firstFit(List<Job> jobs, double melterG) {
    List<Job> falling = new ArrayList<>(jobs);
    falling.sort(Comparator.comparingDouble(Job::waxG).reversed());
    List<List<Job>> packed = new ArrayList<>();
    for (Job job : falling) {
      List<Job> fits =
          packed.stream()
              .filter(p -> p.stream().mapToDouble(Job::waxG).sum() + job.waxG() <= melterG + 1e-9)
              .findFirst()
              .orElseGet(ArrayList::new);
      if (fits.isEmpty()) {
        packed.add(fits);
      }
      fits.add(job);
    }
    return packed;
  }

  private static List<Charge> ordered(List<Charge> charges) {
    List<Charge> sorted = new ArrayList<>();
    charges.forEach(c -> sorted.add(new Charge(c.wax(), byFamily(c.jobs(), ""))));
    sorted.sort(Comparator.comparing(c -> c.jobs().get(0).family()));
    List<Charge> best = chained(sorted);
    if (sorted.size() <= ORDERS_MOST) {
      for (List<Charge> order : permutations(sorted)) {
        List<Charge> chained = chained(order);
        best = washes(chained) < washes(best) ? chained : best;
      }
    }
    return best;
  }

  /** Each charge begins with the family that the one before ended with, where it has it. */
  private static List<Charge> chained(List<Charge> order) {
    List<Charge> chained = new ArrayList<>();
    String last = "";
    for (int i = 0; i < order.size(); i++) {
      List<Job> jobs = byFamily(order.get(i).jobs(), last);
      if (i + 1 < order.size()) {
        jobs = sharedLast(jobs, order.get(i + 1), last);
      }
      chained.add(new Charge(order.get(i).wax(), jobs));
      last = jobs.get(jobs.size() - 1).family();
    }
    return chained;
  }

  private static List<Job> byFamily(List<Job> jobs, String first) {
    List<Job> sorted = new ArrayList<>(jobs);
    sorted.sort(
        Comparator.comparing((Job j) -> !j.family().equals(first)).thenComparing(Job::family));
    return sorted;
  }

  private static List<Job> sharedLast(List<Job> jobs, Charge next, String first) {
    for (Job job : jobs) {
      String family = job.family();
      boolean shared = next.jobs().stream().anyMatch(j -> j.family().equals(family));
      if (shared && !family.equals(first)) {
        List<Job> sorted = new ArrayList<>(jobs);
        sorted.sort(Comparator.comparing(j -> j.family().equals(family)));
        return sorted;
      }
    }
    return jobs;
  }

  private static List<List<Charge>> permutations(List<Charge> charges) {
    if (charges.size() <= 1) {
      return List.of(charges);
    }
    List<List<Charge>> all = new ArrayList<>();
    for (int i = 0; i < charges.size(); i++) {
      List<Charge> rest = new ArrayList<>(charges);
      Charge first = rest.remove(i);
      for (List<Charge> tail : permutations(rest)) {
        List<Charge> one = new ArrayList<>(List.of(first));
        one.addAll(tail);
        all.add(one);
      }
    }
    return all;
  }

  private static int washes(List<Charge> charges) {
    Map<String, String> carried = new HashMap<>();
    int washes = 0;
    for (Charge charge : charges) {
      for (Job job : charge.jobs()) {
        String before = carried.put(job.pour().pitcher().name(), job.family());
        washes += before != null && !before.equals(job.family()) ? 1 : 0;
      }
    }
    return washes + carried.size();
  }

  private static int families(List<Job> jobs) {
    Set<String> pairs = new TreeSet<>();
    jobs.forEach(j -> pairs.add(j.pour().pitcher().name() + "\n" + j.family()));
    return pairs.size();
  }
}
