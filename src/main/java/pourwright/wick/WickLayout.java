package pourwright.wick;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Outline;
import pourwright.shape.Point;

/**
 * Where wicks stand so that every point of the wax surface is as near to one as can be: a covering
 * of the outline by equal discs, distances measured inside the outline. The clearances limit where
 * wicks stand, never what is covered. Maths and sources: docs/models/wick.md.
 *
 * @param positions about the outline's centroid, x along its longer side, in mm
 * @param coveringRadiusMm the farthest that any point of the surface is from its nearest wick, in
 *     mm
 * @param turnedDeg 0, or −90 when the outline was taller than long and has been turned
 * @param mirrorAxes how many mirror axes of the outline the positions keep (at most 4 are looked
 *     at)
 */
public record WickLayout(
    List<Point> positions, double coveringRadiusMm, int turnedDeg, int mirrorAxes) {
  /** More wicks than one vessel is laid out for. */
  public static final int MOST = 24;

  /** Up to so many wicks every corner of the search is looked into; above, time rules. */
  private static final int FEW = 8;

  /** So many searches are followed to their end. */
  private static final int ENDS = 6;

  private static final double COARSE = 6e-4;
  private static final double FINE = 1e-6;

  /** Copies the list. */
  public WickLayout {
    positions = List.copyOf(positions);
  }

  /**
   * What is kept clear.
   *
   * @param wallMm from any wick to the wall, in mm, 0 or more (house: 15)
   * @param spacingMm from wick to wick, in mm, 0 or more (house: 30-50)
   * @param symmetric true to keep at least one mirror axis of the outline, where it has one
   */
  public record Clearances(double wallMm, double spacingMm, boolean symmetric) {
    /** Checks the ranges. */
    public Clearances {
      Check.notNegative("wall_clearance_mm", wallMm);
      Check.notNegative("spacing_mm", spacingMm);
    }
  }

  /**
   * The best layout of so many wicks.
   *
   * @param count from 1 to {@value #MOST}
   * @throws OutOfRange when no layout keeps the clearances
   */
  public static WickLayout of(Outline outline, Clearances clearances, int count) {
    Check.between("count", count, 1, MOST);
    WickLayout found = new Search(outline, clearances).best(count);
    if (found == null) {
      throw noWickFits(clearances, Counted.of(count, "wick does not fit", "wicks do not fit"));
    }
    return found;
  }

  /**
   * The fewest wicks whose melt pools of a given radius cover the whole surface.
   *
   * @param meltRadiusMm how far one wick's pool reaches, in mm
   * @throws OutOfRange when no number of wicks does it within the clearances
   */
  public static WickLayout fewest(Outline outline, Clearances clearances, double meltRadiusMm) {
    Check.positive("melt_radius_mm", meltRadiusMm);
    Search search = new Search(outline, clearances);
    double least = outline.areaMm2() / (Math.PI * meltRadiusMm * meltRadiusMm);
    if (least > MOST) {
      throw new OutOfRange(
          "melt_radius_mm",
          "no wick fits: pools of " + meltRadiusMm + " mm would need more than " + MOST + " wicks",
          "choose a wick whose pool reaches farther");
    }
    boolean any = false;
    for (int count = Math.max(1, (int) Math.ceil(least - 1e-9)); count <= MOST; count++) {
      WickLayout found = search.best(count);
      if (found == null) {
        throw any
            ? noWickFits(clearances, "pools of " + meltRadiusMm + " mm leave wax unmelted")
            : noWickFits(
                clearances,
                Counted.of(
                    count,
                    "wick would be needed and does not fit",
                    "wicks would be needed and do not fit"));
      }
      any = true;
      if (found.coveringRadiusMm <= meltRadiusMm) {
        return found;
      }
    }
    throw noWickFits(clearances, "even " + MOST + " wicks leave wax unmelted");
  }

  /**
   * Wicks that stand where the maker wants them: how well they cover.
   *
   * @param places from the outline's centroid, in the outline's own axes
   * @throws OutOfRange when one stands outside the outline
   */
  public static WickLayout at(Outline outline, List<Point> places) {
    for (Point p : places) {
      if (!outline.contains(p.xMm(), p.yMm())) {
        throw new OutOfRange(
            "positions_mm",
            String.format(
                Locale.ROOT, "a wick at %.1f, %.1f mm stands in the wall", p.xMm(), p.yMm()),
            "give x and y from the middle of the cavity");
      }
    }
    return new Search(outline, new Clearances(0, 0, true)).standing(places);
  }

  /** The positions in the outline's own axes, as a card keeps them. */
  public List<Point> inOwnAxes() {
    return turnedDeg == 0
        ? positions
        : positions.stream().map(p -> new Point(-p.yMm(), p.xMm())).toList();
  }

  private static OutOfRange noWickFits(Clearances clearances, String why) {
    return new OutOfRange(
        clearances.spacingMm() > 0 ? "spacing_mm" : "wall_clearance_mm",
        "no wick fits: "
            + why
            + " with "
            + clearances.wallMm()
            + " mm to the wall and "
            + clearances.spacingMm()
            + " mm between flames",
        "choose another vessel or wick; a tighter layout is not offered");
  }

  /** One outline's searches. */
  private static final class Search {
    private final Clearances clearances;
    private final Field coarse;
    private final Field fine;
    private final Descent descent;
    private final Starts starts;
    private final List<Double> axes;
    private final List<Double> searched;

    Search(Outline outline, Clearances clearances) {
      this.clearances = clearances;
      this.coarse = new Field(outline, COARSE);
      this.fine = new Field(outline, FINE);
      double margin = 1e-6;
      this.descent =
          new Descent(
              coarse,
              new Cover(coarse, 0.05),
              clearances.wallMm() / coarse.reachMm + (clearances.wallMm() > 0 ? margin : 0),
              clearances.spacingMm() / coarse.reachMm + (clearances.spacingMm() > 0 ? margin : 0));
      this.starts = new Starts(coarse);
      this.axes = coarse.mirrorAxes();
      this.searched = coarse.unlikeAxes(axes);
    }

    @Nullable WickLayout best(int count) {
      boolean few = count <= FEW;
      List<Descent.Stand> stands = new ArrayList<>();
      for (double axis : searched) {
        for (int pairs = count / 2; pairs >= 0; pairs--) {
          int onAxis = count - 2 * pairs;
          Moves moves = Moves.across(axis, onAxis, pairs);
          starts.across(axis, onAxis, pairs, few ? 8 : 2).forEach(z -> stands.add(begun(moves, z)));
        }
      }
      List<Descent.Stand> even = carriedOn(stands);
      if (clearances.symmetric() && !axes.isEmpty()) {
        return chosen(even);
      }
      Moves moves = Moves.free(count);
      List<Descent.Stand> free = new ArrayList<>();
      starts.free(count, few ? 24 : 8).forEach(z -> free.add(begun(moves, z)));
      even.forEach(stand -> free.add(begun(moves, stand.centres())));
      return chosen(carriedOn(free));
    }

    private Descent.Stand begun(Moves moves, double[] z) {
      return descent.descend(descent.stand(moves, z, 0.15), 6);
    }

    /** The better third goes on a little, the best of those to the end. */
    private List<Descent.Stand> carriedOn(List<Descent.Stand> stands) {
      return best(best(stands, Math.max(ENDS, stands.size() / 3), 8), ENDS, 60);
    }

    private List<Descent.Stand> best(List<Descent.Stand> stands, int most, int steps) {
      return stands.stream()
          .sorted(Comparator.comparingDouble(Descent.Stand::merit))
          .limit(most)
          .map(stand -> descent.descend(stand, steps))
          .toList();
    }

    private @Nullable WickLayout chosen(List<Descent.Stand> stands) {
      List<WickLayout> layouts = new ArrayList<>();
      for (Descent.Stand stand : stands) {
        WickLayout layout = finished(stand);
        if (layout != null) {
          layouts.add(layout);
        }
      }
      return mostEven(layouts);
    }

    /** The layout on the true outline, or null when it breaks a clearance. */
    private @Nullable WickLayout finished(Descent.Stand stand) {
      double[] centres = stand.centres();
      double mm = coarse.reachMm;
      if (descent.broken(centres) * mm > 1e-3 + 1e-6 * mm) {
        return null;
      }
      List<Point> positions = new ArrayList<>();
      for (int i = 0; i < centres.length; i += 2) {
        positions.add(new Point(clean(centres[i] * mm), clean(centres[i + 1] * mm)));
      }
      return new WickLayout(positions, reachMm(centres), coarse.turnedDeg, axesKept(centres));
    }

    /** How far from its nearest wick any point of the true outline is, in mm. */
    private double reachMm(double[] centres) {
      Cover cover = new Cover(fine, 0.02);
      double[] onFine = centres.clone();
      for (int i = 0; i < onFine.length; i++) {
        onFine[i] *= coarse.reachMm / fine.reachMm;
      }
      cover.place(onFine);
      return (cover.radius() + 2 * FINE) * fine.reachMm;
    }

    /** A layout of given places. */
    WickLayout standing(List<Point> places) {
      boolean turned = coarse.turnedDeg != 0;
      List<Point> positions =
          places.stream().map(p -> turned ? new Point(p.yMm(), -p.xMm()) : p).toList();
      double[] centres = new double[2 * positions.size()];
      for (int i = 0; i < positions.size(); i++) {
        centres[2 * i] = positions.get(i).xMm() / coarse.reachMm;
        centres[2 * i + 1] = positions.get(i).yMm() / coarse.reachMm;
      }
      return new WickLayout(positions, reachMm(centres), coarse.turnedDeg, axesKept(centres));
    }

    private static double clean(double mm) {
      return Math.abs(mm) < 1e-6 ? 0 : mm;
    }

    private int axesKept(double[] centres) {
      int kept = 0;
      for (double axis : axes) {
        kept += keeps(axis, centres) ? 1 : 0;
      }
      return kept;
    }

    private static boolean keeps(double axis, double[] centres) {
      double c = Math.cos(2 * axis);
      double s = Math.sin(2 * axis);
      for (int i = 0; i < centres.length; i += 2) {
        double x = c * centres[i] + s * centres[i + 1];
        double y = s * centres[i] - c * centres[i + 1];
        boolean met = false;
        for (int j = 0; j < centres.length; j += 2) {
          met |= Math.hypot(centres[j] - x, centres[j + 1] - y) < 1e-3;
        }
        if (!met) {
          return false;
        }
      }
      return true;
    }

    /** The smallest radius; among those within 0.5 % of it, the most symmetric. */
    private @Nullable WickLayout mostEven(List<WickLayout> layouts) {
      double least =
          layouts.stream().mapToDouble(WickLayout::coveringRadiusMm).min().orElse(Double.NaN);
      double limit = clearances.symmetric() ? least * 1.005 : least;
      return layouts.stream()
          .filter(l -> l.coveringRadiusMm() <= limit)
          .max(
              Comparator.comparingInt(WickLayout::mirrorAxes)
                  .thenComparing(l -> -l.coveringRadiusMm()))
          .orElse(null);
    }
  }
}
