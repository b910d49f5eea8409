package pourwright.wick;

/**
 * Which ways wicks may move together: all freely, or in pairs across a mirror axis with the rest on
 * the axis. Wick coordinates are {@code rows · freedoms}.
 *
 * @param rows for each wick coordinate its weights of the freedoms
 */
record Moves(double[][] rows) {

  /** Every wick by itself. */
  static Moves free(int wicks) {
    double[][] rows = new double[2 * wicks][2 * wicks];
    for (int i = 0; i < rows.length; i++) {
      rows[i][i] = 1;
    }
    return new Moves(rows);
  }

  /** Some wicks on an axis (one freedom each), then pairs across it (two freedoms each). */
  static Moves across(double axis, int onAxis, int pairs) {
    int freedoms = onAxis + 2 * pairs;
    double[][] rows = new double[2 * (onAxis + 2 * pairs)][freedoms];
    double c = Math.cos(axis);
    double s = Math.sin(axis);
    for (int i = 0; i < onAxis; i++) {
      rows[2 * i][i] = c;
      rows[2 * i + 1][i] = s;
    }
    for (int k = 0; k < pairs; k++) {
      int u = onAxis + 2 * k;
      for (int way = 0; way < 2; way++) {
        double sign = way == 0 ? 1 : -1;
        int row = 2 * (onAxis + 2 * k + way);
        rows[row][u] = c;
        rows[row + 1][u] = s;
        rows[row][u + 1] = -sign * s;
        rows[row + 1][u + 1] = sign * c;
      }
    }
    return new Moves(rows);
  }

  int freedoms() {
    return rows[0].length;
  }

  /** Wick coordinates of given freedoms. */
  double[] centres(double[] z) {
    double[] centres = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      for (int j = 0; j < z.length; j++) {
        centres[i] += rows[i][j] * z[j];
      }
    }
    return centres;
  }

  /** A slope by wick coordinates, turned into one by freedoms. */
  double[] pulled(double[] slopes) {
    double[] out = new double[freedoms()];
    for (int i = 0; i < slopes.length; i++) {
      if (slopes[i] != 0) {
        for (int j = 0; j < out.length; j++) {
          out[j] += slopes[i] * rows[i][j];
        }
      }
    }
    return out;
  }
}
