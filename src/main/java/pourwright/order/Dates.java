package pourwright.order;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Dates as shops write them. {@code 03/04/2026} is in March or in April: the column as a whole
 * decides by values that fit one order only; where none does, a person has to say.
 */
final class Dates {
  private static final String CLOCK =
      "(?:[T ,]+\\d{1,2}[:.]\\d{2}(?:[:.]\\d{2}(?:[.,]\\d{1,9})?)?(?: ?[AaPp]\\.?[Mm]\\.?)?)?";
  private static final Pattern ISO =
      Pattern.compile("(\\d{4})([-/. ])(\\d{1,2})\\2(\\d{1,2})\\.?" + CLOCK);
  private static final Pattern COMPACT = Pattern.compile("(20\\d{2})(\\d{2})(\\d{2})");
  private static final Pattern OFFSET =
      Pattern.compile(
          "(\\d{4}-\\d{2}-\\d{2})[T ](\\d{2}:\\d{2}(?::\\d{2}(?:\\.\\d{1,9})?)?)"
              + " ?(Z|UTC|GMT|[+-]\\d{2}:?\\d{2})");
  private static final Pattern NUMERIC =
      Pattern.compile("(\\d{1,2})([-/. ])[ ]?(\\d{1,2})\\2[ ]?(\\d{4}|\\d{2})" + CLOCK);
  private static final Pattern DAY_FIRST_NAME =
      Pattern.compile(
          "(?:\\p{L}+\\.?,? )?(\\d{1,2})(?:st|nd|rd|th|er|\\.|º)?[ -/]+(?:de |of )?"
              + "(\\p{L}{3,}\\.?)(?:[ ,-/]+(?:de )?)(\\d{4}|\\d{2})"
              + CLOCK);
  private static final Pattern NAME_FIRST =
      Pattern.compile(
          "(?:\\p{L}+\\.?,? )?(\\p{L}{3,}\\.?) (\\d{1,2})(?:st|nd|rd|th)?,? (\\d{4})" + CLOCK);

  private final Map<Character, DateOrder> orders;
  private final LocalDate today;
  private final ZoneId zone;

  private Dates(Map<Character, DateOrder> orders, LocalDate today, ZoneId zone) {
    this.orders = orders;
    this.today = today;
    this.zone = zone;
  }

  /** What was found, in words. */
  String words() {
    Set<String> words = new TreeSet<>();
    orders.forEach((mark, order) -> words.add(order.words().replace('/', mark)));
    return words.isEmpty() ? "year first, or month by name" : String.join(" and ", words);
  }

  /**
   * Settles the order of day, month and year for a column.
   *
   * @throws Stop when values can be read in two ways or contradict each other
   */
  static Dates of(List<String> texts, ImportChoices choices) throws Stop {
    Map<Character, List<String>> numeric = new HashMap<>();
    for (String text : texts) {
      String normal = normal(text);
      Matcher match = NUMERIC.matcher(normal);
      if (!ISO.matcher(normal).matches() && match.matches()) {
        numeric.computeIfAbsent(match.group(2).charAt(0), c -> new ArrayList<>()).add(normal);
      }
    }
    Map<Character, DateOrder> orders = new HashMap<>();
    for (var entry : numeric.entrySet()) {
      orders.put(entry.getKey(), settle(entry.getKey(), entry.getValue(), choices));
    }
    return new Dates(orders, choices.today(), choices.zone());
  }

  private static DateOrder settle(char mark, List<String> texts, ImportChoices choices)
      throws Stop {
    if (choices.dates() != null) {
      return choices.dates();
    }
    Set<DateOrder> possible = EnumSet.allOf(DateOrder.class);
    if (mark == '.') {
      possible.remove(DateOrder.MONTH_DAY_YEAR);
    }
    String clash = "";
    for (String text : texts) {
      Set<DateOrder> fits = EnumSet.noneOf(DateOrder.class);
      for (DateOrder order : DateOrder.values()) {
        LocalDate date = inOrder(text, order);
        if (date != null && plausible(date, choices.today())) {
          fits.add(order);
        }
      }
      if (!fits.isEmpty()) {
        Set<DateOrder> left = EnumSet.copyOf(possible);
        left.retainAll(fits);
        clash = left.isEmpty() && clash.isEmpty() ? text : clash;
        possible = left.isEmpty() ? possible : left;
      }
    }
    if (!clash.isEmpty()) {
      throw ask("the dates contradict each other: " + texts.get(0) + " and " + clash);
    }
    if (possible.size() == 1 || alike(texts, possible)) {
      return possible.iterator().next();
    }
    throw ask("a date of " + texts.get(0) + " can be read in more than one way");
  }

  private static Stop ask(String sentence) {
    List<String> answers = new ArrayList<>();
    for (DateOrder order : DateOrder.values()) {
      answers.add(order.words());
    }
    return Stop.ambiguous(new OrderImport.Question("dates", sentence, answers));
  }

  private static boolean alike(List<String> texts, Set<DateOrder> possible) {
    for (String text : texts) {
      Set<String> read = new TreeSet<>();
      possible.forEach(o -> read.add(String.valueOf(inOrder(text, o))));
      if (read.size() > 1) {
        return false;
      }
    }
    return true;
  }

  /** The date a numeric text gives in one order; null where it is none. */
  private static @Nullable LocalDate inOrder(String text, DateOrder order) {
    Matcher match = NUMERIC.matcher(text);
    if (!match.matches()) {
      return null;
    }
    int first = Integer.parseInt(match.group(1));
    int second = Integer.parseInt(match.group(3));
    int third = Integer.parseInt(match.group(4));
    boolean long4 = match.group(4).length() == 4;
    return switch (order) {
      case DAY_MONTH_YEAR -> date(long4 ? third : 2000 + third, second, first);
      case MONTH_DAY_YEAR -> date(long4 ? third : 2000 + third, first, second);
      case YEAR_MONTH_DAY ->
          long4 || match.group(1).length() < 2 ? null : date(2000 + first, second, third);
    };
  }

  private static @Nullable LocalDate date(int year, int month, int day) {
    try {
      return LocalDate.of(year, month, day);
    } catch (DateTimeException e) {
      return null;
    }
  }

  private static boolean plausible(LocalDate date, LocalDate today) {
    return date.isAfter(today.minusYears(2)) && date.isBefore(today.plusYears(3));
  }

  private static String normal(String text) {
    StringBuilder out = new StringBuilder();
    java.text.Normalizer.normalize(Blanks.strip(text), java.text.Normalizer.Form.NFKC)
        .codePoints()
        .forEach(c -> out.appendCodePoint(Blanks.isBlank(c) ? ' ' : c));
    return out.toString();
  }

  /** The day a cell says. */
  LocalDate read(Cell cell) throws Unfit {
    if (cell instanceof Cell.Broken broken) {
      throw new Unfit("due date: " + broken.reason());
    }
    LocalDate date = cell instanceof Cell.Day day ? day.day() : ofText(cell.shown());
    if (!plausible(date, today)) {
      throw new Unfit("the date '" + cell.shown() + "' is years away from today");
    }
    return date;
  }

  private LocalDate ofText(String shown) throws Unfit {
    String text = normal(shown);
    LocalDate date = named(text);
    if (date == null) {
      date = withOffset(text);
    }
    Matcher iso = ISO.matcher(text);
    if (date == null && iso.matches()) {
      date = date(number(iso, 1), number(iso, 3), number(iso, 4));
    }
    Matcher compact = COMPACT.matcher(text);
    if (date == null && compact.matches()) {
      date = date(number(compact, 1), number(compact, 2), number(compact, 3));
    }
    Matcher numeric = NUMERIC.matcher(text);
    if (date == null && numeric.matches()) {
      DateOrder order = orders.get(numeric.group(2).charAt(0));
      date = order == null ? null : inOrder(text, order);
    }
    if (date == null) {
      String hint =
          text.matches("\\d{5}(?:[.,]\\d+)?")
              ? "; it looks like a spreadsheet's day number, format the column as a date"
              : "";
      throw new Unfit("'" + shown + "' is not a date" + hint);
    }
    return date;
  }

  private static int number(Matcher match, int group) {
    return Integer.parseInt(match.group(group));
  }

  private static @Nullable LocalDate named(String text) {
    Matcher dayFirst = DAY_FIRST_NAME.matcher(text);
    if (dayFirst.matches()) {
      Integer month = MonthNames.of(dayFirst.group(2));
      int year = number(dayFirst, 3);
      return month == null
          ? null
          : date(dayFirst.group(3).length() == 2 ? 2000 + year : year, month, number(dayFirst, 1));
    }
    Matcher nameFirst = NAME_FIRST.matcher(text);
    if (nameFirst.matches()) {
      Integer month = MonthNames.of(nameFirst.group(1));
      return month == null ? null : date(number(nameFirst, 3), month, number(nameFirst, 2));
    }
    return null;
  }

  /** A moment with an offset counts as the day it is in the studio. */
  private @Nullable LocalDate withOffset(String text) {
    Matcher match = OFFSET.matcher(text);
    if (!match.matches()) {
      return null;
    }
    String offset = match.group(3).matches("Z|UTC|GMT") ? "Z" : match.group(3);
    if (offset.length() == 5) {
      offset = offset.substring(0, 3) + ":" + offset.substring(3);
    }
    String time = match.group(2).length() == 5 ? match.group(2) + ":00" : match.group(2);
    try {
      return OffsetDateTime.parse(match.group(1) + "T" + time + offset)
          .atZoneSameInstant(zone)
          .toLocalDate();
    } catch (DateTimeException e) {
      return null;
    }
  }
}
