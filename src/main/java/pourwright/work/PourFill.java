package pourwright.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pourwright.batch.PieceState;
import pourwright.card.ResolvedCandle;
import pourwright.pour.Fill;
import pourwright.quantity.Origin;
import pourwright.quantity.Sourced;

/**
 * How much goes into one candle and how high it stands: by the drawing, and once a few of its
 * candles were weighed empty and full, by those.
 *
 * @param fill lines and masses by the drawing
 * @param drawn net mass by the drawing (or the cavity's measure), in g
 * @param weighedG net masses that were weighed, newest first, in g
 */
public record PourFill(Fill fill, Sourced drawn, List<Double> weighedG) {
  /** Quantity of an empty vessel with its wick, in g. */
  public static final String EMPTY_G = "wicked_empty_g";

  /** Quantity of the same vessel once filled, in g. */
  public static final String FILLED_G = "filled_g";

  /** Quantity of what it holds, in g. */
  public static final String NET_G = "net_g";

  /** From so many weighed candles on they count instead of the drawing. House. */
  public static final int ENOUGH = 3;

  private static final int LOOKED_AT = 120;

  /** Copies. */
  public PourFill {
    weighedG = List.copyOf(weighedG);
  }

  /**
   * The fill of a candle.
   *
   * @param topUpFraction share held back for a second pour
   * @throws pourwright.quantity.OutOfRange when the hot wax would stand above the rim
   */
  public static PourFill of(Books books, ResolvedCandle candle, double topUpFraction) {
    return of(weighed(books), candle, topUpFraction);
  }

  /** The same with what was weighed already looked up, for many candles. */
  static PourFill of(
      Map<String, List<Double>> weighed, ResolvedCandle candle, double topUpFraction) {
    Fill fill =
        Fill.of(
            candle.vessel().cavity().solid(),
            candle.design().headspaceMm(),
            candle.pour().densities(),
            candle.wickMl(),
            topUpFraction);
    return new PourFill(
        fill, candle.netG(), weighed.getOrDefault(candle.design().code(), List.of()));
  }

  /** Net masses of the newest weighed candles by design. */
  static Map<String, List<Double>> weighed(Books books) {
    Map<String, List<Double>> found = new HashMap<>();
    for (Reading reading : books.readings().list(NET_G, null, LOOKED_AT).items()) {
      if (reading.subject().kind() == Subject.Kind.PIECE) {
        books
            .pieces()
            .piece(reading.subject().number())
            .flatMap(p -> PieceState.candleOf(p.state()))
            .ifPresent(c -> found.computeIfAbsent(c, k -> new ArrayList<>()).add(reading.value()));
      }
    }
    return found;
  }

  /** Net mass of one candle, in g: measured where enough were weighed, else drawn. */
  public Sourced netG() {
    if (weighedG.size() < ENOUGH) {
      return drawn;
    }
    double[] mean = Fill.measured(weighedG);
    return new Sourced(mean[0], mean[1] / mean[0], Origin.MEASURED_HERE);
  }
}
