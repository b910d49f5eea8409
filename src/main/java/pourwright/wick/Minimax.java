package pourwright.wick;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The small linear program of one step: least {@code max(value + slope·x) + penalty·max(0, value +
 * slope·x)} for x in a box, the first maximum over far places, the second over clearances.
 *
 * <p>Solved on its dual, which has a row for each freedom and two more whatever the number of
 * places, and a first corner that is known at once: the simplex method of Dantzig, with Bland's
 * rule (Mathematics of Operations Research 2 (1977) 103-107) after many steps so that it ends.
 */
final class Minimax {
  private static final double TINY = 1e-11;

  private final int freedoms;
  private final double penalty;
  private final List<double[]> places = new ArrayList<>();
  private final List<double[]> clearances = new ArrayList<>();

  Minimax(int freedoms, double penalty) {
    this.freedoms = freedoms;
    this.penalty = penalty;
  }

  /** A far place: its distance and how it changes with each freedom. */
  void place(double value, double[] slope) {
    places.add(joined(value, slope));
  }

  /** A clearance: how far it is broken (below 0 when kept) and how that changes. */
  void clearance(double value, double[] slope) {
    clearances.add(joined(value, slope));
  }

  private static double[] joined(double value, double[] slope) {
    double[] all = Arrays.copyOf(slope, slope.length + 1);
    all[slope.length] = value;
    return all;
  }

  /** The best x, each within ± box; empty when there is no far place. */
  double[] best(double box) {
    if (places.isEmpty()) {
      return new double[0];
    }
    Tableau tableau = new Tableau(box);
    tableau.solve();
    double[] x = new double[freedoms];
    for (int j = 0; j < freedoms; j++) {
      x[j] = Math.max(-box, Math.min(box, tableau.price(j, box)));
    }
    return x;
  }

  /**
   * Columns: far places, clearances, an unused share of the penalty, then a push up and a push down
   * for each freedom; the last is the right side. The last row is what a column would gain.
   */
  private final class Tableau {
    private final int rows = freedoms + 2;
    private final int pushes = places.size() + clearances.size() + 1;
    private final int columns = pushes + 2 * freedoms;
    private final double[][] t = new double[rows + 1][columns + 1];
    private final int[] basic = new int[rows];

    Tableau(double box) {
      for (int i = 0; i < places.size(); i++) {
        column(i, places.get(i), freedoms);
      }
      for (int k = 0; k < clearances.size(); k++) {
        column(places.size() + k, clearances.get(k), freedoms + 1);
      }
      t[freedoms + 1][pushes - 1] = 1;
      for (int j = 0; j < freedoms; j++) {
        t[j][pushes + 2 * j] = 1;
        t[j][pushes + 2 * j + 1] = -1;
        t[rows][pushes + 2 * j] = -box;
        t[rows][pushes + 2 * j + 1] = -box;
      }
      t[freedoms][columns] = 1;
      t[freedoms + 1][columns] = penalty;
      begin();
    }

    private void column(int at, double[] slopes, int unit) {
      for (int j = 0; j < freedoms; j++) {
        t[j][at] = slopes[j];
      }
      t[unit][at] = 1;
      t[rows][at] = slopes[freedoms];
    }

    /** The farthest place alone, held by pushes against its own slope. */
    private void begin() {
      int far = 0;
      for (int i = 1; i < places.size(); i++) {
        far = t[rows][i] > t[rows][far] ? i : far;
      }
      basic[freedoms] = far;
      basic[freedoms + 1] = pushes - 1;
      double[] slopes = places.get(far);
      for (int j = 0; j < freedoms; j++) {
        boolean down = slopes[j] > 0;
        basic[j] = pushes + 2 * j + (down ? 1 : 0);
        if (down) {
          for (int c = 0; c <= columns; c++) {
            t[j][c] = -t[j][c];
          }
        }
      }
      for (int i = 0; i < rows; i++) {
        int r = i == 0 ? freedoms : i <= freedoms ? i - 1 : i;
        clear(r, basic[r]);
      }
    }

    /** Takes a basic column out of every other row. */
    private void clear(int row, int column) {
      double[] by = t[row];
      double at = by[column];
      if (at != 1) {
        for (int c = 0; c <= columns; c++) {
          by[c] /= at;
        }
      }
      for (int r = 0; r <= rows; r++) {
        double factor = t[r][column];
        if (r != row && factor != 0) {
          double[] to = t[r];
          for (int c = 0; c <= columns; c++) {
            to[c] -= factor * by[c];
          }
        }
      }
    }

    void solve() {
      int most = 40 * rows;
      for (int k = 0; k < most; k++) {
        int in = k < most / 2 ? steepest() : first();
        int out = in < 0 ? -1 : leaving(in);
        if (out < 0) {
          return;
        }
        clear(out, in);
        basic[out] = in;
      }
    }

    private int steepest() {
      int best = -1;
      double most = TINY;
      for (int c = 0; c < columns; c++) {
        if (t[rows][c] > most) {
          most = t[rows][c];
          best = c;
        }
      }
      return best;
    }

    private int first() {
      for (int c = 0; c < columns; c++) {
        if (t[rows][c] > TINY) {
          return c;
        }
      }
      return -1;
    }

    private int leaving(int in) {
      int best = -1;
      double least = Double.POSITIVE_INFINITY;
      for (int r = 0; r < rows; r++) {
        if (t[r][in] > 1e-10) {
          double ratio = Math.max(0, t[r][columns]) / t[r][in];
          boolean tied = ratio <= least + 1e-14 && best >= 0;
          if (ratio < least - 1e-14 || (tied && basic[r] < basic[best])) {
            least = Math.min(least, ratio);
            best = r;
          }
        }
      }
      return best;
    }

    /** How far a freedom goes: minus its row's price, read from the gain of a push up. */
    double price(int freedom, double box) {
      return t[rows][pushes + 2 * freedom] + box;
    }
  }
}
