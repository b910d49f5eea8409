package pourwright.pour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import pourwright.pour.Dose.LoadOf;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * Several waxes, several fragrances, dye and additives, by weight. Three limits are looked at apart
 * from each other: each fragrance's own from its certificate, what the wax holds, and the legal
 * one; the one that binds is named. Maths: docs/models/pour.md 2.
 *
 * @param waxes waxes in parts
 * @param fragrances fragrances in parts; empty for none
 * @param extras dye and additives
 * @param load fragrance load
 * @param of what the load is a share of
 * @param legalMaxOfTotal legal limit for all fragrance on the total, beside what is written down of
 *     each; null where none is known
 */
public record Blend(
    List<Wax> waxes,
    List<Fragrance> fragrances,
    List<Extra> extras,
    double load,
    LoadOf of,
    @Nullable Double legalMaxOfTotal) {

  /**
   * A wax.
   *
   * @param parts parts by mass
   * @param holdsOfTotal most fragrance it holds, on the total
   */
  public record Wax(String name, double parts, double holdsOfTotal) {
    /** Checks the ranges. */
    public Wax {
      Check.positive("parts", parts);
      Check.fraction("fragrance_held_of_total_fraction", holdsOfTotal);
    }
  }

  /**
   * A fragrance.
   *
   * @param parts parts by mass
   * @param maxOfTotal its own most, on the total, from its certificate; 1 where it is not limited
   * @param flashPointC its flash point
   * @param legalOfTotal its legal or standard limit, on the total; null where none is written down
   */
  public record Fragrance(
      String name,
      double parts,
      double maxOfTotal,
      double flashPointC,
      @Nullable Double legalOfTotal) {
    /** A fragrance whose legal limit is not written down. */
    public Fragrance(String name, double parts, double maxOfTotal, double flashPointC) {
      this(name, parts, maxOfTotal, flashPointC, null);
    }

    /** Checks the ranges. */
    public Fragrance {
      Check.positive("parts", parts);
      Check.fraction("fragrance_max_of_total_fraction", maxOfTotal);
      if (legalOfTotal != null) {
        Check.fraction("fragrance_legal_max_of_total_fraction", legalOfTotal);
      }
      Check.finite("flash_point_c", flashPointC);
    }
  }

  /** Dye or an additive: mass to a mass of 1 of wax. */
  public record Extra(String name, double toWax) {
    /** Checks the range. */
    public Extra {
      Check.between("to_wax", toWax, 0, 1);
    }
  }

  /** One material and how much of it, in grams. */
  public record Line(String name, double grams) {}

  /** A limit on the load on the total, who sets it, and whether the blend is above it. */
  public record Limit(String whose, double maxLoadOfTotal, boolean exceeded) {}

  /** Copies the lists, checks that there is wax and that load and fragrances go together. */
  public Blend {
    waxes = List.copyOf(waxes);
    fragrances = List.copyOf(fragrances);
    extras = List.copyOf(extras);
    if (waxes.isEmpty()) {
      throw new OutOfRange("waxes", "a blend without wax", "name at least one wax");
    }
    Dose.loadOfTotal(load, of);
    if (load > 0 && fragrances.isEmpty()) {
      throw new OutOfRange("fragrances", "a load and no fragrance", "name one, or set load 0");
    }
  }

  private double extrasToWax() {
    return extras.stream().mapToDouble(Extra::toWax).sum();
  }

  /** Share of fragrance in everything that is poured, dye and additives included. */
  public double loadOfAll() {
    Dose dose = Dose.ofWax(1, load, of);
    return dose.fragranceG() / (1 + extrasToWax() + dose.fragranceG());
  }

  /** Everything to weigh for a pitcher of so many grams in all. */
  public List<Line> weigh(double totalG) {
    Check.positive("total_g", totalG);
    Dose perWax = Dose.ofWax(1, load, of);
    double waxG = totalG / (1 + extrasToWax() + perWax.fragranceG());
    List<Line> lines = new ArrayList<>();
    double waxParts = waxes.stream().mapToDouble(Wax::parts).sum();
    waxes.forEach(w -> lines.add(new Line(w.name, waxG * w.parts / waxParts)));
    extras.forEach(e -> lines.add(new Line(e.name, waxG * e.toWax)));
    double parts = fragranceParts();
    double fragranceG = waxG * perWax.fragranceG();
    fragrances.forEach(f -> lines.add(new Line(f.name, fragranceG * f.parts / parts)));
    return lines;
  }

  private double fragranceParts() {
    return fragrances.stream().mapToDouble(Fragrance::parts).sum();
  }

  /** All limits on the load, the one that binds first. */
  public List<Limit> limits() {
    double now = loadOfAll();
    List<Limit> limits = new ArrayList<>();
    double parts = fragranceParts();
    for (Fragrance f : fragrances) {
      limits.add(limit("the certificate of " + f.name, f.maxOfTotal * parts / f.parts, now));
      Double legal = f.legalOfTotal;
      if (legal != null) {
        limits.add(limit("the legal limit of " + f.name, legal * parts / f.parts, now));
      }
    }
    double waxParts = waxes.stream().mapToDouble(Wax::parts).sum();
    double holds = waxes.stream().mapToDouble(w -> w.parts * w.holdsOfTotal).sum() / waxParts;
    limits.add(limit("what the wax holds", holds, now));
    if (legalMaxOfTotal != null) {
      limits.add(limit("the legal limit", legalMaxOfTotal, now));
    }
    limits.sort(Comparator.comparingDouble(Limit::maxLoadOfTotal));
    return limits;
  }

  private static Limit limit(String whose, double max, double now) {
    return new Limit(whose, Math.min(1, max), now > max * (1 + 1e-12));
  }

  /** Sentences about every limit that is exceeded. */
  public List<String> warnings() {
    return limits().stream()
        .filter(Limit::exceeded)
        .map(
            l ->
                String.format(
                    Locale.ROOT,
                    "A load of %.2f %% on the total is above %.2f %%: %s.",
                    100 * loadOfAll(),
                    100 * l.maxLoadOfTotal(),
                    l.whose()))
        .toList();
  }

  /** The lowest flash point in the pot, null without fragrance. */
  public @Nullable Double lowestFlashPointC() {
    return fragrances.isEmpty()
        ? null
        : (Double) fragrances.stream().mapToDouble(Fragrance::flashPointC).min().orElse(Double.NaN);
  }
}
