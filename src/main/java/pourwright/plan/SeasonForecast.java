package pourwright.plan;

import java.util.Arrays;
import pourwright.quantity.OutOfRange;

/**
 * What may be asked for in the coming months, from what was sold. Exponential smoothing with a
 * level and additive seasons, ETS(A,N,A), and a prediction interval; judged on the last months
 * against the naive rule 'as in the same month last year', which is used instead when it is better.
 *
 * <p>Source: R. J. Hyndman, G. Athanasopoulos, "Forecasting: Principles and Practice", 3rd edition,
 * 2021, sections 8.3 and 8.7 (variance of ETS(A,N,A): σ²[1 + α²(h−1) + γk(2α+γ)] with k the whole
 * seasons in h−1); naive seasonal rule section 5.2. Ours: α and γ from a grid, first two seasons as
 * start, nothing below 0 pieces.
 *
 * @param expected pieces in each coming month, 0 or more
 * @param low lower end of the 80 % prediction interval
 * @param high upper end
 * @param errorSmoothing mean absolute error on the months kept back, smoothing
 * @param errorNaive the same, naive rule
 */
public record SeasonForecast(
    double[] expected, double[] low, double[] high, double errorSmoothing, double errorNaive) {
  /** 80 % of a normal distribution lie within so many standard deviations. */
  private static final double Z_80 = 1.2816;

  private static final double GRID = 0.05;

  /** True when smoothing did better on the months kept back, and is what is shown. */
  public boolean beatsNaive() {
    return errorSmoothing < errorNaive;
  }

  /** Which rule it is and why, for the page. */
  public String words() {
    return beatsNaive()
        ? "Smoothed with seasons: on the last months it was off by "
            + Math.round(errorSmoothing * 10) / 10.0
            + " pieces a month, the same month last year by "
            + Math.round(errorNaive * 10) / 10.0
            + "."
        : "As in the same month last year: smoothing did no better on the last months.";
  }

  /**
   * Forecasts.
   *
   * @param sold pieces sold in each past period, oldest first; at least two seasons and a quarter
   * @param season periods in a season, 2 to 52: 12 for months
   * @param ahead periods to forecast, 1 to 52
   * @throws OutOfRange when there is too little to learn from
   */
  public static SeasonForecast of(double[] sold, int season, int ahead) {
    if (season < 2 || season > 52 || ahead < 1 || ahead > 52) {
      throw new OutOfRange("season", "a season has 2 to 52 periods", "use 12 for months");
    }
    int back = Math.max(1, season / 4);
    if (sold.length < 2 * season + back) {
      throw new OutOfRange(
          "sold",
          "there are " + sold.length + " periods of sales",
          "at least " + (2 * season + back) + " are needed; until then use last year's figure");
    }
    double[] learnt = Arrays.copyOf(sold, sold.length - back);
    Smoothing trial = Smoothing.best(learnt, season);
    double smooth = 0;
    double naive = 0;
    for (int h = 1; h <= back; h++) {
      double truth = sold[learnt.length + h - 1];
      smooth += Math.abs(trial.expected(h) - truth) / back;
      naive += Math.abs(lastSeason(learnt, season, h) - truth) / back;
    }
    return shown(sold, season, ahead, new double[] {smooth, naive});
  }

  private static SeasonForecast shown(double[] sold, int season, int ahead, double[] errors) {
    Smoothing all = Smoothing.best(sold, season);
    double naiveDeviation = naiveDeviation(sold, season);
    double[] expected = new double[ahead];
    double[] low = new double[ahead];
    double[] high = new double[ahead];
    for (int h = 1; h <= ahead; h++) {
      boolean smooth = errors[0] < errors[1];
      expected[h - 1] = Math.max(0, smooth ? all.expected(h) : lastSeason(sold, season, h));
      double seasons = 1 + (h - 1) / season;
      double deviation = smooth ? all.deviation(h) : naiveDeviation * Math.sqrt(seasons);
      low[h - 1] = Math.max(0, expected[h - 1] - Z_80 * deviation);
      high[h - 1] = expected[h - 1] + Z_80 * deviation;
    }
    return new SeasonForecast(expected, low, high, errors[0], errors[1]);
  }

  private static double lastSeason(double[] sold, int season, int h) {
    return sold[sold.length - season + (h - 1) % season];
  }

  private static double naiveDeviation(double[] sold, int season) {
    double squares = 0;
    for (int t = season; t < sold.length; t++) {
      squares += Math.pow(sold[t] - sold[t - season], 2);
    }
    return Math.sqrt(squares / (sold.length - season));
  }

  /** ETS(A,N,A) run through a series: its level and seasons at the end, and its one-step errors. */
  private static final class Smoothing {
    private final double alpha;
    private final double gamma;
    private final double[] seasons;
    private final int periods;
    private double level;
    private double squares;

    private Smoothing(double[] sold, int season, double alpha, double gamma) {
      this.alpha = alpha;
      this.gamma = gamma;
      this.periods = sold.length;
      this.seasons = new double[season];
      level = Arrays.stream(sold, 0, season).average().orElse(0);
      for (int s = 0; s < season; s++) {
        seasons[s] = (sold[s] - level + sold[season + s] - mean(sold, season)) / 2;
      }
      for (int t = 0; t < sold.length; t++) {
        double error = sold[t] - level - seasons[t % season];
        level += alpha * error;
        seasons[t % season] += gamma * error;
        squares += error * error;
      }
    }

    private static double mean(double[] sold, int season) {
      return Arrays.stream(sold, season, 2 * season).average().orElse(0);
    }

    static Smoothing best(double[] sold, int season) {
      Smoothing best = new Smoothing(sold, season, GRID, GRID);
      for (double alpha = GRID; alpha < 1; alpha += GRID) {
        for (double gamma = 0; gamma <= 1 - alpha; gamma += GRID) {
          Smoothing next = new Smoothing(sold, season, alpha, gamma);
          best = next.squares < best.squares ? next : best;
        }
      }
      return best;
    }

    double expected(int h) {
      return level + seasons[(periods + h - 1) % seasons.length];
    }

    double deviation(int h) {
      double variance = squares / Math.max(1, periods - 3);
      double k = (h - 1) / seasons.length;
      double growth = 1 + alpha * alpha * (h - 1) + gamma * k * (2 * alpha + gamma);
      return Math.sqrt(variance * growth);
    }
  }
}
