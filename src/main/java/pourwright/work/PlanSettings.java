package pourwright.work;

import java.util.List;
import pourwright.cast.ColdShed;
import pourwright.plan.ClassKit;
import pourwright.plan.Habits;
import pourwright.plan.PostDays;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * What she wrote down for the plan: the post's days, the shed's temperature, spare kits.
 *
 * @param week weekdays of the post, as typed
 * @param hot hot days, as typed
 * @param last last posts, as typed
 * @param shed temperature of the shed in °C, as typed; empty for a shed at 20 °C
 * @param spare kits to spare in a class in percent, as typed; empty for 10
 * @param tests candles made beside an order for burn tests of a design that is not proved, as
 *     typed; empty for none
 */
public record PlanSettings(
    String week, String hot, String last, String shed, String spare, String tests) {
  private static final String WEEK = "plan.post-week";
  private static final String HOT = "plan.hot-days";
  private static final String LAST = "plan.last-post";
  private static final String SHED = "plan.shed-c";
  private static final String SPARE = "plan.class-spare";
  private static final String TESTS = "plan.test-candles";
  private static final int TESTS_MOST = 12;

  /** What is written down now. */
  public static PlanSettings of(Books books) {
    SettingBook said = books.settings();
    return new PlanSettings(
        said.value(WEEK).orElse(""),
        said.value(HOT).orElse(""),
        said.value(LAST).orElse(""),
        said.value(SHED).orElse(""),
        said.value(SPARE).orElse(""),
        said.value(TESTS).orElse(""));
  }

  /** The days of the post; every day where nothing is written down or it cannot be read. */
  static PostDays post(Books books) {
    PlanSettings said = of(books);
    try {
      return PostDays.read(said.week(), said.hot(), said.last());
    } catch (OutOfRange e) {
      return PostDays.EVERY_DAY;
    }
  }

  /** Share of kits to spare in a class: the house's where nothing can be read. */
  public static double spareShare(Books books) {
    String spare = of(books).spare();
    try {
      return spare.isBlank() ? ClassKit.SPARE : share(Double.parseDouble(spare));
    } catch (NumberFormatException | OutOfRange e) {
      return ClassKit.SPARE;
    }
  }

  /**
   * Percent as a share.
   *
   * @throws OutOfRange outside 0 to 100
   */
  public static double share(double percent) {
    return Check.between("spare", percent, 0, 100) / 100;
  }

  /** Candles for burn tests of an ordered design that is not proved; none where none are said. */
  static int testPieces(Books books) {
    String tests = of(books).tests();
    try {
      return tests.isBlank() ? 0 : testPieces(tests);
    } catch (OutOfRange e) {
      return 0;
    }
  }

  /**
   * A number of candles for tests, as typed.
   *
   * @throws OutOfRange when it is no whole number from 0 to 12
   */
  public static int testPieces(String typed) {
    try {
      int candles = Integer.parseInt(typed);
      if (candles >= 0 && candles <= TESTS_MOST) {
        return candles;
      }
    } catch (NumberFormatException e) {
      // said below, with the range
    }
    throw new OutOfRange(
        "tests",
        "candles for burn tests are a whole number between 0 and " + TESTS_MOST,
        "give such a number, or leave it empty");
  }

  /** House habits in her shed, with the losses that her own pieces tell. */
  static Habits habits(Books books) {
    Habits hers = YieldReader.of(books).applied(Habits.HOUSE);
    String shed = of(books).shed();
    try {
      return shed.isBlank() ? hers : hers.in(shed(Double.parseDouble(shed)));
    } catch (NumberFormatException | OutOfRange e) {
      return hers;
    }
  }

  /**
   * How much slower casts are at a temperature.
   *
   * @throws OutOfRange outside 2 to 35 °C
   */
  public static Habits.Shed shed(double celsius) {
    ColdShed cold = ColdShed.at(celsius);
    return new Habits.Shed(cold.harden(), cold.dry());
  }

  /** Writes all of it down; they were read before. */
  public Outcome<String> save(Studio studio, Act act) {
    List<List<String>> all =
        List.of(
            List.of(WEEK, week),
            List.of(HOT, hot),
            List.of(LAST, last),
            List.of(SHED, shed),
            List.of(SPARE, spare),
            List.of(TESTS, tests));
    Outcome<String> outcome = Outcome.refused(Reason.INPUT_CANNOT_BE, "nothing to write down", "");
    for (List<String> one : all) {
      Act each = new Act(act.by(), act.requestKey() + "-" + one.get(0), act.note());
      outcome = studio.saveSetting.run(each, one.get(0), one.get(1));
      if (outcome instanceof Outcome.Refused<String>) {
        return outcome;
      }
    }
    return outcome;
  }
}
