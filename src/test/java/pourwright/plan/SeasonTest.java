package pourwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import pourwright.quantity.OutOfRange;

/** What to make for a season. Demand is invented and seeded. */
class SeasonTest {
  /** Busy before the winter, quiet in summer, growing or not, with noise. */
  private static double[] sales(long seed, int months, double growth, double noise) {
    Random random = new Random(seed);
    double[] sold = new double[months];
    for (int t = 0; t < months; t++) {
      double season = 40 + 25 * Math.cos(2 * Math.PI * (t - 11) / 12.0);
      sold[t] = Math.max(0, Math.round(season + growth * t + noise * random.nextGaussian()));
    }
    return sold;
  }

  @Test
  void smoothingBeatsLastYearsMonthOnSeasonalDemandWithNoise() {
    int better = 0;
    double smooth = 0;
    double naive = 0;
    for (int seed = 1; seed <= 20; seed++) {
      SeasonForecast forecast = SeasonForecast.of(sales(seed, 48, 0.3, 8), 12, 6);
      better += forecast.beatsNaive() ? 1 : 0;
      smooth += forecast.errorSmoothing();
      naive += forecast.errorNaive();
    }
    assertThat(better).isGreaterThanOrEqualTo(12);
    assertThat(smooth).isLessThan(0.95 * naive);
  }

  @Test
  void whereLastYearRepeatsItselfTheNaiveRuleIsUsedAndSaid() {
    double[] sold = new double[36];
    for (int t = 0; t < sold.length; t++) {
      sold[t] = t % 12 == 10 ? 90 : 5 + (t % 12);
    }
    sold[20] = 400; // a wedding, once, far back
    SeasonForecast forecast = SeasonForecast.of(sold, 12, 12);
    assertThat(forecast.beatsNaive()).isFalse();
    assertThat(forecast.words()).startsWith("As in the same month last year");
    assertThat(forecast.expected()[10]).isEqualTo(90);
  }

  @Test
  void aboutEightInTenMonthsFallIntoTheInterval() {
    int inside = 0;
    int all = 0;
    for (int seed = 1; seed <= 60; seed++) {
      double[] sold = sales(seed, 54, 0, 8);
      SeasonForecast forecast = SeasonForecast.of(java.util.Arrays.copyOf(sold, 48), 12, 6);
      for (int h = 0; h < 6; h++) {
        double truth = sold[48 + h];
        inside += truth >= forecast.low()[h] && truth <= forecast.high()[h] ? 1 : 0;
        all++;
      }
    }
    assertThat(inside / (double) all).isBetween(0.68, 0.92);
  }

  @Test
  void withTooFewMonthsTheForecastIsRefused() {
    assertThatThrownBy(() -> SeasonForecast.of(new double[20], 12, 3))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("20 periods");
  }

  // Silver, Pyke, Peterson, Inventory Management, 3rd ed. 1998, ch. 10: fractile cu/(cu+co).
  // Here 24/(24+8) = 0.75, z = 0.6745: 100 + 0.6745·20 = 113.49, so 114.
  @Test
  void theStallIsStockedToTheCriticalFractile() {
    StallStock stock = StallStock.of(100, 20, 24, 8);
    assertThat(stock.pieces()).isEqualTo(114);
    assertThat(stock.chanceAllSold()).isBetween(0.23, 0.25);
  }

  @Test
  void noOtherNumberEarnsMoreOnAThousandMarkets() {
    StallStock best = StallStock.of(60, 15, 10, 6);
    double at = earned(best.pieces(), 10, 6);
    assertThat(at).isCloseTo(best.expectedMargin(), within(6.0));
    for (int other : new int[] {best.pieces() - 8, best.pieces() + 8}) {
      assertThat(earned(other, 10, 6)).isLessThan(at);
    }
  }

  private static double earned(int pieces, double margin, double loss) {
    Random random = new Random(4);
    return DoubleStream.generate(() -> Math.max(0, 60 + 15 * random.nextGaussian()))
        .limit(20_000)
        .map(d -> Math.min(d, pieces) * margin - Math.max(0, pieces - d) * loss)
        .average()
        .orElse(0);
  }

  @Test
  void stockIsBuiltUpEvenlyAndNeverShort() {
    double[] demand = {2, 2, 4, 10, 30, 6};
    BuildUp plan = BuildUp.of(demand, 3, 10, 40);
    double stock = 3;
    for (int week = 0; week < demand.length; week++) {
      stock += plan.perWeek().get(week) - demand[week];
      assertThat(stock).isGreaterThanOrEqualTo(-1e-9);
    }
    assertThat(plan.troubles()).isEmpty();
    // 48 pieces by week five, 3 on hand: nine a week, then what is left to make.
    assertThat(plan.perWeek().subList(0, 5)).allSatisfy(w -> assertThat(w).isEqualTo(9.0));
    assertThat(plan.perWeek().get(5)).isEqualTo(6.0);
    assertThat(BuildUp.of(demand, 3, 8, 40).troubles()).isNotEmpty();
  }
}
