package pourwright.page.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.card.CandleDesign;
import pourwright.card.CardBook;
import pourwright.card.Mold;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Show;
import pourwright.plan.BuildUp;
import pourwright.plan.SeasonForecast;
import pourwright.plan.StallStock;
import pourwright.quantity.OutOfRange;
import pourwright.work.Drawers;
import pourwright.work.Sales;
import pourwright.work.WorkPlan;

/** What a season may ask for, how to build up stock for it evenly, and what to take to a stall. */
public final class SeasonDesk implements Corner {
  private static final String TEMPLATE = "plan/season.jte";
  private static final int SEASON = 12;
  private static final int AHEAD = 6;
  private static final int WEEKS_A_MONTH = 4;

  /** A mold is filled so often in a week: once a day of work; house. */
  private static final int CASTS_A_WEEK = 5;

  /** Standard deviations to either side of the mean in an interval of 80 %. */
  private static final double Z_80 = 1.2816;

  private final Desk desk;

  /** Seasons of this studio. */
  public SeasonDesk(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/plan/season", this::show);
  }

  private record Learnt(CardBook book, double[] sold, int onHand) {}

  private void show(Context http) {
    Form form = Form.asked(http);
    Map<String, String> candles = new LinkedHashMap<>();
    desk.studio()
        .look(books -> books.cards().all(Drawers.CANDLE))
        .forEach(c -> candles.put(c.code(), c.body().name()));
    String candle = Optional.ofNullable(http.queryParam("candle")).orElse("");
    SeasonPage page;
    if (!candles.containsKey(candle)) {
      if (!candle.isEmpty()) {
        form.complain("candle", "'" + candle + "' is not one of the choices.");
      }
      page = new SeasonPage(form, candles, "", List.of(), List.of(), List.of());
    } else {
      page = page(form, candles, learnt(candle), candle);
    }
    if (form.ok()) {
      Show.page(http, TEMPLATE, page);
    } else {
      Show.again(http, TEMPLATE, page);
    }
  }

  private Learnt learnt(String candle) {
    return desk.studio()
        .look(
            books -> {
              CardBook book = Drawers.book(books);
              int onHand =
                  WorkPlan.inHand(books, book, desk.today()).candles().getOrDefault(candle, 0);
              return new Learnt(book, Sales.byMonth(books, candle, desk.today()), onHand);
            });
  }

  private SeasonPage page(Form form, Map<String, String> candles, Learnt learnt, String candle) {
    SeasonForecast forecast = null;
    String rule;
    try {
      forecast = SeasonForecast.of(learnt.sold(), SEASON, AHEAD);
      rule = forecast.words();
    } catch (OutOfRange e) {
      rule = e.sentence() + ": " + e.hint() + ".";
    }
    return new SeasonPage(
        form,
        candles,
        rule,
        forecast == null ? List.of() : months(forecast),
        forecast == null ? List.of() : build(forecast, learnt, candle),
        stall(form, forecast));
  }

  private List<SeasonPage.Month> months(SeasonForecast forecast) {
    YearMonth month = YearMonth.from(desk.today());
    DateTimeFormatter words = DateTimeFormatter.ofPattern("MMMM yyyy", desk.locale());
    List<SeasonPage.Month> months = new ArrayList<>();
    for (int m = 0; m < AHEAD; m++) {
      months.add(
          new SeasonPage.Month(
              words.format(month.plusMonths(m)),
              "" + Math.round(forecast.expected()[m]),
              Math.round(forecast.low()[m]) + " to " + Math.round(forecast.high()[m])));
    }
    return months;
  }

  /** The upper end of the interval is built up to: what is short cannot be sold. */
  private static List<String> build(SeasonForecast forecast, Learnt learnt, String candle) {
    double[] weeks = new double[AHEAD * WEEKS_A_MONTH];
    Arrays.setAll(weeks, w -> forecast.high()[w / WEEKS_A_MONTH] / WEEKS_A_MONTH);
    CandleDesign design = learnt.book().candle(candle);
    int molds =
        learnt.book().moldsFor(design.vessel()).stream()
            .filter(m -> !m.leftoverOnly())
            .mapToInt((Mold m) -> m.count() * m.piecesPerCast())
            .sum();
    BuildUp plan = BuildUp.of(weeks, learnt.onHand(), molds * CASTS_A_WEEK, Double.MAX_VALUE);
    List<String> said = new ArrayList<>();
    said.add("On hand or on the way: " + learnt.onHand() + ".");
    double last = -1;
    for (int week = 0; week < plan.perWeek().size(); week++) {
      double rate = Math.ceil(plan.perWeek().get(week) * 10 - 1e-9) / 10;
      if (rate != last) {
        said.add("From week " + (week + 1) + " on: " + rate + " a week.");
        last = rate;
      }
    }
    said.add("Most on the shelf at a week's end: " + Math.round(plan.stockMost()) + ".");
    said.addAll(plan.troubles());
    return said;
  }

  /** How many to take, once margin and loss are said; the demand may be typed over. */
  private static List<String> stall(Form form, @Nullable SeasonForecast forecast) {
    if (form.value("margin").isBlank() && form.value("loss").isBlank()) {
      return List.of();
    }
    Optional<Double> margin = form.read("margin", "a number", SeasonDesk::number);
    Optional<Double> loss = form.read("loss", "a number", SeasonDesk::number);
    Optional<Double> mean = form.readIfThere("mean", "a number", SeasonDesk::number);
    Optional<Double> deviation = form.readIfThere("deviation", "a number", SeasonDesk::number);
    if (forecast == null && mean.isEmpty()) {
      form.complain("mean", "Please say how many are asked for on average.");
    }
    if (margin.isEmpty() || loss.isEmpty() || !form.ok()) {
      return List.of();
    }
    double expected = mean.orElse(forecast == null ? 0 : forecast.expected()[0]);
    double spread =
        forecast == null
            ? Math.max(1, Math.sqrt(expected))
            : (forecast.high()[0] - forecast.expected()[0]) / Z_80;
    try {
      StallStock stall =
          StallStock.of(
              expected, Math.max(0.5, deviation.orElse(spread)), margin.get(), loss.get());
      return List.of(
          "Take " + stall.pieces() + ".",
          "Chance that all are sold: " + Math.round(100 * stall.chanceAllSold()) + " %.",
          "On average " + tenth(stall.expectedUnsold()) + " come home.",
          "Margin on average, less what those cost: " + tenth(stall.expectedMargin()) + ".");
    } catch (OutOfRange e) {
      form.complain("loss", e.sentence() + ": " + e.hint() + ".");
      return List.of();
    }
  }

  private static double tenth(double value) {
    return Math.round(value * 10) / 10.0;
  }

  private static Double number(String text) {
    double value = Double.parseDouble(text.replace(',', '.'));
    if (!(value >= 0 && value <= 1e6)) {
      throw new OutOfRange("number", "'" + text + "' is out of range", "0 to 1,000,000");
    }
    return value;
  }
}
